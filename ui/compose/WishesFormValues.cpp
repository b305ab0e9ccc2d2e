// What the fields of the form mean.
#include "ui/compose/ArcEditor.h"
#include "ui/compose/FormPart.h"
#include "ui/compose/SectionWishes.h"
#include "ui/compose/TickList.h"
#include "ui/compose/WishesForm.h"
#include "ui/controls/DateField.h"
#include "ui/controls/Fields.h"
#include "ui/controls/OrderedList.h"
#include "ui/text/MovementText.h"
#include "ui/text/VocabularyText.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QSpinBox>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

template <class Enum> EnumSet<Enum> valuesOf(const TickFlow& flow) {
  EnumSet<Enum> values;
  for (const QString& key : flow.ticked())
    if (const auto value = fromWord<Enum>(key.toStdString()))
      values.insert(*value);
  return values;
}

template <class Enum> void showValues(TickFlow& flow, EnumSet<Enum> values) {
  std::set<QString> keys;
  std::vector<TickWord> words;
  values.forEach([&](Enum value) {
    const QString key = QString::fromStdString(std::string(word(value)));
    keys.insert(key);
    words.push_back({key, text(value), {}});
  });
  flow.setTicked(keys, words);
}

template <class Tag> QStringList keysOf(const std::vector<Id<Tag>>& ids) {
  QStringList keys;
  for (const Id<Tag>& id : ids)
    keys << QString::fromStdString(id.value);
  return keys;
}

template <class Value> std::vector<Value> idsOf(const QStringList& keys) {
  std::vector<Value> ids;
  for (const QString& key : keys)
    ids.push_back(Value{key.toStdString()});
  return ids;
}

// What a field of whole numbers means that may have shown `value`.
double unlessShown(double value, int shown) { return std::lround(value) == shown ? value : shown; }

bool hasKey(const std::vector<TickWord>& words, const QString& key) {
  return std::any_of(words.begin(), words.end(), [&](const TickWord& each) { return each.key == key; });
}

} // namespace

void WishesForm::setKnowledge(const Knowledge& knowledge) {
  std::vector<NamedKey> stock;
  for (const Movement& movement : knowledge.catalogue.movements())
    stock.push_back({QString::fromStdString(movement.id.value), QString::fromStdString(movement.name)});
  std::sort(stock.begin(), stock.end(),
            [](const NamedKey& a, const NamedKey& b) { return QString::localeAwareCompare(a.name, b.name) < 0; });
  for (OrderedList* list : {include_, leaveOut_, known_})
    list->setStock(stock);
}

void WishesForm::setPeople(const Knowledge& knowledge, const std::vector<Person>& people) {
  stockOfPeople_.clear();
  for (const Person& person : people) {
    QStringList conditions;
    for (const PersonCondition& held : person.conditions)
      if (const Condition* condition = knowledge.rules.findCondition(held.condition))
        conditions << QString::fromStdString(condition->name);
    stockOfPeople_.push_back({QString::fromStdString(person.id.value), QString::fromStdString(person.name),
                              conditions.join(QStringLiteral(", "))});
  }
  showPeople();
}

// Somebody who is wished for and not on file keeps a line.
void WishesForm::showPeople() {
  std::vector<TickWord> words = stockOfPeople_;
  for (const QString& key : keysOf(base_.people))
    if (!hasKey(words, key))
      words.push_back({key, key, tr("not on file: nothing is known to heed")});
  people_->setWords(words);
  people_->setVisible(!words.empty());
  noPeople_->setVisible(words.empty());
  summarise();
}

void WishesForm::setClasses(std::vector<ClassOnFile> classes) {
  classes_ = std::move(classes);
  showClasses();
}

// A class that is wished for and not on file keeps a line.
void WishesForm::showClasses() {
  std::vector<TickWord> words;
  std::set<std::size_t> onFile; // of those wished for
  recents_.clear();
  QStringList ticked;
  for (const ClassOnFile& each : classes_) {
    words.push_back({each.file, QString::fromStdString(each.recent.name), dateText(each.date)});
    recents_[each.file] = each.recent;
    for (std::size_t i = 0; i < base_.recent.size(); ++i)
      if (!onFile.contains(i) && base_.recent[i] == each.recent) {
        onFile.insert(i);
        ticked << each.file;
        break;
      }
  }
  for (std::size_t i = 0; i < base_.recent.size(); ++i) {
    if (onFile.contains(i))
      continue;
    const QString key = QStringLiteral("wished:%1").arg(i);
    words.push_back({key, QString::fromStdString(base_.recent[i].name), tr("from the wishes")});
    recents_[key] = base_.recent[i];
    ticked << key;
  }
  recent_->setWords(words);
  recent_->setTicked(ticked);
  recent_->setVisible(!words.empty());
  noRecent_->setVisible(words.empty());
  summarise();
}

void WishesForm::setCompleting(bool completing) {
  named_->setVisible(!completing);
  sections_->setFixed(completing);
}

