// What must be true of screening whatever the rules, the people and the class.
#include "core/screening/Screening.h"
#include "tests/support/RandomClass.h"
#include "tests/support/Seeds.h"
#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <map>
#include <set>
#include <tuple>

namespace matwright::test {
namespace {

const Date kDay = day(2026, 6, 1);
const std::vector<Feature> kFeatures{Feature::supine, Feature::neckLift, Feature::flexLoad, Feature::wristLoad,
                                     Feature::rise};

FeatureSet randomFeatures(Draw& draw, double chance) {
  FeatureSet features;
  for (Feature feature : kFeatures)
    if (draw.chance(chance))
      features.insert(feature);
  return features;
}

RuleBook randomBook(Draw& draw) {
  RuleBook book;
  book.conditions = {condition("one", {{"flag", "", QualifierKind::flag, {}}}),
                     condition("two", {{"weeks", "", QualifierKind::weeksSince, {}}}), condition("three")};
  for (int i = draw.from(3, 14); i > 0; --i) {
    Rule made = rule("rule-" + std::to_string(i), static_cast<Scope>(draw.below(kWordCount<Scope>)),
                     static_cast<Level>(draw.below(kWordCount<Level>)));
    if (draw.chance(0.8))
      made.condition = draw.oneOf(book.conditions).id;
    if (made.scope != Scope::wholeClass) {
      made.any = randomFeatures(draw, 0.3);
      if (draw.chance(0.2))
        made.all = {draw.oneOf(kFeatures)};
    }
    if (made.scope == Scope::total || made.scope == Scope::stretch)
      made.over = Threshold{static_cast<double>(draw.from(0, 120)), static_cast<MeasureUnit>(draw.below(2)),
                            ThresholdOrigin::ours};
    if (made.condition && made.condition->value == "one" && draw.chance(0.5))
      made.when = {{"flag", {}, {}, {}, draw.chance(0.5)}};
    if (made.condition && made.condition->value == "two" && draw.chance(0.5))
      made.when = {{"weeks", 6, 12, {}, {}}};
    book.rules.push_back(std::move(made));
  }
  return book;
}

std::vector<StepFacts> randomSteps(Draw& draw) {
  std::vector<StepFacts> steps;
  for (int i = draw.from(0, 12); i > 0; --i) {
    StepFacts facts;
    facts.features = randomFeatures(draw, 0.4);
    facts.shapeFeatures = facts.features & randomFeatures(draw, 0.4);
    facts.wayFeatures = randomFeatures(draw, 0.2);
    facts.restFeatures = facts.shapeFeatures & randomFeatures(draw, 0.7);
    facts.gap = Seconds(draw.from(0, 20));
    facts.work = Seconds(draw.from(5, 60));
    facts.repetitions = draw.from(1, 20);
    steps.push_back(facts);
  }
  return steps;
}

struct RandomScreening {
  explicit RandomScreening(unsigned seed) : draw(seed) {}
  std::vector<Finding> found(const std::vector<Person>& whom, const std::vector<StepFacts>& what) const {
    return screen(book, whom, activeRules(book, whom, kDay), what, kDay);
  }
  std::vector<Finding> found() const { return found(people, steps); }

