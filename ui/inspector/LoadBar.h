#pragma once

#include <QWidget>

namespace matwright {

// A peak and a mean on a scale: filled as far as the mean, outlined as far as the peak, and a mark at what the peak is
// held against, where there is such a thing. The numbers stand beside it in words; it has no name of its own.
class LoadBar : public QWidget {
  Q_OBJECT

public:
  explicit LoadBar(QWidget* parent = nullptr);

  // All in one unit; `full` is the end of the scale, `mark` 0 for none.
  void show(double peak, double mean, double mark, double full);

  QSize sizeHint() const override { return {80, 11}; }
  QSize minimumSizeHint() const override { return {40, 11}; }

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  double peak_ = 0, mean_ = 0, mark_ = 0, full_ = 1;
};

} // namespace matwright
