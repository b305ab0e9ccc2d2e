#include "ui/movements/MovementPage.h"

#include <utility>

namespace matwright {

MovementPage::MovementPage(QWidget* parent) : QWidget(parent) {}

void MovementPage::show(const Movement& movement, std::shared_ptr<const Knowledge> knowledge) {
  movement_ = movement;
  knowledge_ = std::move(knowledge);
  refresh();
}

void MovementPage::change(const std::function<void(Movement&)>& edit, const QString& what, const QString& gesture) {
  Movement after = movement_;
  edit(after);
  if (after == movement_)
    return;
  movement_ = after;
  Q_EMIT edited(after, what, gesture);
}

void MovementPage::addField(QGridLayout& grid, MovementField field, const QString& name, QWidget* widget,
                            QLabel* hint) {
  marks_.addField(grid, static_cast<int>(field), name, widget, hint);
}

void MovementPage::mark(MovementField field, QWidget* widget, QLabel* note) {
  marks_.mark(static_cast<int>(field), widget, note);
}

void MovementPage::showFaults(const std::vector<FieldFault>& faults) {
  std::multimap<int, FaultLine> lines;
  for (const FieldFault& fault : faults)
    lines.emplace(static_cast<int>(fault.field), static_cast<const FaultLine&>(fault));
  marks_.show(lines);
}

void MovementPage::goTo(const FieldFault& fault) { marks_.goTo(static_cast<int>(fault.field)); }

} // namespace matwright
