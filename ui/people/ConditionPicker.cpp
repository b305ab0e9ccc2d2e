#include "ui/people/ConditionPicker.h"

#include <QVBoxLayout>

namespace matwright {

ConditionPicker::ConditionPicker(const std::vector<Condition>& conditions, QWidget* parent)
    : QWidget(parent),
      list_(new PickList({tr("Add a condition"), tr("Find a condition"), tr("Find a condition by name or code"),
                          tr("Conditions"),
                          tr("No condition on the list matches. Write what you know into the person's note: nothing is "
                             "screened for it.")})) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(list_);
  setConditions(conditions);
  connect(list_, &PickList::picked, this, [this](const QString& key) { Q_EMIT picked({key.toStdString()}); });
}

void ConditionPicker::setConditions(const std::vector<Condition>& conditions) {
  std::vector<PickEntry> entries;
  for (const Condition& condition : conditions) {
    QStringList codes;
    for (const std::string& code : condition.icd10)
      codes << QString::fromStdString(code);
    entries.push_back({QString::fromStdString(condition.id.value), QString::fromStdString(condition.name),
                       QString::fromStdString(condition.about), codes.join(QLatin1Char(' '))});
  }
  list_->setEntries(std::move(entries));
}

} // namespace matwright
