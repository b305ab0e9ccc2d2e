#include "ui/compose/WishesForm.h"

#include "ui/compose/ArcEditor.h"
#include "ui/compose/FormPart.h"
#include "ui/compose/SectionWishes.h"
#include "ui/compose/TickList.h"
#include "ui/controls/DateField.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/controls/OrderedList.h"
#include "ui/text/MovementText.h"
#include "ui/text/VocabularyText.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QToolButton>

namespace matwright {
namespace {

template <class Enum> QString keyOf(Enum value) {
  return QString::fromUtf8(word(value).data(), static_cast<qsizetype>(word(value).size()));
}

template <class Enum, class Name> std::vector<TickWord> allWords(Name name) {
  std::vector<TickWord> words;
  for (std::size_t i = 0; i < kWordCount<Enum>; ++i)
    words.push_back({keyOf(static_cast<Enum>(i)), name(static_cast<Enum>(i)), {}});
  return words;
}

// What teachers practise; a wish may name any other feature, too.
std::vector<TickWord> usualSkills() {
  const std::pair<Feature, QString> skills[] = {{Feature::balance, WishesForm::tr("balance")},
                                                {Feature::spineRoll, WishesForm::tr("rolling")},
                                                {Feature::oneLeg, WishesForm::tr("on one leg")},
                                                {Feature::wristLoad, WishesForm::tr("weight on the hands")},
                                                {Feature::rise, WishesForm::tr("getting up")},
                                                {Feature::kneel, WishesForm::tr("kneeling")},
                                                {Feature::armOver, WishesForm::tr("arms overhead")},
                                                {Feature::isoHold, WishesForm::tr("holding still")},
                                                {Feature::inverted, WishesForm::tr("hips over head")},
                                                {Feature::stretchEnd, WishesForm::tr("stretching")}};
  std::vector<TickWord> words;
  for (const auto& [skill, name] : skills)
    words.push_back({keyOf(skill), name, definition(skill)});
  return words;
}

std::vector<TickWord> spineWords() {
  std::vector<TickWord> words = allWords<SpineAction>([](SpineAction action) { return text(action); });
  words.erase(words.begin()); // a spine that stays as it is is no focus that one would wish for
  return words;
}

QVBoxLayout* columnOf(QWidget* page) {
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(5);
  return column;
}

void addNamed(QVBoxLayout* column, const QString& name, QWidget* field) {
  column->addWidget(fieldLabel(name, field));
  column->addWidget(field);
}

QCheckBox* tickBox(const QString& words, const QString& about) {
  auto* box = new QCheckBox(words);
  box->setToolTip(about);
  box->setAccessibleDescription(about);
  return box;
}

} // namespace

WishesForm::WishesForm(QWidget* parent) : QWidget(parent) {
  sections_ = new SectionWishes;
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 8, 12, 8);
  column->setSpacing(6);
  column->addWidget(makeClass());
  const auto add = [&](const QString& title, QWidget* body, bool open) {
    auto* part = new FormPart(title, body, open);
    column->addWidget(part);
    return part;
  };
  sectionsPart_ = add(tr("Sections"), sections_, true);
  focusPart_ = add(tr("Focus"), makeFocus(), true);
  peoplePart_ = add(tr("People"), makePeople(), false);
  propsPart_ = add(tr("Props and wall"), makeProps(), false);
  movementsPart_ = add(tr("Movements"), makeMovements(), false);
  recentPart_ = add(tr("Recent classes"), makeRecent(), false);
  effortPart_ = add(tr("Effort"), makeEffort(), false);
  pacePart_ = add(tr("Pace of the group"), makePace(), false);
  column->addStretch(1);
  for (QWidget* field : {static_cast<QWidget*>(length_), static_cast<QWidget*>(mobility_),
                         static_cast<QWidget*>(words_), static_cast<QWidget*>(settle_)})
    keepWheelForFocus(field);
  connectFields();
  setPeople({}, {});
  setClasses({});
  show(base_);
}

