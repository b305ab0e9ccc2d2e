#include "ui/inspector/OptionChoice.h"

#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/text/VocabularyText.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {

OptionChoice::OptionChoice(QWidget* parent)
    : QWidget(parent), choice_(new QComboBox), how_(plainLabel({})), removes_(softLabel({})), adds_(softLabel({})) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(3);
  // The list is as wide as its longest name; the closed box may be narrower, so the name stands below it in full.
  choice_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  choice_->setMinimumContentsLength(8);
  choice_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  choice_->setAccessibleName(tr("Option"));
  keepWheelForFocus(choice_);
  column->addWidget(choice_);
  column->addWidget(how_);
  column->addWidget(removes_);
  column->addWidget(adds_);
  setFocusProxy(choice_);
  connect(choice_, &QComboBox::currentIndexChanged, this, [this](int index) {
    if (index >= 0)
      Q_EMIT chosen({choice_->itemData(index).toString().toStdString()});
  });
}

void OptionChoice::show(const Movement& movement, const OptionId& option) {
  const QSignalBlocker quiet(choice_);
  choice_->clear();
  choice_->addItem(tr("as written"), QString());
  for (const Option& candidate : movement.options)
    choice_->addItem(QStringLiteral("%1 \u00b7 %2").arg(QString::fromStdString(candidate.name), text(candidate.kind)),
                     QString::fromStdString(candidate.id.value));
  const QString id = QString::fromStdString(option.value);
  if (choice_->findData(id) < 0)
    choice_->addItem(tr("%1 \u00b7 not in the catalogue").arg(id), id);
  choice_->setCurrentIndex(choice_->findData(id));

  int widest = 0;
  for (int i = 0; i < choice_->count(); ++i)
    widest = std::max(widest, fontMetrics().horizontalAdvance(choice_->itemText(i)));
  choice_->view()->setMinimumWidth(widest + 40);

  const Option* found = findOption(movement, option);
  choice_->setToolTip(choice_->currentText());
  showText(how_,
           found ? QStringLiteral("%1: %2").arg(QString::fromStdString(found->name), QString::fromStdString(found->how))
                 : QString());
  showText(removes_,
           found && !found->removes.empty() ? tr("Takes away: %1").arg(featureList(found->removes)) : QString());
  showText(adds_, found && !found->adds.empty() ? tr("Adds: %1").arg(featureList(found->adds)) : QString());
}

} // namespace matwright
