#pragma once

#include "ui/document/Drafts.h"
#include "ui/movements/MovementPage.h"

class QLabel;
class QTabWidget;

namespace matwright {

class CuesPage;
class FactsPage;
class FaultList;
class OptionsPage;
class PosesPage;

// Everything about one movement of one's own. What is typed goes to the document at once when it can be kept there;
// what cannot be kept yet stays here, with what is wrong with it, until it can.
class MovementEditor : public QWidget {
  Q_OBJECT

public:
  explicit MovementEditor(KnowledgeDocument& document, QWidget* parent = nullptr);

  void setMovement(const MovementId& movement); // one of one's own
  const MovementId& movement() const { return id_; }
  void focusName();
  void setReducedMotion(bool reduced);

  const std::vector<FieldFault>& faults() const { return faults_; }
  bool hasUnkept(const MovementId& movement) const { return drafts_.find(movement) != nullptr; }
  MovementId firstUnkept() const { return drafts_.first(); } // or empty
  void dropUnkept();                                         // shows again what is kept

Q_SIGNALS:
  void keptChanged(); // a movement has become one that cannot be kept yet, or can

private:
  void addPage(MovementPage* page, const QString& name, bool scrolls);
  void take(const Movement& movement, const QString& what, const QString& gesture);
  void refresh();
  void judge(const Movement& movement);
  void showFaults();
  void goTo(int row);

  KnowledgeDocument& document_;
  MovementId id_;
  Drafts<Movement> drafts_;
  std::vector<FieldFault> faults_;
  std::vector<MovementPage*> pages_;
  QStringList names_; // of the pages
  QLabel* title_;
  QTabWidget* tabs_;
  QLabel* state_;
  FaultList* list_;
  FactsPage* facts_;
  CuesPage* cues_;
  PosesPage* poses_;
  OptionsPage* options_;
};

} // namespace matwright
