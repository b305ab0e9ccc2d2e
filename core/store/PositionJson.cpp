#include "core/plan/ClassPlan.h"
#include "core/store/KnowledgeParts.h"

namespace matwright {
namespace {

constexpr std::size_t kMostPositions = 500;
constexpr std::size_t kMostChanges = 5000;
constexpr double kShortestChange = 0.5, kLongestChange = 120; // seconds
constexpr int kLongestChangeCue = 14, kLongestMeans = 2;      // words

PositionDraft readPosition(const Spot& spot) {
  ObjectReader object(spot);
  PositionDraft draft;
  draft.origin = {spot.reading->file, spot.path};
  draft.position.id = readId<PositionId>(object.need("id"));
  draft.position.name = readText(object.need("name"), 1, kLongestName);
  draft.position.elevation = readWord<Elevation>(object.need("elevation"));
  draft.position.features = readWordSet<Feature>(object.need("features"));
  draft.position.mirror = readId<PositionId>(object.find("mirror"));
  draft.pose = readPose(object.need("pose"));
  object.refuseRest();
  return draft;
}

ChangeDraft readChange(const Spot& spot) {
  ObjectReader object(spot);
  ChangeDraft draft;
  draft.origin = {spot.reading->file, spot.path};
  draft.change.from = readId<PositionId>(object.need("from"));
  draft.change.to = readId<PositionId>(object.need("to"));
  draft.change.seconds = Seconds(readNumber(object.need("seconds"), kShortestChange, kLongestChange));
  draft.change.features = readWordSet<Feature>(object.need("features"));
  draft.change.cue = readWords(object.need("cue"), 1, kLongestChangeCue);
  if (const auto by = object.find("by"))
    draft.change.by = readWords(by, 1, kLongestMeans);
  object.refuseRest();
  return draft;
}

} // namespace

std::vector<PositionDraft> readPositionDrafts(const Json& tree, Reading& reading) {
  ObjectReader root(Spot{&tree, {}, &reading});
  takeFrame(root);
  std::vector<PositionDraft> drafts;
  for (const Spot& entry : readList(root.need("positions"), 1, kMostPositions))
    drafts.push_back(readPosition(entry));
  root.refuseRest();
  return drafts;
}

std::vector<ChangeDraft> readChangeDrafts(const Json& tree, Reading& reading) {
  ObjectReader root(Spot{&tree, {}, &reading});
  takeFrame(root);
  std::vector<ChangeDraft> drafts;
  for (const Spot& entry : readList(root.need("changes"), 0, kMostChanges))
    drafts.push_back(readChange(entry));
  root.refuseRest();
  return drafts;
}

} // namespace matwright
