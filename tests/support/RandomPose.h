// Poses at random within wide angles, and their mirror images.
#pragma once

#include "core/figure/Joint.h"

#include <random>

namespace matwright::test {

class RandomPose {
public:
  explicit RandomPose(unsigned seed) : random_(seed) {}

  double between(double least, double most) { return std::uniform_real_distribution<double>(least, most)(random_); }

  // Every joint anywhere within two thirds of its range; rests nowhere.
  Pose anywhere() {
    Pose pose;
    for (std::size_t i = 0; i < kWordCount<Joint>; ++i) {
      const auto joint = static_cast<Joint>(i);
      const AngleRange range = rangeOf(joint);
      angleOf(pose, joint) = between(range.least * 2 / 3, range.most * 2 / 3);
    }
    return pose;
  }

private:
  std::mt19937 random_;
};

} // namespace matwright::test
