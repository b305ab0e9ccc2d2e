#include "core/screening/Screening.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

const Date kDay = day(2026, 6, 1);
constexpr std::size_t kNone = Finding::kNone;

enum class Hears { no, yes, assumed };

// One rule with one test on one qualifier, and one person who gives it a value or leaves it open.
Hears hears(QualifierSpec spec, QualifierTest test, std::optional<QualifierValue> value) {
  RuleBook book;
  spec.id = test.qualifier = "asked";
  book.conditions = {condition("ache", {spec})};
  book.rules = {rule("ache-rule", Scope::step, Level::adapt, {Feature::rot}, "ache")};
  book.rules[0].when = {test};
  std::vector<Person> people{person("ida", {"ache"})};
  if (value)
    people[0].conditions[0].qualifiers["asked"] = *value;
  const auto active = activeRules(book, people, kDay);
  if (active.empty())
    return Hears::no;
  return active[0].assumed ? Hears::assumed : Hears::yes;
}

const QualifierSpec kWeeks{"", "", QualifierKind::weeksSince, {}};
const QualifierSpec kPregnancy{"", "", QualifierKind::pregnancyWeek, {}};
const QualifierSpec kFlag{"", "", QualifierKind::flag, {}};
const QualifierSpec kPhase{"", "", QualifierKind::choice, {{"acute", "Acute"}, {"settled", "Settled"}}};

QualifierTest weeks(std::optional<int> from, std::optional<int> below) { return {"", from, below, {}, {}}; }
QualifierTest among(std::vector<std::string> choices) { return {"", {}, {}, std::move(choices), {}}; }
QualifierTest flagged(bool flag) { return {"", {}, {}, {}, flag}; }

// Nobody has a sign of an emergency until somebody says so.
TEST(ActiveRules, ATestMayDemandThatItsQualifierIsFilledIn) {
  QualifierTest sign = flagged(true);
  sign.openHolds = false;
  EXPECT_EQ(hears(kFlag, sign, {}), Hears::no);
  EXPECT_EQ(hears(kFlag, sign, true), Hears::yes);
  EXPECT_EQ(hears(kFlag, sign, false), Hears::no);
}

TEST(ActiveRules, WeeksSinceAreWholeWeeks) {
  const QualifierTest early = weeks({}, 6);
  EXPECT_EQ(hears(kWeeks, early, daysAfter(kDay, -41)), Hears::yes);
  EXPECT_EQ(hears(kWeeks, early, daysAfter(kDay, -42)), Hears::no);
}

TEST(ActiveRules, FromCountsItsOwnWeekAndBelowDoesNot) {
  const QualifierTest middle = weeks(6, 12);
  EXPECT_EQ(hears(kWeeks, middle, daysAfter(kDay, -41)), Hears::no);
  EXPECT_EQ(hears(kWeeks, middle, daysAfter(kDay, -42)), Hears::yes);
  EXPECT_EQ(hears(kWeeks, middle, daysAfter(kDay, -83)), Hears::yes);
  EXPECT_EQ(hears(kWeeks, middle, daysAfter(kDay, -84)), Hears::no);
}

TEST(ActiveRules, AnEventStillToComeCountsAsItsFirstWeek) {
  EXPECT_EQ(hears(kWeeks, weeks({}, 6), daysAfter(kDay, 30)), Hears::yes);
  EXPECT_EQ(hears(kWeeks, weeks(0, 6), daysAfter(kDay, 30)), Hears::yes);
  EXPECT_EQ(hears(kWeeks, weeks(6, 12), daysAfter(kDay, 30)), Hears::no);
}

// The week is 40 less the whole weeks to go.
TEST(ActiveRules, TheWeekOfPregnancyIsCountedBackFromTheDueDate) {
  const auto inWeek = [&](int week, int daysToGo) {
    return hears(kPregnancy, weeks(week, week + 1), daysAfter(kDay, daysToGo)) == Hears::yes;
  };
  EXPECT_TRUE(inWeek(40, 0));
  EXPECT_TRUE(inWeek(40, 6));
  EXPECT_TRUE(inWeek(39, 7));
  EXPECT_TRUE(inWeek(28, 12 * 7));
  EXPECT_TRUE(inWeek(29, 12 * 7 - 1));
  EXPECT_TRUE(inWeek(16, 24 * 7 + 6));
}

TEST(ActiveRules, TheWeekOfPregnancyCountsOnAfterTheDueDate) {
  EXPECT_EQ(hears(kPregnancy, weeks(40, 41), daysAfter(kDay, -1)), Hears::yes);
  EXPECT_EQ(hears(kPregnancy, weeks(40, 41), daysAfter(kDay, -6)), Hears::yes);
  EXPECT_EQ(hears(kPregnancy, weeks(41, 42), daysAfter(kDay, -7)), Hears::yes);
  EXPECT_EQ(hears(kPregnancy, weeks(28, {}), daysAfter(kDay, -10)), Hears::yes);
}

