#pragma once

#include "ui/compose/Composition.h"

#include <QScrollArea>

class QLabel;
class QVBoxLayout;

namespace matwright {

// What is to be known of a composed class: of one of its steps why it was chosen and which cautions it raises, and of
// the class what of the focus it falls short of, what it costs, and what composing goes by.
class AboutComposed : public QScrollArea {
  Q_OBJECT

public:
  // The composition must outlive the view.
  explicit AboutComposed(Composition& composition, QWidget* parent = nullptr);

  void showStep(std::optional<StepId> step);

private:
  void refresh();
  void fillStep();
  void fillClass();
  void takeReasons(const Explained& explained);

  Composition& composition_;
  std::optional<StepId> step_;
  QWidget* stepPart_;
  QVBoxLayout* stepColumn_;
  QWidget* stepRows_ = nullptr;
  QLabel* why_ = nullptr;
  QWidget* classPart_;
  QVBoxLayout* classColumn_;
  QWidget* classRows_ = nullptr;
};

} // namespace matwright
