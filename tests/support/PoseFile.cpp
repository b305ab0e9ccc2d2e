#include "tests/support/PoseFile.h"

#include "core/store/Files.h"
#include "core/store/KnowledgeParts.h"

#include <algorithm>

namespace matwright {

namespace {

template <class Draft>
std::vector<Draft> readDrafts(const std::string& file, const Format& format,
                              std::vector<Draft> (*read)(const Json&, Reading&), Errors& errors) {
  const auto tree = readFile(file).and_then([&](const std::string& text) { return openTree(text, file, format); });
  if (!tree) {
    errors.push_back(tree.error());
    return {};
  }
  Reading reading{file, {}, {}, nullptr};
  std::vector<Draft> drafts = read(*tree, reading);
  errors.insert(errors.end(), reading.errors.begin(), reading.errors.end());
  return drafts;
}

std::vector<PositionDraft> positionsOf(const std::string& file, Errors& errors) {
  std::vector<PositionDraft> positions = readDrafts(file, kPositionsFormat, readPositionDrafts, errors);
  checkPositions(positions, errors);
  return positions;
}

} // namespace

PoseList readPositionPoses(const std::string& file) {
  PoseList list;
  for (const PositionDraft& draft : positionsOf(file, list.errors))
    list.poses.push_back({draft.position.id.value, draft.position.pose});
  return list;
}

PoseList readCataloguePoses(const std::string& file, const std::string& positions,
                            const std::vector<std::string>& ids) {
  PoseList list;
  const std::vector<PositionDraft> places = positionsOf(positions, list.errors);
  std::vector<MovementDraft> movements = readDrafts(file, kCatalogueFormat, readMovementDrafts, list.errors);
  checkMovements(movements, &places, false, list.errors);
  for (const MovementDraft& draft : movements) {
    const Movement& movement = draft.movement;
    if (!ids.empty() && std::find(ids.begin(), ids.end(), movement.id.value) == ids.end())
      continue;
    EnumSet<Region> regions;
    if (!movement.regions.empty())
      regions.insert(movement.regions.front());
    list.poses.push_back({movement.id.value + " start", movement.poses.start, regions});
    list.poses.push_back({movement.id.value + " end", movement.poses.end, regions});
    for (const Option& option : movement.options) {
      if (!option.poses)
        continue;
      const std::string label = movement.id.value + "/" + option.id.value;
      list.poses.push_back({label + " start", option.poses->start, regions});
      list.poses.push_back({label + " end", option.poses->end, regions});
    }
  }
  return list;
}

} // namespace matwright
