#pragma once

#include "ui/cautions/CautionRows.h"
#include "ui/document/StepSelection.h"

#include <QHash>
#include <QSet>
#include <QWidget>

class QLabel;
class QModelIndex;
class QPlainTextEdit;
class QSplitter;
class QStandardItemModel;
class QToolButton;

namespace matwright {

class MarkedTree;
class SwapMenu;

// "Worth a look": everything that was found about the class, strongest first. A click, or Enter, goes to the step. The
// notice about what a missing caution does not mean is always at the foot.
class CautionList : public QWidget {
  Q_OBJECT

public:
  CautionList(PlanDocument& document, StepSelection& selection, QWidget* parent = nullptr);

  // Makes the first caution at a step current that is about the person, or about nobody in particular; without a step
  // one on the class as a whole. False when there is none.
  bool showCaution(std::optional<StepId> step, const std::optional<PersonId>& person);
  // Opens, at a point of the screen, what could be done instead for that caution.
  void offerSwaps(std::optional<StepId> step, const std::optional<PersonId>& person, const QPoint& at);

  QSize minimumSizeHint() const override; // head, notice and a few rows in full, at the width that it has

Q_SIGNALS:
  void stepWanted(matwright::StepId step); // after it was selected

protected:
  void resizeEvent(QResizeEvent* event) override;

private:
  QWidget* makeHead();
  void refresh();
  void fill(const std::vector<CautionGroup>& groups);
  void showReason();
  void showWhetherSwappable();
  const Caution* currentCaution() const; // null for a remark or a heading
  void jump(const QModelIndex& index);
  const CautionRow* rowAt(const QModelIndex& index) const;

  PlanDocument& document_;
  StepSelection& selection_;
  std::vector<CautionGroup> groups_;
  QSet<QString> closed_; // keys of groups that the user has closed
  bool refreshing_ = false;

  QLabel* counts_;
  QToolButton* reasonButton_;
  QToolButton* swapButton_;
  SwapMenu* swaps_;
  QLabel* none_;
  QSplitter* splitter_;
  MarkedTree* view_;
  QStandardItemModel* model_;
  QPlainTextEdit* reason_;
};

} // namespace matwright
