#pragma once

#include "core/order/Groundwork.h"
#include "core/order/SearchEffort.h"

namespace matwright {

// Some items, the members, and the sets of them that can be done at a time when all precedences are kept (ideals). What
// a relaxed order knows of its past is such a set and a count; of the other items it knows only what follows.
class Pattern {
public:
  struct Ideal {
    int fewest = 0, most = 0;               // how many items of all can be done when exactly these members are
    std::int64_t shortest = 0, longest = 0; // what their lengths can add up to then
    int firstMove = 0;                      // in moves(); the last one ends where those of the next ideal begin
  };
  struct Move {
    int item = 0;
    int to = 0; // ideal
  };

  // Nothing when the ideals need more than `mostWork`: (ideals x counts) x (places x places + moves), or the effort
  // ended.
  static std::optional<Pattern> of(const Groundwork& ground, std::vector<int> members, std::int64_t mostWork,
                                   SearchEffort& effort);

  const std::vector<int>& members() const { return members_; }
  int ideals() const { return static_cast<int>(ideals_.size()) - 1; } // the first is empty, the last has all members
  const Ideal& ideal(int at) const { return ideals_[at]; }
  const Move* movesBegin(int ideal) const { return moves_.data() + ideals_[ideal].firstMove; }
  const Move* movesEnd(int ideal) const { return moves_.data() + ideals_[ideal + 1].firstMove; }
  // The ideal after a member; the same one after another item.
  int after(int ideal, int item) const {
    const int member = memberOf_[item];
    return member < 0 ? ideal : next_[static_cast<std::size_t>(ideal) * members_.size() + member];
  }
  bool hasAll() const { return members_.size() == memberOf_.size(); }
  std::int64_t work() const { return work_; }

private:
  std::vector<int> members_, memberOf_;
  std::vector<Ideal> ideals_; // and one behind the last
  std::vector<Move> moves_;
  std::vector<int> next_;
  std::int64_t work_ = 0;
};

} // namespace matwright
