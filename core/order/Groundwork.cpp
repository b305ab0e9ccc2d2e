#include "core/order/Groundwork.h"

#include <algorithm>
#include <bit>
#include <numeric>

namespace matwright {

int BitRows::count(int at) const {
  int bits = 0;
  for (int word = 0; word < words_; ++word)
    bits += std::popcount(row(at)[word]);
  return bits;
}

bool BitRows::meet(int at, const BitRows& other, int otherAt) const {
  for (int word = 0; word < words_; ++word)
    if (row(at)[word] & other.row(otherAt)[word])
      return true;
  return false;
}

Groundwork::Groundwork(const OrderProblem& problem, OrderRelation relationOfIt)
    : items(static_cast<int>(problem.items.size())), relation(std::move(relationOfIt)) {
  readWays(problem);
  readSoftTerms(problem);
  orderTwins(problem);
  pred = succ = BitRows(items, items);
  for (int a = 0; a < items; ++a)
    for (int b = 0; b < items; ++b)
      if (relation.before(a, b)) {
        succ.set(a, b);
        pred.set(b, a);
      }
  findWalked(problem);
  mergePlaces();
  findWindows(problem);
  findLoops();
}

OrderCost Groundwork::arcOf(std::int64_t length, int item) const {
  if (arc.lengths.empty())
    return 0;
  const std::int64_t slice = std::min<std::int64_t>(length / arc.sliceLength, arc.slices - 1);
  return arc.extra[static_cast<std::size_t>(item) * arc.slices + slice];
}

OrderCost Groundwork::costOf(const std::vector<int>& order) const {
  OrderCost cost = 0;
  int place = origin, state = firstState;
  std::int64_t length = 0;
  for (int item : order) {
    cost += way(place, start[item]) + extraOf(state, item) + arcOf(length, item);
    state = nextState(state, item);
    length += lengthOf(item);
    place = end[item];
  }
  return cost + finish[place];
}

void Groundwork::readWays(const OrderProblem& problem) {
  places = problem.places + (problem.origin ? 0 : 1);
  origin = problem.origin.value_or(problem.places);
  ways.assign(static_cast<std::size_t>(places) * places, kFar);
  finish.assign(places, 0);
  for (int p = 0; p < problem.places; ++p) {
    for (int q = 0; q < problem.places; ++q)
      if (const OrderCost cost = problem.ways[static_cast<std::size_t>(p) * problem.places + q]; cost != kNoWay)
        ways[static_cast<std::size_t>(p) * places + q] = cost;
    if (problem.goal)
      finish[p] = way(p, *problem.goal);
  }
  if (!problem.origin)
    for (int q = 0; q < places; ++q)
      ways[static_cast<std::size_t>(origin) * places + q] = 0;
  for (const OrderItem& item : problem.items) {
    start.push_back(item.start);
    end.push_back(item.end);
  }
}

void Groundwork::readSoftTerms(const OrderProblem& problem) {
  if (!problem.automaton.next.empty()) {
    states = problem.automaton.states;
    firstState = problem.automaton.first;
    next = problem.automaton.next;
    extra = problem.automaton.extra;
    std::replace(extra.begin(), extra.end(), kNoWay, kFar);
  }
  arc = problem.arc;
  soft = !next.empty() || !arc.lengths.empty();
}

// Of two items between the same places, where the one may always stand in for the other, the order is settled.
void Groundwork::orderTwins(const OrderProblem& problem) {
  if (soft || !problem.pinned.empty())
    return;
  const auto mayComeFirst = [&](int a, int b) {
    for (int k = 0; k < items; ++k)
      if ((relation.before(k, a) && !relation.before(k, b)) || (relation.before(b, k) && !relation.before(a, k)))
        return false;
    return true;
  };
  for (int a = 0; a < items; ++a)
    for (int b = a + 1; b < items; ++b) {
      if (start[a] != start[b] || end[a] != end[b] || relation.before(a, b) || relation.before(b, a))
        continue;
      if (mayComeFirst(a, b))
        relation.add(a, b);
      else if (mayComeFirst(b, a))
        relation.add(b, a);
    }
}

void Groundwork::findWalked(const OrderProblem& problem) {
  walked.assign(static_cast<std::size_t>(places) * places, 0);
  for (int a = 0; a < items; ++a) {
    if (pred.count(a) == 0)
      walked[static_cast<std::size_t>(origin) * places + start[a]] = 1;
    if (problem.goal && succ.count(a) == 0)
      walked[static_cast<std::size_t>(end[a]) * places + *problem.goal] = 1;
    for (int b = 0; b < items; ++b)
      if (a != b && !relation.before(b, a) && !succ.meet(a, pred, b))
        walked[static_cast<std::size_t>(end[a]) * places + start[b]] = 1;
  }
}

// Places between which nothing is walked and from and to which all walks are the same are one.
void Groundwork::mergePlaces() {
  std::vector<int> standsFor(places);
  std::iota(standsFor.begin(), standsFor.end(), 0);
  const auto at = [&](int p, int q) { return static_cast<std::size_t>(p) * places + q; };
  const auto agree = [&](std::size_t a, std::size_t b) { return !walked[a] || !walked[b] || ways[a] == ways[b]; };
  const auto free = [&](int p, int q) { return !walked[at(p, q)] || ways[at(p, q)] == 0; };
  const auto alike = [&](int p, int q) {
    if (finish[p] != finish[q] || !free(p, q) || !free(q, p) || !free(p, p) || !free(q, q))
      return false;
    for (int r = 0; r < places; ++r)
      if (standsFor[r] == r && r != p && r != q && (!agree(at(p, r), at(q, r)) || !agree(at(r, p), at(r, q))))
        return false;
    return true;
  };
  const auto take = [&](std::size_t into, std::size_t from) {
    if (walked[into] || !walked[from])
      return;
    walked[into] = 1;
    ways[into] = ways[from];
  };
  const int mergeable = origin == places - 1 ? places - 1 : places;
  for (int p = 0; p < mergeable; ++p)
    for (int q = p + 1; q < mergeable && standsFor[p] == p; ++q) {
      if (standsFor[q] != q || !alike(p, q))
        continue;
      standsFor[q] = p;
      ways[at(p, p)] = 0;
      walked[at(p, p)] = walked[at(p, p)] || walked[at(p, q)] || walked[at(q, p)] || walked[at(q, q)];
      for (int r = 0; r < places; ++r)
        if (standsFor[r] == r && r != p) {
          take(at(p, r), at(q, r));
          take(at(r, p), at(r, q));
        }
    }
  for (int item = 0; item < items; ++item) {
    start[item] = standsFor[start[item]];
    end[item] = standsFor[end[item]];
  }
  origin = standsFor[origin];
}

void Groundwork::findWindows(const OrderProblem& problem) {
  pinnedAt.assign(items, -1);
  earliest.resize(items);
  latest.resize(items);
  std::vector<int> sorted(items);
  std::iota(sorted.begin(), sorted.end(), 0);
  std::sort(sorted.begin(), sorted.end(), [&](int a, int b) { return pred.count(a) < pred.count(b); });
  for (int item = 0; item < items; ++item) {
    earliest[item] = pred.count(item);
    latest[item] = items - 1 - succ.count(item);
  }
  for (const auto& [item, slot] : problem.pinned) {
    pinnedAt[slot] = item;
    earliest[item] = std::max(earliest[item], slot);
    latest[item] = std::min(latest[item], slot);
  }
  if (problem.pinned.empty())
    return;
  for (int a : sorted)
    for (int b : sorted)
      if (relation.before(a, b))
        earliest[b] = std::max(earliest[b], earliest[a] + 1);
  for (auto b = sorted.rbegin(); b != sorted.rend(); ++b)
    for (int a : sorted)
      if (relation.before(a, *b))
        latest[a] = std::min(latest[a], latest[*b] - 1);
}

// To do a loop later costs a walk to its place and away from it; doing it now must never cost more.
bool Groundwork::loopsLoseNothing(int place) const {
  if (way(place, place) != 0)
    return false;
  for (int from = 0; from < places; ++from) {
    if (way(from, place) + finish[place] < finish[from] && way(from, place) < kFar)
      return false;
    for (int to = 0; to < places; ++to)
      if (walked[static_cast<std::size_t>(from) * places + to] && way(from, place) + way(place, to) < way(from, to))
        return false;
  }
  return true;
}

void Groundwork::findLoops() {
  loops = BitRows(places, items);
  closes.assign(places, 0);
  if (soft || std::any_of(pinnedAt.begin(), pinnedAt.end(), [](int item) { return item >= 0; }))
    return;
  for (int item = 0; item < items; ++item)
    if (start[item] == end[item] && (closes[start[item]] || loopsLoseNothing(start[item]))) {
      closes[start[item]] = 1;
      closing = true;
      loops.set(start[item], item);
    }
}

} // namespace matwright
