#pragma once

#include "ui/document/PlanDocument.h"

namespace matwright {

// Which steps are selected, shared by all views of a class. The current step is the one the inspector shows; the
// gap is where the next movement would go in. Steps that leave the class leave the selection.
class StepSelection : public QObject {
  Q_OBJECT

public:
  explicit StepSelection(PlanDocument& document, QObject* parent = nullptr);

  const std::vector<StepId>& steps() const { return steps_; } // in the order of the class
  std::optional<StepId> current() const { return current_; }
  bool contains(StepId step) const;

  // After the current step, or a gap chosen on its own; at the end of the last section that has steps when neither is
  // set.
  Place gap() const;
  bool hasOwnGap() const { return gap_.has_value(); }

  void clear();
  void select(StepId step); // alone
  void toggle(StepId step);
  void extendTo(StepId step); // from the anchor to it, in the order of the class
  void set(const std::vector<StepId>& steps, std::optional<StepId> current);
  void selectAll();
  void selectGap(Place place); // no step is selected then

Q_SIGNALS:
  void changed();

private:
  void keepWhatExists();
  void settle(std::vector<StepId> steps, std::optional<StepId> current, std::optional<Place> gap);

  PlanDocument& document_;
  std::vector<StepId> steps_;
  std::optional<StepId> current_, anchor_;
  std::optional<Place> gap_;
};

} // namespace matwright