  Draw draw;
  RuleBook book = randomBook(draw);
  std::vector<Person> people = randomPeople(draw, book, kDay, draw.from(0, 5), 2);
  std::vector<StepFacts> steps = randomSteps(draw);
};

using Told = std::tuple<std::string, std::size_t, std::size_t, std::size_t, Level, bool, bool, double>;

// Findings with people by their ids, so that lists of people in different orders can be compared.
std::multiset<Told> told(const std::vector<Finding>& findings, const std::vector<Person>& people) {
  std::multiset<Told> all;
  for (const Finding& each : findings)
    all.emplace(each.person == Finding::kNone ? "" : people[each.person].id.value, each.rule, each.condition, each.step,
                each.level, each.cleared, each.assumed, each.measured);
  return all;
}

TEST(RandomScreening, TheOrderOfPeopleChangesNothing) {
  forEachSeed<RandomScreening>(1, 150, [](RandomScreening& scene) {
    std::vector<Person> turned = scene.people;
    std::reverse(turned.begin(), turned.end());
    EXPECT_EQ(told(scene.found(turned, scene.steps), turned), told(scene.found(), scene.people));
  });
}

TEST(RandomScreening, OnePersonMoreTakesNoCautionAway) {
  forEachSeed<RandomScreening>(1, 150, [](RandomScreening& scene) {
    std::vector<Person> more = scene.people;
    more.push_back(randomPerson(scene.draw, scene.book, kDay, 3, "newcomer"));
    const auto before = told(scene.found(), scene.people);
    const auto after = told(scene.found(more, scene.steps), more);
    EXPECT_TRUE(std::includes(after.begin(), after.end(), before.begin(), before.end()));
  });
}

TEST(RandomScreening, OneConditionMoreLeavesNoStepWithAWeakerCaution) {
  forEachSeed<RandomScreening>(1, 150, [](RandomScreening& scene) {
    if (scene.people.empty())
      return;
    const auto strongest = [](const std::vector<Finding>& findings) {
      std::map<std::size_t, Level> levels;
      for (const Finding& each : findings)
        levels[each.step] = std::max(levels[each.step], each.level);
      return levels;
    };
    const auto before = strongest(scene.found());
    std::vector<Person> worse = scene.people;
    PersonCondition held;
    held.condition = scene.draw.oneOf(scene.book.conditions).id;
    worse[0].conditions.push_back(held);
    const auto after = strongest(scene.found(worse, scene.steps));
    for (const auto& [step, level] : before)
      EXPECT_GE(after.at(step), level);
  });
}

TEST(RandomScreening, AClearanceRemovesNoCautionAndLowersOnlyAskFirst) {
  forEachSeed<RandomScreening>(1, 150, [](RandomScreening& scene) {
    std::vector<Person> cleared = scene.people;
    for (Person& each : cleared)
      for (PersonCondition& held : each.conditions)
        held.clearances.push_back({kDay, {}, "", {}, ""});
    const auto before = scene.found();
    const auto after = scene.found(cleared, scene.steps);
    ASSERT_EQ(after.size(), before.size());
    const auto count = [](const std::vector<Finding>& findings, Level level) {
      return std::count_if(findings.begin(), findings.end(), [&](const Finding& each) { return each.level == level; });
    };
    EXPECT_EQ(count(after, Level::leaveOut), count(before, Level::leaveOut));
    EXPECT_EQ(count(after, Level::adapt), count(before, Level::adapt));
    for (const Finding& each : after)
      EXPECT_TRUE(each.level != Level::askFirst || each.person == Finding::kNone);
  });
}

TEST(RandomScreening, WithoutItsFeaturesARuleIsSilent) {
  forEachSeed<RandomScreening>(1, 150, [](RandomScreening& scene) {
    for (std::size_t step = 0; step < scene.steps.size(); ++step) {
      std::vector<StepFacts> bare = scene.steps;
      bare[step].features = bare[step].shapeFeatures = bare[step].restFeatures = bare[step].wayFeatures = {};
      for (const Finding& each : scene.found(scene.people, bare))
        EXPECT_NE(each.step, step) << scene.book.rules[each.rule].id.value;
    }
  });
}

TEST(RandomScreening, NoRuleSpeaksTwiceForOnePersonAndStepAndTotalsSpeakOnce) {
  forEachSeed<RandomScreening>(1, 150, [](RandomScreening& scene) {
    std::set<std::tuple<std::size_t, std::size_t, std::size_t>> seen;
    for (const Finding& each : scene.found()) {
      const bool total = scene.book.rules[each.rule].scope == Scope::total;
      EXPECT_TRUE(seen.emplace(each.person, each.rule, total ? 0 : each.step).second);
    }
  });
}

TEST(RandomScreening, EveryFindingNamesAsksOfItsRuleThatTheClassHas) {
  forEachSeed<RandomScreening>(1, 150, [](RandomScreening& scene) {
    for (const Finding& each : scene.found()) {
      const Rule& speaking = scene.book.rules[each.rule];
      EXPECT_TRUE((speaking.any | speaking.all).containsAll(each.because));
      if (speaking.scope == Scope::step) {
        EXPECT_TRUE(scene.steps.at(each.step).features.containsAll(each.because));
      }
      if (speaking.scope == Scope::way) {
        EXPECT_TRUE(scene.steps.at(each.step).wayFeatures.containsAll(each.because));
      }
      if (speaking.over) {
        EXPECT_GT(each.measured, speaking.over->amount);
      }
    }
  });
}

TEST(RandomScreening, ComesOutInTheStatedOrder) {
  forEachSeed<RandomScreening>(1, 150, [](RandomScreening& scene) {
    const auto findings = scene.found();
    EXPECT_TRUE(std::is_sorted(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
      return std::tuple(a.step + 1, -static_cast<int>(a.level), a.person + 1, a.rule) <
             std::tuple(b.step + 1, -static_cast<int>(b.level), b.person + 1, b.rule);
    }));
  });
}

} // namespace
} // namespace matwright::test
