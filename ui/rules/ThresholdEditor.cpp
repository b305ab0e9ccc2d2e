#include "ui/rules/ThresholdEditor.h"

#include "core/screening/ScopeForm.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/text/FindingText.h"
#include "ui/text/RuleText.h"
#include "ui/text/VocabularyText.h"

#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <cmath>

namespace matwright {
namespace {

double stepOf(const Threshold& threshold) {
  if (threshold.unit != MeasureUnit::seconds)
    return 1;
  return threshold.usual >= 300 ? 30 : threshold.usual >= 60 ? 10 : 5;
}

} // namespace

ThresholdEditor::ThresholdEditor(KnowledgeDocument& document, QWidget* parent)
    : QWidget(parent), document_(document), line_(new QWidget), side_(plainLabel({})), unit_(softLabel({})),
      about_(softLabel({})), amount_(new QDoubleSpinBox), usual_(new QPushButton) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(headingLabel(tr("Threshold")));
  auto* line = new QHBoxLayout(line_);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(8);
  for (QLabel* label : {side_, unit_})
    label->setWordWrap(false);
  amount_->setAccessibleName(tr("Threshold"));
  amount_->setMinimumWidth(110);
  keepWheelForFocus(amount_);
  line->addWidget(side_);
  line->addWidget(amount_);
  line->addWidget(unit_);
  line->addWidget(usual_);
  line->addStretch(1);
  column->addWidget(line_);
  column->addWidget(about_);
  connect(amount_, &QDoubleSpinBox::valueChanged, this, [this](double amount) { set(amount); });
  connect(amount_, &QDoubleSpinBox::editingFinished, this, [this] { document_.sealGesture(); });
  connect(usual_, &QPushButton::clicked, this, [this] {
    document_.sealGesture();
    set(std::nullopt);
  });
}

void ThresholdEditor::show(const Rule& rule) {
  setVisible(rule.threshold.has_value());
  if (!rule.threshold)
    return;
  if (rule_ != rule.id)
    document_.sealGesture();
  rule_ = rule.id;
  const Threshold& threshold = *rule.threshold;
  const bool open = thresholdIsOpen(rule) && !isOwn(rule.id);
  const QString usual = amountText(threshold.usual, threshold.unit);
  const QSignalBlocker quiet(amount_);
  const bool whole = threshold.amount == std::floor(threshold.amount);
  amount_->setDecimals(whole ? 0 : 1);
  amount_->setRange(formOf(rule.scope, threshold.unit).least, mostOf(threshold.unit));
  amount_->setSingleStep(stepOf(threshold));
  if (amount_->value() != threshold.amount)
    amount_->setValue(threshold.amount);
  amount_->setVisible(open);
  amount_->setEnabled(document_.lockedBy().empty());
  side_->setText(open ? speaksText(rule)
                      : QStringLiteral("%1 %2").arg(speaksText(rule), amountText(threshold.amount, threshold.unit)));
  QString unit = unitText(threshold.amount, threshold.unit);
  if (threshold.unit == MeasureUnit::seconds)
    unit += QStringLiteral(", %1").arg(clock(Seconds(threshold.amount)));
  showText(unit_, open ? unit : QString());
  amount_->setAccessibleDescription(
      QStringLiteral("%1 %2 %3")
          .arg(speaksText(rule), amountText(threshold.amount, threshold.unit), thresholdText(rule)));
  usual_->setText(tr("Back to the usual (%1)").arg(usual));
  usual_->setVisible(open && threshold.amount != threshold.usual);
  usual_->setEnabled(document_.lockedBy().empty());
  about_->setText(thresholdText(rule));
}

void ThresholdEditor::set(std::optional<double> amount) {
  const QString key = QStringLiteral("threshold/%1").arg(QString::fromStdString(rule_.value));
  const auto done = document_.setThreshold(rule_, amount, amount ? tr("Set a threshold") : tr("Usual threshold"),
                                           amount ? key : QString());
  if (!done)
    Q_EMIT refused(done.error());
}

} // namespace matwright
