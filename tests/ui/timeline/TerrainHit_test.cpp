#include "tests/ui/timeline/Terrains.h"

namespace matwright {
namespace {

using Kind = TerrainHit::Kind;

struct Hits : testing::Test {
  test::Draw draw{21};
  TerrainScene scene = randomScene(draw, 14);
  TerrainFrame frame = frameFor({1400, 560}, plainFonts());
  TerrainGeometry geometry{scene, frame, fittingScale(scene, frame)};
};

TEST_F(Hits, EveryBlockIsFoundInItsMiddleAndItsEdgeAtItsEnd) {
  for (std::size_t i = 0; i < geometry.blocks().size(); ++i) {
    const QRectF& rect = geometry.blocks()[i].rect;
    const TerrainHit middle = geometry.hit(QPointF(rect.left() + rect.width() * 0.4, rect.center().y()));
    EXPECT_EQ(middle.kind, Kind::block);
    EXPECT_EQ(middle.step, i);
    const TerrainHit edge = geometry.hit(QPointF(rect.right() - 1, rect.center().y()));
    EXPECT_EQ(edge.kind, Kind::blockEdge);
    EXPECT_EQ(edge.step, i);
  }
}

TEST_F(Hits, ANameMeansItsBlock) {
  int tried = 0;
  for (std::size_t i = 0; i < geometry.blocks().size(); ++i)
    if (const auto& label = geometry.blocks()[i].label) {
      const TerrainHit hit = geometry.hit(label->rect.center());
      EXPECT_EQ(hit.kind, Kind::block);
      EXPECT_EQ(hit.step, i);
      ++tried;
    }
  EXPECT_GT(tried, 3);
}

TEST_F(Hits, AConnectorMeansTheGapBeforeItsStep) {
  int tried = 0;
  for (const Connector& connector : geometry.connectors()) {
    if (connector.label.isNull())
      continue;
    const TerrainHit hit = geometry.hit(connector.label.center());
    EXPECT_EQ(hit.kind, Kind::connector);
    EXPECT_EQ(hit.step, connector.into);
    EXPECT_EQ(hit.place, geometry.blocks()[connector.into].place);
    ++tried;
  }
  EXPECT_GT(tried, 3);
}

TEST_F(Hits, SectionsAreFoundByTheirNames) {
  for (std::size_t i = 0; i < geometry.sections().size(); ++i) {
    ASSERT_FALSE(geometry.sections()[i].label.isNull());
    const TerrainHit hit = geometry.hit(geometry.sections()[i].label.center());
    EXPECT_EQ(hit.kind, Kind::section);
    EXPECT_EQ(hit.section, i);
  }
}

TEST_F(Hits, FarFromEverythingIsGround) {
  EXPECT_EQ(geometry.hit({geometry.endX() - 400, geometry.ruler().center().y()}).kind, Kind::ground);
  // Above a wide block, away from its sides.
  for (const Block& block : geometry.blocks())
    if (block.rect.width() > 60 && block.face.showsName()) {
      const QPointF above(block.rect.center().x(), geometry.terrain().top() + 2);
      const TerrainHit hit = geometry.hit(above);
      EXPECT_TRUE(hit.kind == Kind::ground || hit.kind == Kind::block);
    }
}

TEST_F(Hits, EveryPlaceHasAGapAndItsMiddleFindsIt) {
  std::size_t places = 0;
  for (const TerrainSection& section : scene.sections)
    places += section.steps + 1;
  EXPECT_EQ(geometry.gaps().size(), places);
  for (const GapSlot& gap : geometry.gaps()) {
    EXPECT_EQ(geometry.gap(gap.place), &gap);
    EXPECT_LE(gap.left, gap.right + 1e-6);
  }
}

TEST_F(Hits, DropsGoByTheMiddlesOfBlocks) {
  for (const Block& block : geometry.blocks()) {
    const qreal middle = block.rect.center().x();
    EXPECT_EQ(geometry.dropPlace(middle - 0.5), block.place);
    EXPECT_EQ(geometry.dropPlace(middle + 0.5), (Place{block.place.section, block.place.index + 1}));
  }
  EXPECT_EQ(geometry.dropPlace(-50), (Place{0, 0}));
  EXPECT_EQ(geometry.dropPlace(1e6), (Place{3, scene.sections[3].steps}));
}

TEST_F(Hits, WhereSectionsMeetBothSidesCanBeDroppedInto) {
  for (std::size_t s = 1; s < 4; ++s) {
    const qreal border = geometry.sections()[s].left;
    EXPECT_EQ(geometry.dropPlace(border - 0.5), (Place{s - 1, scene.sections[s - 1].steps}));
    EXPECT_EQ(geometry.dropPlace(border + 0.5), (Place{s, 0}));
  }
}

TEST_F(Hits, AFrameFindsTheBlocksItTouches) {
  const QRectF& third = geometry.blocks()[2].rect;
  const QRectF& fourth = geometry.blocks()[3].rect;
  const auto found = geometry.blocksIn(third.united(fourth).adjusted(1, 1, -1, -1));
  EXPECT_THAT(found, testing::IsSupersetOf({std::size_t{2}, std::size_t{3}}));
  EXPECT_TRUE(geometry.blocksIn(QRectF(third.left(), third.bottom() + 500, 5, 5)).empty());
}

} // namespace
} // namespace matwright
