// Plain shapes of the body that rest on the floor.
#pragma once

#include "core/figure/PosedBody.h"

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

} // namespace matwright::test
