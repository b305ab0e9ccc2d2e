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
#include <QTextList>
#include <QTextTable>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

// The text is laid out in CSS pixels, 96 to the inch, so that its style means the same on paper as on screen.
constexpr qreal kPixelsPerPoint = 96.0 / 72.0;
constexpr qreal kPixelsPerMillimetre = 96.0 / 25.4;
constexpr qreal kMargin = 13 * kPixelsPerMillimetre, kFootHeight = 9 * kPixelsPerMillimetre;

QFont fontOf(double points) {
  QFont font(textFamily());
  font.setPixelSize(qRound(points * kPixelsPerPoint));
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

void breakBefore(const QTextBlock& block) {
  QTextBlockFormat format;
  format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
  QTextCursor(block).mergeBlockFormat(format);
}

void breakBefore(QTextTable& table) {
  QTextTableFormat format = table.format();
  format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
  table.setFormat(format);
}

bool isHeading(const QTextBlock& block) { return block.blockFormat().headingLevel() > 0; }

} // namespace

TextPages::TextPages(const TextSheet& sheet, QSizeF paperMillimetres)
    : sheet_(sheet), paper_(paperMillimetres * kPixelsPerMillimetre) {
  layOut(kPoints);
  const int pages = count();
  if (pages == 1)
    return;
  layOut(kSmallPoints);
  if (count() == pages)
    layOut(kPoints);
}

void TextPages::layOut(double points) {
  document_ = std::make_unique<QTextDocument>();
  document_->setUndoRedoEnabled(false);
  document_->setUseDesignMetrics(true);
  document_->setDefaultFont(fontOf(points));
  document_->setDocumentMargin(0);
  document_->setIndentWidth(kTextIndent);
  document_->setDefaultStyleSheet(textStyleOf(printTheme()));
  document_->setHtml(sheet_.html);
  document_->setPageSize(
      {std::floor(paper_.width() - 2 * kMargin), std::floor(paper_.height() - 2 * kMargin - kFootHeight)});
  keepTogether();
}

TextPages::~TextPages() = default;

qreal TextPages::pageHeight() const { return document_->pageSize().height(); }

// Of a line of it: a block may begin on a page and have its first line on the next.
int TextPages::pageOf(const QTextBlock& block, bool lastLine) const {
  const QRectF whole = document_->documentLayout()->blockBoundingRect(block); // makes sure that it is laid out
  const QTextLayout& lines = *block.layout();
  const qreal line = lines.lineCount() == 0 ? 0 : lines.lineAt(lastLine ? lines.lineCount() - 1 : 0).y();
  return static_cast<int>((whole.top() + line) / pageHeight());
}

bool TextPages::isSplit(QTextTable& table) const {
  int first = count(), last = 0;
  for (QTextBlock block = table.firstCursorPosition().block(); block.isValid(); block = block.next()) {
    first = std::min(first, pageOf(block, false));
    last = std::max(last, pageOf(block, true));
    if (block == table.lastCursorPosition().block())
      break;
  }
  return first != last && heightOf(table) < pageHeight();
}

qreal TextPages::heightOf(QTextTable& table) const {
  return document_->documentLayout()->frameBoundingRect(&table).height();
}

// What belongs together stays on one page: a heading goes to the next page with what it heads, a table that is not
// longer than a page goes there whole.
void TextPages::keepTogether() {
  for (QTextBlock block = document_->begin(); block.isValid(); block = block.next()) {
    if (QTextTable* table = QTextCursor(block).currentTable()) {
      if (isSplit(*table))
        breakBefore(*table);
      block = table->lastCursorPosition().block();
      continue;
    }
    if (!isHeading(block) || (block.previous().isValid() && isHeading(block.previous())))
      continue;
    QTextBlock headed = block.next();
    while (headed.isValid() && isHeading(headed))
      headed = headed.next();
    QTextTable* table = headed.isValid() ? QTextCursor(headed).currentTable() : nullptr;
    if (headed.isValid() && (pageOf(headed, false) != pageOf(block, false) || (table && isSplit(*table))))
      breakBefore(block);
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
  // A sheet that got away from the first one has to say what it is of.
  const QString number =
      count() > 1
          ? QCoreApplication::translate("TextPages", "%1. Page %2 of %3").arg(sheet_.title).arg(page + 1).arg(count())
          : QString();
  const qreal taken = std::min(QFontMetricsF(painter.font()).horizontalAdvance(number) + 1, room.width() / 2);
  painter.drawText(QRectF(foot.right() - taken, foot.top(), taken, foot.height()),
                   Qt::AlignRight | Qt::AlignTop | Qt::TextWordWrap, number);
  painter.drawText(foot.adjusted(0, 0, -taken - 12, 0), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, sheet_.foot);
  painter.restore();
}

QString plainText(const TextSheet& sheet) {
  QTextDocument document;
  document.setHtml(sheet.html);
  QStringList lines;
  const QTextTable* before = nullptr;
  for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
    const QTextTable* table = QTextCursor(block).currentTable();
    if ((isHeading(block) || table != before) && !lines.isEmpty() && !lines.last().isEmpty())
      lines << QString();
    before = table;
    QString words = block.text();
    words.replace(QChar::LineSeparator, QLatin1Char('\n')).replace(QChar::Nbsp, QLatin1Char(' '));
    if (words.trimmed().isEmpty())
      continue;
    lines << (block.textList() ? QStringLiteral("  - ") + words : words);
    if (isHeading(block))
      lines << QString(words.size(), QLatin1Char(block.blockFormat().headingLevel() == 1 ? '=' : '-'));
  }
  return lines.join(QLatin1Char('\n')).trimmed();
}

QByteArray textPdf(const TextSheet& sheet, QSizeF paperMillimetres) {
  const TextPages pages(sheet, paperMillimetres);
  return pdfOf({sheet.title, sheet.foot, paperMillimetres, pages.count()},
               [&](QPainter& painter, const QRectF& area, int page) { pages.paint(painter, area, page); });
}

} // namespace matwright
