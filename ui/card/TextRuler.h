#pragma once

#include <QFont>
#include <QHash>
#include <QString>
#include <QStringList>
#include <utility>

namespace matwright {

// Measures and wraps text quickly: each word is shaped once at one size, and its width scaled from there, which fonts
// without hinting allow. Lengths are in the units of the fonts' pixel sizes.
class TextRuler {
public:
  qreal width(const QFont& font, const QString& text) const;
  qreal lineHeight(const QFont& font) const;

  // Lines no wider than `width`: broken between words, and within one only when it alone is wider. No lines for an
  // empty text.
  QStringList wrapped(const QFont& font, const QString& text, qreal width) const;

private:
  struct Reference { // of one weight and style, at kReferenceSize
    QFont font;
    qreal lineHeight = 0;
    QHash<QString, qreal> widths;
  };
  Reference& referenceFor(const QFont& font) const;

  mutable QHash<std::pair<int, int>, Reference> references_;
};

} // namespace matwright
