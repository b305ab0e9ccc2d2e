#include "ui/rules/RuleLines.h"

#include "ui/controls/Labels.h"
#include "ui/controls/LevelMark.h"
#include "ui/theme/Theme.h"

#include <QEvent>
#include <QPainter>

namespace matwright {
namespace {

constexpr int kNarrowest = 240, kGap = 8;

} // namespace

RuleLines::RuleLines(const RuleRow& row, const QString& why, QWidget* parent)
    : QWidget(parent), level_(row.level), title_(row.title),
      body_(row.mark.isEmpty() ? row.body : QStringLiteral("%1 \u00b7 %2").arg(row.body, row.mark)), why_(why) {
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  setAccessibleName(QStringLiteral("%1. %2").arg(row.spoken, why));
}

std::vector<RowText> RuleLines::lines() const {
  const Theme& theme = rowTheme();
  return {{title_, headingFont(font()), theme.ink}, {body_, font(), theme.inkSoft}, {why_, font(), theme.ink}};
}

int RuleLines::textLeft() const { return levelMarkSize(font()) + kGap; }

int RuleLines::heightForWidth(int width) const {
  if (width != width_) {
    width_ = width;
    height_ = heightOf(lines(), std::max(1, width - textLeft()));
  }
  return height_;
}

QSize RuleLines::sizeHint() const { return {kNarrowest, heightForWidth(std::max(width(), kNarrowest))}; }

void RuleLines::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const int side = levelMarkSize(font());
  paintLevelMark(painter, QRectF(0, 0, side, side), level_, rowTheme());
  matwright::paint(painter, rect().adjusted(textLeft(), 0, 0, 0), lines());
}

void RuleLines::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange) {
    width_ = -1;
    updateGeometry();
  }
  QWidget::changeEvent(event);
}

} // namespace matwright
