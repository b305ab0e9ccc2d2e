// Where the joints of a body are when its joint angles are given. Lengths are in statures (1 is the height of the
// standing body); the floor is y = 0.
#pragma once

#include "core/figure/Pose.h"
#include "core/figure/Vec3.h"

#include <array>

namespace matwright {

constexpr std::array<Limb, 2> kBothLimbs{Limb::near, Limb::far};
constexpr std::size_t index(Limb limb) { return static_cast<std::size_t>(limb); }
// +1 to the right of the body, where `near` is, -1 to its left.
constexpr double sideOf(Limb limb) { return limb == Limb::near ? 1.0 : -1.0; }

// How the end of a limb is turned against the part it hangs on, in that part's own axes.
struct EndPiece {
  Vec3 along;   // towards the toes or fingertips
  Vec3 outward; // from the sole or palm into the foot or hand
  friend bool operator==(const EndPiece&, const EndPiece&) = default;
};

// A pose with what settling adds to it: a place in the world, and feet and hands that lie flat where they rest.
struct Articulation {
  Pose pose;
  Vec3 pelvis; // middle between the hips
  std::array<EndPiece, 2> feet{EndPiece{{1, 0, 0}, {0, 1, 0}}, EndPiece{{1, 0, 0}, {0, 1, 0}}};
  std::array<EndPiece, 2> hands{EndPiece{{0, -1, 0}, {-1, 0, 0}}, EndPiece{{0, -1, 0}, {-1, 0, 0}}};
  std::array<double, 2> shoulderOffsets; // from the middle of the chest; smaller where the body lies on it
  friend bool operator==(const Articulation&, const Articulation&) = default;
};

struct PosedArm {
  Vec3 shoulder, elbow, wrist, fingertips;
  Frame upperArm, forearm;
};

struct PosedLeg {
  Vec3 hip, knee, ankle, heel, toes; // heel and toes: centres of the rounded ends of the foot
  Frame thigh, shank;
};

struct PosedBody {
  // The spine from the middle of the hips to the base of the skull; the parts begin at these places.
  static constexpr std::size_t kPelvis = 0, kLumbar = 1, kThorax = 5, kNeck = 9, kSkull = 11;
  static constexpr std::size_t kSpinePoints = 12;

  std::array<Vec3, kSpinePoints> spine;
  std::array<Frame, kSpinePoints> turns; // of the body at each point of the spine
  Vec3 head, crown;                      // middle of the head; top of it
  Frame headTurn;
  std::array<PosedArm, 2> arms; // by Limb
  std::array<PosedLeg, 2> legs; // by Limb

  const Vec3& lumbar() const { return spine[kLumbar]; }
  const Vec3& thorax() const { return spine[kThorax]; }
  const Vec3& neck() const { return spine[kNeck]; }
  const Vec3& pelvis() const { return spine[kPelvis]; }
};

// Half the depth of the trunk at a point of the spine, and how far its flesh stands to the sides.
double trunkRadius(std::size_t spinePoint);
double trunkHalfWidth(std::size_t spinePoint);

// The articulation as the angles alone give it: pelvis at the origin, feet by the ankles, hands in line.
Articulation articulated(const Pose& pose);

PosedBody posed(const Articulation& articulation);

// The body floating with its pelvis at the origin.
inline PosedBody posed(const Pose& pose) { return posed(articulated(pose)); }

// Puts feet and hands where the articulation has them, when nothing else of it has changed.
void poseEnds(PosedBody& body, const Articulation& articulation);

void move(PosedBody& body, Vec3 by);

// The foot at an ankle angle, without tilt to the side.
EndPiece footAt(double ankleDegrees);

} // namespace matwright
