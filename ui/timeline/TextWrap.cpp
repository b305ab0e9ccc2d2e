#include "ui/timeline/TextWrap.h"

#include <algorithm>
#include <limits>
#include <vector>

namespace matwright {
namespace {

// Pieces that stay whole, each with the blank that follows it.
std::vector<QString> piecesOf(const QString& text) {
  std::vector<QString> pieces;
  QString piece;
  for (const QChar sign : text) {
    if (sign == QLatin1Char(' ') && (piece.isEmpty() || piece.endsWith(QLatin1Char(' '))))
      continue;
    piece += sign;
    if (sign == QLatin1Char(' ') || sign == QLatin1Char('-') || sign == QLatin1Char('/')) {
      pieces.push_back(piece);
      piece.clear();
    }
  }
  if (!piece.isEmpty())
    pieces.push_back(piece);
  return pieces;
}

// Greedy filling, which uses the fewest lines that a width allows.
std::optional<Wrap> filled(const std::vector<QString>& pieces, qreal width, const TextMeasure& measure) {
  Wrap wrap;
  QString line;
  const auto close = [&] {
    const QString whole = line.trimmed();
    wrap.width = std::max(wrap.width, measure.width(whole));
    wrap.lines << whole;
    line.clear();
  };
  for (const QString& piece : pieces) {
    if (measure.width(piece.trimmed()) > width)
      return std::nullopt;
    if (!line.isEmpty() && measure.width((line + piece).trimmed()) > width)
      close();
    line += piece;
  }
  if (!line.isEmpty())
    close();
  return wrap;
}

} // namespace

std::optional<Wrap> wrapWithin(const QString& text, qreal width, int most, const TextMeasure& measure) {
  auto wrap = filled(piecesOf(text), width, measure);
  if (!wrap || wrap->lines.size() > most)
    return std::nullopt;
  return wrap;
}

std::optional<Wrap> wrapOnto(const QString& text, int lines, const TextMeasure& measure) {
  const std::vector<QString> pieces = piecesOf(text);
  const auto count = static_cast<int>(pieces.size());
  if (lines < 1 || count < lines)
    return std::nullopt;
  // The widths that a line from piece i to piece j can have; the best break is the least of the widest lines.
  std::vector<std::vector<qreal>> least(static_cast<std::size_t>(lines) + 1,
                                        std::vector<qreal>(pieces.size() + 1, std::numeric_limits<qreal>::max()));
  std::vector<std::vector<int>> from(least.size(), std::vector<int>(pieces.size() + 1, 0));
  least[0][0] = 0;
  for (int line = 1; line <= lines; ++line)
    for (int end = line; end <= count; ++end) {
      QString text_;
      for (int begin = end - 1; begin >= line - 1; --begin) {
        text_.prepend(pieces[static_cast<std::size_t>(begin)]);
        const qreal before = least[static_cast<std::size_t>(line) - 1][static_cast<std::size_t>(begin)];
        const qreal widest = std::max(before, measure.width(text_.trimmed()));
        if (widest < least[static_cast<std::size_t>(line)][static_cast<std::size_t>(end)]) {
          least[static_cast<std::size_t>(line)][static_cast<std::size_t>(end)] = widest;
          from[static_cast<std::size_t>(line)][static_cast<std::size_t>(end)] = begin;
        }
      }
    }
  Wrap wrap;
  wrap.width = least.back().back();
  int end = count;
  for (int line = lines; line >= 1; --line) {
    const int begin = from[static_cast<std::size_t>(line)][static_cast<std::size_t>(end)];
    QString whole;
    for (int piece = begin; piece < end; ++piece)
      whole += pieces[static_cast<std::size_t>(piece)];
    wrap.lines.prepend(whole.trimmed());
    end = begin;
  }
  return wrap;
}

} // namespace matwright
