#include "ui/print/CardPreview.h"

#include "core/store/Files.h"
#include "ui/card/CardPainter.h"
#include "ui/card/CardPdf.h"
#include "ui/text/ErrorText.h"
#include "ui/theme/Theme.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrinterInfo>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <memory>

namespace matwright {
namespace {

constexpr int kSheetGap = 14;

} // namespace

CardSheet::CardSheet(QWidget* parent) : QWidget(parent) {
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  setAccessibleName(tr("The card as it will be printed"));
}

void CardSheet::setCard(const Card& card, const CardLayout& layout) {
  card_ = card;
  layout_ = layout;
  updateGeometry();
  update();
}

int CardSheet::heightForWidth(int width) const {
  if (layout_.pages.empty())
    return 0;
  const int page = static_cast<int>((width - 2 * kSheetGap) * layout_.paper.height() / layout_.paper.width());
  return kSheetGap + static_cast<int>(layout_.pages.size()) * (page + kSheetGap);
}

QSize CardSheet::sizeHint() const { return {600, heightForWidth(600)}; }

void CardSheet::paintEvent(QPaintEvent*) {
  if (layout_.pages.empty())
    return;
  QPainter painter(this);
  const Theme& theme = themeFor(palette());
  painter.fillRect(rect(), theme.ground);
  const qreal wide = width() - 2 * kSheetGap;
  const QSizeF size(wide, wide * layout_.paper.height() / layout_.paper.width());
  QPointF at(kSheetGap, kSheetGap);
  for (std::size_t page = 0; page < layout_.pages.size(); ++page) {
    paintCard(painter, QRectF(at, size), card_, layout_, page);
    painter.setPen(theme.line);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(at, size));
    at.ry() += size.height() + kSheetGap;
  }
}

CardPreview::CardPreview(PlanDocument& document, Settings& settings, QWidget* parent)
    : QDialog(parent), document_(document), settings_(settings), sheet_(new CardSheet), paper_(new QComboBox),
      pages_(new QComboBox), names_(new QCheckBox(tr("Full &names"))), print_(new QPushButton(tr("&Print\u2026"))),
      note_(new QLabel) {
  setWindowTitle(tr("Card"));
  paper_->addItems({tr("A4"), tr("Letter")});
  paper_->setAccessibleName(tr("Paper"));
  paper_->setCurrentIndex(static_cast<int>(settings_.paper()));
  pages_->addItems({tr("One page"), tr("Two pages")});
  pages_->setAccessibleName(tr("Pages"));
  names_->setChecked(settings_.namesOnCard());
  names_->setToolTip(tr("People are printed by their initials unless you say otherwise: the card may lie about"));
  auto* save = new QPushButton(tr("Save as P&DF\u2026"));
  save->setProperty("primary", true);
  auto* close = new QPushButton(tr("&Close"));
  if (QPrinterInfo::availablePrinters().isEmpty()) {
    print_->setEnabled(false);
    print_->setToolTip(tr("No printer is set up on this machine; the card can be saved as PDF"));
  }

  auto* row = new QHBoxLayout;
  row->addWidget(paper_);
  row->addWidget(pages_);
  row->addWidget(names_);
  row->addStretch(1);
  row->addWidget(print_);
  row->addWidget(save);
  row->addWidget(close);
  note_->setWordWrap(true);
  auto* scroll = new QScrollArea;
  scroll->setWidget(sheet_);
  scroll->setWidgetResizable(true);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* layout = new QVBoxLayout(this);
  layout->addLayout(row);
  layout->addWidget(note_);
  layout->addWidget(scroll, 1);
  resize(680, 860);

  connect(paper_, &QComboBox::activated, this, [this](int index) { settings_.setPaper(static_cast<Paper>(index)); });
  connect(names_, &QCheckBox::toggled, &settings_, &Settings::setNamesOnCard);
  connect(pages_, &QComboBox::activated, this, &CardPreview::refresh);
  connect(print_, &QPushButton::clicked, this, &CardPreview::askPrinter);
  connect(save, &QPushButton::clicked, this, &CardPreview::askPdf);
  connect(close, &QPushButton::clicked, this, &QDialog::close);
  // Many changes in one gesture make one new layout.
  refreshTimer_.setSingleShot(true);
  refreshTimer_.setInterval(80);
  connect(&refreshTimer_, &QTimer::timeout, this, &CardPreview::refresh);
  connect(&document_, &PlanDocument::changed, &refreshTimer_, qOverload<>(&QTimer::start));
  connect(&settings_, &Settings::changed, &refreshTimer_, qOverload<>(&QTimer::start));
  refresh();
}

Card CardPreview::card() const {
  return cardOf(document_.knowledge(), document_.plan(), document_.evaluation(), document_.roster(),
                names_->isChecked() ? NameStyle::names : NameStyle::initials);
}

QSizeF CardPreview::paper() const { return paper_->currentIndex() == 0 ? kA4Millimetres : kLetterMillimetres; }

int CardPreview::pages() const { return pages_->currentIndex() + 1; }

void CardPreview::refresh() {
  const Card now = card();
  const CardLayout layout = layOut(now, paper(), pages());
  sheet_->setCard(now, layout);
  note_->setText(tr("The type is smaller than can be read at arm's length. Two pages would give each step more room."));
  note_->setVisible(!layout.legible);
}

bool CardPreview::savePdf(const QString& file) {
  const QByteArray bytes = cardPdf(card(), paper(), pages());
  const auto written =
      writeFile(QFile::encodeName(file).toStdString(), {bytes.constData(), static_cast<std::size_t>(bytes.size())});
  if (!written) {
    note_->setText(text(written.error()));
    note_->show();
  }
  return written.has_value();
}

void CardPreview::askPdf() {
  auto* dialog = new QFileDialog(this, tr("Save the card as PDF"), QString(), tr("PDF (*.pdf)"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setDefaultSuffix(QStringLiteral("pdf"));
  connect(dialog, &QFileDialog::fileSelected, this, &CardPreview::savePdf);
  dialog->open();
}

void CardPreview::askPrinter() {
  auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  printer->setPageSize(QPageSize(paper_->currentIndex() == 0 ? QPageSize::A4 : QPageSize::Letter));
  printer->setFullPage(true);
  printer->setDocName(QString::fromStdString(document_.plan().name));
  auto* dialog = new QPrintDialog(printer.get(), this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, qOverload<QPrinter*>(&QPrintDialog::accepted), this, [this, printer] { print(*printer); });
  dialog->open();
}

void CardPreview::print(QPrinter& printer) {
  const Card now = card();
  const CardLayout layout = layOut(now, paper(), pages());
  QPainter painter;
  if (!painter.begin(&printer)) {
    note_->setText(tr("The printer does not answer."));
    note_->show();
    return;
  }
  const QRectF whole = printer.paperRect(QPrinter::DevicePixel);
  for (std::size_t page = 0; page < layout.pages.size(); ++page) {
    if (page > 0)
      printer.newPage();
    paintCard(painter, whole, now, layout, page);
  }
}

} // namespace matwright
