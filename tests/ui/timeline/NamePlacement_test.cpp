#include "tests/ui/timeline/Terrains.h"

namespace matwright {
namespace {

// Blocks of one lane, side by side.
NameGround groundOf(const std::vector<QRectF>& blocks, QRectF area = {0, 0, 700, 300}) {
  NameGround ground;
  ground.area = area;
  ground.blocks = blocks;
  return ground;
}

std::vector<NameRequest> requestsFor(const std::vector<QRectF>& blocks, const QString& name) {
  std::vector<NameRequest> requests;
  for (const QRectF& block : blocks)
    requests.push_back({block, name});
  return requests;
}

TEST(NamePlacement, ALoneNameStandsRightAboveItsBlock) {
  const std::vector<QRectF> blocks{QRectF(300, 150, 30, 40)};
  const auto labels = placeNames(requestsFor(blocks, QStringLiteral("Roll up")), groundOf(blocks), plainMeasure());
  ASSERT_TRUE(labels[0]);
  EXPECT_LE(labels[0]->rect.bottom(), 150);
  EXPECT_NEAR(labels[0]->rect.center().x(), 315, 1);
  EXPECT_FALSE(labels[0]->hasLeader());
  EXPECT_EQ(labels[0]->lines.join(QLatin1Char(' ')), QStringLiteral("Roll up"));
}

TEST(NamePlacement, BelowWhereAboveThereIsNoRoom) {
  const std::vector<QRectF> blocks{QRectF(300, 4, 30, 40)};
  const auto labels = placeNames(requestsFor(blocks, QStringLiteral("Roll up")), groundOf(blocks), plainMeasure());
  ASSERT_TRUE(labels[0]);
  EXPECT_GE(labels[0]->rect.top(), 44);
}

TEST(NamePlacement, ARowOfNarrowBlocksIsStaggered) {
  std::vector<QRectF> blocks;
  for (int i = 0; i < 12; ++i)
    blocks.emplace_back(60 + i * 30, 200, 26, 40);
  const auto labels =
      placeNames(requestsFor(blocks, QStringLiteral("Breathing into the ribs")), groundOf(blocks), plainMeasure());
  int placed = 0;
  for (const auto& label : labels)
    placed += label.has_value();
  EXPECT_EQ(placed, 12);
}

TEST(NamePlacement, NoNameWhereThereIsTrulyNoRoom) {
  const std::vector<QRectF> blocks{QRectF(10, 10, 30, 20)};
  const auto labels = placeNames(requestsFor(blocks, QStringLiteral("Breathing into the ribs")),
                                 groundOf(blocks, {0, 0, 48, 40}), plainMeasure());
  EXPECT_FALSE(labels[0]);
}

TEST(NamePlacement, KeepsOffAConnectorWhenItCan) {
  const std::vector<QRectF> blocks{QRectF(300, 150, 30, 40)};
  NameGround ground = groundOf(blocks);
  ground.obstacles.push_back({{{290, 100}, {345, 145}}, 1});
  const auto labels = placeNames(requestsFor(blocks, QStringLiteral("Roll up")), ground, plainMeasure());
  ASSERT_TRUE(labels[0]);
  EXPECT_FALSE(passesThrough(ground.obstacles[0].points, labels[0]->rect));
}

TEST(NamePlacement, TheSameEveryTime) {
  test::Draw draw(3);
  const TerrainScene scene = randomScene(draw, 30);
  const TerrainFrame frame = frameFor({900, 480}, plainFonts());
  const TerrainGeometry one(scene, frame, fittingScale(scene, frame)), other(scene, frame, fittingScale(scene, frame));
  for (std::size_t i = 0; i < one.blocks().size(); ++i)
    EXPECT_EQ(one.blocks()[i].label, other.blocks()[i].label);
}

TEST(PassesThrough, SeesLinesThatHaveNoPointWithin) {
  const QRectF box(10, 10, 20, 20);
  EXPECT_TRUE(passesThrough(std::vector<QPointF>{{0, 20}, {50, 20}}, box));
  EXPECT_TRUE(passesThrough(std::vector<QPointF>{{0, 0}, {40, 40}}, box));
  EXPECT_TRUE(passesThrough(std::vector<QPointF>{{20, 0}, {20, 50}}, box));
  EXPECT_TRUE(passesThrough(std::vector<QPointF>{{15, 15}}, box));
  EXPECT_FALSE(passesThrough(std::vector<QPointF>{{0, 5}, {50, 5}}, box));
  EXPECT_FALSE(passesThrough(std::vector<QPointF>{{0, 35}, {45, 32}}, box));
  EXPECT_FALSE(passesThrough(std::vector<QPointF>{{0, 25}, {5, 40}, {60, 60}}, box));
}

} // namespace
} // namespace matwright
