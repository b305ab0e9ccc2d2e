#pragma once

#include "ui/document/PlanDocument.h"

#include <QMenu>

namespace matwright {

// What could be done in the place of the step that a caution is on: for the one it concerns, as her variant on the
// card, and for everybody. Choosing one is one entry of the undo list. Computed when it is filled.
class SwapMenu : public QMenu {
  Q_OBJECT

public:
  static constexpr std::size_t kMostForPerson = 6, kMostForEverybody = 8;

  explicit SwapMenu(PlanDocument& document, QWidget* parent = nullptr);

  // For a caution of the document's evaluation. One on the class as a whole has nothing to swap, and the menu says so.
  void fill(const Caution& caution);

private:
  void addHeading(const QString& words);
  void addSwaps(const Caution& caution, const std::optional<PersonId>& person, std::size_t most);
  void addTakeBack(StepId step, const PersonId& person, const QString& name);

  PlanDocument& document_;
};

} // namespace matwright
