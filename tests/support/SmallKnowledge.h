// A handful of positions, movements and rules with round numbers, for classes that can be worked out by hand.
//
//   lying --4--> side-left --5--> sit --6--> stand         lying --4--> sit   (flex-load)
//   lying <-3--- sit <-2-------------------- stand         sit <--> four, stand <--> four, side-left <--> side-right
//
// Every change written for the left has its mirror.
#pragma once

#include "core/knowledge/Knowledge.h"
#include "core/plan/ClassPlan.h"

#include <string>
#include <utility>
#include <vector>

namespace matwright::test {

inline Date day(int year, unsigned month, unsigned dayOfMonth) {
  return {std::chrono::year{year}, std::chrono::month{month}, std::chrono::day{dayOfMonth}};
}
inline Date daysAfter(Date date, int days) { return Date{std::chrono::sys_days{date} + std::chrono::days{days}}; }

inline Position position(std::string id, Elevation elevation, FeatureSet features = {}, std::string mirror = {}) {
  Position made;
  made.name = id;
  made.id = PositionId{std::move(id)};
  made.elevation = elevation;
  made.features = features;
  made.mirror = PositionId{std::move(mirror)};
  return made;
}

inline Change change(std::string from, std::string to, double seconds, FeatureSet features = {}, std::string cue = {},
                     std::string by = {}) {
  return {PositionId{std::move(from)},
          PositionId{std::move(to)},
          Seconds(seconds),
          features,
          std::move(cue),
          std::move(by)};
}

inline std::vector<Position> smallPositions() {
  return {position("lying", Elevation::faceUp, {Feature::supine, Feature::reclineFlat}),
          position("side-left", Elevation::sideLying, {Feature::sidelie}, "side-right"),
          position("side-right", Elevation::sideLying, {Feature::sidelie}, "side-left"),
          position("sit", Elevation::sitting),
          position("four", Elevation::handsAndKnees, {Feature::wristLoad, Feature::kneel}),
          position("stand", Elevation::standing)};
}

inline std::vector<Change> smallChanges() {
  return {change("lying", "side-left", 4, {}, "Roll to your left."),
          change("side-left", "lying", 4, {}, "Roll back."),
          change("side-left", "sit", 5, {Feature::wristLoad}, "Press up with the right hand."),
          change("sit", "side-left", 5, {}, "Lower to the left side."),
          change("lying", "sit", 4, {Feature::flexLoad}, "Sit straight up.", "straight"),
          change("sit", "lying", 3, {Feature::flexLoad}, "Roll down.", "straight"),
          change("side-left", "side-right", 6, {}, "Roll over."),
          change("sit", "four", 3, {Feature::wristLoad, Feature::kneel}, "Come to hands and knees."),
          change("four", "sit", 3, {Feature::wristLoad}, "Sit back to one side."),
          change("sit", "stand", 6, {Feature::rise}, "Rise slowly."),
          change("stand", "sit", 2, {Feature::rise}, "Sit down on the mat."),
          change("four", "stand", 7, {Feature::rise}, "Step a foot forward and rise."),
          change("stand", "four", 4, {Feature::rise}, "Kneel and place the hands.")};
}

inline Tempo tempo(double secondsPerCount, std::vector<Phase> phases) {
  return {Seconds(secondsPerCount), std::move(phases)};
}

inline Movement movement(std::string id, std::string where, Sides sides = Sides::together) {
  Movement made;
  made.name = id;
  made.id = MovementId{std::move(id)};
  made.start = made.end = PositionId{std::move(where)};
  made.sides = sides;
  made.dose = {5, DoseUnit::repetitions};
  made.tempo = tempo(1, {{Breath::in, 3}, {Breath::out, 3}}); // 6 seconds
  made.setUp = "one two three four five";                     // 2 seconds at 150 words a minute
  made.action = "out: lift";
  made.regions = {Region::abdominals};
  made.spine = {SpineAction::neutral};
  made.effort = Effort(4);
  return made;
}

// curl: lying, flex-load, neck-lift, regions abdominals and neck, spine flexion, with options `low` (no lift) and
// `hard`. kick: lying on the side, done on each. swing: standing, alternating. arch: hands and knees, extension. roll:
// starts lying, ends sitting. fold: sitting, held by the clock.
inline std::vector<Movement> smallMovements() {
  Movement curl = movement("curl", "lying");
  curl.features = {Feature::flexLoad, Feature::neckLift};
  curl.regions = {Region::abdominals, Region::neck};
  curl.spine = {SpineAction::flexion};
  Option low;
  low.id = OptionId{"low"};
  low.name = "Head down";
  low.kind = OptionKind::easier;
  low.removes = {Feature::flexLoad, Feature::neckLift};
  low.effort = Effort(2);
  low.dose = Dose{3, DoseUnit::repetitions};
  Option hard;
  hard.id = OptionId{"hard"};
  hard.name = "Legs long";
  hard.kind = OptionKind::harder;
  hard.adds = {Feature::legsLong};
  hard.effort = Effort(7);
  hard.tempo = tempo(2, {{Breath::in, 3}, {Breath::out, 3}});
  curl.options = {low, hard};

  Movement kick = movement("kick", "side-left", Sides::each);
  kick.regions = {Region::hips};
  kick.effort = Effort(3);
  Movement swing = movement("swing", "stand", Sides::alternating);
  swing.dose = {6, DoseUnit::repetitions};
  swing.regions = {Region::hips, Region::lowerLeg, Region::waist};
  swing.features = {Feature::balance};
  Movement arch = movement("arch", "four");
  arch.spine = {SpineAction::extension, SpineAction::rotation};
  arch.regions = {Region::upperBack};
  Movement roll = movement("roll", "lying");
  roll.end = PositionId{"sit"};
  roll.spine = {SpineAction::flexion, SpineAction::extension};
  roll.features = {Feature::flexLoad};
  roll.prerequisites = {MovementId{"curl"}};
  roll.effort = Effort(6);
  Movement fold = movement("fold", "sit");
  fold.dose = {40, DoseUnit::seconds};
  fold.features = {Feature::flexEnd};
  fold.regions = {Region::backThigh};
  fold.spine = {SpineAction::flexion};
  fold.effort = Effort(1);
  return {curl, kick, swing, arch, roll, fold};
}

inline Rule rule(std::string id, Scope scope, Level level, FeatureSet any = {}, std::string condition = {}) {
  Rule made;
  made.id = RuleId{std::move(id)};
  if (!condition.empty())
    made.condition = ConditionId{std::move(condition)};
  made.scope = scope;
  made.level = level;
  made.asks.any = any;
  made.instead = "another way: " + made.id.value;
  made.strength = Strength::practice;
  made.reviewed = day(2026, 1, 1);
  return made;
}

inline Condition condition(std::string id, std::vector<QualifierSpec> qualifiers = {}) {
  Condition made;
  made.name = id;
  made.id = ConditionId{std::move(id)};
  made.qualifiers = std::move(qualifiers);
  return made;
}

inline Knowledge smallKnowledge(RuleBook rules = {}) {
  Knowledge knowledge;
  knowledge.catalogue = Catalogue(smallMovements());
  knowledge.transitions = TransitionGraph(smallPositions(), smallChanges());
  knowledge.rules = std::move(rules);
  return knowledge;
}

inline Person person(std::string id, std::vector<std::string> conditions = {}) {
  Person made;
  made.name = id;
  made.id = PersonId{std::move(id)};
  for (std::string& name : conditions) {
    PersonCondition held;
    held.condition = ConditionId{std::move(name)};
    made.conditions.push_back(std::move(held));
  }
  return made;
}

// A step of the small catalogue with its usual dose and tempo.
inline Step step(std::int64_t id, const std::string& name, const std::string& option = {}) {
  static const Catalogue catalogue(smallMovements());
  if (const Movement* known = catalogue.find(MovementId{name})) {
    Step made = stepOf(StepId{id}, *known, OptionId{option});
    made.option = OptionId{option};
    return made;
  }
  Step made;
  made.id = StepId{id};
  made.movement = MovementId{name};
  made.option = OptionId{option};
  return made;
}

inline Step onlySide(Step made, Side side) {
  made.onlySide = side;
  return made;
}

inline Step dosed(Step made, int amount, DoseUnit unit = DoseUnit::repetitions) {
  made.dose = {amount, unit};
  return made;
}

// A class of one section.
inline ClassPlan classOf(std::vector<Step> steps) {
  ClassPlan plan;
  plan.name = "Small";
  plan.sections = {{"Main", std::move(steps)}};
  return plan;
}

} // namespace matwright::test
