// What is said of chosen steps, over the small catalogue.
#include "core/compose/ComposeReasons.h"
#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

const Date kDay = day(2026, 6, 1);

struct Reasoned : testing::Test {
  std::vector<Movement> movements = smallMovements();
  RuleBook book;
  ClassWishes wishes;
  ClassPlan plan = classOf({step(1, "curl"), step(2, "curl", "low"), step(3, "arch"), step(4, "swing")});
  std::vector<Person> roster;
  Knowledge knowledge; // what the rules of reasons point into

  Reasoned() {
    wishes.arc = {{0, 10}};
    wishes.challenge = Challenge::strong;
    wishes.props = {Prop::ring, Prop::band, Prop::ball, Prop::roller, Prop::weights, Prop::chair, Prop::cushion};
  }
  Movement& named(const char* id) {
    return *std::find_if(movements.begin(), movements.end(), [&](const Movement& each) { return each.id.value == id; });
  }
  std::vector<ComposeReason> of(std::int64_t id) {
    knowledge = smallKnowledge(book);
    knowledge.catalogue = Catalogue(movements);
    for (const Person& each : roster)
      if (plan.people.size() < roster.size())
        plan.people.push_back(each.id);
    const StepId step{id};
    const auto all = reasonsFor(knowledge, wishes, roster, kDay, plan, {&step, 1});
    EXPECT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0].step, step);
    return all[0].reasons;
  }
  const ComposeReason* find(std::int64_t id, ComposeReasonKind kind) {
    found_ = of(id);
    const auto at =
        std::find_if(found_.begin(), found_.end(), [&](const ComposeReason& each) { return each.kind == kind; });
    return at == found_.end() ? nullptr : &*at;
  }
  bool has(std::int64_t id, ComposeReasonKind kind) { return find(id, kind) != nullptr; }

private:
  std::vector<ComposeReason> found_;
};

TEST_F(Reasoned, WhatIsWishedForIsSaidFirst) {
  EXPECT_FALSE(has(4, ComposeReasonKind::included));
  wishes.include = {MovementId{"swing"}};
  EXPECT_EQ(of(4).front().kind, ComposeReasonKind::included);
}

TEST_F(Reasoned, WhatALaterMovementNeedsUnlessTheGroupKnowsIt) {
  named("swing").prerequisites = {MovementId{"arch"}};
  const ComposeReason* reason = find(3, ComposeReasonKind::neededFor);
  ASSERT_TRUE(reason);
  EXPECT_EQ(reason->movement, MovementId{"swing"});
  wishes.recent = {{"Last", {MovementId{"arch"}}}};
  EXPECT_FALSE(has(3, ComposeReasonKind::neededFor));
  wishes.recentIsKnown = false;
  EXPECT_TRUE(has(3, ComposeReasonKind::neededFor));
  wishes.known = {MovementId{"arch"}};
  EXPECT_FALSE(has(3, ComposeReasonKind::neededFor));
  wishes.known.clear();
  std::swap(plan.sections[0].steps[2], plan.sections[0].steps[3]); // it comes too late to be needed
  EXPECT_FALSE(has(3, ComposeReasonKind::neededFor));
}

TEST_F(Reasoned, EveryPartOfTheFocusThatItGivesTimeTo) {
  wishes.focus = {{Region::abdominals, Region::neck, Region::hips}, {SpineAction::flexion}, {Feature::neckLift}};
  const auto reasons = of(1);
  const auto counted = std::count_if(reasons.begin(), reasons.end(),
                                     [](const ComposeReason& each) { return each.kind == ComposeReasonKind::focus; });
  EXPECT_EQ(counted, 4);
  EXPECT_EQ(reasons[0].region, Region::neck); // as in the list of regions
  EXPECT_EQ(reasons[1].region, Region::abdominals);
  EXPECT_EQ(reasons[2].spine, SpineAction::flexion);
  EXPECT_EQ(reasons[3].skill, Feature::neckLift);
  // Its option takes the lift of the head away, and nothing else.
  const auto low = of(2);
  EXPECT_EQ(std::count_if(low.begin(), low.end(),
                          [](const ComposeReason& each) { return each.kind == ComposeReasonKind::focus; }),
            3);
}

TEST_F(Reasoned, AnArchAnswersTheBendRightBeforeIt) {
  const ComposeReason* reason = find(3, ComposeReasonKind::counters);
  ASSERT_TRUE(reason);
  EXPECT_EQ(reason->movement, MovementId{"curl"});
  EXPECT_FALSE(has(4, ComposeReasonKind::counters));
  plan = classOf({step(1, "curl"), step(4, "swing"), step(3, "arch")});
  EXPECT_FALSE(has(3, ComposeReasonKind::counters)) << "a single bend is over by then";
  plan = classOf({step(1, "curl"), step(2, "curl"), step(4, "swing")});
  named("curl").counters = {MovementId{"swing"}};
  EXPECT_TRUE(has(4, ComposeReasonKind::counters)) << "named as a counter-movement";
}

