#include "core/figure/JointLimits.h"

#include "core/figure/Resting.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace matwright {

namespace {

using enum Motion;
using enum Taken;
using enum Checked;

constexpr std::string_view kTroke01 = "Troke et al. 2001, Clin Rehabil 15:371-379";
constexpr std::string_view kTroke05 = "Troke et al. 2005, Man Ther 10:198-206";
constexpr std::string_view kSoucie = "Soucie et al. 2011, Haemophilia 17:500-507";
constexpr std::string_view kBooneAzen = "Boone and Azen 1979, J Bone Joint Surg Am 61:756-759";
constexpr std::string_view kMacedo = "Macedo and Magee, in Norkin and White, Measurement of Joint Motion, table A.1";
constexpr std::string_view kHemmerich = "Hemmerich et al. 2006, J Orthop Res 24:770-781";
constexpr std::string_view kKonor = "Konor et al. 2012, Int J Sports Phys Ther 7:279-287";
constexpr std::string_view kInVivo = "Savlovskis, Range of Motion of the Spine: studies in vivo pooled";
constexpr std::string_view kSwartz = "Swartz et al. 2005, J Athl Train 40:155-161";
constexpr std::string_view kNeumann = "Neumann, Kinesiology of the Musculoskeletal System";
constexpr std::string_view kAaos = "AAOS 1965";
constexpr std::string_view kAma = "AMA Guides";
constexpr std::string_view kCfr = "38 CFR 4.71a";

constexpr std::string_view kAdults16 = "405 people, 16 to 90 years; the youngest";
constexpr std::string_view kWomen20 = "women, 20 to 44 years";
constexpr std::string_view kMen = "109 males, 1 to 54 years";
constexpr std::string_view kWomen18 = "90 women, 18 to 59 years";
constexpr std::string_view kNoOne = "";

// Notes on what is measured:
// - Handbooks measure extension and side bend of back and loins together by the line from C7 to S1, which leans about
//   half as far as the chest is turned against the pelvis. Their sums (30, 35) leave the chest next to nothing beside
//   Troke's 29 of the loins alone, so they are not of our quantity: there the parts are added. Forward bend (90) and
//   rotation (45) leave the chest its part, and stand as they are.
// - Lumbar forward bend is of the surface over L1 to S1; X-rays show less.
// - Rotation of the chest is what the handbook's 45 leave of when Troke's 7 of the loins are taken away.
// - Thigh against pelvis, lying down: what the pelvis tilts at the end of it is in the published value too.
// - Leg out to the side is measured with the hip straight. A straddle is another motion; no mean of it was at hand, and
//   the same limit serves.
// - Arm across: horizontal adduction, counted from straight ahead (published from the side, 90 more).
// - Knee: squatting on the toes, which bends it further than a hand does.
// - Foot down: passive, without the bend of the middle foot that dancers add.
constexpr std::array kRanges{
    PublishedRange{lumbarForward, 73, 0, kTroke05, kAdults16, active, seen},
    PublishedRange{lumbarForward, 72, 0, kTroke01, kAdults16, active, seen},
    PublishedRange{lumbarForward, 60, 0, kAma, kNoOne, handbook, fromMemory},
    PublishedRange{lumbarBack, 29, 0, kTroke01, kAdults16, active, seen},
    PublishedRange{lumbarBack, 25, 0, kAma, kNoOne, handbook, fromMemory},
    PublishedRange{lumbarSide, 29, 0, kTroke01, kAdults16, active, seen},
    PublishedRange{lumbarSide, 28, 0, kTroke05, kAdults16, active, seen},
    PublishedRange{lumbarSide, 25, 0, kAma, kNoOne, handbook, fromMemory},
    PublishedRange{lumbarTurn, 7, 0, kTroke01, "405 people, 16 to 90 years; all ages", active, seen},

    PublishedRange{thoraxForward, 40, 0, kNeumann, kNoOne, handbook, fromMemory},
    PublishedRange{thoraxBack, 25, 0, kNeumann, kNoOne, handbook, fromMemory},
    PublishedRange{thoraxSide, 30, 0, kNeumann, kNoOne, handbook, fromMemory},
    PublishedRange{thoraxTurn, 38, 0, "AAOS 1965 (45) less Troke et al. 2001 (7)", kNoOne, handbook, computed},
    PublishedRange{thoraxTurn, 30, 0, kAma, kNoOne, handbook, fromMemory},

    PublishedRange{trunkForward, 90, 0, kCfr, kNoOne, handbook, fromMemory},
    PublishedRange{trunkForward, 80, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{trunkBack, 54, 0, "Troke et al. 2001 (29) and Neumann (25)", kNoOne, handbook, computed},
    PublishedRange{trunkBack, 30, 0, kCfr, kNoOne, handbook, fromMemory},
    PublishedRange{trunkBack, 25, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{trunkSide, 59, 0, "Troke et al. 2001 (29) and Neumann (30)", kNoOne, handbook, computed},
    PublishedRange{trunkSide, 35, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{trunkSide, 30, 0, kCfr, kNoOne, handbook, fromMemory},
    PublishedRange{trunkTurn, 45, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{trunkTurn, 30, 0, kCfr, kNoOne, handbook, fromMemory},

    PublishedRange{neckForward, 64, 0, kInVivo, "healthy young men", active, secondHand},
    PublishedRange{neckForward, 45, 0, kCfr, kNoOne, handbook, fromMemory},
    PublishedRange{neckForward, 50, 0, kAma, kNoOne, handbook, fromMemory},
    PublishedRange{neckForward, 45, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{neckForward, 90, 0, kSwartz, kNoOne, handbook, secondHand},
    PublishedRange{neckBack, 63, 0, kInVivo, "healthy young men", active, secondHand},
    PublishedRange{neckBack, 45, 0, kCfr, kNoOne, handbook, fromMemory},
    PublishedRange{neckBack, 60, 0, kAma, kNoOne, handbook, fromMemory},
    PublishedRange{neckBack, 45, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{neckBack, 70, 0, kSwartz, kNoOne, handbook, secondHand},
    PublishedRange{neckSide, 49, 0, kInVivo, "healthy young men", active, secondHand},
    PublishedRange{neckSide, 45, 0, kCfr, kNoOne, handbook, fromMemory},
    PublishedRange{neckSide, 45, 0, kAma, kNoOne, handbook, fromMemory},
    PublishedRange{neckSide, 45, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{neckTurn, 80, 0, kCfr, kNoOne, handbook, fromMemory},
    PublishedRange{neckTurn, 80, 0, kAma, kNoOne, handbook, fromMemory},
    PublishedRange{neckTurn, 60, 0, kAaos, kNoOne, handbook, fromMemory},

    PublishedRange{armForward, 188, 0, kMacedo, kWomen18, passive, secondHand},
    PublishedRange{armForward, 172.0, 0, kSoucie, kWomen20, passive, fromMemory},
    PublishedRange{armForward, 166.7, 4.7, kBooneAzen, kMen, active, fromMemory},
    PublishedRange{armForward, 180, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{armBehind, 70, 0, kMacedo, kWomen18, passive, secondHand},
    PublishedRange{armBehind, 62.3, 9.5, kBooneAzen, kMen, active, fromMemory},
    PublishedRange{armBehind, 60, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{armOut, 188, 0, kMacedo, kWomen18, passive, secondHand},
    PublishedRange{armOut, 184.0, 7.0, kBooneAzen, kMen, active, fromMemory},
    PublishedRange{armOut, 180, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{armAcross, 50.7, 5.9, kBooneAzen, kMen, active, fromMemory},
    PublishedRange{armAcross, 45, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{elbowBend, 149, 0, kMacedo, kWomen18, passive, secondHand},
    PublishedRange{elbowBend, 142.9, 5.6, kBooneAzen, kMen, active, fromMemory},
    PublishedRange{elbowBend, 150, 0, kAaos, kNoOne, handbook, fromMemory},

    PublishedRange{hipForward, 133.8, 0, kSoucie, kWomen20, passive, fromMemory},
    PublishedRange{hipForward, 122.3, 6.1, kBooneAzen, kMen, active, fromMemory},
    PublishedRange{hipForward, 120, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{hipBehind, 18.1, 0, kSoucie, kWomen20, passive, fromMemory},
    PublishedRange{hipBehind, 9.8, 6.8, kBooneAzen, kMen, active, fromMemory},
    PublishedRange{hipBehind, 30, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{hipOut, 45.9, 9.3, kBooneAzen, kMen, active, fromMemory},
    PublishedRange{hipOut, 45, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{hipAcross, 26.9, 4.1, kBooneAzen, kMen, active, fromMemory},
    PublishedRange{hipAcross, 30, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{hipTurnOut, 47.2, 6.3, kBooneAzen, kMen, active, fromMemory},
    PublishedRange{hipTurnOut, 45, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{hipTurnIn, 47.3, 6.0, kBooneAzen, kMen, active, fromMemory},
    PublishedRange{hipTurnIn, 45, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{kneeBend, 157, 6, kHemmerich, "30 adults, 48 years on average", bearing, secondHand},
    PublishedRange{kneeBend, 141.9, 0, kSoucie, kWomen20, passive, fromMemory},
    PublishedRange{kneeBend, 142.5, 5.4, kBooneAzen, kMen, active, fromMemory},
    PublishedRange{kneeBend, 135, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{footUp, 13.8, 0, kSoucie, kWomen20, passive, fromMemory},
    PublishedRange{footUp, 12.6, 4.4, kBooneAzen, kMen, active, fromMemory},
    PublishedRange{footUp, 20, 0, kAaos, kNoOne, handbook, fromMemory},
    PublishedRange{footUpBearing, 38.8, 5.2, kKonor, "20 adults, lunging", bearing, fromMemory},
    PublishedRange{footDown, 62.1, 0, kSoucie, kWomen20, passive, fromMemory},
    PublishedRange{footDown, 56.2, 6.1, kBooneAzen, kMen, active, fromMemory},
    PublishedRange{footDown, 50, 0, kAaos, kNoOne, handbook, fromMemory},
};

double workedOut(Motion motion) {
  constexpr double kShare = 0.1, kLeast = 5; // where nobody gives a deviation
  const PublishedRange& range = decidingRange(motion);
  double deviation = range.deviation;
  if (deviation == 0)
    for (const PublishedRange& other : kRanges)
      if (other.motion == motion)
        deviation = std::max(deviation, other.deviation);
  const double allowance = deviation > 0 ? 2 * deviation : std::max(kShare * range.mean, kLeast);
  constexpr double kHair = 1e-9; // halves go up, whatever the last bit says
  return std::round(range.mean + allowance + kHair);
}

bool bears(const Pose& pose, Limb limb) {
  const EnumSet<Contact> bearing = pose.resting();
  const auto rests = [&](Contact near) { return bearing.contains(contactOf(near, limb)); };
  return rests(Contact::footNear) || rests(Contact::toesNear) || rests(Contact::heelNear) ||
         pose.wall.contains(contactOf(WallContact::footNear, limb));
}

class Overturning {
public:
  explicit Overturning(const Pose& pose) : pose_(pose) {}

  void check(Joint joint, Motion forth, Motion back, std::optional<Joint> with = {}) {
    const double angle = angleOf(pose_, joint) + (with ? angleOf(pose_, *with) : 0);
    hold(joint, with, angle, angle > 0 ? forth : back, angle > 0 ? limitOf(forth) : -limitOf(back));
  }
  // Joints that are straight at 0.
  void checkBend(Joint joint, Motion bend) {
    const double angle = angleOf(pose_, joint);
    hold(joint, {}, angle, bend, angle > 0 ? limitOf(bend) : 0);
  }

  std::vector<Overturned> take() { return std::move(found_); }

private:
  void hold(Joint joint, std::optional<Joint> with, double angle, Motion motion, double limit) {
    constexpr double kHair = 1e-3; // degrees; sums of halves and the like
    if (std::abs(angle) > std::abs(limit) + kHair)
      found_.push_back({motion, joint, with, angle, limit});
  }

  const Pose& pose_;
  std::vector<Overturned> found_;
};

} // namespace

std::span<const PublishedRange> publishedRanges() { return kRanges; }

const PublishedRange& decidingRange(Motion motion) {
  const PublishedRange* best = nullptr;
  for (const PublishedRange& range : kRanges) {
    if (range.motion != motion)
      continue;
    const bool measured = range.taken != handbook, bestMeasured = best && best->taken != handbook;
    if (!best || (measured && !bestMeasured) || (measured == bestMeasured && range.mean > best->mean))
      best = &range;
  }
  return *best;
}

double limitOf(Motion motion) {
  static const auto kLimits = [] {
    std::array<double, kWordCount<Motion>> limits;
    for (std::size_t i = 0; i < limits.size(); ++i)
      limits[i] = workedOut(static_cast<Motion>(i));
    return limits;
  }();
  return kLimits[static_cast<std::size_t>(motion)];
}

AngleRange rangeIn(const Pose& pose, Joint joint) {
  AngleRange range = rangeOf(joint);
  const auto share = [&](Joint other, Motion forth, Motion back) {
    range.least = std::max(range.least, -limitOf(back) - angleOf(pose, other));
    range.most = std::min(range.most, limitOf(forth) - angleOf(pose, other));
  };
  switch (joint) {
  case Joint::lumbarBend:
    share(Joint::thoraxBend, trunkForward, trunkBack);
    break;
  case Joint::thoraxBend:
    share(Joint::lumbarBend, trunkForward, trunkBack);
    break;
  case Joint::lumbarSide:
    share(Joint::thoraxSide, trunkSide, trunkSide);
    break;
  case Joint::thoraxSide:
    share(Joint::lumbarSide, trunkSide, trunkSide);
    break;
  case Joint::lumbarTurn:
    share(Joint::thoraxTurn, trunkTurn, trunkTurn);
    break;
  case Joint::thoraxTurn:
    share(Joint::lumbarTurn, trunkTurn, trunkTurn);
    break;
  case Joint::ankleNear:
  case Joint::ankleFar:
    if (!bears(pose, joint == Joint::ankleNear ? Limb::near : Limb::far))
      range.most = limitOf(footUp);
    break;
  default:
    break;
  }
  return range;
}

std::vector<Overturned> overturned(const Pose& pose) {
  using enum Joint;
  Overturning all(pose);
  all.check(lumbarBend, lumbarForward, lumbarBack);
  all.check(Joint::lumbarSide, Motion::lumbarSide, Motion::lumbarSide);
  all.check(Joint::lumbarTurn, Motion::lumbarTurn, Motion::lumbarTurn);
  all.check(thoraxBend, thoraxForward, thoraxBack);
  all.check(Joint::thoraxSide, Motion::thoraxSide, Motion::thoraxSide);
  all.check(Joint::thoraxTurn, Motion::thoraxTurn, Motion::thoraxTurn);
  all.check(thoraxBend, trunkForward, trunkBack, lumbarBend);
  all.check(Joint::thoraxSide, trunkSide, trunkSide, Joint::lumbarSide);
  all.check(Joint::thoraxTurn, trunkTurn, trunkTurn, Joint::lumbarTurn);
  all.check(neckBend, neckForward, neckBack);
  all.check(Joint::neckSide, Motion::neckSide, Motion::neckSide);
  all.check(Joint::neckTurn, Motion::neckTurn, Motion::neckTurn);
  for (const Limb limb : kBothLimbs) {
    const auto of = [limb](Joint near) { return limb == Limb::near ? near : otherSide(near); };
    all.check(of(shoulderNear), armForward, armBehind);
    all.check(of(armOutNear), armOut, armAcross);
    all.checkBend(of(elbowNear), elbowBend);
    all.check(of(hipNear), hipForward, hipBehind);
    all.check(of(legOutNear), hipOut, hipAcross);
    all.check(of(legTurnNear), hipTurnOut, hipTurnIn);
    all.checkBend(of(kneeNear), kneeBend);
    all.check(of(ankleNear), bears(pose, limb) ? footUpBearing : footUp, footDown);
  }
  return all.take();
}

} // namespace matwright
