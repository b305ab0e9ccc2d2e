#pragma once

#include "core/evaluate/Swaps.h"
#include "ui/document/ClassCommands.h"

#include <QWidget>

class QLabel;
class QToolButton;

namespace matwright {

class ReplaceRows;
class RowList;

// What else could stand in the place of one step, best first: each with its figure, what it changes, why it is like,
// and the cautions that it takes away and brings. Choosing one puts it there, as one entry of the undo list.
class ReplacePage : public QWidget {
  Q_OBJECT

public:
  ReplacePage(PlanDocument& document, ClassCommands& commands, QWidget* parent = nullptr);

  void show(StepId step); // which must be in the class; works out what could stand there

Q_SIGNALS:
  void left();               // nothing is to be replaced, or it is done
  void rowReached(QRect at); // by the keyboard, in the coordinates of the page

protected:
  void keyPressEvent(QKeyEvent* event) override;

private:
  QStringList lostText(const Step& step) const;
  void choose(int row);

  PlanDocument& document_;
  ClassCommands& commands_;
  StepId id_;
  std::shared_ptr<const Knowledge> knowledge_; // keeps what the swaps point to
  std::vector<Swap> swaps_;

  QToolButton* back_;
  QLabel *title_, *about_, *lost_, *none_;
  ReplaceRows* rows_;
  RowList* list_;
};

} // namespace matwright
