#pragma once

#include "ui/document/PlanDocument.h"
#include "ui/tidy/TidySearch.h"

#include <QDialog>
#include <QTimer>

class QLabel;
class QMenu;
class QPushButton;
class QStandardItem;
class QStandardItemModel;

namespace matwright {

class LevelMark;
class MarkedTree;
class TidyQuestion;
class TidyTerrains;

// "Tidy the order": the open class as it is and in the order with the least moving about, what moves and why, and which
// cautions that brings. It searches as long as it is open, again after every change of the class or of what is asked;
// the class is changed by "Use This Order" alone, as one entry of the undo list.
class TidyDialog : public QDialog {
  Q_OBJECT

public:
  // The document must outlive the dialog.
  explicit TidyDialog(PlanDocument& document, QWidget* parent = nullptr);

  // Asks for these steps alone; fewer than two: for the whole class.
  void askFor(const std::vector<StepId>& steps);

  TidySearch& search() { return search_; }
  TidyTerrains& terrains() { return *terrains_; }

protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

private:
  QWidget* makeHead();
  QWidget* makeSide();
  QLayout* makeFoot();
  void takeClass();
  void begin();
  void setWaiting(bool waiting);
  void tellProgress(const TidyProgress& progress);
  void showFound();
  void showNumbers(const TidyCost& before, const TidyCost& after);
  void fillRows();
  void takeCurrent(); // of the picture
  void showPin();
  void use();

  PlanDocument& document_;
  TidySearch search_;
  TidyQuestion* question_;
  TidyTerrains* terrains_;
  MarkedTree* tree_;
  QStandardItemModel* rows_;
  QLabel *numbers_, *more_, *status_, *cautions_, *none_;
  LevelMark* mark_;
  QPushButton *stop_, *keep_, *use_;
  QAction* pin_; // the current step
  QMenu* stepMenu_;
  QTimer patience_;   // a search that is over by then needs no word
  quint64 shown_ = 0; // revision of the class in the picture
};

} // namespace matwright
