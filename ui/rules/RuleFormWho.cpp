#include "ui/rules/RuleFormWho.h"

#include "core/knowledge/OwnKnowledge.h"
#include "ui/controls/Fields.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/rules/QualifierTests.h"
#include "ui/text/RuleText.h"
#include "ui/text/VocabularyText.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QSignalBlocker>
#include <algorithm>

namespace matwright {

RuleFormWho::RuleFormWho(QWidget* parent)
    : RuleFormPart(parent), condition_(new QComboBox), dropped_(softLabel({})), tests_(new QualifierTests) {
  QGridLayout* grid = makeGrid(tr("For whom"));
  condition_->setAccessibleName(tr("For people with"));
  condition_->setMaximumWidth(460);
  keepWheelForFocus(condition_);
  dropped_->hide();
  addField(*grid, Field::condition, tr("For people with"), condition_, dropped_);
  auto* ages = new QWidget;
  auto* flow = new FlowLayout(ages, 14);
  for (std::size_t i = 0; i < kWordCount<AgeBand>; ++i) {
    const auto band = static_cast<AgeBand>(i);
    auto* box = new QCheckBox(text(band));
    box->setAccessibleName(tr("Aged %1").arg(text(band)));
    connect(box, &QCheckBox::toggled, this, [this, band](bool on) {
      change(
          [&](Rule& rule) {
            if (on)
              rule.ages.insert(band);
            else
              rule.ages.erase(band);
          },
          tr("Change the ages of a rule"));
    });
    flow->addWidget(box);
    ages_.push_back(box);
  }
  ages->setFocusProxy(ages_.front());
  addPlain(*grid, tr("Aged"), ages,
           softLabel(tr("None ticked: whatever the age. Of people whose age is not on file, a rule with ages says "
                        "nothing.")));
  tests_->setMaximumWidth(620);
  addField(*grid, Field::when, tr("Only when"), tests_);
  connect(condition_, &QComboBox::currentIndexChanged, this, &RuleFormWho::takeCondition);
  connect(tests_, &QualifierTests::edited, this,
          [this](const std::vector<QualifierTest>& tests, const QString& gesture) {
            change([&](Rule& rule) { rule.when = tests; }, tr("Change when a rule speaks"),
                   gesture.isEmpty() ? gesture : QStringLiteral("when/") + gesture);
          });
}

void RuleFormWho::focusFirst() { condition_->setFocus(); }

void RuleFormWho::takeCondition(int index) {
  if (index < 0)
    return;
  const RuleBook& book = knowledge().rules;
  const Condition* before = rule().condition ? book.findCondition(*rule().condition) : nullptr;
  const auto id =
      index == 0 ? std::optional<ConditionId>() : std::optional(ids_.at(static_cast<std::size_t>(index) - 1));
  const Condition* after = id ? book.findCondition(*id) : nullptr;
  Rule lost = rule(); // with the tests that go
  const std::vector<QualifierTest> kept = testsThatFit(rule().when, before, after);
  std::erase_if(lost.when,
                [&](const QualifierTest& test) { return std::find(kept.begin(), kept.end(), test) != kept.end(); });
  const QString words =
      lost.when.empty() ? QString()
      : after           ? tr("Taken away, because \"%1\" is not asked this: %2.")
                    .arg(QString::fromStdString(after->name), testsText(lost, book))
              : tr("Taken away, because nobody is asked this without a condition: %1.").arg(testsText(lost, book));
  droppedOf_ = rule().id;
  droppedFor_ = id;
  showText(dropped_, words);
  change(
      [&](Rule& rule) {
        rule.condition = id;
        rule.when = kept;
      },
      tr("Change whom a rule is for"));
}

void RuleFormWho::fillConditions() {
  if (filledFrom_ == sharedKnowledge())
    return;
  filledFrom_ = sharedKnowledge();
  std::vector<const Condition*> all;
  for (const Condition& condition : knowledge().rules.conditions)
    all.push_back(&condition);
  std::stable_sort(all.begin(), all.end(), [](const Condition* a, const Condition* b) {
    if (isOwn(a->id) != isOwn(b->id))
      return isOwn(a->id);
    return QString::localeAwareCompare(QString::fromStdString(a->name), QString::fromStdString(b->name)) < 0;
  });
  condition_->clear();
  ids_.clear();
  condition_->addItem(tr("Everybody, whatever is on file"));
  for (const Condition* condition : all) {
    const QString name = QString::fromStdString(condition->name);
    condition_->addItem(isOwn(condition->id) ? tr("%1 (own)").arg(name) : name);
    ids_.push_back(condition->id);
  }
}

void RuleFormWho::refresh() {
  const QSignalBlocker quiet(condition_);
  fillConditions();
  const auto at = rule().condition ? std::find(ids_.begin(), ids_.end(), *rule().condition) : ids_.end();
  condition_->setCurrentIndex(!rule().condition ? 0 : at == ids_.end() ? -1 : static_cast<int>(at - ids_.begin()) + 1);
  if (droppedOf_ != rule().id || droppedFor_ != rule().condition)
    showText(dropped_, {});
  for (std::size_t i = 0; i < ages_.size(); ++i) {
    const QSignalBlocker quietAge(ages_[i]);
    ages_[i]->setChecked(rule().ages.contains(static_cast<AgeBand>(i)));
  }
  tests_->show(rule().when, at == ids_.end() ? nullptr : knowledge().rules.findCondition(*rule().condition));
}

} // namespace matwright
