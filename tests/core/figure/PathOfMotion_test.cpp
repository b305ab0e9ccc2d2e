#include "core/figure/PathOfMotion.h"
#include "tests/support/RestingPoses.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

using namespace test;

constexpr double kPixel = 1.0 / 500; // statures: of a figure as tall as half a screen

Pose lyingWithALegAt(double hip) {
  Pose pose = faceUpBent();
  pose.legs[index(Limb::near)] = {.hip = hip};
  pose.on = {Contact::back, Contact::head, Contact::footFar};
  return pose;
}

// Hands and knees; an arm reaches forward and the other side's leg back.
Pose reaching() {
  Pose pose = handsAndKnees();
  pose.arms[index(Limb::near)].shoulder = 175;
  pose.legs[index(Limb::far)] = {.hip = -25};
  pose.on = {Contact::handFar, Contact::shinNear};
  return pose;
}

Passage between(const Pose& start, const Pose& end) { return {settled(start), settled(end)}; }

double distance(Point2 a, Point2 b) { return std::hypot(a.x - b.x, a.y - b.y); }

double toSegment(Point2 at, Point2 a, Point2 b) {
  const double square = std::pow(distance(a, b), 2);
  const double share =
      square > 0 ? std::clamp(((at.x - a.x) * (b.x - a.x) + (at.y - a.y) * (b.y - a.y)) / square, 0.0, 1.0) : 0;
  return distance(at, {a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share});
}

double fromLine(Point2 at, const std::vector<Point2>& line) {
  double nearest = 1e9;
  for (std::size_t i = 1; i < line.size(); ++i)
    nearest = std::min(nearest, toSegment(at, line[i - 1], line[i]));
  return nearest;
}

const PicturePart& partOf(const Picture& picture, BodyPart part) {
  return *std::find_if(picture.parts.begin(), picture.parts.end(),
                       [part](const PicturePart& each) { return each.part == part; });
}

TEST(PathOfMotion, ARaisedLegTravelsByItsFoot) {
  const auto paths = pathsOfMotion(between(lyingWithALegAt(0), lyingWithALegAt(85)));
  ASSERT_EQ(paths.size(), 1U);
  EXPECT_EQ(paths[0].traveller, Traveller::footNear);
  // a quarter turn, nearly, of a leg of .491 statures (hip to ankle), less the flesh at its ends
  EXPECT_NEAR(paths[0].length(), 0.62, 0.09);
  EXPECT_LT(paths[0].points.front().y, paths[0].points.back().y);
}

TEST(PathOfMotion, LiesOnTheTrueWayToWithinAPixel) {
  for (const auto& [start, end] : {std::pair{lyingWithALegAt(0), lyingWithALegAt(85)},
                                   std::pair{standing(), handsAndKnees()}, std::pair{handsAndKnees(), reaching()}}) {
    const Passage passage = between(start, end);
    for (const PathOfMotion& path : pathsOfMotion(passage)) {
      std::vector<Point2> truth;
      for (int i = 0; i <= 3000; ++i)
        truth.push_back(placeOf(passage.at(i / 3000.0), path.traveller));
      ASSERT_GE(path.points.size(), 2U);
      for (std::size_t i = 0; i < path.points.size(); ++i) {
        EXPECT_LT(fromLine(path.points[i], truth), kPixel);
        if (i > 0) { // and what is drawn between the points cuts no corner
          const Point2 a = path.points[i - 1], b = path.points[i];
          EXPECT_LT(fromLine({(a.x + b.x) / 2, (a.y + b.y) / 2}, truth), kPixel);
        }
      }
    }
  }
}

TEST(PathOfMotion, TouchesTheLimbNeitherAsItStartsNorAsItEnds) {
  const Passage passage = between(lyingWithALegAt(0), lyingWithALegAt(85));
  const PathOfMotion path = pathsOfMotion(passage).at(0);
  const auto clear = [](Point2 at, const Settled& shape) {
    const PicturePart& leg = partOf(pictureOf(shape), BodyPart::legNear);
    double nearest = 1e9;
    for (std::size_t i = 1; i < leg.count; ++i)
      nearest = std::min(nearest, toSegment(at, leg.left[i - 1].at, leg.left[i].at) -
                                      std::max(leg.left[i - 1].radius, leg.left[i].radius));
    return nearest;
  };
  EXPECT_GT(clear(path.points.front(), passage.start()), 0.005);
  EXPECT_GT(clear(path.points.back(), passage.end()), 0.005);
  EXPECT_LT(clear(path.points.front(), passage.start()), 0.05);
}

TEST(PathOfMotion, BothLegsTogetherAreToldOnce) {
  Pose end = lyingWithALegAt(85);
  end.legs[index(Limb::far)] = end.legs[index(Limb::near)];
  Pose start = lyingWithALegAt(10);
  start.legs[index(Limb::far)] = start.legs[index(Limb::near)];
  start.on = end.on = {Contact::back, Contact::head};
  EXPECT_EQ(pathsOfMotion(between(start, end)).size(), 1U);
}

TEST(PathOfMotion, AnArmAndALegThatPartAreToldBoth) {
  const auto paths = pathsOfMotion(between(handsAndKnees(), reaching()));
  ASSERT_EQ(paths.size(), 2U);
  EXPECT_THAT((std::vector{paths[0].traveller, paths[1].traveller}),
              testing::UnorderedElementsAre(Traveller::handNear, Traveller::footFar));
  EXPECT_GE(paths[0].length(), paths[1].length());
}

TEST(PathOfMotion, ArmsThatOpenToEitherSideAreToldBoth) {
  Pose start = standing(), end = standing();
  start.view = end.view = View::front;
  for (ArmAngles& arm : end.arms)
    arm.out = 95;
  const auto paths = pathsOfMotion(between(start, end));
  ASSERT_EQ(paths.size(), 2U);
  EXPECT_NEAR(paths[0].points.back().x, -paths[1].points.back().x, 0.01);
}

TEST(PathOfMotion, ArmsThatRiseOnEitherSideAreToldBoth) {
  Pose start = standing(), end = standing();
  start.view = end.view = View::front;
  for (const Limb limb : kBothLimbs) {
    start.arms[index(limb)].out = 20;
    end.arms[index(limb)].out = 150;
  }
  EXPECT_EQ(pathsOfMotion(between(start, end)).size(), 2U);
}

TEST(PathOfMotion, WhatHardlyMovesIsNotTold) {
  EXPECT_TRUE(pathsOfMotion(between(lyingWithALegAt(40), lyingWithALegAt(46))).empty());
  EXPECT_TRUE(pathsOfMotion(between(standing(), standing())).empty());
}

TEST(PathOfMotion, EndsSeenFromDifferentSidesHaveNone) {
  Pose end = lyingWithALegAt(85);
  end.view = View::top;
  EXPECT_TRUE(pathsOfMotion(between(lyingWithALegAt(0), end)).empty());
}

TEST(PathOfMotion, AMirroredMovementGoesTheMirroredWay) {
  Pose start = lyingWithALegAt(0), end = lyingWithALegAt(85);
  const double there = pathsOfMotion(between(start, end)).at(0).points.back().x;
  start.flip = end.flip = true;
  EXPECT_DOUBLE_EQ(pathsOfMotion(between(start, end)).at(0).points.back().x, -there);
}

} // namespace
} // namespace matwright
