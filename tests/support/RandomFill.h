// Problems of composing drawn by seed, and fillings of them.
#pragma once

#include "core/compose/FillMoves.h"
#include "tests/support/RandomOrder.h"

#include <algorithm>
#include <utility>

namespace matwright::test {

// How a problem is to be. Times are whole seconds, so that many fillings take equally long.
struct FillSize {
  int families = 8; // that may be chosen
  int doses = 2;    // of a family at the most
  int dosed = 99;   // families that may have more than one
  int sections = 1;
  int kept = 0;             // items, some of them in series, some of families that nothing is known of
  double part = 0.5;        // of all that may be chosen that there is time for, about
  bool arc = true;          // whether it matters when something is done
  bool sectionTimes = true; // whether sections may have lengths
};

class RandomFill {
public:
  RandomFill(std::uint64_t seed, const FillSize& size) : draw_(seed), size_(size) {
    problem_.families = size.families;
    problem_.places = 5;
    problem_.settle = 2'000;
    drawWays();
    drawNeeds();
    problem_.kept.resize(static_cast<std::size_t>(size.sections));
    for (int family = 0; family < size.families; ++family)
      drawFamily(family);
    for (int i = 0; i < size.kept; ++i)
      keep();
    problem_.known.resize(static_cast<std::size_t>(problem_.families));
    problem_.needed.resize(static_cast<std::size_t>(problem_.families));
    problem_.counterOf.resize(static_cast<std::size_t>(problem_.families));
    for (int family = 0; family < problem_.families; ++family)
      relate(family);
    drawLengths();
    for (int count = draw_.below(3); count > 0; --count)
      problem_.included.push_back(draw_.below(problem_.families));
    std::sort(problem_.included.begin(), problem_.included.end());
    problem_.included.erase(std::unique(problem_.included.begin(), problem_.included.end()), problem_.included.end());
  }

  const FillProblem& problem() const { return problem_; }

  // What is kept with some of the rest anywhere in it, whatever may be wrong with that.
  Filling filling() {
    Filling filling = keptIn(problem_);
    for (int family : draw_.shuffled(size_.families)) {
      if (draw_.chance(1 - size_.part))
        continue;
      std::vector<int> choices;
      std::copy_if(problem_.offered.begin(), problem_.offered.end(), std::back_inserter(choices),
                   [&](int item) { return problem_.items[item].family == family; });
      const auto section = static_cast<std::size_t>(draw_.below(size_.sections));
      const std::size_t begin = beginOf(filling, section);
      const int room = static_cast<int>(filling.ends[section] - begin) + 1;
      putIn(filling, {section, begin + static_cast<std::size_t>(draw_.below(room))},
            choices[static_cast<std::size_t>(draw_.below(static_cast<int>(choices.size())))]);
    }
    return filling;
  }

