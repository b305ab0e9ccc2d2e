// What the segments of a body weigh and where their weights act, by three published tables.
//
//   winter       D. A. Winter, Biomechanics and Motor Control of Human Movement, table 4.1, with the lengths of his
//                fig. 4.1 (Drillis and Contini 1966). His hip is the greater trochanter.
//   deLevaWomen  P. de Leva 1996, J Biomech 29: 1223-1230, table 4: women, between centres of joints
//   deLevaMen    the same: men
//
// Expect 5 % between tables. Rows of different tables are never mixed: each has lengths of its own.
//
// Not in the tables, and ours: the centres of Winter's parts of the trunk and of his head and neck (in their middle),
// and all radii of gyration of the trunk's parts (a uniform rod's). Of de Leva's table the lengths and the centres of
// head and trunk were written down from memory; the lengths of the trunk's parts do add up to that of the trunk. He
// cuts the trunk at the navel and at the foot of the breastbone, so that his low back begins a little higher.
#pragma once

#include "core/base/Words.h"

namespace matwright {

enum class BodyTable { winter, deLevaWomen, deLevaMen };
template <> struct Words<BodyTable> {
  static constexpr auto list = wordList("winter", "de-leva-women", "de-leva-men");
};

enum class SegmentKind {
  pelvis,
  abdomen, // from the foot of the lumbar spine to the ribs
  thorax,
  headAndNeck,
  upperArm,
  forearm,
  hand,
  thigh,
  lowerLeg // shank and foot, along knee and ankle
};
template <> struct Words<SegmentKind> {
  static constexpr auto list =
      wordList("pelvis", "abdomen", "thorax", "head-and-neck", "upper-arm", "forearm", "hand", "thigh", "lower-leg");
};

struct SegmentRow {
  double mass = 0;     // of the whole body's; one limb
  double length = 0;   // in statures
  double centre = 0;   // of mass, from the end that is nearer to the hips, or to the trunk; of the length
  double gyration = 0; // radius about the centre, across the body; of the length
  friend bool operator==(const SegmentRow&, const SegmentRow&) = default;
};

const SegmentRow& rowOf(BodyTable table, SegmentKind kind);

struct BodySize {
  // Of people whom somebody may want to look at loads for; the tables themselves are of adults.
  static constexpr double kLeastMass = 30, kMostMass = 200;
  static constexpr double kLeastStature = 1.20, kMostStature = 2.20;

  double mass = 70;      // kg
  double stature = 1.75; // m
  friend bool operator==(const BodySize&, const BodySize&) = default;
};

constexpr double kGravity = 9.81; // m/s2

// What a moment of 1, in body weights times statures, is in newton metres.
constexpr double newtonMetres(const BodySize& size) { return size.mass * size.stature * kGravity; }

} // namespace matwright
