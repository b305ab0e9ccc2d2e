// Plain shapes of the body that rest on the floor.
#pragma once

#include "core/figure/PosedBody.h"
#include "core/movement/Movement.h"

namespace matwright::test {

inline constexpr double kMillimetre = 0.001 / 1.75; // of the reference body, in statures

inline Pose standing() {
  Pose pose;
  pose.on = {Contact::footNear, Contact::footFar};
  return pose;
}

inline Pose faceUpBent() {
  Pose pose;
  pose.lean = -90;
  for (LegAngles& leg : pose.legs)
    leg = {.hip = 50, .knee = 95};
  pose.on = {Contact::back, Contact::head, Contact::footNear, Contact::footFar};
  return pose;
}

// On the back with the head down, thighs `thigh` degrees above the horizontal, knees bent by `knee`, feet off the
// floor.
inline Pose faceUpLegsLifted(double thigh, double knee) {
  Pose pose = faceUpBent();
  for (LegAngles& leg : pose.legs)
    leg = {.hip = thigh, .knee = knee};
  pose.on = {Contact::back, Contact::head};
  return pose;
}

inline Pose handsAndKnees() {
  Pose pose;
  pose.lean = 90;
  for (LegAngles& leg : pose.legs)
    leg = {.hip = 90, .knee = 90};
  for (ArmAngles& arm : pose.arms)
    arm.shoulder = 90;
  pose.on = {Contact::handNear, Contact::handFar, Contact::shinNear, Contact::shinFar};
  return pose;
}

// From standing to a squat with the arms in front.
inline KeyPoses squat() {
  KeyPoses poses;
  poses.start = poses.end = standing();
  poses.end.lean = 40;
  for (LegAngles& leg : poses.end.legs)
    leg = {.hip = 95, .knee = 90};
  for (ArmAngles& arm : poses.end.arms)
    arm.shoulder = 90;
  return poses;
}

} // namespace matwright::test
