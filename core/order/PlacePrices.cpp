#include "core/order/PlacePrices.h"

#include <algorithm>

namespace matwright {
namespace {

// The cheapest flow, made by sending one unit after another along the shortest way in what is left of the network.
class Flow {
public:
  explicit Flow(const Groundwork& ground)
      : ground_(ground), nodes_(ground.places + 1), cost_(cells(), kFar), flow_(cells()), excess_(nodes_) {
    const int end = ground.places; // stands for the end of the order
    for (int p = 0; p < ground.places; ++p) {
      for (int q = 0; q < ground.places; ++q)
        if (p != q && ground.walked[static_cast<std::size_t>(p) * ground.places + q])
          cost_[at(p, q)] = ground.way(p, q);
      cost_[at(p, end)] = ground.finish[p];
    }
    ++excess_[ground.origin];
    --excess_[end];
    for (int item = 0; item < ground.items; ++item) {
      ++excess_[ground.end[item]];
      --excess_[ground.start[item]];
    }
  }

  // The distances in what is left of the network, after all that can be sent was sent.
  std::vector<OrderCost> run() {
    for (int from = 0; from < nodes_; ++from)
      while (excess_[from] > 0) {
        std::vector<OrderCost> distance(nodes_, kFar);
        distance[from] = 0;
        const std::vector<int> before = relax(distance);
        int nearest = -1;
        for (int to = 0; to < nodes_; ++to)
          if (excess_[to] < 0 && distance[to] < kFar && (nearest < 0 || distance[to] < distance[nearest]))
            nearest = to;
        if (nearest < 0)
          break;
        --excess_[from];
        ++excess_[nearest];
        for (int node = nearest; node != from; node = before[node]) {
          if (flow_[at(node, before[node])] > 0)
            --flow_[at(node, before[node])];
          else
            ++flow_[at(before[node], node)];
        }
      }
    std::vector<OrderCost> distance(nodes_, 0);
    relax(distance);
    return distance;
  }

private:
  std::size_t cells() const { return static_cast<std::size_t>(nodes_) * nodes_; }
  std::size_t at(int p, int q) const { return static_cast<std::size_t>(p) * nodes_ + q; }

  std::vector<int> relax(std::vector<OrderCost>& distance) const {
    std::vector<int> before(nodes_, -1);
    for (bool better = true; better;) {
      better = false;
      for (int p = 0; p < nodes_; ++p)
        for (int q = 0; q < nodes_ && distance[p] < kFar; ++q) {
          const OrderCost cost = flow_[at(q, p)] > 0 ? -cost_[at(q, p)] : cost_[at(p, q)];
          if (cost < kFar && distance[p] + cost < distance[q]) {
            distance[q] = distance[p] + cost;
            before[q] = p;
            better = true;
          }
        }
    }
    return before;
  }

  const Groundwork& ground_;
  int nodes_;
  std::vector<OrderCost> cost_;
  std::vector<int> flow_;
  std::vector<int> excess_;
};

} // namespace

std::vector<OrderCost> placePrices(const Groundwork& ground) {
  std::vector<OrderCost> prices = Flow(ground).run();
  prices.pop_back();
  for (OrderCost& price : prices)
    price = -price;
  return prices;
}

} // namespace matwright
