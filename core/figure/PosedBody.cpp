#include "core/figure/PosedBody.h"

#include "core/figure/Skeleton.h"

namespace matwright {

namespace sk = skeleton;

namespace {

constexpr std::size_t kPoints = PosedBody::kSpinePoints;
constexpr std::array<double, kPoints> kRadii{
    sk::kPelvisRadius, 0.050, 0.048, sk::kWaistRadius, 0.047,          0.049, 0.051,
    sk::kChestRadius,  0.046, 0.034, sk::kNeckRadius,  sk::kNeckRadius};
constexpr std::array<double, kPoints> kHalfWidths{0.030, sk::kPelvisHalfWidth,
                                                  0.038, sk::kWaistHalfWidth,
                                                  0.033, 0.037,
                                                  0.041, sk::kChestHalfWidth,
                                                  0.045, 0.030,
                                                  0.0,   0.0};

// A share of a part's bend, against the frame below it.
Frame bendOf(const SpineAngles& angles, double share) {
  Frame frame = Frame{}.raised(-angles.bend * share);
  if (angles.side != 0)
    frame = frame.tipped(angles.side * share);
  if (angles.turn != 0)
    frame = frame.turned(angles.turn * share);
  return frame;
}

// A part made of equal links: the bend is shared between them, half of each share before the link and half after.
void bendSpine(PosedBody& body, std::size_t from, std::size_t to, const SpineAngles& angles, double partLength) {
  const double links = static_cast<double>(to - from);
  const Frame bend = bendOf(angles, 0.5 / links);
  for (std::size_t i = from; i < to; ++i) {
    const Frame middle = composed(body.turns[i], bend);
    body.spine[i + 1] = body.spine[i] + middle.up * (partLength / links);
    body.turns[i + 1] = composed(middle, bend);
  }
}

void poseArm(PosedArm& arm, const PosedBody& body, const Articulation& a, Limb limb) {
  const ArmAngles& angles = a.pose.arms[index(limb)];
  const double side = sideOf(limb);
  const Frame& chest = body.turns[PosedBody::kNeck];
  arm.shoulder = body.neck() + chest.right * (side * a.shoulderOffsets[index(limb)]);
  arm.upperArm = chest.raised(angles.shoulder).tipped(-side * angles.out);
  arm.elbow = arm.shoulder - arm.upperArm.up * sk::kUpperArm;
  arm.forearm = arm.upperArm.raised(angles.elbow);
  arm.wrist = arm.elbow - arm.forearm.up * sk::kForearm;
}

void poseLeg(PosedLeg& leg, const PosedBody& body, const Articulation& a, Limb limb) {
  const LegAngles& angles = a.pose.legs[index(limb)];
  const double side = sideOf(limb);
  const Frame& pelvis = body.turns[PosedBody::kPelvis];
  leg.hip = body.pelvis() + pelvis.right * (side * sk::kHipOffset);
  leg.thigh = pelvis.raised(angles.hip).tipped(-side * angles.out).turned(side * angles.turn);
  leg.knee = leg.hip - leg.thigh.up * sk::kThigh;
  leg.shank = leg.thigh.raised(-angles.knee);
  leg.ankle = leg.knee - leg.shank.up * sk::kShank;
}

} // namespace

void poseEnds(PosedBody& body, const Articulation& a) {
  for (const Limb limb : kBothLimbs) {
    PosedArm& arm = body.arms[index(limb)];
    arm.fingertips = arm.wrist + arm.forearm.world(a.hands[index(limb)].along) * (sk::kHand - sk::kFingerRadius);
    PosedLeg& leg = body.legs[index(limb)];
    const EndPiece& foot = a.feet[index(limb)];
    const Vec3 along = leg.shank.world(foot.along), up = leg.shank.world(foot.outward);
    leg.heel = leg.ankle - up * (sk::kAnkleHeight - sk::kHeelRadius) - along * (sk::kHeelBehindAnkle - sk::kHeelRadius);
    leg.toes = leg.ankle - up * (sk::kAnkleHeight - sk::kToeRadius) +
               along * (sk::kFoot - sk::kHeelBehindAnkle - sk::kToeRadius);
  }
}

void move(PosedBody& body, Vec3 by) {
  for (Vec3& point : body.spine)
    point = point + by;
  body.head = body.head + by;
  body.crown = body.crown + by;
  for (PosedArm& arm : body.arms)
    for (Vec3* point : {&arm.shoulder, &arm.elbow, &arm.wrist, &arm.fingertips})
      *point = *point + by;
  for (PosedLeg& leg : body.legs)
    for (Vec3* point : {&leg.hip, &leg.knee, &leg.ankle, &leg.heel, &leg.toes})
      *point = *point + by;
}

double trunkRadius(std::size_t spinePoint) { return kRadii[spinePoint]; }
double trunkHalfWidth(std::size_t spinePoint) { return kHalfWidths[spinePoint]; }

EndPiece footAt(double ankleDegrees) {
  const Frame foot = Frame{}.raised(ankleDegrees);
  return {foot.forward, foot.up};
}

Articulation articulated(const Pose& pose) {
  Articulation result{.pose = pose, .pelvis = {}, .shoulderOffsets = {sk::kShoulderOffset, sk::kShoulderOffset}};
  for (const Limb limb : kBothLimbs)
    result.feet[index(limb)] = footAt(pose.legs[index(limb)].ankle);
  return result;
}

PosedBody posed(const Articulation& a) {
  PosedBody body;
  body.spine[0] = a.pelvis;
  body.turns[0] = Frame{}.raised(-a.pose.lean).turned(a.pose.roll);
  bendSpine(body, PosedBody::kPelvis, PosedBody::kLumbar, SpineAngles{}, sk::kPelvis);
  bendSpine(body, PosedBody::kLumbar, PosedBody::kThorax, a.pose.lumbar, sk::kLumbar);
  bendSpine(body, PosedBody::kThorax, PosedBody::kNeck, a.pose.thorax, sk::kThorax);
  bendSpine(body, PosedBody::kNeck, PosedBody::kSkull, a.pose.neck, sk::kNeck);
  body.headTurn = body.turns[PosedBody::kSkull];
  body.head = body.spine[PosedBody::kSkull] + body.headTurn.up * (sk::kHead - sk::kHeadRadius);
  body.crown = body.spine[PosedBody::kSkull] + body.headTurn.up * sk::kHead;
  for (const Limb limb : kBothLimbs) {
    poseArm(body.arms[index(limb)], body, a, limb);
    poseLeg(body.legs[index(limb)], body, a, limb);
  }
  poseEnds(body, a);
  return body;
}

} // namespace matwright
