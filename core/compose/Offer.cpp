#include "core/compose/Offer.h"

#include "core/compose/OfferedTimes.h"
#include "core/evaluate/Facts.h"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <unordered_set>

namespace matwright {
namespace {

constexpr std::int64_t kAskFirst = 90'000, kAdapt = 30'000, kWatch = 5'000;
constexpr std::int64_t kOtherOption = 6'000, kOtherDose = 4'000;
constexpr std::int64_t kInLastClass = 40'000;
constexpr std::size_t kOptions = 3; // of one movement

std::int64_t milliseconds(Seconds seconds) { return std::llround(seconds.value() * 1000); }

std::int64_t screeningCost(Level level) {
  switch (level) {
  case Level::leaveOut:
  case Level::askFirst:
    return kAskFirst;
  case Level::adapt:
    return kAdapt;
  case Level::watch:
    break;
  }
  return kWatch;
}

// A row of what is screened on its own: a choice, or a way.
struct Verdict {
  std::int64_t cost = 0;
  const Rule* leaveOut = nullptr;
  std::optional<PersonId> person; // who is to leave it out; none: everybody
};

class Offering {
public:
  Offering(const Knowledge& knowledge, const ClassWishes& wishes, const Group& group, const ClassPlan& kept,
           std::span<const Ban> bans)
      : knowledge_(knowledge), wishes_(wishes), group_(group), kept_(kept), bans_(bans), people_(group.ids()) {}

  Offer run(std::span<const MovementId> unlike) {
    nameFamilies();
    for (std::size_t family = 0; family < catalogueSize_; ++family)
      collect(static_cast<int>(family));
    makeItems(unlike);
    makeWays();
    for (std::size_t family = 0; family < catalogueSize_; ++family)
      offerBest(static_cast<int>(family));
    relateFamilies(wishes_, offer_);
    boundTimes(wishes_, problem());
    wishForTime(wishes_, schedule_, facts_, problem());
    return std::move(offer_);
  }

private:
  FillProblem& problem() { return offer_.problem; }

  void nameFamilies() {
    for (const Movement& movement : knowledge_.catalogue.movements()) {
      offer_.family.emplace(movement.id, static_cast<int>(offer_.movements.size()));
      offer_.movements.push_back(&movement);
    }
    catalogueSize_ = offer_.movements.size();
    offer_.blocks.resize(catalogueSize_);
    items_.resize(catalogueSize_);
    forEachStep(kept_, [&](const Step& step) {
      if (const auto at = offer_.family.find(step.movement); at != offer_.family.end())
        isKept_.insert(at->second);
    });
  }

  // --- what is left by wishes on the movement itself

  void collect(int family) {
    const Movement& movement = *offer_.movements[family];
    if (isKept_.contains(family))
      return; // is there already; never chosen
    if (contains(wishes_.leaveOut, movement.id)) {
      const bool both = contains(wishes_.include, movement.id);
      offer_.blocks[family] = OfferBlock{both ? ObstacleKind::bothWays : ObstacleKind::leftOut, {}, {}, nullptr};
      return;
    }
    OfferBlock block{ObstacleKind::tooHard, {}, {}, nullptr};
    consider(family, nullptr, block);
    for (const Option& option : movement.options)
      consider(family, &option, block);
    if (items_[family].empty())
      offer_.blocks[family] = block;
  }

  // The block is told by the option that comes furthest.
  void consider(int family, const Option* option, OfferBlock& block) {
    const Movement& movement = *offer_.movements[family];
    if (effortOf(movement, option) > hardestOf(wishes_.challenge))
      return;
    const PropSet lacking = propsOf(movement, option).without(wishes_.props);
    if (const bool noWall = !wishes_.wall && needsWall(movement, option); noWall || !lacking.empty()) {
      block = OfferBlock{ObstacleKind::propMissing, {}, {}, nullptr};
      if (!noWall)
        lacking.forEach([&](Prop prop) { block.prop = prop; });
      return;
    }
    for (const Dose& dose : dosesNear(doseOf(movement, option))) {
      const Offered choice{&movement, option, dose};
      const auto ban = std::find_if(bans_.begin(), bans_.end(), [&](const Ban& each) { return each.choice == choice; });
      if (ban == bans_.end())
        items_[family].push_back(addChoice(choice));
      else
        block = OfferBlock{ObstacleKind::cautioned, {}, ban->person, ban->rule};
    }
  }

  int addChoice(const Offered& choice) {
    offer_.choices.push_back(choice);
    return static_cast<int>(offer_.choices.size()) - 1;
  }

  template <class Value> static bool contains(const std::vector<Value>& values, const Value& value) {
    return std::find(values.begin(), values.end(), value) != values.end();
  }

  // --- items: all choices and after them all kept steps, timed as one long class without ways

