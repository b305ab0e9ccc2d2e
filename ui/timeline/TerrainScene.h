#pragma once

#include "ui/document/PlanDocument.h"

#include <QString>
#include <array>
#include <optional>
#include <vector>

namespace matwright {

// What the terrain shows of a class, as plain data: no pixels yet, and no texts but names and doses.
struct TerrainStep {
  struct Stop {       // a position on the way into a step
    double share = 0; // of the moving time, when the body is there: 0 to 1
    Elevation elevation{};
    friend bool operator==(const Stop&, const Stop&) = default;
  };

  StepId id;
  Place place;
  QString name;
  QString dose;                 // "10 breaths"
  QString shortDose;            // "10", "5+5", "30 s"
  const Pose* pose = nullptr;   // owned by the knowledge; null for a movement that is not in the catalogue
  std::optional<Region> region; // the main one
  Elevation elevation{};        // where the work is done
  Elevation ending{};           // where it leaves the body
  Seconds begin, workBegin, finish;
  std::optional<Seconds> sideChange; // when one side hands over to the other

  std::vector<Stop> way; // from the step before to this one, both ends included; empty for the first step
  Seconds moving;
  int changes = 0;                 // of position on the way in
  std::optional<Level> caution;    // the strongest at the step; none does not mean that it is safe
  std::optional<Level> wayCaution; // the strongest that speaks of the way in, not of the work

  int effort = 0;      // 0 to 10
  SpineAction spine{}; // the main one
  double load = 0;     // the mean moment about the low back while at work, in newton metres
  double loadPeak = 0;
  friend bool operator==(const TerrainStep&, const TerrainStep&) = default;
};

struct TerrainSection {
  QString name;
  Seconds begin, end; // equal for an empty section
  std::size_t steps = 0;
  friend bool operator==(const TerrainSection&, const TerrainSection&) = default;
};

struct TerrainScene {
  std::vector<TerrainStep> steps;
  std::vector<TerrainSection> sections;
  Seconds length, target;
  double loadScale = 0; // the end of the scale of loads, a round number of newton metres; 0: no load to show
  std::shared_ptr<const Knowledge> knowledge; // that owns the poses
  friend bool operator==(const TerrainScene&, const TerrainScene&) = default;
};

TerrainScene sceneOf(const Snapshot& snapshot);

std::array<bool, kWordCount<Elevation>> elevationsIn(const TerrainScene& scene);

} // namespace matwright
