#include "core/order/Successions.h"

#include <algorithm>

namespace matwright {

Successions::Successions(const Groundwork& ground)
    : items_(ground.items), behind_(ground.items + 1), earlier_(ground.items), later_(ground.items) {
  for (int a = 0; a < items_; ++a) {
    if (ground.way(ground.origin, ground.start[a]) < kFar)
      behind_[turn()].set(a);
    if (ground.finish[ground.end[a]] < kFar)
      behind_[a].set(turn());
    for (int b = 0; b < items_; ++b) {
      if (a != b && ground.way(ground.end[a], ground.start[b]) < kFar)
        behind_[a].set(b);
      if (ground.relation.before(a, b)) {
        later_[a].set(b);
        earlier_[b].set(a);
      }
    }
  }
  close();
}

int Successions::count() const {
  int all = 0;
  for (const ItemSet& behind : behind_)
    all += static_cast<int>(behind.count());
  return all;
}

void Successions::precede(int a, int b) {
  addBefore(a, b);
  excludeByPrecedence();
}

void Successions::addBefore(int a, int b) {
  none_ = none_ || a == b || later_[b][a];
  if (none_ || later_[a][b])
    return;
  ItemSet from = earlier_[a], to = later_[b];
  from.set(a);
  to.set(b);
  for (int item = 0; item < items_; ++item) {
    if (from[item])
      later_[item] |= to;
    if (to[item])
      earlier_[item] |= from;
  }
}

// Nothing comes directly behind what must come later, nor where something must come between.
void Successions::excludeByPrecedence() {
  for (int item = 0; item < items_; ++item) {
    ItemSet gone = earlier_[item];
    for (int between = 0; between < items_; ++between)
      if (later_[item][between])
        gone |= later_[between];
    if (later_[item].any())
      gone.set(turn());
    if (earlier_[item].any())
      behind_[turn()].reset(item);
    behind_[item] &= ~gone;
  }
}

void Successions::close() {
  excludeByPrecedence();
  for (bool more = true; more && !none_;) {
    more = false;
    for (int a = 0; a < items_; ++a)
      for (int b = 0; b < items_ && !none_; ++b)
        if (a != b && !areOrdered(a, b) && !canCome(b, a)) {
          addBefore(a, b);
          more = true;
        }
    excludeByPrecedence();
  }
  none_ = none_ || std::any_of(behind_.begin(), behind_.end(), [](const ItemSet& set) { return set.none(); });
}

// Whether steps lead from one item to another with nothing on the way that has to be before or behind both.
bool Successions::canCome(int from, int to) const {
  ItemSet open = ~(earlier_[from] | later_[to]);
  open.reset(turn());
  open.reset(from);
  ItemSet next = behind_[from] & open;
  while (!next[to] && next.any()) {
    open &= ~next;
    ItemSet further;
    for (int item = 0; item < items_; ++item)
      if (next[item])
        further |= behind_[item];
    next = further & open;
  }
  return next[to];
}

} // namespace matwright
