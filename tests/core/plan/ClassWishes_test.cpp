#include "core/plan/ClassWishes.h"

#include <cmath>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

TEST(EffortArc, IsStraightBetweenItsPointsAndLevelOutsideThem) {
  const EffortArc arc{{0.25, 2}, {0.5, 6}, {0.5, 4}, {0.75, 0}};
  EXPECT_DOUBLE_EQ(effortAt(arc, 0), 2);
  EXPECT_DOUBLE_EQ(effortAt(arc, 0.25), 2);
  EXPECT_DOUBLE_EQ(effortAt(arc, 0.375), 4);
  EXPECT_DOUBLE_EQ(effortAt(arc, 0.5), 4); // the later of two at one moment
  EXPECT_DOUBLE_EQ(effortAt(arc, 0.625), 2);
  EXPECT_DOUBLE_EQ(effortAt(arc, 1), 0);
  EXPECT_DOUBLE_EQ(effortAt({{0.5, 3}}, 0.1), 3);
  EXPECT_DOUBLE_EQ(effortAt({{0.5, 3}}, 0.9), 3);
}

TEST(ClassWishes, UsualSectionsAddUpToTheLength) {
  for (int length = 5; length <= 240; ++length) {
    ClassWishes wishes;
    wishes.length = minutes(length);
    wishes.sections = usualSections(wishes.length);
    ASSERT_EQ(wishes.sections.size(), 4u);
    EXPECT_FALSE(faultIn(wishes)) << length << " minutes";
    for (const WishedSection& section : wishes.sections) {
      EXPECT_GE(section.length, minutes(1)) << length << " minutes, " << section.name;
      EXPECT_DOUBLE_EQ(std::fmod(section.length.value(), 60), 0) << length << " minutes, " << section.name;
    }
  }
}

TEST(ClassWishes, EachFaultIsFound) {
  const ClassWishes sound = [] {
    ClassWishes wishes;
    wishes.sections = {{"Warm", minutes(20)}, {"Main", minutes(30)}};
    return wishes;
  }();
  EXPECT_FALSE(faultIn(sound));
  const auto spoilt = [&](auto spoil) {
    ClassWishes wishes = sound;
    spoil(wishes);
    return faultIn(wishes);
  };
  EXPECT_EQ(spoilt([](ClassWishes& w) { w.length = minutes(4); }), WishesFault::lengthOutOfRange);
  EXPECT_EQ(spoilt([](ClassWishes& w) { w.length = Seconds(NAN); }), WishesFault::lengthOutOfRange);
  EXPECT_EQ(spoilt([](ClassWishes& w) { w.sections.clear(); }), WishesFault::noSection);
  EXPECT_EQ(spoilt([](ClassWishes& w) { w.sections.assign(21, {}); }), WishesFault::noSection);
  EXPECT_EQ(spoilt([](ClassWishes& w) { w.sections[0].length = {}; }), WishesFault::sectionLengths);
  EXPECT_EQ(spoilt([](ClassWishes& w) { w.sections[0].length = minutes(21); }), WishesFault::sectionLengths);
  EXPECT_EQ(spoilt([](ClassWishes& w) { w.sections[0].length = minutes(-1); }), WishesFault::sectionLengths);
  EXPECT_EQ(spoilt([](ClassWishes& w) { w.sections[0].name.assign(121, 'a'); }), WishesFault::nameTooLong);
  EXPECT_EQ(spoilt([](ClassWishes& w) { w.pace.mobility = 0; }), WishesFault::paceOutOfRange);
  EXPECT_EQ(spoilt([](ClassWishes& w) { w.arc.clear(); }), WishesFault::arcMisshapen);
  EXPECT_EQ(spoilt([](ClassWishes& w) { w.arc = {{0.5, 3}, {0.2, 3}}; }), WishesFault::arcMisshapen);
  EXPECT_EQ(spoilt([](ClassWishes& w) { w.arc = {{0.5, 11}}; }), WishesFault::arcMisshapen);
  EXPECT_EQ(spoilt([](ClassWishes& w) { w.arc = {{NAN, 1}}; }), WishesFault::arcMisshapen);
  EXPECT_EQ(spoilt([](ClassWishes& w) { w.include.assign(201, MovementId{"roll-up"}); }), WishesFault::tooManyNamed);
}

TEST(ClassWishes, ABlankClassIsWhatTheWishesSayAndAClassGivesItsOwnWishes) {
  ClassWishes wishes;
  wishes.name = "Tuesday";
  wishes.sections = usualSections(wishes.length);
  wishes.people = {PersonId{"rosa"}};
  wishes.pace.mobility = 1.5;
  const ClassPlan blank = blankClass(wishes);
  EXPECT_EQ(blank.name, "Tuesday");
  EXPECT_EQ(blank.target, wishes.length);
  EXPECT_EQ(blank.people, wishes.people);
  EXPECT_EQ(blank.pace, wishes.pace);
  EXPECT_EQ(countSteps(blank), 0u);
  const ClassWishes own = wishesFor(blank);
  EXPECT_FALSE(faultIn(own));
  EXPECT_EQ(blankClass(own), blank);
}

TEST(ClassWishes, ARecentClassNamesEachMovementOnce) {
  ClassPlan plan = emptyClass("Monday");
  for (const char* id : {"bridge", "roll-up", "bridge"})
    plan.sections[1].steps.push_back({StepId{1}, MovementId{id}, {}, {}, {}, {}, {}});
  const RecentClass recent = recentClass(plan);
  EXPECT_EQ(recent.name, "Monday");
  EXPECT_EQ(recent.movements, (std::vector<MovementId>{MovementId{"bridge"}, MovementId{"roll-up"}}));
}

} // namespace
} // namespace matwright::test
