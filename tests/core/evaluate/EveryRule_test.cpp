// Each rule that comes with the program speaks when all it asks for is there, and is silent when any one thing is not.
#include "tests/core/evaluate/FittedRule.h"

#include <gtest/gtest.h>

namespace matwright::test {
namespace {

class EveryRule : public testing::Test {
protected:
  void SetUp() override {
    ASSERT_TRUE(readRealKnowledge()) << whatIsWrongWithRealKnowledge();
    ASSERT_FALSE(realKnowledge().rules.rules.empty());
  }
  template <class Check> static void forEach(Check check) {
    for (const Rule& each : fullBook().rules) {
      SCOPED_TRACE("rule " + each.id.value);
      check(Fitted(each));
    }
  }
};

TEST_F(EveryRule, SpeaksOnceWhenAllIsThere) {
  forEach([](const Fitted& fitted) {
    const auto steps = fitted.raising();
    const auto found = fitted.spoken(fitted.concerned(), steps);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].level, fitted.rule().level);
    EXPECT_EQ(found[0].person, isForSome(fitted.rule()) ? 0 : Finding::kNone);
    EXPECT_EQ(found[0].condition, fitted.condition() ? 0 : Finding::kNone);
    EXPECT_EQ(found[0].step, fitted.place(steps));
    EXPECT_EQ(found[0].earlier, fitted.rule().after ? 0 : Finding::kNone);
    EXPECT_EQ(found[0].because, fitted.isMissing() ? FeatureSet{} : fitted.enough().features);
    EXPECT_FALSE(found[0].assumed);
    EXPECT_FALSE(found[0].cleared);
    EXPECT_FALSE(found[0].instructed);
  });
}

TEST_F(EveryRule, SpeaksForEachOfItsFeaturesAlone) {
  forEach([](const Fitted& fitted) {
    fitted.rule().asks.any.forEach([&](Feature each) {
      Asked asked = fitted.enough();
      asked.features = fitted.rule().asks.all;
      asked.features.insert(each);
      EXPECT_TRUE(fitted.speaksOf(asked)) << word(each);
    });
  });
}

TEST_F(EveryRule, IsSilentWithoutItsFeatures) {
  forEach([](const Fitted& fitted) {
    const FeatureSet own = fitted.rule().asks.any | fitted.rule().asks.all;
    if (own.empty())
      return;
    Asked asked = fitted.enough();
    asked.features = {};
    EXPECT_FALSE(fitted.speaksOf(asked));
    fitted.rule().asks.all.forEach([&](Feature each) {
      asked.features = fitted.enough().features.without({each});
      EXPECT_FALSE(fitted.speaksOf(asked)) << word(each);
    });
    for (std::size_t i = 0; i < kWordCount<Feature>; ++i)
      asked.features.insert(static_cast<Feature>(i));
    asked.features = asked.features.without(own);
    EXPECT_FALSE(fitted.speaksOf(asked));
  });
}

TEST_F(EveryRule, SpeaksAtEachOfItsHeightsAndIsSilentAtAllOthers) {
  forEach([](const Fitted& fitted) {
    const EnumSet<Elevation> own = fitted.rule().asks.at;
    if (own.empty())
      return;
    Asked asked = fitted.enough();
    EnumSet<Elevation> others;
    for (std::size_t i = 0; i < kWordCount<Elevation>; ++i)
      others.insert(static_cast<Elevation>(i));
    asked.at = others.without(own);
    EXPECT_FALSE(fitted.speaksOf(asked));
    own.forEach([&](Elevation each) {
      asked.at = {each};
      EXPECT_TRUE(fitted.speaksOf(asked)) << word(each);
    });
  });
}

TEST_F(EveryRule, IsSilentBelowItsEffort) {
  forEach([](const Fitted& fitted) {
    if (fitted.rule().asks.effortFrom == 0)
      return;
    Asked asked = fitted.enough();
    asked.effort = Effort(fitted.rule().asks.effortFrom - 1);
    EXPECT_FALSE(fitted.speaksOf(asked));
    asked.effort = Effort(Effort::kHighest);
    EXPECT_TRUE(fitted.speaksOf(asked));
  });
}

TEST_F(EveryRule, IsSilentBelowItsLever) {
  forEach([](const Fitted& fitted) {
    if (fitted.rule().asks.leverFrom == 0)
      return;
    Asked asked = fitted.enough();
    asked.lever = fitted.rule().asks.leverFrom - 1;
    EXPECT_FALSE(fitted.speaksOf(asked));
    asked.lever = Demand::kMostLever;
    EXPECT_TRUE(fitted.speaksOf(asked));
  });
}

TEST_F(EveryRule, IsSilentWhereItDoesNotLook) {
  forEach([](const Fitted& fitted) {
    if ((fitted.rule().asks.any | fitted.rule().asks.all).empty())
      return;
    std::vector<StepFacts> steps = fitted.asking(fitted.enough());
    for (StepFacts& each : steps)
      std::swap(each.features, each.wayFeatures);
    EXPECT_EQ(fitted.speaks(fitted.concerned(), steps), fitted.isMissing());
  });
}

