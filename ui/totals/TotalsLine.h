#pragma once

#include "ui/totals/Totals.h"

#include <QWidget>
#include <array>
#include <optional>

class QHBoxLayout;
class QLabel;

namespace matwright {

class LengthBar;

// The figures of the class above its timeline: length, changes, share of moving, sides and cautions. While something is
// being dragged it shows what they would be, and by how much they differ.
class TotalsLine : public QWidget {
  Q_OBJECT

public:
  explicit TotalsLine(PlanDocument& document, QWidget* parent = nullptr);

  // Puts a widget, which it owns from then on, to the right of the bar.
  void addBeside(QWidget* widget);

  // The class as it would be; nothing: as it stands. A preview ends by itself when the class changes.
  void showPreview(std::optional<Snapshot> preview);
  bool showsPreview() const { return preview_.has_value(); }

private:
  struct Figure {
    QLabel *value, *beside, *difference, *under;
  };
  struct Count {
    QWidget* group;
    QLabel *value, *difference;
  };

  Figure addFigure(QLayout* line);
  void addCautions(QLayout* line);
  void refresh();
  static void show(const Figure& figure, const Total& total);

  PlanDocument& document_;
  std::optional<Snapshot> preview_;
  Figure length_, changes_, moving_, sides_;
  std::array<Count, kWordCount<Level>> counts_{};
  QLabel* noneRaised_ = nullptr;
  QLabel* people_ = nullptr;
  QHBoxLayout* foot_;
  LengthBar* bar_;
};

} // namespace matwright
