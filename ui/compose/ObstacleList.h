#pragma once

#include "ui/compose/Composition.h"

#include <QScrollArea>

class QVBoxLayout;

namespace matwright {

// Why wishes cannot be met: a sentence for each obstacle, with buttons for what is easily changed.
class ObstacleList : public QScrollArea {
  Q_OBJECT

public:
  explicit ObstacleList(QWidget* parent = nullptr);

  // Of a search that found no class.
  void show(const Composed& composed, std::span<const Person> roster);

Q_SIGNALS:
  void wishesWanted(const matwright::ClassWishes& wishes); // others, in place of those that were searched for

private:
  QVBoxLayout* column_;
  QWidget* shown_ = nullptr;
};

} // namespace matwright
