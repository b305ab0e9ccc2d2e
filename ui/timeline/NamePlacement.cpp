#include "ui/timeline/NameSpots.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <unordered_set>

namespace matwright {
namespace {

constexpr double kNone = 400;                             // the cost of no label at all
constexpr std::size_t kMostCandidates = NameSpots::kMost; // the bit after them means: no label
constexpr std::size_t kBeam = 96;
constexpr std::size_t kFarthestBack = 40; // requests; further ones are out of reach of any label

// A choice for the requests so far; the earlier ones are found through `parent`.
struct State {
  double cost = 0;
  int parent = -1;
  int choice = 0; // kMostCandidates: no label
};

// Which candidates of a layer the choices for earlier requests rule out, as bits; found out when first asked.
class RuledOut {
public:
  RuledOut(const NameSpots& earlier, const NameSpots& layer) : earlier_(&earlier), layer_(&layer) {}

  std::uint64_t by(int choice) {
    const auto at = static_cast<std::size_t>(choice);
    if (at >= earlier_->candidates.size()) // no label
      return 0;
    if (!known_[at]) {
      std::uint64_t bits = 0;
      for (std::size_t i = 0; i < layer_->candidates.size(); ++i)
        if (inTheWayOf(earlier_->candidates[at].outline, layer_->candidates[i].outline))
          bits |= std::uint64_t{1} << i;
      known_[at] = bits;
    }
    return *known_[at];
  }

private:
  const NameSpots* earlier_;
  const NameSpots* layer_;
  std::array<std::optional<std::uint64_t>, kMostCandidates> known_{};
};

void prune(std::vector<State>& states, const std::vector<std::vector<State>>& before) {
  std::stable_sort(states.begin(), states.end(), [](const State& a, const State& b) { return a.cost < b.cost; });
  // Of states that end alike only the best can win; what lies further back no longer matters.
  std::vector<State> kept;
  std::unordered_set<std::uint64_t> endings;
  for (const State& state : states) {
    std::uint64_t ending = 0;
    const State* at = &state;
    for (std::size_t back = 0; back < 6; ++back) {
      ending = ending * 67 + static_cast<std::uint64_t>(at->choice) + 1;
      if (at->parent < 0 || before.size() <= back)
        break;
      at = &before[before.size() - 1 - back][static_cast<std::size_t>(at->parent)];
    }
    if (endings.insert(ending).second)
      kept.push_back(state);
    if (kept.size() == kBeam)
      break;
  }
  states = std::move(kept);
}

// A first solution: along the class, keeping the best partial ones. The result holds a candidate for each layer, or
// kMostCandidates for none.
std::vector<int> searched(const std::vector<NameSpots>& layers) {
  std::vector<std::vector<State>> steps;
  std::vector<State> current{{0, -1, static_cast<int>(kMostCandidates)}};
  for (std::size_t i = 0; i < layers.size(); ++i) {
    const NameSpots& layer = layers[i];
    // How far back a label can still be in the way.
    std::size_t reach = 0;
    for (std::size_t back = 1; back <= std::min<std::size_t>(i, kFarthestBack); ++back)
      if (layers[i - back].right + kNamesApart >= layer.left)
        reach = back;
    std::vector<RuledOut> ruledOut;
    for (std::size_t back = 1; back <= reach; ++back)
      ruledOut.emplace_back(layers[i - back], layer);

    steps.push_back(current);
    std::vector<State> next;
    for (std::size_t s = 0; s < current.size(); ++s) {
      std::uint64_t out = 0;
      const State* at = &current[s];
      for (std::size_t back = 0; back < reach; ++back) {
        out |= ruledOut[back].by(at->choice);
        at = &steps[i - 1 - back][static_cast<std::size_t>(at->parent)];
      }
      for (std::size_t c = 0; c < layer.candidates.size(); ++c)
        if ((out >> c & 1) == 0)
          next.push_back({current[s].cost + layer.candidates[c].cost, static_cast<int>(s), static_cast<int>(c)});
      next.push_back({current[s].cost + kNone, static_cast<int>(s), static_cast<int>(kMostCandidates)});
    }
    prune(next, steps);
    current = std::move(next);
  }
  std::vector<int> choices(layers.size(), static_cast<int>(kMostCandidates));
  State at = current.front();
  for (std::size_t i = layers.size(); i-- > 0;) {
    choices[i] = at.choice;
    at = steps[i][static_cast<std::size_t>(at.parent)];
  }
  return choices;
}

// Makes a solution better by small exchanges: a label takes a better place, and those that were in its way find others.
class Exchange {
public:
  Exchange(const std::vector<NameSpots>& layers, std::vector<int>& choices)
      : layers_(layers), choices_(choices), neighbours_(layers.size()) {
    for (std::size_t i = 0; i < layers.size(); ++i)
      for (std::size_t j = i + 1; j < layers.size() && j <= i + kFarthestBack; ++j)
        if (layers[i].right + kNamesApart > layers[j].left && layers[j].right + kNamesApart > layers[i].left) {
          neighbours_[i].push_back(j);
          neighbours_[j].push_back(i);
        }
  }

