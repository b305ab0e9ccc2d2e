#pragma once

#include "ui/card/CardLayout.h"

#include <QPainter>

namespace matwright {

// Paints one page of a laid-out card to fill `target`, which has the shape of the paper. Black and white throughout, so
// that any printer will do.
void paintCard(QPainter& painter, const QRectF& target, const Card& card, const CardLayout& layout, std::size_t page);

} // namespace matwright
