#include "core/handout/Card.h"

#include "core/handout/CautionRows.h"

#include <algorithm>
#include <unordered_map>

namespace matwright {
namespace {

std::string initialsOf(const Person& person) {
  return person.initials.empty() ? initialsFrom(person.name) : person.initials;
}

// Those who were screened, in the order of the class; null for one who is no longer on file.
std::vector<const Person*> screenedPeople(const Evaluation& evaluation, std::span<const Person> roster) {
  std::vector<const Person*> people;
  for (const PersonId& id : evaluation.people)
    people.push_back(findPerson(roster, id));
  return people;
}

std::string cueOf(const Way& way) {
  std::string cue;
  for (const Change* change : way.changes) {
    if (!cue.empty() && !change->cue.empty())
      cue += ' ';
    cue += change->cue;
  }
  return cue;
}

CardRow rowOf(const TransitionGraph& graph, const Step& step, const TimedStep& timed) {
  CardRow row;
  row.step = step.id;
  row.at = timed.workBegin;
  row.note = step.note;
  row.wayCue = cueOf(timed.way);
  row.dose = step.dose;
  row.tempo = step.tempo;
  if (const Movement* movement = timed.movement) {
    row.name = movement->name;
    row.option = timed.option ? timed.option->name : std::string{};
    row.action = movement->action;
    row.sides = movement->sides;
    if (movement->sides == Sides::each)
      row.onlySide = step.onlySide;
    row.poses = posesOf(*movement, timed.option);
  } else {
    row.name = step.movement.value;
  }
  if (const Position* position = graph.find(timed.start)) {
    row.elevation = position->elevation;
    if (!timed.way.changes.empty())
      row.wayTo = position->name;
  }
  return row;
}

CardVariant variantOn(const Catalogue& catalogue, const Step& step, const Variant& variant) {
  CardVariant printed;
  const Movement* movement = catalogue.find(variant.movement);
  if (variant.movement != step.movement)
    printed.name = movement ? movement->name : variant.movement.value;
  if (const Option* option = movement ? findOption(*movement, variant.option) : nullptr)
    printed.option = option->name;
  return printed;
}

// Whoever does the same is named together.
void addVariant(std::vector<CardVariant>& variants, CardVariant variant, std::string initials) {
  auto at = std::find_if(variants.begin(), variants.end(), [&](const CardVariant& each) {
    return each.name == variant.name && each.option == variant.option;
  });
  if (at == variants.end())
    at = variants.insert(variants.end(), std::move(variant));
  at->initials.push_back(std::move(initials));
}

// Collects the heights of the class in time; only changes of height are kept.
class Terrain {
public:
  Terrain(const TransitionGraph& graph, double mobility) : graph_(graph), mobility_(mobility) {}

  void be(Seconds at, const PositionId& id) {
    const Position* position = graph_.find(id);
    if (!position || (!points_.empty() && points_.back().elevation == position->elevation))
      return;
    if (!points_.empty() && points_.back().at == at)
      points_.back().elevation = position->elevation;
    else
      points_.push_back({at, position->elevation});
  }
  // Each position of the way is reached at the end of the change that leads to it.
  void go(Seconds at, const Way& way) {
    for (const Change* change : way.changes) {
      at += change->seconds * mobility_;
      be(at, change->to);
    }
  }
  std::vector<TerrainPoint> take(Seconds end) {
    if (!points_.empty() && points_.back().at < end)
      points_.push_back({end, points_.back().elevation});
    return std::move(points_);
  }

private:
  const TransitionGraph& graph_;
  double mobility_;
  std::vector<TerrainPoint> points_;
};

std::vector<TerrainPoint> terrainOf(const TransitionGraph& graph, const Schedule& schedule, double mobility) {
  Terrain terrain(graph, mobility);
  for (const TimedStep& step : schedule.steps) {
    if (&step == &schedule.steps.front())
      terrain.be(step.begin, step.start);
    terrain.go(step.begin, step.way);
    terrain.be(step.workBegin, step.start);
    if (step.turning > Seconds{}) {
      const Seconds firstEnds = step.workBegin + step.work.left;
      terrain.be(firstEnds, step.movement->end);
      terrain.go(firstEnds, step.turn);
    }
    terrain.be(step.finish, step.end);
  }
  return terrain.take(schedule.length);
}

} // namespace

Card cardOf(const Knowledge& knowledge, const ClassPlan& plan, const Evaluation& evaluation,
            std::span<const Person> roster, NameStyle style) {
  const std::vector<const Person*> people = screenedPeople(evaluation, roster);
  const auto initials = [&](std::size_t person) {
    return people[person] ? initialsOf(*people[person]) : initialsFrom(evaluation.people[person].value);
  };
  std::unordered_map<StepId, std::vector<const Caution*>> atStep;
  std::vector<const Caution*> onClass;
  for (const Caution& caution : evaluation.cautions)
    (caution.step ? atStep[*caution.step] : onClass).push_back(&caution);

  Card card;
  card.title = plan.name;
  card.date = plan.date;
  card.note = plan.note;
  card.length = evaluation.schedule.length;
  card.likelyFrom = evaluation.schedule.likelyFrom;
  card.likelyTo = evaluation.schedule.likelyTo;
  card.changes = evaluation.schedule.changes;
  for (std::size_t i = 0; i < people.size(); ++i)
    card.people.push_back(style == NameStyle::names && people[i] ? people[i]->name : initials(i));
  card.screened = !people.empty();
  std::size_t index = 0;
  for (std::size_t i = 0; i < plan.sections.size(); ++i) {
    const Section& section = plan.sections[i];
    if (section.steps.empty())
      continue;
    CardSection& printed =
        card.sections.emplace_back(CardSection{section.name, evaluation.schedule.sectionBegin[i], {}});
    for (const Step& step : section.steps) {
      CardRow row = rowOf(knowledge.transitions, step, evaluation.schedule.steps[index++]);
      if (const auto at = atStep.find(step.id); at != atStep.end())
        row.cautions = cardCautions(at->second, initials);
      for (std::size_t person = 0; person < people.size(); ++person)
        if (const Variant* variant = variantOf(step, evaluation.people[person]))
          addVariant(row.variants, variantOn(knowledge.catalogue, step, *variant), initials(person));
      printed.rows.push_back(std::move(row));
    }
  }
  card.wholeClass = cardCautions(onClass, initials);
  card.terrain = terrainOf(knowledge.transitions, evaluation.schedule, plan.pace.mobility);
  return card;
}

} // namespace matwright