  void run() {
    for (int round = 0; round < 3; ++round) {
      bool better = false;
      for (std::size_t i = 0; i < layers_.size(); ++i)
        better = improve(i) || better;
      if (!better)
        return;
    }
  }

private:
  static constexpr int kNoLabel = static_cast<int>(kMostCandidates);

  double cost(std::size_t layer, int choice) const {
    return choice == kNoLabel ? kNone : layers_[layer].candidates[static_cast<std::size_t>(choice)].cost;
  }
  const NameOutline* outline(std::size_t layer) const {
    const int choice = choices_[layer];
    return choice == kNoLabel ? nullptr : &layers_[layer].candidates[static_cast<std::size_t>(choice)].outline;
  }

  // Those whose labels are in the way of an outline.
  std::vector<std::size_t> inTheWay(std::size_t layer, const NameOutline& wanted) const {
    std::vector<std::size_t> found;
    for (const std::size_t other : neighbours_[layer])
      if (const NameOutline* taken = outline(other); taken && inTheWayOf(wanted, *taken))
        found.push_back(other);
    return found;
  }

  bool improve(std::size_t layer) {
    const double now = cost(layer, choices_[layer]);
    if (now <= 0)
      return false;
    for (std::size_t c = 0; c < layers_[layer].candidates.size(); ++c) {
      const NameSpot& wanted = layers_[layer].candidates[c];
      const double gain = now - wanted.cost;
      if (gain <= 1e-6)
        return false; // candidates further on cost more still
      const std::vector<std::size_t> others = inTheWay(layer, wanted.outline);
      if (others.size() > 3)
        continue;
      const int before = choices_[layer];
      std::vector<int> othersBefore;
      choices_[layer] = static_cast<int>(c);
      double loss = 0;
      for (const std::size_t other : others) {
        othersBefore.push_back(choices_[other]);
        loss -= cost(other, choices_[other]);
        choices_[other] = kNoLabel;
      }
      for (const std::size_t other : others) {
        choices_[other] = freeChoice(other);
        loss += cost(other, choices_[other]);
      }
      if (loss < gain - 1e-6)
        return true;
      choices_[layer] = before;
      for (std::size_t i = 0; i < others.size(); ++i)
        choices_[others[i]] = othersBefore[i];
    }
    return false;
  }

  int freeChoice(std::size_t layer) const {
    for (std::size_t c = 0; c < layers_[layer].candidates.size(); ++c)
      if (std::none_of(neighbours_[layer].begin(), neighbours_[layer].end(), [&](std::size_t other) {
            const NameOutline* taken = outline(other);
            return taken && inTheWayOf(layers_[layer].candidates[c].outline, *taken);
          }))
        return static_cast<int>(c);
    return kNoLabel;
  }

  const std::vector<NameSpots>& layers_;
  std::vector<int>& choices_;
  std::vector<std::vector<std::size_t>> neighbours_; // within reach of one another
};

} // namespace

std::vector<std::optional<NameLabel>> placeNames(std::span<const NameRequest> requests, const NameGround& ground,
                                                 const TextMeasure& measure) {
  std::vector<NameSpots> layers;
  layers.reserve(requests.size());
  // A long class is looked through less thoroughly, so that it stays as quick.
  const std::size_t most =
      std::clamp<std::size_t>(3000 / std::max<std::size_t>(requests.size(), 1), 12, kMostCandidates);
  for (const NameRequest& request : requests)
    layers.push_back(spotsFor(request, ground, measure, most));
  std::vector<int> choices = searched(layers);
  Exchange(layers, choices).run();
  std::vector<std::optional<NameLabel>> labels(requests.size());
  for (std::size_t i = 0; i < layers.size(); ++i)
    if (choices[i] < static_cast<int>(kMostCandidates))
      labels[i] = layers[i].candidates[static_cast<std::size_t>(choices[i])].label;
  return labels;
}

} // namespace matwright
