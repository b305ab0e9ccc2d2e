#include "ui/controls/CautionCard.h"

#include "ui/controls/Labels.h"
#include "ui/controls/LevelMark.h"
#include "ui/text/CautionText.h"
#include "ui/text/VocabularyText.h"

#include <QGridLayout>
#include <QToolButton>

namespace matwright {
namespace {

QString conditionName(const Caution& caution, const Knowledge& knowledge, const Evaluation& evaluation,
                      std::span<const Person> roster) {
  const auto whom = evaluation.whom(caution);
  const Person* person = whom ? findPerson(roster, *whom) : nullptr;
  if (!person || caution.condition >= person->conditions.size())
    return {};
  const Condition* found = knowledge.rules.findCondition(person->conditions[caution.condition].condition);
  return found ? QString::fromStdString(found->name) : QString();
}

} // namespace

CautionLines linesOf(const Caution& caution, const Knowledge& knowledge, const ClassPlan& plan,
                     const Evaluation& evaluation, std::span<const Person> roster) {
  const CautionWords words = wordsFor(caution, knowledge, plan, evaluation, roster);
  const QString condition = conditionName(caution, knowledge, evaluation, roster);
  return {caution.level,
          words.who,
          words.headline,
          condition.isEmpty() ? withCapital(words.what) : QStringLiteral("%1: %2").arg(condition, words.what),
          words.instead,
          words.whole};
}

CautionCard::CautionCard(const CautionLines& lines, QWidget* parent)
    : QWidget(parent), lines_(lines), more_(new QToolButton), whole_(softLabel(lines.whole)) {
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 2, 0, 2);
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(2);
  grid->setColumnStretch(1, 1);

  int row = 0;
  grid->addWidget(new LevelMark(lines.level), row, 0, Qt::AlignTop);
  grid->addWidget(headingLabel(QStringLiteral("%1 \u00b7 %2").arg(lines.who, text(lines.level))), row++, 1);
  grid->addWidget(softLabel(lines.about), row++, 1);
  if (!lines.instead.isEmpty())
    grid->addWidget(plainLabel(tr("Instead: %1").arg(lines.instead)), row++, 1);

  more_->setText(tr("Whole reason"));
  more_->setStyleSheet(
      QStringLiteral("QToolButton { border: 0; padding: 1px 0; background: transparent; color: palette(link); }"
                     "QToolButton:focus, QToolButton:hover { text-decoration: underline; }"));
  more_->setCheckable(true);
  more_->setToolTip(tr("Condition, rule, sources and what is disputed"));
  more_->setAccessibleName(tr("Whole reason for %1").arg(lines.who));
  grid->addWidget(more_, row++, 1, Qt::AlignLeft);

  whole_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  whole_->hide();
  grid->addWidget(whole_, row, 0, 1, 2);
  connect(more_, &QToolButton::toggled, whole_, &QLabel::setVisible);

  setAccessibleName(QStringLiteral("%1, %2: %3").arg(text(lines.level), lines.who, lines.about));
}

bool CautionCard::isOpen() const { return more_->isChecked(); }
void CautionCard::setOpen(bool open) { more_->setChecked(open); }

} // namespace matwright
