#include "core/figure/Skeleton.h"
#include "tests/support/PoseFile.h"
#include "ui/figure/FigurePaint.h"
#include "ui/theme/Theme.h"

#include <QImage>
#include <QPainter>
#include <gmock/gmock.h>

namespace matwright {
namespace {

const std::vector<LabelledPose>& positions() {
  static const std::vector<LabelledPose> poses =
      readPositionPoses(MATWRIGHT_SOURCE_DIR "/resources/positions/positions.json").poses;
  return poses;
}

Pose position(const std::string& id) {
  for (const LabelledPose& entry : positions())
    if (entry.label == id)
      return entry.pose;
  ADD_FAILURE() << "no position " << id;
  return {};
}

FigureStyle plain() {
  FigureStyle style;
  style.colours.paper = Qt::white;
  style.floor = false;
  return style;
}

constexpr int kBorder = 8;

// The figure in a box of `size` with a border around it.
QImage painted(const Pose& pose, int size, const FigureStyle& style, const Pose* ghost = nullptr) {
  QImage image(size + 2 * kBorder, size + 2 * kBorder, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  const QRectF box(kBorder, kBorder, size, size);
  if (ghost != nullptr)
    paintFigure(painter, box, pose, *ghost, style);
  else
    paintFigure(painter, box, pose, style);
  return image;
}

// The smallest box around all that differs from white.
QRect inkOf(const QImage& image) {
  QRect ink;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x)
      if (qGray(image.pixel(x, y)) < 235)
        ink = ink.united(QRect(x, y, 1, 1));
  return ink;
}

int pixelsNear(const QImage& image, const QColor& colour) {
  int count = 0;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) {
      const QColor pixel = image.pixelColor(x, y);
      count += std::abs(pixel.red() - colour.red()) + std::abs(pixel.green() - colour.green()) +
                           std::abs(pixel.blue() - colour.blue()) <
                       24
                   ? 1
                   : 0;
    }
  }
  return count;
}

int differences(const QImage& a, const QImage& b) {
  int count = 0;
  for (int y = 0; y < a.height(); ++y)
    for (int x = 0; x < a.width(); ++x)
      count += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > 60 ? 1 : 0;
  return count;
}

TEST(FigurePaint, StaysInItsBoxAndFillsOneOfItsDirections) {
  for (const LabelledPose& entry : positions()) {
    for (const int size : {24, 60, 200}) {
      const QRect ink = inkOf(painted(entry.pose, size, plain()));
      ASSERT_TRUE(QRect(kBorder - 1, kBorder - 1, size + 2, size + 2).contains(ink)) << entry.label << " " << size;
      EXPECT_GT(std::max(ink.width(), ink.height()), size * 0.75) << entry.label << " " << size;
      EXPECT_NEAR(ink.center().x(), kBorder + size / 2, size * 0.04 + 1) << entry.label;
    }
  }
}

TEST(FigurePaint, StandsOnTheLowerEdge) {
  for (const LabelledPose& entry : positions()) {
    if (entry.pose.view == View::top)
      continue;
    const QRect ink = inkOf(painted(entry.pose, 120, plain()));
    EXPECT_NEAR(ink.bottom(), kBorder + 119, 2) << entry.label;
  }
}

TEST(FigurePaint, FiguresOfAListCanShareOneScale) {
  FigureStyle style = plain();
  style.unitsPerStature = 100;
  const QRect standing = inkOf(painted(position("stand"), 120, style));
  const QRect lying = inkOf(painted(position("face-up"), 120, style));
  const QRect sitting = inkOf(painted(position("long-sit"), 120, style));
  EXPECT_NEAR(standing.height(), 100, 2);
  EXPECT_NEAR(lying.width(), 97, 4);
  EXPECT_LT(lying.height(), 20);
  EXPECT_NEAR(sitting.height(), 52, 3); // sitting height is about .52 of the stature (common practice, no source)
}

// A list shows figures at 24 pixels: no two positions may look alike there, apart from nothing.
TEST(FigurePaint, PositionsDifferAtTwentyFourPixels) {
  FigureStyle style = plain();
  style.floor = true;
  std::vector<QImage> images;
  for (const LabelledPose& entry : positions())
    images.push_back(painted(entry.pose, 24, style));
  for (std::size_t i = 0; i < images.size(); ++i)
    for (std::size_t k = i + 1; k < images.size(); ++k)
      EXPECT_GT(differences(images[i], images[k]), 8) << positions()[i].label << " " << positions()[k].label;
}

