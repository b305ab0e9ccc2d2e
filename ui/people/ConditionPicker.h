#pragma once

#include "core/people/Condition.h"

#include <QWidget>
#include <vector>

class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace matwright {

// Adds a condition from the list of those that rules know: closed it is one button, open a field to search in and the
// list.
class ConditionPicker : public QWidget {
  Q_OBJECT

public:
  explicit ConditionPicker(std::vector<Condition> conditions, QWidget* parent = nullptr);

  void setConditions(std::vector<Condition> conditions);

  void setOpen(bool open);

Q_SIGNALS:
  void picked(const matwright::ConditionId& condition);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void search(const QString& words);
  void pick();

  std::vector<Condition> conditions_;
  QPushButton* button_;
  QWidget* panel_;
  QLineEdit* search_;
  QListWidget* list_;
  QLabel* about_;
};

} // namespace matwright
