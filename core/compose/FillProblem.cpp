#include "core/compose/FillProblem.h"

#include <algorithm>
#include <bit>
#include <cstdlib>
#include <numeric>

namespace matwright {
namespace {

constexpr std::size_t kNone = std::numeric_limits<std::size_t>::max();
constexpr int kAbsent = std::numeric_limits<int>::max();

constexpr std::int64_t kBreachOfTime = 2;
constexpr std::int64_t kBreachOfLength = 30'000;
constexpr std::int64_t kBreach = 6'000'000;

std::int64_t outside(std::int64_t value, std::int64_t least, std::int64_t most) {
  return value < least ? least - value : value > most ? value - most : 0;
}

} // namespace

Filling keptIn(const FillProblem& problem) {
  Filling filling;
  for (const std::vector<int>& section : problem.kept) {
    filling.items.insert(filling.items.end(), section.begin(), section.end());
    filling.ends.push_back(filling.items.size());
  }
  filling.kept.assign(filling.items.size(), 1);
  return filling;
}

std::int64_t FillWeight::cost() const { return std::accumulate(parts.begin(), parts.end(), std::int64_t{0}); }

ComposeCost costOf(const FillWeight& weight) {
  ComposeCost cost;
  for (std::size_t i = 0; i < cost.parts.size(); ++i)
    cost.parts[i] = Seconds(static_cast<double>(weight.parts[i]) / 1000);
  return cost;
}

std::int64_t priceOf(const FillWeight& weight) {
  const FillBreach& breach = weight.breach;
  return weight.cost() + kBreachOfTime * breach.time + kBreachOfLength * breach.lengths +
         kBreach * (breach.missing + breach.late + breach.closed);
}

FillScale::FillScale(const FillProblem& problem)
    : problem_(&problem), first_(static_cast<std::size_t>(problem.families), kAbsent),
      fresh_(static_cast<std::size_t>(problem.families)), given_(problem.needs.size()) {
  const auto narrow = [](std::int64_t value) { return static_cast<std::int32_t>(value); }; // a class lasts hours
  for (const FillItem& item : problem.items) {
    Brief& brief = briefs_.emplace_back();
    brief.work = narrow(item.work);
    brief.cue = narrow(item.cue);
    brief.effort = narrow(item.effort);
    brief.effortWork = narrow(item.effortWork);
    brief.own = narrow(item.turning + item.rises + item.variety + item.screening + item.asWritten);
    brief.firstGift = static_cast<std::int32_t>(gifts_.size());
    for (const FillItem::Gift& gift : item.gives)
      gifts_.push_back({gift.need, narrow(gift.time)});
    brief.endGift = static_cast<std::int32_t>(gifts_.size());
    brief.family = item.family;
    brief.start = static_cast<std::int16_t>(item.start);
    brief.end = static_cast<std::int16_t>(item.end);
    brief.region = static_cast<std::int8_t>(item.region);
    brief.spine = item.spine;
    brief.endRange = item.endRange;
    brief.props = item.props;
  }
}

// What is known without the order comes first: often it is too much already.
const FillWeight* FillScale::weigh(const Filling& filling, std::int64_t dearest) {
  weight_ = {};
  noteFirsts(filling);
  holdNeeded();
  weighOwn(filling);
  weighNeeds();
  if (priceOf(weight_) > dearest || !walk(filling, dearest) || priceOf(weight_) > dearest)
    return nullptr;
  tellOwnApart(filling);
  return &weight_;
}

void FillScale::noteFirsts(const Filling& filling) {
  for (int family : touched_)
    first_[family] = kAbsent;
  touched_.clear();
  for (std::size_t i = 0; i < filling.items.size(); ++i) {
    const int family = briefs_[filling.items[i]].family;
    if (first_[family] != kAbsent)
      continue;
    first_[family] = static_cast<int>(i);
    fresh_[family] = !filling.kept[i];
    touched_.push_back(family);
  }
}

// Of a chosen item all that it needs must be there and come first; of a kept one, what was chosen must not come later.
void FillScale::holdNeeded() {
  for (int family : problem_->included)
    weight_.breach.missing += first_[family] == kAbsent;
  for (int family : touched_) {
    const bool fresh = fresh_[family];
    for (int needed : problem_->needed[family]) {
      if (first_[needed] == kAbsent)
        weight_.breach.missing += fresh && !problem_->known[needed];
      else if (first_[needed] > first_[family])
        weight_.breach.late += fresh || fresh_[needed];
    }
  }
}

void FillScale::weighOwn(const Filling& filling) {
  std::fill(given_.begin(), given_.end(), 0);
  std::uint32_t props = 0;
  for (int each : filling.items) {
    const Brief& item = briefs_[each];
    props |= item.props;
    part(ComposePart::asWritten) += item.own; // told apart in the end
    for (std::int32_t gift = item.firstGift; gift < item.endGift; ++gift)
      given_[gifts_[gift].need] += gifts_[gift].time;
  }
  part(ComposePart::fetching) = kFetchingCost * std::popcount(props);
}

void FillScale::weighNeeds() {
  for (std::size_t i = 0; i < given_.size(); ++i) {
    const FillNeed& need = problem_->needs[i];
    part(need.part) += std::max<std::int64_t>(0, need.wished - given_[i]) / 2;
  }
}

bool FillScale::walk(const Filling& filling, std::int64_t dearest) {
  const FillProblem& problem = *problem_;
  std::int64_t price = priceOf(weight_), now = 0, sectionBegin = 0;
  std::int64_t moved = 0, risen = 0, screened = 0, sameRegion = 0, offArc = 0, cold = 0, uncountered = 0;
  std::size_t section = 0, sectionFirst = 0, lastKept = kNone;
  int place = -1, flexion = 0;
  const Brief* before = nullptr;
  bool warm = false;
  const auto endSections = [&](std::size_t at) {
    for (; section < filling.ends.size() && filling.ends[section] == at; ++section) {
      const FillSection& bounds = problem.sections[section];
      const std::int64_t breach = outside(now - sectionBegin, bounds.least, bounds.most);
      weight_.breach.time += breach;
      weight_.breach.lengths += breach > 0;
      price += breach > 0 ? kBreachOfTime * breach + kBreachOfLength : 0;
      sectionBegin = now;
      sectionFirst = at;
      warm = false;
    }
  };
  for (std::size_t i = 0; i < filling.items.size(); ++i) {
    endSections(i);
    const Brief& item = briefs_[filling.items[i]];
    const std::int64_t begin = now;
    std::int64_t moving = 0, cost = 0;
    int closed = 0;
    if (place >= 0 && item.start >= 0 && place != item.start) {
      const std::size_t way = problem.way(place, item.start);
      moving = problem.moving[way];
      moved += moving;
      risen += problem.rises[way];
      screened += problem.screenings[way];
      cost += moving + problem.rises[way] + problem.screenings[way];
      closed += problem.closed[way] && !(filling.kept[i] && filling.kept[i - 1]);
    }
    if (filling.kept[i]) {
      const bool apart = lastKept != kNone && lastKept + 1 != i && lastKept >= sectionFirst;
      closed += apart && briefs_[filling.items[lastKept]].family == item.family;
      lastKept = i;
    }
    const bool again = before && before->family == item.family;
    now += std::max<std::int64_t>(moving, again ? item.cue / 2 : item.cue) + problem.settle + item.work;
    if (item.end >= 0)
      place = item.end;
    if (before && item.region >= 0 && item.region == before->region) {
      sameRegion += kSameRegionCost;
      cost += kSameRegionCost;
    }
    if (item.effortWork > 0) {
      const auto second = std::min(static_cast<std::size_t>((begin + now) / 2000), problem.wishedEffort.size() - 1);
      const std::int64_t off = offArcCost(item.effort, problem.wishedEffort[second], item.effortWork);
      offArc += off;
      cost += off;
    }
    if (section == 0 && problem.sections.size() > 1) {
      if (warm && !item.endRange) {
        cold += kColdAfterWarmCost;
        cost += kColdAfterWarmCost;
      }
      warm = item.endRange;
    }
    SpineTurn turn = item.spine;
    if (turn == SpineTurn::other)
      for (int family : problem.counterOf[item.family])
        if (first_[family] != kAbsent)
          turn = SpineTurn::counter;
    const auto [next, unanswered] = afterFlexion(flexion, turn);
    flexion = next;
    if (unanswered) {
      uncountered += kNoCounterCost;
      cost += kNoCounterCost;
    }
    weight_.breach.closed += closed;
    price += cost + kBreach * closed;
    if (price > dearest)
      return false;
    before = &item;
  }
  endSections(filling.items.size());
  weight_.length = now;
  const std::int64_t breach = outside(now, problem.least, problem.most);
  weight_.breach.time += breach;
  weight_.breach.lengths += breach > 0;
  part(ComposePart::moving) = moved;
  part(ComposePart::fewerRises) = risen;
  part(ComposePart::screening) = screened;
  part(ComposePart::otherRegion) = sameRegion;
  part(ComposePart::effortArc) = offArc;
  part(ComposePart::warmFirst) = cold;
  part(ComposePart::counterMovement) = uncountered;
  return true;
}

// What items cost anywhere is weighed as one sum.
void FillScale::tellOwnApart(const Filling& filling) {
  part(ComposePart::asWritten) = 0;
  for (int each : filling.items) {
    const FillItem& item = problem_->items[each];
    part(ComposePart::moving) += item.turning;
    part(ComposePart::fewerRises) += item.rises;
    part(ComposePart::variety) += item.variety;
    part(ComposePart::screening) += item.screening;
    part(ComposePart::asWritten) += item.asWritten;
  }
}

} // namespace matwright
