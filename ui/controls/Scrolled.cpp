#include "ui/controls/Scrolled.h"

#include <QScrollArea>

namespace matwright {

QScrollArea* scrolled(QWidget* page) {
  auto* area = new QScrollArea;
  area->setWidgetResizable(true);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setWidget(page);
  return area;
}

} // namespace matwright
