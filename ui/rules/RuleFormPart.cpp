#include "ui/rules/RuleFormPart.h"

#include "ui/controls/Labels.h"

#include <QGridLayout>
#include <QVBoxLayout>
#include <utility>

namespace matwright {

void RuleFormPart::show(const Rule& rule, std::shared_ptr<const Knowledge> knowledge) {
  rule_ = rule;
  knowledge_ = std::move(knowledge);
  refresh();
}

void RuleFormPart::change(const std::function<void(Rule&)>& edit, const QString& what, const QString& gesture) {
  Rule after = rule_;
  edit(after);
  if (after == rule_)
    return;
  rule_ = after;
  Q_EMIT edited(after, what, gesture);
}

QGridLayout* RuleFormPart::makeGrid(const QString& heading) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 10);
  column->setSpacing(8);
  column->addWidget(hairline());
  column->addWidget(headingLabel(heading));
  auto* grid = fieldGrid();
  column->addLayout(grid);
  whenFocusLeaves(this, this, [this] { Q_EMIT left(); });
  return grid;
}

void RuleFormPart::addField(QGridLayout& grid, Field field, const QString& name, QWidget* widget, QLabel* hint) {
  marks_.addField(grid, static_cast<int>(field), name, widget, hint);
}

QLabel* RuleFormPart::addPlain(QGridLayout& grid, const QString& name, QWidget* widget, QLabel* hint) {
  const int row = grid.rowCount();
  QLabel* label = besideLabel(name, widget);
  grid.addWidget(label, row, 0, Qt::AlignTop);
  auto* column = new QVBoxLayout;
  column->setSpacing(2);
  column->addWidget(widget);
  if (hint)
    column->addWidget(hint);
  grid.addLayout(column, row, 1);
  return label;
}

} // namespace matwright
