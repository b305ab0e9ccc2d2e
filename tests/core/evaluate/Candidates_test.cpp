#include "core/evaluate/Evaluation.h"
#include "tests/support/RandomClass.h"
#include "tests/support/Seeds.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <tuple>

namespace matwright::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

const Date kDay = day(2026, 6, 1);

RuleBook book() {
  RuleBook made;
  made.conditions = {condition("ache"), condition("pang")};
  made.rules = {rule("bend", Scope::step, Level::adapt, {Feature::flexLoad}, "ache"),
                rule("hands", Scope::step, Level::leaveOut, {Feature::wristLoad}, "ache"),
                rule("back", Scope::total, Level::watch, {Feature::supine}, "ache"),
                rule("up", Scope::way, Level::askFirst, {Feature::rise}, "pang")};
  made.rules[2].threshold = Threshold{60, MeasureUnit::seconds, ThresholdOrigin::ours, 60};
  return made;
}

class CandidatesTest : public testing::Test {
protected:
  std::vector<Candidate> forPlace(std::vector<Step> steps, Place place, std::vector<PersonId> people = {}) const {
    ClassPlan plan = classOf(std::move(steps));
    plan.people = std::move(people);
    return candidatesFor(knowledge_, plan, roster_, kDay, place);
  }
  Knowledge knowledge_ = smallKnowledge(book());
  std::vector<Person> roster_{person("ida", {"ache"}), person("bo", {"pang"})};
};

const Candidate& named(const std::vector<Candidate>& candidates, const std::string& id) {
  for (const Candidate& each : candidates)
    if (each.movement->id.value == id)
      return each;
  ADD_FAILURE() << "no candidate " << id;
  return candidates.front();
}

std::vector<std::string> order(const std::vector<Candidate>& candidates) {
  std::vector<std::string> ids;
  for (const Candidate& each : candidates)
    ids.push_back(each.movement->id.value);
  return ids;
}

TEST_F(CandidatesTest, AddTheirWorkTheirGapAndWhatTheyChangeOfTheNextGap) {
  // Between a curl and a curl, both lying; the second has half a cue: 34 + 3 + 30 = 67.
  const auto candidates = forPlace({step(1, "curl"), step(2, "curl")}, {0, 1});
  // fold: lying -4-> sit, gap 6, 40 s; sit -3-> lying, gap 5 in place of 3.
  const Candidate& fold = named(candidates, "fold");
  EXPECT_EQ(fold.added, Seconds(6 + 40 + 2));
  EXPECT_EQ(fold.addedMoving, Seconds(7));
  EXPECT_EQ(fold.addedChanges, 2);
  // curl: gap 3, 30 s; the next keeps its half cue.
  EXPECT_EQ(named(candidates, "curl").added, Seconds(33));
  EXPECT_EQ(named(candidates, "curl").addedChanges, 0);
}

TEST_F(CandidatesTest, MayShortenWays) {
  // From lying to sitting people move; a roll goes there by itself.
  const auto candidates = forPlace({step(1, "curl"), step(2, "fold")}, {0, 1});
  EXPECT_EQ(named(candidates, "roll").addedChanges, -1);
  EXPECT_EQ(named(candidates, "roll").addedMoving, Seconds(-4));
}

TEST_F(CandidatesTest, AreRankedByCautionsThenChangesThenMovingThenTheCatalogue) {
  // Nobody is there: changes decide. Before a swing, standing, after a curl, lying (1 change, 10 s).
  //   swing, curl: 1 change as before (+0, +0 s)   roll ends sitting: +0 changes, 4 s less
  //   fold: to sitting, to standing: +1, +0 s      arch: to hands and knees, to standing: +1, +4 s
  //   kick: to the side, turn, to standing: +2
  EXPECT_THAT(order(forPlace({step(1, "curl"), step(2, "swing")}, {0, 1})),
              ElementsAre("roll", "curl", "swing", "fold", "arch", "kick"));
}

TEST_F(CandidatesTest, WithWeakerCautionsComeFirst) {
  // Ida: arch is left out (hands), curl and roll are adapted (bending), the rest has none.
  const auto candidates = forPlace({step(1, "fold"), step(2, "fold")}, {0, 1}, {PersonId{"ida"}});
  EXPECT_EQ(order(candidates).back(), "arch");
  EXPECT_EQ(named(candidates, "arch").strongest, Level::leaveOut);
  EXPECT_EQ(named(candidates, "roll").strongest, Level::adapt);
  EXPECT_EQ(named(candidates, "kick").strongest, std::nullopt);
  EXPECT_THAT(order(candidates), ElementsAre("fold", "swing", "kick", "roll", "curl", "arch"));
}

