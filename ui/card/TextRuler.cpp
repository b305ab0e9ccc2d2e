#include "ui/card/TextRuler.h"

#include <QFontMetricsF>
#include <cmath>

namespace matwright {
namespace {

constexpr int kReferenceSize = 1000; // pixels
constexpr qreal kMargin = 1.004;     // for what kerning across words and rounding may add

} // namespace

TextRuler::Reference& TextRuler::referenceFor(const QFont& font) const {
  const std::pair key{static_cast<int>(font.weight()), static_cast<int>(font.styleStrategy())};
  auto at = references_.find(key);
  if (at == references_.end()) {
    Reference reference{font, 0, {}};
    reference.font.setPixelSize(kReferenceSize);
    reference.lineHeight = QFontMetricsF(reference.font).lineSpacing();
    at = references_.insert(key, std::move(reference));
  }
  return *at;
}

qreal TextRuler::width(const QFont& font, const QString& text) const {
  Reference& reference = referenceFor(font);
  auto at = reference.widths.find(text);
  if (at == reference.widths.end())
    at = reference.widths.insert(text, QFontMetricsF(reference.font).horizontalAdvance(text) * kMargin);
  return *at * font.pixelSize() / kReferenceSize;
}

qreal TextRuler::lineHeight(const QFont& font) const {
  // Whole units, as lines are drawn: fractions would add up over a long text.
  return std::ceil(referenceFor(font).lineHeight * font.pixelSize() / kReferenceSize);
}

QStringList TextRuler::wrapped(const QFont& font, const QString& text, qreal available) const {
  if (text.isEmpty())
    return {};
  if (width(font, text) <= available)
    return {text};
  QStringList lines;
  QString line;
  qreal used = 0;
  const qreal space = width(font, QStringLiteral(" "));
  for (const QString& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
    const qreal wide = width(font, word);
    if (!line.isEmpty() && used + space + wide <= available) {
      line += QLatin1Char(' ') + word;
      used += space + wide;
      continue;
    }
    if (!line.isEmpty())
      lines << line;
    line = word;
    used = wide;
    while (used > available && line.size() > 1) { // too long for any line: as much as fits of it
      qsizetype fits = 1;
      while (fits + 1 < line.size() && width(font, line.left(fits + 1)) <= available)
        ++fits;
      lines << line.left(fits);
      line = line.mid(fits);
      used = width(font, line);
    }
  }
  if (!line.isEmpty())
    lines << line;
  return lines;
}

} // namespace matwright
