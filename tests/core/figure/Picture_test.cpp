#include "core/figure/Picture.h"
#include "tests/support/RestingPoses.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

Pose standing(View view = View::side) {
  Pose pose;
  pose.on = {Contact::footNear, Contact::footFar};
  pose.view = view;
  return pose;
}

const PicturePart& partOf(const Picture& picture, BodyPart part) {
  return *std::find_if(picture.parts.begin(), picture.parts.end(),
                       [part](const PicturePart& each) { return each.part == part; });
}

TEST(Picture, HoldsEachPartOnceTheFarthestFirst) {
  const Picture picture = pictureOf(settled(standing()));
  EXPECT_EQ(picture.parts.front().part, BodyPart::armFar);
  EXPECT_EQ(picture.parts.back().part, BodyPart::armNear);
  for (std::size_t i = 0; i + 1 < picture.parts.size(); ++i)
    EXPECT_LE(picture.parts[i].depth, picture.parts[i + 1].depth + 1e-9);
}

TEST(Picture, FromTheSideTheBodyFacesRightAndFlippedLeft) {
  Pose pose = standing();
  const auto toes = [](const Pose& of) { return partOf(pictureOf(settled(of)), BodyPart::legNear).left[4].at.x; };
  EXPECT_GT(toes(pose), 0.05);
  const double right = toes(pose);
  pose.flip = true;
  EXPECT_DOUBLE_EQ(toes(pose), -right);
}

// Who faces the viewer has his right side at the viewer's left.
TEST(Picture, FromTheFrontTheRightSideIsOnTheLeft) {
  const Picture picture = pictureOf(settled(standing(View::front)));
  EXPECT_LT(partOf(picture, BodyPart::armNear).left[0].at.x, -0.05);
  EXPECT_GT(partOf(picture, BodyPart::armFar).left[0].at.x, 0.05);
  EXPECT_TRUE(picture.hasFloor);
}

TEST(Picture, FromAboveALyingBodyIsSeenInFullOnItsMatWithoutAFloor) {
  Pose pose;
  pose.lean = -90;
  pose.on = {Contact::back};
  pose.view = View::top;
  const Picture picture = pictureOf(settled(pose));
  EXPECT_FALSE(picture.hasFloor);
  ASSERT_TRUE(picture.mat);
  EXPECT_GT(picture.mat->width(), 0.95);
  // its head to the left, its right side below
  EXPECT_LT(partOf(picture, BodyPart::head).left[1].at.x, -0.3);
  EXPECT_LT(partOf(picture, BodyPart::armNear).left[0].at.y, partOf(picture, BodyPart::armFar).left[0].at.y);
}

TEST(Picture, ExtentHoldsTheBodyItsFloorAndItsWall) {
  Pose pose = standing();
  const Extent alone = pictureOf(settled(pose)).extent;
  EXPECT_NEAR(alone.lowest.y, 0, 1e-4);
  EXPECT_NEAR(alone.height(), 1, 0.002);
  for (ArmAngles& arm : pose.arms)
    arm.shoulder = 90;
  pose.wall = {WallContact::handNear, WallContact::handFar};
  const Settled shape = settled(pose);
  const Picture picture = pictureOf(shape);
  ASSERT_TRUE(picture.wall);
  EXPECT_GE(picture.extent.highest.x, *picture.wall);
  EXPECT_EQ(picture.wallSide, 1);
  pose.flip = true;
  EXPECT_EQ(pictureOf(settled(pose)).wallSide, -1);
}

TEST(Picture, TheSideAwayFromTheViewerIsFar) {
  const Picture side = pictureOf(settled(standing()));
  EXPECT_EQ(partOf(side, BodyPart::legNear).farness, 0);
  EXPECT_EQ(partOf(side, BodyPart::legFar).farness, 1);
  const Picture front = pictureOf(settled(standing(View::front)));
  EXPECT_EQ(partOf(front, BodyPart::legNear).farness, 0);
  EXPECT_EQ(partOf(front, BodyPart::legFar).farness, 0);
  Pose about = standing();
  about.roll = 180; // faces left without being mirrored: its left side is towards the viewer
  EXPECT_EQ(partOf(pictureOf(settled(about)), BodyPart::legNear).farness, 1);
}

