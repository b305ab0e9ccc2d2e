#pragma once

#include "core/load/MovementLoad.h"

#include <QString>
#include <QWidget>
#include <memory>
#include <vector>

namespace matwright {

// The course of the three moments through one repetition, with the breath phases of its tempo. The joints are told
// apart by the style of their lines, which a line of words below explains.
class LoadChart : public QWidget {
  Q_OBJECT

public:
  explicit LoadChart(QWidget* parent = nullptr);

  void show(std::shared_ptr<const MovementLoad> load, const Tempo& tempo, const BodySize& body);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;

protected:
  void paintEvent(QPaintEvent* event) override;
  bool event(QEvent* event) override;

private:
  struct Sample { // of a line, with its words, below the chart
    LoadedJoint joint;
    QRectF rect;
  };
  QRectF plot() const; // within the axes
  std::vector<Sample> samples(double width) const;
  double valueAt(LoadedJoint joint, double share) const; // in newton metres
  QString about() const;
  QString momentAbout(double share) const;
  void paintPhases(QPainter& painter, const QRectF& plot) const;
  void paintScale(QPainter& painter, const QRectF& plot) const;

  std::shared_ptr<const MovementLoad> load_; // null before anything is shown
  Tempo tempo_;
  double unit_ = 1; // newton metres of a moment of 1
  double full_ = 1; // end of the scale, in newton metres
};

// A round number from `value` up, of which half is one too: 1, 2, 4, 5, 6, 8 or 10 times a power of ten.
double roundScale(double value);

} // namespace matwright