TEST_F(Reasoned, TheOnlyMovementOfARegion) {
  named("swing").regions = {Region::hips};
  const ComposeReason* reason = find(4, ComposeReasonKind::onlyOne);
  ASSERT_TRUE(reason);
  EXPECT_EQ(reason->region, Region::hips);
  named("arch").regions.push_back(Region::hips);
  EXPECT_FALSE(has(4, ComposeReasonKind::onlyOne));
  plan = classOf({step(1, "curl"), step(2, "curl")});
  EXPECT_TRUE(has(1, ComposeReasonKind::onlyOne)) << "twice the same movement";
}

TEST_F(Reasoned, ABeginningWhereTheStepBeforeEnds) {
  EXPECT_FALSE(has(1, ComposeReasonKind::noChange)) << "nothing comes before";
  EXPECT_TRUE(has(2, ComposeReasonKind::noChange));
  EXPECT_FALSE(has(3, ComposeReasonKind::noChange));
}

TEST_F(Reasoned, AnEffortNearToTheArcAndBelowTheHardest) {
  EXPECT_FALSE(has(4, ComposeReasonKind::asHard)); // 4 where 10 is wished for
  wishes.arc = {{0, 5}};
  EXPECT_TRUE(has(4, ComposeReasonKind::asHard));
  wishes.arc = {{0, 5.5}};
  EXPECT_FALSE(has(4, ComposeReasonKind::asHard));
  wishes.challenge = Challenge::gentle; // never more than 4
  EXPECT_TRUE(has(4, ComposeReasonKind::asHard));
}

TEST_F(Reasoned, WhatNoRecentClassHad) {
  EXPECT_FALSE(has(4, ComposeReasonKind::notRecent)) << "there was none";
  wishes.recent = {{"Last", {MovementId{"curl"}}}};
  EXPECT_TRUE(has(4, ComposeReasonKind::notRecent));
  EXPECT_FALSE(has(1, ComposeReasonKind::notRecent));
}

TEST_F(Reasoned, AnOptionSaysWhyNotAsWritten) {
  const auto saysSo = [&](ComposeReasonKind kind) { return has(2, kind); };
  for (const auto kind : {ComposeReasonKind::propMissing, ComposeReasonKind::tooHard, ComposeReasonKind::cautioned,
                          ComposeReasonKind::challenge})
    EXPECT_FALSE(saysSo(kind)) << word(kind);
  named("curl").props = {Prop::ring};
  EXPECT_FALSE(saysSo(ComposeReasonKind::propMissing));
  wishes.props.erase(Prop::ring);
  ASSERT_TRUE(saysSo(ComposeReasonKind::propMissing));
  EXPECT_EQ(find(2, ComposeReasonKind::propMissing)->prop, Prop::ring);
  named("curl").props = {};
  named("curl").repertoire = Repertoire::wall;
  EXPECT_FALSE(saysSo(ComposeReasonKind::propMissing));
  wishes.wall = false;
  ASSERT_TRUE(saysSo(ComposeReasonKind::propMissing));
  EXPECT_FALSE(find(2, ComposeReasonKind::propMissing)->prop);
  named("curl").effort = Effort(5);
  wishes.challenge = Challenge::gentle;
  EXPECT_TRUE(saysSo(ComposeReasonKind::tooHard));
  EXPECT_TRUE(saysSo(ComposeReasonKind::challenge)) << "an easier one for a gentle class";
}

TEST_F(Reasoned, AnOptionNamesTheCautionThatItSpares) {
  book.conditions = {condition("ache")};
  book.rules = {rule("r", Scope::step, Level::adapt, {Feature::neckLift}, "ache"),
                rule("strong", Scope::step, Level::askFirst, {Feature::flexLoad}, "ache")};
  roster = {person("ida", {"ache"})};
  const ComposeReason* reason = find(2, ComposeReasonKind::cautioned);
  ASSERT_TRUE(reason);
  EXPECT_EQ(reason->person, PersonId{"ida"});
  ASSERT_TRUE(reason->rule);
  EXPECT_EQ(reason->rule->id, RuleId{"strong"});
  EXPECT_FALSE(has(1, ComposeReasonKind::cautioned)) << "done as written";
}

TEST_F(Reasoned, ADoseThatIsNotTheUsualOne) {
  EXPECT_FALSE(has(1, ComposeReasonKind::timeLeft));
  EXPECT_FALSE(has(2, ComposeReasonKind::timeLeft)) << "usual for its option";
  plan.sections[0].steps[0].dose.amount += 2;
  EXPECT_TRUE(has(1, ComposeReasonKind::timeLeft));
}

TEST_F(Reasoned, SomethingIsAlwaysSaid) {
  plan = classOf({step(3, "arch"), step(4, "swing")});
  named("arch").regions = named("swing").regions = {Region::hips};
  EXPECT_EQ(of(4), (std::vector<ComposeReason>{{ComposeReasonKind::nothingElse, {}, {}, {}, {}, {}, {}, nullptr}}));
}

} // namespace
} // namespace matwright::test
