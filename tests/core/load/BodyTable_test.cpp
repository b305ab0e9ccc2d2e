#include "core/figure/Skeleton.h"
#include "core/load/BodyTable.h"

#include <cmath>
#include <gmock/gmock.h>
#include <initializer_list>

namespace matwright {
namespace {

double massOf(BodyTable table, std::initializer_list<SegmentKind> kinds) {
  double mass = 0;
  for (const SegmentKind kind : kinds)
    mass += rowOf(table, kind).mass;
  return mass;
}

double trunk(BodyTable table) {
  return massOf(table, {SegmentKind::pelvis, SegmentKind::abdomen, SegmentKind::thorax});
}
double arm(BodyTable table) { return massOf(table, {SegmentKind::upperArm, SegmentKind::forearm, SegmentKind::hand}); }
double leg(BodyTable table) { return massOf(table, {SegmentKind::thigh, SegmentKind::lowerLeg}); }
double whole(BodyTable table) {
  return trunk(table) + massOf(table, {SegmentKind::headAndNeck}) + 2 * (arm(table) + leg(table));
}

// Winter, table 4.1: 2 x (.006 + .016 + .028 + .0145 + .0465 + .100) + .497 + .081 = 1; trunk .216 + .139 + .142 =
// .497; total arm .050; total leg .161; head, arms and trunk .678.
TEST(BodyTable, WintersMassesMakeAWholeBody) {
  EXPECT_NEAR(whole(BodyTable::winter), 1.0, 1e-9);
  EXPECT_NEAR(trunk(BodyTable::winter), 0.497, 1e-9);
  EXPECT_NEAR(arm(BodyTable::winter), 0.050, 1e-9);
  EXPECT_NEAR(leg(BodyTable::winter), 0.161, 1e-9);
  EXPECT_NEAR(trunk(BodyTable::winter) + 2 * arm(BodyTable::winter) + rowOf({}, SegmentKind::headAndNeck).mass, 0.678,
              1e-9);
}

// de Leva 1996, table 4: the shares add up to 99.99 % (women) and 100.00 % (men); trunk 42.57 and 43.46 %.
TEST(BodyTable, DeLevasMassesMakeAWholeBody) {
  EXPECT_NEAR(whole(BodyTable::deLevaWomen), 0.9999, 1e-9);
  EXPECT_NEAR(whole(BodyTable::deLevaMen), 1.0000, 1e-9);
  EXPECT_NEAR(trunk(BodyTable::deLevaWomen), 0.4257, 1e-9);
  EXPECT_NEAR(trunk(BodyTable::deLevaMen), 0.4346, 1e-9);
}

// The same: the trunk from the suprasternal notch to the hips is 529.3 mm of 1735 mm, and 531.9 mm of 1741 mm (lengths
// from memory).
TEST(BodyTable, DeLevasPartsOfTheTrunkMakeItsLength) {
  const auto trunkLength = [](BodyTable table) {
    double length = 0;
    for (const SegmentKind kind : {SegmentKind::pelvis, SegmentKind::abdomen, SegmentKind::thorax})
      length += rowOf(table, kind).length;
    return length;
  };
  EXPECT_NEAR(trunkLength(BodyTable::deLevaWomen) * 1735, 529.3, 0.05);
  EXPECT_NEAR(trunkLength(BodyTable::deLevaMen) * 1741, 531.9, 0.05);
}

// Winter, table 4.1: the radius about the near end is that about the centre and the centre's distance, by Pythagoras.
// Printed: thigh .540, foot and shank .735, upper arm .542, forearm .526, hand .587.
TEST(BodyTable, RadiiOfGyrationAgreeWithTheirOwnRows) {
  const auto aboutEnd = [](SegmentKind kind) {
    return std::hypot(rowOf(BodyTable::winter, kind).gyration, rowOf(BodyTable::winter, kind).centre);
  };
  EXPECT_NEAR(aboutEnd(SegmentKind::thigh), 0.540, 0.0006);
  EXPECT_NEAR(aboutEnd(SegmentKind::lowerLeg), 0.735, 0.0006);
  EXPECT_NEAR(aboutEnd(SegmentKind::upperArm), 0.542, 0.0006);
  EXPECT_NEAR(aboutEnd(SegmentKind::forearm), 0.526, 0.0006);
  EXPECT_NEAR(aboutEnd(SegmentKind::hand), 0.587, 0.0006);
}

// Total leg: centre .447 and radius .560 about the hip, over thigh and shank. The table itself disagrees with its own
// sum of squares there (.553): 1.5 % is tolerated.
TEST(BodyTable, ThighAndLowerLegMakeTheWholeLeg) {
  const SegmentRow &thigh = rowOf(BodyTable::winter, SegmentKind::thigh),
                   &lower = rowOf(BodyTable::winter, SegmentKind::lowerLeg);
  const double length = thigh.length + lower.length, mass = thigh.mass + lower.mass;
  const double thighAt = thigh.centre * thigh.length, lowerAt = thigh.length + lower.centre * lower.length;
  EXPECT_NEAR((thigh.mass * thighAt + lower.mass * lowerAt) / mass / length, 0.447, 0.02 * 0.447);
  const double squares = thigh.mass * (std::pow(thigh.gyration * thigh.length, 2) + thighAt * thighAt) +
                         lower.mass * (std::pow(lower.gyration * lower.length, 2) + lowerAt * lowerAt);
  EXPECT_NEAR(std::sqrt(squares / mass) / length, 0.5565, 0.015 * 0.5565);
}

// A shank with the foot's weight at the malleolus, joined from de Leva's rows by hand: (4.33 x .4395 + 1.37) / 5.70.
TEST(BodyTable, DeLevasFootWeighsAtTheEndOfTheShank) {
  const SegmentRow& lower = rowOf(BodyTable::deLevaMen, SegmentKind::lowerLeg);
  EXPECT_NEAR(lower.mass, 0.0570, 1e-9);
  EXPECT_NEAR(lower.centre, 0.57421, 1e-5);
  EXPECT_GT(lower.gyration, 0.251); // wider spread than the shank alone
}

TEST(BodyTable, EverySegmentHasWeightLengthAndACentreWithinIt) {
  for (std::size_t t = 0; t < kWordCount<BodyTable>; ++t)
    for (std::size_t k = 0; k < kWordCount<SegmentKind>; ++k) {
      const SegmentRow& row = rowOf(static_cast<BodyTable>(t), static_cast<SegmentKind>(k));
      EXPECT_GT(row.mass, 0) << t << ' ' << k;
      EXPECT_GT(row.length, 0) << t << ' ' << k;
      EXPECT_GT(row.centre, 0) << t << ' ' << k;
      EXPECT_LT(row.centre, 1) << t << ' ' << k;
      EXPECT_GT(row.gyration, 0.2) << t << ' ' << k;
    }
}

} // namespace
} // namespace matwright
