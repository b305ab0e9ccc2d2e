#include "core/figure/PathOfMotion.h"

#include <array>
#include <cmath>
#include <utility>

namespace matwright {

namespace {

constexpr int kBetween = 3;           // points of a way from one settled shape to the next
constexpr double kGap = 0.025;        // statures left free between a way and the flesh at its ends
constexpr double kShortest = 0.1;     // statures: what is shorter is not told
constexpr double kWorthASecond = 0.4; // of the first way's length
constexpr double kApart = 0.12;       // statures between ways that are told beside one another
constexpr double kFarApart = 0.2;     // the same for those of both arms, or both legs, that go alike
constexpr double kDifferent = 0.64;   // cosine of the least angle between their directions, 50 degrees

constexpr std::array kTravellers{Traveller::handNear,  Traveller::handFar, Traveller::footNear, Traveller::footFar,
                                 Traveller::head,      Traveller::pelvis,  Traveller::kneeNear, Traveller::kneeFar,
                                 Traveller::elbowNear, Traveller::elbowFar};

constexpr BodyPart partOf(Traveller traveller) {
  switch (traveller) {
  case Traveller::head:
    return BodyPart::head;
  case Traveller::pelvis:
    return BodyPart::trunk;
  case Traveller::handNear:
  case Traveller::elbowNear:
    return BodyPart::armNear;
  case Traveller::handFar:
  case Traveller::elbowFar:
    return BodyPart::armFar;
  case Traveller::footNear:
  case Traveller::kneeNear:
    return BodyPart::legNear;
  case Traveller::footFar:
  case Traveller::kneeFar:
    return BodyPart::legFar;
  }
  return BodyPart::trunk;
}

Point2 operator-(Point2 a, Point2 b) { return {a.x - b.x, a.y - b.y}; }
double length(Point2 v) { return std::hypot(v.x, v.y); }
double dot(Point2 a, Point2 b) { return a.x * b.x + a.y * b.y; }
double distance(Point2 a, Point2 b) { return length(b - a); }
Point2 between(Point2 a, Point2 b, double share) { return {a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share}; }

// How far a point is from the flesh between two beads; negative inside.
double toSweep(Point2 point, const Bead& a, const Bead& b) {
  const Point2 way = b.at - a.at;
  const double square = dot(way, way);
  const double share = square > 1e-12 ? std::clamp(dot(point - a.at, way) / square, 0.0, 1.0) : 0;
  return distance(point, between(a.at, b.at, share)) - (a.radius + (b.radius - a.radius) * share);
}

double toFlesh(Point2 point, const PicturePart& part) {
  double nearest = 1e9;
  for (std::size_t i = 0; i + 1 < part.count; ++i) {
    nearest = std::min(nearest, toSweep(point, part.left[i], part.left[i + 1]));
    nearest = std::min(nearest, toSweep(point, part.right[i], part.right[i + 1]));
  }
  return nearest;
}

// From a point outside the flesh to one inside: where the way comes within the gap.
Point2 edgeOf(Point2 outside, Point2 inside, const PicturePart& part) {
  for (int i = 0; i < 24; ++i) {
    const Point2 middle = between(outside, inside, 0.5);
    (toFlesh(middle, part) > kGap ? outside : inside) = middle;
  }
  return outside;
}

const PicturePart& partIn(const Picture& picture, BodyPart wanted) {
  return *std::find_if(picture.parts.begin(), picture.parts.end(),
                       [wanted](const PicturePart& part) { return part.part == wanted; });
}

// Through all points, with some between them.
std::vector<Point2> smooth(const std::vector<Point2>& way) {
  std::vector<Point2> points{way.front()};
  for (std::size_t i = 0; i + 1 < way.size(); ++i) {
    const Point2 a = way[i], b = way[i + 1];
    const Point2 before = i > 0 ? way[i - 1] : a, after = i + 2 < way.size() ? way[i + 2] : b;
    const Point2 leaving = {(b.x - before.x) / 2, (b.y - before.y) / 2};
    const Point2 arriving = {(after.x - a.x) / 2, (after.y - a.y) / 2};
    for (int k = 1; k <= kBetween; ++k) { // a cubic of Hermite
      const double t = static_cast<double>(k) / kBetween, u = 1 - t;
      const double ofA = u * u * (1 + 2 * t), ofB = t * t * (3 - 2 * t), ofLeaving = t * u * u, ofArriving = -t * t * u;
      points.push_back({ofA * a.x + ofB * b.x + ofLeaving * leaving.x + ofArriving * arriving.x,
                        ofA * a.y + ofB * b.y + ofLeaving * leaving.y + ofArriving * arriving.y});
    }
  }
  return points;
}

std::vector<Point2> trimmed(const std::vector<Point2>& way, const PicturePart& start, const PicturePart& end) {
  std::size_t first = 0, last = way.size();
  while (first < way.size() && toFlesh(way[first], start) <= kGap)
    ++first;
  while (last > first && toFlesh(way[last - 1], end) <= kGap)
    --last;
  if (last - first < 2)
    return {};
  std::vector<Point2> points(way.begin() + static_cast<std::ptrdiff_t>(first),
                             way.begin() + static_cast<std::ptrdiff_t>(last));
  if (first > 0)
    points.insert(points.begin(), edgeOf(way[first], way[first - 1], start));
  if (last < way.size())
    points.push_back(edgeOf(way[last - 1], way[last], end));
  return points;
}

double nearest(const PathOfMotion& one, const PathOfMotion& other) {
  double least = 1e9;
  for (const Point2 at : one.points)
    for (const Point2 beside : other.points)
      least = std::min(least, distance(at, beside));
  return least;
}

// The same place of the other side of the body.
bool areCounterparts(Traveller one, Traveller other) {
  if (one < Traveller::handNear || other < Traveller::handNear)
    return false;
  constexpr int kFirst = static_cast<int>(Traveller::handNear);
  return one != other && (static_cast<int>(one) - kFirst) / 2 == (static_cast<int>(other) - kFirst) / 2;
}

// Whether two ways may be told beside one another: apart, and in other directions or on either side of the body.
bool differ(const PathOfMotion& one, const PathOfMotion& other) {
  if (partOf(one.traveller) == partOf(other.traveller))
    return false;
  const double apart = nearest(one, other);
  if (apart < kApart)
    return false;
  if (areCounterparts(one.traveller, other.traveller) && apart > kFarApart)
    return true;
  const Point2 a = one.points.back() - one.points.front(), b = other.points.back() - other.points.front();
  return dot(a, b) < kDifferent * length(a) * length(b);
}

} // namespace

Point2 placeOf(const Settled& shape, Traveller traveller) {
  const PosedBody& body = shape.body;
  const Pose& pose = shape.articulation.pose;
  const auto place = [&]() -> Vec3 {
    const Limb limb =
        partOf(traveller) == BodyPart::armFar || partOf(traveller) == BodyPart::legFar ? Limb::far : Limb::near;
    const PosedArm& arm = body.arms[index(limb)];
    const PosedLeg& leg = body.legs[index(limb)];
    switch (traveller) {
    case Traveller::head:
      return body.head;
    case Traveller::pelvis:
      return body.pelvis();
    case Traveller::handNear:
    case Traveller::handFar:
      return arm.wrist;
    case Traveller::elbowNear:
    case Traveller::elbowFar:
      return arm.elbow;
    case Traveller::footNear:
    case Traveller::footFar:
      return leg.ankle;
    case Traveller::kneeNear:
    case Traveller::kneeFar:
      return leg.knee;
    }
    return {};
  };
  return seenFrom(pose.view, pose.flip, place());
}

double PathOfMotion::length() const {
  double sum = 0;
  for (std::size_t i = 1; i < points.size(); ++i)
    sum += distance(points[i - 1], points[i]);
  return sum;
}

std::vector<PathOfMotion> pathsOfMotion(const Passage& passage) {
  const Pose& from = passage.start().articulation.pose;
  const Pose& to = passage.end().articulation.pose;
  if (from.view != to.view || from.flip != to.flip)
    return {};
  const Picture start = pictureOf(passage.start()), end = pictureOf(passage.end());
  std::array<std::vector<Point2>, kTravellers.size()> ways;
  for (int i = 0; i <= Passage::kLinks; ++i) {
    const Settled shape = passage.at(static_cast<double>(i) / Passage::kLinks);
    for (std::size_t k = 0; k < kTravellers.size(); ++k)
      ways[k].push_back(placeOf(shape, kTravellers[k]));
  }
  std::vector<PathOfMotion> paths;
  for (std::size_t k = 0; k < kTravellers.size(); ++k) {
    const BodyPart part = partOf(kTravellers[k]);
    PathOfMotion path{kTravellers[k], trimmed(smooth(ways[k]), partIn(start, part), partIn(end, part))};
    if (path.length() >= kShortest)
      paths.push_back(std::move(path));
  }
  std::stable_sort(paths.begin(), paths.end(), [](const PathOfMotion& one, const PathOfMotion& other) {
    return one.length() > other.length() + 1e-3; // of equals the one named first
  });
  if (paths.size() < 2)
    return paths;
  std::vector<PathOfMotion> told{std::move(paths.front())};
  for (std::size_t i = 1; i < paths.size() && told.size() < 2; ++i)
    if (paths[i].length() >= kWorthASecond * told.front().length() && differ(told.front(), paths[i]))
      told.push_back(std::move(paths[i]));
  return told;
}

} // namespace matwright