  void makeItems(std::span<const MovementId> unlike) {
    ClassPlan all;
    all.pace = wishes_.pace;
    std::vector<Step>& steps = all.sections.emplace_back().steps;
    for (const Offered& choice : offer_.choices) {
      steps.push_back(stepOf({}, *choice.movement, choice.option ? choice.option->id : OptionId{}));
      steps.back().dose = choice.dose;
    }
    choiceCount_ = steps.size();
    forEachStep(kept_, [&](const Step& step) { steps.push_back(step); });
    for (std::size_t i = 0; i < steps.size(); ++i)
      steps[i].id = StepId{static_cast<std::int64_t>(i) + 1};
    schedule_ = scheduleOf(knowledge_.catalogue, knowledge_.transitions, group_.ways(), all);
    for (TimedStep& timed : schedule_.steps) {
      timed.way = {};
      timed.reachable = !timed.movement || isDoneOnBothSides(*timed.movement);
    }
    facts_ = factsOf(knowledge_, schedule_);
    countRecent(unlike);
    for (std::size_t i = 0; i < steps.size(); ++i)
      makeItem(i, steps[i]);
    std::size_t next = choiceCount_;
    for (const Section& section : kept_.sections) {
      std::vector<int>& items = problem().kept.emplace_back();
      for (std::size_t i = 0; i < section.steps.size(); ++i)
        items.push_back(static_cast<int>(next++));
    }
  }

  // Whether there is a way from its first side to the second, where it needs one.
  bool isDoneOnBothSides(const Movement& movement) const {
    return movement.sides != Sides::each ||
           group_.ways().between(movement.end, knowledge_.transitions.mirrored(movement.start));
  }

  void countRecent(std::span<const MovementId> unlike) {
    for (std::size_t ago = 0; ago < wishes_.recent.size(); ++ago)
      for (const MovementId& id : wishes_.recent[ago].movements)
        variety_.try_emplace(id, kInLastClass / static_cast<std::int64_t>(ago + 1));
    for (const MovementId& id : unlike)
      variety_[id] = kInLastClass;
  }

  void makeItem(std::size_t at, const Step& step) {
    const TimedStep& timed = schedule_.steps[at];
    FillItem item;
    const bool chosen = at < choiceCount_;
    if (!chosen)
      offer_.choices.push_back({timed.movement, timed.option, step.dose});
    item.family = timed.movement ? offer_.family.at(timed.movement->id) : unknownFamily(step.movement);
    item.work = milliseconds(timed.work.whole + timed.turning);
    item.turning = milliseconds(timed.turning);
    item.start = item.end = -1;
    if (timed.movement) {
      item.start = placeOf(timed.start);
      item.end = placeOf(timed.end);
      describe(item, timed, facts_[at]);
    }
    if (chosen) {
      const Option* option = offer_.choices[at].option;
      const auto recent = variety_.find(step.movement);
      item.variety = recent == variety_.end() ? 0 : recent->second;
      item.asWritten = (option && !isAskedFor(*option) ? kOtherOption : 0) +
                       (step.dose == doseOf(*timed.movement, option) ? 0 : kOtherDose);
    }
    problem().items.push_back(std::move(item));
  }

  bool isAskedFor(const Option& option) const {
    return (option.kind == OptionKind::easier && wishes_.challenge == Challenge::gentle) ||
           (option.kind == OptionKind::harder && wishes_.challenge == Challenge::strong);
  }

  void describe(FillItem& item, const TimedStep& timed, const StepFacts& facts) {
    const Movement& movement = *timed.movement;
    item.cue = milliseconds(cueOf(movement, wishes_.pace));
    item.effort = effortOf(movement, timed.option).value() * 100;
    item.effortWork = milliseconds(timed.work.whole);
    item.region = static_cast<int>(movement.regions.front());
    item.spine = spineTurnOf(movement);
    item.endRange = goesToEndRange(facts.features);
    if (wishes_.fewerRises)
      item.rises = kRiseCost * risesOn(timed.turn);
    propsOf(movement, timed.option).forEach([&](Prop prop) { item.props |= 1u << static_cast<unsigned>(prop); });
  }

  int unknownFamily(const MovementId& id) {
    const auto [at, isNew] = unknown_.try_emplace(id, static_cast<int>(offer_.movements.size()));
    if (isNew) {
      offer_.movements.push_back(nullptr);
      offer_.blocks.emplace_back();
    }
    return at->second;
  }

  int placeOf(const PositionId& position) {
    const auto [at, isNew] = place_.try_emplace(position, static_cast<int>(positions_.size()));
    if (isNew)
      positions_.push_back(position);
    return at->second;
  }

  // --- ways and what is screened

