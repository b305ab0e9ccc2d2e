#pragma once

#include "ui/timeline/TerrainGeometry.h"

#include <span>

namespace matwright {

// A class as it is shown, and what is needed to speak of it. Refers to its parts, which must outlive it.
struct TerrainSubject {
  const Snapshot& snapshot;
  const Knowledge& knowledge;
  std::span<const Person> roster;
  const TerrainScene& scene;
};

// "The hundred, step 11, Main, 10 breaths, 0:50, effort 6, low back: peak 62 N·m, mean 58 N·m, adapt for Rosa": for
// those who hear the terrain.
QString spokenStep(const TerrainSubject& subject, std::size_t step);

// Tool tips, as rich text.
QString stepToolTip(const TerrainSubject& subject, std::size_t step);
QString wayToolTip(const TerrainSubject& subject, std::size_t into);
QString sectionToolTip(const TerrainSubject& subject, std::size_t section);
QString effortToolTip(const TerrainSubject& subject, Seconds at);
QString spineToolTip(const TerrainSubject& subject, Seconds at);

} // namespace matwright
