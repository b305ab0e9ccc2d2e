#pragma once

#include "core/screening/Rule.h"

#include <QWidget>

namespace matwright {

// The mark of a level, as tall as the text beside it, with the word of the level as tool tip and accessible name.
class LevelMark : public QWidget {
  Q_OBJECT

public:
  explicit LevelMark(Level level, QWidget* parent = nullptr);

  Level level() const { return level_; }
  void setLevel(Level level);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  Level level_;
};

// The side of a level mark beside text in `font`, logical pixels.
int levelMarkSize(const QFont& font);

} // namespace matwright
