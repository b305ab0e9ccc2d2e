#pragma once

#include "core/knowledge/Knowledge.h"

#include <QWidget>
#include <array>

class QCheckBox;
class QComboBox;
class QLabel;
class QPushButton;
class QToolButton;

namespace matwright {

class FigureView;
class PoseCanvas;
class PoseForm;

// The two ends of one repetition: the one that is worked on large, with handles and numbers; both small beside it, and
// the whole repetition at its tempo.
class PoseEditor : public QWidget {
  Q_OBJECT

public:
  // Narrow: the small figures stand above the large one instead of beside it.
  enum class Arrangement { wide, narrow };
  explicit PoseEditor(Arrangement arrangement, QWidget* parent = nullptr);

  void setPositions(const std::vector<Position>& positions); // whose poses can be taken over
  // Emits nothing. `name` is what assistive technology reads of the moving figure.
  void show(const KeyPoses& poses, const Tempo& tempo, const QString& name);
  void setReducedMotion(bool reduced);

  bool editsEnd() const { return end_; }
  void editEnd(bool end); // or the start

Q_SIGNALS:
  // Done by the user; `gesture` is the same for what should be one entry of the undo list.
  void edited(const matwright::KeyPoses& poses, const QString& what, const QString& gesture);
  void left(); // the next change is another gesture

private:
  QWidget* makeSide(bool above);
  QWidget* makeTools();
  void take(const Pose& pose, const QString& what, const QString& gesture);
  void refresh();
  void showFigures();
  const Pose& edited_() const { return end_ ? poses_.end : poses_.start; }

  KeyPoses poses_;
  Tempo tempo_;
  QString name_;
  bool end_ = true;
  std::vector<Position> positions_;
  PoseCanvas* canvas_;
  PoseForm* form_;
  QLabel* hint_;
  std::array<QToolButton*, 2> ends_; // start, end
  FigureView* moving_;
  QPushButton* play_;
  QComboBox* position_;
  QPushButton* copy_;
  QCheckBox* together_;
};

} // namespace matwright
