#include "ui/controls/FaultMarks.h"

#include "ui/controls/Labels.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QScrollArea>
#include <QStyle>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {
namespace {

void polishAgain(QWidget* widget) {
  widget->style()->unpolish(widget);
  widget->style()->polish(widget);
}

} // namespace

QLabel* faultLabel() {
  QLabel* label = plainLabel({});
  label->hide();
  return label;
}

QString lineOf(const FaultLine& fault) {
  return fault.hint ? QCoreApplication::translate("FaultMarks", "\u25cb Worth a look: %1").arg(fault.words)
                    : QStringLiteral("\u25b2 ") + fault.words;
}

void showFaults(QLabel* label, const std::vector<FaultLine>& faults) {
  QStringList lines;
  bool wrong = false;
  for (const FaultLine& fault : faults) {
    lines << lineOf(fault);
    wrong = wrong || !fault.hint;
  }
  showText(label, lines.join(QLatin1Char('\n')));
  if (label->property("fault").toBool() == wrong)
    return;
  label->setProperty("fault", wrong);
  polishAgain(label);
}

void FaultMarks::addField(QGridLayout& grid, int field, const QString& name, QWidget* widget, QLabel* hint) {
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

void FaultMarks::mark(int field, QWidget* widget, QLabel* note, QLabel* name) { marks_[field] = {widget, note, name}; }

void FaultMarks::show(const std::multimap<int, FaultLine>& faults) const {
  for (const auto& [field, mark] : marks_) {
    std::vector<FaultLine> here;
    const auto [first, last] = faults.equal_range(field);
    std::transform(first, last, std::back_inserter(here), [](const auto& entry) { return entry.second; });
    showFaults(mark.note, here);
    mark.widget->setAccessibleDescription(mark.note->text());
    const bool faulty = std::any_of(here.begin(), here.end(), [](const FaultLine& fault) { return !fault.hint; });
    if (mark.widget->property("faulty").toBool() == faulty)
      continue;
    mark.widget->setProperty("faulty", faulty);
    polishAgain(mark.widget);
    if (mark.name)
      mark.name->setFont(faulty ? headingFont(mark.widget->font()) : mark.widget->font());
  }
}

void FaultMarks::goTo(int field) const {
  const auto at = marks_.find(field);
  if (at == marks_.end())
    return;
  at->second.widget->setFocus(Qt::OtherFocusReason);
  for (QWidget* above = at->second.widget->parentWidget(); above; above = above->parentWidget())
    if (auto* area = qobject_cast<QScrollArea*>(above)) {
      area->ensureWidgetVisible(at->second.widget);
      break;
    }
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

QString keptText(bool kept, const std::vector<FaultLine>& faults, const QString& otherwise) {
  if (!kept)
    return QCoreApplication::translate("FaultMarks",
                                       "Not kept yet: this has to be put right first. Choose a line to go there.");
  const bool wrong = std::any_of(faults.begin(), faults.end(), [](const FaultLine& fault) { return !fault.hint; });
  return wrong ? QCoreApplication::translate("FaultMarks",
                                             "Kept, but something is not right yet. Choose a line to go there.")
               : otherwise;
}

} // namespace matwright