TEST_F(CandidatesTest, CountTheCautionsTheyBringToTheNextStep) {
  // Bo rises. To put a fold between two swings makes them sit and rise again: the fold's own way has the feature too.
  const Candidate fold = named(forPlace({step(1, "swing"), step(2, "swing")}, {0, 1}, {PersonId{"bo"}}), "fold");
  EXPECT_EQ(fold.addedCautions[static_cast<std::size_t>(Level::askFirst)], 2);
  EXPECT_EQ(fold.strongest, Level::askFirst);
}

TEST_F(CandidatesTest, ATotalThatPassesEarlierIsNotNew) {
  // 34 + 33 = 67 s on the back pass 60 already, at the second curl; with one more before they pass there too.
  const auto candidates = forPlace({step(1, "curl"), step(2, "curl")}, {0, 0}, {PersonId{"ida"}});
  const Candidate& curl = named(candidates, "curl");
  EXPECT_EQ(curl.addedCautions[static_cast<std::size_t>(Level::watch)], 0);
  EXPECT_EQ(curl.addedCautions[static_cast<std::size_t>(Level::adapt)], 1); // its own bending
}

TEST_F(CandidatesTest, ATotalThatPassesOnlyWithThemIsNew) {
  const auto candidates = forPlace({step(1, "curl")}, {0, 1}, {PersonId{"ida"}});
  EXPECT_EQ(named(candidates, "curl").addedCautions[static_cast<std::size_t>(Level::watch)], 1);
  EXPECT_EQ(named(candidates, "fold").addedCautions[static_cast<std::size_t>(Level::watch)], 0);
}

TEST_F(CandidatesTest, ThereIsOneForEachMovementAndNoneForAPlaceThatIsNotThere) {
  EXPECT_EQ(forPlace({}, {0, 0}).size(), smallMovements().size());
  EXPECT_THAT(forPlace({step(1, "curl")}, {0, 2}), IsEmpty());
  EXPECT_THAT(forPlace({step(1, "curl")}, {1, 0}), IsEmpty());
}

// Whatever is reused between candidates, each must say what evaluating the class with it says.
TEST(DrawnCandidates, AgreeWithEvaluatingTheClassWithThem) {
  forEachSeed<Draw>(1, 30, [](Draw& draw) {
    const Knowledge knowledge = smallKnowledge(book());
    const std::vector<Person> people = randomPeople(draw, knowledge.rules, kDay, draw.from(0, 4), 2);
    ClassPlan plan = randomClass(draw, knowledge.catalogue, draw.from(0, 12));
    plan.people = idsOf(people);
    const std::size_t section = draw.below(plan.sections.size());
    const Place place{section, draw.below(plan.sections[section].steps.size() + 1)};
    const Evaluation without = evaluate(knowledge, plan, people, kDay);
    const auto candidates = candidatesFor(knowledge, plan, people, kDay, place);
    ASSERT_EQ(candidates.size(), knowledge.catalogue.movements().size());
    for (const Candidate& each : candidates) {
      ClassPlan with = plan;
      auto& steps = with.sections[section].steps;
      steps.insert(steps.begin() + static_cast<std::ptrdiff_t>(place.index), stepOf(StepId{1000}, *each.movement));
      const Evaluation evaluation = evaluate(knowledge, with, people, kDay);
      EXPECT_NEAR(each.added.value(), (evaluation.schedule.length - without.schedule.length).value(), 1e-9);
      EXPECT_NEAR(each.addedMoving.value(), (evaluation.schedule.moving - without.schedule.moving).value(), 1e-9);
      EXPECT_EQ(each.addedChanges, evaluation.schedule.changes - without.schedule.changes);
      // The strongest is at least that of the new step's own cautions, and is one that is counted.
      const auto own = evaluation.strongestAt(StepId{1000});
      const bool ownRuns = own == Level::watch; // a total may only have moved here
      if (own && !ownRuns) {
        ASSERT_TRUE(each.strongest);
        EXPECT_GE(*each.strongest, *own);
      }
      for (std::size_t level = 0; level < kWordCount<Level>; ++level) {
        EXPECT_GE(each.addedCautions[level], evaluation.cautionCounts[level] - without.cautionCounts[level]);
        if (each.strongest && static_cast<std::size_t>(*each.strongest) < level) {
          EXPECT_EQ(each.addedCautions[level], 0);
        }
      }
      if (each.strongest) {
        EXPECT_GT(each.addedCautions[static_cast<std::size_t>(*each.strongest)], 0);
      }
    }
    for (std::size_t i = 1; i < candidates.size(); ++i) {
      const Candidate &a = candidates[i - 1], &b = candidates[i];
      EXPECT_LE(std::tuple(a.strongest, a.addedChanges), std::tuple(b.strongest, b.addedChanges));
    }
  });
}

} // namespace
} // namespace matwright::test
