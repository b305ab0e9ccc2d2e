// What a composed class costs, counted from the class and what evaluate() says of it, by the words of
// core/compose/Compose.h and by nothing of the search. Of screening nothing is counted.
#pragma once

#include "core/compose/Compose.h"
#include "core/tidy/OrderWishes.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace matwright::test {

class ComposeRecount {
public:
  // `chosen` as in ComposeResult; `unlike` as composed() was asked with.
  ComposeRecount(const Knowledge& knowledge, const ClassWishes& wishes, const Evaluation& evaluation,
                 const ClassPlan& plan, const std::vector<StepId>& chosen, const std::vector<MovementId>& unlike)
      : knowledge_(knowledge), wishes_(wishes), all_(evaluation), plan_(plan), chosen_(chosen.begin(), chosen.end()),
        unlike_(unlike) {}

  Seconds moving() const { return all_.schedule.moving; }

  Seconds counterMovement() const {
    int lacking = 0;
    for (std::size_t i = 3; i < steps().size(); ++i)
      lacking += turnAt(i - 3) == SpineTurn::flexion && turnAt(i - 2) == SpineTurn::flexion &&
                 turnAt(i - 1) == SpineTurn::other && turnAt(i) != SpineTurn::counter;
    return Seconds(30.0 * lacking);
  }

  Seconds otherRegion() const {
    int same = 0;
    for (std::size_t i = 1; i < steps().size(); ++i)
      same += steps()[i].movement && steps()[i - 1].movement &&
              steps()[i].movement->regions.front() == steps()[i - 1].movement->regions.front();
    return Seconds(5.0 * same);
  }

  Seconds fewerRises() const {
    int rises = 0;
    for (const TimedStep& step : steps())
      for (const Way* way : {&step.way, &step.turn})
        rises += static_cast<int>(std::count_if(way->changes.begin(), way->changes.end(), [](const Change* change) {
          return change->features.contains(Feature::rise);
        }));
    return Seconds(wishes_.fewerRises ? 10.0 * rises : 0);
  }

  Seconds effortArc() const {
    double sum = 0;
    for (const TimedStep& step : steps())
      if (step.movement) {
        const double wished = std::min<double>(
            hardestOf(wishes_.challenge).value(),
            wishedEffort(Seconds(std::floor((step.begin + step.finish).value() / 2)), wishes_.length, wishes_.arc));
        sum += std::abs(effortOf(*step.movement, step.option).value() - wished) * step.work.whole.value() / 20;
      }
    return Seconds(sum);
  }

  Seconds warmFirst() const {
    const FeatureSet endRange{Feature::flexEnd, Feature::extEnd,  Feature::stretchEnd,
                              Feature::rot,     Feature::flexRot, Feature::extRot};
    const auto goesFar = [&](std::size_t i) {
      return steps()[i].movement && all_.facts[i].features.intersects(endRange);
    };
    int cold = 0;
    for (std::size_t i = 1; i < steps().size() && plan_.sections.size() > 1 && steps()[i].section == 0; ++i)
      cold += goesFar(i - 1) && !goesFar(i);
    return Seconds(30.0 * cold);
  }

  Seconds focus() const {
    double sum = 0;
    const double length = wishes_.length.value();
    const ClassFocus& focus = wishes_.focus;
    focus.regions.forEach([&](Region region) { sum += shortOf(0.4 * length / focus.regions.size(), given(region)); });
    focus.spine.forEach([&](SpineAction action) { sum += shortOf(0.3 * length / focus.spine.size(), given(action)); });
    focus.skills.forEach([&](Feature skill) {
      double time = 0;
      for (std::size_t i = 0; i < steps().size(); ++i)
        if (steps()[i].movement && all_.facts[i].features.contains(skill))
          time += steps()[i].work.whole.value();
      sum += shortOf(0.15 * length / focus.skills.size(), time);
    });
    return Seconds(sum);
  }

  // At the least and at the most: what nothing in the class works may be nothing that could be had.
  std::pair<Seconds, Seconds> roundness() const {
    double least = 0, most = 0;
    const auto add = [&](double given) {
      const double lacking = shortOf(0.03 * wishes_.length.value(), given);
      most += lacking;
      least += given > 0 ? lacking : 0;
    };
    for (Region region : {Region::shoulders, Region::upperBack, Region::abdominals, Region::waist, Region::hips,
                          Region::frontThigh, Region::backThigh})
      add(given(region));
    for (SpineAction action :
         {SpineAction::flexion, SpineAction::extension, SpineAction::sideBend, SpineAction::rotation})
      add(given(action));
    return {Seconds(least), Seconds(most)};
  }

  Seconds variety() const {
    double sum = 0;
    forEachChosen([&](const Step& step) {
      std::size_t ago = 0;
      while (ago < wishes_.recent.size() && !has(wishes_.recent[ago].movements, step.movement))
        ++ago;
      if (has(unlike_, step.movement))
        sum += 40;
      else if (ago < wishes_.recent.size())
        sum += 40.0 / static_cast<double>(ago + 1);
    });
    return Seconds(sum);
  }

  Seconds asWritten() const {
    double sum = 0;
    forEachChosen([&](const Step& step) {
      const Movement& movement = *knowledge_.catalogue.find(step.movement);
      const Option* option = findOption(movement, step.option);
      const bool asked = option && ((option->kind == OptionKind::easier && wishes_.challenge == Challenge::gentle) ||
                                    (option->kind == OptionKind::harder && wishes_.challenge == Challenge::strong));
      sum += option && !asked ? 6 : 0;
      sum += step.dose == doseOf(movement, option) ? 0 : 4;
    });
    return Seconds(sum);
  }

  Seconds fetching() const {
    PropSet props;
    for (const TimedStep& step : steps())
      if (step.movement)
        props = props | propsOf(*step.movement, step.option);
    return Seconds(20.0 * props.size());
  }

private:
  const std::vector<TimedStep>& steps() const { return all_.schedule.steps; }
  template <class Visit> void forEachChosen(Visit visit) const {
    forEachStep(plan_, [&](const Step& step) {
      if (chosen_.contains(step.id))
        visit(step);
    });
  }
  static bool has(const std::vector<MovementId>& ids, const MovementId& id) {
    return std::find(ids.begin(), ids.end(), id) != ids.end();
  }
  static double shortOf(double wished, double given) { return std::max(0.0, wished - given) / 2; }
  double given(Region region) const { return all_.balance.regions[static_cast<std::size_t>(region)].time.value(); }
  double given(SpineAction action) const { return all_.balance.spine[static_cast<std::size_t>(action)].time.value(); }

  // Flexion first; or extends, or is named as what counters a flexion of the class.
  SpineTurn turnAt(std::size_t i) const {
    const Movement* movement = steps()[i].movement;
    if (!movement)
      return SpineTurn::other;
    if (movement->spine.front() == SpineAction::flexion)
      return SpineTurn::flexion;
    if (std::find(movement->spine.begin(), movement->spine.end(), SpineAction::extension) != movement->spine.end())
      return SpineTurn::counter;
    const bool named = std::any_of(steps().begin(), steps().end(), [&](const TimedStep& step) {
      return step.movement && step.movement->spine.front() == SpineAction::flexion &&
             has(step.movement->counters, movement->id);
    });
    return named ? SpineTurn::counter : SpineTurn::other;
  }

  const Knowledge& knowledge_;
  const ClassWishes& wishes_;
  const Evaluation& all_;
  const ClassPlan& plan_;
  std::set<StepId> chosen_;
  const std::vector<MovementId>& unlike_;
};

} // namespace matwright::test
