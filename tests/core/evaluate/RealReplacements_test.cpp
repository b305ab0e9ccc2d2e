// What could stand in the place of a step, over the knowledge that comes with the program, in classes drawn at random:
// each promise of core/evaluate/Swaps.h counted anew with evaluate().
#include "core/evaluate/Swaps.h"
#include "tests/support/RandomClass.h"
#include "tests/support/RealKnowledge.h"
#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <set>
#include <tuple>

namespace matwright::test {
namespace {

const Date kDay = day(2026, 6, 1);

using Key = std::tuple<std::size_t, int, std::array<int, kWordCount<Level>>, double>;

// What makes two cautions the same: a running sum has no place of its own.
auto identity(const Caution& caution) {
  const std::int64_t step = isRunning(caution) || !caution.step ? 0 : caution.step->value;
  return std::tuple(caution.kind, step, caution.rule, caution.person, caution.level);
}
using Cautions = std::multiset<decltype(identity(Caution{}))>;

Cautions cautionsIn(std::span<const Caution> all) {
  Cautions found;
  for (const Caution& each : all)
    found.insert(identity(each));
  return found;
}
Cautions without(Cautions all, const Cautions& others) {
  for (const auto& each : others)
    if (const auto at = all.find(each); at != all.end())
      all.erase(at);
  return all;
}

struct Scene {
  std::vector<Person> people;
  ClassPlan plan;
  Evaluation before;
};

Scene drawn(Draw& draw, int steps) {
  const Knowledge& knowledge = realKnowledge();
  Scene scene{randomPeople(draw, knowledge.rules, kDay, 3, 2), randomClass(draw, knowledge.catalogue, steps), {}};
  scene.plan.people = idsOf(scene.people);
  scene.before = evaluate(knowledge, scene.plan, scene.people, kDay);
  return scene;
}

std::vector<MovementId> order(const ClassPlan& plan) {
  std::vector<MovementId> all;
  forEachStep(plan, [&](const Step& step) { all.push_back(step.movement); });
  return all;
}

// By movement and prerequisite, whether the first of the movements comes after the first of its prerequisites. Nothing
// of what the class does not have.
std::map<std::pair<MovementId, MovementId>, bool> prepared(const ClassPlan& plan) {
  const std::vector<MovementId> all = order(plan);
  std::map<std::pair<MovementId, MovementId>, bool> pairs;
  for (const MovementId& id : all)
    for (const MovementId& prerequisite : realKnowledge().catalogue.find(id)->prerequisites)
      if (const auto at = std::find(all.begin(), all.end(), prerequisite); at != all.end())
        pairs[{id, prerequisite}] = at < std::find(all.begin(), all.end(), id);
  return pairs;
}

std::set<std::pair<MovementId, MovementId>> unprepared(const ClassPlan& before, const ClassPlan& after) {
  const auto was = prepared(before), is = prepared(after);
  const std::vector<MovementId> left = order(after);
  std::set<std::pair<MovementId, MovementId>> all;
  for (const auto& [pair, right] : was)
    if (right && !is.contains(pair) && std::find(left.begin(), left.end(), pair.first) != left.end())
      all.insert(pair);
  for (const auto& [pair, right] : is)
    if (const auto at = was.find(pair); !right && (at == was.end() || at->second))
      all.insert(pair);
  return all;
}

PropSet props(const ClassPlan& plan, StepId except) {
  PropSet all;
  forEachStep(plan, [&](const Step& step) {
    const Movement& movement = *realKnowledge().catalogue.find(step.movement);
    if (step.id != except)
      all |= propsOf(movement, findOption(movement, step.option));
  });
  return all;
}

// A replacement once done, counted anew.
struct Done {
  Evaluation after;
  Cautions come, gone;
  std::set<std::pair<MovementId, MovementId>> unprepared;
  double shifted = 0;
  PropSet fetched;
  Key key;
};

Done done(const Scene& scene, StepId id, const Swap& swap) {
  const Knowledge& knowledge = realKnowledge();
  ClassPlan with = scene.plan;
  const Place place = *placeOf(with, id);
  Step& step = with.sections[place.section].steps[place.index];
  const Movement& own = *knowledge.catalogue.find(step.movement);
  step = swapped(step, swap);
  Done done{evaluate(knowledge, with, scene.people, kDay), {}, {}, {}, 0, {}, {}};
  const Cautions was = cautionsIn(scene.before.cautions), is = cautionsIn(done.after.cautions);
  done.come = without(is, was);
  done.gone = without(was, is);
  done.unprepared = unprepared(scene.plan, with);
  for (std::size_t i = 0; i < kWordCount<Region>; ++i)
    done.shifted += std::abs((done.after.balance.regions[i].time - scene.before.balance.regions[i].time).value()) / 2;
  done.fetched = propsOf(*swap.movement, swap.option).without(props(scene.plan, id));
  const double like = likeness(own, *swap.movement);
  const double seconds = std::abs((done.after.schedule.length - scene.before.schedule.length).value()) +
                         (done.after.schedule.moving - scene.before.schedule.moving).value() +
                         10 * (done.after.schedule.changes - scene.before.schedule.changes) + done.shifted / 2 +
                         20 * done.fetched.size() + 100 * (1 - like);
  std::array<int, kWordCount<Level>> stays = done.after.cautionCounts;
  std::reverse(stays.begin(), stays.end());
  // Rounded, so that two ways to add the same up are one.
  done.key = {done.unprepared.size(), like >= kLike ? 0 : 10 - static_cast<int>(like * 10), stays,
              std::round(seconds * 1000) / 1000};
  return done;
}

bool isFit(const Scene& scene, StepId id, const Done& done) {
  const std::optional<Level> now = scene.before.strongestAt(id);
  return std::all_of(done.come.begin(), done.come.end(), [&](const auto& each) {
    const Level level = std::get<Level>(each);
    return level < Level::askFirst || (level == Level::askFirst && now >= Level::askFirst);
  });
}

TEST(RealReplacements, KeepWhatTheyPromiseOnceDone) {
  Draw draw(73);
  int found = 0, unprepared = 0, come = 0;
  for (int round = 0; round < 8; ++round) {
    const Scene scene = drawn(draw, 14);
    const std::vector<MovementId> has = order(scene.plan);
    for (int tries = 0; tries < 2; ++tries) {
      const StepId id{draw.from(1, 14)};
      SCOPED_TRACE("round " + std::to_string(round) + ", step " + std::to_string(id.value));
      const std::vector<Swap> swaps = replacementsFor(realKnowledge(), scene.plan, scene.people, kDay, id);
      EXPECT_EQ(swaps.size(), kMostReplacements);
      std::set<const Movement*> once;
      std::optional<Key> last;
      for (const Swap& swap : swaps) {
        SCOPED_TRACE(swap.movement->id.value);
        const Done now = done(scene, id, swap);
        EXPECT_TRUE(once.insert(swap.movement).second);
        EXPECT_EQ(std::count(has.begin(), has.end(), swap.movement->id), 0);
        EXPECT_TRUE(isFit(scene, id, now));
        EXPECT_EQ(cautionsIn(swap.come), now.come);
        EXPECT_EQ(cautionsIn(swap.gone), now.gone);
        EXPECT_EQ(swap.left, now.after.strongestAt(id));
        EXPECT_EQ(swap.unprepared.size(), now.unprepared.size());
        for (const Unprepared& each : swap.unprepared)
          EXPECT_TRUE(now.unprepared.contains({each.movement->id, each.prerequisite->id}));
        EXPECT_NEAR(swap.added.value(), (now.after.schedule.length - scene.before.schedule.length).value(), 1e-6);
        EXPECT_NEAR(swap.addedMoving.value(), (now.after.schedule.moving - scene.before.schedule.moving).value(), 1e-6);
        EXPECT_EQ(swap.addedChanges, now.after.schedule.changes - scene.before.schedule.changes);
        EXPECT_NEAR(swap.shifted.value(), now.shifted, 1e-6);
        EXPECT_EQ(swap.fetched, now.fetched);
        EXPECT_LE(last.value_or(now.key), now.key);
        last = now.key;
        ++found;
        unprepared += !swap.unprepared.empty();
        come += !swap.come.empty();
      }
    }
  }
  EXPECT_GT(found, 100) << "the draw tests nothing";
  EXPECT_GT(unprepared, 5) << "the draw tests nothing";
  EXPECT_GT(come, 5) << "the draw tests nothing";
}

// All movements in all their options, tried one by one.
TEST(RealReplacements, AreTheBestThereAre) {
  const Knowledge& knowledge = realKnowledge();
  Draw draw(74);
  for (int round = 0; round < 2; ++round) {
    const Scene scene = drawn(draw, 8);
    const std::vector<MovementId> has = order(scene.plan);
    const StepId id{draw.from(1, 8)};
    std::vector<std::pair<Key, std::string>> all;
    for (const Movement& movement : knowledge.catalogue.movements()) {
      if (std::find(has.begin(), has.end(), movement.id) != has.end())
        continue;
      std::optional<Key> best;
      const auto attempt = [&](const Option* option) {
        Swap swap;
        swap.movement = &movement;
        swap.option = option;
        const Done now = done(scene, id, swap);
        if (isFit(scene, id, now) && (!best || now.key < *best))
          best = now.key;
      };
      attempt(nullptr);
      for (const Option& option : movement.options)
        attempt(&option);
      if (best)
        all.emplace_back(*best, movement.id.value);
    }
    std::stable_sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    const std::vector<Swap> swaps = replacementsFor(knowledge, scene.plan, scene.people, kDay, id);
    ASSERT_EQ(swaps.size(), std::min(kMostReplacements, all.size()));
    for (std::size_t i = 0; i < swaps.size(); ++i)
      EXPECT_EQ(done(scene, id, swaps[i]).key, all[i].first)
          << "round " << round << ": " << swaps[i].movement->id.value << " for " << all[i].second;
  }
}

} // namespace
} // namespace matwright::test
