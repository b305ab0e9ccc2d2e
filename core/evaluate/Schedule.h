// When everything in a class happens.
//
//   work  = sides x dose x counts x seconds a count
//   gap   = max(way seconds x mobility, cue seconds) + settle: the teacher talks while people move
//   cue   = words of the set-up cue / speaking rate; halved when the step before is the same movement
//   turn  = way seconds x mobility between the two sides of a step done on each side
//
// The first step has no way into it: people are there. Speaking rate: about 150 words a minute in conversation
// (National Center for Voice and Speech), 110 to 130 when instructing (judgement). A movement that is not in the
// catalogue is timed by its step's own dose and tempo, where people are, without a cue. Where no way is charted, none
// is counted: neither seconds nor changes.
//
// Spread: each term has a coefficient of variation, and the whole class one common factor for the pace of the day.
// Repetitions vary from breath to breath by 20.8 % (Tobin et al. 1988, J Appl Physiol: resting rate, 65 people), so a
// step of n repetitions by 20.8 % / sqrt(n); ways by 25 %, cues by 15 %, and the common factor by 4 % (the last three
// are the program's own, common practice, no source). A gap, being the larger of two uncertain times, takes on average
// longer than the larger of their means; its mean and spread are those of the greater of two independent normal
// variables (Clark 1961, Operations Research 9: 145-162), so the likely range lies a little later than the plain
// length. It is the middle 80 % of a normal distribution.
#pragma once

#include "core/movement/Catalogue.h"
#include "core/plan/ClassPlan.h"
#include "core/transition/TransitionGraph.h"

#include <optional>
#include <vector>

namespace matwright {

struct TimedStep {
  StepId id;
  std::size_t section = 0;
  const Movement* movement = nullptr; // null: not in the catalogue; then the positions are those before it
  const Option* option = nullptr;     // null: as written, or not known
  PositionId start, end;              // of the side done first, and last; empty when nothing before says where
  Seconds begin;                      // of the gap
  Way way;                            // into the step
  bool reachable = true;              // false: no way is charted into the step, or between its sides
  Seconds moving;                     // way x mobility
  Seconds cue;
  Seconds gap;       // max(moving, cue) + settle
  Seconds workBegin; // begin + gap
  Work work;
  Way turn; // between the sides
  Seconds turning;
  Seconds finish;  // workBegin + work.whole + turning
  int changes = 0; // of position: into the step, and between its sides; a way counts once, whatever it passes through
  friend bool operator==(const TimedStep&, const TimedStep&) = default;
};

struct Schedule {
  std::vector<TimedStep> steps;      // in order
  std::vector<Seconds> sectionBegin; // one a section; an empty section begins where the next would
  Seconds length;
  Seconds likelyFrom, likelyTo;
  double deviation = 0;    // standard deviation of the time the class takes, seconds
  double chanceInTime = 1; // to end by the target
  int changes = 0;         // of position, over all steps
  Seconds moving;          // on all ways
  Seconds working;
  friend bool operator==(const Schedule&, const Schedule&) = default;
};

Seconds cueOf(const Movement& movement, const Pace& pace); // the whole of it

Schedule scheduleOf(const Catalogue& catalogue, const TransitionGraph& graph, const Ways& ways, const ClassPlan& plan);

} // namespace matwright
