// Whether what is said to stand in the way of wishes does: found out movement by movement by evaluate(), and by nothing
// of core/compose but the words of its heads.
#pragma once

#include "core/compose/Compose.h"
#include "core/compose/Offer.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <set>

namespace matwright::test {

class ObstacleTruth {
public:
  ObstacleTruth(const Knowledge& knowledge, const ClassWishes& wishes, std::span<const Person> roster, Date day,
                const ClassPlan& kept)
      : knowledge_(knowledge), wishes_(wishes), roster_(roster), day_(day), kept_(kept) {
    forEachStep(kept, [&](const Step& step) { isKept_.insert(step.movement); });
  }

  bool holds(const Obstacle& obstacle) {
    if (!obstacle.neededFor.empty() &&
        !(has(wishes_.include, obstacle.neededFor) && isNeeded(obstacle.movement, obstacle.neededFor)))
      return false;
    const bool asked = has(wishes_.include, obstacle.movement) || !obstacle.neededFor.empty();
    const Movement* movement = knowledge_.catalogue.find(obstacle.movement);
    const bool left = has(wishes_.leaveOut, obstacle.movement);
    switch (obstacle.kind) {
    case ObstacleKind::unknownMovement:
      return asked && !movement;
    case ObstacleKind::bothWays:
      return has(wishes_.include, obstacle.movement) && left;
    case ObstacleKind::leftOut:
      return asked && left;
    case ObstacleKind::tooHard:
      return asked && movement && easyEnough(*movement).empty();
    case ObstacleKind::propMissing:
      return asked && movement && !easyEnough(*movement).empty() && withProps(*movement).empty() &&
             lacks(*movement, obstacle.prop);
    case ObstacleKind::cautioned:
      return asked && movement && !withProps(*movement).empty() && usableChoices(*movement).empty() &&
             isCautioned(*movement, obstacle);
    case ObstacleKind::noWayTo:
      return asked && movement && movement->sides == Sides::each &&
             !ways().between(movement->end, otherSide(*movement));
    case ObstacleKind::circular:
      return asked && movement && isNeeded(movement->id, movement->id);
    case ObstacleKind::personKeptOut:
      return isKeptOut(obstacle);
    case ObstacleKind::tooMuch: // of its options only the best few are offered, and the shortest may not be among them
      return obstacle.least.value() > leastOfAll() - 0.2 && leastOfAll() > wishes_.length.value() + 14.8;
    case ObstacleKind::tooLittle: // the longest options may not be among them either
      return obstacle.most.value() < wishes_.length.value() - 14.8 && obstacle.most.value() < sumOfAll(true) + 0.2 &&
             obstacle.most.value() > sumOfAll(false) - 0.2;
    case ObstacleKind::keptTooLong:
      return obstacle.section &&
             leastOfKept(*obstacle.section) > wishes_.sections[*obstacle.section].length.value() + 29.8;
    case ObstacleKind::onlyWithout:
      break;
    }
    return false;
  }

  // The wishes without what the obstacle of kind onlyWithout is about.
  ClassWishes without(const Obstacle& obstacle) const {
    ClassWishes relaxed = wishes_;
    switch (obstacle.wish) {
    case Wish::sectionLengths:
      for (WishedSection& section : relaxed.sections)
        section.length = {};
      break;
    case Wish::challenge:
      relaxed.challenge = Challenge::strong;
      break;
    case Wish::include:
      std::erase(relaxed.include, obstacle.movement);
      break;
    case Wish::leaveOut:
      relaxed.leaveOut.clear();
      break;
    case Wish::props:
      for (std::size_t prop = 0; prop < kWordCount<Prop>; ++prop)
        relaxed.props.insert(static_cast<Prop>(prop));
      break;
    case Wish::wall:
      relaxed.wall = true;
      break;
    case Wish::people:
      relaxed.people.clear();
      break;
    case Wish::prerequisites:
      relaxed.known.clear(); // no more can be named than there are
      for (const Movement& movement : knowledge_.catalogue.movements())
        relaxed.known.push_back(movement.id);
      break;
    case Wish::length:
    case Wish::kept:
      break;
    }
    return relaxed;
  }

private:
  struct Choice {
    const Option* option = nullptr;
    Dose dose;
  };

