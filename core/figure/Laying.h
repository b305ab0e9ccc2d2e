// A body put down with its angles as they are: its trunk on what carries it, its hands and feet flat, its wall in
// place.
#pragma once

#include "core/figure/Resting.h"
#include "core/figure/Support.h"

#include <optional>

namespace matwright {

inline constexpr double kCloseEnough = 1e-5; // statures: about a sixtieth of a millimetre

class Laying {
public:
  // `wall` is where the wall is thought to stand, if known.
  Laying(const Articulation& articulation, std::optional<Wall> wall);

  // Puts the body down again after `articulation()` or `wall()` have changed.
  void refresh();

  Articulation& articulation() { return a_; }
  const Articulation& articulation() const { return a_; }
  const PosedBody& body() const { return body_; }

  // What is put down by its height, on whatever it rests, and how high that is.
  EnumSet<Contact> on() const { return on_; }
  double surface(Contact contact) const { return surfaces_[static_cast<std::size_t>(contact)]; }
  EnumSet<WallContact> walls() const { return a_.pose.wall; }
  bool rests(Contact near, Limb limb) const { return on().contains(contactOf(near, limb)); }
  bool restsOnTrunk() const { return on().intersects(kTrunkContacts); }
  bool restsOnlyOn(Contact trunk) const { return (on() & kTrunkContacts) == EnumSet<Contact>{trunk}; }

  // What of a foot that rests against the wall touches it: the sole, or, where the leg lies along the wall, the heel.
  Ball footOnWall(Limb limb) const;
  // Of the trunk, the ball that it rests with.
  Ball bearingBall() const;

  double& wall() { return wall_.at; }
  double wall() const { return wall_.at; }
  Wall wallPlace() const { return wall_; }
  double wallSide() const { return wallSide_; } // +1 when the body is on the lower side of the wall
  double acrossWall(Vec3 place) const { return wall_.beside ? place.z : place.x; }
  Vec3 offTheWall() const { return wall_.beside ? Vec3{0, 0, -wallSide_} : Vec3{-wallSide_, 0, 0}; }

private:
  void restTrunk();
  double levelling() const;
  double over(const Ball& ball, Contact contact) const { return ball.height() - surface(contact); }
  void placeWall();
  void layFlat(Limb limb);
  void drawInShoulders();

  Articulation a_;
  PosedBody body_;
  EnumSet<Contact> on_;
  std::array<double, kWordCount<Contact>> surfaces_{};
  Wall wall_;
  double wallSide_ = 1;
  bool wallKnown_ = false;
  std::array<bool, 2> byHeel_{}; // which feet touch the wall with the heel alone
};

} // namespace matwright
