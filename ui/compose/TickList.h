#pragma once

#include "ui/compose/TickFlow.h"

#include <QListWidget>

namespace matwright {

// Words to tick, one line each, with what is to be known of them; as high as its lines, up to a few.
class TickList : public QListWidget {
  Q_OBJECT

public:
  explicit TickList(const QString& name, QWidget* parent = nullptr);

  void setWords(const std::vector<TickWord>& words); // what was ticked stays so, where it is still there
  QStringList ticked() const;                        // keys, in their order
  void setTicked(const QStringList& keys);           // emits nothing; keys that are no words are left out of account

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return {80, sizeHint().height()}; }

Q_SIGNALS:
  void changed(); // by the user
};

} // namespace matwright
