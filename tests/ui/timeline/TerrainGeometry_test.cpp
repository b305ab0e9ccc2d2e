#include "tests/ui/timeline/Terrains.h"

namespace matwright {
namespace {

struct Drawn {
  TerrainScene scene;
  TerrainGeometry geometry;
  unsigned seed;
};

Drawn drawn(unsigned seed, int steps, QSizeF size, double zoom = 1) {
  test::Draw draw(seed);
  TerrainScene scene = randomScene(draw, steps);
  const TerrainFrame frame = frameFor(size, plainFonts());
  TerrainGeometry geometry(scene, frame, fittingScale(scene, frame) * zoom);
  return {std::move(scene), std::move(geometry), seed};
}

const std::vector<Drawn>& manyTerrains() {
  static const std::vector<Drawn> terrains = [] {
    std::vector<Drawn> made;
    for (const QSizeF size : {QSizeF(730, 430), QSizeF(1200, 560), QSizeF(1800, 700), QSizeF(420, 300)})
      for (const int steps : {1, 6, 12, 20, 40})
        for (unsigned seed = 1; seed <= 2; ++seed)
          for (const double zoom : {1.0, 2.6})
            made.push_back(drawn(seed * 97 + static_cast<unsigned>(steps), steps, size, zoom));
    return made;
  }();
  return terrains;
}

template <class Check> void forManyTerrains(Check check) {
  for (const Drawn& terrain : manyTerrains()) {
    SCOPED_TRACE(testing::Message() << terrain.geometry.frame().view.width() << " wide, " << terrain.scene.steps.size()
                                    << " steps, seed " << terrain.seed << ", "
                                    << terrain.geometry.scale().pixelsPerSecond() << " pixels a second");
    check(terrain);
  }
}

TEST(TerrainGeometry, ABlockIsAsWideAsItsWork) {
  forManyTerrains([](const Drawn& drawn) {
    const auto& blocks = drawn.geometry.blocks();
    ASSERT_EQ(blocks.size(), drawn.scene.steps.size());
    for (std::size_t i = 0; i < blocks.size(); ++i) {
      const TerrainStep& step = drawn.scene.steps[i];
      EXPECT_NEAR(blocks[i].rect.left(), drawn.geometry.scale().xOf(step.workBegin), 1e-6);
      EXPECT_NEAR(blocks[i].rect.width(),
                  std::max(2.0, (step.finish - step.workBegin).value() * drawn.geometry.scale().pixelsPerSecond()),
                  1e-6);
      if (i > 0) {
        EXPECT_LE(blocks[i - 1].rect.right(), blocks[i].rect.left() + 1.9);
      }
    }
  });
}

TEST(TerrainGeometry, AFootThatIsLeftOutGivesItsRoomToTheLanes) {
  test::Draw draw(5);
  const TerrainScene scene = randomScene(draw, 12);
  TerrainFrame frame = frameFor({900, 500}, plainFonts());
  qreal least = 1e9, lanes = 0;
  for (const TerrainFoot foot : {TerrainFoot::all, TerrainFoot::ruler, TerrainFoot::none}) {
    frame.foot = foot;
    const TerrainGeometry geometry(scene, frame, fittingScale(scene, frame));
    EXPECT_EQ(geometry.contentSize().height(), 500);
    EXPECT_EQ(geometry.ruler().isEmpty(), foot == TerrainFoot::none);
    EXPECT_EQ(geometry.effortStrip().isEmpty(), foot != TerrainFoot::all);
    EXPECT_EQ(geometry.spineStrip().isEmpty(), foot != TerrainFoot::all);
    EXPECT_LE(geometry.spineStrip().bottom(), 500);
    EXPECT_EQ(geometry.ruler().top(), geometry.terrain().bottom());
    EXPECT_LT(leastHeight(frame, scene), least);
    EXPECT_GT(geometry.terrain().height(), lanes);
    least = leastHeight(frame, scene);
    lanes = geometry.terrain().height();
  }
  EXPECT_EQ(TerrainGeometry(scene, frame, 0.3).terrain().bottom(), 500);
}

TEST(TerrainGeometry, LoadsHaveAScaleOfTheirOwnInTheStripOfEffort) {
  test::Draw draw(5);
  TerrainScene scene = randomScene(draw, 6);
  scene.loadScale = 80;
  const TerrainFrame frame = frameFor({900, 430}, plainFonts());
  const TerrainGeometry geometry(scene, frame, fittingScale(scene, frame));
  EXPECT_EQ(geometry.loadY(0), geometry.effortY(0));
  EXPECT_EQ(geometry.loadY(40), geometry.effortY(5));
  EXPECT_EQ(geometry.loadY(80), geometry.effortY(10));
  EXPECT_EQ(geometry.loadY(200), geometry.effortY(10)); // never above it
}

TEST(TerrainGeometry, BlocksRestInTheLaneOfTheirHeight) {
  forManyTerrains([](const Drawn& drawn) {
    for (const Block& block : drawn.geometry.blocks()) {
      const Lane& lane = drawn.geometry.lane(block.elevation);
      EXPECT_TRUE(lane.used);
      EXPECT_GE(block.rect.top(), lane.top - 1e-6);
      EXPECT_LE(block.rect.bottom(), lane.bottom);
      EXPECT_GT(block.rect.bottom(), lane.bottom - 5);
    }
  });
}

TEST(TerrainGeometry, SevenLanesFillTheTerrainStandingOnTop) {
  forManyTerrains([](const Drawn& drawn) {
    const auto& lanes = drawn.geometry.lanes();
    EXPECT_EQ(lanes.front().elevation, Elevation::standing);
    EXPECT_EQ(lanes.back().elevation, Elevation::faceDown);
    qreal y = drawn.geometry.terrain().top();
    for (const Lane& lane : lanes) {
      EXPECT_NEAR(lane.top, y, 1e-6);
      EXPECT_GE(lane.height(), drawn.geometry.frame().fonts.small.line); // its name has room
      y = lane.bottom;
    }
    EXPECT_NEAR(y, drawn.geometry.terrain().bottom(), 1e-6);
  });
}

// The face of the program: names are whole, and nothing lies over anything else.
TEST(TerrainGeometry, NamesAreWholeAndCoverNothing) {
  forManyTerrains([](const Drawn& drawn) {
    const auto& blocks = drawn.geometry.blocks();
    const TextMeasure& measure = drawn.geometry.frame().fonts.name;
    for (std::size_t i = 0; i < blocks.size(); ++i) {
      const QStringList& lines = blocks[i].label ? blocks[i].label->lines : blocks[i].face.nameLines;
      EXPECT_FALSE(blocks[i].label && blocks[i].face.showsName());
      if (!lines.isEmpty()) {
        EXPECT_EQ(lines.join(QString()).remove(QLatin1Char(' ')),
                  QString(drawn.scene.steps[i].name).remove(QLatin1Char(' ')));
      }
      if (!blocks[i].label)
        continue;
      const QRectF& label = blocks[i].label->rect;
      EXPECT_TRUE(drawn.geometry.terrain().contains(label));
      for (const QString& line : lines)
        EXPECT_LE(measure.width(line), label.width());
      EXPECT_LE(measure.line * static_cast<qreal>(lines.size()), label.height() + 1e-6);
      for (std::size_t j = 0; j < blocks.size(); ++j) {
        EXPECT_FALSE(blocks[j].rect.intersects(label)) << "block " << j << " under the name of " << i;
        if (i != j && blocks[j].label) {
          EXPECT_FALSE(blocks[j].label->rect.intersects(label)) << i << " and " << j;
          const QRectF leader =
              QRectF(blocks[j].label->from, blocks[j].label->to).normalized().adjusted(-0.5, 0.6, 0.5, -0.6);
          if (blocks[j].label->hasLeader()) {
            EXPECT_FALSE(leader.intersects(label)) << "leader of " << j << " through the name of " << i;
          }
        }
      }
      // The leader ends on its own block.
      EXPECT_GE(blocks[i].label->to.x(), blocks[i].rect.left() - 0.6);
      EXPECT_LE(blocks[i].label->to.x(), blocks[i].rect.right() + 0.6);
    }
  });
}

TEST(TerrainGeometry, SecondsStandOnFreeGround) {
  int shown = 0, wanted = 0;
  forManyTerrains([&](const Drawn& drawn) {
    std::vector<QRectF> texts;
    for (const Connector& connector : drawn.geometry.connectors()) {
      EXPECT_EQ(connector.text.isEmpty(), !connector.change); // only where the position truly changes
      if (drawn.geometry.frame().view.width() >= 1200 && drawn.scene.steps.size() <= 20) {
        wanted += connector.change;
        shown += !connector.label.isNull();
      }
      if (connector.caution) {
        EXPECT_FALSE(connector.mark.isNull());
      }
      if (!connector.label.isNull())
        texts.push_back(connector.label);
    }
    for (std::size_t i = 0; i < texts.size(); ++i) {
      for (const Block& block : drawn.geometry.blocks()) {
        EXPECT_FALSE(block.rect.intersects(texts[i]));
        EXPECT_FALSE(block.label && block.label->rect.intersects(texts[i]));
      }
      for (std::size_t j = i + 1; j < texts.size(); ++j)
        EXPECT_FALSE(texts[i].intersects(texts[j]));
    }
  });
  EXPECT_GT(shown, wanted * 3 / 4); // nearly all where there is room
}

TEST(TerrainGeometry, ConnectorsRunFromBlockToBlockForwardInTime) {
  forManyTerrains([](const Drawn& drawn) {
    EXPECT_EQ(drawn.geometry.connectors().size() + 1, drawn.scene.steps.size());
    for (const Connector& connector : drawn.geometry.connectors()) {
      EXPECT_NEAR(connector.points.front().x(), drawn.geometry.blocks()[connector.into - 1].rect.right(), 1e-6);
      EXPECT_GE(connector.points.back().x(), drawn.geometry.blocks()[connector.into].rect.left() - 1e-6);
      for (std::size_t i = 1; i < connector.points.size(); ++i)
        EXPECT_GE(connector.points[i].x(), connector.points[i - 1].x() - 1e-6);
    }
  });
}

TEST(TerrainGeometry, AConnectorPassesTheHeightsOfItsWay) {
  TerrainScene scene = drawn(1, 2, {900, 500}).scene;
  scene.steps[0].elevation = scene.steps[0].ending = Elevation::standing;
  scene.steps[1].elevation = scene.steps[1].ending = Elevation::sitting;
  scene.steps[1].way = {{0, Elevation::standing}, {0.6, Elevation::faceDown}, {1, Elevation::sitting}};
  const TerrainFrame frame = frameFor({900, 500}, plainFonts());
  const TerrainGeometry geometry(scene, frame, 2);
  qreal lowest = 0;
  for (const QPointF& point : geometry.connectors()[0].points)
    lowest = std::max(lowest, point.y());
  EXPECT_GT(lowest, geometry.lane(Elevation::faceDown).top);
}

// What a 50-minute class of 20 steps must do in the width that the window leaves it.
TEST(TerrainGeometry, NearlyEveryNameIsReadableInAnOrdinaryClass) {
  int names = 0, readable = 0;
  for (unsigned seed = 1; seed <= 12; ++seed) {
    test::Draw draw(seed);
    TerrainScene scene = randomScene(draw, 20);
    const double stretch = 3000 / scene.length.value(); // to fifty minutes
    for (TerrainStep& step : scene.steps) {
      step.begin = step.begin * stretch;
      step.workBegin = step.workBegin * stretch;
      step.finish = step.finish * stretch;
    }
    for (TerrainSection& section : scene.sections) {
      section.begin = section.begin * stretch;
      section.end = section.end * stretch;
    }
    scene.length = scene.length * stretch;
    const TerrainFrame frame = frameFor({730, 430}, plainFonts());
    const TerrainGeometry geometry(scene, frame, fittingScale(scene, frame));
    EXPECT_LE(geometry.contentSize().width(), frame.along() + 1);
    for (const Block& block : geometry.blocks()) {
      ++names;
      readable += block.face.showsName() || block.label;
    }
  }
  EXPECT_GE(readable, names * 95 / 100) << readable << " of " << names;
}

TEST(TerrainGeometry, FittingShowsTheWholeClassAndANearEnd) {
  for (const double minutes_ : {3.0, 12.0, 31.0, 47.0, 50.0, 58.0}) {
    test::Draw draw(9);
    TerrainScene scene = randomScene(draw, 16);
    const double stretch = minutes_ * 60 / scene.length.value();
    for (TerrainStep& step : scene.steps) {
      step.begin = step.begin * stretch;
      step.workBegin = step.workBegin * stretch;
      step.finish = step.finish * stretch;
    }
    scene.length = scene.length * stretch;
    const TerrainFrame frame = frameFor({900, 480}, plainFonts());
    const TerrainGeometry geometry(scene, frame, fittingScale(scene, frame));
    EXPECT_LE(geometry.contentSize().width(), frame.along() + 1) << minutes_;
    EXPECT_LE(geometry.endX(), frame.along());
    if (minutes_ > 46) {
      EXPECT_LE(geometry.targetX(), frame.along());
    }
    EXPECT_GT(geometry.endX(), frame.along() * 0.3); // not lost in empty time
  }
}

TEST(TerrainGeometry, SectionNamesNeverCoverOneAnother) {
  forManyTerrains([](const Drawn& drawn) {
    const auto& sections = drawn.geometry.sections();
    for (std::size_t i = 0; i < sections.size(); ++i) {
      if (i > 0) {
        EXPECT_NEAR(sections[i].left, sections[i - 1].right, 1e-6);
      }
      for (std::size_t j = i + 1; j < sections.size(); ++j)
        EXPECT_FALSE(sections[i].label.intersects(sections[j].label));
      EXPECT_LE(sections[i].label.right(), drawn.geometry.contentSize().width());
    }
  });
}

TEST(TerrainGeometry, AnEmptySectionHasRoomToDropInto) {
  TerrainScene scene = drawn(2, 8, {900, 480}).scene;
  for (TerrainStep& step : scene.steps) // sections 0 and 2 give their steps to 1 and 3
    step.place.section |= 1;
  std::array<std::size_t, 4> counts{};
  for (TerrainStep& step : scene.steps)
    step.place.index = counts[step.place.section]++;
  scene.sections[1].begin = scene.sections[0].begin;
  scene.sections[0].end = scene.sections[0].begin;
  scene.sections[3].begin = scene.sections[2].begin;
  scene.sections[2].end = scene.sections[2].begin;
  for (std::size_t s = 0; s < 4; ++s)
    scene.sections[s].steps = counts[s];
  const TerrainFrame frame = frameFor({900, 480}, plainFonts());
  const TerrainGeometry geometry(scene, frame, fittingScale(scene, frame));
  for (const std::size_t empty : {std::size_t{0}, std::size_t{2}}) {
    const SectionBand& band = geometry.sections()[empty];
    EXPECT_TRUE(band.empty);
    EXPECT_GE(band.right - band.left, 60);
    EXPECT_EQ(geometry.dropPlace((band.left + band.right) / 2), (Place{empty, 0}));
    for (const Block& block : geometry.blocks())
      EXPECT_TRUE(block.rect.right() <= band.left + 1e-6 || block.rect.left() >= band.right - 1e-6);
  }
}

TEST(TerrainGeometry, RowsStandBelowOneAnother) {
  forManyTerrains([](const Drawn& drawn) {
    const TerrainGeometry& geometry = drawn.geometry;
    EXPECT_LE(geometry.header().bottom(), geometry.terrain().top() + 1e-6);
    EXPECT_LE(geometry.terrain().bottom(), geometry.ruler().top() + 1e-6);
    EXPECT_LE(geometry.ruler().bottom(), geometry.effortStrip().top());
    EXPECT_LE(geometry.effortStrip().bottom(), geometry.spineStrip().top());
    EXPECT_LE(geometry.spineStrip().bottom(), geometry.contentSize().height());
    EXPECT_GT(geometry.effortY(0), geometry.effortY(5));
    EXPECT_GT(geometry.effortY(5), geometry.effortY(10));
    EXPECT_TRUE(geometry.effortStrip().contains(QPointF(1, geometry.effortY(10))));
    EXPECT_TRUE(geometry.effortStrip().contains(QPointF(1, geometry.effortY(0))));
  });
}

} // namespace
} // namespace matwright
