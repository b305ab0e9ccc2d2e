// What teachers wish of an order besides short ways, and what it weighs; used wherever steps are put in order. Costs
// are whole milliseconds. All of it is the program's own: common practice, no source.
#pragma once

#include "core/movement/Movement.h"
#include "core/transition/TransitionGraph.h"

#include <cstdint>
#include <utility>

namespace matwright {

inline constexpr std::int64_t kNoCounterCost = 30'000; // a block of flexion without a counter-movement
inline constexpr std::int64_t kSameRegionCost = 5'000; // the main region of the movement before
inline constexpr std::int64_t kRiseCost = 10'000;      // a change that asks to get up from the floor

// A second for every 20 of work that is one step of effort off what is wished. Efforts in hundredths, work in
// milliseconds.
constexpr std::int64_t offArcCost(std::int64_t effort, std::int64_t wished, std::int64_t work) {
  return (effort < wished ? wished - effort : effort - wished) * work / 2'000;
}

int risesOn(const Way& way);

bool goesToEndRange(FeatureSet features); // of flexion, of extension or of a stretch, or rotation

// What a movement is to flexion before it.
enum class SpineTurn {
  flexion, // what the spine does first
  counter, // extends the spine, or is named as a counter-movement of a flexion that is there
  other,
};
SpineTurn spineTurnOf(const Movement& movement); // by itself; one that is named has to be found where others are known

// How flexion goes on from movement to movement: none, one movement, a block of two or more, such a block and one
// movement that did not counter it.
inline constexpr int kFlexionStates = 4;

// The state afterwards, and whether the movement is the second after a block of which neither counters it.
constexpr std::pair<int, bool> afterFlexion(int state, SpineTurn turn) {
  enum { none, one, block, blockAndOther };
  if (turn == SpineTurn::counter)
    return {none, false};
  const bool unanswered = state == blockAndOther;
  if (turn == SpineTurn::flexion)
    return {state == none || unanswered ? one : block, unanswered};
  return {state == block ? blockAndOther : none, unanswered};
}

} // namespace matwright
