#include "ui/document/StepSelection.h"

#include <algorithm>

namespace matwright {
namespace {

std::vector<StepId> inOrder(const ClassPlan& plan, const std::vector<StepId>& wanted) {
  std::vector<StepId> steps;
  forEachStep(plan, [&](const Step& step) {
    if (std::find(wanted.begin(), wanted.end(), step.id) != wanted.end())
      steps.push_back(step.id);
  });
  return steps;
}

bool exists(const ClassPlan& plan, Place place) {
  return place.section < plan.sections.size() && place.index <= plan.sections[place.section].steps.size();
}

} // namespace

StepSelection::StepSelection(PlanDocument& document, QObject* parent) : QObject(parent), document_(document) {
  connect(&document, &PlanDocument::loaded, this, &StepSelection::clear);
  connect(&document, &PlanDocument::changed, this, &StepSelection::keepWhatExists);
}

bool StepSelection::contains(StepId step) const {
  return std::find(steps_.begin(), steps_.end(), step) != steps_.end();
}

Place StepSelection::gap() const {
  const ClassPlan& plan = document_.plan();
  if (gap_ && exists(plan, *gap_))
    return *gap_;
  if (current_)
    if (const auto place = placeOf(plan, *current_))
      return {place->section, place->index + 1};
  for (std::size_t section = plan.sections.size(); section-- > 0;)
    if (!plan.sections[section].steps.empty())
      return {section, plan.sections[section].steps.size()};
  return {};
}

void StepSelection::clear() { settle({}, std::nullopt, std::nullopt); }

void StepSelection::select(StepId step) {
  anchor_ = step;
  settle({step}, step, std::nullopt);
}

void StepSelection::toggle(StepId step) {
  std::vector<StepId> steps = steps_;
  const auto at = std::find(steps.begin(), steps.end(), step);
  anchor_ = step;
  if (at == steps.end()) {
    steps.push_back(step);
    settle(inOrder(document_.plan(), steps), step, std::nullopt);
    return;
  }
  steps.erase(at);
  settle(steps, steps.empty() ? std::nullopt : std::optional{steps.back()}, std::nullopt);
}

void StepSelection::extendTo(StepId step) {
  const StepId from = anchor_.value_or(step);
  std::vector<StepId> steps;
  bool within = false;
  forEachStep(document_.plan(), [&](const Step& candidate) {
    const bool bound = candidate.id == from || candidate.id == step;
    if (within || bound)
      steps.push_back(candidate.id);
    if (bound && from != step)
      within = !within;
  });
  anchor_ = from;
  settle(steps, step, std::nullopt);
}

void StepSelection::set(const std::vector<StepId>& steps, std::optional<StepId> current) {
  anchor_ = current;
  settle(inOrder(document_.plan(), steps), current, std::nullopt);
}

void StepSelection::selectAll() {
  std::vector<StepId> steps;
  forEachStep(document_.plan(), [&](const Step& step) { steps.push_back(step.id); });
  settle(steps, current_ ? current_ : steps.empty() ? std::nullopt : std::optional{steps.front()}, std::nullopt);
}

void StepSelection::selectGap(Place place) { settle({}, std::nullopt, place); }

void StepSelection::keepWhatExists() {
  const ClassPlan& plan = document_.plan();
  const auto steps = inOrder(plan, steps_);
  auto current = current_ && findStep(plan, *current_) ? current_ : std::nullopt;
  if (!current && !steps.empty())
    current = steps.back();
  if (anchor_ && !findStep(plan, *anchor_))
    anchor_ = current;
  settle(steps, current, gap_ && exists(plan, *gap_) ? gap_ : std::nullopt);
}

void StepSelection::settle(std::vector<StepId> steps, std::optional<StepId> current, std::optional<Place> gap) {
  if (steps == steps_ && current == current_ && gap == gap_)
    return;
  steps_ = std::move(steps);
  current_ = current;
  gap_ = gap;
  Q_EMIT changed();
}

} // namespace matwright