  static bool has(const std::vector<MovementId>& ids, const MovementId& id) {
    return std::find(ids.begin(), ids.end(), id) != ids.end();
  }
  bool isKnown(const MovementId& id) const {
    return has(wishes_.known, id) ||
           (wishes_.recentIsKnown && std::any_of(wishes_.recent.begin(), wishes_.recent.end(),
                                                 [&](const RecentClass& each) { return has(each.movements, id); }));
  }

  // What has to be there with the movement and is not there or known.
  std::set<MovementId> neededFor(const MovementId& id) const {
    std::set<MovementId> all;
    std::vector<MovementId> open{id};
    while (!open.empty()) {
      const Movement* movement = knowledge_.catalogue.find(open.back());
      open.pop_back();
      for (const MovementId& needed : movement ? movement->prerequisites : std::vector<MovementId>{})
        if (knowledge_.catalogue.find(needed) && !isKnown(needed) && !isKept_.contains(needed) &&
            all.insert(needed).second)
          open.push_back(needed);
    }
    return all;
  }
  bool isNeeded(const MovementId& needed, const MovementId& by) const { return neededFor(by).contains(needed); }

  std::vector<const Option*> options(const Movement& movement) const {
    std::vector<const Option*> options{nullptr};
    for (const Option& option : movement.options)
      options.push_back(&option);
    return options;
  }
  std::vector<const Option*> easyEnough(const Movement& movement) const {
    std::vector<const Option*> all = options(movement);
    std::erase_if(all, [&](const Option* option) { return effortOf(movement, option) > hardestOf(wishes_.challenge); });
    return all;
  }
  bool hasProps(const Movement& movement, const Option* option) const {
    return wishes_.props.containsAll(propsOf(movement, option)) && (wishes_.wall || !needsWall(movement, option));
  }
  std::vector<const Option*> withProps(const Movement& movement) const {
    std::vector<const Option*> all = easyEnough(movement);
    std::erase_if(all, [&](const Option* option) { return !hasProps(movement, option); });
    return all;
  }
  bool lacks(const Movement& movement, std::optional<Prop> prop) const {
    const auto all = easyEnough(movement);
    return std::any_of(all.begin(), all.end(), [&](const Option* option) {
      return prop ? propsOf(movement, option).contains(*prop) && !wishes_.props.contains(*prop)
                  : !wishes_.wall && needsWall(movement, option);
    });
  }

  Evaluation alone(const Movement& movement, const Choice& choice) const {
    ClassPlan plan = blankClass(wishes_);
    Step step = stepOf(StepId{1}, movement, choice.option ? choice.option->id : OptionId{});
    step.dose = choice.dose;
    plan.sections[0].steps.push_back(step);
    return evaluate(knowledge_, plan, roster_, day_);
  }
  // By what the step asks, or its way from side to side, whatever the class.
  static bool leavesOut(const Caution& caution) {
    return caution.level == Level::leaveOut && caution.step && caution.rule &&
           (caution.rule->scope == Scope::step || caution.rule->scope == Scope::way);
  }
  // In all options and doses that may be chosen, with the seconds each takes at the least.
  const std::vector<double>& usableChoices(const Movement& movement) {
    const auto [at, isNew] = usable_.try_emplace(movement.id);
    if (isNew)
      for (const Option* option : withProps(movement))
        for (const Dose& dose : dosesNear(doseOf(movement, option))) {
          const Evaluation all = alone(movement, {option, dose});
          if (std::none_of(all.cautions.begin(), all.cautions.end(), leavesOut) && all.schedule.steps[0].reachable)
            at->second.push_back(all.schedule.length.value());
        }
    return at->second;
  }
  bool isCautioned(const Movement& movement, const Obstacle& obstacle) const {
    for (const Option* option : withProps(movement))
      for (const Dose& dose : dosesNear(doseOf(movement, option))) {
        const Evaluation all = alone(movement, {option, dose});
        for (const Caution& caution : all.cautions)
          if (leavesOut(caution) && caution.rule == obstacle.rule && all.whom(caution) == obstacle.person)
            return true;
      }
    return false;
  }
  bool isKeptOut(const Obstacle& obstacle) const {
    const Evaluation all = evaluate(knowledge_, blankClass(wishes_), roster_, day_);
    return std::any_of(all.cautions.begin(), all.cautions.end(), [&](const Caution& caution) {
      return caution.level == Level::leaveOut && !caution.step && caution.rule == obstacle.rule &&
             all.whom(caution) == obstacle.person;
    });
  }

