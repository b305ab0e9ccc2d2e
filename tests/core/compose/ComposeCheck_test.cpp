// A good class of the real catalogue is spoilt in every way that the check looks for.
#include "core/compose/ComposeCheck.h"
#include "tests/support/RealKnowledge.h"
#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace matwright::test {
namespace {

const Date kDay = day(2026, 6, 1);
const MovementId kApart{"own-apart"}; // where no way leads

// The real knowledge, one movement at a place apart, and a rule for who is not to lie on the side.
const Knowledge& knowledge() {
  static const Knowledge made = [] {
    Knowledge more = realKnowledge();
    std::vector<Position> positions = more.transitions.positions();
    std::vector<Change> changes = more.transitions.changes();
    positions.push_back(position("own-apart", Elevation::sitting));
    more.transitions = TransitionGraph(positions, changes);
    std::vector<Movement> movements = more.catalogue.movements();
    Movement apart = *more.catalogue.find(MovementId{"breathing-ribs"});
    apart.id = kApart;
    apart.start = apart.end = PositionId{"own-apart"};
    movements.push_back(apart);
    more.catalogue = Catalogue(movements);
    more.rules.conditions.push_back(condition("own-sore-side"));
    more.rules.rules.push_back(rule("own-side", Scope::step, Level::leaveOut, {Feature::sidelie}, "own-sore-side"));
    return more;
  }();
  return made;
}

using Kinds = std::set<ComposeBreach>;

struct Composed {
  ClassWishes wishes;
  ClassPlan kept, plan;
  std::vector<Person> roster{person("ada"), person("bea", {"own-sore-side"})};

  Composed() {
    wishes.length = minutes(30);
    wishes.sections = usualSections(wishes.length);
    wishes.challenge = Challenge::middle;
    wishes.props = {Prop::ring};
    wishes.people = {PersonId{"ada"}};
    for (const char* name : {"clam", "ring-arm-press", "wall-slide", "half-roll-up", "single-leg-stretch"})
      wishes.include.emplace_back(name);
    wishes.leaveOut = {MovementId{"hundred"}};
    wishes.known = {MovementId{"knee-folds"}, MovementId{"toe-taps"}, MovementId{"standing-breathing"}};
    kept = blankClass(wishes);
    std::int64_t id = 0;
    for (const char* name : {"breathing-ribs", "imprint-release"})
      kept.sections[0].steps.push_back(stepOf(StepId{++id}, *knowledge().catalogue.find(MovementId{name})));
    kept.sections[2].steps.push_back(stepOf(StepId{++id}, *knowledge().catalogue.find(MovementId{"open-book"})));
    ComposeLimits limits;
    limits.evaluations = 60'000;
    const ComposeResult result = composed(knowledge(), wishes, roster, kDay, kept, limits).value();
    EXPECT_EQ(result.status, ComposeStatus::composed);
    plan = result.plan;
  }

  std::vector<ComposeBreachAt> breaches() const { return breachesOf(knowledge(), wishes, roster, kDay, kept, plan); }
  Kinds kinds() const {
    Kinds kinds;
    for (const ComposeBreachAt& each : breaches())
      kinds.insert(each.breach);
    return kinds;
  }
  bool isChosen(const Step& step) const { return !findStep(kept, step.id); }