TEST(ActiveRules, ADueDateFarAheadIsTheBeginning) {
  EXPECT_EQ(hears(kPregnancy, weeks({}, 14), daysAfter(kDay, 300)), Hears::yes);
  EXPECT_EQ(hears(kPregnancy, weeks(14, {}), daysAfter(kDay, 300)), Hears::no);
}

TEST(ActiveRules, AChoiceMustBeAmongThoseAskedFor) {
  EXPECT_EQ(hears(kPhase, among({"acute"}), "acute"), Hears::yes);
  EXPECT_EQ(hears(kPhase, among({"acute"}), "settled"), Hears::no);
  EXPECT_EQ(hears(kPhase, among({"acute", "settled"}), "settled"), Hears::yes);
}

TEST(ActiveRules, AFlagMustBeAsAskedFor) {
  EXPECT_EQ(hears(kFlag, flagged(true), true), Hears::yes);
  EXPECT_EQ(hears(kFlag, flagged(true), false), Hears::no);
  EXPECT_EQ(hears(kFlag, flagged(false), false), Hears::yes);
}

TEST(ActiveRules, AnOpenQualifierCountsAsHoldingAndSaysSo) {
  EXPECT_EQ(hears(kWeeks, weeks({}, 6), {}), Hears::assumed);
  EXPECT_EQ(hears(kPregnancy, weeks(28, {}), {}), Hears::assumed);
  EXPECT_EQ(hears(kPhase, among({"acute"}), {}), Hears::assumed);
  EXPECT_EQ(hears(kFlag, flagged(true), {}), Hears::assumed);
}

TEST(ActiveRules, AnAnswerOfTheWrongKindIsAsGoodAsNone) {
  EXPECT_EQ(hears(kWeeks, weeks({}, 6), true), Hears::assumed);
  EXPECT_EQ(hears(kWeeks, weeks({}, 6), day(2026, 2, 31)), Hears::assumed);
  EXPECT_EQ(hears(kPhase, among({"acute"}), kDay), Hears::assumed);
  EXPECT_EQ(hears(kPhase, among({"acute"}), "gone"), Hears::assumed);
  EXPECT_EQ(hears(kFlag, flagged(true), "yes"), Hears::assumed);
}

class SeveralTests : public testing::Test {
protected:
  SeveralTests() {
    book_.conditions = {
        condition("ache", {{"one", "", QualifierKind::flag, {}}, {"two", "", QualifierKind::flag, {}}})};
    book_.rules = {rule("both", Scope::step, Level::adapt, {Feature::rot}, "ache")};
    book_.rules[0].when = {{"one", {}, {}, {}, true}, {"two", {}, {}, {}, true}};
  }
  std::vector<ActiveRule> with(std::map<std::string, QualifierValue> answers) const {
    std::vector<Person> people{person("ida", {"ache"})};
    people[0].conditions[0].qualifiers = std::move(answers);
    return activeRules(book_, people, kDay);
  }
  RuleBook book_;
};

TEST_F(SeveralTests, AllMustHold) {
  EXPECT_THAT(with({{"one", true}, {"two", true}}), ElementsAre(ActiveRule{0, 0, 0, false}));
  EXPECT_THAT(with({{"one", true}, {"two", false}}), IsEmpty());
}

TEST_F(SeveralTests, OneThatSpeaksAgainstSilencesWhateverIsOpen) {
  EXPECT_THAT(with({{"two", false}}), IsEmpty());
  EXPECT_THAT(with({{"one", false}}), IsEmpty());
}

TEST_F(SeveralTests, OneOpenMakesTheWholeAssumed) {
  EXPECT_THAT(with({{"one", true}}), ElementsAre(ActiveRule{0, 0, 0, true}));
  EXPECT_THAT(with({{"two", true}}), ElementsAre(ActiveRule{0, 0, 0, true}));
  EXPECT_THAT(with({}), ElementsAre(ActiveRule{0, 0, 0, true}));
}

TEST(ActiveRules, RulesForEverybodyComeOnceWhetherOrNotSomebodyIsThere) {
  RuleBook book;
  book.rules = {rule("all", Scope::step, Level::watch, {Feature::rot})};
  EXPECT_THAT(activeRules(book, std::span<const Person>{}, kDay), ElementsAre(ActiveRule{0, kNone, kNone, false}));
  const std::vector<Person> people{person("ida"), person("bo")};
  EXPECT_THAT(activeRules(book, people, kDay), ElementsAre(ActiveRule{0, kNone, kNone, false}));
}

