#include "ui/controls/LevelMark.h"

#include "ui/text/VocabularyText.h"
#include "ui/theme/Theme.h"

#include <QFontMetrics>
#include <QPainter>

namespace matwright {

LevelMark::LevelMark(Level level, QWidget* parent) : QWidget(parent), level_(level) {
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  setLevel(level);
}

void LevelMark::setLevel(Level level) {
  level_ = level;
  setToolTip(text(level));
  setAccessibleName(text(level));
  update();
}

QSize LevelMark::sizeHint() const {
  const int side = levelMarkSize(font());
  return {side, side};
}

void LevelMark::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintLevelMark(painter, QRectF(rect()), level_, themeFor(palette()));
}

int levelMarkSize(const QFont& font) { return QFontMetrics(font).height(); }

} // namespace matwright
