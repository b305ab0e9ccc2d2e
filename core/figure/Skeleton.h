// The body that draws every figure: lengths as fractions of the stature. What its parts weigh: core/load/BodyTable.h.
//
// Drillis and Contini 1966, as given in D. A. Winter, Biomechanics and Motor Control of Human Movement, fig. 4.1. The
// hip is the greater trochanter, the ankle the malleolus. Where a length is marked "ours" the tables have none and the
// project chose it.
#pragma once

namespace matwright::skeleton {

inline constexpr double kTrunk = 0.288; // hip to shoulder
inline constexpr double kHeadAndNeck = 0.182;
inline constexpr double kUpperArm = 0.186;
inline constexpr double kForearm = 0.146;
inline constexpr double kHand = 0.108;
inline constexpr double kThigh = 0.245;
inline constexpr double kShank = 0.246;
inline constexpr double kFoot = 0.152;
inline constexpr double kAnkleHeight = 0.039;
inline constexpr double kShoulderBreadth = 0.259; // over the flesh
inline constexpr double kHipBreadth = 0.191;      // over the flesh

// The trunk in three parts (ours): with Winter's masses and each part's centre in its middle, the trunk's centre falls
// in its middle, as his table 4.1 has it.
inline constexpr double kPelvis = 0.072; // hip to the foot of the lumbar spine
inline constexpr double kLumbar = 0.099;
inline constexpr double kThorax = kTrunk - kPelvis - kLumbar;
inline constexpr double kNeck = 0.052;                // shoulder line to the base of the skull (ours)
inline constexpr double kHead = kHeadAndNeck - kNeck; // base of the skull to the crown
inline constexpr double kHeelBehindAnkle = 0.038;     // ours: a quarter of the foot

// Thickness of the flesh around the bones, as radii (ours): what touches the floor and what is drawn.
inline constexpr double kHeadRadius = 0.062;
inline constexpr double kNeckRadius = 0.025;
inline constexpr double kShoulderRadius = 0.028;
inline constexpr double kElbowRadius = 0.021;
inline constexpr double kWristRadius = 0.016;
inline constexpr double kFingerRadius = 0.011;
inline constexpr double kHipRadius = 0.043;
inline constexpr double kKneeRadius = 0.031;
inline constexpr double kAnkleRadius = 0.020;
inline constexpr double kHeelRadius = 0.016;
inline constexpr double kToeRadius = 0.011;
// Half the depth, front to back, of the trunk at pelvis, waist and chest, and how far the flesh's centres stand to
// either side of the spine there.
inline constexpr double kPelvisRadius = 0.052, kPelvisHalfWidth = 0.043;
inline constexpr double kWaistRadius = 0.046, kWaistHalfWidth = 0.032;
inline constexpr double kChestRadius = 0.052, kChestHalfWidth = 0.043;

inline constexpr double kShoulderOffset = kShoulderBreadth / 2 - kShoulderRadius;
inline constexpr double kHipOffset = kHipBreadth / 2 - kHipRadius;

} // namespace matwright::skeleton
