// Each rule that comes with the program speaks when all it asks for is there, and is silent when any one thing is not.
#include "core/screening/Screening.h"
#include "tests/support/RealKnowledge.h"
#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

const Date kDay = day(2026, 6, 1);

QualifierValue dateOfWeek(QualifierKind kind, int week) {
  return kind == QualifierKind::weeksSince ? daysAfter(kDay, -7 * week) : daysAfter(kDay, 7 * (40 - week));
}

QualifierValue satisfying(const QualifierTest& test, const QualifierSpec& spec) {
  switch (spec.kind) {
  case QualifierKind::weeksSince:
  case QualifierKind::pregnancyWeek:
    return dateOfWeek(spec.kind, test.from ? *test.from : *test.below - 1);
  case QualifierKind::choice:
    return test.choices.at(0);
  case QualifierKind::flag:
    break;
  }
  return test.flag.value();
}

// Answers that speak against the test; there may be several, and of a choice whose every value is asked for none.
std::vector<QualifierValue> missing(const QualifierTest& test, const QualifierSpec& spec) {
  std::vector<QualifierValue> answers;
  switch (spec.kind) {
  case QualifierKind::weeksSince:
  case QualifierKind::pregnancyWeek:
    if (test.from && *test.from > 0)
      answers.push_back(dateOfWeek(spec.kind, *test.from - 1));
    if (test.below)
      answers.push_back(dateOfWeek(spec.kind, *test.below));
    break;
  case QualifierKind::choice:
    for (const Choice& each : spec.choices)
      if (std::find(test.choices.begin(), test.choices.end(), each.id) == test.choices.end())
        answers.push_back(each.id);
    break;
  case QualifierKind::flag:
    answers.push_back(!test.flag.value());
    break;
  }
  return answers;
}

// One rule of the book, with people and steps made to fit it.
class Fitted {
public:
  explicit Fitted(const Rule& rule)
      : rule_(&rule), condition_(rule.condition ? book().findCondition(*rule.condition) : nullptr) {}

  static const RuleBook& book() { return realKnowledge().rules; }
  const Rule& rule() const { return *rule_; }
  const Condition* condition() const { return condition_; } // null: for everybody

  const QualifierSpec& spec(const QualifierTest& test) const { return *findQualifier(*condition_, test.qualifier); }

  // Somebody for whom the rule holds.
  std::vector<Person> concerned() const {
    std::vector<Person> people{person("ida")};
    if (!condition_)
      return people;
    PersonCondition held;
    held.condition = condition_->id;
    for (const QualifierTest& each : rule_->when)
      held.qualifiers[each.qualifier] = satisfying(each, spec(each));
    people[0].conditions = {held};
    return people;
  }
  // One feature of `any` and all of `all`, where the rule looks for them, for as long as it takes.
  StepFacts asking(FeatureSet features) const {
    StepFacts facts;
    (rule_->scope == Scope::way ? facts.wayFeatures : facts.features) = features;
    if (rule_->over) {
      facts.work = Seconds(rule_->over->amount + 1);
      facts.repetitions = static_cast<int>(rule_->over->amount) + 1;
    }
    return facts;
  }
  FeatureSet enough() const {
    FeatureSet features = rule_->all;
    bool taken = false;
    rule_->any.forEach([&](Feature each) {
      if (!std::exchange(taken, true))
        features.insert(each);
    });
    return features;
  }
  std::vector<Finding> spoken(const std::vector<Person>& people, const StepFacts& facts) const {
    std::vector<Finding> own;
    const std::vector<StepFacts> steps{facts};
    for (const Finding& each : screen(book(), people, activeRules(book(), people, kDay), steps, kDay))
      if (&book().rules[each.rule] == rule_)
        own.push_back(each);
    return own;
  }
  bool speaks(const std::vector<Person>& people, const StepFacts& facts) const {
    return !spoken(people, facts).empty();
  }

private:
  const Rule* rule_;
  const Condition* condition_;
};

class EveryRule : public testing::Test {
protected:
  void SetUp() override {
    ASSERT_TRUE(readRealKnowledge()) << whatIsWrongWithRealKnowledge();
    ASSERT_FALSE(realKnowledge().rules.rules.empty());
  }
  template <class Check> static void forEach(Check check) {
    for (const Rule& each : realKnowledge().rules.rules) {
      SCOPED_TRACE("rule " + each.id.value);
      check(Fitted(each));
    }
  }
};

