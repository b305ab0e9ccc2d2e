#include "ui/theme/Theme.h"

#include <QFontInfo>
#include <QImage>
#include <gtest/gtest.h>
#include <set>

namespace matwright {
namespace {

// WCAG 2.2: 4.5:1 for text, 3:1 for marks and large text. The pairs of the first test are the usual worked values
// (contrast of grey on white), re-computed from the definition.
TEST(Contrast, MatchesWorkedPairs) {
  EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-9);
  EXPECT_NEAR(contrast(QColor("#767676"), Qt::white), 4.5422, 5e-4);
  EXPECT_NEAR(contrast(QColor("#777777"), Qt::white), 4.4781, 5e-4);
  EXPECT_NEAR(contrast(QColor("#ff0000"), Qt::white), 3.9985, 5e-4);
  EXPECT_NEAR(contrast(QColor("#ff0000"), QColor("#0000ff")), 2.1489, 5e-4);
  EXPECT_NEAR(contrast(Qt::white, QColor("#595959")), 7.0047, 5e-4);
}

class Themes : public testing::TestWithParam<const Theme*> {};

TEST_P(Themes, KeepTextReadable) {
  const Theme& theme = *GetParam();
  for (const QColor& ground : {theme.ground, theme.panel, theme.accentSoft}) {
    EXPECT_GE(contrast(theme.ink, ground), 7.0);
    EXPECT_GE(contrast(theme.inkSoft, ground), 4.5) << ground.name().toStdString();
  }
  for (const QColor& ground : theme.sections)
    if (theme.panel != QColor(Qt::white) || theme.ground != QColor(Qt::white)) { // on paper they are bars, not grounds
      EXPECT_GE(contrast(theme.ink, ground), 7.0);
      EXPECT_GE(contrast(theme.inkSoft, ground), 4.5) << ground.name().toStdString();
    }
  EXPECT_GE(contrast(theme.onAccent, theme.accent), 4.5);
  for (const QColor& colour : theme.spine)
    EXPECT_GE(contrast(theme.onSpine, colour), 4.5);
}

TEST_P(Themes, KeepMarksVisible) {
  const Theme& theme = *GetParam();
  for (const QColor& level : theme.levels)
    for (const QColor& ground : {theme.ground, theme.panel, theme.accentSoft})
      EXPECT_GE(contrast(level, ground), 3.0) << level.name().toStdString();
  EXPECT_GE(contrast(theme.accent, theme.ground), 3.0);
  EXPECT_GE(contrast(theme.bodyNear, theme.panel), 4.5);
}

INSTANTIATE_TEST_SUITE_P(All, Themes, testing::Values(&lightTheme(), &darkTheme(), &printTheme()));

TEST(Theme, FollowsThePalette) {
  EXPECT_TRUE(themeFor(paletteOf(darkTheme())).dark);
  EXPECT_FALSE(themeFor(paletteOf(lightTheme())).dark);
}

// Colour is never the only sign: the marks differ as shapes even in black and white.
TEST(LevelMarks, DifferInShape) {
  std::set<QByteArray> shapes;
  for (std::size_t i = 0; i < kWordCount<Level>; ++i) {
    QImage image(32, 32, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintLevelMark(painter, QRectF(2, 2, 28, 28), static_cast<Level>(i), printTheme(), true);
    painter.end();
    const QImage mono = image.convertToFormat(QImage::Format_Mono, Qt::ThresholdDither);
    shapes.insert(QByteArray(reinterpret_cast<const char*>(mono.constBits()), static_cast<int>(mono.sizeInBytes())));
    EXPECT_NE(image.convertToFormat(QImage::Format_Grayscale8), QImage(32, 32, QImage::Format_Grayscale8));
  }
  EXPECT_EQ(shapes.size(), kWordCount<Level>);
}

TEST(Fonts, TheBundledFamilyIsThere) {
  const QFont font(textFamily());
  EXPECT_EQ(QFontInfo(font).family(), textFamily());
}

} // namespace
} // namespace matwright