ClassWishes WishesForm::wishes() const {
  ClassWishes wishes = base_;
  wishes.name = name_->text().trimmed().toStdString();
  wishes.date = date_->date();
  wishes.length = minutes(unlessShown(wishes.length.minutes(), length_->value()));
  wishes.challenge = static_cast<Challenge>(challenge_->checkedId());
  wishes.focus.regions = valuesOf<Region>(*regions_);
  wishes.focus.spine = valuesOf<SpineAction>(*spine_);
  wishes.focus.skills = valuesOf<Feature>(*skills_);
  wishes.sections = sections_->sections();
  wishes.props = valuesOf<Prop>(*props_);
  wishes.wall = wall_->isChecked();
  wishes.people = idsOf<PersonId>(people_->ticked());
  wishes.pace.mobility = mobility_->value();
  wishes.pace.wordsPerMinute = unlessShown(base_.pace.wordsPerMinute, words_->value());
  wishes.pace.settle = Seconds(unlessShown(base_.pace.settle.value(), settle_->value()));
  wishes.include = idsOf<MovementId>(include_->keys());
  wishes.leaveOut = idsOf<MovementId>(leaveOut_->keys());
  wishes.known = idsOf<MovementId>(known_->keys());
  wishes.recent.clear();
  for (const QString& key : recent_->ticked())
    wishes.recent.push_back(recents_.at(key));
  wishes.recentIsKnown = recentIsKnown_->isChecked();
  wishes.arc = arc_->arc();
  wishes.fewerRises = fewerRises_->isChecked();
  return wishes;
}

void WishesForm::show(const ClassWishes& wishes) {
  showing_ = true;
  base_ = wishes;
  showText(name_, QString::fromStdString(wishes.name));
  date_->setDate(wishes.date);
  length_->setValue(static_cast<int>(std::lround(wishes.length.minutes())));
  challenge_->button(static_cast<int>(wishes.challenge))->setChecked(true);
  sections_->show(wishes.sections, wishes.length);
  showValues(*regions_, wishes.focus.regions);
  showValues(*spine_, wishes.focus.spine);
  showValues(*skills_, wishes.focus.skills);
  showValues(*props_, wishes.props);
  wall_->setChecked(wishes.wall);
  showPeople();
  people_->setTicked(keysOf(wishes.people));
  mobility_->setValue(wishes.pace.mobility);
  words_->setValue(static_cast<int>(std::lround(wishes.pace.wordsPerMinute)));
  settle_->setValue(static_cast<int>(std::lround(wishes.pace.settle.value())));
  include_->show(keysOf(wishes.include));
  leaveOut_->show(keysOf(wishes.leaveOut));
  known_->show(keysOf(wishes.known));
  showClasses();
  recentIsKnown_->setChecked(wishes.recentIsKnown);
  arc_->show(wishes.arc);
  fewerRises_->setChecked(wishes.fewerRises);
  showChallenge();
  showing_ = false;
  summarise();
}

void WishesForm::giveUpMovement(const MovementId& movement) {
  const QString key = QString::fromStdString(movement.value);
  for (OrderedList* list : {include_, leaveOut_}) {
    QStringList keys = list->keys();
    keys.removeAll(key);
    list->show(keys);
  }
  tell();
}

void WishesForm::letLengthsBe() {
  std::vector<WishedSection> sections = sections_->sections();
  for (WishedSection& section : sections)
    section.length = {};
  sections_->show(std::move(sections), wishes().length);
  tell();
}

void WishesForm::tell() {
  if (showing_)
    return;
  summarise();
  Q_EMIT changed();
}

void WishesForm::showChallenge() {
  const auto challenge = static_cast<Challenge>(challenge_->checkedId());
  const QString most = QString::number(hardestOf(challenge).value());
  aboutChallenge_->setText(
      challenge == Challenge::gentle   ? tr("No step is harder than %1 of 10; easier options come first").arg(most)
      : challenge == Challenge::middle ? tr("No step is harder than %1 of 10").arg(most)
                                       : tr("Anything up to %1 of 10; harder options too").arg(most));
}

void WishesForm::summarise() {
  sectionsPart_->setSummary(sections_->summary());
  QStringList focus;
  for (const TickFlow* flow : {regions_, spine_, skills_})
    if (const QString words = flow->summary(); !words.isEmpty())
      focus << words;
  focusPart_->setSummary(focus.isEmpty() ? tr("none") : focus.join(QStringLiteral(", ")));
  const int people = static_cast<int>(people_->ticked().size());
  peoplePart_->setSummary(people == 0 ? tr("nobody chosen") : tr("%n person(s)", nullptr, people));
  const QString props = props_->summary();
  propsPart_->setSummary((props.isEmpty() ? tr("no props") : props) + QStringLiteral(", ") +
                         (wall_->isChecked() ? tr("a wall") : tr("no wall")));
  QStringList movements;
  if (const auto count = include_->keys().size())
    movements << tr("%1 to include").arg(count);
  if (const auto count = leaveOut_->keys().size())
    movements << tr("%1 to leave out").arg(count);
  if (const auto count = known_->keys().size())
    movements << tr("%1 known").arg(count);
  movementsPart_->setSummary(movements.isEmpty() ? tr("any") : movements.join(QStringLiteral(", ")));
  const auto recent = recent_->ticked().size();
  recentPart_->setSummary(recent == 0 ? tr("none to vary from") : tr("%1 to vary from").arg(recent));
  effortPart_->setSummary(arc_->summary() + (fewerRises_->isChecked() ? tr(", few ways up") : QString()));
  pacePart_->setSummary(mobility_->value() == 1 ? tr("as charted") : mobility_->text());
}

} // namespace matwright
