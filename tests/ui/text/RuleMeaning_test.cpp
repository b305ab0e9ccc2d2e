#include "tests/support/SmallKnowledge.h"
#include "ui/text/RuleMeaning.h"

#include <gtest/gtest.h>
#include <set>

namespace matwright {
namespace {

using MeasureUnit::percent;
using MeasureUnit::seconds;
using MeasureUnit::steps;

RuleBook smallBook() {
  RuleBook book;
  book.conditions = {test::condition(
      "knee", {{"weeks", "Weeks since it began", QualifierKind::weeksSince, {}},
               {"phase", "How it is now", QualifierKind::choice, {{"acute", "Acute: new"}, {"calm", "Calm"}}}})};
  return book;
}

Rule kneelRule(Scope scope, std::optional<Threshold> threshold = {}) {
  Rule rule = test::rule("r", scope, Level::askFirst, {Feature::kneel});
  rule.threshold = threshold;
  rule.instead = "sit instead";
  return rule;
}

std::string meaning(const Rule& rule) { return meaningText(rule, smallBook()).toStdString(); }

TEST(RuleMeaning, SaysForWhomWhenAndWhatToDo) {
  Rule rule = kneelRule(Scope::step);
  EXPECT_EQ(meaning(rule), "For everybody, when a step asks for kneeling: ask first, \"sit instead\".");
  rule.condition = ConditionId{"knee"};
  rule.ages = {AgeBand::from65, AgeBand::from80};
  rule.when = {{"weeks", 6, 12, {}, {}, true}};
  rule.instead.clear();
  EXPECT_EQ(meaning(rule),
            "For people aged 65 to 79 or 80 and over with \"knee\" (weeks 6 to 11), when a step asks for "
            "kneeling: ask first.");
}

TEST(RuleMeaning, SaysWhatIsNotChosenYet) {
  Rule rule = kneelRule(Scope::total);
  rule.asks = {};
  const std::string words = meaning(rule);
  EXPECT_NE(words.find("(nothing chosen yet)"), std::string::npos) << words;
  EXPECT_NE(words.find("(no amount yet)"), std::string::npos) << words;
}

TEST(RuleMeaning, SaysOfEachScopeWhereItLooks) {
  const auto has = [](const Rule& rule, const std::string& words) {
    const std::string all = meaning(rule);
    EXPECT_NE(all.find(words), std::string::npos) << all;
  };
  has(kneelRule(Scope::step, Threshold{30, seconds}), "asks for kneeling, for longer than 0:30 on one side");
  has(kneelRule(Scope::way), "when getting into a step, or changing sides, asks for kneeling");
  has(kneelRule(Scope::total, Threshold{90, seconds}), "once kneeling adds up to more than 1:30 over the class");
  has(kneelRule(Scope::total, Threshold{4, steps}), "once more than 4 steps of a class ask for kneeling");
  has(kneelRule(Scope::stretch, Threshold{90, seconds}), "once kneeling goes on for more than 1:30 in a row");
  has(kneelRule(Scope::early, Threshold{20, percent}),
      "when a step within the first 20 % of a class asks for kneeling");
  has(kneelRule(Scope::late, Threshold{300, seconds}), "into the last 5:00 of a class and asks for kneeling");
  has(kneelRule(Scope::missing), "when no step of a class asks for kneeling");
  has(kneelRule(Scope::wholeClass), "whatever the class holds");
}

TEST(RuleMeaning, SaysWhatCameBefore) {
  Rule rule = kneelRule(Scope::order, Threshold{1, steps});
  rule.after = Earlier{};
  rule.after->demand.any = {Feature::balance};
  rule.after->lasting = Seconds(60);
  EXPECT_NE(meaning(rule).find("asks for kneeling comes right after one that asks for balance (for more than 1:00)"),
            std::string::npos)
      << meaning(rule);
  rule.threshold = Threshold{45, seconds};
  EXPECT_NE(meaning(rule).find("comes less than 0:45 after one that asks for balance"), std::string::npos)
      << meaning(rule);
}

TEST(RuleMeaning, EachScopeAndKindOfAnswerIsExplainedInItsOwnWords) {
  std::set<QString> all;
  for (std::size_t i = 0; i < kWordCount<Scope>; ++i)
    all.insert(explanationOf(static_cast<Scope>(i)));
  for (std::size_t i = 0; i < kWordCount<QualifierKind>; ++i)
    all.insert(explanationOf(static_cast<QualifierKind>(i)));
  EXPECT_EQ(all.size(), kWordCount<Scope> + kWordCount<QualifierKind>);
  EXPECT_FALSE(all.contains(QString()));
}

} // namespace
} // namespace matwright
