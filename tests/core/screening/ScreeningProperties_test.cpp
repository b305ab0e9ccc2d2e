// What must be true of screening whatever the rules, the people and the class.
#include "tests/core/screening/RandomScreening.h"
#include "tests/support/Seeds.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <map>
#include <set>
#include <tuple>

namespace matwright::test {
namespace {

using Told = std::tuple<std::string, std::size_t, std::size_t, std::size_t, Level, bool, bool, bool, double>;

// Findings with people by their ids, so that lists of people in different orders can be compared.
std::multiset<Told> told(const std::vector<Finding>& findings, const std::vector<Person>& people) {
  std::multiset<Told> all;
  for (const Finding& each : findings)
    all.emplace(each.person == Finding::kNone ? "" : people[each.person].id.value, each.rule, each.condition, each.step,
                each.level, each.cleared, each.assumed, each.instructed, each.measured);
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
    more.back().ageBand = AgeBand::from65;
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
        held.clearances.push_back({kDay, {}, "", {}, {}, ""});
    const auto before = scene.found();
    const auto after = scene.found(cleared, scene.steps);
    ASSERT_EQ(after.size(), before.size());
    const auto count = [](const std::vector<Finding>& findings, Level level) {
      return std::count_if(findings.begin(), findings.end(), [&](const Finding& each) { return each.level == level; });
    };
    EXPECT_EQ(count(after, Level::leaveOut), count(before, Level::leaveOut));
    EXPECT_EQ(count(after, Level::adapt), count(before, Level::adapt));
    for (const Finding& each : after)
      EXPECT_TRUE(each.level != Level::askFirst || each.condition == Finding::kNone);
  });
}

// Up or down, but never away.
TEST(RandomScreening, AWrittenInstructionRemovesNoCautionAndSetsItsLevel) {
  forEachSeed<RandomScreening>(1, 150, [](RandomScreening& scene) {
    std::vector<Person> instructed = scene.people;
    const auto level = static_cast<Level>(scene.draw.below(kWordCount<Level>));
    for (Person& each : instructed)
      for (PersonCondition& held : each.conditions)
        held.clearances.push_back({kDay, {}, "", {}, level, ""});
    const auto after = scene.found(instructed, scene.steps);
    const auto places = [](const std::vector<Finding>& findings) {
      std::multiset<std::tuple<std::size_t, std::size_t, std::size_t>> all;
      for (const Finding& each : findings)
        all.emplace(each.person, each.rule, each.step);
      return all;
    };
    EXPECT_EQ(places(after), places(scene.found()));
    for (const Finding& each : after) {
      EXPECT_EQ(each.instructed, each.condition != Finding::kNone);
      EXPECT_EQ(each.level, each.instructed ? level : scene.book.rules[each.rule].level);
      EXPECT_FALSE(each.cleared);
    }
  });
}

TEST(RandomScreening, AnInstructionOnSomeFeaturesRemovesNoCaution) {
  forEachSeed<RandomScreening>(1, 150, [](RandomScreening& scene) {
    std::vector<Person> instructed = scene.people;
    for (Person& each : instructed)
      for (PersonCondition& held : each.conditions)
        held.clearances.push_back({kDay, {}, "", randomFeatures(scene.draw, 0.5), Level::watch, ""});
    EXPECT_EQ(scene.found(instructed, scene.steps).size(), scene.found().size());
  });
}

TEST(RandomScreening, AStepThatAsksNothingHasNoCaution) {
  forEachSeed<RandomScreening>(1, 150, [](RandomScreening& scene) {
    for (std::size_t step = 0; step < scene.steps.size(); ++step) {
      std::vector<StepFacts> bare = scene.steps;
      bare[step].features = bare[step].shapeFeatures = bare[step].restFeatures = bare[step].wayFeatures = {};
      bare[step].at = bare[step].restAt = {};
      bare[step].effort = Effort{};
      bare[step].lever = 0;
      for (const Finding& each : scene.found(scene.people, bare))
        EXPECT_NE(each.step, step) << scene.book.rules[each.rule].id.value;
    }
  });
}

TEST(RandomScreening, WithoutItsFeaturesAStepRuleIsSilentThere) {
  forEachSeed<RandomScreening>(1, 150, [](RandomScreening& scene) {
    for (const Finding& each : scene.found()) {
      if (scene.book.rules[each.rule].scope != Scope::step || each.because.empty())
        continue;
      std::vector<StepFacts> without = scene.steps;
      without[each.step].features = without[each.step].features.without(each.because);
      for (const Finding& left : scene.found(scene.people, without))
        EXPECT_FALSE(left.rule == each.rule && left.step == each.step);
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
      EXPECT_TRUE((speaking.asks.any | speaking.asks.all).containsAll(each.because));
      EXPECT_EQ(each.step == Finding::kNone, speaking.scope == Scope::wholeClass || speaking.scope == Scope::missing);
      if (each.step == Finding::kNone) {
        EXPECT_TRUE(each.because.empty());
      } else if (speaking.scope == Scope::way) {
        EXPECT_TRUE(scene.steps.at(each.step).wayFeatures.containsAll(each.because));
      } else if (speaking.scope != Scope::total && speaking.scope != Scope::stretch) {
        EXPECT_TRUE(met(speaking.asks, askedBy(scene.steps.at(each.step))));
        EXPECT_TRUE(scene.steps.at(each.step).features.containsAll(each.because));
      }
    }
  });
}

TEST(RandomScreening, WhatIsMeasuredLiesBeyondTheThreshold) {
  forEachSeed<RandomScreening>(1, 150, [](RandomScreening& scene) {
    for (const Finding& each : scene.found()) {
      const Rule& speaking = scene.book.rules[each.rule];
      if (!speaking.threshold)
        EXPECT_EQ(each.measured, 0);
      else if (speaking.scope == Scope::step || speaking.scope == Scope::total || speaking.scope == Scope::stretch)
        EXPECT_GT(each.measured, speaking.threshold->amount);
      else
        EXPECT_LT(each.measured, speaking.threshold->amount);
      EXPECT_EQ(each.earlier != Finding::kNone, speaking.scope == Scope::order);
      if (speaking.scope == Scope::order) {
        EXPECT_LT(each.earlier, each.step);
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
