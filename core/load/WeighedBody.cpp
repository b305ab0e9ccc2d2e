#include "core/load/WeighedBody.h"

#include "core/figure/Skeleton.h"

namespace matwright {

namespace sk = skeleton;

namespace {

constexpr std::size_t kLinks = 4; // of the lumbar spine, and of the thorax

constexpr std::array<Segment, kSegments> kParents{
    Segment::pelvis,     Segment::pelvis,       Segment::lumbar1,     Segment::lumbar2, Segment::lumbar3,
    Segment::lumbar4,    Segment::thorax1,      Segment::thorax2,     Segment::thorax3, Segment::thorax4,
    Segment::thorax4,    Segment::upperArmNear, Segment::forearmNear, Segment::thorax4, Segment::upperArmFar,
    Segment::forearmFar, Segment::pelvis,       Segment::thighNear,   Segment::pelvis,  Segment::thighFar};

constexpr std::array<SegmentSet, kSegments> kBeyond = [] {
  std::array<SegmentSet, kSegments> beyond;
  for (std::size_t i = kSegments; i-- > 0;) {
    beyond[i].insert(static_cast<Segment>(i));
    if (const std::size_t parent = index(kParents[i]); parent != i)
      beyond[parent] |= beyond[i];
  }
  return beyond;
}();

// Hangs a segment on its parent's end (or elsewhere) along a drawn stretch, at the table's length.
class Weighing {
public:
  Weighing(BodyTable table, WeighedBody& body) : table_(table), body_(body) {}

  // `drawn`: the stretch as it is drawn; `drawnLength`: of the whole kind; `parts`: of which this is one.
  void hang(Segment segment, SegmentKind kind, Vec3 joint, Vec3 drawn, double drawnLength, double parts = 1) {
    const SegmentRow& row = rowOf(table_, kind);
    WeighedSegment& made = body_.segments[index(segment)];
    made.weight = row.mass / parts;
    made.joint = joint;
    made.end = joint + drawn * (row.length / drawnLength);
    made.centre = between(made.joint, made.end, parts == 1 ? row.centre : 0.5);
  }

  // Four links of one kind; their centres stand off their middles so that the centre of the whole is the row's.
  void hangLinks(Segment first, SegmentKind kind, const PosedBody& body, std::size_t from, double drawnLength) {
    const auto link = [&](std::size_t i) { return static_cast<Segment>(index(first) + i); };
    for (std::size_t i = 0; i < kLinks; ++i)
      hang(link(i), kind, body_[parentOf(link(i))].end, body.spine[from + i + 1] - body.spine[from + i], drawnLength,
           kLinks);
    const Vec3 chord = body_[link(kLinks - 1)].end - body_[first].joint;
    for (std::size_t i = 0; i < kLinks; ++i) {
      Vec3& centre = body_.segments[index(link(i))].centre;
      centre = centre + chord * (rowOf(table_, kind).centre - 0.5);
    }
  }

private:
  BodyTable table_;
  WeighedBody& body_;
};

} // namespace

Segment parentOf(Segment segment) { return kParents[index(segment)]; }

SegmentSet beyond(Segment segment) { return kBeyond[index(segment)]; }
SegmentSet wholeBody() { return beyond(Segment::pelvis); }

WeighedBody weighed(const PosedBody& body, BodyTable table) {
  WeighedBody result;
  Weighing weighing(table, result);
  weighing.hang(Segment::pelvis, SegmentKind::pelvis, body.pelvis(), body.lumbar() - body.pelvis(), sk::kPelvis);
  weighing.hangLinks(Segment::lumbar1, SegmentKind::abdomen, body, PosedBody::kLumbar, sk::kLumbar);
  weighing.hangLinks(Segment::thorax1, SegmentKind::thorax, body, PosedBody::kThorax, sk::kThorax);
  const Vec3 neck = result[Segment::thorax4].end;
  weighing.hang(Segment::headAndNeck, SegmentKind::headAndNeck, neck, body.crown - body.neck(), sk::kHeadAndNeck);
  for (const Limb limb : kBothLimbs) {
    const PosedArm& arm = body.arms[index(limb)];
    const std::size_t upperArm = index(upperArmOf(limb));
    const auto next = [&](std::size_t first, std::size_t i) { return static_cast<Segment>(first + i); };
    weighing.hang(next(upperArm, 0), SegmentKind::upperArm, neck + (arm.shoulder - body.neck()),
                  arm.elbow - arm.shoulder, sk::kUpperArm);
    weighing.hang(next(upperArm, 1), SegmentKind::forearm, result.segments[upperArm].end, arm.wrist - arm.elbow,
                  sk::kForearm);
    weighing.hang(next(upperArm, 2), SegmentKind::hand, result.segments[upperArm + 1].end,
                  direction(arm.fingertips - arm.wrist, {0, -1, 0}) * sk::kHand, sk::kHand);
    const PosedLeg& leg = body.legs[index(limb)];
    const std::size_t thigh = index(thighOf(limb));
    weighing.hang(next(thigh, 0), SegmentKind::thigh, leg.hip, leg.knee - leg.hip, sk::kThigh);
    weighing.hang(next(thigh, 1), SegmentKind::lowerLeg, result.segments[thigh].end, leg.ankle - leg.knee, sk::kShank);
  }
  return result;
}

Vec3 momentAbout(const WeighedBody& body, Vec3 place, SegmentSet segments, std::span<const Force> forces) {
  Vec3 moment;
  segments.forEach([&](Segment segment) {
    moment = moment + cross(body[segment].centre - place, {0, -body[segment].weight, 0});
  });
  for (const Force& force : forces)
    if (segments.contains(force.segment))
      moment = moment + cross(force.at - place, force.force);
  return moment;
}

SegmentKind kindOf(Segment segment) {
  const std::size_t place = index(segment);
  if (place < index(Segment::headAndNeck))
    return place == 0 ? SegmentKind::pelvis : place <= kLinks ? SegmentKind::abdomen : SegmentKind::thorax;
  constexpr auto kUpperArm = static_cast<std::size_t>(SegmentKind::upperArm);
  if (place < index(Segment::upperArmNear))
    return SegmentKind::headAndNeck;
  if (place < index(Segment::thighNear))
    return static_cast<SegmentKind>(kUpperArm + (place - index(Segment::upperArmNear)) % 3);
  return (place - index(Segment::thighNear)) % 2 == 0 ? SegmentKind::thigh : SegmentKind::lowerLeg;
}

Vec3 inertialMoment(const WeighedBody& body, BodyTable table, Vec3 place, SegmentSet segments,
                    std::span<const SegmentMotion, kSegments> motion) {
  Vec3 moment;
  segments.forEach([&](Segment segment) {
    const WeighedSegment& each = body[segment];
    const SegmentMotion& change = motion[index(segment)];
    const Vec3 axis = each.end - each.joint;
    const double radius = rowOf(table, kindOf(segment)).gyration;
    // A rod's angular acceleration is its direction times the direction's second derivative; the lengths cancel.
    moment = moment +
             (cross(each.centre - place, change.acceleration) + cross(axis, change.axisChange) * (radius * radius)) *
                 each.weight;
  });
  return moment;
}

} // namespace matwright
