// The terrain for those who hear it: a list with one item a step, known by the step's id.
#pragma once

#include <QtGlobal>

namespace matwright {

class TerrainView;

// Makes the interfaces of all terrain views findable; once is enough, more do no harm.
void installTerrainAccessibility();
void forgetTerrainAccessibility(TerrainView& view);

// Called by the view: its steps, its selection, or their places on the screen are not what they were.
void announceSteps(TerrainView& view);
void announceSelection(TerrainView& view);
void announceGeometry(TerrainView& view);

} // namespace matwright
