#pragma once

#include "ui/compose/TickFlow.h"

#include <QStringList>

class QCheckBox;
class QGridLayout;

namespace matwright {

// Words to tick, one below the other, each with what is to be known of it below its name. Long ones wrap.
class TickList : public QWidget {
  Q_OBJECT

public:
  explicit TickList(const QString& name, QWidget* parent = nullptr);

  void setWords(const std::vector<TickWord>& words); // what was ticked stays so, where it is still there
  QStringList ticked() const;                        // keys, in their order
  void setTicked(const QStringList& keys);           // emits nothing; keys that are no words are left out of account

Q_SIGNALS:
  void changed(); // by the user

private:
  std::vector<TickWord> words_;
  std::vector<QCheckBox*> boxes_; // by word
  QWidget* page_ = nullptr;
};

} // namespace matwright
