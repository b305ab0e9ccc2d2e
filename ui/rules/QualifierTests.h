#pragma once

#include "core/screening/Rule.h"

#include <QWidget>
#include <optional>
#include <vector>

class QLabel;
class QMenu;
class QPushButton;
class QVBoxLayout;

namespace matwright {

class QualifierTestRow;

// What must be known about somebody's condition for a rule to speak: a row a test, each as its question is answered,
// and a button that adds one.
class QualifierTests : public QWidget {
  Q_OBJECT

public:
  explicit QualifierTests(QWidget* parent = nullptr);

  // Emits nothing. `condition`: null while there is none, or one that is not known.
  void show(const std::vector<QualifierTest>& tests, const Condition* condition);

Q_SIGNALS:
  // By the user; `gesture` is the same for what should be one entry of the undo list.
  void edited(const std::vector<matwright::QualifierTest>& tests, const QString& gesture);

private:
  void build();
  void fillMenu();
  void take(std::size_t at, const QualifierTest& test, const QString& gesture);
  void add(const QualifierSpec& spec);
  void remove(std::size_t at);

  std::vector<QualifierTest> tests_;
  std::optional<Condition> condition_;
  QLabel* none_;
  QVBoxLayout* rows_;
  std::vector<QualifierTestRow*> shown_;
  QPushButton* add_;
  QMenu* menu_;
};

// Those of the tests that a condition can be asked, which has the same questions as the one they were written for.
std::vector<QualifierTest> testsThatFit(const std::vector<QualifierTest>& tests, const Condition* from,
                                        const Condition* to);

} // namespace matwright
