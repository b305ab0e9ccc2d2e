#include "core/figure/Picture.h"

#include "core/figure/PropPicture.h"
#include "core/figure/Skeleton.h"

#include <algorithm>

namespace matwright {

namespace sk = skeleton;

namespace {

// Where the viewer stands.
class Eye {
public:
  explicit Eye(const Pose& pose) : view_(pose.view), flip_(pose.flip) {}

  Point2 seen(Vec3 p) const { return seenFrom(view_, flip_, p); }
  double depth(Vec3 p) const { return depthFrom(view_, p); }

private:
  View view_;
  bool flip_;
};

void addBead(PicturePart& part, const Eye& eye, Vec3 at, double radius, const Frame& turn) {
  part.left[part.count] = part.right[part.count] = {eye.seen(at), radius, eye.seen(turn.forward)};
  ++part.count;
}

PicturePart trunk(const PosedBody& body, const Eye& eye) {
  PicturePart part;
  part.part = BodyPart::trunk;
  for (std::size_t i = 0; i <= PosedBody::kSkull; ++i) {
    const Vec3 aside = body.turns[i].right * trunkHalfWidth(i);
    const Point2 front = eye.seen(body.turns[i].forward);
    part.left[i] = {eye.seen(body.spine[i] - aside), trunkRadius(i), front};
    part.right[i] = {eye.seen(body.spine[i] + aside), trunkRadius(i), front};
  }
  // the shoulder girdle bridges the arms
  constexpr double kWithin = 0.88;
  part.left[PosedBody::kNeck].at = eye.seen(between(body.neck(), body.arms[index(Limb::far)].shoulder, kWithin));
  part.right[PosedBody::kNeck].at = eye.seen(between(body.neck(), body.arms[index(Limb::near)].shoulder, kWithin));
  part.count = PosedBody::kSpinePoints;
  part.depth = eye.depth(between(body.pelvis(), body.neck(), 0.5));
  return part;
}

// The nose tells where a face looks to (ours), in radii of the head.
constexpr double kNoseAhead = 0.88, kNose = 0.26;

PicturePart head(const PosedBody& body, const Eye& eye) {
  PicturePart part;
  part.part = BodyPart::head;
  addBead(part, eye, body.spine[PosedBody::kSkull], sk::kNeckRadius, body.headTurn);
  addBead(part, eye, body.head, sk::kHeadRadius, body.headTurn);
  addBead(part, eye, body.head + body.headTurn.forward * (kNoseAhead * sk::kHeadRadius), kNose * sk::kHeadRadius,
          body.headTurn);
  part.depth = eye.depth(body.head);
  return part;
}

PicturePart arm(const PosedBody& body, Limb limb, const Eye& eye) {
  PicturePart part;
  part.part = armOf(limb);
  const PosedArm& a = body.arms[index(limb)];
  addBead(part, eye, a.shoulder, sk::kShoulderRadius, a.upperArm);
  addBead(part, eye, a.elbow, sk::kElbowRadius, a.upperArm);
  addBead(part, eye, a.wrist, sk::kWristRadius, a.forearm);
  addBead(part, eye, a.fingertips, sk::kFingerRadius, a.forearm);
  part.depth = (eye.depth(a.shoulder) + eye.depth(a.elbow) + eye.depth(a.wrist)) / 3;
  return part;
}

PicturePart leg(const PosedBody& body, Limb limb, const Eye& eye) {
  PicturePart part;
  part.part = legOf(limb);
  const PosedLeg& l = body.legs[index(limb)];
  addBead(part, eye, l.hip, sk::kHipRadius, l.thigh);
  addBead(part, eye, l.knee, sk::kKneeRadius, l.thigh);
  addBead(part, eye, l.ankle, sk::kAnkleRadius, l.shank);
  addBead(part, eye, l.heel, sk::kHeelRadius, l.shank);
  addBead(part, eye, l.toes, sk::kToeRadius, l.shank);
  part.depth = (eye.depth(l.hip) + eye.depth(l.knee) + eye.depth(l.ankle)) / 3;
  return part;
}

// In a body that points at the viewer, as a lying one does from the front, the parts behind stand back.
void setBack(Picture& picture, const PosedBody& body, const Eye& eye) {
  const double along = std::abs(eye.depth(direction(body.neck() - body.pelvis(), {0, 1, 0})));
  const double pointing = std::clamp((along - 0.7) / 0.2, 0.0, 1.0);
  double nearest = -1e9;
  for (const PicturePart& part : picture.parts)
    nearest = std::max(nearest, part.depth);
  for (PicturePart& part : picture.parts)
    part.farness = std::max(part.farness, pointing * std::clamp((nearest - part.depth - 0.06) / 0.1, 0.0, 1.0));
}

// A mat is as wide as usual, and as long as the body needs.
Extent matUnder(const Picture& picture, Point2 middle) {
  constexpr double kHalfWidth = 0.19, kMargin = 0.03;
  Extent mat;
  mat.takeIn({picture.extent.lowest.x - kMargin, middle.y - kHalfWidth});
  mat.takeIn({picture.extent.highest.x + kMargin, middle.y + kHalfWidth});
  return mat;
}

double farness(Vec3 right, Limb limb, const Eye& eye) {
  return std::clamp((-sideOf(limb) * eye.depth(right) - 0.25) / 0.4, 0.0, 1.0);
}

} // namespace

Point2 seenFrom(View view, bool flip, Vec3 place) {
  const double mirror = flip ? -1.0 : 1.0;
  switch (view) {
  case View::side:
    return {mirror * place.x, place.y};
  case View::front:
    return {mirror * -place.z, place.y};
  case View::top:
    return {mirror * place.x, -place.z};
  }
  return {};
}

double depthFrom(View view, Vec3 place) {
  switch (view) {
  case View::side:
    return place.z;
  case View::front:
    return place.x;
  case View::top:
    return place.y;
  }
  return 0;
}

Picture pictureOf(const Settled& settled) {
  const PosedBody& body = settled.body;
  const Eye eye(settled.articulation.pose);
  Picture picture;
  picture.parts = {arm(body, Limb::far, eye), leg(body, Limb::far, eye),  head(body, eye),
                   trunk(body, eye),          leg(body, Limb::near, eye), arm(body, Limb::near, eye)};
  picture.parts[0].farness = farness(body.turns[PosedBody::kNeck].right, Limb::far, eye);
  picture.parts[5].farness = farness(body.turns[PosedBody::kNeck].right, Limb::near, eye);
  picture.parts[1].farness = farness(body.turns[PosedBody::kPelvis].right, Limb::far, eye);
  picture.parts[4].farness = farness(body.turns[PosedBody::kPelvis].right, Limb::near, eye);
  setBack(picture, body, eye);
  std::stable_sort(picture.parts.begin(), picture.parts.end(),
                   [](const PicturePart& a, const PicturePart& b) { return a.depth < b.depth - 1e-9; });
  for (const PicturePart& part : picture.parts) {
    for (std::size_t i = 0; i < part.count; ++i) {
      picture.extent.takeIn(part.left[i].at, part.left[i].radius);
      picture.extent.takeIn(part.right[i].at, part.right[i].radius);
    }
  }
  picture.pieces = piecesOf(settled);
  for (const PicturePiece& piece : picture.pieces)
    for (const Point2 point : piece.points)
      picture.extent.takeIn(point, piece.radius);
  const View view = settled.articulation.pose.view;
  picture.hasFloor = view != View::top;
  if (settled.wall && view != View::top && settled.wall->beside == (view == View::side)) {
    picture.wallBehind = true;
  } else if (settled.wall && !(view == View::top && settled.wall->beside)) {
    picture.wall = eye.seen(settled.wall->beside ? Vec3{0, 0, settled.wall->at} : Vec3{settled.wall->at, 0, 0}).x;
    picture.wallSide = *picture.wall > (picture.extent.lowest.x + picture.extent.highest.x) / 2 ? 1 : -1;
    picture.extent.takeIn({*picture.wall, picture.extent.lowest.y});
  }
  if (picture.hasFloor)
    picture.extent.takeIn({picture.extent.lowest.x, 0});
  else
    picture.mat = matUnder(picture, eye.seen(between(body.pelvis(), body.neck(), 0.5)));
  if (picture.mat)
    picture.extent.unite(*picture.mat);
  return picture;
}

} // namespace matwright