// Beside limbs that are thicker than they should be.
TEST(FigurePaint, TheHeadIsLargerWhenSmallAndTrueWhenLarge) {
  const Picture picture = pictureOf(*settledOnce(position("stand")));
  const auto headAt = [&](int size) {
    const FigurePlacing placing = placingOf(QRectF(0, 0, size, size), picture, picture.extent, plain());
    for (const PicturePart& part : picture.parts)
      if (part.part == BodyPart::head)
        return shapeOf(part, placing, plain().thinnest).whole.boundingRect().height() / placing.scale / 2;
    return 0.0;
  };
  EXPECT_NEAR(headAt(200), skeleton::kHeadRadius, 0.001);
  EXPECT_GT(headAt(24), 1.2 * skeleton::kHeadRadius);
  EXPECT_LT(headAt(48), headAt(24));
}

// Where muscles lie narrow in a part, a small figure shows the part.
TEST(FigurePaint, TheWorkingRegionIsSeenAtTwentyFourPixels) {
  const QColor accent = plain().colours.accent;
  for (const Region region : {Region::frontThigh, Region::abdominals, Region::upperBack, Region::lowerLeg}) {
    FigureStyle style = plain();
    style.regions = {region};
    const QImage image = painted(position("bent-sit"), 24, style);
    int seen = 0; // clearly nearer to the accent than to the body
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x)
        seen += image.pixelColor(x, y).saturation() > 150 && std::abs(image.pixelColor(x, y).hue() - accent.hue()) < 20
                    ? 1
                    : 0;
    EXPECT_GE(seen, 6) << word(region);
  }
}

TEST(FigurePaint, LimbsStayVisibleWhenSmall) {
  FigureStyle style = plain();
  style.thinnest = 2;
  const QImage image = painted(position("four-point"), 24, style);
  int columns = 0; // with dark ink somewhere
  for (int x = kBorder; x < kBorder + 24; ++x) {
    int darkest = 255;
    for (int y = kBorder; y < kBorder + 24; ++y)
      darkest = std::min(darkest, qGray(image.pixel(x, y)));
    columns += darkest < 110 ? 1 : 0;
  }
  EXPECT_GE(columns, 22);
}

TEST(FigurePaint, MirroringFlipsThePicture) {
  Pose pose = position("bent-sit");
  const QImage right = painted(pose, 100, plain());
  pose.flip = !pose.flip;
  const QImage left = painted(pose, 100, plain());
  EXPECT_LT(differences(left.mirrored(true, false), right), 60); // but for rounding at the edges
  EXPECT_GT(differences(left, right), 600);
}

TEST(FigurePaint, TheFarSideIsLighter) {
  const FigureStyle style = plain();
  const QImage image = painted(position("half-kneel-right"), 150, style);
  EXPECT_GT(pixelsNear(image, style.colours.near), 1000);
  EXPECT_GT(pixelsNear(image, style.colours.far), 400);
  // both sides are as near: no more of it than the soft edges of the dark parts
  EXPECT_LT(pixelsNear(painted(position("wide-sit"), 150, style), style.colours.far), 80);
}

TEST(FigurePaint, EveryRegionCanBeShown) {
  const Pose pose = position("bent-sit");
  EXPECT_EQ(pixelsNear(painted(pose, 200, plain()), plain().colours.accent), 0);
  for (std::size_t i = 0; i < kWordCount<Region>; ++i) {
    FigureStyle style = plain();
    style.regions.insert(static_cast<Region>(i));
    EXPECT_GT(pixelsNear(painted(pose, 200, style), style.colours.accent), 40) << word(static_cast<Region>(i));
    EXPECT_EQ(inkOf(painted(pose, 200, style)), inkOf(painted(pose, 200, plain())));
  }
}

TEST(FigurePaint, TheStartPoseStandsFaintlyBehind) {
  const FigureStyle style = plain();
  const Pose start = position("stand"), end = position("bent-sit");
  EXPECT_LT(pixelsNear(painted(end, 150, style), style.colours.ghost), 120); // soft edges
  const QImage both = painted(end, 150, style, &start);
  EXPECT_GT(pixelsNear(both, style.colours.ghost), 500);
  EXPECT_GT(pixelsNear(both, style.colours.near), 300);
}

TEST(FigurePaint, AGhostSeenFromElsewhereIsLeftAway) {
  const FigureStyle style = plain();
  const Pose start = position("wide-sit"), end = position("long-sit");
  EXPECT_EQ(painted(end, 150, style, &start), painted(end, 150, style));
}

