#include "ui/card/CardPdf.h"

#include "ui/card/CardPainter.h"

namespace matwright {

QByteArray cardPdf(const Card& card, QSizeF paperMillimetres, int pages) {
  const CardLayout layout = layOut(card, paperMillimetres, pages);
  const CardWords words = wordsOf(card, layout.density);
  return pdfOf({words.title, words.subtitle, paperMillimetres, static_cast<int>(layout.pages.size())},
               [&](QPainter& painter, const QRectF& sheet, int page) {
                 paintCard(painter, sheet, card, layout, static_cast<std::size_t>(page));
               });
}

} // namespace matwright
