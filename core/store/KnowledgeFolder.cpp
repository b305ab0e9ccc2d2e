#include "core/store/KnowledgeParts.h"
#include "core/store/Store.h"

#include <algorithm>
#include <iterator>

namespace matwright {
namespace {

namespace fs = std::filesystem;

// What the files of one kind hold. Not whole when one of them could not be read as a list of drafts at all; then
// nothing can be said about references into it.
template <class Draft> struct Drafts {
  std::vector<Draft> list;
  bool whole = true;

  const std::vector<Draft>* ifWhole() const { return whole ? &list : nullptr; }
};

template <class Draft> using DraftReader = std::vector<Draft> (*)(const Json&, Reading&);

template <class Draft>
void addFile(Drafts<Draft>& drafts, const fs::path& file, const Format& format, DraftReader<Draft> read,
             Errors& errors) {
  const std::string name = file.string();
  auto tree = readFile(file).and_then([&](const std::string& text) { return openTree(text, name, format); });
  if (!tree) {
    errors.push_back(tree.error());
    drafts.whole = false;
    return;
  }
  Reading reading{name, {}, {}, nullptr};
  auto list = read(*tree, reading);
  if (list.empty() && !reading.errors.empty())
    drafts.whole = false;
  std::move(list.begin(), list.end(), std::back_inserter(drafts.list));
  std::move(reading.errors.begin(), reading.errors.end(), std::back_inserter(errors));
}

template <class Draft>
Drafts<Draft> readOne(const fs::path& file, const Format& format, DraftReader<Draft> read, Errors& errors) {
  Drafts<Draft> drafts;
  addFile(drafts, file, format, read, errors);
  return drafts;
}

Drafts<MovementDraft> readCatalogue(const fs::path& folder, Errors& errors) {
  Drafts<MovementDraft> drafts;
  const auto files = jsonFilesIn(folder);
  if (!files || files->empty()) {
    errors.push_back(files ? Error{ErrorCode::cannotRead, folder.string(), {}, "at least one file *.json", {}}
                           : files.error());
    drafts.whole = false;
    return drafts;
  }
  for (const fs::path& file : *files)
    addFile(drafts, file, kCatalogueFormat, readMovementDrafts, errors);
  return drafts;
}

// A file that holds more than a list.
template <class Drafts>
Drafts readWhole(const fs::path& file, const Format& format, Drafts (*read)(const Json&, Reading&), Errors& errors) {
  const std::string name = file.string();
  const auto tree = readFile(file).and_then([&](const std::string& text) { return openTree(text, name, format); });
  if (!tree) {
    errors.push_back(tree.error());
    return {};
  }
  Reading reading{name, {}, {}, nullptr};
  Drafts drafts = read(*tree, reading);
  std::move(reading.errors.begin(), reading.errors.end(), std::back_inserter(errors));
  return drafts;
}

template <class Value, class Draft> std::vector<Value> valuesOf(std::vector<Draft>& drafts, Value Draft::*value) {
  std::vector<Value> values;
  values.reserve(drafts.size());
  for (Draft& draft : drafts)
    values.push_back(std::move(draft.*value));
  return values;
}

} // namespace

Result<std::vector<fs::path>> jsonFilesIn(const fs::path& folder) {
  std::vector<fs::path> files;
  std::error_code broken;
  for (fs::directory_iterator at(folder, broken), end; !broken && at != end; at.increment(broken)) {
    const fs::path name = at->path().filename();
    if (name.extension() == ".json" && !name.string().starts_with('.'))
      files.push_back(at->path());
  }
  if (broken)
    return failure(Error{ErrorCode::cannotRead, folder.string(), {}, "a folder that can be read", broken.message()});
  std::sort(files.begin(), files.end(),
            [](const fs::path& one, const fs::path& other) { return one.native() < other.native(); });
  return files;
}

Result<std::vector<Movement>, std::vector<Error>> readMovements(const fs::path& file, const Knowledge& beside) {
  Errors errors;
  auto movements = readOne(file, kCatalogueFormat, readMovementDrafts, errors);
  std::vector<PositionDraft> positions;
  for (const Position& position : beside.transitions.positions())
    positions.push_back({position, {}, {}});
  checkMovements(movements.list, &positions, false, errors);
  if (!errors.empty())
    return failure(std::move(errors));
  return valuesOf(movements.list, &MovementDraft::movement);
}

Result<Knowledge, std::vector<Error>> readKnowledge(const fs::path& folder) {
  Errors errors;
  auto positions = readOne(folder / "positions/positions.json", kPositionsFormat, readPositionDrafts, errors);
  auto changes = readOne(folder / "positions/changes.json", kChangesFormat, readChangeDrafts, errors);
  auto movements = readCatalogue(folder / "catalogue", errors);
  auto conditions = readOne(folder / "screening/conditions.json", kConditionsFormat, readConditionDrafts, errors);
  auto sources = readOne(folder / "screening/sources.json", kSourcesFormat, readSourceDrafts, errors);
  auto rules = readOne(folder / "screening/rules.json", kRulesFormat, readRuleDrafts, errors);
  auto redFlags = readWhole(folder / "screening/redflags.json", kRedFlagsFormat, readRedFlagDrafts, errors);
  auto measured =
      readWhole(folder / "screening/measured-loads.json", kMeasuredLoadsFormat, readMeasuredLoadDrafts, errors);

  checkPositions(positions.list, errors);
  checkChanges(changes.list, positions.ifWhole(), errors);
  checkMovements(movements.list, positions.ifWhole(), movements.whole, errors);
  checkConditions(conditions.list, errors);
  checkSources(sources.list, errors);
  checkRules(rules.list, conditions.ifWhole(), sources.ifWhole(), errors);
  checkRedFlags(redFlags, conditions.ifWhole(), sources.ifWhole(), errors);
  checkMeasuredLoads(measured, movements.ifWhole(), sources.ifWhole(), errors);
  if (!errors.empty())
    return failure(std::move(errors));

  Knowledge knowledge;
  knowledge.catalogue = Catalogue(valuesOf(movements.list, &MovementDraft::movement));
  knowledge.transitions =
      TransitionGraph(valuesOf(positions.list, &PositionDraft::position), valuesOf(changes.list, &ChangeDraft::change));
  knowledge.rules = {valuesOf(conditions.list, &ConditionDraft::condition),
                     valuesOf(sources.list, &SourceDraft::source), valuesOf(rules.list, &RuleDraft::rule)};
  knowledge.redFlags = {valuesOf(redFlags.groups, &RedFlagDraft::group), std::move(redFlags.closing)};
  knowledge.measured = {valuesOf(measured.tasks, &MeasuredTaskDraft::task), std::move(measured.closing)};
  return knowledge;
}

} // namespace matwright
