#include "core/compose/FillSearch.h"

#include "core/compose/FillBeam.h"
#include "core/compose/FillMoves.h"

#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr std::int64_t kBetweenQuestions = 64;
constexpr std::int64_t kBetweenReports = 8192;
constexpr std::size_t kNarrow = 4, kWide = 24; // lines
// How hot annealing begins, and its share of all evaluations; the rest is for single changes.
constexpr double kWarm = 4'000, kMild = 1'500, kHot = 10'000, kCold = 500; // milliseconds
constexpr double kWarmShare = 0.6, kMildShare = 0.25, kHotShare = 0.4; // hot: where nothing was built, again and again

class Search {
public:
  Search(const FillProblem& problem, const FillLimits& limits)
      : problem_(problem), limits_(limits), scale_(problem), moves_(problem, limits.seed) {}
  Search(const Search&) = delete;
  Search& operator=(const Search&) = delete;

  FillAnswer run() {
    const Filling kept = keptIn(problem_);
    weigh(kept, FillScale::kAny);
    if (!problem_.offered.empty()) {
      build();
      if (answer_.filling) {
        anneal(Filling(*answer_.filling), kWarm, share(kWarmShare));
        anneal(Filling(*answer_.filling), kMild, share(kMildShare));
      }
      for (std::int64_t before = -1; !answer_.filling && !isOver() && answer_.evaluations > before + 1;) {
        before = answer_.evaluations; // one more, and there is nothing to change
        anneal(kept, kHot, share(kHotShare));
      }
      if (answer_.filling)
        descend();
    }
    report();
    return std::move(answer_);
  }

private:
  std::int64_t share(double part) const {
    return static_cast<std::int64_t>(part * static_cast<double>(limits_.evaluations));
  }
  bool isOver() const {
    return answer_.stopped || answer_.evaluations >= limits_.evaluations || (limits_.firstOnly && answer_.filling);
  }

  // Its price, or nothing where that is above `dearest`; the answer learns of it.
  std::optional<std::int64_t> weigh(const Filling& filling, std::int64_t dearest) {
    const FillWeight* weight = scale_.weigh(filling, dearest);
    if (++answer_.evaluations % kBetweenQuestions == 0)
      stop_();
    if (answer_.evaluations % kBetweenReports == 0)
      report();
    if (!weight)
      return std::nullopt;
    if (weight->breach.none() && (!answer_.filling || weight->cost() < answer_.weight.cost())) {
      const bool first = !answer_.filling;
      answer_.filling = filling;
      answer_.weight = *weight;
      if (first)
        report();
    }
    return priceOf(*weight);
  }
  // Only whether it is the best so far.
  void tryOut(const Filling& filling) { weigh(filling, answer_.weight.cost() - 1); }

  // From the beginning, by ever more lines at once until one keeps all.
  void build() {
    for (std::size_t width : {kNarrow, kWide}) {
      if (answer_.filling || isOver())
        return;
      for (const Filling& built : builtFillings(problem_, {width, limits_.seed, &stop_}))
        weigh(built, FillScale::kAny);
    }
  }

  void report() const {
    if (limits_.progress)
      limits_.progress(answer_.filling ? std::optional(answer_.weight.cost()) : std::nullopt, answer_.evaluations);
  }

  void anneal(const Filling& from, double hot, std::int64_t evaluations) {
    Filling now = from, trial;
    std::int64_t price = *weigh(now, FillScale::kAny);
    const double cooling = std::log(kCold / hot);
    for (std::int64_t done = 0; done < evaluations && !isOver(); ++done) {
      trial = now;
      if (!moves_.change(trial))
        continue;
      const double heat = hot * std::exp(cooling * static_cast<double>(done) / static_cast<double>(evaluations));
      const std::int64_t bound = price + static_cast<std::int64_t>(-heat * std::log(1 - moves_.chance()));
      if (const auto tried = weigh(trial, bound)) {
        std::swap(now, trial);
        price = *tried;
      }
    }
  }

  // Every single change that makes the answer cheaper, until none does.
  void descend() {
    for (bool better = true; better && !isOver();) {
      const std::int64_t before = answer_.weight.cost();
      const Filling best = *answer_.filling;
      tryInserting(best);
      for (std::size_t i = 0; i < best.items.size() && !isOver(); ++i)
        if (!best.kept[i])
          tryAt(best, i);
      better = answer_.weight.cost() < before;
    }
  }

  void tryInserting(const Filling& best) {
    for (int item : problem_.offered) {
      if (moves_.has(best, problem_.items[item].family))
        continue;
      for (std::size_t section = 0; section < best.ends.size(); ++section)
        for (std::size_t index = beginOf(best, section); index <= best.ends[section] && !isOver(); ++index) {
          Filling trial = best;
          putIn(trial, {section, index}, item);
          tryOut(trial);
        }
    }
  }

  void tryAt(const Filling& best, std::size_t at) {
    const int own = best.items[at];
    Filling trial = best;
    for (int item : problem_.offered) {
      const int family = problem_.items[item].family;
      if (isOver() || item == own || (family != problem_.items[own].family && moves_.has(best, family)))
        continue;
      trial.items[at] = item;
      tryOut(trial);
    }
    for (std::size_t other = at + 1; other < best.items.size() && !isOver(); ++other)
      if (!best.kept[other]) {
        trial = best;
        std::swap(trial.items[at], trial.items[other]);
        tryOut(trial);
      }
    Filling without = best;
    takeOut(without, at);
    tryOut(without);
    for (std::size_t section = 0; section < without.ends.size(); ++section)
      for (std::size_t index = beginOf(without, section); index <= without.ends[section] && !isOver(); ++index) {
        trial = without;
        putIn(trial, {section, index}, own);
        tryOut(trial);
      }
  }

  // Whether to stop: once told so it is not asked again.
  bool asksToStop() {
    answer_.stopped = answer_.stopped || (limits_.stop && *limits_.stop && (*limits_.stop)());
    return answer_.stopped;
  }

  const FillProblem& problem_;
  const FillLimits& limits_;
  const std::function<bool()> stop_ = [this] { return asksToStop(); };
  FillScale scale_;
  FillMoves moves_;
  FillAnswer answer_;
};

} // namespace

FillAnswer solveFill(const FillProblem& problem, const FillLimits& limits) { return Search(problem, limits).run(); }

} // namespace matwright
