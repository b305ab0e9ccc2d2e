#include "core/figure/Handle.h"

#include "core/figure/Picture.h"

#include <array>

namespace matwright {

std::span<const Joint> jointsOf(Handle handle) {
  using enum Joint;
  static constexpr std::array pelvis{lean, roll};
  static constexpr std::array waist{lumbarBend, lumbarSide, lumbarTurn};
  static constexpr std::array chest{thoraxBend, thoraxSide, thoraxTurn};
  static constexpr std::array head{neckBend, neckSide, neckTurn};
  static constexpr std::array shoulder{thoraxTurn, thoraxSide};
  static constexpr std::array elbows{std::array{shoulderNear, armOutNear}, std::array{shoulderFar, armOutFar}};
  static constexpr std::array hands{std::array{elbowNear, shoulderNear, armOutNear},
                                    std::array{elbowFar, shoulderFar, armOutFar}};
  static constexpr std::array hip{roll};
  static constexpr std::array knees{std::array{hipNear, legOutNear}, std::array{hipFar, legOutFar}};
  static constexpr std::array feet{std::array{kneeNear, hipNear, legOutNear, legTurnNear},
                                   std::array{kneeFar, hipFar, legOutFar, legTurnFar}};
  static constexpr std::array toes{std::array{ankleNear}, std::array{ankleFar}};
  switch (handle) {
  case Handle::seat:
    return {};
  case Handle::pelvis:
    return pelvis;
  case Handle::waist:
    return waist;
  case Handle::chest:
    return chest;
  case Handle::head:
    return head;
  case Handle::shoulderNear:
  case Handle::shoulderFar:
    return shoulder;
  case Handle::elbowNear:
  case Handle::elbowFar:
    return elbows[handle == Handle::elbowFar];
  case Handle::handNear:
  case Handle::handFar:
    return hands[handle == Handle::handFar];
  case Handle::hipNear:
  case Handle::hipFar:
    return hip;
  case Handle::kneeNear:
  case Handle::kneeFar:
    return knees[handle == Handle::kneeFar];
  case Handle::footNear:
  case Handle::footFar:
    return feet[handle == Handle::footFar];
  case Handle::toesNear:
  case Handle::toesFar:
    return toes[handle == Handle::toesFar];
  }
  return {};
}

Vec3 placeOf(const PosedBody& body, Handle handle) {
  switch (handle) {
  case Handle::seat:
    return body.pelvis();
  case Handle::pelvis:
    return body.lumbar();
  case Handle::waist:
    return body.thorax();
  case Handle::chest:
    return body.neck();
  case Handle::head:
    return body.head;
  case Handle::shoulderNear:
    return body.arms[0].shoulder;
  case Handle::shoulderFar:
    return body.arms[1].shoulder;
  case Handle::elbowNear:
    return body.arms[0].elbow;
  case Handle::elbowFar:
    return body.arms[1].elbow;
  case Handle::handNear:
    return body.arms[0].wrist;
  case Handle::handFar:
    return body.arms[1].wrist;
  case Handle::hipNear:
    return body.legs[0].hip;
  case Handle::hipFar:
    return body.legs[1].hip;
  case Handle::kneeNear:
    return body.legs[0].knee;
  case Handle::kneeFar:
    return body.legs[1].knee;
  case Handle::footNear:
    return body.legs[0].ankle;
  case Handle::footFar:
    return body.legs[1].ankle;
  case Handle::toesNear:
    return body.legs[0].toes;
  case Handle::toesFar:
    break;
  }
  return body.legs[1].toes;
}

Point2 seenPlaceOf(const Settled& shape, Handle handle) {
  const Pose& pose = shape.articulation.pose;
  return seenFrom(pose.view, pose.flip, placeOf(shape.body, handle));
}

} // namespace matwright
