#include "ui/print/CardPreview.h"

#include "ui/card/CardPainter.h"
#include "ui/card/CardPdf.h"
#include "ui/print/PaperBar.h"
#include "ui/theme/Theme.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

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
    : QDialog(parent), document_(document), settings_(settings), sheet_(new CardSheet), bar_(new PaperBar(settings)),
      pages_(new QComboBox), names_(new QCheckBox(tr("Full &names"))), note_(new QLabel) {
  setWindowTitle(tr("Card"));
  pages_->addItems({tr("One page"), tr("Two pages")});
  pages_->setAccessibleName(tr("Pages"));
  names_->setChecked(settings_.namesOnCard());
  names_->setToolTip(tr("People are printed by their initials unless you say otherwise: the card may lie about"));
  bar_->addChoice(pages_);
  bar_->addChoice(names_);
  bar_->pdf = [this] { return cardPdf(card(), bar_->paper(), pages()); };
  bar_->job = [this] {
    const Card now = card();
    const CardLayout layout = layOut(now, bar_->paper(), pages());
    return PaperBar::Job{static_cast<int>(layout.pages.size()),
                         [now, layout](QPainter& painter, const QRectF& sheet, int page) {
                           paintCard(painter, sheet, now, layout, static_cast<std::size_t>(page));
                         }};
  };

  note_->setWordWrap(true);
  auto* scroll = new QScrollArea;
  scroll->setWidget(sheet_);
  scroll->setWidgetResizable(true);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(bar_);
  layout->addWidget(note_);
  layout->addWidget(scroll, 1);
  resize(onScreen({680, 860}, *this));

  connect(names_, &QCheckBox::toggled, &settings_, &Settings::setNamesOnCard);
  connect(pages_, &QComboBox::activated, this, &CardPreview::refresh);
  connect(bar_, &PaperBar::closeWanted, this, &QDialog::close);
  connect(bar_, &PaperBar::failed, this, [this](const QString& words) {
    note_->setText(words);
    note_->show();
  });
  // Many changes in one gesture make one new layout.
  refreshTimer_.setSingleShot(true);
  refreshTimer_.setInterval(80);
  connect(&refreshTimer_, &QTimer::timeout, this, [this] {
    if (isVisible())
      refresh();
  });
  connect(&document_, &PlanDocument::changed, &refreshTimer_, qOverload<>(&QTimer::start));
  connect(&settings_, &Settings::changed, &refreshTimer_, qOverload<>(&QTimer::start));
}

Card CardPreview::card() const {
  return cardOf(document_.knowledge(), document_.plan(), document_.evaluation(), document_.roster(),
                names_->isChecked() ? NameStyle::names : NameStyle::initials);
}

int CardPreview::pages() const { return pages_->currentIndex() + 1; }

void CardPreview::refresh() {
  const Card now = card();
  const CardLayout layout = layOut(now, bar_->paper(), pages());
  bar_->setDocumentName(QString::fromStdString(document_.plan().name));
  sheet_->setCard(now, layout);
  note_->setText(tr("The type is smaller than can be read at arm's length. Two pages would give each step more room."));
  note_->setVisible(!layout.legible);
}

void CardPreview::showEvent(QShowEvent* event) {
  refresh(); // nothing is laid out while it is closed
  QDialog::showEvent(event);
}

bool CardPreview::savePdf(const QString& file) { return bar_->savePdf(file); }

} // namespace matwright
