#include "tests/core/knowledge/FaultLines.h"
#include "tests/support/SmallKnowledge.h"

#include <functional>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;

Condition back() {
  Condition condition =
      test::condition("back", {{"weeks", "Weeks since", QualifierKind::weeksSince, {}},
                               {"phase", "Phase", QualifierKind::choice, {{"acute", "Acute"}, {"settled", "Settled"}}},
                               {"signs", "Signs in the legs", QualifierKind::flag, {}}});
  condition.about = "The low back.";
  return condition;
}

Rule total() {
  Rule rule = test::rule("sum", Scope::total, Level::watch, {Feature::flexLoad}, "back");
  rule.threshold = Threshold{60, MeasureUnit::seconds, ThresholdOrigin::ours, 60};
  rule.why = "It adds up.";
  rule.when = {{"weeks", {}, 6, {}, {}, true}};
  return rule;
}

Rule order() {
  Rule rule = total();
  rule.scope = Scope::order;
  rule.after = Earlier{{{Feature::extEnd}, {}, {}, 0}, Seconds(30)};
  return rule;
}

Knowledge knowledge() {
  RuleBook book;
  book.conditions = {back()};
  book.sources = {{{"paper"}, "Paper", SourceKind::study}};
  book.rules = {total()};
  return test::smallKnowledge(std::move(book));
}

std::vector<std::string> linesWith(Rule rule, const std::function<void(Rule&)>& spoil) {
  spoil(rule);
  return linesOf(faultsIn(rule, knowledge()));
}

TEST(RuleFaults, AreNotInGoodRules) {
  EXPECT_THAT(linesOf(faultsIn(total(), knowledge())), IsEmpty());
  EXPECT_THAT(linesOf(faultsIn(order(), knowledge())), IsEmpty());
}

TEST(RuleFaults, OfTexts) {
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.why.clear(); }), ElementsAre("empty why"));
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.instead.clear(); }), ElementsAre("empty instead"));
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.instead = "a b c d e f g h i"; }),
              ElementsAre("too-many-words instead"));
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.contested.assign(kLongestNote + 1, 'a'); }),
              ElementsAre("too-long contested"));
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.reviewed = {}; }), ElementsAre("no-day reviewed"));
}

TEST(RuleFaults, OfReferences) {
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.condition = ConditionId{"none"}; }),
              ElementsAre("unknown condition: none"));
  EXPECT_THAT(linesWith(total(),
                        [](Rule& r) {
                          r.sources = {{"paper"}, {"tale"}, {"paper"}};
                        }),
              ElementsAre("twice sources/2", "unknown sources/1: tale"));
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.strength = Strength::evidence; }),
              ElementsAre("without-source sources"));
}

TEST(RuleFaults, OfTestsOnQualifiers) {
  const auto linesOfTest = [](const QualifierTest& test) {
    return linesWith(total(), [&](Rule& rule) { rule.when = {test}; });
  };
  EXPECT_THAT(linesOfTest({"knee", {}, 6, {}, {}, true}), ElementsAre("unknown when/0: knee"));
  EXPECT_THAT(linesOfTest({"weeks", 6, 6, {}, {}, true}), ElementsAre("out-of-range when/0: weeks"));
  EXPECT_THAT(linesOfTest({"weeks", {}, {}, {}, true, true}), ElementsAre("does-not-fit when/0: weeks"));
  EXPECT_THAT(linesOfTest({"phase", {}, {}, {"acute", "old"}, {}, true}), ElementsAre("unknown when/0: old"));
  EXPECT_THAT(linesOfTest({"phase", {}, {}, {}, {}, true}), ElementsAre("does-not-fit when/0: phase"));
  EXPECT_THAT(linesOfTest({"signs", {}, {}, {"acute"}, {}, true}), ElementsAre("does-not-fit when/0: signs"));
  EXPECT_THAT(linesOfTest({"signs", {}, {}, {}, false, true}), IsEmpty());
}

