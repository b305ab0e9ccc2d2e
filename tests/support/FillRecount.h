// What a filling weighs, counted slowly from what core/compose/FillProblem.h says and by nothing of FillScale.
#pragma once

#include "core/compose/FillProblem.h"

#include <algorithm>
#include <optional>

namespace matwright::test {

class FillRecount {
public:
  FillRecount(const FillProblem& problem, const Filling& filling) : problem_(problem), filling_(filling) {}

  FillWeight weight() {
    FillWeight weight;
    weight.length = finish(size());
    weight.breach = breach();
    const auto of = [&](ComposePart part) -> std::int64_t& { return weight.parts[static_cast<std::size_t>(part)]; };
    std::uint32_t props = 0;
    for (std::size_t i = 0; i < size(); ++i) {
      const auto way = wayInto(i);
      of(ComposePart::moving) += (way ? problem_.moving[*way] : 0) + at(i).turning;
      of(ComposePart::fewerRises) += (way ? problem_.rises[*way] : 0) + at(i).rises;
      of(ComposePart::screening) += (way ? problem_.screenings[*way] : 0) + at(i).screening;
      of(ComposePart::variety) += at(i).variety;
      of(ComposePart::asWritten) += at(i).asWritten;
      of(ComposePart::effortArc) += offArc(i);
      of(ComposePart::otherRegion) += i > 0 && at(i).region >= 0 && at(i).region == at(i - 1).region ? 5'000 : 0;
      of(ComposePart::warmFirst) += isCold(i) ? 30'000 : 0;
      of(ComposePart::counterMovement) += lacksCounter(i) ? 30'000 : 0;
      props |= at(i).props;
    }
    for (int prop = 0; prop < 32; ++prop)
      of(ComposePart::fetching) += (props >> prop & 1U) != 0 ? 20'000 : 0;
    for (std::size_t need = 0; need < problem_.needs.size(); ++need)
      of(problem_.needs[need].part) += std::max<std::int64_t>(0, problem_.needs[need].wished - given()[need]) / 2;
    return weight;
  }

  std::vector<std::int64_t> given() const {
    std::vector<std::int64_t> given(problem_.needs.size());
    for (int item : filling_.items)
      for (const FillItem::Gift& gift : problem_.items[item].gives)
        given[gift.need] += gift.time;
    return given;
  }

private:
  std::size_t size() const { return filling_.items.size(); }
  const FillItem& at(std::size_t i) const { return problem_.items[filling_.items[i]]; }

  std::size_t sectionOf(std::size_t i) const {
    std::size_t section = 0;
    while (filling_.ends[section] <= i)
      ++section;
    return section;
  }

  // Items of unknown places are done where people are.
  std::optional<std::size_t> wayInto(std::size_t i) const {
    if (at(i).start < 0)
      return std::nullopt;
    for (std::size_t before = i; before-- > 0;)
      if (at(before).end >= 0)
        return at(before).end == at(i).start ? std::nullopt : std::optional(problem_.way(at(before).end, at(i).start));
    return std::nullopt;
  }

  // When all before the `i`th is done.
  std::int64_t finish(std::size_t i) const {
    std::int64_t time = 0;
    for (std::size_t each = 0; each < i; ++each) {
      const auto way = wayInto(each);
      const bool again = each > 0 && at(each - 1).family == at(each).family;
      const std::int64_t cue = again ? at(each).cue / 2 : at(each).cue;
      time += std::max(way ? problem_.moving[*way] : 0, cue) + problem_.settle + at(each).work;
    }
    return time;
  }

  std::int64_t offArc(std::size_t i) const {
    const auto middle = static_cast<std::size_t>((finish(i) + finish(i + 1)) / 2 / 1'000);
    const std::int64_t wished = problem_.wishedEffort[std::min(middle, problem_.wishedEffort.size() - 1)];
    return std::abs(at(i).effort - wished) * at(i).effortWork / 2'000; // hundredths, a second for every 20
  }

  bool isCold(std::size_t i) const {
    return problem_.sections.size() > 1 && i > 0 && sectionOf(i) == 0 && at(i - 1).endRange && !at(i).endRange;
  }

  bool isThere(int family) const { return firstOf(family).has_value(); }
  std::optional<std::size_t> firstOf(int family) const {
    for (std::size_t i = 0; i < size(); ++i)
      if (at(i).family == family)
        return i;
    return std::nullopt;
  }

  SpineTurn turnAt(std::size_t i) const {
    const std::vector<int>& flexions = problem_.counterOf[at(i).family];
    const bool named = std::any_of(flexions.begin(), flexions.end(), [&](int family) { return isThere(family); });
    return at(i).spine == SpineTurn::other && named ? SpineTurn::counter : at(i).spine;
  }

  // The second after two flexions or more of which neither counters them.
  bool lacksCounter(std::size_t i) const {
    return i >= 3 && turnAt(i - 3) == SpineTurn::flexion && turnAt(i - 2) == SpineTurn::flexion &&
           turnAt(i - 1) == SpineTurn::other && turnAt(i) != SpineTurn::counter;
  }

  FillBreach breach() const {
    FillBreach breach;
    const auto holdTime = [&](std::int64_t time, std::int64_t least, std::int64_t most) {
      const std::int64_t off = std::max({std::int64_t{0}, least - time, time - most});
      breach.time += off;
      breach.lengths += off > 0;
    };
    holdTime(finish(size()), problem_.least, problem_.most);
    for (std::size_t section = 0; section < problem_.sections.size(); ++section)
      holdTime(finish(filling_.ends[section]) - (section == 0 ? 0 : finish(filling_.ends[section - 1])),
               problem_.sections[section].least, problem_.sections[section].most);
    for (int family : problem_.included)
      breach.missing += !isThere(family);
    for (int family = 0; family < problem_.families; ++family)
      if (const auto first = firstOf(family))
        for (int needed : problem_.needed[family]) {
          const auto there = firstOf(needed);
          if (!there)
            breach.missing += !filling_.kept[*first] && !problem_.known[needed];
          else if (*there > *first)
            breach.late += !filling_.kept[*first] || !filling_.kept[*there];
        }
    for (std::size_t i = 0; i < size(); ++i) {
      const auto way = wayInto(i);
      breach.closed += way && problem_.closed[*way] && !(filling_.kept[i] && filling_.kept[i - 1]);
      breach.closed += isTorn(i);
    }
    return breach;
  }

  // Whether the one kept before it in its section is of its family and no longer next to it.
  bool isTorn(std::size_t i) const {
    for (std::size_t before = i; filling_.kept[i] && before-- > 0 && sectionOf(before) == sectionOf(i);)
      if (filling_.kept[before])
        return at(before).family == at(i).family && before + 1 != i;
    return false;
  }

  const FillProblem& problem_;
  const Filling& filling_;
};

} // namespace matwright::test
