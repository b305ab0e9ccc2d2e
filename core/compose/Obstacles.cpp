#include "core/compose/Obstacles.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace matwright {
namespace {

Seconds seconds(std::int64_t milliseconds) { return Seconds(static_cast<double>(milliseconds) / 1000); }

class Proofs {
public:
  Proofs(const ClassWishes& wishes, const Offer& offer)
      : wishes_(wishes), offer_(offer), problem_(offer.problem), state_(offer.movements.size(), unseen),
        least_(offer.movements.size(), 0), most_(offer.movements.size(), 0) {}

  std::vector<Obstacle> run() {
    findKept();
    measure();
    for (const MovementId& id : wishes_.include)
      include(id);
    if (obstacles_.empty())
      holdLengths();
    return std::move(obstacles_);
  }

private:
  enum State { unseen, asked, usable, unusable };

  void findKept() {
    isKept_.assign(offer_.movements.size(), 0);
    for (const std::vector<int>& section : problem_.kept)
      for (int item : section)
        isKept_[problem_.items[item].family] = 1;
  }

  // What a movement takes of the class: at the least in its shortest choice and without a way, at the most by the
  // longest way.
  void measure() {
    const std::int64_t longestWay =
        problem_.moving.empty() ? 0 : *std::max_element(problem_.moving.begin(), problem_.moving.end());
    for (int item : problem_.offered) {
      const FillItem& each = problem_.items[item];
      const std::int64_t shortest = each.cue + problem_.settle + each.work;
      std::int64_t& least = least_[each.family];
      least = least == 0 ? shortest : std::min(least, shortest);
      most_[each.family] = std::max(most_[each.family], std::max(longestWay, each.cue) + problem_.settle + each.work);
    }
  }

  void include(const MovementId& id) {
    const auto at = offer_.family.find(id);
    if (at == offer_.family.end()) {
      Obstacle obstacle;
      obstacle.kind = ObstacleKind::unknownMovement;
      obstacle.movement = id;
      obstacles_.push_back(obstacle);
    } else if (!canUse(at->second)) {
      blame(at->second, id);
    }
  }

  // Whether the family can be in the class with all that it needs.
  bool canUse(int family) {
    if (isKept_[family])
      return true;
    if (state_[family] == asked)
      return false; // needed for itself
    if (state_[family] != unseen)
      return state_[family] == usable;
    state_[family] = asked;
    bool can = !offer_.blocks[family];
    for (int needed : problem_.needed[family])
      can &= problem_.known[needed] || canUse(needed);
    state_[family] = can ? usable : unusable;
    return can;
  }

  // The first thing in the way, going back through what is needed.
  void blame(int family, const MovementId& wished) {
    std::vector<char> seen(offer_.movements.size(), 0);
    Obstacle obstacle;
    obstacle.neededFor = wished;
    while (!offer_.blocks[family] && !seen[family]) {
      seen[family] = 1;
      const auto next = std::find_if(problem_.needed[family].begin(), problem_.needed[family].end(),
                                     [&](int needed) { return !problem_.known[needed] && !canUse(needed); });
      if (next == problem_.needed[family].end())
        break;
      family = *next;
    }
    obstacle.movement = offer_.movements[family]->id;
    if (obstacle.movement == wished)
      obstacle.neededFor = {};
    obstacle.kind = ObstacleKind::circular;
    if (const auto& block = offer_.blocks[family]) {
      obstacle.kind = block->kind;
      obstacle.prop = block->prop;
      obstacle.person = block->person;
      obstacle.rule = block->rule;
    }
    obstacles_.push_back(obstacle);
  }

  // `before` is the family of what was kept before the section: its next one is cued in half even there.
  std::int64_t leastOfKept(const std::vector<int>& section, int& before) const {
    std::int64_t sum = 0;
    for (int item : section) {
      const FillItem& each = problem_.items[item];
      sum += (before == each.family ? each.cue / 2 : each.cue) + problem_.settle + each.work;
      before = each.family;
    }
    return sum;
  }

