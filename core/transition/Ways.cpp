#include "core/transition/TransitionGraph.h"

#include <cmath>
#include <tuple>

namespace matwright {

Ways::Ways(const TransitionGraph& graph, FeatureSet avoid) : graph_(&graph), avoid_(avoid) {
  std::vector<Cost> costs;
  costs.reserve(graph.changes_.size());
  for (const Change& change : graph.changes_)
    costs.push_back({change.features.intersects(avoid) ? 1 : 0, std::llround(change.seconds.value() * 1e6)});
  const std::size_t count = graph.positions_.size();
  cells_.resize(count * count);
  for (std::size_t to = 0; to < count; ++to)
    findWaysTo(static_cast<int>(to), costs);
}

// Shortest paths from everywhere to one position, found backwards from it (Dijkstra's method without a heap: the
// positions are few).
void Ways::findWaysTo(int to, const std::vector<Cost>& costs) {
  const int count = static_cast<int>(graph_->positions_.size());
  Cell* const row = cells_.data() + to * count;
  std::vector<int> open; // not settled, in the order of positions
  for (int position = 0; position < count; ++position)
    open.push_back(position);
  std::vector<bool> settled(graph_->positions_.size(), false);
  row[to].reached = true;
  while (true) {
    auto best = open.end();
    for (auto at = open.begin(); at != open.end(); ++at)
      if (row[*at].reached && (best == open.end() || row[*at].cost < row[*best].cost))
        best = at;
    if (best == open.end())
      return; // all are settled, or the rest cannot get there
    const int position = *best;
    open.erase(best);
    settled[position] = true;
    for (int i = graph_->firstArriving_[position]; i < graph_->firstArriving_[position + 1]; ++i) {
      const int change = graph_->arriving_[i];
      const int from = graph_->links_[change].from;
      const Cost cost = costs[change] + row[position].cost;
      Cell& cell = row[from];
      if (!settled[from] && (!cell.reached || std::tie(cost, change) < std::tie(cell.cost, cell.next)))
        cell = {cost, change, true};
    }
  }
}

std::optional<Way> Ways::between(const PositionId& from, const PositionId& to) const {
  const auto fromAt = graph_->index_.find(from);
  const auto toAt = graph_->index_.find(to);
  if (fromAt == graph_->index_.end() || toAt == graph_->index_.end())
    return std::nullopt;
  const Cell* row = cells_.data() + toAt->second * graph_->positions_.size();
  std::size_t at = fromAt->second;
  if (!row[at].reached)
    return std::nullopt;
  Way way;
  while (at != toAt->second) {
    const Change& change = graph_->changes_[row[at].next];
    way.changes.push_back(&change);
    way.seconds += change.seconds;
    way.features |= change.features;
    at = graph_->links_[row[at].next].to;
  }
  way.unavoided = way.features & avoid_;
  return way;
}

} // namespace matwright