TEST(RuleFaults, OfWhatAScopeCanAskFor) {
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.asks = {}; }), ElementsAre("empty asks"));
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.asks = {{}, {}, {Elevation::standing}, 0}; }), IsEmpty());
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.asks.effortFrom = 11; }), ElementsAre("out-of-range asks"));
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.asks.leverFrom = 201; }), ElementsAre("out-of-range asks"));
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.asks = {{}, {}, {}, 0, 60}; }), IsEmpty());
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.threshold.reset(); }), ElementsAre("empty threshold"));
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.threshold->amount = -1; }), ElementsAre("out-of-range threshold"));
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.threshold->unit = MeasureUnit::percent; }),
              ElementsAre("does-not-fit threshold"));
  EXPECT_THAT(linesWith(total(), [](Rule& r) { r.after = order().after; }), ElementsAre("does-not-fit after"));
  EXPECT_THAT(linesWith(order(), [](Rule& r) { r.after.reset(); }), ElementsAre("empty after"));
  EXPECT_THAT(linesWith(order(), [](Rule& r) { r.after->demand = {}; }), ElementsAre("empty after"));
  EXPECT_THAT(linesWith(order(), [](Rule& r) { r.after->lasting = Seconds(-3); }), ElementsAre("out-of-range after"));
  const auto way = [](Rule& r) {
    r.scope = Scope::way;
    r.threshold.reset();
  };
  EXPECT_THAT(linesWith(total(), way), IsEmpty());
  EXPECT_THAT(linesWith(total(),
                        [&](Rule& r) {
                          way(r);
                          r.asks.at = {Elevation::standing};
                        }),
              ElementsAre("does-not-fit asks"));
  EXPECT_THAT(linesWith(total(),
                        [](Rule& r) {
                          r.scope = Scope::wholeClass;
                          r.threshold.reset();
                        }),
              ElementsAre("does-not-fit asks"));
}

TEST(ConditionFaults, AreInConditions) {
  const auto linesWithCondition = [](const std::function<void(Condition&)>& spoil) {
    Condition condition = back();
    spoil(condition);
    return linesOf(faultsIn(condition, knowledge()));
  };
  EXPECT_THAT(linesWithCondition([](Condition&) {}), IsEmpty());
  EXPECT_THAT(linesWithCondition([](Condition& c) { c.name.clear(); }), ElementsAre("empty name"));
  EXPECT_THAT(linesWithCondition([](Condition& c) { c.about.clear(); }), ElementsAre("empty about"));
  EXPECT_THAT(linesWithCondition([](Condition& c) { c.icd10 = {"M54", ""}; }), ElementsAre("empty icd10/1"));
  EXPECT_THAT(linesWithCondition([](Condition& c) { c.qualifiers[2].id = "weeks"; }),
              ElementsAre("twice qualifiers/2: weeks"));
  EXPECT_THAT(linesWithCondition([](Condition& c) { c.qualifiers[0].name.clear(); }),
              ElementsAre("empty qualifiers/0"));
  EXPECT_THAT(linesWithCondition([](Condition& c) { c.qualifiers[1].choices.clear(); }),
              ElementsAre("empty choices/1"));
  EXPECT_THAT(linesWithCondition([](Condition& c) {
                c.qualifiers[2].choices = {{"a", "A"}};
              }),
              ElementsAre("does-not-fit choices/2"));
  EXPECT_THAT(linesWithCondition([](Condition& c) { c.qualifiers[1].choices[1].id = "acute"; }),
              ElementsAre("twice choices/1/1: acute"));
  EXPECT_THAT(linesWithCondition([](Condition& c) { c.qualifiers[1].choices[0].name.clear(); }),
              ElementsAre("empty choices/1/0: acute"));
  const auto unasked = faultsIn(test::condition("own-new"), knowledge());
  EXPECT_THAT(linesOf(unasked), Contains("not-asked name"));
  EXPECT_TRUE(unasked.back().hint);
}

TEST(SourceFaults, AreInSources) {
  EXPECT_THAT(linesOf(faultsIn(Source{{"own-a"}, "", SourceKind::study}, knowledge())), ElementsAre("empty cite"));
  EXPECT_THAT(linesOf(faultsIn(Source{{"own-a"}, "A", SourceKind::study}, knowledge())), IsEmpty());
}

} // namespace
} // namespace matwright
