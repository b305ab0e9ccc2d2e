#pragma once

#include <QLayout>
#include <vector>

namespace matwright {

// Puts its items side by side, each at its own size, and begins a new line where the width ends. Hidden items take no
// room.
class FlowLayout : public QLayout {
public:
  explicit FlowLayout(QWidget* parent = nullptr, int gap = 6);
  ~FlowLayout() override;

  void addItem(QLayoutItem* item) override; // takes ownership
  int count() const override { return static_cast<int>(items_.size()); }
  QLayoutItem* itemAt(int index) const override;
  QLayoutItem* takeAt(int index) override;

  Qt::Orientations expandingDirections() const override { return {}; }
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize minimumSize() const override;
  QSize sizeHint() const override;
  void setGeometry(const QRect& area) override;

private:
  // Returns the height that the lines take in `area`; moves the items there when `place` is set.
  int arrange(const QRect& area, bool place) const;

  std::vector<QLayoutItem*> items_;
  int gap_;
};

} // namespace matwright
