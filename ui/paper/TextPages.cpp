#include "ui/paper/TextPages.h"

#include "ui/paper/Pdf.h"
#include "ui/paper/TextStyle.h"
#include "ui/theme/Theme.h"

#include <QAbstractTextDocumentLayout>
#include <QCoreApplication>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextLayout>
#include <cmath>

namespace matwright {
namespace {

// The text is laid out in CSS pixels, 96 to the inch, so that its style means the same on paper as on screen.
constexpr qreal kPixelsPerPoint = 96.0 / 72.0;
constexpr qreal kPixelsPerMillimetre = 96.0 / 25.4;
constexpr qreal kMargin = 15 * kPixelsPerMillimetre, kFootHeight = 9 * kPixelsPerMillimetre;

QFont fontOf(double points) {
  QFont font(textFamily());
  font.setPixelSize(qRound(points * kPixelsPerPoint));
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

bool isHeading(const QTextBlock& block) { return block.blockFormat().headingLevel() > 0; }

} // namespace

TextPages::TextPages(const TextSheet& sheet, QSizeF paperMillimetres)
    : sheet_(sheet), paper_(paperMillimetres * kPixelsPerMillimetre), document_(std::make_unique<QTextDocument>()) {
  document_->setUndoRedoEnabled(false);
  document_->setUseDesignMetrics(true);
  document_->setDefaultFont(fontOf(kPoints));
  document_->setDocumentMargin(0);
  document_->setDefaultStyleSheet(textStyleOf(printTheme()));
  document_->setHtml(sheet.html);
  document_->setPageSize(
      {std::floor(paper_.width() - 2 * kMargin), std::floor(paper_.height() - 2 * kMargin - kFootHeight)});
  keepHeadingsWithText();
}

TextPages::~TextPages() = default;

// A heading at the end of a page goes to the next one with what it heads.
void TextPages::keepHeadingsWithText() {
  const auto& layout = *document_->documentLayout();
  const qreal page = document_->pageSize().height();
  // A block may begin on a page and have its first line on the next.
  const auto pageOf = [&](const QTextBlock& block) {
    const qreal top = layout.blockBoundingRect(block).top(); // makes sure that it is laid out
    const QTextLayout& lines = *block.layout();
    const qreal line = lines.lineCount() > 0 ? lines.position().y() + lines.lineAt(0).y() : top;
    return static_cast<int>(line / page);
  };
  for (QTextBlock block = document_->begin(); block.isValid(); block = block.next()) {
    if (!isHeading(block) || (block.previous().isValid() && isHeading(block.previous())))
      continue;
    QTextBlock headed = block.next();
    while (headed.isValid() && isHeading(headed))
      headed = headed.next();
    if (!headed.isValid() || pageOf(headed) == pageOf(block))
      continue;
    QTextCursor cursor(block);
    QTextBlockFormat format;
    format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
    cursor.mergeBlockFormat(format);
  }
}

int TextPages::count() const { return document_->pageCount(); }

void TextPages::paint(QPainter& painter, const QRectF& area, int page) const {
  const Theme& theme = printTheme();
  painter.save();
  painter.setClipRect(area);
  painter.fillRect(area, theme.panel);
  painter.translate(area.topLeft());
  painter.scale(area.width() / paper_.width(), area.height() / paper_.height());

  const QSizeF room = document_->pageSize();
  painter.save();
  painter.translate(kMargin, kMargin - page * room.height());
  QAbstractTextDocumentLayout::PaintContext context;
  context.palette = paletteOf(theme);
  // A line that begins where the next page does touches this one, and would be drawn on both.
  context.clip = QRectF(0, page * room.height(), room.width(), room.height() - 1);
  painter.setClipRect(context.clip, Qt::IntersectClip);
  document_->documentLayout()->draw(&painter, context);
  painter.restore();

  const QRectF foot(kMargin, kMargin + room.height() + kFootHeight / 3, room.width(), kFootHeight);
  painter.setFont(fontOf(7.5));
  painter.setPen(theme.inkSoft);
  const QString number =
      count() > 1 ? QCoreApplication::translate("TextPages", "Page %1 of %2").arg(page + 1).arg(count()) : QString();
  const qreal taken = QFontMetricsF(painter.font()).horizontalAdvance(number);
  painter.drawText(foot, Qt::AlignRight | Qt::AlignTop, number);
  painter.drawText(foot.adjusted(0, 0, -taken - 12, 0), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, sheet_.foot);
  painter.restore();
}

QByteArray textPdf(const TextSheet& sheet, QSizeF paperMillimetres) {
  const TextPages pages(sheet, paperMillimetres);
  return pdfOf({sheet.title, sheet.foot, paperMillimetres, pages.count()},
               [&](QPainter& painter, const QRectF& area, int page) { pages.paint(painter, area, page); });
}

} // namespace matwright
