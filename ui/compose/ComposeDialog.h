#pragma once

#include "core/store/Store.h"
#include "ui/compose/Composition.h"

#include <QDialog>
#include <QTimer>

class QLabel;
class QProgressBar;
class QPushButton;
class QSpinBox;
class QSplitter;
class QStackedWidget;

namespace matwright {

class AboutComposed;
class ComposedList;
class ComposedTerrain;
class ObstacleList;
class WishesForm;

// "Compose a class" and "Complete this class": wishes at the left, and at the right the class that meets them, or what
// is in the way. It searches as long as it is open, again whenever the wishes change. The open class is changed by "Put
// into the Class" alone, as one entry of the undo list; a composed one is handed on by useWanted().
class ComposeDialog : public QDialog {
  Q_OBJECT

public:
  // The document must outlive the dialog.
  explicit ComposeDialog(PlanDocument& document, QWidget* parent = nullptr);

  // Where classes to vary from and wishes lie, and the file of the open class, which is not one of them.
  void setStudio(const QString& folder, const QString& openFile);
  void composeNew(); // wishes stay from time to time
  void complete();   // the open class

  void openWishes(const QString& file);
  void saveWishes(const QString& file);

  Composition& composition() { return composition_; }
  WishesForm& form() { return *form_; }

Q_SIGNALS:
  void useWanted(const matwright::ClassPlan& plan); // as a new class; the dialog stays open until it is told otherwise

protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

private:
  // ComposeDialog.cpp
  QWidget* makeForm();
  QWidget* makeClass();
  QLayout* makeStatus();
  QLayout* makeFoot();
  void connectParts();
  void begin(const QString& title, const QString& use);
  void takeWishes();                          // of the form
  void takeOthers(const ClassWishes& wishes); // into the form
  void search();
  void another();
  void showSeed();
  // ComposeDialogShow.cpp
  void showStarted();
  void showProgress(const ComposeProgress& progress);
  void showFound();
  void showBusy(bool busy);
  void showCurrent(std::optional<StepId> step);
  void use();
  void askWishesToOpen();
  void askWishesToSave();
  void report(const Error& error);

  PlanDocument& document_;
  Composition composition_;
  QString studio_;
  KeptTree kept_; // of the wishes that were opened
  std::optional<ClassWishes> asked_;
  std::optional<ClassWishes> ownWishes_; // for a new class, while one is completed

  WishesForm* form_;
  QLabel* status_;
  QProgressBar* progress_;
  QStackedWidget* pages_;
  QSplitter* found_;
  ObstacleList* obstacles_;
  ComposedTerrain* terrain_;
  ComposedList* list_;
  AboutComposed* about_;
  QSpinBox* seed_;
  QPushButton *stop_, *another_, *use_, *close_, *open_, *save_;
  QTimer pause_;    // after a change of wishes
  QTimer patience_; // a search that is over by then is not shown as one
};

} // namespace matwright