TEST(Picture, TheTrunkStandsBackWhenALyingBodyIsSeenFromItsFeet) {
  Pose pose;
  pose.lean = -90;
  for (LegAngles& leg : pose.legs)
    leg = {.hip = 50, .knee = 95};
  pose.on = {Contact::back, Contact::footNear, Contact::footFar};
  pose.view = View::front;
  const Picture picture = pictureOf(settled(pose));
  EXPECT_EQ(partOf(picture, BodyPart::legNear).farness, 0);
  EXPECT_EQ(partOf(picture, BodyPart::head).farness, 1);
  EXPECT_GT(partOf(picture, BodyPart::trunk).farness, 0.5);
}

std::vector<PicturePiece> piecesOf(Pose pose, View view) {
  pose.view = view;
  return pictureOf(settled(pose)).pieces;
}

Pose onChair() {
  Pose pose = test::standing();
  for (LegAngles& leg : pose.legs)
    leg.hip = leg.knee = 90;
  pose.onSupport(Support::chair) = {Contact::seat};
  return pose;
}

TEST(Picture, AChairIsSeenBehindWhoSitsOnIt) {
  for (const View view : {View::side, View::front, View::top}) {
    Pose pose = onChair();
    pose.view = view;
    const Picture picture = pictureOf(settled(pose));
    ASSERT_FALSE(picture.pieces.empty()) << word(view);
    for (const PicturePiece& piece : picture.pieces)
      EXPECT_LT(piece.depth, picture.parts.front().depth) << word(view);
  }
}

TEST(Picture, TheExtentHoldsTheChair) {
  const Picture picture = pictureOf(settled(onChair()));
  for (const PicturePiece& piece : picture.pieces)
    for (const Point2 point : piece.points) {
      EXPECT_GE(point.x - piece.radius, picture.extent.lowest.x - 1e-9);
      EXPECT_LE(point.y + piece.radius, picture.extent.highest.y + 1e-9);
    }
}

TEST(Picture, ARollerIsADiscFromItsEndAndABoxFromItsSide) {
  Pose pose = test::faceUpBent();
  pose.on = {Contact::footNear, Contact::footFar};
  pose.onSupport(Support::rollerAlong) = {Contact::head, Contact::back};
  EXPECT_EQ(piecesOf(pose, View::front)[0].kind, PicturePiece::Kind::disc);
  EXPECT_EQ(piecesOf(pose, View::side)[0].kind, PicturePiece::Kind::area);
  pose.supports = {};
  pose.on.insert(Contact::seat);
  pose.onSupport(Support::rollerAcross) = {Contact::upperBack};
  EXPECT_EQ(piecesOf(pose, View::side)[0].kind, PicturePiece::Kind::disc);
  EXPECT_EQ(piecesOf(pose, View::front)[0].kind, PicturePiece::Kind::area);
}

TEST(Picture, ABandGoesFromTheHandsToTheFeet) {
  Pose pose = test::faceUpBent();
  pose.holds = HeldProp{Held::band, HeldAt::footNear};
  const std::vector<PicturePiece> pieces = piecesOf(pose, View::side);
  ASSERT_EQ(pieces.size(), 1u);
  EXPECT_TRUE(pieces[0].held);
  EXPECT_EQ(pieces[0].points.size(), 3u); // hand, sole, hand
}

TEST(Picture, AWallIsALineFromItsEdgeAndAPanelFromItsFace) {
  Pose pose = test::standing();
  pose.arms[1].out = 60;
  pose.wall = {WallContact::handFar}; // beside the body
  EXPECT_TRUE(pictureOf(settled(pose)).wallBehind);
  pose.view = View::front;
  const Picture front = pictureOf(settled(pose));
  EXPECT_FALSE(front.wallBehind);
  EXPECT_TRUE(front.wall);
}

} // namespace
} // namespace matwright
