#pragma once

#include <QListWidget>
#include <functional>

namespace matwright {

// A list on a page that scrolls: as tall as its rows are at its width. A click, Enter or Space chooses a row.
class RowList : public QListWidget {
  Q_OBJECT

public:
  using HeightOf = std::function<int(int row, int width)>;

  // `heightOf` is asked for rows that the list has; what it looks at must outlive the list.
  RowList(const QString& name, HeightOf heightOf, QWidget* parent = nullptr);

  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override { return {200, heightForWidth(200)}; }
  QSize minimumSizeHint() const override { return {120, 0}; }

Q_SIGNALS:
  void chosen(int row);

protected:
  void keyPressEvent(QKeyEvent* event) override;
  void wheelEvent(QWheelEvent* event) override; // for the page

private:
  HeightOf heightOf_;
};

} // namespace matwright
