// What must be true of an import, whatever is here and whatever comes.
#include "core/knowledge/Exchange.h"
#include "tests/support/Seeds.h"
#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <random>
#include <set>

namespace matwright {
namespace {

// Two sets of few ids and few contents, so that there are clashes and twins, circles of movements, and things alike
// that name things which are not.
struct TwoTeachers {
  explicit TwoTeachers(unsigned seed) : random(seed), own(one()), incoming(one()) {}

  int below(int count) { return std::uniform_int_distribution(0, count - 1)(random); }
  std::string content() { return below(3) == 0 ? "other" : "usual"; }
  template <class Value> std::vector<Value> some(const char* stem, auto make) {
    std::vector<Value> all;
    for (const char* tail : {"", "-2", "-3", "-4"})
      if (below(2) == 0)
        all.push_back(make(std::string("own-") + stem + tail));
    std::shuffle(all.begin(), all.end(), random);
    return all;
  }
  template <class Value> auto any(const std::vector<Value>& values) {
    return values[static_cast<std::size_t>(below(static_cast<int>(values.size())))].id;
  }

  OwnKnowledge one() {
    OwnKnowledge made;
    made.conditions = some<Condition>("c", [&](const std::string& id) {
      Condition each = test::condition(id);
      each.name = content();
      return each;
    });
    made.sources = some<Source>("s", [&](const std::string& id) { return Source{{id}, content(), SourceKind::study}; });
    made.rules = some<Rule>("r", [&](const std::string& id) {
      Rule each = test::rule(id, Scope::step, Level::watch, {Feature::rise});
      each.instead = each.why = content();
      if (!made.conditions.empty() && below(3) > 0)
        each.condition = any(made.conditions);
      if (!made.sources.empty() && below(3) > 0)
        each.sources = {any(made.sources)};
      return each;
    });
    made.movements = some<Movement>("m", [&](const std::string& id) {
      Movement each = test::movement(id, "lying");
      each.name = content();
      return each;
    });
    for (Movement& each : made.movements)
      for (int i = below(3); i > 0; --i)
        each.counters.push_back(below(4) == 0 ? MovementId{"curl"} : any(made.movements));
    return made;
  }

  std::mt19937 random;
  OwnKnowledge own, incoming;
};

template <class Value> bool beginsWith(const std::vector<Value>& all, const std::vector<Value>& first) {
  return all.size() >= first.size() && std::equal(first.begin(), first.end(), all.begin());
}

template <class Value> std::set<std::string> idsOf(const std::vector<Value>& values) {
  std::set<std::string> ids;
  for (const Value& value : values)
    EXPECT_TRUE(ids.insert(value.id.value).second) << value.id.value;
  return ids;
}

// A rule with what it names in place of the ids, so that two can be compared wherever they are.
std::string unfolded(const Rule& rule, const OwnKnowledge& all) {
  std::string words = rule.why;
  for (const Condition& each : all.conditions)
    words += rule.condition == each.id ? " for " + each.name : "";
  for (const SourceId& id : rule.sources)
    for (const Source& each : all.sources)
      words += id == each.id ? " by " + each.cite : "";
  return words;
}

// A movement with what it names, and what that names, a few times over.
std::string unfolded(const Movement& movement, const OwnKnowledge& all, int deep) {
  std::string words = movement.name + "(";
  for (const MovementId& id : movement.counters) {
    const auto at =
        std::find_if(all.movements.begin(), all.movements.end(), [&](const Movement& each) { return each.id == id; });
    words += at == all.movements.end() ? id.value : deep > 0 ? unfolded(*at, all, deep - 1) : "...";
    words += ',';
  }
  return words + ")";
}

constexpr int kDeep = 5;

TEST(ExchangeProperties, NothingOfOnesOwnIsChangedAndAllThatIsNamedIsThere) {
  const Knowledge builtIn = test::smallKnowledge();
  test::forEachSeed<TwoTeachers>(1, 600, [&](TwoTeachers& two) {
    const OwnKnowledge after = merged(builtIn, two.own, two.incoming).own;
    EXPECT_TRUE(beginsWith(after.conditions, two.own.conditions));
    EXPECT_TRUE(beginsWith(after.sources, two.own.sources));
    EXPECT_TRUE(beginsWith(after.rules, two.own.rules));
    EXPECT_TRUE(beginsWith(after.movements, two.own.movements));
    const auto conditions = idsOf(after.conditions), sources = idsOf(after.sources);
    const auto movements = idsOf(after.movements);
    idsOf(after.rules);
    for (const Rule& rule : after.rules) {
      EXPECT_TRUE(!rule.condition || conditions.contains(rule.condition->value));
      for (const SourceId& id : rule.sources)
        EXPECT_TRUE(sources.contains(id.value));
    }
    for (const Movement& movement : after.movements)
      for (const MovementId& id : movement.counters)
        EXPECT_TRUE(id.value == "curl" || movements.contains(id.value)) << id.value;
  });
}

TEST(ExchangeProperties, AllThatCameIsThereAndNamesWhatItNamed) {
  const Knowledge builtIn = test::smallKnowledge();
  test::forEachSeed<TwoTeachers>(1, 600, [&](TwoTeachers& two) {
    const OwnKnowledge after = merged(builtIn, two.own, two.incoming).own;
    for (const Rule& came : two.incoming.rules)
      EXPECT_TRUE(std::any_of(after.rules.begin(), after.rules.end(), [&](const Rule& rule) {
        return unfolded(rule, after) == unfolded(came, two.incoming);
      })) << came.id.value;
    for (const Movement& came : two.incoming.movements)
      EXPECT_TRUE(std::any_of(after.movements.begin(), after.movements.end(), [&](const Movement& movement) {
        return unfolded(movement, after, kDeep) == unfolded(came, two.incoming, kDeep);
      })) << came.id.value;
  });
}

TEST(ExchangeProperties, WhatCameBeforeIsNotTakenAgain) {
  const Knowledge builtIn = test::smallKnowledge();
  test::forEachSeed<TwoTeachers>(1, 600, [&](TwoTeachers& two) {
    const Merged once = merged(builtIn, two.own, two.incoming);
    const Merged again = merged(builtIn, once.own, two.incoming);
    EXPECT_TRUE(again.taken.empty());
    EXPECT_EQ(again.own, once.own);
  });
}

} // namespace
} // namespace matwright
