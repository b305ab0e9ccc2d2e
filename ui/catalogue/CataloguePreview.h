#pragma once

#include "core/movement/Movement.h"

#include <QWidget>

class QLabel;

namespace matwright {

class FigureView;

// One movement of the catalogue in large: its way drawn while it stands still, its tempo and breath while it moves. It
// moves only while somebody looks at it: while its list has the focus or the pointer, or it has the pointer itself.
class CataloguePreview : public QWidget {
  Q_OBJECT

public:
  explicit CataloguePreview(QWidget* parent = nullptr);

  void show(const Movement* movement); // null for none; it is copied
  void setWatched(bool watched);       // as its list is
  void setReducedMotion(bool reduced);

  FigureView& figure() { return *figure_; }

protected:
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;

private:
  void updateMotion();

  QLabel* name_;
  FigureView* figure_;
  MovementId shown_;
  KeyPoses poses_;
  Tempo tempo_;
  bool watched_ = false, pointed_ = false, moves_ = false;
};

} // namespace matwright
