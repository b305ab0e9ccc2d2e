// Points and turning frames of the figure. World axes: x right, y up, z towards the viewer of the side view.
#pragma once

#include <cmath>

namespace matwright {

struct Vec3 {
  double x = 0, y = 0, z = 0;

  constexpr Vec3 operator+(Vec3 o) const { return {x + o.x, y + o.y, z + o.z}; }
  constexpr Vec3 operator-(Vec3 o) const { return {x - o.x, y - o.y, z - o.z}; }
  constexpr Vec3 operator-() const { return {-x, -y, -z}; }
  constexpr Vec3 operator*(double k) const { return {x * k, y * k, z * k}; }
  friend constexpr bool operator==(Vec3, Vec3) = default;
};

constexpr double dot(Vec3 a, Vec3 b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
constexpr Vec3 cross(Vec3 a, Vec3 b) { return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x}; }
inline double length(Vec3 v) { return std::sqrt(dot(v, v)); }

// `v` at length 1; `otherwise` when v has no direction.
inline Vec3 direction(Vec3 v, Vec3 otherwise) {
  const double size = length(v);
  return size > 1e-6 ? v * (1.0 / size) : otherwise;
}

constexpr Vec3 between(Vec3 a, Vec3 b, double t) { return a + (b - a) * t; }

constexpr double kRadiansPerDegree = 0.017453292519943295;

// How a part of the body is turned: its forward, its upward (towards the head, along the part) and its rightward
// direction, orthonormal. Angles are in degrees.
struct Frame {
  Vec3 forward{1, 0, 0}, up{0, 1, 0}, right{0, 0, 1};

  // About the rightward axis; + brings the downward direction forward (a thigh or an arm that is raised in front).
  Frame raised(double degrees) const {
    const double c = std::cos(degrees * kRadiansPerDegree), s = std::sin(degrees * kRadiansPerDegree);
    return {forward * c + up * s, up * c - forward * s, right};
  }
  // About the forward axis; + brings the upward direction to the right.
  Frame tipped(double degrees) const {
    const double c = std::cos(degrees * kRadiansPerDegree), s = std::sin(degrees * kRadiansPerDegree);
    return {forward, up * c + right * s, right * c - up * s};
  }
  // About the upward axis; + turns the front to the right.
  Frame turned(double degrees) const {
    const double c = std::cos(degrees * kRadiansPerDegree), s = std::sin(degrees * kRadiansPerDegree);
    return {forward * c + right * s, up, right * c - forward * s};
  }
  // The direction written in this frame's own axes.
  constexpr Vec3 world(Vec3 own) const { return forward * own.x + up * own.y + right * own.z; }
  constexpr Vec3 own(Vec3 world) const { return {dot(world, forward), dot(world, up), dot(world, right)}; }
};

// `inner`, written in the axes of `outer`, in the world's axes.
constexpr Frame composed(const Frame& outer, const Frame& inner) {
  return {outer.world(inner.forward), outer.world(inner.up), outer.world(inner.right)};
}

} // namespace matwright
