#include "ui/figure/MovementPaint.h"
#include "ui/theme/Theme.h"

#include <QImage>
#include <QPainter>
#include <gmock/gmock.h>

namespace matwright {
namespace {

// A straight leg is raised from the floor.
KeyPoses legRaise(double from = 0, double to = 85) {
  KeyPoses poses;
  for (Pose* pose : {&poses.start, &poses.end}) {
    pose->lean = -90;
    pose->legs[index(Limb::far)] = {.hip = 50, .knee = 95};
    pose->on = {Contact::back, Contact::head, Contact::footFar};
  }
  poses.start.legs[index(Limb::near)].hip = from;
  poses.end.legs[index(Limb::near)].hip = to;
  return poses;
}

FigureStyle plain() {
  FigureStyle style;
  style.colours.path = Qt::red;
  style.colours.paper = Qt::white;
  return style;
}

QImage painted(const KeyPoses& poses, QSize size, const FigureStyle& style) {
  QImage image(size, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  paintMovement(painter, QRectF(QPointF(), QSizeF(size)).adjusted(4, 4, -4, -4), *pictureOnce(poses), style);
  return image;
}

bool isNear(QRgb pixel, const QColor& colour) {
  return std::abs(qRed(pixel) - colour.red()) + std::abs(qGreen(pixel) - colour.green()) +
             std::abs(qBlue(pixel) - colour.blue()) <
         60;
}

int pixelsNear(const QImage& image, const QColor& colour) {
  int count = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x)
      count += isNear(image.pixel(x, y), colour) ? 1 : 0;
  return count;
}

TEST(MovementPaint, AnArrowGoesFromTheGhostToTheBody) {
  const FigureStyle style = plain();
  const KeyPoses poses = legRaise();
  const QImage image = painted(poses, {300, 240}, style);
  EXPECT_GT(pixelsNear(image, style.colours.path), 150);
  EXPECT_GT(pixelsNear(image, style.colours.ghost), 400);
}

// Where the picture says: red around every point of the way, most of it around the last.
TEST(MovementPaint, TheArrowLiesOnTheWayAndEndsInAHead) {
  const FigureStyle style = plain();
  const QImage image = painted(legRaise(), {300, 240}, style);
  const MovementPicture picture = pictureOf(legRaise());
  const FigurePlacing placing = placingOf({4, 4, 292, 232}, picture.body, picture.frame, style);
  const auto inkAround = [&](Point2 point, int reach) {
    const QPoint at = placing.at(point).toPoint();
    return pixelsNear(image.copy(at.x() - reach, at.y() - reach, 2 * reach + 1, 2 * reach + 1), style.colours.path);
  };
  const std::vector<Point2>& points = picture.paths.at(0).points;
  for (const Point2 point : points)
    EXPECT_GT(inkAround(point, 2), 1);
  EXPECT_GT(inkAround(points.back(), 12), inkAround(points.front(), 12) * 4 / 3);
}

TEST(MovementPaint, NoArrowIsDrawnInAList) {
  const FigureStyle style = plain();
  for (const int size : {24, 32})
    EXPECT_EQ(pixelsNear(painted(legRaise(0, 40), {size, size}, style), style.colours.path), 0) << size;
}

TEST(MovementPaint, APoseAloneHasNeitherGhostNorArrow) {
  const KeyPoses still{legRaise().end, legRaise().end};
  EXPECT_FALSE(movesInOnePicture(still));
  EXPECT_FALSE(pictureOf(still).ghost);
  EXPECT_TRUE(pictureOf(still).paths.empty());
  KeyPoses turned = legRaise();
  turned.end.view = View::top;
  EXPECT_FALSE(movesInOnePicture(turned));
  EXPECT_FALSE(pictureOf(turned).ghost);
}

TEST(MovementPaint, TheFrameHoldsTheWay) {
  const MovementPicture picture = pictureOf(legRaise());
  for (const Point2 point : picture.paths.at(0).points) {
    EXPECT_GE(point.x, picture.frame.lowest.x);
    EXPECT_LE(point.x, picture.frame.highest.x);
    EXPECT_LE(point.y, picture.frame.highest.y);
  }
}

// WCAG 2.2, 1.4.11: graphics that carry meaning stand out from their ground by 3 to 1.
TEST(MovementPaint, ArrowsStandOutFromThePaperOfEveryTheme) {
  for (const Theme* theme : {&lightTheme(), &darkTheme()}) {
    const FigureColours colours = figureColours(*theme, theme->panel);
    EXPECT_GT(contrast(colours.path, colours.paper), 3) << theme->dark;
    EXPECT_GT(contrast(colours.path, colours.ghost), 3) << theme->dark;
  }
  EXPECT_GT(contrast(printColours().path, printColours().ghost), 7);
}

TEST(PictureOnce, IsWorkedOutOnceForAPairOfPoses) {
  EXPECT_EQ(pictureOnce(legRaise()), pictureOnce(legRaise()));
  EXPECT_NE(pictureOnce(legRaise()), pictureOnce(legRaise(0, 60)));
}

} // namespace
} // namespace matwright