  void makeWays() {
    const std::size_t count = positions_.size();
    problem().places = static_cast<int>(count);
    problem().settle = milliseconds(wishes_.pace.settle);
    problem().rises.assign(count * count, 0);
    std::vector<StepFacts> rows(facts_.begin(), facts_.begin() + static_cast<std::ptrdiff_t>(choiceCount_));
    for (const PositionId& from : positions_)
      for (const PositionId& to : positions_) {
        const auto way = group_.ways().between(from, to);
        StepFacts row;
        if (way) {
          row.wayFeatures = way->features;
          if (wishes_.fewerRises)
            problem().rises[problem().moving.size()] = kRiseCost * risesOn(*way);
        }
        problem().moving.push_back(way ? milliseconds(way->seconds * wishes_.pace.mobility) : 0);
        problem().closed.push_back(!way);
        rows.push_back(row);
      }
    screenRows(rows);
    for (std::size_t way = 0; way < count * count; ++way) {
      const Verdict& verdict = verdicts_[choiceCount_ + way];
      problem().screenings.push_back(verdict.cost);
      problem().closed[way] |= verdict.leaveOut != nullptr;
    }
  }

  // Only what rules say of a step or a way in itself: sums and orders are seen when a class is there.
  void screenRows(const std::vector<StepFacts>& rows) {
    verdicts_.resize(rows.size());
    for (const Finding& finding : group_.findingsOn(rows)) {
      const Rule& rule = knowledge_.rules.rules[finding.rule];
      if (finding.step == Finding::kNone || (rule.scope != Scope::step && rule.scope != Scope::way))
        continue;
      Verdict& verdict = verdicts_[finding.step];
      if (finding.level != Level::leaveOut) {
        verdict.cost += screeningCost(finding.level);
      } else if (!verdict.leaveOut) {
        verdict.leaveOut = &rule;
        if (finding.person != Finding::kNone)
          verdict.person = people_[finding.person];
      }
    }
  }

  // --- which of the choices are offered

  void offerBest(int family) {
    std::vector<int>& items = items_[family];
    if (items.empty())
      return;
    OfferBlock block;
    std::erase_if(items, [&](int item) {
      const TimedStep& timed = schedule_.steps[item];
      if (!timed.reachable)
        block = OfferBlock{ObstacleKind::noWayTo, {}, {}, nullptr};
      else if (const Verdict& verdict = verdicts_[item]; verdict.leaveOut)
        block = OfferBlock{ObstacleKind::cautioned, {}, verdict.person, verdict.leaveOut};
      else
        return false;
      return true;
    });
    if (items.empty()) {
      offer_.blocks[family] = block;
      return;
    }
    for (int item : items)
      problem().items[item].screening = verdicts_[item].cost;
    keepBestOptions(items);
    problem().offered.insert(problem().offered.end(), items.begin(), items.end());
  }

  void keepBestOptions(std::vector<int>& items) const {
    std::vector<const Option*> options;
    std::unordered_map<const Option*, std::int64_t> cost;
    for (int item : items) {
      const Option* option = offer_.choices[item].option;
      const FillItem& each = offer_.problem.items[item];
      const auto [at, isNew] = cost.try_emplace(option, each.screening + each.asWritten);
      if (isNew)
        options.push_back(option);
      else
        at->second = std::min(at->second, each.screening + each.asWritten);
    }
    std::stable_sort(options.begin(), options.end(),
                     [&](const Option* a, const Option* b) { return cost.at(a) < cost.at(b); });
    options.resize(std::min(options.size(), kOptions));
    std::erase_if(items, [&](int item) { return !contains(options, offer_.choices[item].option); });
  }

  const Knowledge& knowledge_;
  const ClassWishes& wishes_;
  const Group& group_;
  const ClassPlan& kept_;
  std::span<const Ban> bans_;
  std::vector<PersonId> people_;
  Offer offer_;
  std::size_t catalogueSize_ = 0, choiceCount_ = 0;
  std::unordered_set<int> isKept_;
  std::vector<std::vector<int>> items_; // by family of the catalogue
  std::unordered_map<MovementId, std::int64_t> variety_;
  std::unordered_map<MovementId, int> unknown_;
  Schedule schedule_; // of all items
  std::vector<StepFacts> facts_;
  std::unordered_map<PositionId, int> place_;
  std::vector<PositionId> positions_; // by place
  std::vector<Verdict> verdicts_;     // choices, then ways
};

} // namespace

std::vector<Dose> dosesNear(const Dose& usual) {
  std::vector<Dose> doses{usual};
  const auto [by, least] = usual.unit == DoseUnit::repetitions ? std::pair(2, 4)
                           : usual.unit == DoseUnit::breaths   ? std::pair(1, 3)
                                                               : std::pair(10, 15);
  for (int amount : {usual.amount - by, usual.amount + by})
    if (amount >= least && amount <= Dose::kMost)
      doses.push_back({amount, usual.unit});
  return doses;
}

bool needsWall(const Movement& movement, const Option* option) {
  const KeyPoses& poses = posesOf(movement, option);
  return movement.repertoire == Repertoire::wall || !poses.start.wall.empty() || !poses.end.wall.empty();
}

Offer offerFor(const Knowledge& knowledge, const ClassWishes& wishes, const Group& group, const ClassPlan& kept,
               std::span<const MovementId> unlike, std::span<const Ban> bans) {
  return Offering(knowledge, wishes, group, kept, bans).run(unlike);
}

} // namespace matwright
