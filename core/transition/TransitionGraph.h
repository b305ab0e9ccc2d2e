#pragma once

#include "core/transition/Position.h"

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
// positions in them that have a mirror are exchanged for it, and so are the words left and right in cues.
class TransitionGraph {
public:
  TransitionGraph() = default;
  // Every id in `changes` must be one of `positions`, and mirrors must be mutual.
  TransitionGraph(std::vector<Position> positions, std::vector<Change> changes);

  const std::vector<Position>& positions() const { return positions_; }
  const std::vector<Change>& changes() const { return changes_; } // with the mirrored ones
  const Position* find(const PositionId& id) const; // null when there is none
  // A position seen from the other side: its mirror, or itself when symmetrical.
  const PositionId& mirrored(const PositionId& id) const;

private:
  friend class Ways;
  std::vector<Position> positions_;
  std::vector<Change> changes_;
  std::unordered_map<PositionId, std::size_t> index_;
};

// Cheapest ways between all pairs of positions when some features are to be avoided. A way with fewer changes
// that have an avoided feature is always better; among equals, fewer seconds; among equals, the change listed
// first. Holds pointers into the graph, which must outlive it.
class Ways {
public:
  Ways(const TransitionGraph& graph, FeatureSet avoid);

  // Nothing when the second position cannot be reached from the first, or one of them is unknown.
  std::optional<Way> between(const PositionId& from, const PositionId& to) const;
  FeatureSet avoided() const { return avoid_; }

private:
  struct Cell {
    int offences = -1; // changes with an avoided feature; -1: no way
    double seconds = 0;
    int next = -1; // index of the first change on the way
  };
  const TransitionGraph* graph_;
  FeatureSet avoid_;
  std::vector<Cell> cells_; // row: from, column: to
};

} // namespace matwright
