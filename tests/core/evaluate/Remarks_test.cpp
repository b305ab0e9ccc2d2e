#include "core/evaluate/Evaluation.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

std::vector<Remark> remarksOn(const ClassPlan& plan) {
  return evaluate(smallKnowledge(), plan, {}, day(2026, 6, 1)).remarks;
}

std::vector<Remark> of(RemarkKind kind, const ClassPlan& plan) {
  std::vector<Remark> found;
  for (Remark& each : remarksOn(plan))
    if (each.kind == kind)
      found.push_back(std::move(each));
  return found;
}

ClassPlan lasting(Seconds target, std::vector<Step> steps) {
  ClassPlan plan = classOf(std::move(steps));
  plan.target = target;
  return plan;
}

// A curl of n repetitions takes 4 + 6 n seconds.
ClassPlan curlsFor(int repetitions, Seconds target) { return lasting(target, {dosed(step(1, "curl"), repetitions)}); }

TEST(Remarks, OverTargetBeginsAfterFifteenSeconds) {
  EXPECT_THAT(of(RemarkKind::overTarget, curlsFor(50, Seconds(304 - 15))), IsEmpty());
  const auto over = of(RemarkKind::overTarget, curlsFor(50, Seconds(304 - 16)));
  EXPECT_THAT(over, ElementsAre(Remark{RemarkKind::overTarget, {}, 0, {}, Seconds(304), Seconds(288)}));
}

TEST(Remarks, UnderTargetBeginsBelowNineTenths) {
  EXPECT_THAT(of(RemarkKind::underTarget, curlsFor(61, Seconds(370 / 0.9 - 0.01))), IsEmpty());
  const auto under = of(RemarkKind::underTarget, curlsFor(61, Seconds(420)));
  EXPECT_THAT(under, ElementsAre(Remark{RemarkKind::underTarget, {}, 0, {}, Seconds(370), Seconds(420)}));
}

TEST(Remarks, EmptySectionsAreNamed) {
  ClassPlan plan = emptyClass("Monday");
  plan.sections[1].steps = {step(1, "curl")};
  const auto empty = of(RemarkKind::emptySection, plan);
  ASSERT_EQ(empty.size(), 3u);
  EXPECT_EQ(empty[0].section, 0u);
  EXPECT_EQ(empty[1].section, 2u);
  EXPECT_EQ(empty[2].section, 3u);
}

// Common practice, no source: more than three minutes of bending and more than four times as much as of arching.
TEST(Remarks, MuchBendingWithLittleArchingIsSaid) {
  const auto bends = [](int curls, int arches) {
    std::vector<Step> steps{dosed(step(1, "curl"), curls)};
    if (arches > 0)
      steps.push_back(dosed(step(2, "arch"), arches));
    return of(RemarkKind::bendWithoutArch, classOf(steps));
  };
  EXPECT_THAT(bends(30, 0), IsEmpty()); // three minutes, not more
  EXPECT_THAT(bends(31, 0), ElementsAre(Remark{RemarkKind::bendWithoutArch, {}, 0, {}, Seconds(186), Seconds(0)}));
  EXPECT_THAT(bends(40, 10), IsEmpty()); // four times, not more
  EXPECT_THAT(bends(41, 10), ElementsAre(Remark{RemarkKind::bendWithoutArch, {}, 0, {}, Seconds(246), Seconds(60)}));
}

TEST(Remarks, OneSideWithoutTheOtherIsUneven) {
  const auto uneven = of(RemarkKind::sidesUneven, classOf({step(1, "curl"), onlySide(step(2, "kick"), Side::right)}));
  EXPECT_THAT(uneven,
              ElementsAre(Remark{RemarkKind::sidesUneven, StepId{2}, 0, MovementId{"kick"}, Seconds(0), Seconds(30)}));
}

TEST(Remarks, AnotherStepOfTheMovementMayEvenTheSides) {
  EXPECT_THAT(of(RemarkKind::sidesUneven, classOf({onlySide(step(1, "kick"), Side::right), step(2, "curl"),
                                                   onlySide(step(3, "kick"), Side::left)})),
              IsEmpty());
}

