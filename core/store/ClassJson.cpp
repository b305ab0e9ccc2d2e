#include "core/store/ClassJson.h"

#include "core/store/PlanParts.h"
#include "core/store/Store.h"

#include <unordered_set>

namespace matwright {
namespace {

std::string placeOfSection(std::size_t index) { return "/sections/" + std::to_string(index); }

// The ids of steps are held against those of all sections before.
Section readSection(const Spot& spot, std::size_t index, std::unordered_set<StepId>& seen) {
  ObjectReader object(spot);
  Section section;
  section.name = readText(object.need("name"), 1, kLongestName);
  for (const Spot& entry : readList(object.need("steps"), 0, ClassPlan::kMostSteps)) {
    section.steps.push_back(readStep(entry));
    const StepId id = section.steps.back().id;
    const bool given = entry.json->is_object() && entry.json->value("id", Json()) == id.value;
    if (given && !seen.insert(id).second)
      spot.reading->note(ErrorCode::duplicateId, pointerTo(entry.path, "id"), "each step id once",
                         std::to_string(id.value));
  }
  object.keepRest(placeOfSection(index));
  return section;
}

Json sectionJson(const Section& section, std::size_t index, const SourceTree* kept) {
  Json steps = Json::array();
  for (const Step& step : section.steps)
    steps.push_back(stepJson(step, kept));
  Json object = {{"name", section.name}, {"steps", std::move(steps)}};
  putBack(kept, placeOfSection(index), object);
  return object;
}

} // namespace

ClassPlan readClassTree(const Json& tree, Reading& reading) {
  ObjectReader root(Spot{&tree, {}, &reading});
  takeFrame(root);
  ClassPlan plan;
  plan.name = readText(root.need("name"), 1, kLongestName);
  if (const auto date = root.find("date"))
    plan.date = readDate(date);
  plan.target = Seconds(
      readNumber(root.need("targetSeconds"), ClassPlan::kShortestTarget.value(), ClassPlan::kLongestTarget.value()));
  plan.note = readText(root.find("note"), 0, kLongestNote);
  plan.pace = readPace(root.need("pace"));
  plan.people = readIdsOnce<PersonId>(root.need("people"), ClassPlan::kMostPeople, "each person once");
  std::unordered_set<StepId> seen;
  const auto sections = root.need("sections");
  for (const Spot& entry : readList(sections, 1, ClassPlan::kMostSections))
    plan.sections.push_back(readSection(entry, plan.sections.size(), seen));
  if (countSteps(plan) > ClassPlan::kMostSteps)
    root.note(ErrorCode::outOfRange, "sections", "at most " + std::to_string(ClassPlan::kMostSteps) + " steps in all",
              std::to_string(countSteps(plan)) + " steps");
  root.keepRest("");
  return plan;
}

Result<Stored<ClassPlan>> parseClass(std::string_view text, const std::string& file) {
  const auto tree = openTree(text, file, kClassFormat);
  if (!tree)
    return failure(tree.error());
  Reading reading{file, {}, {}, nullptr};
  ClassPlan plan = readClassTree(*tree, reading);
  return stored(std::move(plan), reading, text);
}

std::string classText(const ClassPlan& plan, const KeptTree& kept) {
  Json root = framed(kClassFormat);
  root["name"] = plan.name;
  if (plan.date)
    root["date"] = isoDate(*plan.date);
  root["targetSeconds"] = plan.target.value();
  if (!plan.note.empty())
    root["note"] = plan.note;
  root["pace"] = paceJson(plan.pace, kept.get());
  root["people"] = idsJson(plan.people);
  Json sections = Json::array();
  for (const Section& section : plan.sections)
    sections.push_back(sectionJson(section, sections.size(), kept.get()));
  root["sections"] = std::move(sections);
  putBack(kept.get(), "", root);
  return canonicalText(root);
}

std::string stepsText(const std::vector<Step>& steps) {
  Json root = framed(kStepsFormat);
  Json list = Json::array();
  for (const Step& step : steps)
    list.push_back(stepJson(step, nullptr));
  root["steps"] = std::move(list);
  return canonicalText(root);
}

Result<std::vector<Step>> parseSteps(std::string_view text) {
  const auto tree = openTree(text, {}, kStepsFormat);
  if (!tree)
    return failure(tree.error());
  Reading reading;
  ObjectReader root(Spot{&*tree, {}, &reading});
  takeFrame(root);
  std::vector<Step> steps;
  for (const Spot& entry : readList(root.need("steps"), 1, ClassPlan::kMostSteps))
    steps.push_back(readStep(entry));
  if (!reading.errors.empty())
    return failure(reading.errors.front());
  return steps;
}

} // namespace matwright
