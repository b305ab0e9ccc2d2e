#include "ui/print/PaperBar.h"

#include "core/store/Files.h"
#include "ui/paper/Pdf.h"
#include "ui/text/ErrorText.h"

#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrinterInfo>
#include <QPushButton>
#include <QScreen>
#include <memory>

namespace matwright {

QSize onScreen(QSize wanted, const QWidget& window) {
  constexpr QSize kFrame(16, 48); // of most window managers
  return wanted.boundedTo(window.screen()->availableSize() - kFrame);
}

PaperBar::PaperBar(Settings& settings, QWidget* parent)
    : QWidget(parent), settings_(settings), paper_(new QComboBox), choices_(new QHBoxLayout) {
  paper_->addItems({tr("A4"), tr("Letter")});
  paper_->setAccessibleName(tr("Paper"));
  paper_->setCurrentIndex(static_cast<int>(settings_.paper()));
  auto* print = new QPushButton(tr("&Print\u2026"));
  if (QPrinterInfo::availablePrinters().isEmpty()) {
    print->setEnabled(false);
    print->setToolTip(tr("No printer is set up on this machine; it can be saved as PDF"));
  }
  auto* save = new QPushButton(tr("Save as P&DF\u2026"));
  save->setProperty("primary", true);
  auto* close = new QPushButton(tr("&Close"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(paper_);
  row->addLayout(choices_);
  row->addStretch(1);
  row->addWidget(print);
  row->addWidget(save);
  row->addWidget(close);

  connect(paper_, &QComboBox::activated, this, [this](int index) {
    settings_.setPaper(static_cast<Paper>(index));
    Q_EMIT paperChanged();
  });
  connect(print, &QPushButton::clicked, this, &PaperBar::askPrinter);
  connect(save, &QPushButton::clicked, this, &PaperBar::askPdf);
  connect(close, &QPushButton::clicked, this, &PaperBar::closeWanted);
}

void PaperBar::addChoice(QWidget* widget) { choices_->addWidget(widget); }

QSizeF PaperBar::paper() const { return settings_.paper() == Paper::a4 ? kA4Millimetres : kLetterMillimetres; }

bool PaperBar::savePdf(const QString& file) {
  const QByteArray bytes = pdf();
  const auto written =
      writeFile(QFile::encodeName(file).toStdString(), {bytes.constData(), static_cast<std::size_t>(bytes.size())});
  if (!written)
    Q_EMIT failed(text(written.error()));
  return written.has_value();
}

void PaperBar::askPdf() {
  auto* dialog = new QFileDialog(this, tr("Save as PDF"), QString(), tr("PDF (*.pdf)"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setDefaultSuffix(QStringLiteral("pdf"));
  connect(dialog, &QFileDialog::fileSelected, this, &PaperBar::savePdf);
  dialog->open();
}

void PaperBar::askPrinter() {
  auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  printer->setPageSize(QPageSize(settings_.paper() == Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
  printer->setFullPage(true);
  printer->setDocName(name_);
  auto* dialog = new QPrintDialog(printer.get(), this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, qOverload<QPrinter*>(&QPrintDialog::accepted), this, [this, printer] {
    QPainter painter;
    if (!painter.begin(printer.get())) {
      Q_EMIT failed(tr("The printer does not answer."));
      return;
    }
    const QRectF whole = printer->paperRect(QPrinter::DevicePixel);
    const Job wanted = job();
    for (int page = 0; page < wanted.pages; ++page) {
      if (page > 0)
        printer->newPage();
      wanted.paint(painter, whole, page);
    }
  });
  dialog->open();
}

} // namespace matwright
