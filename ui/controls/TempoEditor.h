#pragma once

#include "core/movement/Tempo.h"

#include <QWidget>
#include <vector>

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QPushButton;
class QSpinBox;
class QToolButton;
class QVBoxLayout;

namespace matwright {

// Seconds a count, and the phases of one repetition as rows of breath and counts.
class TempoEditor : public QWidget {
  Q_OBJECT

public:
  explicit TempoEditor(QWidget* parent = nullptr);

  void show(const Tempo& tempo); // emits nothing

Q_SIGNALS:
  void edited(const matwright::Tempo& tempo, const QString& field); // `field`: which was edited
  void left();                                                      // a field lost the focus

private:
  struct PhaseRow {
    QWidget* row;
    QComboBox* breath;
    QSpinBox* counts;
    QToolButton* up;
    QToolButton* remove;
  };

  PhaseRow addRow(std::size_t at);
  void edit(const QString& field);

  Tempo tempo_;
  QDoubleSpinBox* count_;
  QVBoxLayout* column_;
  std::vector<PhaseRow> rows_;
  QPushButton* add_;
  QLabel* length_;
};

} // namespace matwright