TEST_F(EveryRule, SpeaksOnceWhenAllIsThere) {
  forEach([](const Fitted& fitted) {
    const auto found = fitted.spoken(fitted.concerned(), fitted.asking(fitted.enough()));
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].level, fitted.rule().level);
    EXPECT_EQ(found[0].person, fitted.condition() ? 0 : Finding::kNone);
    EXPECT_EQ(found[0].step, fitted.rule().scope == Scope::wholeClass ? Finding::kNone : 0);
    EXPECT_EQ(found[0].because, fitted.rule().scope == Scope::wholeClass ? FeatureSet{} : fitted.enough());
    EXPECT_FALSE(found[0].assumed);
    EXPECT_FALSE(found[0].cleared);
  });
}

TEST_F(EveryRule, SpeaksForEachOfItsFeaturesAlone) {
  forEach([](const Fitted& fitted) {
    fitted.rule().any.forEach([&](Feature each) {
      FeatureSet features = fitted.rule().all;
      features.insert(each);
      EXPECT_TRUE(fitted.speaks(fitted.concerned(), fitted.asking(features))) << word(each);
    });
  });
}

TEST_F(EveryRule, IsSilentWithoutItsFeatures) {
  forEach([](const Fitted& fitted) {
    if (fitted.rule().scope == Scope::wholeClass)
      return;
    EXPECT_FALSE(fitted.speaks(fitted.concerned(), fitted.asking({})));
    fitted.rule().all.forEach([&](Feature each) {
      EXPECT_FALSE(fitted.speaks(fitted.concerned(), fitted.asking(fitted.enough().without({each})))) << word(each);
    });
    FeatureSet others;
    for (std::size_t i = 0; i < kWordCount<Feature>; ++i)
      others.insert(static_cast<Feature>(i));
    EXPECT_FALSE(
        fitted.speaks(fitted.concerned(), fitted.asking(others.without(fitted.rule().any | fitted.rule().all))));
  });
}

TEST_F(EveryRule, IsSilentWhereItDoesNotLook) {
  forEach([](const Fitted& fitted) {
    if (fitted.rule().scope == Scope::wholeClass)
      return;
    StepFacts facts = fitted.asking(fitted.enough());
    std::swap(facts.features, facts.wayFeatures);
    EXPECT_FALSE(fitted.speaks(fitted.concerned(), facts));
  });
}

TEST_F(EveryRule, IsSilentForPeopleWithoutItsCondition) {
  forEach([](const Fitted& fitted) {
    if (!fitted.condition())
      return;
    EXPECT_FALSE(fitted.speaks({person("bo")}, fitted.asking(fitted.enough())));
    for (const Condition& each : fitted.book().conditions)
      if (&each != fitted.condition()) {
        EXPECT_FALSE(fitted.speaks({person("bo", {each.id.value})}, fitted.asking(fitted.enough()))) << each.id.value;
      }
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
        EXPECT_FALSE(fitted.speaks(people, fitted.asking(fitted.enough()))) << test.qualifier;
      }
    }
  });
}

TEST_F(EveryRule, TakesAnyOneOpenAnswerAsHoldingAndSaysSoUnlessItIsASignOfAnEmergency) {
  forEach([](const Fitted& fitted) {
    for (const QualifierTest& test : fitted.rule().when) {
      std::vector<Person> people = fitted.concerned();
      people[0].conditions[0].qualifiers.erase(test.qualifier);
      const auto found = fitted.spoken(people, fitted.asking(fitted.enough()));
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
    if (!fitted.rule().over)
      return;
    StepFacts facts = fitted.asking(fitted.enough());
    facts.work = Seconds(fitted.rule().over->amount);
    facts.repetitions = static_cast<int>(fitted.rule().over->amount);
    EXPECT_FALSE(fitted.speaks(fitted.concerned(), facts));
  });
}

TEST_F(EveryRule, IsLoweredByAClearanceOnlyFromAskFirst) {
  forEach([](const Fitted& fitted) {
    if (!fitted.condition())
      return;
    std::vector<Person> people = fitted.concerned();
    people[0].conditions[0].clearances = {{kDay, {}, "", {}, ""}};
    const auto found = fitted.spoken(people, fitted.asking(fitted.enough()));
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].cleared, fitted.rule().level == Level::askFirst);
    EXPECT_EQ(found[0].level, fitted.rule().level == Level::askFirst ? Level::watch : fitted.rule().level);
  });
}

} // namespace
} // namespace matwright::test