QWidget* WishesForm::makeClass() {
  name_ = lineField(tr("Name of the class"), kLongestName);
  date_ = new DateField(tr("Date of the class"), tr("No date: set one"));
  date_->setToolTip(tr("Weeks and clearances are counted for this day, or for today"));
  length_ = new QSpinBox;
  length_->setRange(static_cast<int>(ClassPlan::kShortestTarget.minutes()),
                    static_cast<int>(ClassPlan::kLongestTarget.minutes()));
  length_->setSuffix(tr(" min"));
  length_->setSingleStep(5);
  length_->setAccessibleName(tr("Length of the class"));
  auto* page = new QWidget;
  auto* column = columnOf(page);
  named_ = new QWidget;
  auto* grid = new QGridLayout(named_);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setColumnStretch(1, 1);
  grid->setHorizontalSpacing(10);
  grid->addWidget(besideLabel(tr("Name"), name_), 0, 0, Qt::AlignTop);
  grid->addWidget(name_, 0, 1);
  grid->addWidget(besideLabel(tr("Date"), date_), 1, 0, Qt::AlignTop);
  grid->addWidget(date_, 1, 1, Qt::AlignLeft);
  column->addWidget(named_);
  auto* line = new QHBoxLayout;
  line->setSpacing(10);
  line->addWidget(besideLabel(tr("Length"), length_), 0, Qt::AlignTop);
  line->addWidget(length_);
  line->addStretch(1);
  column->addLayout(line);
  column->addWidget(makeChallenge());
  return page;
}

QWidget* WishesForm::makeChallenge() {
  challenge_ = new QButtonGroup(this);
  aboutChallenge_ = softLabel({});
  auto* page = new QWidget;
  auto* column = columnOf(page);
  auto* line = new QHBoxLayout;
  line->setSpacing(4);
  const std::pair<Challenge, QString> levels[] = {
      {Challenge::gentle, tr("Gentle")}, {Challenge::middle, tr("Middle")}, {Challenge::strong, tr("Strong")}};
  for (const auto& [challenge, name] : levels) {
    auto* button = new QToolButton;
    button->setText(name);
    button->setCheckable(true);
    button->setAccessibleName(tr("How hard: %1").arg(name));
    button->setToolTip(tr("No step is harder than %1 of 10").arg(hardestOf(challenge).value()));
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    challenge_->addButton(button, static_cast<int>(challenge));
    line->addWidget(button);
  }
  column->addLayout(line);
  column->addWidget(aboutChallenge_);
  return page;
}

QWidget* WishesForm::makeFocus() {
  regions_ = new TickFlow(tr("Regions"), allWords<Region>([](Region region) { return text(region); }));
  spine_ = new TickFlow(tr("What the spine does"), spineWords());
  skills_ = new TickFlow(tr("Skills"), usualSkills());
  auto* page = new QWidget;
  auto* column = columnOf(page);
  addNamed(column, tr("Regions that are worked"), regions_);
  addNamed(column, tr("What the spine does"), spine_);
  addNamed(column, tr("Skills that are practised"), skills_);
  return page;
}

QWidget* WishesForm::makePeople() {
  people_ = new TickList(tr("People who come"));
  noPeople_ = softLabel(tr("Nobody is on file yet. Nothing is left out for anybody's sake."));
  auto* page = new QWidget;
  auto* column = columnOf(page);
  column->addWidget(people_);
  column->addWidget(noPeople_);
  return page;
}

QWidget* WishesForm::makeProps() {
  props_ = new TickFlow(tr("Props at hand"), allWords<Prop>([](Prop prop) { return text(prop); }));
  wall_ = tickBox(tr("A free wall to work at"), {});
  auto* page = new QWidget;
  auto* column = columnOf(page);
  addNamed(column, tr("At hand for everybody"), props_);
  column->addWidget(wall_);
  return page;
}

QWidget* WishesForm::makeMovements() {
  include_ = new OrderedList(tr("Movements to include"), tr("Include a movement"));
  leaveOut_ = new OrderedList(tr("Movements to leave out"), tr("Leave a movement out"));
  known_ = new OrderedList(tr("Movements the group knows"), tr("A movement the group knows"));
  auto* page = new QWidget;
  auto* column = columnOf(page);
  for (OrderedList* list : {include_, leaveOut_, known_})
    list->setOrdered(false);
  addNamed(column, tr("To include"), include_);
  addNamed(column, tr("To leave out"), leaveOut_);
  addNamed(column, tr("Known: what builds on it needs no preparation"), known_);
  return page;
}

