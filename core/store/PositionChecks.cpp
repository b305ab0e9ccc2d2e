#include "core/figure/JointLimits.h"
#include "core/store/KnowledgeParts.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>
#include <unordered_map>

namespace matwright {
namespace {

using PositionIndex = std::unordered_map<PositionId, std::size_t>;

PositionIndex indexOf(const std::vector<PositionDraft>& positions) {
  PositionIndex index;
  for (std::size_t i = 0; i < positions.size(); ++i)
    index.emplace(positions[i].position.id, i);
  return index;
}

// Poses rest on other poses; each is set after the one it rests on.
class PoseResolver {
public:
  PoseResolver(std::vector<PositionDraft>& positions, Errors& errors)
      : positions_(positions), index_(indexOf(positions)), states_(positions.size(), State::open), errors_(errors) {}

  void resolve(std::size_t at) {
    if (states_[at] != State::open)
      return;
    states_[at] = State::atWork;
    PositionDraft& draft = positions_[at];
    Pose base;
    if (!draft.pose.base.empty())
      base = baseOf(draft);
    draft.position.pose = poseOn(base, draft.pose);
    states_[at] = State::done;
  }

private:
  enum class State { open, atWork, done };

  Pose baseOf(const PositionDraft& draft) {
    const auto found = index_.find(draft.pose.base);
    if (found == index_.end()) {
      noteAt(errors_, draft.origin, "/pose/base", ErrorCode::unknownReference, "upright or a position",
             draft.pose.base.value);
      return {};
    }
    if (states_[found->second] == State::atWork) {
      noteAt(errors_, draft.origin, "/pose/base", ErrorCode::unknownReference,
             "a position that does not rest on this one", draft.pose.base.value);
      return {};
    }
    resolve(found->second);
    return positions_[found->second].position.pose;
  }

  std::vector<PositionDraft>& positions_;
  PositionIndex index_;
  std::vector<State> states_;
  Errors& errors_;
};

void checkMirror(const PositionDraft& draft, const std::vector<PositionDraft>& positions, const PositionIndex& index,
                 Errors& errors) {
  const PositionId& mirror = draft.position.mirror;
  if (mirror.empty())
    return;
  const auto found = index.find(mirror);
  if (found == index.end())
    noteAt(errors, draft.origin, "/mirror", ErrorCode::unknownReference, "a position", mirror.value);
  else if (mirror == draft.position.id || positions[found->second].position.mirror != draft.position.id)
    noteAt(errors, draft.origin, "/mirror", ErrorCode::unknownReference, "another position, whose mirror this one is",
           mirror.value);
}

std::string wordsOf(Joint joint) { return std::string(word(joint)); }

// The key in the pose that gives a joint its angle, "hip" or "hip.near"; null when the base does.
const std::string* writtenKey(const PoseSpec& spec, Joint joint) {
  const std::string name = wordsOf(joint), both = isOfLimb(joint) ? name.substr(0, name.rfind('.')) : name;
  const std::string* found = nullptr;
  for (const auto& [key, degrees] : spec.set) // the key for one limb comes last
    if (key == name || key == both)
      found = &key;
  return found;
}

} // namespace

void noteAt(Errors& errors, const Origin& origin, const std::string& below, ErrorCode code, std::string expected,
            std::string found) {
  errors.push_back({code, origin.file, origin.path + below, std::move(expected), extractOf(found)});
}

void checkAngles(const Pose& pose, const PoseSpec& spec, const std::string& file, Errors& errors) {
  for (const Overturned& turn : overturned(pose)) {
    const std::string* key = writtenKey(spec, turn.joint);
    if (!key && turn.with)
      key = writtenKey(spec, *turn.with);
    if (!key && !spec.base.empty())
      continue; // told of the base
    const std::string path = spec.path + (key ? "/set/" + *key : "");
    const auto here = [&](const Error& error) { return error.file == file && error.path == path; };
    if (std::any_of(errors.begin(), errors.end(), here))
      continue;
    const std::string joints =
        turn.with ? wordsOf(*turn.with) + " and " + wordsOf(turn.joint) + " together" : wordsOf(turn.joint);
    const auto whole = [](double degrees) { return std::to_string(std::lround(degrees)); };
    errors.push_back({ErrorCode::outOfRange, file, path,
                      (turn.angle > 0 ? "at most " : "at least ") + whole(turn.limit) + " for " + joints,
                      whole(turn.angle)});
  }
}

void checkPositions(std::vector<PositionDraft>& positions, Errors& errors) {
  const PositionIndex index = indexOf(positions);
  for (std::size_t i = 0; i < positions.size(); ++i) {
    const PositionDraft& draft = positions[i];
    const PositionId& id = draft.position.id;
    if (!id.empty() && (index.at(id) != i || id.value == kUprightBase))
      noteAt(errors, draft.origin, "/id", ErrorCode::duplicateId, "an id of its own, not upright", id.value);
    checkMirror(draft, positions, index, errors);
  }
  PoseResolver resolver(positions, errors);
  for (std::size_t i = 0; i < positions.size(); ++i)
    resolver.resolve(i);
  for (const PositionDraft& draft : positions)
    checkAngles(draft.position.pose, draft.pose, draft.origin.file, errors);
}

void checkChanges(const std::vector<ChangeDraft>& changes, const std::vector<PositionDraft>* positions,
                  Errors& errors) {
  const PositionIndex index = positions ? indexOf(*positions) : PositionIndex{};
  const auto mirrored = [&](const PositionId& id) {
    const auto found = index.find(id);
    const PositionId mirror = found == index.end() ? PositionId{} : (*positions)[found->second].position.mirror;
    return mirror.empty() ? id : mirror;
  };
  std::set<std::tuple<PositionId, PositionId, std::string>> seen;
  for (const ChangeDraft& draft : changes) {
    const Change& change = draft.change;
    for (const auto& [id, key] : {std::pair(change.from, "/from"), std::pair(change.to, "/to")})
      if (positions && !id.empty() && !index.contains(id))
        noteAt(errors, draft.origin, key, ErrorCode::unknownReference, "a position", id.value);
    if (change.from.empty() || change.to.empty())
      continue;
    if (change.from == change.to)
      noteAt(errors, draft.origin, "/to", ErrorCode::duplicateId, "another position than from", change.to.value);
    const bool first = seen.emplace(change.from, change.to, change.by).second;
    seen.emplace(mirrored(change.from), mirrored(change.to), change.by);
    if (!first)
      noteAt(errors, draft.origin, "", ErrorCode::duplicateId,
             "each change once by one means, mirrored changes counting as one",
             change.from.value + " to " + change.to.value);
  }
}

} // namespace matwright
