#include "tests/support/PanelFixture.h"
#include "ui/compose/Remedies.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace matwright {
namespace {

Date day() { return testing::today(); }

ClassWishes shortWishes() {
  ClassWishes wishes;
  wishes.length = minutes(15);
  wishes.sections = usualSections(wishes.length);
  wishes.recentIsKnown = false;
  return wishes;
}

ComposeResult compose(const ClassWishes& wishes) {
  ComposeLimits limits;
  limits.evaluations = 300; // what is proven needs none
  return composed(*testing::knowledge(), wishes, testing::sixPeople(), day(), blankClass(wishes), limits).value();
}

// Each obstacle that is proven goes away by each of its remedies.
void expectCured(const ClassWishes& wishes, ObstacleKind kind) {
  const ComposeResult result = compose(wishes);
  ASSERT_EQ(result.status, ComposeStatus::impossible);
  const auto at = std::find_if(result.obstacles.begin(), result.obstacles.end(),
                               [&](const Obstacle& obstacle) { return obstacle.kind == kind; });
  ASSERT_NE(at, result.obstacles.end()) << static_cast<int>(kind);
  const auto remedies = remediesFor(*at, *testing::knowledge(), testing::sixPeople(), wishes);
  ASSERT_FALSE(remedies.empty());
  for (const Remedy& remedy : remedies) {
    EXPECT_FALSE(remedy.words.isEmpty());
    ClassWishes changed = wishes;
    remedy.apply(changed);
    EXPECT_NE(changed, wishes);
    ASSERT_FALSE(faultIn(changed)) << remedy.words.toStdString();
    const ComposeResult then = compose(changed);
    EXPECT_EQ(std::find(then.obstacles.begin(), then.obstacles.end(), *at), then.obstacles.end())
        << remedy.words.toStdString();
  }
}

TEST(Remedies, MovementsThatCannotBeIncluded) {
  ClassWishes wishes = shortWishes();
  wishes.include = {MovementId{"no-such-movement"}};
  expectCured(wishes, ObstacleKind::unknownMovement);
  wishes.include = {MovementId{"swimming"}};
  wishes.leaveOut = {MovementId{"swimming"}};
  expectCured(wishes, ObstacleKind::bothWays);
  wishes.include = {MovementId{"teaser"}};
  wishes.leaveOut = {MovementId{"roll-up"}};
  expectCured(wishes, ObstacleKind::leftOut);
}

TEST(Remedies, WhatIsTooHard) {
  ClassWishes wishes = shortWishes();
  wishes.challenge = Challenge::gentle;
  const auto& movements = testing::knowledge()->catalogue.movements();
  const auto hard = std::find_if(movements.begin(), movements.end(), [](const Movement& movement) {
    return effortOf(movement, nullptr) > hardestOf(Challenge::middle) && movement.options.empty();
  });
  const auto any = hard != movements.end() ? hard : std::find_if(movements.begin(), movements.end(), [](const auto& m) {
    return effortOf(m, nullptr) > hardestOf(Challenge::gentle) &&
           std::all_of(m.options.begin(), m.options.end(),
                       [&](const Option& option) { return effortOf(m, &option) > hardestOf(Challenge::gentle); });
  });
  ASSERT_NE(any, movements.end());
  wishes.include = {any->id};
  expectCured(wishes, ObstacleKind::tooHard);
}

TEST(Remedies, WhatIsNotAtHand) {
  ClassWishes wishes = shortWishes();
  const auto& movements = testing::knowledge()->catalogue.movements();
  const auto ball = std::find_if(movements.begin(), movements.end(), [](const Movement& movement) {
    const auto needsIt = [&](const Option& option) { return propsOf(movement, &option) == PropSet{Prop::ball}; };
    return movement.props == PropSet{Prop::ball} &&
           std::all_of(movement.options.begin(), movement.options.end(), needsIt);
  });
  ASSERT_NE(ball, movements.end());
  wishes.include = {ball->id};
  expectCured(wishes, ObstacleKind::propMissing);
  const auto wall = std::find_if(movements.begin(), movements.end(), [](const Movement& movement) {
    return movement.repertoire == Repertoire::wall && movement.props.empty();
  });
  ASSERT_NE(wall, movements.end());
  wishes.wall = false;
  wishes.include = {wall->id};
  expectCured(wishes, ObstacleKind::propMissing);
}

TEST(Remedies, ALengthThatIsTooShort) {
  ClassWishes wishes = shortWishes();
  wishes.length = minutes(5);
  wishes.sections = usualSections(wishes.length);
  for (const Movement& movement : testing::knowledge()->catalogue.movements())
    if (movement.props.empty() && wishes.include.size() < 20 && effortOf(movement, nullptr) <= Effort(4) &&
        movement.prerequisites.empty())
      wishes.include.push_back(movement.id);
  expectCured(wishes, ObstacleKind::tooMuch);
}

TEST(Remedies, PeopleAreWishedAwayOnlyWhereTheyCannotCome) {
  for (std::size_t wish = 0; wish < kWordCount<Wish>; ++wish) {
    Obstacle obstacle;
    obstacle.kind = ObstacleKind::onlyWithout;
    obstacle.wish = static_cast<Wish>(wish);
    ClassWishes wishes = shortWishes();
    wishes.people = {testing::sixPeople().front().id};
    for (const Remedy& remedy : remediesFor(obstacle, *testing::knowledge(), testing::sixPeople(), wishes)) {
      ClassWishes changed = wishes;
      remedy.apply(changed);
      EXPECT_EQ(changed.people, wishes.people);
    }
  }
}

} // namespace
} // namespace matwright