TEST(ActiveRules, AreOrderedByPersonThenRuleThenCondition) {
  RuleBook book;
  book.conditions = {condition("ache"), condition("pang")};
  book.rules = {rule("pang-rule", Scope::step, Level::watch, {Feature::rot}, "pang"),
                rule("all", Scope::step, Level::watch, {Feature::rot}),
                rule("ache-rule", Scope::step, Level::watch, {Feature::rot}, "ache")};
  const std::vector<Person> people{person("ida", {"ache", "pang", "ache"}), person("bo"), person("cy", {"pang"})};
  EXPECT_THAT(activeRules(book, people, kDay),
              ElementsAre(ActiveRule{1, kNone, kNone, false}, ActiveRule{0, 0, 1, false}, ActiveRule{2, 0, 0, false},
                          ActiveRule{2, 0, 2, false}, ActiveRule{0, 2, 0, false}));
}

TEST(ActiveRules, AreTheSameForPeopleGivenByPointer) {
  RuleBook book;
  book.conditions = {condition("ache")};
  book.rules = {rule("ache-rule", Scope::step, Level::watch, {Feature::rot}, "ache")};
  const std::vector<Person> people{person("ida", {"ache"}), person("bo", {"ache"})};
  const std::vector<const Person*> pointers{&people[0], &people[1]};
  EXPECT_EQ(activeRules(book, people, kDay), activeRules(book, pointers, kDay));
}

// ---- ages ----

Person aged(Person person, AgeBand band) {
  person.ageBand = band;
  return person;
}

TEST(ActiveRules, ARuleWithAgesIsForPeopleOfThoseBands) {
  RuleBook book;
  book.rules = {rule("older", Scope::step, Level::watch, {Feature::rot})};
  book.rules[0].ages = {AgeBand::from65, AgeBand::from80};
  const std::vector<Person> people{aged(person("ida"), AgeBand::from65), aged(person("bo"), AgeBand::from40),
                                   aged(person("cy", {"ache"}), AgeBand::from80)};
  EXPECT_THAT(activeRules(book, people, kDay),
              ElementsAre(ActiveRule{0, 0, kNone, false}, ActiveRule{0, 2, kNone, false}));
}

// Nobody has said so: an age is not guessed.
TEST(ActiveRules, ARuleWithAgesIsSilentWhereNobodyNotedTheAge) {
  RuleBook book;
  book.conditions = {condition("ache")};
  book.rules = {rule("older", Scope::step, Level::watch, {Feature::rot}),
                rule("older-ache", Scope::step, Level::watch, {Feature::rot}, "ache")};
  book.rules[0].ages = book.rules[1].ages = {AgeBand::from65};
  EXPECT_THAT(activeRules(book, std::vector<Person>{person("ida", {"ache"})}, kDay), IsEmpty());
  EXPECT_THAT(activeRules(book, std::span<const Person>{}, kDay), IsEmpty());
}

TEST(ActiveRules, ARuleWithAgesAndAConditionNeedsBoth) {
  RuleBook book;
  book.conditions = {condition("ache")};
  book.rules = {rule("young-ache", Scope::step, Level::watch, {Feature::rot}, "ache")};
  book.rules[0].ages = {AgeBand::under18};
  const std::vector<Person> people{aged(person("ida", {"ache"}), AgeBand::under18),
                                   aged(person("bo"), AgeBand::under18), aged(person("cy", {"ache"}), AgeBand::from18)};
  EXPECT_THAT(activeRules(book, people, kDay), ElementsAre(ActiveRule{0, 0, 0, false}));
}

// ---- ways ----

TEST(ActiveRules, WaysAvoidWhatWayRulesFromAdaptUpAskFor) {
  RuleBook book;
  book.conditions = {condition("ache")};
  book.rules = {rule("watch", Scope::way, Level::watch, {Feature::kneel}, "ache"),
                rule("adapt", Scope::way, Level::adapt, {Feature::wristLoad}, "ache"),
                rule("ask", Scope::way, Level::askFirst, {Feature::rise}, "ache"),
                rule("leave", Scope::way, Level::leaveOut, {}, "ache"),
                rule("step", Scope::step, Level::leaveOut, {Feature::prone}, "ache"),
                rule("other", Scope::way, Level::leaveOut, {Feature::neckLift}, "pang")};
  book.rules[3].asks.all = {Feature::flexLoad};
  const std::vector<Person> people{person("ida", {"ache"})};
  EXPECT_EQ(featuresToAvoidOnWays(book, activeRules(book, people, kDay)),
            (FeatureSet{Feature::wristLoad, Feature::rise, Feature::flexLoad}));
}

TEST(ActiveRules, AClearanceLetsNoWayBecomeRougher) {
  RuleBook book;
  book.conditions = {condition("ache")};
  book.rules = {rule("ask", Scope::way, Level::askFirst, {Feature::rise}, "ache")};
  std::vector<Person> people{person("ida", {"ache"})};
  people[0].conditions[0].clearances = {{kDay, {}, "", {}, {}, ""}};
  EXPECT_EQ(featuresToAvoidOnWays(book, activeRules(book, people, kDay)), FeatureSet{Feature::rise});
}

} // namespace
} // namespace matwright::test
