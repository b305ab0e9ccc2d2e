// How far joints go, and where that is known from.
//
// One rule makes all limits of published values: the largest published mean of adults, and two standard deviations on
// top of it, since a catalogue shows practised bodies. Measured means come before the round figures of handbooks, which
// are taken only where nothing is measured. Where the study gives no deviation, the largest that another study of the
// same motion gives is taken; where nobody gives one, a tenth of the mean, 5 degrees at least (ours: no goniometer
// tells less). Rounded to whole degrees. Where sources differ, all of them stand in the table.
//
// The angles are those of the drawn body, and not in each case those of a goniometer; notes in the table say where.
// A limit says what no body does. It says nothing of what anybody should do.
#pragma once

#include "core/figure/Joint.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace matwright {

// One direction of a joint, or of the lower and upper back together (trunk).
enum class Motion {
  lumbarForward,
  lumbarBack,
  lumbarSide,
  lumbarTurn,
  thoraxForward,
  thoraxBack,
  thoraxSide,
  thoraxTurn,
  trunkForward,
  trunkBack,
  trunkSide,
  trunkTurn,
  neckForward,
  neckBack,
  neckSide,
  neckTurn,
  armForward,
  armBehind,
  armOut,
  armAcross,
  elbowBend,
  hipForward,
  hipBehind,
  hipOut,
  hipAcross,
  hipTurnOut,
  hipTurnIn,
  kneeBend,
  footUp,        // of a foot that bears nothing
  footUpBearing, // of one that stands
  footDown
};
template <> struct Words<Motion> {
  static constexpr auto list =
      wordList("lumbar-forward", "lumbar-back", "lumbar-side", "lumbar-turn", "thorax-forward", "thorax-back",
               "thorax-side", "thorax-turn", "trunk-forward", "trunk-back", "trunk-side", "trunk-turn", "neck-forward",
               "neck-back", "neck-side", "neck-turn", "arm-forward", "arm-behind", "arm-out", "arm-across",
               "elbow-bend", "hip-forward", "hip-behind", "hip-out", "hip-across", "hip-turn-out", "hip-turn-in",
               "knee-bend", "foot-up", "foot-up-bearing", "foot-down");
};

// How a value came about. A handbook's is a round figure that it calls normal, not a mean of measurements.
enum class Taken { active, passive, bearing, handbook };

// How far we have verified it: in the publisher's abstract or the text of a regulation; on another page that quotes it;
// not at all; or it is worked out of other rows.
enum class Checked { seen, secondHand, fromMemory, computed };

struct PublishedRange {
  Motion motion{};
  double mean = 0;      // degrees
  double deviation = 0; // standard deviation, degrees; 0: none known
  std::string_view source;
  std::string_view people; // who was measured
  Taken taken{};
  Checked checked{};
};

std::span<const PublishedRange> publishedRanges();

// The published value that the limit of a motion is made of.
const PublishedRange& decidingRange(Motion motion);
// By the rule above, in degrees from the neutral body; never negative.
double limitOf(Motion motion);

// How far a joint goes in a pose: no further than rangeOf(), than what the other half of the back leaves it, and, for a
// foot, than what it bears allows.
AngleRange rangeIn(const Pose& pose, Joint joint);

// What a pose turns too far: a joint, or a joint and another whose angles go together.
struct Overturned {
  Motion motion{};
  Joint joint{};
  std::optional<Joint> with; // whose angle is added
  double angle = 0;          // of the joint, or of both
  double limit = 0;          // with the sign of the angle
  friend bool operator==(const Overturned&, const Overturned&) = default;
};

std::vector<Overturned> overturned(const Pose& pose);

} // namespace matwright
