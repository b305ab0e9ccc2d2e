#pragma once

#include "ui/document/PlanDocument.h"

#include <QWidget>
#include <array>

class QLabel;
class QToolButton;

namespace matwright {

class LoadBar;
class LoadChart;
class LoadOptions;

// What the weight of the body asks of low back, hip and shoulder in one step, beside its other options. Closed at
// first, so that what is said of people stays near; then its numbers stand in a few words.
class LoadPart : public QWidget {
  Q_OBJECT

public:
  explicit LoadPart(QWidget* parent = nullptr);

  void show(const Snapshot& snapshot, const Movement& movement, const Step& step);

Q_SIGNALS:
  void chosen(const matwright::OptionId& option); // empty: as written
  void aboutWanted();

private:
  struct Joint {
    QLabel* numbers;
    LoadBar* bar;
  };
  void makeBody();
  void fill(); // what is seen when it is open

  Snapshot shown_; // keeps what movement_ points to
  const Movement* movement_ = nullptr;
  Step step_;

  QToolButton* fold_;
  QLabel* summary_; // while closed
  QWidget* body_;
  QLabel* whom_;
  std::array<Joint, kLoadedJoints> joints_{};
  QLabel* lever_;
  LoadChart* chart_;
  QLabel* optionsTitle_;
  LoadOptions* options_;
  QLabel *marks_, *swing_;
  QLabel* measured_;
};

// A button that reads like a link, to loadPageHtml().
QToolButton* aboutLoadButton(QWidget* parent = nullptr);

} // namespace matwright
