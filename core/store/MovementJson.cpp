#include "core/store/KnowledgeParts.h"
#include "core/store/PlanParts.h"

namespace matwright {
namespace {

constexpr std::size_t kMostMovements = 5000;
constexpr std::size_t kMostOptions = 20;
constexpr std::size_t kMostNamed = 20;                // other movements, as prerequisites or as counter-movements
constexpr int kShortestSetUp = 8, kLongestSetUp = 25; // words
constexpr int kLongestAction = 9;                     // words

const RestPolicy kRefused{};

Effort readEffort(const std::optional<Spot>& spot) {
  return Effort(static_cast<int>(readInteger(spot, 0, Effort::kHighest)));
}

Option readOption(const Spot& spot, std::optional<KeyPoseSpecs>& poses) {
  ObjectReader object(spot);
  Option option;
  option.id = readId<OptionId>(object.need("id"));
  option.name = readText(object.need("name"), 1, kLongestName);
  option.kind = readWord<OptionKind>(object.need("kind"));
  option.how = readText(object.need("how"), 1, kLongestNote);
  option.removes = readWordSet<Feature>(object.need("removes"));
  option.adds = readWordSet<Feature>(object.need("adds"));
  if (option.removes.intersects(option.adds))
    object.note(ErrorCode::duplicateId, "adds", "features that the option does not remove");
  if (const auto props = object.find("props"))
    option.props = readWordSet<Prop>(props);
  if (const auto effort = object.find("effort"))
    option.effort = readEffort(effort);
  if (const auto dose = object.find("dose"))
    option.dose = readDose(dose, kRefused);
  if (const auto tempo = object.find("tempo"))
    option.tempo = readTempo(tempo, kRefused);
  if (const auto both = object.find("poses"))
    poses = readKeyPoses(both);
  object.refuseRest();
  return option;
}

std::vector<MovementId> readMovementIds(const std::optional<Spot>& spot) {
  std::vector<MovementId> ids;
  for (const Spot& entry : readList(spot, 0, kMostNamed)) {
    const auto id = readId<MovementId>(entry);
    for (const MovementId& other : ids)
      if (other == id)
        entry.note(ErrorCode::duplicateId, "each movement once");
    ids.push_back(id);
  }
  return ids;
}

MovementDraft readMovement(const Spot& spot) {
  ObjectReader object(spot);
  MovementDraft draft;
  draft.origin = {spot.reading->file, spot.path};
  Movement& movement = draft.movement;
  movement.id = readId<MovementId>(object.need("id"));
  movement.name = readText(object.need("name"), 1, kLongestName);
  movement.repertoire = readWord<Repertoire>(object.need("repertoire"));
  movement.about = readText(object.need("about"), 1, kLongestNote);
  movement.start = readId<PositionId>(object.need("start"));
  movement.end = readId<PositionId>(object.need("end"));
  movement.sides = readWord<Sides>(object.need("sides"));
  movement.dose = readDose(object.need("dose"), kRefused);
  movement.tempo = readTempo(object.need("tempo"), kRefused);
  movement.setUp = readWords(object.need("setUp"), kShortestSetUp, kLongestSetUp);
  movement.action = readWords(object.need("action"), 1, kLongestAction);
  movement.regions = readWordList<Region>(object.need("regions"), 1);
  movement.spine = readWordList<SpineAction>(object.need("spine"), 1);
  movement.features = readWordSet<Feature>(object.need("features"));
  movement.effort = readEffort(object.need("effort"));
  movement.props = readWordSet<Prop>(object.need("props"));
  movement.prerequisites = readMovementIds(object.need("prerequisites"));
  movement.counters = readMovementIds(object.need("counters"));
  draft.poses = readKeyPoses(object.need("poses"));
  for (const Spot& entry : readList(object.need("options"), 0, kMostOptions)) {
    std::optional<KeyPoseSpecs> poses;
    movement.options.push_back(readOption(entry, poses));
    draft.optionPoses.push_back(std::move(poses));
  }
  object.refuseRest();
  return draft;
}

} // namespace

std::vector<MovementDraft> readMovementDrafts(const Json& tree, Reading& reading) {
  ObjectReader root(Spot{&tree, {}, &reading});
  takeFrame(root);
  std::vector<MovementDraft> drafts;
  for (const Spot& entry : readList(root.need("movements"), 0, kMostMovements))
    drafts.push_back(readMovement(entry));
  root.refuseRest();
  return drafts;
}

} // namespace matwright
