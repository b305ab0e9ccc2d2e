#pragma once

#include "ui/movements/MovementPage.h"

class QLineEdit;

namespace matwright {

class FigureView;
class NoteField;
class TempoEditor;

// What is said, and how one repetition runs.
class CuesPage : public MovementPage {
  Q_OBJECT

public:
  explicit CuesPage(QWidget* parent = nullptr);

  void setReducedMotion(bool reduced);

protected:
  void refresh() override;

private:
  NoteField* setUp_;
  QLabel* setUpWords_;
  QLineEdit* action_;
  QLabel* actionWords_;
  TempoEditor* tempo_;
  QLabel* length_;
  FigureView* figure_;
  KeyPoses shownPoses_;
  Tempo shownTempo_;
};

} // namespace matwright
