#include "core/store/KnowledgeParts.h"
#include "core/store/PlanParts.h"

namespace matwright {
namespace {

constexpr std::size_t kMostMovements = 5000;

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
  for (const Spot& entry : readList(spot, 0, Movement::kMostNamed)) {
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
  movement.setUp = readWords(object.need("setUp"), Movement::kShortestSetUp, Movement::kLongestSetUp);
  movement.action = readWords(object.need("action"), 1, Movement::kLongestAction);
  movement.regions = readWordList<Region>(object.need("regions"), 1);
  movement.spine = readWordList<SpineAction>(object.need("spine"), 1);
  movement.features = readWordSet<Feature>(object.need("features"));
  movement.effort = readEffort(object.need("effort"));
  movement.props = readWordSet<Prop>(object.need("props"));
  movement.prerequisites = readMovementIds(object.need("prerequisites"));
  movement.counters = readMovementIds(object.need("counters"));
  draft.poses = readKeyPoses(object.need("poses"));
  for (const Spot& entry : readList(object.need("options"), 0, Movement::kMostOptions)) {
    std::optional<KeyPoseSpecs> poses;
    movement.options.push_back(readOption(entry, poses));
    draft.optionPoses.push_back(std::move(poses));
  }
  object.refuseRest();
  return draft;
}

template <class Enum> Json wordsJson(EnumSet<Enum> values) {
  Json words = Json::array();
  values.forEach([&](Enum value) { words.push_back(word(value)); });
  return words;
}

template <class Enum> Json wordsJson(const std::vector<Enum>& values) {
  Json words = Json::array();
  for (const Enum value : values)
    words.push_back(word(value));
  return words;
}

Json idsJson(const std::vector<MovementId>& ids) {
  Json list = Json::array();
  for (const MovementId& id : ids)
    list.push_back(id.value);
  return list;
}

Json optionJson(const Option& option) {
  Json object = {{"id", option.id.value},
                 {"name", option.name},
                 {"kind", word(option.kind)},
                 {"how", option.how},
                 {"removes", wordsJson(option.removes)},
                 {"adds", wordsJson(option.adds)}};
  if (option.props)
    object["props"] = wordsJson(*option.props);
  if (option.effort)
    object["effort"] = option.effort->value();
  if (option.dose)
    object["dose"] = doseJson(*option.dose, nullptr, {});
  if (option.tempo)
    object["tempo"] = tempoJson(*option.tempo, nullptr, {});
  if (option.poses)
    object["poses"] = keyPosesJson(*option.poses);
  return object;
}

} // namespace

std::vector<MovementDraft> readMovementList(const std::optional<Spot>& spot) {
  std::vector<MovementDraft> drafts;
  for (const Spot& entry : readList(spot, 0, kMostMovements))
    drafts.push_back(readMovement(entry));
  return drafts;
}

std::vector<MovementDraft> readMovementDrafts(const Json& tree, Reading& reading) {
  ObjectReader root(Spot{&tree, {}, &reading});
  takeFrame(root);
  auto drafts = readMovementList(root.need("movements"));
  root.refuseRest();
  return drafts;
}

Json movementJson(const Movement& movement) {
  Json options = Json::array();
  for (const Option& option : movement.options)
    options.push_back(optionJson(option));
  return {{"id", movement.id.value},
          {"name", movement.name},
          {"repertoire", word(movement.repertoire)},
          {"about", movement.about},
          {"start", movement.start.value},
          {"end", movement.end.value},
          {"sides", word(movement.sides)},
          {"dose", doseJson(movement.dose, nullptr, {})},
          {"tempo", tempoJson(movement.tempo, nullptr, {})},
          {"setUp", movement.setUp},
          {"action", movement.action},
          {"regions", wordsJson(movement.regions)},
          {"spine", wordsJson(movement.spine)},
          {"features", wordsJson(movement.features)},
          {"effort", movement.effort.value()},
          {"props", wordsJson(movement.props)},
          {"prerequisites", idsJson(movement.prerequisites)},
          {"counters", idsJson(movement.counters)},
          {"poses", keyPosesJson(movement.poses)},
          {"options", std::move(options)}};
}

} // namespace matwright
