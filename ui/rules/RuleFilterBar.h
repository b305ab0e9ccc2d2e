#pragma once

#include "ui/rules/RuleRows.h"

#include <QWidget>

class QToolButton;

namespace matwright {

class ChoiceButton;

// The filters of the list of rules, as a few buttons that say what is chosen.
class RuleFilterBar : public QWidget {
  Q_OBJECT

public:
  explicit RuleFilterBar(QWidget* parent = nullptr);

  RuleFilter filter() const; // without words: those are typed elsewhere
  void clear();

Q_SIGNALS:
  void changed();

private:
  void refresh();

  ChoiceButton *level_, *scope_, *strength_, *only_;
  QToolButton* clear_;
};

} // namespace matwright