// Common practice, no source: teachers give the second side fewer repetitions than the first.
TEST(Remarks, TheSecondSideWithFewerRepetitionsIsUneven) {
  const auto uneven = of(RemarkKind::sidesUneven, classOf({onlySide(step(1, "kick"), Side::left), step(2, "curl"),
                                                           onlySide(dosed(step(3, "kick"), 4), Side::right)}));
  ASSERT_EQ(uneven.size(), 1u);
  EXPECT_EQ(uneven[0].step, StepId{1});
  EXPECT_EQ(uneven[0].first, Seconds(30));
  EXPECT_EQ(uneven[0].second, Seconds(24));
}

TEST(Remarks, AnotherMovementDoesNotEvenTheSides) {
  EXPECT_EQ(
      of(RemarkKind::sidesUneven, classOf({dosed(step(1, "swing"), 5), onlySide(step(2, "kick"), Side::right)})).size(),
      2u);
}

TEST(Remarks, AnOddAlternatingDoseIsUnevenUnlessEvenedElsewhere) {
  EXPECT_THAT(of(RemarkKind::sidesUneven, classOf({step(1, "swing")})), IsEmpty());
  const auto uneven = of(RemarkKind::sidesUneven, classOf({step(1, "swing"), dosed(step(2, "swing"), 5)}));
  ASSERT_EQ(uneven.size(), 1u);
  EXPECT_EQ(uneven[0].step, StepId{2});
  EXPECT_EQ(uneven[0].first - uneven[0].second, Seconds(6));
}

TEST(Remarks, AnOddDoseOfQuickBeatsIsNoMatter) {
  Step quick = dosed(step(1, "swing"), 9);
  quick.tempo = tempo(0.3, {{Breath::free, 3}}); // 0.9 s a side
  EXPECT_THAT(of(RemarkKind::sidesUneven, classOf({quick})), IsEmpty());
}

TEST(Remarks, APrerequisiteThatComesLaterIsNamed) {
  const auto early = of(RemarkKind::beforePrerequisite, classOf({step(1, "roll"), step(2, "fold"), step(3, "curl")}));
  EXPECT_THAT(early, ElementsAre(Remark{RemarkKind::beforePrerequisite, StepId{1}, 0, MovementId{"curl"}, {}, {}}));
}

TEST(Remarks, APrerequisiteThatComesFirstOrNotAtAllIsNoMatter) {
  EXPECT_THAT(of(RemarkKind::beforePrerequisite, classOf({step(1, "curl"), step(2, "roll")})), IsEmpty());
  EXPECT_THAT(of(RemarkKind::beforePrerequisite, classOf({step(1, "roll")})), IsEmpty());
  EXPECT_THAT(of(RemarkKind::beforePrerequisite, classOf({step(1, "curl"), step(2, "roll"), step(3, "curl")})),
              IsEmpty());
}

TEST(Remarks, APrerequisiteIsMissedOnceHoweverOftenTheMovementComes) {
  EXPECT_EQ(of(RemarkKind::beforePrerequisite, classOf({step(1, "roll"), step(2, "roll"), step(3, "curl")})).size(),
            1u);
}

TEST(Remarks, OnTheClassComeFirstThenSectionsThenSteps) {
  ClassPlan plan = classOf({step(1, "roll"), onlySide(step(2, "kick"), Side::left), step(3, "curl")});
  plan.sections.push_back({"Empty", {}});
  std::vector<RemarkKind> kinds;
  for (const Remark& each : remarksOn(plan))
    kinds.push_back(each.kind);
  EXPECT_THAT(kinds, ElementsAre(RemarkKind::underTarget, RemarkKind::emptySection, RemarkKind::beforePrerequisite,
                                 RemarkKind::sidesUneven));
}

TEST(Remarks, AStepIsRemarkedOnInItsSection) {
  ClassPlan plan = classOf({step(1, "curl")});
  plan.sections.push_back({"Sides", {onlySide(step(2, "kick"), Side::left)}});
  EXPECT_EQ(of(RemarkKind::sidesUneven, plan).at(0).section, 1u);
}

} // namespace
} // namespace matwright::test