  void holdLengths() {
    std::int64_t kept = 0;
    int before = -1;
    for (std::size_t i = 0; i < problem_.sections.size(); ++i) {
      const std::int64_t least = leastOfKept(problem_.kept[i], before);
      kept += least;
      if (least > problem_.sections[i].most)
        tell(ObstacleKind::keptTooLong, least, 0, wishes_.sections[i].length, i);
    }
    // All that must be there, with what it needs.
    std::vector<char> must(offer_.movements.size(), 0);
    std::vector<int> open(problem_.included);
    std::int64_t least = kept;
    while (!open.empty()) {
      const int family = open.back();
      open.pop_back();
      if (must[family] || isKept_[family])
        continue;
      must[family] = 1;
      least += least_[family];
      for (int needed : problem_.needed[family])
        if (!problem_.known[needed])
          open.push_back(needed);
    }
    if (least > problem_.most)
      tell(ObstacleKind::tooMuch, least, 0, wishes_.length, std::nullopt);
    const std::int64_t longestWay =
        problem_.moving.empty() ? 0 : *std::max_element(problem_.moving.begin(), problem_.moving.end());
    std::int64_t most = 0;
    for (const std::vector<int>& section : problem_.kept)
      for (int item : section) {
        const FillItem& each = problem_.items[item];
        most += std::max(longestWay, each.cue) + problem_.settle + each.work;
      }
    for (std::size_t family = 0; family < most_.size(); ++family)
      if (!isKept_[family] && canUse(static_cast<int>(family)))
        most += most_[family];
    if (most < problem_.least)
      tell(ObstacleKind::tooLittle, 0, most, wishes_.length, std::nullopt);
  }

  void tell(ObstacleKind kind, std::int64_t least, std::int64_t most, Seconds wished,
            std::optional<std::size_t> section) {
    Obstacle obstacle;
    obstacle.kind = kind;
    obstacle.least = seconds(least);
    obstacle.most = seconds(most);
    obstacle.wished = wished;
    obstacle.section = section;
    obstacles_.push_back(obstacle);
  }

  const ClassWishes& wishes_;
  const Offer& offer_;
  const FillProblem& problem_;
  std::vector<State> state_;
  std::vector<char> isKept_;
  std::vector<std::int64_t> least_, most_; // by family
  std::vector<Obstacle> obstacles_;
};

} // namespace

std::vector<Obstacle> proofsAgainst(const ClassWishes& wishes, const Offer& offer) {
  return Proofs(wishes, offer).run();
}

std::vector<Obstacle> keptOut(const Knowledge& knowledge, const Group& group, const ClassPlan& blank) {
  ClassPlan empty = blank;
  for (Section& section : empty.sections)
    section.steps.clear();
  const std::vector<PersonId> people = group.ids();
  std::vector<Obstacle> obstacles;
  for (const Caution& caution : outcomeOf(knowledge, group, empty).cautions)
    if (caution.level == Level::leaveOut) {
      Obstacle& obstacle = obstacles.emplace_back();
      obstacle.kind = ObstacleKind::personKeptOut;
      obstacle.rule = caution.rule;
      if (caution.person != Finding::kNone)
        obstacle.person = people[caution.person];
    }
  return obstacles;
}

std::vector<Relaxed> relaxations(const Knowledge& knowledge, const ClassWishes& wishes) {
  std::vector<Relaxed> all;
  const auto without = [&](Wish wish) -> Relaxed& {
    Relaxed& relaxed = all.emplace_back();
    relaxed.wishes = wishes;
    relaxed.obstacle.kind = ObstacleKind::onlyWithout;
    relaxed.obstacle.wish = wish;
    return relaxed;
  };
  if (wishes.sections.size() > 1 && wishes.sections.front().length > Seconds{})
    for (WishedSection& section : without(Wish::sectionLengths).wishes.sections)
      section.length = {};
  for (const MovementId& id : wishes.include) {
    Relaxed& relaxed = without(Wish::include);
    relaxed.obstacle.movement = id;
    std::erase(relaxed.wishes.include, id);
  }
  for (Relaxed& relaxed = without(Wish::prerequisites); const Movement& movement : knowledge.catalogue.movements())
    relaxed.wishes.known.push_back(movement.id);
  if (wishes.challenge != Challenge::strong)
    without(Wish::challenge).wishes.challenge = Challenge::strong;
  if (!wishes.leaveOut.empty())
    without(Wish::leaveOut).wishes.leaveOut.clear();
  PropSet allProps;
  for (std::size_t i = 0; i < kWordCount<Prop>; ++i)
    allProps.insert(static_cast<Prop>(i));
  if (wishes.props != allProps)
    without(Wish::props).wishes.props = allProps;
  if (!wishes.wall)
    without(Wish::wall).wishes.wall = true;
  if (!wishes.people.empty())
    without(Wish::people).wishes.people.clear();
  return all;
}

} // namespace matwright
