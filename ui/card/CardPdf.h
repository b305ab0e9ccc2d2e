#pragma once

#include "ui/card/CardLayout.h"
#include "ui/paper/Pdf.h"

#include <QByteArray>

namespace matwright {

// The card as a PDF document with embedded fonts, title and metadata; one page unless `pages` says more.
QByteArray cardPdf(const Card& card, QSizeF paperMillimetres, int pages = 1);

} // namespace matwright