TEST_F(EveryRule, OnOrderIsSilentWithoutWhatComesBefore) {
  forEach([](const Fitted& fitted) {
    if (!fitted.rule().after)
      return;
    const Demand& demand = fitted.rule().after->demand;
    const auto speaksAfter = [&](const Asked& before) {
      return fitted.speaks(fitted.concerned(), fitted.asking(fitted.enough(), before));
    };
    EXPECT_TRUE(speaksAfter(fitted.enoughBefore()));
    EXPECT_FALSE(speaksAfter({}));
    demand.any.forEach([&](Feature each) {
      Asked before = fitted.enoughBefore();
      before.features = demand.all;
      before.features.insert(each);
      EXPECT_TRUE(speaksAfter(before)) << word(each);
    });
    demand.all.forEach([&](Feature each) {
      Asked before = fitted.enoughBefore();
      before.features.erase(each);
      EXPECT_FALSE(speaksAfter(before)) << word(each);
    });
    Asked before = fitted.enoughBefore();
    before.at = {};
    EXPECT_EQ(speaksAfter(before), demand.at.empty());
    before = fitted.enoughBefore();
    before.effort = Effort{};
    EXPECT_EQ(speaksAfter(before), demand.effortFrom == 0);
  });
}

TEST_F(EveryRule, OnOrderIsSilentTheOtherWayRoundAndWhereTheEarlierDidNotLast) {
  forEach([](const Fitted& fitted) {
    if (!fitted.rule().after)
      return;
    std::vector<StepFacts> steps = fitted.raising();
    EXPECT_FALSE(fitted.speaks(fitted.concerned(), {steps.back()}));
    EXPECT_FALSE(fitted.speaks(fitted.concerned(), {steps.back(), steps.front()}));
    if (fitted.rule().after->lasting > Seconds{}) {
      steps.front().work = fitted.rule().after->lasting;
      EXPECT_FALSE(fitted.speaks(fitted.concerned(), steps));
    }
  });
}

TEST_F(EveryRule, IsSilentForPeopleWithoutItsCondition) {
  forEach([](const Fitted& fitted) {
    if (!fitted.condition())
      return;
    const auto without = [&](std::vector<std::string> conditions) {
      Person bo = person("bo", std::move(conditions));
      bo.ageBand = fitted.fittingAge();
      return std::vector{bo};
    };
    EXPECT_FALSE(fitted.speaks(without({}), fitted.raising()));
    for (const Condition& each : fitted.book().conditions)
      if (&each != fitted.condition()) {
        EXPECT_FALSE(fitted.speaks(without({each.id.value}), fitted.raising())) << each.id.value;
      }
  });
}

TEST_F(EveryRule, IsSilentForPeopleOfOtherAgesAndOfNoneNoted) {
  forEach([](const Fitted& fitted) {
    std::vector<Person> people = fitted.concerned();
    const auto speaks = [&] { return fitted.speaks(people, fitted.raising()); };
    for (std::size_t i = 0; i < kWordCount<AgeBand>; ++i) {
      people[0].ageBand = static_cast<AgeBand>(i);
      EXPECT_EQ(speaks(), fitted.rule().ages.empty() || fitted.rule().ages.contains(static_cast<AgeBand>(i)));
    }
    people[0].ageBand.reset();
    EXPECT_EQ(speaks(), fitted.rule().ages.empty());
  });
}

TEST_F(EveryRule, IsSilentWhenAnyOneAnswerSpeaksAgainstIt) {
  forEach([](const Fitted& fitted) {
    for (const QualifierTest& test : fitted.rule().when) {
      const auto answers = missing(test, fitted.spec(test));
      EXPECT_FALSE(answers.empty()) << test.qualifier << " asks for whatever may be answered";
      for (const QualifierValue& answer : answers) {
        std::vector<Person> people = fitted.concerned();
        people[0].conditions[0].qualifiers[test.qualifier] = answer;
        EXPECT_FALSE(fitted.speaks(people, fitted.raising())) << test.qualifier;
      }
    }
  });
}

TEST_F(EveryRule, TakesAnyOneOpenAnswerAsHoldingAndSaysSoUnlessItIsASignOfAnEmergency) {
  forEach([](const Fitted& fitted) {
    for (const QualifierTest& test : fitted.rule().when) {
      std::vector<Person> people = fitted.concerned();
      people[0].conditions[0].qualifiers.erase(test.qualifier);
      const auto found = fitted.spoken(people, fitted.raising());
      if (!test.openHolds) {
        EXPECT_TRUE(found.empty()) << test.qualifier;
        continue;
      }
      ASSERT_EQ(found.size(), 1u) << test.qualifier;
      EXPECT_TRUE(found[0].assumed);
    }
  });
}

TEST_F(EveryRule, IsSilentAtItsThreshold) {
  forEach([](const Fitted& fitted) {
    if (fitted.rule().threshold) {
      EXPECT_FALSE(fitted.speaks(fitted.concerned(), fitted.asking(fitted.enough(), Measured::justNot)));
    }
  });
}

TEST_F(EveryRule, IsLoweredByAClearanceOnlyFromAskFirst) {
  forEach([](const Fitted& fitted) {
    if (!fitted.condition())
      return;
    std::vector<Person> people = fitted.concerned();
    people[0].conditions[0].clearances = {{kDay, {}, "", {}, {}, ""}};
    const auto found = fitted.spoken(people, fitted.raising());
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].cleared, fitted.rule().level == Level::askFirst);
    EXPECT_EQ(found[0].level, fitted.rule().level == Level::askFirst ? Level::watch : fitted.rule().level);
  });
}

TEST_F(EveryRule, IsSetToAnyLevelByAWrittenInstruction) {
  forEach([](const Fitted& fitted) {
    if (!fitted.condition())
      return;
    for (std::size_t i = 0; i < kWordCount<Level>; ++i) {
      std::vector<Person> people = fitted.concerned();
      people[0].conditions[0].clearances = {{kDay, {}, "", {}, static_cast<Level>(i), ""}};
      const auto found = fitted.spoken(people, fitted.raising());
      ASSERT_EQ(found.size(), 1u);
      EXPECT_TRUE(found[0].instructed);
      EXPECT_EQ(found[0].level, static_cast<Level>(i));
    }
  });
}

} // namespace
} // namespace matwright::test
