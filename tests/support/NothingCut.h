#pragma once

#include <QStringList>
#include <QWidget>

namespace matwright::testing {

// What of the visible parts of a widget is cut or lies on something else: empty when every text has the room it needs.
QStringList cutParts(const QWidget& widget);

// Lays a widget out at a size, as if it were shown.
void layOut(QWidget& widget, const QSize& size);

} // namespace matwright::testing
