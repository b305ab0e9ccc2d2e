#pragma once

#include "core/transition/Position.h"

#include <compare>
#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

namespace matwright {

// The cheapest chain of changes between two positions. Empty when they are the same.
struct Way {
  std::vector<const Change*> changes; // owned by the graph
  Seconds seconds;
  FeatureSet features;  // of all changes together
  FeatureSet unavoided; // those of `features` that were to be avoided, because no way goes round them
  friend bool operator==(const Way&, const Way&) = default;
};

// The positions and the directed changes between them. Changes written for the left are mirrored here: the
// positions in them that have a mirror are exchanged for it, and so are the words left and right in cues. What is
// listed for both sides (same positions, same means) is taken as listed, not mirrored.
class TransitionGraph {
public:
  TransitionGraph() = default;
  // Every id in `changes` must be one of `positions`, ids must be unique and mirrors mutual; anything else is a
  // programmer's error (files are checked before).
  TransitionGraph(std::vector<Position> positions, std::vector<Change> changes);

  const std::vector<Position>& positions() const { return positions_; }
  const std::vector<Change>& changes() const { return changes_; } // each mirrored one right after its original
  const Position* find(const PositionId& id) const;               // null when there is none
  // A position seen from the other side: its mirror, or itself when symmetrical or unknown.
  const PositionId& mirrored(const PositionId& id) const;

private:
  friend class Ways;
  struct Link { // a change by the places of its positions in positions_
    int from = 0, to = 0;
  };
  std::vector<Position> positions_;
  std::vector<Change> changes_;
  std::unordered_map<PositionId, std::size_t> index_;
  std::vector<Link> links_;        // one a change
  std::vector<int> arriving_;      // changes ordered by where they lead
  std::vector<int> firstArriving_; // where those to each position begin in arriving_; one more for the end
};

// Cheapest ways between all pairs of positions when some features are to be avoided. A way with fewer changes
// that have an avoided feature is always better; among equals, fewer seconds; among equals, the change listed
// first. Holds pointers into the graph, which must outlive it and stay where it is.
class Ways {
public:
  Ways(const TransitionGraph& graph, FeatureSet avoid);

  // Nothing when the second position cannot be reached from the first, or one of them is unknown.
  std::optional<Way> between(const PositionId& from, const PositionId& to) const;
  FeatureSet avoided() const { return avoid_; }

private:
  struct Cost {
    int offences = 0;              // changes with an avoided feature
    std::int64_t microseconds = 0; // whole, so that equal ways compare equal in whatever order they are summed
    Cost operator+(const Cost& other) const { return {offences + other.offences, microseconds + other.microseconds}; }
    friend bool operator==(const Cost&, const Cost&) = default;
    friend auto operator<=>(const Cost&, const Cost&) = default;
  };
  struct Cell {
    Cost cost;
    int next = -1;        // index of the first change on the way; -1 where the way ends
    bool reached = false; // false: no way
  };
  void findWaysTo(int to, const std::vector<Cost>& costs);
  const TransitionGraph* graph_;
  FeatureSet avoid_;
  std::vector<Cell> cells_; // row: to, column: from
};

} // namespace matwright