QWidget* WishesForm::makeRecent() {
  recent_ = new TickList(tr("Classes to vary from"));
  noRecent_ = softLabel(tr("There are no other classes in this studio yet."));
  recentIsKnown_ = tickBox(tr("What they taught counts as known"),
                           tr("What a movement builds on need not be in the class when one of these had it"));
  auto* page = new QWidget;
  auto* column = columnOf(page);
  column->addWidget(recent_);
  column->addWidget(noRecent_);
  column->addWidget(recentIsKnown_);
  return page;
}

QWidget* WishesForm::makeEffort() {
  arc_ = new ArcChoice;
  fewerRises_ = tickBox(tr("As few ways up from the floor as can be"), {});
  auto* page = new QWidget;
  auto* column = columnOf(page);
  column->addWidget(arc_);
  column->addWidget(fewerRises_);
  return page;
}

QWidget* WishesForm::makePace() {
  mobility_ = new QDoubleSpinBox;
  mobility_->setRange(Pace::kLowestMobility, Pace::kHighestMobility);
  mobility_->setSingleStep(0.1);
  mobility_->setPrefix(QStringLiteral("\u00d7 "));
  mobility_->setToolTip(tr("1 as charted for healthy adults, 2 twice as long"));
  words_ = new QSpinBox;
  words_->setRange(static_cast<int>(Pace::kSlowestSpeech), static_cast<int>(Pace::kFastestSpeech));
  words_->setSingleStep(5);
  words_->setSuffix(tr(" a minute"));
  words_->setToolTip(tr("Of the set-up cues, spoken while people move"));
  settle_ = new QSpinBox;
  settle_->setRange(0, static_cast<int>(Pace::kLongestSettle));
  settle_->setSuffix(tr(" s"));
  settle_->setToolTip(tr("From being there to the first count"));
  auto* page = new QWidget;
  auto* grid = new QGridLayout(page);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setColumnStretch(2, 1);
  int row = 0;
  for (const auto& [name, field] :
       {std::pair<QString, QWidget*>(tr("Moving"), mobility_), {tr("Words"), words_}, {tr("Settling"), settle_}}) {
    grid->addWidget(besideLabel(name, field), row, 0, Qt::AlignTop);
    grid->addWidget(field, row++, 1);
  }
  return page;
}

void WishesForm::connectFields() {
  connect(name_, &QLineEdit::textEdited, this, &WishesForm::tell);
  connect(date_, &DateField::edited, this, &WishesForm::tell);
  connect(length_, &QSpinBox::valueChanged, this, [this](int length) {
    if (!showing_)
      sections_->setLength(minutes(length));
    tell();
  });
  connect(challenge_, &QButtonGroup::idToggled, this, [this](int, bool on) {
    showChallenge();
    if (on)
      tell();
  });
  connect(sections_, &SectionWishes::changed, this, &WishesForm::tell);
  for (TickFlow* flow : {regions_, spine_, skills_, props_})
    connect(flow, &TickFlow::changed, this, &WishesForm::tell);
  for (TickList* list : {people_, recent_})
    connect(list, &TickList::changed, this, &WishesForm::tell);
  for (QCheckBox* box : {wall_, recentIsKnown_, fewerRises_})
    connect(box, &QCheckBox::toggled, this, &WishesForm::tell);
  for (OrderedList* list : {include_, leaveOut_, known_})
    connect(list, &OrderedList::edited, this, &WishesForm::tell);
  connect(arc_, &ArcChoice::changed, this, &WishesForm::tell);
  connect(mobility_, &QDoubleSpinBox::valueChanged, this, &WishesForm::tell);
  connect(words_, &QSpinBox::valueChanged, this, &WishesForm::tell);
  connect(settle_, &QSpinBox::valueChanged, this, &WishesForm::tell);
}

} // namespace matwright
