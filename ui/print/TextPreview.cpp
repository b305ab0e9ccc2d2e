#include "ui/print/TextPreview.h"

#include "ui/paper/Pdf.h"
#include "ui/paper/TextStyle.h"
#include "ui/print/PaperBar.h"
#include "ui/theme/Theme.h"

#include <QEvent>
#include <QLabel>
#include <QScrollBar>
#include <QTextBrowser>
#include <QVBoxLayout>
#include <memory>

namespace matwright {

TextPreview::TextPreview(Settings& settings, QWidget* parent)
    : QDialog(parent), bar_(new PaperBar(settings)), note_(new QLabel), browser_(new QTextBrowser) {
  note_->setWordWrap(true);
  note_->hide();
  browser_->setOpenLinks(false);
  browser_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff); // all of it wraps
  browser_->document()->setDocumentMargin(14);
  browser_->document()->setIndentWidth(kTextIndent);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(bar_);
  layout->addWidget(note_);
  layout->addWidget(browser_, 1);
  resize(onScreen({720, 820}, *this));

  bar_->pdf = [this] { return textPdf(sheet_, bar_->paper()); };
  bar_->job = [this] {
    const auto pages = std::make_shared<const TextPages>(sheet_, bar_->paper());
    return PaperBar::Job{pages->count(), [pages](QPainter& painter, const QRectF& area, int page) {
                           pages->paint(painter, area, page);
                         }};
  };
  connect(bar_, &PaperBar::failed, this, [this](const QString& words) {
    note_->setText(words);
    note_->show();
  });
  connect(bar_, &PaperBar::closeWanted, this, &QDialog::close);
}

void TextPreview::setSheet(const TextSheet& sheet) {
  if (sheet == sheet_)
    return;
  sheet_ = sheet;
  setWindowTitle(sheet.title);
  bar_->setDocumentName(sheet.title);
  browser_->setAccessibleName(sheet.title);
  note_->hide();
  refill();
}

void TextPreview::refill() {
  const int scrolled = browser_->verticalScrollBar()->value();
  browser_->document()->setDefaultStyleSheet(textStyleOf(themeFor(palette())));
  browser_->setHtml(sheet_.html);
  browser_->verticalScrollBar()->setValue(scrolled);
}

bool TextPreview::savePdf(const QString& file) { return bar_->savePdf(file); }

void TextPreview::changeEvent(QEvent* event) {
  QDialog::changeEvent(event);
  if (event->type() == QEvent::PaletteChange)
    refill();
}

} // namespace matwright
