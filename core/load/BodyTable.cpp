#include "core/load/BodyTable.h"

#include "core/figure/Skeleton.h"

#include <array>
#include <cmath>

namespace matwright {

namespace sk = skeleton;

namespace {

using Table = std::array<SegmentRow, kWordCount<SegmentKind>>;

constexpr double kRod = 0.2887; // 1 / sqrt(12)

const Table kWinter{{{.mass = 0.142, .length = sk::kPelvis, .centre = 0.5, .gyration = kRod},
                     {.mass = 0.139, .length = sk::kLumbar, .centre = 0.5, .gyration = kRod},
                     {.mass = 0.216, .length = sk::kThorax, .centre = 0.5, .gyration = kRod},
                     {.mass = 0.081, .length = sk::kHeadAndNeck, .centre = 0.5, .gyration = 0.495},
                     {.mass = 0.028, .length = sk::kUpperArm, .centre = 0.436, .gyration = 0.322},
                     {.mass = 0.016, .length = sk::kForearm, .centre = 0.430, .gyration = 0.303},
                     {.mass = 0.006, .length = sk::kHand, .centre = 0.506, .gyration = 0.297},
                     {.mass = 0.100, .length = sk::kThigh, .centre = 0.433, .gyration = 0.323},
                     {.mass = 0.061, .length = sk::kShank, .centre = 0.606, .gyration = 0.416}}};

// A shank with the foot's weight at its end.
SegmentRow withFoot(const SegmentRow& shank, double footMass) {
  SegmentRow both = shank;
  both.mass = shank.mass + footMass;
  both.centre = (shank.mass * shank.centre + footMass) / both.mass;
  const double shankAway = both.centre - shank.centre, footAway = 1 - both.centre;
  both.gyration = std::sqrt(
      (shank.mass * (shank.gyration * shank.gyration + shankAway * shankAway) + footMass * footAway * footAway) /
      both.mass);
  return both;
}

// Lengths in the table are those of a woman of 1.735 m and a man of 1.741 m.
Table women() {
  constexpr double h = 1.735;
  return {{{.mass = 0.1247, .length = 0.1815 / h, .centre = 1 - 0.4920, .gyration = kRod},
           {.mass = 0.1465, .length = 0.2053 / h, .centre = 1 - 0.4512, .gyration = kRod},
           {.mass = 0.1545, .length = 0.1425 / h, .centre = 1 - 0.2077, .gyration = kRod},
           {.mass = 0.0668, .length = 0.2437 / h, .centre = 1 - 0.4841, .gyration = kRod},
           {.mass = 0.0255, .length = 0.2751 / h, .centre = 0.5754, .gyration = 0.278},
           {.mass = 0.0138, .length = 0.2643 / h, .centre = 0.4559, .gyration = 0.261},
           {.mass = 0.0056, .length = 0.0780 / h, .centre = 0.7474, .gyration = 0.531},
           {.mass = 0.1478, .length = 0.3685 / h, .centre = 0.3612, .gyration = 0.369},
           withFoot({.mass = 0.0481, .length = 0.4323 / h, .centre = 0.4352, .gyration = 0.267}, 0.0129)}};
}

Table men() {
  constexpr double h = 1.741;
  return {{{.mass = 0.1117, .length = 0.1457 / h, .centre = 1 - 0.6115, .gyration = kRod},
           {.mass = 0.1633, .length = 0.2155 / h, .centre = 1 - 0.4502, .gyration = kRod},
           {.mass = 0.1596, .length = 0.1707 / h, .centre = 1 - 0.2999, .gyration = kRod},
           {.mass = 0.0694, .length = 0.2429 / h, .centre = 1 - 0.5002, .gyration = kRod},
           {.mass = 0.0271, .length = 0.2817 / h, .centre = 0.5772, .gyration = 0.285},
           {.mass = 0.0162, .length = 0.2689 / h, .centre = 0.4574, .gyration = 0.276},
           {.mass = 0.0061, .length = 0.0862 / h, .centre = 0.7900, .gyration = 0.628},
           {.mass = 0.1416, .length = 0.4222 / h, .centre = 0.4095, .gyration = 0.329},
           withFoot({.mass = 0.0433, .length = 0.4340 / h, .centre = 0.4395, .gyration = 0.251}, 0.0137)}};
}

} // namespace

const SegmentRow& rowOf(BodyTable table, SegmentKind kind) {
  static const std::array<Table, kWordCount<BodyTable>> tables{kWinter, women(), men()};
  return tables[static_cast<std::size_t>(table)][static_cast<std::size_t>(kind)];
}

} // namespace matwright
