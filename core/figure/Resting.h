// The places of the body's surface that can touch the floor or a wall.
#pragma once

#include "core/figure/PosedBody.h"

namespace matwright {

enum class BodyPart { trunk, head, armNear, armFar, legNear, legFar };

constexpr BodyPart armOf(Limb limb) { return limb == Limb::near ? BodyPart::armNear : BodyPart::armFar; }
constexpr BodyPart legOf(Limb limb) { return limb == Limb::near ? BodyPart::legNear : BodyPart::legFar; }

// A ball of flesh. Its place along the limb says which joints move it: 0 the first joint itself, 1 the elbow or knee, 2
// the wrist or ankle, 3 beyond.
struct Ball {
  Vec3 centre;
  double radius = 0;
  BodyPart part = BodyPart::trunk;
  int place = 0;

  double height() const { return centre.y - radius; } // of the lowest point
};

// The few balls that a contact wants at the floor or wall.
class ContactBalls {
public:
  void add(const Ball& ball) { balls_[count_++] = ball; } // four at most
  std::size_t size() const { return count_; }
  const Ball& operator[](std::size_t i) const { return balls_[i]; }
  const Ball* begin() const { return balls_.data(); }
  const Ball* end() const { return balls_.data() + count_; }

private:
  std::array<Ball, 4> balls_;
  std::size_t count_ = 0;
};

// The lowest ball of the trunk between two points of the spine, both included.
Ball lowestTrunkBall(const PosedBody& body, std::size_t from, std::size_t to);

ContactBalls contactBalls(const PosedBody& body, Contact contact);

// The balls of the limbs and the head, apart from the trunk.
constexpr std::size_t kOuterBalls = 17;
std::array<Ball, kOuterBalls> outerBalls(const PosedBody& body);

constexpr EnumSet<Contact> kTrunkContacts{Contact::upperBack, Contact::back, Contact::front, Contact::seat,
                                          Contact::side};

constexpr Contact contactOf(Contact near, Limb limb) {
  return static_cast<Contact>(static_cast<int>(near) + (limb == Limb::near ? 0 : 1));
}
constexpr WallContact contactOf(WallContact near, Limb limb) {
  return static_cast<WallContact>(static_cast<int>(near) + (limb == Limb::near ? 0 : 1));
}

// With what each contact holds within it: feet hold toes and heels, shins knees, the back the upper back and the seat.
EnumSet<Contact> withParts(EnumSet<Contact> contacts);

} // namespace matwright
