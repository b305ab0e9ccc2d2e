#include "ui/movements/MovementPage.h"

#include "ui/controls/Labels.h"

#include <QGridLayout>
#include <QScrollArea>
#include <QStyle>
#include <QVBoxLayout>
#include <algorithm>
#include <iterator>
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
  const int row = grid.rowCount();
  QLabel* label = besideLabel(name, widget);
  label->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
  QLabel* note = faultLabel();
  auto* column = new QVBoxLayout;
  column->setSpacing(2);
  column->addWidget(widget);
  if (hint)
    column->addWidget(hint);
  column->addWidget(note);
  grid.addWidget(label, row, 0, Qt::AlignTop);
  grid.addLayout(column, row, 1);
  mark(field, widget, note, label);
}

void MovementPage::mark(MovementField field, QWidget* widget, QLabel* note, QLabel* name) {
  marks_[field] = {widget, note, name, name ? name->text() : QString()};
}

void MovementPage::showFaults(const std::vector<FieldFault>& faults) {
  for (auto& [field, mark] : marks_) {
    std::vector<FieldFault> here;
    std::copy_if(faults.begin(), faults.end(), std::back_inserter(here),
                 [&](const FieldFault& fault) { return fault.field == field; });
    matwright::showFaults(mark.note, here);
    const bool faulty = std::any_of(here.begin(), here.end(), [](const FieldFault& fault) { return !fault.hint; });
    if (mark.widget->property("faulty").toBool() == faulty)
      continue;
    mark.widget->setProperty("faulty", faulty);
    mark.widget->style()->unpolish(mark.widget);
    mark.widget->style()->polish(mark.widget);
    if (mark.name)
      mark.name->setFont(faulty ? headingFont(font()) : font());
  }
  for (auto& [field, mark] : marks_)
    mark.widget->setAccessibleDescription(mark.note->text());
}

void MovementPage::goTo(const FieldFault& fault) {
  const auto at = marks_.find(fault.field);
  if (at == marks_.end())
    return;
  at->second.widget->setFocus(Qt::OtherFocusReason);
  for (QWidget* above = parentWidget(); above; above = above->parentWidget())
    if (auto* area = qobject_cast<QScrollArea*>(above)) {
      area->ensureWidgetVisible(at->second.widget);
      break;
    }
}

QLabel* faultLabel() {
  QLabel* label = plainLabel({});
  label->hide();
  return label;
}

QString lineOf(const FieldFault& fault, const QString& words) {
  return fault.hint ? MovementPage::tr("\u25cb Worth a look: %1").arg(words) : QStringLiteral("\u25b2 ") + words;
}

void showFaults(QLabel* label, const std::vector<FieldFault>& faults) {
  QStringList lines;
  bool wrong = false;
  for (const FieldFault& fault : faults) {
    lines << lineOf(fault, fault.words);
    wrong = wrong || !fault.hint;
  }
  showText(label, lines.join(QLatin1Char('\n')));
  if (label->property("fault").toBool() == wrong)
    return;
  label->setProperty("fault", wrong);
  label->style()->unpolish(label);
  label->style()->polish(label);
}

QGridLayout* fieldGrid(QWidget* page) {
  constexpr int kFieldShare = 100, kRest = 1;
  auto* grid = new QGridLayout(page);
  grid->setHorizontalSpacing(14);
  grid->setVerticalSpacing(9);
  grid->setColumnStretch(1, kFieldShare);
  grid->setColumnStretch(2, kRest);
  grid->addItem(new QSpacerItem(0, 0, QSizePolicy::Expanding, QSizePolicy::Minimum), 0, 2);
  return grid;
}

} // namespace matwright
