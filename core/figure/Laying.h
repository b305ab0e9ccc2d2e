// A body put down with its angles as they are: its trunk on the floor, its hands and feet flat, its wall in place.
#pragma once

#include "core/figure/Resting.h"

#include <optional>

namespace matwright {

inline constexpr double kCloseEnough = 1e-5; // statures: about a sixtieth of a millimetre

class Laying {
public:
  // `wall` is where the wall is thought to stand along x, if known.
  Laying(const Articulation& articulation, std::optional<double> wall);

  // Puts the body down again after `articulation()` or `wall()` have changed.
  void refresh();

  Articulation& articulation() { return a_; }
  const Articulation& articulation() const { return a_; }
  const PosedBody& body() const { return body_; }

  EnumSet<Contact> on() const { return a_.pose.on; }
  EnumSet<WallContact> walls() const { return a_.pose.wall; }
  bool rests(Contact near, Limb limb) const { return on().contains(contactOf(near, limb)); }
  bool restsOnTrunk() const { return on().intersects(kTrunkContacts); }
  bool restsOnlyOn(Contact trunk) const { return (on() & kTrunkContacts) == EnumSet<Contact>{trunk}; }

  double& wall() { return wall_; }
  double wall() const { return wall_; }
  // What of a foot that rests against the wall touches it: the sole, or, where the leg lies along the wall, the heel.
  Ball footOnWall(Limb limb) const;
  double wallSide() const { return wallSide_; } // +1 when the body is on the lower side of the wall along x

private:
  void restTrunk();
  double levelling() const;
  void placeWall();
  void layFlat(Limb limb);
  void drawInShoulders();

  Articulation a_;
  PosedBody body_;
  double wall_ = 0, wallSide_ = 1;
  bool wallKnown_ = false;
  std::array<bool, 2> byHeel_{}; // which feet touch the wall with the heel alone
};

} // namespace matwright
