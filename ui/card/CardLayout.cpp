#include "ui/card/CardLayout.h"

#include "ui/card/TextRuler.h"
#include "ui/text/VocabularyText.h"
#include "ui/theme/Theme.h"

#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr qreal kMarginMillimetres = 11.0;

QFont fontOf(qreal points, QFont::Weight weight = QFont::Normal) {
  QFont font(textFamily());
  font.setPixelSize(std::max(1, static_cast<int>(std::lround(points * kUnitsPerPoint))));
  font.setWeight(weight);
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

// The fonts of one size of type.
struct Type {
  QFont name, option, small, dose, heading, time;
  qreal unit; // one point at this size, in units: what paddings are measured by
  const TextRuler& ruler;

  Type(qreal points, const TextRuler& textRuler)
      : name(fontOf(points, QFont::Bold)), option(fontOf(points * 0.92)), small(fontOf(points * 0.86)),
        dose(fontOf(points, QFont::DemiBold)), heading(fontOf(points * 0.86, QFont::DemiBold)),
        time(fontOf(points * 0.92)), unit(points * kUnitsPerPoint / 11.0), ruler(textRuler) {
    // Shaping would raise the colon between digits to a glyph that readers of the PDF do not know as a colon.
    time.setStyleStrategy(QFont::PreferNoShaping);
  }

  qreal widthOf(const QFont& font, const QString& text) const { return ruler.width(font, text); }
  qreal lineOf(const QFont& font) const { return ruler.lineHeight(font); }
};

// Columns within one row, from its left edge.
struct RowGrid {
  qreal width, figure, figureLeft, textLeft, textWidth, doseLeft, doseWidth, cautionLeft, cautionWidth;
  bool stacked; // dose and cautions stand under the name
};

RowGrid gridOf(const CardWords& words, const Type& type, qreal width, int columns) {
  RowGrid grid{};
  grid.width = width;
  grid.stacked = columns > 1;
  qreal time = 0, dose = 0;
  bool cautions = false;
  for (const SectionWords& section : words.sections)
    for (const RowWords& row : section.rows) {
      time = std::max(time, type.widthOf(type.time, row.time));
      dose = std::max(dose, std::max(type.widthOf(type.dose, row.dose), type.widthOf(type.small, row.breath)));
      cautions = cautions || !row.cautions.empty() || !row.variants.empty();
    }
  const qreal pad = 7 * type.unit * kUnitsPerPoint / 10;
  grid.figureLeft = 8 * type.unit + time + pad;
  grid.figure = (grid.stacked ? 46 : 62) * type.unit;
  grid.textLeft = grid.figureLeft + grid.figure + pad;
  const qreal rest = width - grid.textLeft;
  if (grid.stacked) {
    grid.textWidth = rest;
    return grid;
  }
  grid.doseWidth = std::min(dose, rest * 0.3);
  grid.cautionWidth = cautions ? rest * 0.3 : 0;
  grid.cautionLeft = width - grid.cautionWidth;
  grid.doseLeft = grid.cautionLeft - (cautions ? pad * 1.5 : 0) - grid.doseWidth;
  grid.textWidth = grid.doseLeft - pad * 1.5 - grid.textLeft;
  return grid;
}

// Puts one row at `top`, or only measures it when `page` is null. Returns its height.
class RowPlacer {
public:
  RowPlacer(const Type& type, const RowGrid& grid) : type_(type), grid_(grid) {}

  qreal place(const RowWords& words, qreal left, qreal top, PlacedPage* page) const {
    const qreal first = type_.lineOf(type_.name);
    qreal text = top;
    // The name is bold and its option is not, unless both do not fit one line: then the option stands below.
    const qreal nameWidth = type_.widthOf(type_.name, words.name);
    const bool oneLine =
        !words.option.isEmpty() &&
        nameWidth + type_.widthOf(type_.option, QStringLiteral("  ") + words.option) <= grid_.textWidth;
    const qreal textLeft = left + grid_.textLeft;
    text += put(page, type_.name, words.name, {textLeft, text}, grid_.textWidth);
    if (oneLine) {
      const qreal drop = (type_.lineOf(type_.name) - type_.lineOf(type_.option)) * kAscent;
      put(page, type_.option, words.option, {textLeft + nameWidth + 4 * type_.unit, top + drop},
          grid_.textWidth - nameWidth, true);
    } else if (!words.option.isEmpty()) {
      text += put(page, type_.option, words.option, {textLeft, text}, grid_.textWidth, true);
    }
    if (grid_.stacked)
      text += put(page, type_.dose, stackedDose(words), {textLeft, text}, grid_.textWidth);
    text += put(page, type_.small, words.cue, {textLeft, text}, grid_.textWidth, true);
    text += put(page, type_.small, words.note, {textLeft, text}, grid_.textWidth);
    qreal side = top;
    if (!grid_.stacked) {
      side += put(page, type_.dose, words.dose, {left + grid_.doseLeft, side}, grid_.doseWidth);
      side += put(page, type_.small, words.breath, {left + grid_.doseLeft, side}, grid_.doseWidth, true);
    }
    qreal caution = grid_.stacked ? text : top;
    const qreal cautionLeft = left + (grid_.stacked ? grid_.textLeft : grid_.cautionLeft);
    const qreal cautionWidth = grid_.stacked ? grid_.textWidth : grid_.cautionWidth;
    for (const QString& variant : words.variants)
      caution += put(page, type_.small, variant, {cautionLeft, caution}, cautionWidth);
    for (const CautionLine& line : words.cautions)
      caution += putCaution(page, line, {cautionLeft, caution}, cautionWidth);
    const qreal drop = (type_.lineOf(type_.name) - type_.lineOf(type_.time)) * kAscent;
    put(page, type_.time, words.time, {left + 8 * type_.unit, top + drop}, grid_.figureLeft, true);
    const qreal bottom = std::max({text, side, caution, top + leastHeight()});
    if (page)
      page->figures.push_back(
          {QRectF(left + grid_.figureLeft, top, grid_.figure, std::min(bottom - top, first * 2.6)), words.row->poses});
    return bottom - top;
  }

  // No row is lower.
  qreal leastHeight() const { return type_.lineOf(type_.name) * kLeastLines; }

  qreal putCaution(PlacedPage* page, const CautionLine& line, QPointF at, qreal width) const {
    const qreal size = type_.lineOf(type_.small) * 0.92;
    if (page)
      page->marks.push_back({QRectF(at, QSizeF(size, size)), line.level});
    return std::max(
        size, put(page, type_.small, line.text, at + QPointF(size + 4 * type_.unit, 0), width - size - 4 * type_.unit));
  }

  qreal put(PlacedPage* page, const QFont& font, const QString& text, QPointF at, qreal width,
            bool soft = false) const {
    if (text.isEmpty())
      return 0;
    const QStringList lines = type_.ruler.wrapped(font, text, width);
    const qreal height = static_cast<qreal>(lines.size()) * type_.lineOf(font);
    if (page)
      page->texts.push_back({QRectF(at, QSizeF(width, height)), lines.join(QLatin1Char('\n')), font, soft, false});
    return height;
  }

private:
  static constexpr qreal kLeastLines = 1.9; // room for a figure
  static constexpr qreal kAscent = 0.79;    // share of a line above its base

  static QString stackedDose(const RowWords& words) {
    return words.breath.isEmpty() ? words.dose : words.dose + QStringLiteral("  \u00b7  ") + words.breath;
  }

  const Type& type_;
  const RowGrid& grid_;
};

struct Trial {
  qreal points;
  int columns;
  Density density;
};

class Builder {
public:
  Builder(const Card& card, QSizeF paper, int pages) : pageCount_(pages) {
    paper_ = unitsOf(paper);
    const qreal margin = unitsOf({kMarginMillimetres, 0}).width();
    area_ = QRectF(QPointF(margin, margin), QSizeF(paper_.width() - 2 * margin, paper_.height() - 2 * margin));
    for (Density density : {Density::full, Density::withoutBreath, Density::namesAndDoses})
      words_.push_back(wordsOf(card, density));
    for (const CardSection& section : card.sections)
      rowCount_ += section.rows.size();
  }

  // Whether everything fits; fills `into` when it does.
  bool build(const Trial& trial, CardLayout& into) const {
    const CardWords& words = words_[static_cast<std::size_t>(trial.density)];
    const Type type(trial.points, ruler_);
    const qreal gutter = 16 * kUnitsPerPoint;
    const qreal columnWidth = (area_.width() - gutter * (trial.columns - 1)) / trial.columns;
    const RowGrid grid = gridOf(words, type, columnWidth, trial.columns);
    if (grid.textWidth < 60 * type.unit)
      return false;
    const RowPlacer placer(type, grid);
    CardLayout layout;
    layout.paper = paper_;
    layout.points = trial.points;
    layout.columns = trial.columns;
    layout.density = trial.density;
    layout.pages.resize(static_cast<std::size_t>(pageCount_));
    qreal top = header(words, type, layout.pages.front());
    const qreal bottom = footer(words, layout.pages.back(), trial.points);
    const auto columns = static_cast<std::size_t>(trial.columns * pageCount_);
    const auto columnTop = [&](std::size_t column) {
      return column < static_cast<std::size_t>(trial.columns) ? top : area_.top();
    };
    const auto columnBottom = [&](std::size_t column) {
      return column >= columns - static_cast<std::size_t>(trial.columns) ? bottom : area_.bottom();
    };
    qreal everything = 0;
    for (std::size_t column = 0; column < columns; ++column)
      everything += columnBottom(column) - columnTop(column);
    // Most trials of a long class fail on this, before a word is measured.
    if (static_cast<qreal>(rowCount_) * (placer.leastHeight() + 5 * type.unit) > everything)
      return false;
    const Flow flow{words,   type,         placer, heightsOf(words, placer), columnWidth, columnWidth + gutter,
                    columns, trial.columns};
    const qreal total = lengthOf(flow);
    if (total > everything)
      return false;
    // Columns are filled evenly: to the shortest length at which everything still fits.
    const qreal stride = 10 * type.unit;
    for (qreal length = total / static_cast<qreal>(columns);; length += stride) {
      const auto limit = [&](std::size_t column) { return std::min(columnBottom(column), columnTop(column) + length); };
      if (run(flow, columnTop, limit, nullptr)) {
        run(flow, columnTop, limit, &layout);
        into = std::move(layout);
        return true;
      }
      if (length > area_.height())
        return false;
    }
  }

private:
  // What runs through the columns, with the height of every row.
  struct Flow {
    const CardWords& words;
    const Type& type;
    const RowPlacer& placer;
    std::vector<qreal> heights;
    qreal columnWidth, stride; // of a column, and from one to the next
    std::size_t columns;       // on all pages
    int perPage;

    qreal gap() const { return 5 * type.unit; }
    qreal headingHeight() const { return type.lineOf(type.heading) + gap() * 0.4; }
  };

  static std::vector<qreal> heightsOf(const CardWords& words, const RowPlacer& placer) {
    std::vector<qreal> heights;
    for (const SectionWords& section : words.sections)
      for (const RowWords& row : section.rows)
        heights.push_back(placer.place(row, 0, 0, nullptr));
    return heights;
  }

  static qreal lengthOf(const Flow& flow) {
    qreal length = static_cast<qreal>(flow.words.sections.size()) * (flow.headingHeight() + flow.gap());
    for (qreal height : flow.heights)
      length += height + flow.gap();
    return length;
  }

  // Lets the rows run through the columns; false when they do not fit. A heading never stands alone at the foot of one.
  template <class Top, class Bottom> bool run(const Flow& flow, Top top, Bottom bottom, CardLayout* layout) const {
    const auto perPage = static_cast<std::size_t>(flow.perPage);
    const qreal headingHeight = flow.headingHeight();
    std::size_t column = 0, rowIndex = 0;
    qreal y = top(0);
    for (std::size_t index = 0; index < flow.words.sections.size(); ++index) {
      const SectionWords& section = flow.words.sections[index];
      bool heading = true;
      qreal barTop = y;
      for (const RowWords& row : section.rows) {
        const qreal height = flow.heights[rowIndex++];
        const qreal needed = height + (heading ? headingHeight : 0);
        if (y + needed > bottom(column)) {
          if (layout && !heading)
            addBar(*layout, flow, column, barTop, y - flow.gap(), index);
          if (++column == flow.columns)
            return false;
          y = barTop = top(column);
          if (y + needed > bottom(column))
            return false;
        }
        PlacedPage* page = layout ? &layout->pages[column / perPage] : nullptr;
        const qreal left = area_.left() + flow.stride * static_cast<qreal>(column % perPage);
        if (heading) {
          if (page)
            flow.placer.put(page, flow.type.heading, section.name, {left + 8 * flow.type.unit, y},
                            flow.columnWidth - 8 * flow.type.unit, true);
          y += headingHeight;
          heading = false;
        }
        if (page)
          flow.placer.place(row, left, y, page);
        y += height + flow.gap();
      }
      if (layout)
        addBar(*layout, flow, column, barTop, y - flow.gap(), index);
      y += flow.gap();
    }
    return true;
  }

  void addBar(CardLayout& layout, const Flow& flow, std::size_t column, qreal top, qreal bottom,
              std::size_t section) const {
    const auto perPage = static_cast<std::size_t>(flow.perPage);
    const qreal left = area_.left() + flow.stride * static_cast<qreal>(column % perPage);
    layout.pages[column / perPage].bars.push_back({QRectF(left, top, 3 * flow.type.unit, bottom - top), section});
  }

  // Returns where the rows may begin.
  qreal header(const CardWords& words, const Type& type, PlacedPage& page) const {
    const RowGrid grid{};
    const RowPlacer placer(type, grid);
    qreal titlePoints = 19;
    const QFont small = fontOf(10);
    const QFont people = fontOf(11, QFont::DemiBold);
    const qreal peopleWidth = std::min(ruler_.width(people, words.people), area_.width() * 0.42);
    const qreal titleWidth = area_.width() - peopleWidth - 12 * kUnitsPerPoint;
    while (titlePoints > 12 && ruler_.width(fontOf(titlePoints, QFont::Bold), words.title) > titleWidth)
      titlePoints -= 0.5;
    const QFont title = fontOf(titlePoints, QFont::Bold);
    qreal y = area_.top();
    const qreal titleHeight = placer.put(&page, title, words.title, {area_.left(), y}, titleWidth);
    const QStringList peopleLines = ruler_.wrapped(people, words.people, peopleWidth);
    const qreal peopleHeight = static_cast<qreal>(peopleLines.size()) * ruler_.lineHeight(people);
    if (!peopleLines.isEmpty())
      page.texts.push_back({QRectF(area_.right() - peopleWidth, y + 3 * kUnitsPerPoint, peopleWidth, peopleHeight),
                            peopleLines.join(QLatin1Char('\n')), people, false, true});
    y += std::max(titleHeight, peopleHeight + 3 * kUnitsPerPoint);
    y += placer.put(&page, small, words.subtitle, {area_.left(), y}, area_.width(), true);
    y += placer.put(&page, small, words.note, {area_.left(), y}, area_.width());
    const Type fixed(11, ruler_);
    const RowPlacer cautions(fixed, grid);
    for (const CautionLine& line : words.wholeClass)
      y += cautions.putCaution(&page, line, {area_.left(), y + 2 * kUnitsPerPoint}, area_.width());
    y += 5 * kUnitsPerPoint;
    page.rules.push_back(QLineF(area_.left(), y, area_.right(), y));
    return y + 7 * kUnitsPerPoint;
  }

  // Returns where the rows must end.
  qreal footer(const CardWords& words, PlacedPage& page, qreal points) const {
    const qreal terrainHeight = 44 * kUnitsPerPoint;
    const Type type(std::clamp(points, 8.0, 9.5), ruler_);
    const RowGrid grid{};
    const RowPlacer placer(type, grid);
    const QString notices = words.notices.join(QLatin1Char(' '));
    const qreal noticeHeight =
        static_cast<qreal>(ruler_.wrapped(type.small, notices, area_.width()).size()) * type.lineOf(type.small);
    const qreal legendHeight = type.lineOf(type.small) * 1.15;
    const qreal top = area_.bottom() - terrainHeight - noticeHeight - legendHeight - 14 * kUnitsPerPoint;
    page.rules.push_back(QLineF(area_.left(), top, area_.right(), top));
    qreal x = area_.left();
    qreal y = top + 5 * kUnitsPerPoint;
    for (std::size_t i = kWordCount<Level>; i-- > 0;) {
      const auto level = static_cast<Level>(i);
      const QString word = text(level);
      const qreal wide = type.widthOf(type.small, word) + 18 * kUnitsPerPoint;
      placer.putCaution(&page, {level, word}, {x, y}, wide);
      x += wide + 12 * kUnitsPerPoint;
    }
    y += legendHeight;
    y += placer.put(&page, type.small, notices, {area_.left(), y}, area_.width(), true);
    page.terrain = QRectF(area_.left(), area_.bottom() - terrainHeight, area_.width(), terrainHeight);
    return top - 6 * kUnitsPerPoint;
  }

  int pageCount_;
  std::size_t rowCount_ = 0;
  QSizeF paper_;
  QRectF area_;
  std::vector<CardWords> words_; // by density
  TextRuler ruler_;
};

} // namespace