  Ways ways() const { return Group(knowledge_, wishes_.people, roster_, day_).ways(); }
  const PositionId& otherSide(const Movement& movement) const {
    return knowledge_.transitions.mirrored(movement.start);
  }

  // --- times, in seconds

  double leastOfKept(std::size_t section) const {
    double sum = 0;
    ClassPlan plan = kept_;
    plan.pace = wishes_.pace;
    plan.people = wishes_.people;
    for (const TimedStep& step : evaluate(knowledge_, plan, roster_, day_).schedule.steps)
      if (step.section == section)
        sum += (step.cue + wishes_.pace.settle + step.work.whole + step.turning).value();
    return sum;
  }
  double leastOfAll() {
    double sum = 0;
    for (std::size_t section = 0; section < kept_.sections.size(); ++section)
      sum += leastOfKept(section);
    std::set<MovementId> required;
    for (const MovementId& id : wishes_.include)
      if (!isKept_.contains(id)) {
        required.insert(id);
        required.merge(neededFor(id));
      }
    for (const MovementId& id : required) {
      const auto& all = usableChoices(*knowledge_.catalogue.find(id));
      sum += all.empty() ? 0 : *std::min_element(all.begin(), all.end());
    }
    return sum;
  }
  // All that can be chosen in its longest choice, or its shortest, with the longest way to each.
  double sumOfAll(bool inLongest) {
    double longest = 0;
    const Ways all = ways();
    for (const Position& from : knowledge_.transitions.positions())
      for (const Position& to : knowledge_.transitions.positions())
        if (const auto way = all.between(from.id, to.id))
          longest = std::max(longest, way->seconds.value() * wishes_.pace.mobility);
    double sum = 0;
    for (std::size_t section = 0; section < kept_.sections.size(); ++section)
      sum += leastOfKept(section) + longest * static_cast<double>(kept_.sections[section].steps.size());
    for (const Movement& movement : knowledge_.catalogue.movements())
      if (isUsable(movement.id)) {
        const auto& choices = usableChoices(movement);
        const double cue = cueOf(movement, wishes_.pace).value();
        const auto [least, most] = std::minmax_element(choices.begin(), choices.end());
        sum += (inLongest ? *most : *least) + std::max(0.0, longest - cue);
      }
    return sum;
  }
  // Could be chosen, with all that it needs.
  bool isUsable(const MovementId& id) {
    const auto can = [&](const MovementId& each) {
      return !has(wishes_.leaveOut, each) && !usableChoices(*knowledge_.catalogue.find(each)).empty();
    };
    const std::set<MovementId> needed = neededFor(id);
    return !isKept_.contains(id) && can(id) && !needed.contains(id) && std::all_of(needed.begin(), needed.end(), can);
  }

  const Knowledge& knowledge_;
  const ClassWishes& wishes_;
  std::span<const Person> roster_;
  Date day_;
  const ClassPlan& kept_;
  std::set<MovementId> isKept_;
  std::map<MovementId, std::vector<double>> usable_; // by movement
};

} // namespace matwright::test
