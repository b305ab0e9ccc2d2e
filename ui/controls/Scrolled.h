#pragma once

class QScrollArea;
class QWidget;

namespace matwright {

// A page that scrolls when it is higher than its place.
QScrollArea* scrolled(QWidget* page);

} // namespace matwright
