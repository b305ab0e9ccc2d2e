#pragma once

#include "core/evaluate/ClassLoad.h"

#include <QString>
#include <QWidget>
#include <array>
#include <vector>

namespace matwright {

class RowList;

// One way of doing a movement, with what it asks. Moments are peaks in newton metres.
struct OptionLoad {
  static constexpr std::size_t kColumns = 1 + kLoadedJoints; // effort, then the joints

  OptionId id; // empty: as written
  QString name;
  std::array<double, kColumns> values{};
  friend bool operator==(const OptionLoad&, const OptionLoad&) = default;

  QString shown(std::size_t column) const; // as its number is written
};

// Where a column's greatest and least are, among rows of which not all show the same number.
enum class Extreme { none, least, greatest };
Extreme extremeOf(const std::vector<OptionLoad>& rows, std::size_t row, std::size_t column);

// The movement as written and all its options side by side, on common scales; the one in use is marked. A click, Enter
// or Space chooses another.
class LoadOptions : public QWidget {
  Q_OBJECT

public:
  explicit LoadOptions(QWidget* parent = nullptr);

  // `inUse` may be an option that is not among the rows; then none is marked. Moments are drawn up to `full`.
  void show(std::vector<OptionLoad> rows, const OptionId& inUse, double full);

Q_SIGNALS:
  void chosen(const matwright::OptionId& option);

private:
  void choose(int row);

  std::vector<OptionLoad> rows_;
  OptionId inUse_;
  double full_ = 1;
  QWidget* header_;
  RowList* list_;
};

} // namespace matwright
