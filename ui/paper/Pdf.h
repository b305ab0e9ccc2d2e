// Sheets of paper, and PDF documents made of them.
#pragma once

#include <QByteArray>
#include <QPainter>
#include <QRectF>
#include <QString>
#include <functional>

namespace matwright {

inline constexpr QSizeF kA4Millimetres{210, 297};
inline constexpr QSizeF kLetterMillimetres{215.9, 279.4};

// Lengths on paper are in tenths of a typographic point.
inline constexpr qreal kUnitsPerPoint = 10.0;
QSizeF unitsOf(QSizeF millimetres);

struct PdfFacts {
  QString title, subject;
  QSizeF paper; // millimetres
  int pages = 1;
};

// A PDF document with embedded fonts, title and metadata; `paint` fills one page, from 0 on. The area is the whole
// sheet in units.
QByteArray pdfOf(const PdfFacts& facts, const std::function<void(QPainter&, const QRectF& sheet, int page)>& paint);

} // namespace matwright