  // The first chosen step that fits; there must be one.
  template <class Fits> Step& chosen(Fits fits) {
    for (Section& section : plan.sections)
      for (Step& step : section.steps)
        if (isChosen(step) && fits(step, *knowledge().catalogue.find(step.movement)))
          return step;
    ADD_FAILURE() << "the class has no such step";
    std::abort();
  }
  Step& chosen() {
    return chosen([](const Step&, const Movement&) { return true; });
  }
  Step& chosen(const char* name) {
    return chosen([&](const Step& step, const Movement&) { return step.movement == MovementId{name}; });
  }
  Step taken(StepId id) {
    const Place place = *placeOf(plan, id);
    auto& steps = plan.sections[place.section].steps;
    const Step step = steps[place.index];
    steps.erase(steps.begin() + static_cast<std::ptrdiff_t>(place.index));
    return step;
  }
  StepId nextId() const { return StepId{highestStepId(plan).value + 1}; }
};

const Composed& good() {
  static const Composed made;
  return made;
}

// The kinds that are found, but for those that come with it.
template <class Spoil> Kinds found(Spoil spoil, const Kinds& beside = {}) {
  Composed spoilt = good();
  spoil(spoilt);
  Kinds kinds = spoilt.kinds();
  for (ComposeBreach each : beside)
    kinds.erase(each);
  return kinds;
}

const Kinds kTimes{ComposeBreach::length, ComposeBreach::sections};
// What another step may have needed is gone too.
const Kinds kTimesAndNeeded{ComposeBreach::length, ComposeBreach::sections, ComposeBreach::prerequisite};

TEST(ComposeCheck, FindsNothingInAGoodClass) {
  EXPECT_EQ(good().kinds(), Kinds{});
  EXPECT_GT(countSteps(good().plan), 12U);
}

TEST(ComposeCheck, FindsAWrongLength) {
  const auto longer = [](Composed& spoilt) {
    spoilt.chosen([](const Step& step, const Movement&) { return step.dose.unit == DoseUnit::repetitions; })
        .dose.amount += 20;
  };
  const auto shorter = [](Composed& spoilt) { spoilt.taken(spoilt.chosen("wall-slide").id); };
  EXPECT_EQ(found(longer, {ComposeBreach::sections}), Kinds{ComposeBreach::length});
  EXPECT_TRUE(found(shorter).contains(ComposeBreach::length));
  // By a little more than is allowed, and by a little less.
  const Seconds length = evaluate(knowledge(), good().plan, good().roster, kDay).schedule.length;
  for (double by : {14.9, 15.1, -14.9, -15.1}) {
    const auto wishForOther = [&](Composed& spoilt) {
      spoilt.wishes.length = length + Seconds(by);
      for (WishedSection& section : spoilt.wishes.sections)
        section.length = {};
    };
    EXPECT_EQ(found(wishForOther), by * by > 15 * 15 ? Kinds{ComposeBreach::length} : Kinds{}) << by;
  }
}

TEST(ComposeCheck, FindsWrongSections) {
  const auto shifted = [](Composed& spoilt) {
    auto& from = spoilt.plan.sections[2].steps;
    const auto last = std::find_if(from.rbegin(), from.rend(), [&](const Step& step) { return spoilt.isChosen(step); });
    spoilt.plan.sections[3].steps.insert(spoilt.plan.sections[3].steps.begin(), spoilt.taken(last->id));
  };
  EXPECT_TRUE(found(shifted).contains(ComposeBreach::sections));
  EXPECT_EQ(found([](Composed& spoilt) { spoilt.plan.sections.pop_back(); }), Kinds{ComposeBreach::sections});
  EXPECT_EQ(found([](Composed& spoilt) { spoilt.wishes.sections.pop_back(); }), Kinds{ComposeBreach::sections});
  const Schedule schedule = evaluate(knowledge(), good().plan, good().roster, kDay).schedule;
  for (double by : {29.9, 30.1, -29.9, -30.1}) {
    const auto wishForOther = [&](Composed& spoilt) {
      spoilt.wishes.sections[1].length = schedule.sectionBegin[2] - schedule.sectionBegin[1] + Seconds(by);
    };
    EXPECT_EQ(found(wishForOther), by * by > 30 * 30 ? Kinds{ComposeBreach::sections} : Kinds{}) << by;
  }
}

TEST(ComposeCheck, FindsWhatIsNotIncluded) {
  EXPECT_EQ(found([](Composed& spoilt) { spoilt.taken(spoilt.chosen("single-leg-stretch").id); }, kTimesAndNeeded),
            Kinds{ComposeBreach::notIncluded});
  EXPECT_EQ(found([](Composed& spoilt) { spoilt.wishes.include.emplace_back("moonwalk"); }),
            Kinds{ComposeBreach::notIncluded});
}

TEST(ComposeCheck, FindsWhatWasToBeLeftOut) {
  Composed spoilt = good();
  const StepId id = spoilt.chosen().id;
  spoilt.wishes.leaveOut.push_back(spoilt.chosen().movement);
  EXPECT_EQ(spoilt.breaches(), (std::vector<ComposeBreachAt>{{ComposeBreach::leftOut, id}}));
  spoilt = good();
  spoilt.wishes.leaveOut.push_back(spoilt.kept.sections[0].steps[0].movement); // nothing is asked of what is kept
  EXPECT_EQ(spoilt.kinds(), Kinds{});
}

TEST(ComposeCheck, FindsWhatIsTooHard) {
  Composed spoilt = good();
  spoilt.wishes.challenge = Challenge::gentle;
  std::vector<ComposeBreachAt> expected;
  forEachStep(spoilt.plan, [&](const Step& step) {
    const Movement& movement = *knowledge().catalogue.find(step.movement);
    if (spoilt.isChosen(step) && effortOf(movement, findOption(movement, step.option)) > Effort(4))
      expected.push_back({ComposeBreach::tooHard, step.id});
  });
  EXPECT_FALSE(expected.empty()); // single leg stretch has 5
  EXPECT_EQ(spoilt.breaches(), expected);
}

TEST(ComposeCheck, FindsMissingPropsAndWalls) {
  Composed spoilt = good();
  spoilt.wishes.props = {};
  const StepId ring = spoilt.chosen("ring-arm-press").id, wall = spoilt.chosen("wall-slide").id;
  const auto has = [&](StepId id) {
    const auto all = spoilt.breaches();
    return std::find(all.begin(), all.end(), ComposeBreachAt{ComposeBreach::propMissing, id}) != all.end();
  };
  EXPECT_EQ(spoilt.kinds(), Kinds{ComposeBreach::propMissing});
  EXPECT_TRUE(has(ring));
  EXPECT_FALSE(has(wall));
  spoilt = good();
  spoilt.wishes.wall = false;
  EXPECT_EQ(spoilt.kinds(), Kinds{ComposeBreach::propMissing});
  EXPECT_TRUE(has(wall));
  EXPECT_FALSE(has(ring));
}

// half-roll-up needs head-nod-curl, and that needs head-nod and imprint-release.
TEST(ComposeCheck, FindsPrerequisitesThatAreMissingOrLate) {
  const auto without = [](Composed& spoilt) { spoilt.taken(spoilt.chosen("head-nod-curl").id); };
  EXPECT_EQ(found(without, kTimes), Kinds{ComposeBreach::prerequisite});
  EXPECT_EQ(found(
                [&](Composed& spoilt) {
                  without(spoilt);
                  spoilt.wishes.known.emplace_back("head-nod-curl");
                },
                kTimes),
            Kinds{});
  EXPECT_EQ(found(
                [&](Composed& spoilt) {
                  without(spoilt);
                  spoilt.wishes.recent = {{"Before", {MovementId{"head-nod-curl"}}}};
                },
                kTimes),
            Kinds{});
  EXPECT_EQ(found(
                [&](Composed& spoilt) {
                  without(spoilt);
                  spoilt.wishes.recent = {{"Before", {MovementId{"head-nod-curl"}}}};
                  spoilt.wishes.recentIsKnown = false;
                },
                kTimes),
            Kinds{ComposeBreach::prerequisite});
  const auto late = [](Composed& spoilt) {
    const Step step = spoilt.taken(spoilt.chosen("head-nod-curl").id);
    spoilt.plan.sections.back().steps.push_back(step);
  };
  EXPECT_EQ(found(late, kTimes), Kinds{ComposeBreach::prerequisite});
  // Even if it is known.
  EXPECT_EQ(found(
                [&](Composed& spoilt) {
                  late(spoilt);
                  spoilt.wishes.known.emplace_back("head-nod-curl");
                },
                kTimes),
            Kinds{ComposeBreach::prerequisite});
}

TEST(ComposeCheck, FindsAStepOfOneSide) {
  EXPECT_EQ(found([](Composed& spoilt) { spoilt.chosen("clam").onlySide = Side::left; }, kTimes),
            Kinds{ComposeBreach::oneSide});
}

TEST(ComposeCheck, FindsWhatIsChosenTwice) {
  Composed spoilt = good();
  Step again = spoilt.chosen("wall-slide");
  const StepId first = again.id;
  again.id = spoilt.nextId();
  const Place place = *placeOf(spoilt.plan, first);
  auto& steps = spoilt.plan.sections[place.section].steps;
  steps.insert(steps.begin() + static_cast<std::ptrdiff_t>(place.index) + 1, again);
  std::vector<StepId> ids;
  for (const ComposeBreachAt& each : spoilt.breaches())
    if (each.breach == ComposeBreach::repeated)
      ids.push_back(*each.step);
  EXPECT_EQ(ids, (std::vector<StepId>{first, again.id}));
  EXPECT_EQ(found(
                [](Composed& other) {
                  Step kept = other.kept.sections[0].steps[0];
                  kept.id = other.nextId();
                  other.plan.sections[0].steps.push_back(kept);
                },
                kTimes),
            Kinds{ComposeBreach::repeated});
}

// bea is not to lie on the side. open-book, which is kept, she had before.
TEST(ComposeCheck, FindsCautionsThatWereNotThere) {
  Composed spoilt = good();
  spoilt.plan.people = spoilt.wishes.people = {PersonId{"ada"}, PersonId{"bea"}};
  const auto breaches = spoilt.breaches();
  EXPECT_EQ(spoilt.kinds(), Kinds{ComposeBreach::caution});
  EXPECT_NE(
      std::find(breaches.begin(), breaches.end(), ComposeBreachAt{ComposeBreach::caution, spoilt.chosen("clam").id}),
      breaches.end());
  for (const ComposeBreachAt& each : breaches)
    EXPECT_FALSE(findStep(spoilt.kept, *each.step));
}

TEST(ComposeCheck, FindsAPlaceThatNoWayLeadsTo) {
  Composed spoilt = good();
  Step& step = spoilt.chosen("wall-slide");
  const StepId id = step.id;
  step = stepOf(id, *knowledge().catalogue.find(kApart));
  step.dose.amount = 4;
  std::size_t noWay = 0;
  for (const ComposeBreachAt& each : spoilt.breaches())
    noWay += each.breach == ComposeBreach::noWay;
  EXPECT_EQ(noWay, spoilt.plan.sections.back().steps.back().id == id ? 1U : 2U); // into it, and on from it
}

TEST(ComposeCheck, FindsWhatIsKeptAndChanged) {
  const Kinds changed{ComposeBreach::keptChanged};
  const auto keptStep = [](Composed& spoilt, std::int64_t id) -> Step& {
    const Place place = *placeOf(spoilt.plan, StepId{id});
    return spoilt.plan.sections[place.section].steps[place.index];
  };
  EXPECT_EQ(found([&](Composed& spoilt) { keptStep(spoilt, 1).note = "Slowly"; }), changed);
  EXPECT_EQ(found([&](Composed& spoilt) { ++keptStep(spoilt, 3).dose.amount; }, kTimes), changed);
  EXPECT_EQ(found([](Composed& spoilt) { spoilt.taken(StepId{3}); }, kTimesAndNeeded), changed);
  EXPECT_EQ(found([&](Composed& spoilt) { std::swap(keptStep(spoilt, 1), keptStep(spoilt, 2)); },
                  {ComposeBreach::prerequisite}),
            changed);
  const auto elsewhere = [](Composed& spoilt) {
    const Step step = spoilt.taken(StepId{3});
    spoilt.plan.sections[3].steps.push_back(step);
  };
  EXPECT_EQ(found(elsewhere, kTimesAndNeeded), changed);
}

TEST(ComposeCheck, FindsWhatTheCatalogueDoesNotHave) {
  const Kinds unknown{ComposeBreach::unknown};
  Kinds beside = kTimesAndNeeded;
  beside.insert(ComposeBreach::notIncluded);
  EXPECT_EQ(found([](Composed& spoilt) { spoilt.chosen("wall-slide").movement = MovementId{"moonwalk"}; }, beside),
            unknown);
  EXPECT_EQ(found([](Composed& spoilt) { spoilt.chosen().option = OptionId{"by-moonlight"}; }, kTimes), unknown);
  EXPECT_EQ(found([](Composed& spoilt) { spoilt.chosen().tempo.secondsPerCount = Seconds(0.7); }, kTimes), unknown);
  EXPECT_EQ(found([](Composed& spoilt) { spoilt.chosen().dose.amount = 0; }, kTimes), unknown);
  const auto otherUnit = [](Composed& spoilt) {
    Step& step = spoilt.chosen("clam");
    step.dose.unit = step.dose.unit == DoseUnit::seconds ? DoseUnit::repetitions : DoseUnit::seconds;
  };
  EXPECT_EQ(found(otherUnit, kTimes), unknown);
}

} // namespace
} // namespace matwright::test
