// How the rows of LoadOptions are painted and spoken: the name in full, and below it a column each for effort and the
// joints, with a number and a bar.
#pragma once

#include "ui/inspector/LoadOptions.h"

#include <QStyledItemDelegate>

namespace matwright {

class LoadOptionDelegate : public QStyledItemDelegate {
public:
  // Looks at what belongs to the view, whose lifetime is its parent's.
  LoadOptionDelegate(const std::vector<OptionLoad>& rows, const OptionId& inUse, const double& full, QObject* parent)
      : QStyledItemDelegate(parent), rows_(rows), inUse_(inUse), full_(full) {}

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
  const std::vector<OptionLoad>& rows_;
  const OptionId& inUse_;
  const double& full_;
};

// How tall the row of a name is at a width.
int rowHeight(const QString& name, int width, const QFont& font);

// The names of the columns, above them.
class LoadOptionHeader : public QWidget {
  Q_OBJECT

public:
  explicit LoadOptionHeader(QWidget* parent = nullptr);
  QSize sizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;
};

// "Head down, effort 3, low back 40 N·m, the least, ..., in use".
QString spoken(const std::vector<OptionLoad>& rows, std::size_t row, bool inUse);

} // namespace matwright