TEST(FigurePaint, FloorAndWallAreDrawnWhenAsked) {
  FigureStyle style = plain();
  const Pose pose = position("stand-wall-face");
  EXPECT_EQ(pixelsNear(painted(pose, 150, style), style.colours.floor), 0);
  style.floor = true;
  const QImage image = painted(pose, 150, style);
  int wall = 0;
  for (int y = kBorder; y < kBorder + 140; ++y)
    for (int x = 0; x < image.width(); ++x)
      if (pixelsNear(image.copy(x, y, 1, 1), style.colours.floor) == 1) {
        ++wall;
        break;
      }
  EXPECT_GT(wall, 120);
  EXPECT_GT(pixelsNear(image.copy(kBorder, kBorder + 146, 150, 4), style.colours.floor), 100);
}

TEST(FigurePaint, ABodyOnAChairIsDrawnWithItsChairFromEverySide) {
  const FigureStyle style = plain();
  for (const View view : {View::side, View::front, View::top}) {
    Pose seated = position("sitting-chair");
    seated.view = view;
    Pose inTheAir = seated;
    inTheAir.supports = {};
    EXPECT_NE(painted(seated, 150, style), painted(inTheAir, 150, style)) << word(view);
    EXPECT_GT(pixelsNear(painted(seated, 150, style), style.colours.near), 500) << word(view);
  }
}

TEST(FigurePaint, WhatIsHeldIsDrawnWhereverItIsHeld) {
  const FigureStyle style = plain();
  for (std::size_t i = 0; i < kWordCount<Held>; ++i)
    for (std::size_t j = 0; j < kWordCount<HeldAt>; ++j)
      for (const View view : {View::side, View::front, View::top}) {
        const HeldProp held{static_cast<Held>(i), static_cast<HeldAt>(j)};
        if (!canHold(held.what, held.at))
          continue;
        Pose pose = position("face-up-tabletop");
        pose.view = view;
        const QImage without = painted(pose, 150, style);
        pose.holds = held;
        const bool hidden = held.at == HeldAt::lowBack || held.at == HeldAt::seat; // under who lies on it
        EXPECT_TRUE(hidden || painted(pose, 150, style) != without)
            << word(held.what) << ' ' << word(held.at) << ' ' << word(view);
      }
}

TEST(FigurePaint, AWallBehindTheBodyIsAFaintPanel) {
  FigureStyle style = plain();
  style.floor = true;
  Pose pose = position("stand-wall-back");
  const auto cornerOf = [&] { return painted(pose, 150, style).pixelColor(kBorder + 5, kBorder + 75); };
  const QColor ground = cornerOf();
  pose.view = View::front;
  EXPECT_NE(cornerOf(), ground);
}

TEST(FigurePaint, PrintIsGrey) {
  FigureStyle style;
  style.colours = printColours();
  style.regions = {Region::abdominals};
  for (const std::string id : {"half-kneel-left", "stand-wall-back", "sitting-chair"}) {
    const QImage image = painted(position(id), 120, style);
    for (int y = 0; y < image.height(); ++y) {
      for (int x = 0; x < image.width(); ++x) {
        const QColor pixel = image.pixelColor(x, y);
        ASSERT_TRUE(pixel.red() == pixel.green() && pixel.green() == pixel.blue());
      }
    }
    EXPECT_GT(pixelsNear(image, Qt::black), 500);
  }
}

// WCAG 2.2, 1.4.11: graphics that carry meaning stand out from their ground by 3 to 1.
TEST(FigurePaint, BodyColoursOfTheThemesStandOut) {
  for (const Theme* theme : {&lightTheme(), &darkTheme()}) {
    const FigureColours colours = figureColours(*theme, theme->panel);
    EXPECT_GT(contrast(colours.near, colours.paper), 4.5);
    EXPECT_GT(contrast(colours.ghost, colours.paper), 1.1);
    EXPECT_LT(contrast(colours.ghost, colours.paper), contrast(colours.far, colours.paper));
  }
}

TEST(FigurePaint, LeavesThePainterAsItWas) {
  QImage image(100, 100, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setPen(Qt::red);
  paintFigure(painter, QRectF(0, 0, 100, 100), position("stand"), FigureStyle{});
  EXPECT_EQ(painter.pen().color(), QColor(Qt::red));
  EXPECT_FALSE(painter.testRenderHint(QPainter::Antialiasing));
}

TEST(SettledOnce, KeepsOneShapeForOnePose) {
  const Pose pose = position("bent-sit");
  EXPECT_EQ(settledOnce(pose), settledOnce(pose));
  Pose other = pose;
  other.lean += 1;
  EXPECT_NE(settledOnce(pose), settledOnce(other));
}

} // namespace
} // namespace matwright
