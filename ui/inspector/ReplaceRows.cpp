#include "ui/inspector/ReplaceRows.h"

#include "ui/controls/Labels.h"
#include "ui/controls/MovementRow.h"
#include "ui/text/VocabularyText.h"
#include "ui/theme/Theme.h"

namespace matwright {
namespace {

QString doseOf(const Step& with, const Movement& movement) {
  const Work work = workOf(with.dose, with.tempo, movement.sides, with.onlySide);
  return QStringLiteral("%1 \u00b7 %2").arg(doseText(with.dose, movement.sides, with.onlySide), clock(work.whole));
}

QString detailsOf(const PlanDocument& document, const Swap& swap, const ClassPlan& after) {
  QStringList lines{swapName(swap), QString::fromStdString(swap.movement->about)};
  if (swap.option && !swap.option->how.empty())
    lines << QString::fromStdString(swap.option->how);
  lines << cautionDetails(swap, document.knowledge(), document.plan(), after, document.evaluation(), document.roster());
  return lines.join(QLatin1Char('\n'));
}

} // namespace

QString ReplaceRow::spoken() const {
  QStringList parts{name, dose, changes, likeness};
  parts << unprepared;
  for (const SwapLine& line : cautions)
    parts << line.words;
  return parts.join(QStringLiteral(". "));
}

std::vector<ReplaceRow> replaceRows(const PlanDocument& document, const Step& step, const std::vector<Swap>& swaps) {
  const Movement* own = document.knowledge().catalogue.find(step.movement);
  ClassPlan after = document.plan();
  const Place place = *placeOf(after, step.id);
  Step& tried = after.sections[place.section].steps[place.index];
  const std::vector<Unprepared> byAll = unpreparedByAll(swaps);
  std::vector<ReplaceRow> rows;
  for (const Swap& swap : swaps) {
    tried = swapped(step, swap);
    rows.push_back({swap.movement, swap.option, swapName(swap), doseOf(tried, *swap.movement), disturbanceText(swap),
                    likenessText(own, swap), unpreparedText(without(swap.unprepared, byAll)),
                    cautionLines(swap, step.id, document.evaluation(), document.roster()),
                    detailsOf(document, swap, after)});
  }
  return rows;
}

MovementRow ReplaceRows::shown(int row, const QFont& font) const {
  const Theme& theme = rowTheme();
  const ReplaceRow& of = rows_[static_cast<std::size_t>(row)];
  MovementRow shown{
      of.movement,
      of.option,
      {{of.name, headingFont(font), theme.ink}, {of.dose, font, theme.inkSoft}, {of.likeness, font, theme.inkSoft}},
      {{of.changes, font, theme.accent}}};
  for (const QString& line : of.unprepared)
    shown.below.push_back({line, font, theme.ink});
  for (const SwapLine& line : of.cautions)
    shown.below.push_back({line.words, font, theme.ink, line.level});
  return shown;
}

int ReplaceRows::height(int row, const QFont& font, int width) const { return heightOf(shown(row, font), font, width); }

void ReplaceRows::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  if (index.row() < static_cast<int>(rows_.size()) && option.widget)
    matwright::paint(*painter, option, shown(index.row(), option.font), *option.widget);
}

QSize ReplaceRows::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const int width = option.widget ? option.widget->width() : 240;
  return {width, index.row() < static_cast<int>(rows_.size()) ? height(index.row(), option.font, width) : 0};
}

} // namespace matwright
