#pragma once

#include "core/evaluate/Schedule.h"

#include <QWidget>

namespace matwright {

// The length of a class against its target: a filled bar, the likely range as a bracket over it, the target as a mark
// across.
class LengthBar : public QWidget {
  Q_OBJECT

public:
  explicit LengthBar(QWidget* parent = nullptr);

  struct Lengths {
    Seconds length, likelyFrom, likelyTo, target;
    friend bool operator==(const Lengths&, const Lengths&) = default;
  };
  void show(const Lengths& lengths);
  const Lengths& lengths() const { return lengths_; }
  // Where a moment stands, pixels from the left; a little room is left beyond the longest of all lengths.
  double at(Seconds moment) const;

  QSize sizeHint() const override { return {200, kHeight}; }
  QSize minimumSizeHint() const override { return {60, kHeight}; }

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  static constexpr int kHeight = 12;
  Lengths lengths_;
};

} // namespace matwright
