#include "tests/ui/tidy/Untidy.h"
#include "ui/tidy/TidyLines.h"

#include <algorithm>

namespace matwright {
namespace {

// Every sign is 6 wide and a line 14 high: nothing depends on an installed font.
TerrainFonts plainFonts() {
  const TextMeasure measure{[](const QString& text) { return 6.0 * static_cast<qreal>(text.size()); }, 14};
  return {measure, measure, measure};
}

// A class drawn at random, and the same with two steps of its second section in each other's place.
struct Swapped {
  TerrainScene before, after;
  std::vector<TidyMove> moves;
};

Swapped swapped(unsigned seed, int steps) {
  test::Draw draw(seed);
  PlanDocument document(sharedKnowledge(), testDay);
  ClassPlan plan = test::randomClass(draw, document.knowledge().catalogue, steps);
  document.load(plan);
  Swapped made{sceneOf(document.snapshot()), {}, {}};
  auto& section = plan.sections[1].steps;
  const StepId moved = section.back().id;
  made.moves.push_back({moved, {1, section.size() - 1}, {1, 0}, {}});
  std::rotate(section.begin(), section.end() - 1, section.end());
  document.load(plan);
  made.after = sceneOf(document.snapshot());
  return made;
}

struct Staged {
  TidyStage stage;
  std::vector<TidyMove> moves;
  QSizeF size;
  std::string name;
};

const std::vector<Staged>& manyStages() {
  static const std::vector<Staged> stages = [] {
    std::vector<Staged> made;
    for (const int steps : {8, 16, 40}) {
      const Swapped one = swapped(static_cast<unsigned>(steps), steps);
      for (const QSizeF size : {QSizeF(620, 300), QSizeF(900, 460), QSizeF(1500, 760)})
        for (const double zoom : {1.0, 3.0})
          made.push_back({stageOf(one.before, one.after, plainFonts(), size, zoom), one.moves, size,
                          std::to_string(size.width()) + " wide, " + std::to_string(steps) + " steps, zoom " +
                              std::to_string(zoom)});
    }
    return made;
  }();
  return stages;
}

template <class Check> void forManyStages(Check check) {
  for (const Staged& staged : manyStages()) {
    SCOPED_TRACE(staged.name);
    check(staged.stage, staged.moves, staged.size);
  }
}

TEST(TidyLines, BothTerrainsAreOnOneScaleWithOneGutter) {
  forManyStages([](const TidyStage& stage, const auto&, QSizeF) {
    EXPECT_EQ(stage.before.scale().pixelsPerSecond(), stage.after.scale().pixelsPerSecond());
    EXPECT_EQ(stage.before.frame().gutter, stage.after.frame().gutter);
  });
}

TEST(TidyLines, BothFitAtTheFirstZoomAndNoneLiesOnTheOther) {
  forManyStages([](const TidyStage& stage, const auto&, QSizeF size) {
    EXPECT_GT(stage.afterTop, stage.beforeBottom());
    EXPECT_GE(stage.size.height() + 1, std::min(size.height(), stage.size.height()));
    EXPECT_EQ(stage.size.height(), stage.afterTop + stage.after.contentSize().height());
    if (size.height() > 700) {
      EXPECT_LE(stage.size.height(), size.height());
    }
  });
}

TEST(TidyLines, InALowViewBlocksAreLowRatherThanOutOfSight) {
  const Swapped made = swapped(16, 16);
  const TidyStage roomy = stageOf(made.before, made.after, plainFonts(), {960, 640}, 1);
  const TidyStage low = stageOf(made.before, made.after, plainFonts(), {960, 480}, 1);
  EXPECT_FALSE(roomy.after.frame().dense);
  EXPECT_TRUE(low.after.frame().dense);
  EXPECT_LE(low.size.height(), 480);
  for (const Block& block : low.after.blocks())
    EXPECT_GE(block.rect.height(), 17);
}

TEST(TidyLines, OneTerrainHasTheRulerForBoth) {
  forManyStages([](const TidyStage& stage, const auto&, QSizeF) {
    EXPECT_TRUE(stage.before.ruler().isEmpty());
    EXPECT_FALSE(stage.after.ruler().isEmpty());
    EXPECT_TRUE(stage.after.effortStrip().isEmpty());
    // Else lanes are of one height in both.
    EXPECT_NEAR(stage.before.terrain().height(), stage.after.terrain().height(), 1);
  });
}

TEST(TidyLines, ALineLeadsFromBlockToBlock) {
  forManyStages([](const TidyStage& stage, const std::vector<TidyMove>& moves, QSizeF) {
    const auto lines = linesOf(stage, moves);
    ASSERT_EQ(lines.size(), moves.size());
    const QRectF above = stage.before.block(moves[0].step)->rect;
    const QRectF below = stage.after.block(moves[0].step)->rect.translated(0, stage.afterTop);
    const auto& points = lines[0].points;
    ASSERT_EQ(points.size(), 4U);
    EXPECT_NEAR(points[0].x(), above.center().x(), 1e-6);
    EXPECT_NEAR(points[0].y(), above.bottom(), 1e-6);
    EXPECT_NEAR(points[3].x(), below.center().x(), 1e-6);
    EXPECT_NEAR(points[3].y(), below.top(), 1e-6);
    // It goes aslant between the terrains alone.
    EXPECT_EQ(points[0].x(), points[1].x());
    EXPECT_EQ(points[2].x(), points[3].x());
    EXPECT_EQ(points[1].y(), stage.beforeBottom());
    EXPECT_EQ(points[2].y(), stage.afterTop);
  });
}

TEST(TidyLines, ALineCrossesNoOtherBlock) {
  forManyStages([](const TidyStage& stage, const std::vector<TidyMove>& moves, QSizeF) {
    const auto points = linesOf(stage, moves)[0].points;
    for (const Block& block : stage.before.blocks())
      if (block.id != moves[0].step) {
        EXPECT_FALSE(block.rect.contains(QPointF(points[0].x(), block.rect.center().y())));
      }
    for (const Block& block : stage.after.blocks())
      if (block.id != moves[0].step) {
        EXPECT_FALSE(block.rect.contains(QPointF(points[3].x(), block.rect.center().y())));
      }
  });
}

TEST(TidyLines, EveryBlockIsFoundWhereItIs) {
  forManyStages([](const TidyStage& stage, const auto&, QSizeF) {
    for (const bool after : {false, true}) {
      const TerrainGeometry& geometry = after ? stage.after : stage.before;
      for (std::size_t i = 0; i < geometry.blocks().size(); ++i) {
        const auto hit = hitOn(stage, geometry.blocks()[i].rect.center() + QPointF(0, after ? stage.afterTop : 0));
        ASSERT_TRUE(hit);
        EXPECT_EQ(hit->step, i);
        EXPECT_EQ(hit->after, after);
      }
    }
    EXPECT_FALSE(hitOn(stage, {40, (stage.beforeBottom() + stage.afterTop) / 2}));
  });
}

} // namespace
} // namespace matwright
