#pragma once

#include "core/knowledge/Knowledge.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace matwright {

class FigureView;

// A movement to be read, not changed: its figure at its tempo and all that is written of it.
class MovementReading : public QWidget {
  Q_OBJECT

public:
  explicit MovementReading(QWidget* parent = nullptr);

  void show(const Movement& movement, const Knowledge& knowledge);
  void setCopyAllowed(bool allowed);
  void setReducedMotion(bool reduced);

Q_SIGNALS:
  void copyWanted();

private:
  void fill(const Movement& movement, const Knowledge& knowledge);

  QLabel *title_, *about_;
  QPushButton* copy_;
  FigureView* figure_;
  QVBoxLayout* column_;
  QWidget* facts_ = nullptr;
  Movement shown_;
};

} // namespace matwright
