#include "core/plan/ClassPlan.h"
#include "core/store/KnowledgeParts.h"

namespace matwright {
namespace {

constexpr std::size_t kMostGroups = 100, kMostSigns = 50;

std::vector<std::string> readTexts(const std::optional<Spot>& spot, std::size_t least) {
  std::vector<std::string> texts;
  for (const Spot& entry : readList(spot, least, kMostSigns))
    texts.push_back(readText(entry, 1, kLongestNote));
  return texts;
}

RedFlagDraft readGroup(const Spot& spot) {
  ObjectReader object(spot);
  RedFlagDraft draft;
  draft.origin = {spot.reading->file, spot.path};
  RedFlagGroup& group = draft.group;
  group.id = readId<RuleId>(object.need("id")).value;
  group.title = readText(object.need("title"), 1, kLongestName);
  group.urgency = readWord<Urgency>(object.need("urgency"));
  if (const auto condition = object.find("condition"))
    group.condition = readId<ConditionId>(condition);
  group.act = readText(object.need("act"), 1, kLongestNote);
  group.signs = readTexts(object.need("signs"), 1);
  for (const Spot& entry : readList(object.need("sources"), 0, kMostSigns))
    group.sources.push_back(readId<SourceId>(entry));
  group.check = readWord<Verification>(object.need("check"));
  group.note = readText(object.find("note"), 0, kLongestNote);
  object.refuseRest();
  return draft;
}

} // namespace

RedFlagDrafts readRedFlagDrafts(const Json& tree, Reading& reading) {
  ObjectReader root(Spot{&tree, {}, &reading});
  takeFrame(root);
  RedFlagDrafts drafts;
  for (const Spot& entry : readList(root.need("groups"), 1, kMostGroups))
    drafts.groups.push_back(readGroup(entry));
  drafts.closing = readTexts(root.need("closing"), 1);
  root.refuseRest();
  return drafts;
}

} // namespace matwright