CardLayout layOut(const Card& card, QSizeF paperMillimetres, int pages) {
  const Builder builder(card, paperMillimetres, std::max(1, pages));
  // A card without breath, or without cues, is worth it only when the type grows a great deal by it.
  const auto worth = [](const Trial& trial) {
    constexpr qreal kLost[] = {0, 3.5, 8}; // points, by density
    return trial.points - kLost[static_cast<std::size_t>(trial.density)] - 0.5 * (trial.columns - 1);
  };
  std::vector<Trial> trials;
  for (Density density : {Density::full, Density::withoutBreath, Density::namesAndDoses})
    for (int columns = 1; columns <= 3; ++columns)
      for (qreal points = kLargestPoints; points >= kSmallestPoints; points -= 0.5)
        trials.push_back({points, columns, density});
  std::stable_sort(trials.begin(), trials.end(), [&](const Trial& a, const Trial& b) { return worth(a) > worth(b); });
  CardLayout layout;
  for (const Trial& trial : trials)
    if (builder.build(trial, layout))
      return layout;
  for (qreal points = kSmallestPoints * 0.93; points > 0.05; points *= 0.93)
    for (int columns = 2; columns <= 5; ++columns)
      if (builder.build({points, columns, Density::namesAndDoses}, layout)) {
        layout.legible = false;
        return layout;
      }
  return layout;
}

} // namespace matwright
