#include "core/transition/TransitionGraph.h"

#include "core/transition/MirroredText.h"

#include <algorithm>
#include <cstdlib>
#include <tuple>

namespace matwright {
namespace {

bool sameMeans(const Change& a, const Change& b) {
  return std::tie(a.from, a.to, a.by) == std::tie(b.from, b.to, b.by);
}

} // namespace

TransitionGraph::TransitionGraph(std::vector<Position> positions, std::vector<Change> changes)
    : positions_(std::move(positions)) {
  index_.reserve(positions_.size());
  for (std::size_t i = 0; i < positions_.size(); ++i)
    if (!index_.emplace(positions_[i].id, i).second)
      std::abort();
  for (const Position& position : positions_)
    if (!position.mirror.empty()) {
      const Position* other = find(position.mirror);
      if (!other || other->mirror != position.id)
        std::abort();
    }

  changes_.reserve(2 * changes.size());
  for (const Change& change : changes) {
    if (!find(change.from) || !find(change.to))
      std::abort();
    changes_.push_back(change);
    Change other = change;
    other.from = mirrored(change.from);
    other.to = mirrored(change.to);
    if (other.from == change.from && other.to == change.to)
      continue;
    other.cue = mirroredText(change.cue);
    other.by = mirroredText(change.by);
    if (std::none_of(changes.begin(), changes.end(), [&](const Change& listed) { return sameMeans(listed, other); }))
      changes_.push_back(std::move(other));
  }

  const auto place = [&](const PositionId& id) { return static_cast<int>(index_.at(id)); };
  for (const Change& change : changes_)
    links_.push_back({place(change.from), place(change.to)});
  for (int to = 0; to < static_cast<int>(positions_.size()); ++to) {
    firstArriving_.push_back(static_cast<int>(arriving_.size()));
    for (std::size_t i = 0; i < links_.size(); ++i)
      if (links_[i].to == to && links_[i].from != to)
        arriving_.push_back(static_cast<int>(i));
  }
  firstArriving_.push_back(static_cast<int>(arriving_.size()));
}

const Position* TransitionGraph::find(const PositionId& id) const {
  const auto at = index_.find(id);
  return at == index_.end() ? nullptr : &positions_[at->second];
}

const PositionId& TransitionGraph::mirrored(const PositionId& id) const {
  const Position* position = find(id);
  if (!position)
    return id;
  return position->mirror.empty() ? position->id : position->mirror;
}

} // namespace matwright
