#include "core/figure/PosedBody.h"
#include "tests/ui/card/Cards.h"
#include "ui/card/CardPainter.h"

#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>

namespace matwright {
namespace {

// The leg of a lying body is raised: where it was is drawn in a grey that nothing else on the card has.
Card cardOfLegRaises(int steps) {
  KeyPoses raise;
  for (Pose* pose : {&raise.start, &raise.end}) {
    pose->lean = -90;
    pose->legs[index(Limb::far)] = {.hip = 50, .knee = 95};
    pose->on = {Contact::back, Contact::head, Contact::footFar};
  }
  raise.end.legs[index(Limb::near)].hip = 60;
  Card card = cardOfSteps(3, steps);
  for (CardSection& section : card.sections)
    for (CardRow& row : section.rows)
      row.poses = raise;
  return card;
}

int ghostPixels(const Card& card) {
  constexpr int kWidth = 1600;
  const CardLayout layout = layOut(card, kA4Millimetres);
  QImage image(kWidth, static_cast<int>(kWidth * layout.paper.height() / layout.paper.width()), QImage::Format_RGB32);
  QPainter painter(&image);
  paintCard(painter, image.rect(), card, layout, 0);
  painter.end();
  int count = 0;
  for (const PlacedFigure& figure : layout.pages[0].figures) {
    const double scale = kWidth / layout.paper.width();
    const QRect box = QRectF(figure.box.topLeft() * scale, figure.box.size() * scale).toRect();
    for (int y = box.top(); y <= box.bottom(); ++y)
      for (int x = box.left(); x <= box.right(); ++x)
        count += image.pixel(x, y) == qRgb(0xdc, 0xdc, 0xdc) ? 1 : 0;
  }
  return count;
}

TEST(CardFigures, ShowWhereTheMovementComesFromWhereThereIsRoom) {
  EXPECT_GT(ghostPixels(cardOfLegRaises(6)), 400);
  EXPECT_LT(ghostPixels(cardOfLegRaises(45)), 100); // soft edges
}

} // namespace
} // namespace matwright
