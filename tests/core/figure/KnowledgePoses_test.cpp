// Every pose that comes with the program, held to what its file says.
#include "core/figure/Handle.h"
#include "core/figure/JointLimits.h"
#include "core/figure/Passage.h"
#include "core/figure/Skeleton.h"
#include "tests/support/PoseFile.h"
#include "tests/support/RestingPoses.h"

#include <algorithm>
#include <filesystem>
#include <gmock/gmock.h>

namespace matwright {
namespace {

namespace fs = std::filesystem;

using test::kMillimetre;

const std::string kResources = MATWRIGHT_SOURCE_DIR "/resources";
const std::string kPositions = kResources + "/positions/positions.json";

std::vector<LabelledPose> positionPoses() { return readPositionPoses(kPositions).poses; }

std::vector<LabelledPose> cataloguePoses() {
  std::vector<LabelledPose> all;
  for (const auto& entry : fs::directory_iterator(kResources + "/catalogue")) {
    if (entry.path().extension() != ".json")
      continue;
    const PoseList list = readCataloguePoses(entry.path().string(), kPositions, {});
    all.insert(all.end(), list.poses.begin(), list.poses.end());
  }
  return all;
}

void expectAtRest(const LabelledPose& entry) {
  const Settled shape = settled(entry.pose);
  EXPECT_LT(shape.largestGap, kMillimetre) << entry.label;
  EXPECT_LT(shape.deepestSink, kMillimetre) << entry.label;
}

TEST(KnowledgePoses, PositionsRestWithinAMillimetre) {
  const std::vector<LabelledPose> poses = positionPoses();
  EXPECT_EQ(poses.size(), 27u);
  for (const LabelledPose& entry : poses) {
    expectAtRest(entry);
    EXPECT_FALSE(entry.pose.on.empty()) << entry.label;
  }
}

TEST(KnowledgePoses, CataloguePosesRestWithinAMillimetre) {
  const std::vector<LabelledPose> poses = cataloguePoses();
  EXPECT_GT(poses.size(), 200u);
  for (const LabelledPose& entry : poses)
    expectAtRest(entry);
}

// The lanes of the terrain, low to high, are true of the bodies in them: lying bodies keep their pelvis below a seated
// head, standing ones above a kneeling pelvis.
TEST(KnowledgePoses, PositionsAreAsHighAsTheirElevation) {
  for (const LabelledPose& entry : positionPoses()) {
    const double pelvis = settled(entry.pose).body.pelvis().y, head = settled(entry.pose).body.head.y;
    if (entry.label.starts_with("face-") || entry.label.starts_with("side-left") ||
        entry.label.starts_with("side-right")) {
      EXPECT_LT(pelvis, 0.12) << entry.label;
      EXPECT_LT(head, 0.35) << entry.label;
    } else if (entry.label.ends_with("-sit") && entry.label != "heel-sit") {
      EXPECT_LT(pelvis, 0.10) << entry.label;
      EXPECT_GT(head, 0.38) << entry.label;
    } else if (entry.label.find("kneel-") != std::string::npos || entry.label == "tall-kneel") {
      EXPECT_NEAR(pelvis, 0.276, 0.03) << entry.label;
    } else if (entry.label == "sitting-chair") {
      EXPECT_NEAR(pelvis - skeleton::kPelvisRadius, kSeatHeight, 0.006) << entry.label;
      EXPECT_GT(head, 0.6) << entry.label;
    } else if (entry.label.starts_with("stand")) {
      EXPECT_GT(pelvis, 0.5) << entry.label;
    }
  }
}

// Side lying is named after the side that is down; the near side of a flipped figure is its left.
TEST(KnowledgePoses, SideLyingRestsOnTheSideInItsName) {
  for (const LabelledPose& entry : positionPoses()) {
    if (entry.label != "side-left" && entry.label != "side-right")
      continue;
    const PosedBody body = settled(entry.pose).body;
    EXPECT_LT(body.legs[index(Limb::near)].hip.y, body.legs[index(Limb::far)].hip.y) << entry.label;
    EXPECT_EQ(entry.pose.flip, entry.label == "side-left");
    EXPECT_GT(body.turns[0].forward.z, 0.9) << entry.label; // its front to the viewer
  }
}

TEST(KnowledgePoses, MirroredPositionsDifferByTheMirrorAlone) {
  const std::vector<LabelledPose> poses = positionPoses();
  const auto find = [&](const std::string& label) {
    for (const LabelledPose& entry : poses)
      if (entry.label == label)
        return entry.pose;
    ADD_FAILURE() << label;
    return Pose{};
  };
  for (const std::string name : {"side", "side-sit", "half-kneel"}) {
    Pose left = find(name + "-left");
    EXPECT_TRUE(left.flip);
    left.flip = false;
    EXPECT_EQ(left, find(name + "-right"));
  }
}

void expectPossible(const Pose& pose, const std::string& where) {
  for (const Overturned& turn : overturned(pose))
    ADD_FAILURE() << where << ": " << word(turn.joint) << (turn.with ? " with another" : "") << ", "
                  << word(turn.motion) << " " << turn.angle << ", at most " << turn.limit;
}

// A movement can be shown moving: from start to end nothing sinks, and no joint goes further than joints go.
TEST(KnowledgePoses, NothingSinksAndNothingBreaksOnTheWayOfAMovement) {
  const std::vector<LabelledPose> poses = cataloguePoses();
  for (std::size_t i = 0; i + 1 < poses.size(); i += 2) {
    const Passage passage(settled(poses[i].pose), settled(poses[i + 1].pose));
    for (int k = 1; k < 8; ++k) {
      const Settled shape = passage.at(k / 8.0);
      const std::string where = poses[i].label + " at " + std::to_string(k) + "/8";
      EXPECT_GT(clearance(shape.body), -kMillimetre) << where;
      expectPossible(shape.articulation.pose, where);
    }
  }
}

// Where a limb finds another way to rest from one moment to the next, it leaps alone.
TEST(KnowledgePoses, NoLimbLiftsTheBodyOnTheWayOfAMovement) {
  constexpr int kMoments = 240;
  const std::vector<LabelledPose> poses = cataloguePoses();
  for (std::size_t i = 0; i + 1 < poses.size(); i += 2) {
    const Passage passage(settled(poses[i].pose), settled(poses[i + 1].pose));
    double before = passage.start().body.pelvis().y, widest = 0;
    for (int k = 1; k <= kMoments; ++k) {
      const double now = passage.at(static_cast<double>(k) / kMoments).body.pelvis().y;
      widest = std::max(widest, std::abs(now - before));
      before = now;
    }
    EXPECT_LT(widest, 0.04) << poses[i].label;
  }
}

TEST(KnowledgePoses, TurnNoJointFurtherThanJointsGo) {
  std::vector<LabelledPose> poses = positionPoses();
  const std::vector<LabelledPose> more = cataloguePoses();
  poses.insert(poses.end(), more.begin(), more.end());
  for (const LabelledPose& entry : poses)
    expectPossible(entry.pose, entry.label);
}

TEST(KnowledgePoses, TurnNoJointFurtherOnceTheyHaveSettled) {
  std::vector<LabelledPose> poses = positionPoses();
  const std::vector<LabelledPose> more = cataloguePoses();
  poses.insert(poses.end(), more.begin(), more.end());
  for (const LabelledPose& entry : poses)
    expectPossible(settled(entry.pose).articulation.pose, entry.label);
}

// What is shown while a handle is dragged comes from a body that has settled already: it must not slip away by itself.
// Feet are left out: the angles do not say how one that lies on its edge is tilted, so it is laid anew.
TEST(KnowledgePoses, SettleToTheSamePictureWhenTheyHaveSettledBefore) {
  for (const LabelledPose& entry : cataloguePoses()) {
    const Settled once = settled(entry.pose);
    const Settled twice = settled(once.articulation.pose);
    double widest = 0;
    for (std::size_t i = 0; i < static_cast<std::size_t>(Handle::footNear); ++i) {
      const auto handle = static_cast<Handle>(i);
      const Vec3 before = placeOf(once.body, handle) - once.body.pelvis();
      widest = std::max(widest, length(placeOf(twice.body, handle) - twice.body.pelvis() - before));
    }
    EXPECT_LT(widest, 0.02) << entry.label;
  }
}

} // namespace
} // namespace matwright
