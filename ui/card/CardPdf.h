#pragma once

#include "ui/card/CardLayout.h"

#include <QByteArray>

namespace matwright {

inline constexpr QSizeF kA4Millimetres{210, 297};
inline constexpr QSizeF kLetterMillimetres{215.9, 279.4};

// The card as a PDF document with embedded fonts, title and metadata; one page unless `pages` says more.
QByteArray cardPdf(const Card& card, QSizeF paperMillimetres, int pages = 1);

} // namespace matwright
