#include "core/figure/Joint.h"
#include "core/figure/PosedBody.h"

#include <gmock/gmock.h>
#include <set>

namespace matwright {
namespace {

template <class Each> void forEachJoint(Each each) {
  for (std::size_t i = 0; i < kWordCount<Joint>; ++i)
    each(static_cast<Joint>(i));
}

Pose lopsided() {
  Pose pose;
  double next = 3;
  forEachJoint([&](Joint joint) { angleOf(pose, joint) = next++; });
  pose.on = {Contact::head, Contact::handNear, Contact::shinFar, Contact::toesNear};
  return pose;
}

TEST(Joint, EachNamesAnAngleOfItsOwn) {
  Pose pose;
  std::set<const double*> places;
  forEachJoint([&](Joint joint) { places.insert(&angleOf(pose, joint)); });
  EXPECT_EQ(places.size(), kWordCount<Joint>);
}

TEST(Joint, TheOtherSideIsTheSameJointOfTheOtherLimb) {
  EXPECT_EQ(otherSide(Joint::kneeNear), Joint::kneeFar);
  EXPECT_EQ(otherSide(Joint::armOutFar), Joint::armOutNear);
  EXPECT_EQ(otherSide(Joint::neckBend), Joint::neckBend);
  Pose pose;
  pose.legs[0].knee = 70;
  EXPECT_EQ(angleOf(pose, Joint::kneeNear), 70);
  EXPECT_EQ(angleOf(pose, otherSide(Joint::kneeNear)), 0);
}

TEST(Joint, TurnsAsFarAsItsRangeAndNoFurther) {
  Pose pose;
  pose = turned(pose, Joint::elbowNear, 100);
  EXPECT_EQ(pose.arms[0].elbow, 100);
  pose = turned(pose, Joint::elbowNear, 100);
  EXPECT_EQ(pose.arms[0].elbow, rangeOf(Joint::elbowNear).most);
  pose = turned(pose, Joint::elbowNear, -500);
  EXPECT_EQ(pose.arms[0].elbow, 0);
}

TEST(Joint, WhatIsOutsideItsRangeIsNotTurnedFurtherOutButComesBack) {
  Pose pose;
  pose.legs[1].knee = 200;
  EXPECT_EQ(turned(pose, Joint::kneeFar, 1).legs[1].knee, 200);
  EXPECT_EQ(turned(pose, Joint::kneeFar, -10).legs[1].knee, 190);
}

// The picture of a body in a mirror that stands along its middle.
TEST(Joint, ExchangedSidesAreTheMirrorPicture) {
  const Pose pose = lopsided();
  const PosedBody body = posed(pose), other = posed(sidesExchanged(pose));
  const auto expectMirrored = [](Vec3 a, Vec3 b) { EXPECT_NEAR(length(a - Vec3{b.x, b.y, -b.z}), 0, 1e-9); };
  expectMirrored(body.head, other.head);
  for (const Limb limb : kBothLimbs) {
    const std::size_t here = index(limb), there = 1 - here;
    expectMirrored(body.arms[here].fingertips, other.arms[there].fingertips);
    expectMirrored(body.legs[here].toes, other.legs[there].toes);
  }
}

TEST(Joint, ExchangedSidesExchangeWhatRests) {
  const Pose other = sidesExchanged(lopsided());
  EXPECT_EQ(other.on, (EnumSet<Contact>{Contact::head, Contact::handFar, Contact::shinNear, Contact::toesFar}));
  EXPECT_EQ(sidesExchanged(other), lopsided());
}

} // namespace
} // namespace matwright
