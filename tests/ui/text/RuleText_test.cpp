// What is said of a rule apart from any class.
#include "tests/support/SmallKnowledge.h"
#include "ui/text/RuleMeaning.h"
#include "ui/text/RuleText.h"

#include <gtest/gtest.h>

namespace matwright::test {
namespace {

struct RuleSaid : testing::Test {
  Rule said = rule("r", Scope::step, Level::adapt, {Feature::flexLoad, Feature::impact});
  RuleBook book;

  void measure(Scope scope, double amount, MeasureUnit unit, ThresholdOrigin origin = ThresholdOrigin::ours) {
    said.scope = scope;
    said.threshold = Threshold{amount, unit, origin, amount};
  }
  std::string title() const { return titleText(said).toStdString(); }
  std::string look() const { return meaningText(said, book).toStdString(); }
  std::string place() const { return placeText(said).toStdString(); }
  std::string whom() const { return audienceText(said, book).toStdString(); }
  std::string tests() const { return testsText(said, book).toStdString(); }
  std::string testLine() const { return testLines(said, book).join(QLatin1Char('\n')).toStdString(); }
};

TEST_F(RuleSaid, IsCalledByWhatItAsksOrByWhatToDo) {
  EXPECT_EQ(title(), "Loaded forward bend or impact");
  said.asks = {};
  said.scope = Scope::wholeClass;
  said.instead = "stop; see a clinician today";
  EXPECT_EQ(title(), "Stop; see a clinician today");
  said.instead.clear();
  said.why = "Something is new.";
  EXPECT_EQ(title(), "Something is new.");
}

TEST_F(RuleSaid, LooksWhereItsScopeLooks) {
  said.asks.any = {Feature::impact};
  EXPECT_EQ(look(), "For everybody, when a step asks for impact: adapt, \"another way: r\".");
  EXPECT_EQ(place(), "in a step");
  measure(Scope::step, 20, MeasureUnit::seconds);
  EXPECT_EQ(look(),
            "For everybody, when a step asks for impact, for longer than 0:20 on one side: adapt, \"another way: r\".");
  EXPECT_EQ(place(), "in a step, longer than 0:20");
  measure(Scope::total, 600, MeasureUnit::seconds);
  EXPECT_EQ(look(), "For everybody, once impact adds up to more than 10:00 over the class: adapt, \"another way: r\".");
  measure(Scope::total, 4, MeasureUnit::changes);
  EXPECT_EQ(
      look(),
      "For everybody, once more than 4 changes of position of a class ask for impact: adapt, \"another way: r\".");
  measure(Scope::stretch, 2, MeasureUnit::steps);
  EXPECT_EQ(look(), "For everybody, once impact goes on for more than 2 steps in a row: adapt, \"another way: r\".");
  EXPECT_EQ(place(), "in a row without a break, more than 2 steps");
  measure(Scope::early, 300, MeasureUnit::seconds);
  EXPECT_EQ(look(),
            "For everybody, when a step within the first 5:00 of a class asks for impact: adapt, \"another way: r\".");
  measure(Scope::late, 33, MeasureUnit::percent);
  EXPECT_EQ(look(), "For everybody, when a step goes on into the last 33 % of a class and asks for impact: adapt, "
                    "\"another way: r\".");
  EXPECT_EQ(place(), "in the last 33 % of the class");
}

TEST_F(RuleSaid, NamesWhatComesBeforeInARuleOnOrder) {
  said.asks.any = {Feature::impact};
  measure(Scope::order, 1, MeasureUnit::steps);
  said.after = Earlier{{{Feature::supine}, {}, {}, 0}, Seconds(120)};
  EXPECT_EQ(look(), "For everybody, when a step that asks for impact comes right after one that asks for flat on the "
                    "back (for more than 2:00): adapt, \"another way: r\".");
  measure(Scope::order, 60, MeasureUnit::seconds);
  said.after->lasting = {};
  EXPECT_EQ(look(), "For everybody, when a step that asks for impact comes less than 1:00 after one that asks for flat "
                    "on the back: adapt, \"another way: r\".");
}

TEST_F(RuleSaid, IsForEverybodyOrForWhomItSays) {
  EXPECT_EQ(whom(), "For everybody");
  said.ages = {AgeBand::from65, AgeBand::from80};
  EXPECT_EQ(whom(), "For people aged 65 to 79 or 80 and over, whatever else is known of them");
  said.condition = ConditionId{"ache"};
  EXPECT_EQ(whom(), "For people aged 65 to 79 or 80 and over with this on file: ache"); // not in the book: its id
  book.conditions = {condition("ache")};
  book.conditions[0].name = "An ache";
  said.ages = {};
  EXPECT_EQ(whom(), "For people with this on file: An ache");
}

TEST_F(RuleSaid, SaysWhatAnOpenQualifierMeans) {
  QualifierSpec weeks{"weeks", "Date of the operation", QualifierKind::weeksSince, {}};
  QualifierSpec phase{"phase",
                      "How it is now",
                      QualifierKind::choice,
                      {{"acute", "Acute: new or just flared"}, {"settled", "Settled: calm"}}};
  QualifierSpec numb{"numb", "New numbness", QualifierKind::flag, {}};
  book.conditions = {condition("ache", {weeks, phase, numb})};
  said.condition = ConditionId{"ache"};
  said.when = {{"weeks", 6, 12, {}, {}, true}};
  EXPECT_EQ(tests(), "weeks 6 to 11");
  EXPECT_EQ(testLine(), "Date of the operation: weeks 6 to 11. Counts while nobody has filled it in, too.");
  said.when = {{"weeks", {}, 6, {}, {}, true}};
  EXPECT_EQ(tests(), "before week 6");
  said.when = {{"weeks", 12, {}, {}, {}, true}};
  EXPECT_EQ(tests(), "from week 12 on");
  said.when = {{"phase", {}, {}, {"acute", "settled"}, {}, true}};
  EXPECT_EQ(tests(), "How it is now: acute or settled");
  said.when = {{"numb", {}, {}, {}, true, false}};
  EXPECT_EQ(tests(), "New numbness");
  EXPECT_EQ(testLine(), "New numbness: yes. Counts only once somebody has said so.");
  EXPECT_EQ(qualifierText(phase).toStdString(), "How it is now: acute or settled");
  EXPECT_EQ(qualifierText(numb).toStdString(), "New numbness: yes or no");
}

TEST_F(RuleSaid, SaysWhoMayChangeItsThreshold) {
  EXPECT_TRUE(thresholdText(said).isEmpty());
  measure(Scope::total, 600, MeasureUnit::seconds);
  EXPECT_TRUE(thresholdText(said).contains(QStringLiteral("You may set yours")));
  EXPECT_TRUE(thresholdText(said).contains(QStringLiteral("The larger it is, the less often")));
  measure(Scope::late, 600, MeasureUnit::seconds);
  EXPECT_TRUE(thresholdText(said).contains(QStringLiteral("The smaller it is, the less often")));
  measure(Scope::total, 600, MeasureUnit::seconds, ThresholdOrigin::published);
  EXPECT_TRUE(thresholdText(said).contains(QStringLiteral("stays as it is")));
  said.id = {"own-r"};
  EXPECT_TRUE(thresholdText(said).contains(QStringLiteral("in the rule itself")));
}

} // namespace
} // namespace matwright::test