  OrderDraw& draw() { return draw_; }

private:
  std::int64_t seconds(int low, int high) { return 1'000 * (low + draw_.below(high - low + 1)); }

  void drawWays() {
    for (OrderCost way : metricWays(draw_, problem_.places))
      problem_.moving.push_back((way + 500) / 1'000 * 1'000);
    for (std::size_t way = 0; way < problem_.moving.size(); ++way) {
      const bool stays = way % static_cast<std::size_t>(problem_.places + 1) == 0;
      problem_.rises.push_back(!stays && draw_.chance(0.2) ? kRiseCost : 0);
      problem_.screenings.push_back(!stays && draw_.chance(0.1) ? 4'000 : 0);
      problem_.closed.push_back(!stays && draw_.chance(0.12));
    }
  }

  void drawNeeds() {
    for (int count = 1 + draw_.below(4); count > 0; --count)
      problem_.needs.push_back({seconds(0, 150), draw_.chance(0.5) ? ComposePart::focus : ComposePart::roundness});
  }

  FillItem item(int family) {
    FillItem item;
    item.family = family;
    item.start = draw_.below(problem_.places);
    item.end = draw_.chance(0.6) ? item.start : draw_.below(problem_.places);
    item.work = seconds(30, 90);
    item.turning = draw_.chance(0.2) ? seconds(2, 6) : 0;
    item.work += item.turning;
    item.cue = 2 * seconds(1, 4);
    item.effort = 100 * (1 + draw_.below(7));
    item.effortWork = size_.arc ? item.work - item.turning : 0;
    item.region = draw_.below(4);
    item.spine = draw_.chance(0.35) ? SpineTurn::flexion : draw_.chance(0.3) ? SpineTurn::counter : SpineTurn::other;
    item.endRange = draw_.chance(0.25);
    item.props = draw_.chance(0.2) ? 1U << draw_.below(3) : 0;
    item.rises = draw_.chance(0.1) ? kRiseCost : 0;
    item.variety = draw_.chance(0.2) ? 40'000 / (1 + draw_.below(3)) : 0;
    item.screening = draw_.chance(0.2) ? (draw_.chance(0.5) ? 45'000 : 15'000) : 0;
    return item;
  }

  void give(FillItem& item, const std::vector<int>& needs) {
    item.gives.clear();
    for (int need : needs)
      item.gives.push_back({need, (item.work - item.turning) / (item.gives.empty() ? 1 : 2)});
  }

  void drawFamily(int family) {
    FillItem usual = item(family);
    std::vector<int> needs;
    for (int need = 0; need < static_cast<int>(problem_.needs.size()); ++need)
      if (draw_.chance(0.35))
        needs.push_back(need);
    for (int dose = draw_.below(family < size_.dosed ? size_.doses : 1); dose >= 0; --dose) {
      give(usual, needs);
      problem_.offered.push_back(static_cast<int>(problem_.items.size()));
      problem_.items.push_back(usual);
      usual.work += dose == 1 ? 18'000 : -12'000;
      if (size_.arc)
        usual.effortWork = usual.work - usual.turning;
      usual.asWritten = 4'000;
    }
  }

  // After the others, so that a family of its own has no items that may be chosen.
  void keep() {
    const auto section = static_cast<std::size_t>(draw_.below(size_.sections));
    std::vector<int>& row = problem_.kept[section];
    const std::vector<int>& before = row.empty() && section > 0 ? problem_.kept[section - 1] : row;
    const bool series = !before.empty() && draw_.chance(0.4);
    FillItem kept = series ? problem_.items[before.back()] : item(problem_.families++);
    if (!series && draw_.chance(0.2)) { // nobody knows what it is
      const std::int64_t work = kept.work;
      kept = {};
      kept.family = problem_.families - 1;
      kept.start = kept.end = -1;
      kept.work = work;
    }
    row.push_back(static_cast<int>(problem_.items.size()));
    problem_.items.push_back(kept);
  }

  // Mostly on families before it in a row of its own, so that few need one another in a circle.
  void relate(int family) {
    problem_.known[family] = draw_.chance(0.2);
    while (draw_.chance(0.25)) {
      const int needed = draw_.below(draw_.chance(0.1) || family == 0 ? problem_.families : family);
      auto& all = problem_.needed[family];
      if (needed != family && std::find(all.begin(), all.end(), needed) == all.end())
        all.push_back(needed);
    }
    if (draw_.chance(0.15))
      problem_.counterOf[family].push_back(draw_.below(std::min(3, problem_.families)));
  }

  void drawLengths() {
    std::int64_t all = 0;
    for (const FillItem& item : problem_.items)
      all += (item.work + item.cue + problem_.settle) * size_.families / static_cast<int>(problem_.items.size());
    const std::int64_t length =
        static_cast<std::int64_t>(size_.part * (0.8 + 0.4 * draw_.share01()) * static_cast<double>(all) / 1'000) *
        1'000;
    problem_.least = length - 14'900;
    problem_.most = length + 14'900;
    problem_.sections.resize(static_cast<std::size_t>(size_.sections));
    if (size_.sections > 1 && size_.sectionTimes && draw_.chance(0.6)) {
      std::vector<std::int64_t> shares;
      for (int i = 0; i < size_.sections; ++i)
        shares.push_back(1 + draw_.below(3));
      const std::int64_t sum = std::accumulate(shares.begin(), shares.end(), std::int64_t{0});
      for (int i = 0; i < size_.sections; ++i) {
        problem_.sections[i].least = length * shares[i] / sum - 29'900;
        problem_.sections[i].most = length * shares[i] / sum + 29'900;
      }
    }
    const auto last = static_cast<int>(length / 1'000);
    for (int second = 0; second <= last; ++second)
      problem_.wishedEffort.push_back(second < last / 2 ? 200 + second : 600 - second / 2);
  }

  OrderDraw draw_;
  FillSize size_;
  FillProblem problem_;
};

} // namespace matwright::test
