#include "core/plan/ClassPlan.h"
#include "core/store/KnowledgeParts.h"

namespace matwright {
namespace {

constexpr std::size_t kMostTasks = 100, kMostIds = 20;
constexpr double kMostNewtonMetres = 1000, kMostNewtons = 50000;

std::optional<MeasuredValue> readValue(const std::optional<Spot>& spot, double most) {
  if (!spot)
    return std::nullopt;
  ObjectReader object(spot);
  MeasuredValue value;
  value.value = readNumber(object.need("value"), 1, most);
  if (const auto about = object.find("about"))
    value.about = readFlag(about);
  value.check = readWord<Verification>(object.need("check"));
  object.refuseRest();
  return value;
}

MeasuredTaskDraft readTask(const Spot& spot) {
  ObjectReader object(spot);
  MeasuredTaskDraft draft;
  draft.origin = {spot.reading->file, spot.path};
  MeasuredTask& task = draft.task;
  task.id = readIdText(object.need("id"));
  task.task = readText(object.need("task"), 1, kLongestName);
  for (const Spot& entry : readList(object.need("movements"), 0, kMostIds))
    task.movements.push_back(readId<MovementId>(entry));
  task.moment = readValue(object.find("moment"), kMostNewtonMetres);
  task.compression = readValue(object.find("compression"), kMostNewtons);
  task.finding = readText(object.find("finding"), 0, kLongestNote);
  for (const Spot& entry : readList(object.need("sources"), 1, kMostIds))
    task.sources.push_back(readId<SourceId>(entry));
  task.check = readWord<Verification>(object.need("check"));
  if (object && !task.moment && !task.compression && task.finding.empty())
    object.note(ErrorCode::missingKey, "finding", "a moment, a compression or a finding");
  object.refuseRest();
  return draft;
}

} // namespace

MeasuredLoadDrafts readMeasuredLoadDrafts(const Json& tree, Reading& reading) {
  ObjectReader root(Spot{&tree, {}, &reading});
  takeFrame(root);
  MeasuredLoadDrafts drafts;
  for (const Spot& entry : readList(root.need("tasks"), 1, kMostTasks))
    drafts.tasks.push_back(readTask(entry));
  for (const Spot& entry : readList(root.need("closing"), 1, kMostIds))
    drafts.closing.push_back(readText(entry, 1, kLongestNote));
  root.refuseRest();
  return drafts;
}

} // namespace matwright
