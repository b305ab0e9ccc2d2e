#include "tests/ui/timeline/Terrains.h"

namespace matwright {
namespace {

TerrainStep stepCalled(const char* name) {
  TerrainStep step;
  step.name = QLatin1String(name);
  step.dose = QStringLiteral("10\u00a0breaths");
  step.shortDose = QStringLiteral("10");
  step.caution = Level::adapt;
  return step;
}

TEST(BlockFace, AWideBlockHoldsNameFigureDoseAndMark) {
  const QRectF block(0, 0, 110, 90);
  const auto face = faceWithName(block, stepCalled("Breathing into the ribs"), plainFonts());
  ASSERT_TRUE(face);
  EXPECT_EQ(face->nameLines.join(QLatin1Char(' ')), QStringLiteral("Breathing into the ribs"));
  EXPECT_EQ(face->doseLines, QStringList{QStringLiteral("10\u00a0breaths")});
  EXPECT_FALSE(face->mark.isNull());
  EXPECT_GE(face->figure.height(), 22);
}

TEST(BlockFace, ANarrowBlockHasNoHalfName) {
  EXPECT_FALSE(faceWithName(QRectF(0, 0, 40, 90), stepCalled("Breathing into the ribs"), plainFonts()));
  const BlockFace face = faceWithoutName(QRectF(0, 0, 28, 44), stepCalled("Breathing into the ribs"), plainFonts());
  EXPECT_FALSE(face.showsName());
  EXPECT_FALSE(face.figure.isNull());
  EXPECT_EQ(face.doseLines, QStringList{QStringLiteral("10")});
}

// Whatever the size: all within the block, nothing over anything else, texts as wide as their places.
TEST(BlockFace, PartsNeverOverlap) {
  const TerrainFonts fonts = plainFonts();
  for (const char* name : {"Saw", "Roll up", "Breathing into the ribs", "Single straight leg stretch (scissors)"})
    for (qreal width = 3; width < 260; width += 3.7)
      for (qreal height = 24; height < 130; height += 6.3) {
        const QRectF block(20, 30, width, height);
        const TerrainStep step = stepCalled(name);
        const auto named = faceWithName(block, step, fonts);
        for (const BlockFace& face : {named.value_or(BlockFace{}), faceWithoutName(block, step, fonts)}) {
          const std::vector<QRectF> parts{face.figure, face.name, face.dose};
          for (std::size_t i = 0; i < parts.size(); ++i) {
            if (parts[i].isEmpty())
              continue;
            EXPECT_TRUE(block.contains(parts[i])) << name << ' ' << width << 'x' << height << " part " << i;
            for (std::size_t j = i + 1; j < parts.size(); ++j)
              EXPECT_FALSE(parts[i].intersects(parts[j])) << name << ' ' << width << 'x' << height;
          }
          if (face.showsName()) {
            EXPECT_FALSE(face.mark.intersects(face.name));
          }
          for (const QString& line : face.nameLines)
            EXPECT_LE(fonts.name.width(line), face.name.width() + 1e-6);
          for (const QString& line : face.doseLines)
            EXPECT_LE(fonts.small.width(line), face.dose.width() + 1e-6);
          EXPECT_LE(fonts.name.line * static_cast<qreal>(face.nameLines.size()), face.name.height() + 1e-6);
        }
      }
}

} // namespace
} // namespace matwright
