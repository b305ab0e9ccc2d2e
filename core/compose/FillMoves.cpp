#include "core/compose/FillMoves.h"

#include <algorithm>

namespace matwright {
namespace {

constexpr int kDeepest = 12; // movements that are brought along because another needs them, one behind the other
constexpr double kWithinSection = 0.7; // of what is moved

} // namespace

void putIn(Filling& filling, FillPlace place, int item) {
  const auto at = static_cast<std::ptrdiff_t>(place.index);
  filling.items.insert(filling.items.begin() + at, item);
  filling.kept.insert(filling.kept.begin() + at, 0);
  for (std::size_t section = place.section; section < filling.ends.size(); ++section)
    ++filling.ends[section];
}

void takeOut(Filling& filling, std::size_t index) {
  for (std::size_t section = sectionAt(filling, index); section < filling.ends.size(); ++section)
    --filling.ends[section];
  filling.items.erase(filling.items.begin() + static_cast<std::ptrdiff_t>(index));
  filling.kept.erase(filling.kept.begin() + static_cast<std::ptrdiff_t>(index));
}

std::size_t sectionAt(const Filling& filling, std::size_t index) {
  return static_cast<std::size_t>(std::upper_bound(filling.ends.begin(), filling.ends.end(), index) -
                                  filling.ends.begin());
}

std::size_t beginOf(const Filling& filling, std::size_t section) {
  return section == 0 ? 0 : filling.ends[section - 1];
}

FillMoves::FillMoves(const FillProblem& problem, std::uint64_t seed)
    : problem_(&problem), random_(seed), byFamily_(static_cast<std::size_t>(problem.families)),
      byStart_(static_cast<std::size_t>(problem.places)) {
  for (const FillItem& item : problem.items)
    familyOf_.push_back(item.family);
  for (int item : problem.offered) {
    byFamily_[problem.items[item].family].push_back(item);
    byStart_[problem.items[item].start].push_back(item);
  }
}

bool FillMoves::change(Filling& filling) {
  double kind = chance();
  const auto is = [&kind](double share) { return (kind -= share) < 0; };
  if (is(0.10))
    return insert(filling);
  if (is(0.05))
    return remove(filling);
  if (is(0.22))
    return replace(filling);
  if (is(0.20))
    return trade(filling);
  if (is(0.15))
    return vary(filling);
  return is(0.20) ? move(filling) : exchange(filling);
}

bool FillMoves::has(const Filling& filling, int family) const {
  return std::any_of(filling.items.begin(), filling.items.end(), [&](int item) { return familyOf_[item] == family; });
}

// In the row from before the item at `from` to before the one at `upTo`.
FillPlace FillMoves::anyPlace(const Filling& filling, std::size_t from, std::size_t upTo) {
  const std::size_t index = from + below(upTo - from + 1);
  // At the seam of sections any of those that meet there.
  const auto first = static_cast<std::size_t>(std::lower_bound(filling.ends.begin(), filling.ends.end(), index) -
                                              filling.ends.begin());
  std::size_t last = first;
  while (last + 1 < filling.ends.size() && filling.ends[last] == index)
    ++last;
  return {first + below(last - first + 1), index};
}

// Behind all that the family needs and that is there.
std::size_t FillMoves::earliest(const Filling& filling, int family) const {
  const std::vector<int>& needed = problem_->needed[family];
  std::size_t earliest = 0, rest = needed.size();
  for (std::size_t i = 0; i < filling.items.size() && rest > 0; ++i)
    if (std::find(needed.begin(), needed.end(), familyOf_[filling.items[i]]) != needed.end()) {
      earliest = i + 1;
      --rest;
    }
  return earliest;
}

// Half of them begin where people are.
int FillMoves::drawn(const Filling& filling, FillPlace place) {
  if (place.index > 0 && chance() < 0.5) {
    const int end = problem_->items[filling.items[place.index - 1]].end;
    if (end >= 0 && !byStart_[end].empty())
      return byStart_[end][below(byStart_[end].size())];
  }
  return problem_->offered[below(problem_->offered.size())];
}

std::optional<std::size_t> FillMoves::anyChosen(const Filling& filling) {
  const auto chosen = static_cast<std::size_t>(std::count(filling.kept.begin(), filling.kept.end(), 0));
  if (chosen == 0)
    return std::nullopt;
  std::size_t rest = below(chosen);
  std::size_t index = 0;
  for (; filling.kept[index] || rest > 0; ++index)
    rest -= filling.kept[index] ? 0 : 1;
  return index;
}

bool FillMoves::insert(Filling& filling) {
  FillPlace place = anyPlace(filling, 0, filling.items.size());
  const int item = drawn(filling, place);
  const int family = familyOf_[item];
  if (has(filling, family))
    return false;
  if (const std::size_t from = earliest(filling, family); place.index < from)
    place = anyPlace(filling, from, filling.items.size());
  putIn(filling, place, item);
  return insertNeeded(filling, family, 0);
}

// What the family needs is put anywhere before it.
bool FillMoves::insertNeeded(Filling& filling, int family, int depth) {
  for (int needed : problem_->needed[family]) {
    if (problem_->known[needed] || has(filling, needed))
      continue;
    if (depth == kDeepest || byFamily_[needed].empty())
      return false;
    const auto at =
        std::find_if(filling.items.begin(), filling.items.end(), [&](int item) { return familyOf_[item] == family; });
    const auto index = static_cast<std::size_t>(at - filling.items.begin());
    putIn(filling, anyPlace(filling, std::min(index, earliest(filling, needed)), index),
          byFamily_[needed][below(byFamily_[needed].size())]);
    if (!insertNeeded(filling, needed, depth + 1))
      return false;
  }
  return true;
}

// With all that needs it.
bool FillMoves::remove(Filling& filling) {
  const auto index = anyChosen(filling);
  if (!index)
    return false;
  std::vector<int>& gone = gone_;
  gone.assign(1, familyOf_[filling.items[*index]]);
  takeOut(filling, *index);
  for (std::size_t next = 0; next < gone.size() && !problem_->known[gone[next]]; ++next)
    for (std::size_t i = filling.items.size(); i-- > 0;) {
      const int family = familyOf_[filling.items[i]];
      const std::vector<int>& needed = problem_->needed[family];
      if (!filling.kept[i] && std::find(needed.begin(), needed.end(), gone[next]) != needed.end()) {
        gone.push_back(family);
        takeOut(filling, i);
      }
    }
  return true;
}

bool FillMoves::replace(Filling& filling) {
  const auto index = anyChosen(filling);
  if (!index)
    return false;
  const int item = drawn(filling, {0, *index});
  if (has(filling, familyOf_[item]))
    return false;
  filling.items[*index] = item;
  return insertNeeded(filling, familyOf_[item], 0);
}

// One for another elsewhere in its section.
bool FillMoves::trade(Filling& filling) {
  const auto index = anyChosen(filling);
  if (!index)
    return false;
  const std::size_t section = sectionAt(filling, *index);
  takeOut(filling, *index);
  const std::size_t begin = beginOf(filling, section);
  const std::size_t at = begin + below(filling.ends[section] - begin + 1);
  const int item = drawn(filling, {section, at});
  if (has(filling, familyOf_[item]))
    return false;
  putIn(filling, {section, at}, item);
  return insertNeeded(filling, familyOf_[item], 0);
}

bool FillMoves::vary(Filling& filling) {
  const auto index = anyChosen(filling);
  if (!index)
    return false;
  const std::vector<int>& choices = byFamily_[familyOf_[filling.items[*index]]];
  const int item = choices[below(choices.size())];
  if (item == filling.items[*index])
    return false;
  filling.items[*index] = item;
  return true;
}

bool FillMoves::move(Filling& filling) {
  const auto index = anyChosen(filling);
  if (!index)
    return false;
  const int item = filling.items[*index];
  const std::size_t section = sectionAt(filling, *index);
  takeOut(filling, *index);
  const std::size_t from = earliest(filling, familyOf_[item]), begin = std::max(from, beginOf(filling, section));
  if (begin <= filling.ends[section] && chance() < kWithinSection)
    putIn(filling, {section, begin + below(filling.ends[section] - begin + 1)}, item);
  else
    putIn(filling, anyPlace(filling, from, filling.items.size()), item);
  return true;
}

bool FillMoves::exchange(Filling& filling) {
  const auto one = anyChosen(filling), other = anyChosen(filling);
  if (!one || *one == *other)
    return false;
  std::swap(filling.items[*one], filling.items[*other]);
  return true;
}

} // namespace matwright
