#pragma once

#include "core/people/Condition.h"
#include "ui/controls/PickList.h"

namespace matwright {

// Adds a condition from the list of those that rules know.
class ConditionPicker : public QWidget {
  Q_OBJECT

public:
  explicit ConditionPicker(const std::vector<Condition>& conditions, QWidget* parent = nullptr);

  void setConditions(const std::vector<Condition>& conditions);
  void setOpen(bool open) { list_->setOpen(open); }

Q_SIGNALS:
  void picked(const matwright::ConditionId& condition);

private:
  PickList* list_;
};

} // namespace matwright
