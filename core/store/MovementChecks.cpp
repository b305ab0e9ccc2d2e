#include "core/store/KnowledgeParts.h"

#include <unordered_map>

namespace matwright {
namespace {

using PositionTable = std::unordered_map<PositionId, const Position*>;
using MovementTable = std::unordered_map<MovementId, std::size_t>;

// Positions are null when they are not on hand.
class PoseMaker {
public:
  PoseMaker(const PositionTable* positions, bool holdAngles, Errors& errors)
      : positions_(positions), holdAngles_(holdAngles), errors_(errors) {}

  KeyPoses make(const KeyPoseSpecs& specs, const std::string& file) const {
    return {make(specs.start, file), make(specs.end, file)};
  }

private:
  Pose make(const PoseSpec& spec, const std::string& file) const {
    const Pose pose = over(spec, file);
    if (holdAngles_)
      checkAngles(pose, spec, file, errors_);
    return pose;
  }

  Pose over(const PoseSpec& spec, const std::string& file) const {
    if (spec.base.empty() || !positions_)
      return poseOn({}, spec);
    const auto found = positions_->find(spec.base);
    if (found != positions_->end())
      return poseOn(found->second->pose, spec);
    noteAt(errors_, {file, spec.path}, "/base", ErrorCode::unknownReference, "upright or a position", spec.base.value);
    return {};
  }

  const PositionTable* positions_;
  bool holdAngles_;
  Errors& errors_;
};

void checkOptions(const MovementDraft& draft, Errors& errors) {
  const auto& options = draft.movement.options;
  for (std::size_t i = 0; i < options.size(); ++i)
    for (std::size_t before = 0; before < i; ++before)
      if (!options[i].id.empty() && options[i].id == options[before].id) {
        noteAt(errors, draft.origin, "/options/" + std::to_string(i) + "/id", ErrorCode::duplicateId,
               "each option id once", options[i].id.value);
        break;
      }
}

void checkNamed(const MovementDraft& draft, const std::vector<MovementId>& named, const char* below,
                const MovementTable& table, const Catalogue* beside, Errors& errors) {
  const auto known = [&](const MovementId& id) { return table.contains(id) || (beside && beside->find(id)); };
  for (std::size_t at = 0; at < named.size(); ++at)
    if (!named[at].empty() && (!known(named[at]) || named[at] == draft.movement.id))
      noteAt(errors, draft.origin, below + std::to_string(at), ErrorCode::unknownReference, "another movement",
             named[at].value);
}

// Follows prerequisites from each movement. A circle is noted once, where it closes.
class CircleFinder {
public:
  CircleFinder(const std::vector<MovementDraft>& movements, const MovementTable& table, Errors& errors)
      : movements_(movements), table_(table), states_(movements.size(), State::open), errors_(errors) {}

  void follow(std::size_t at) {
    if (states_[at] != State::open)
      return;
    states_[at] = State::atWork;
    const MovementDraft& draft = movements_[at];
    for (std::size_t i = 0; i < draft.movement.prerequisites.size(); ++i) {
      const MovementId& id = draft.movement.prerequisites[i];
      const auto found = table_.find(id);
      if (found == table_.end())
        continue;
      if (states_[found->second] == State::atWork)
        noteAt(errors_, draft.origin, "/prerequisites/" + std::to_string(i), ErrorCode::unknownReference,
               "a movement that does not need this one first", id.value);
      else
        follow(found->second);
    }
    states_[at] = State::done;
  }

private:
  enum class State { open, atWork, done };

  const std::vector<MovementDraft>& movements_;
  const MovementTable& table_;
  std::vector<State> states_;
  Errors& errors_;
};

} // namespace

void checkMovements(std::vector<MovementDraft>& movements, const std::vector<PositionDraft>* positions,
                    bool allMovements, Errors& errors, Written by, const Catalogue* beside) {
  PositionTable places;
  if (positions)
    for (const PositionDraft& draft : *positions)
      places.emplace(draft.position.id, &draft.position);
  MovementTable table;
  for (std::size_t i = 0; i < movements.size(); ++i)
    table.emplace(movements[i].movement.id, i);

  const PoseMaker poses(positions ? &places : nullptr, by == Written::withTheProgram, errors);
  for (std::size_t i = 0; i < movements.size(); ++i) {
    MovementDraft& draft = movements[i];
    Movement& movement = draft.movement;
    if (!movement.id.empty() && table.at(movement.id) != i)
      noteAt(errors, draft.origin, "/id", ErrorCode::duplicateId, "each movement id once", movement.id.value);
    for (const auto& [id, key] : {std::pair(movement.start, "/start"), std::pair(movement.end, "/end")})
      if (positions && !id.empty() && !places.contains(id))
        noteAt(errors, draft.origin, key, ErrorCode::unknownReference, "a position", id.value);
    if (allMovements) {
      checkNamed(draft, movement.prerequisites, "/prerequisites/", table, beside, errors);
      checkNamed(draft, movement.counters, "/counters/", table, beside, errors);
    }
    checkOptions(draft, errors);
    movement.poses = poses.make(draft.poses, draft.origin.file);
    for (std::size_t at = 0; at < movement.options.size(); ++at)
      if (draft.optionPoses[at])
        movement.options[at].poses = poses.make(*draft.optionPoses[at], draft.origin.file);
  }
  CircleFinder circles(movements, table, errors);
  for (std::size_t i = 0; i < movements.size(); ++i)
    circles.follow(i);
}

} // namespace matwright
