#pragma once

#include "core/tidy/Tidy.h"

#include <QWidget>
#include <array>

class QCheckBox;
class QComboBox;
class QToolButton;

namespace matwright {

class CheckMenu;

// What is asked for: how much of the class, the wishes, and which steps keep their places.
class TidyQuestion : public QWidget {
  Q_OBJECT

public:
  explicit TidyQuestion(QWidget* parent = nullptr);

  // Follows the class. What it no longer has is no longer asked for.
  void setPlan(const Knowledge& knowledge, const ClassPlan& plan);
  // What is to be tidied: these steps; their section, when they are all of it; all, when they are fewer than two.
  void setSteps(const std::vector<StepId>& steps);

  TidyRequest request() const;
  // Says how many steps are pinned, and lists them to be released. Where it stands is up to whoever shows the question.
  QToolButton* pins() { return pins_; }
  bool isPinned(StepId step) const;
  void pin(StepId step, bool pinned);

Q_SIGNALS:
  void changed();

private:
  void fillScope();
  void fillPins();
  std::vector<std::pair<StepId, QString>> names_; // of all steps, in their order
  std::vector<std::pair<QString, std::vector<StepId>>> sections_;
  std::vector<StepId> steps_, pinned_;
  QComboBox* scope_;
  std::array<QCheckBox*, 4> wishes_; // in the order of TidyWishes
  QToolButton* pins_;
  CheckMenu* pinMenu_;
};

} // namespace matwright
