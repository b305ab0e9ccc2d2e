#include "core/edit/Edit.h"

#include <algorithm>
#include <unordered_set>

namespace matwright {
namespace {

using Edited = Result<ClassPlan, Refusal>;
using Refused = std::optional<Refusal>;

Refused checkName(const std::string& name) {
  if (name.find_first_not_of(" \t\r\n") == std::string::npos)
    return Refusal::nameEmpty;
  if (name.size() > kLongestName)
    return Refusal::nameTooLong;
  return std::nullopt;
}

Refused checkNote(const std::string& note) {
  return note.size() > kLongestNote ? Refused(Refusal::noteTooLong) : std::nullopt;
}

Refused checkDose(const Dose& dose) { return isWellFormed(dose) ? std::nullopt : Refused(Refusal::doseOutOfRange); }

Refused checkTempo(const Tempo& tempo) {
  return isWellFormed(tempo) ? std::nullopt : Refused(Refusal::tempoOutOfRange);
}

Refused checkContent(const Step& step) {
  if (auto refused = checkDose(step.dose))
    return refused;
  if (auto refused = checkTempo(step.tempo))
    return refused;
  if (step.variants.size() > ClassPlan::kMostPeople)
    return Refusal::tooManyVariants;
  for (std::size_t i = 0; i < step.variants.size(); ++i)
    if (variantOf(step, step.variants[i].person) != &step.variants[i])
      return Refusal::personNamedTwice;
  return checkNote(step.note);
}

Refused checkPlace(const ClassPlan& plan, Place place) {
  if (place.section >= plan.sections.size())
    return Refusal::noSuchSection;
  if (place.index > plan.sections[place.section].steps.size())
    return Refusal::noSuchPlace;
  return std::nullopt;
}

Refused checkSection(const ClassPlan& plan, std::size_t section) {
  return section < plan.sections.size() ? std::nullopt : Refused(Refusal::noSuchSection);
}

// All must be steps of the class, and none named twice.
Refused checkNamed(const ClassPlan& plan, const std::vector<StepId>& steps) {
  std::unordered_set<StepId> named;
  for (StepId step : steps) {
    if (!findStep(plan, step))
      return Refusal::noSuchStep;
    if (!named.insert(step).second)
      return Refusal::stepNamedTwice;
  }
  return std::nullopt;
}

Refused checkNewSteps(const ClassPlan& plan, const std::vector<Step>& steps) {
  if (countSteps(plan) + steps.size() > ClassPlan::kMostSteps)
    return Refusal::tooManySteps;
  std::unordered_set<StepId> named;
  for (const Step& step : steps) {
    if (step.id.value <= 0 || findStep(plan, step.id))
      return Refusal::stepIdTaken;
    if (!named.insert(step.id).second)
      return Refusal::stepNamedTwice;
    if (auto refused = checkContent(step))
      return refused;
  }
  return std::nullopt;
}

void removeVariant(Step& step, const PersonId& person) {
  std::erase_if(step.variants, [&](const Variant& variant) { return variant.person == person; });
}

// Takes the named steps out of every section, in the order they have there.
std::vector<Step> takeOut(ClassPlan& plan, const std::vector<StepId>& named) {
  const std::unordered_set<StepId> wanted(named.begin(), named.end());
  std::vector<Step> taken;
  for (Section& section : plan.sections) {
    std::vector<Step> left;
    for (Step& step : section.steps)
      (wanted.contains(step.id) ? taken : left).push_back(std::move(step));
    section.steps = std::move(left);
  }
  return taken;
}

void putIn(ClassPlan& plan, Place place, std::vector<Step> steps) {
  auto& into = plan.sections[place.section].steps;
  into.insert(into.begin() + static_cast<std::ptrdiff_t>(place.index), std::make_move_iterator(steps.begin()),
              std::make_move_iterator(steps.end()));
}

// Changes one step by `change`, which is given the step.
template <class Change> Edited changeStep(const ClassPlan& plan, StepId id, Refused refused, Change change) {
  const auto place = placeOf(plan, id);
  if (!place)
    return failure(Refusal::noSuchStep);
  if (refused)
    return failure(*refused);
  ClassPlan edited = plan;
  change(edited.sections[place->section].steps[place->index]);
  return edited;
}

// Changes the class by `change`, which is given it, unless refused.
template <class Change> Edited changeClass(const ClassPlan& plan, Refused refused, Change change) {
  if (refused)
    return failure(*refused);
  ClassPlan edited = plan;
  change(edited);
  return edited;
}

Edited apply(const ClassPlan& plan, const InsertSteps& edit) {
  Refused refused = checkPlace(plan, edit.place);
  if (!refused)
    refused = checkNewSteps(plan, edit.steps);
  return changeClass(plan, refused, [&](ClassPlan& edited) { putIn(edited, edit.place, edit.steps); });
}

Edited apply(const ClassPlan& plan, const RemoveSteps& edit) {
  return changeClass(plan, checkNamed(plan, edit.steps), [&](ClassPlan& edited) { takeOut(edited, edit.steps); });
}

Edited apply(const ClassPlan& plan, const MoveSteps& edit) {
  Refused refused = checkPlace(plan, edit.place);
  if (!refused)
    refused = checkNamed(plan, edit.steps);
  return changeClass(plan, refused, [&](ClassPlan& edited) {
    // Each step that goes from before the place in its section brings the place forward by one.
    const std::unordered_set<StepId> moving(edit.steps.begin(), edit.steps.end());
    const auto& steps = plan.sections[edit.place.section].steps;
    const auto goFromBefore =
        std::count_if(steps.begin(), steps.begin() + static_cast<std::ptrdiff_t>(edit.place.index),
                      [&](const Step& step) { return moving.contains(step.id); });
    const Place place{edit.place.section, edit.place.index - static_cast<std::size_t>(goFromBefore)};
    putIn(edited, place, takeOut(edited, edit.steps));
  });
}

Edited apply(const ClassPlan& plan, const SetDose& edit) {
  return changeStep(plan, edit.step, checkDose(edit.dose), [&](Step& step) { step.dose = edit.dose; });
}

Edited apply(const ClassPlan& plan, const SetTempo& edit) {
  return changeStep(plan, edit.step, checkTempo(edit.tempo), [&](Step& step) { step.tempo = edit.tempo; });
}

Edited apply(const ClassPlan& plan, const SetOption& edit) {
  Refused refused = checkDose(edit.dose);
  if (!refused)
    refused = checkTempo(edit.tempo);
  return changeStep(plan, edit.step, refused, [&](Step& step) {
    step.option = edit.option;
    step.dose = edit.dose;
    step.tempo = edit.tempo;
  });
}

Edited apply(const ClassPlan& plan, const SetOnlySide& edit) {
  return changeStep(plan, edit.step, std::nullopt, [&](Step& step) { step.onlySide = edit.side; });
}

Edited apply(const ClassPlan& plan, const SetStepNote& edit) {
  return changeStep(plan, edit.step, checkNote(edit.note), [&](Step& step) { step.note = edit.note; });
}

Edited apply(const ClassPlan& plan, const ReplaceStep& edit) {
  return changeStep(plan, edit.step, checkContent(edit.with), [&](Step& step) {
    step = edit.with;
    step.id = edit.step;
  });
}

Edited apply(const ClassPlan& plan, const SetVariant& edit) {
  const Step* step = findStep(plan, edit.step);
  const bool isNew = step && !variantOf(*step, edit.variant.person);
  Refused refused;
  if (isNew && step->variants.size() >= ClassPlan::kMostPeople)
    refused = Refusal::tooManyVariants;
  return changeStep(plan, edit.step, refused, [&](Step& changed) {
    removeVariant(changed, edit.variant.person);
    changed.variants.push_back(edit.variant);
    std::sort(changed.variants.begin(), changed.variants.end(),
              [](const Variant& a, const Variant& b) { return a.person < b.person; });
  });
}

Edited apply(const ClassPlan& plan, const RemoveVariant& edit) {
  return changeStep(plan, edit.step, std::nullopt, [&](Step& step) { removeVariant(step, edit.person); });
}

Edited apply(const ClassPlan& plan, const InsertSection& edit) {
  Refused refused = checkName(edit.name);
  if (edit.index > plan.sections.size())
    refused = Refusal::noSuchPlace;
  else if (plan.sections.size() >= ClassPlan::kMostSections)
    refused = Refusal::tooManySections;
  return changeClass(plan, refused, [&](ClassPlan& edited) {
    edited.sections.insert(edited.sections.begin() + static_cast<std::ptrdiff_t>(edit.index), Section{edit.name, {}});
  });
}

Edited apply(const ClassPlan& plan, const RemoveSection& edit) {
  Refused refused = checkSection(plan, edit.index);
  if (!refused && plan.sections.size() == 1)
    refused = Refusal::lastSection;
  return changeClass(plan, refused, [&](ClassPlan& edited) {
    std::vector<Step> steps = std::move(edited.sections[edit.index].steps);
    edited.sections.erase(edited.sections.begin() + static_cast<std::ptrdiff_t>(edit.index));
    const bool first = edit.index == 0;
    const std::size_t into = first ? 0 : edit.index - 1;
    putIn(edited, {into, first ? 0 : edited.sections[into].steps.size()}, std::move(steps));
  });
}

Edited apply(const ClassPlan& plan, const MoveSection& edit) {
  Refused refused = checkSection(plan, edit.from);
  if (!refused && edit.to >= plan.sections.size())
    refused = Refusal::noSuchPlace;
  return changeClass(plan, refused, [&](ClassPlan& edited) {
    Section section = std::move(edited.sections[edit.from]);
    edited.sections.erase(edited.sections.begin() + static_cast<std::ptrdiff_t>(edit.from));
    edited.sections.insert(edited.sections.begin() + static_cast<std::ptrdiff_t>(edit.to), std::move(section));
  });
}

Edited apply(const ClassPlan& plan, const RenameSection& edit) {
  Refused refused = checkSection(plan, edit.index);
  if (!refused)
    refused = checkName(edit.name);
  return changeClass(plan, refused, [&](ClassPlan& edited) { edited.sections[edit.index].name = edit.name; });
}

Edited apply(const ClassPlan& plan, const SplitSection& edit) {
  Refused refused = checkPlace(plan, edit.place);
  if (!refused && plan.sections.size() >= ClassPlan::kMostSections)
    refused = Refusal::tooManySections;
  if (!refused)
    refused = checkName(edit.name);
  return changeClass(plan, refused, [&](ClassPlan& edited) {
    Section after{edit.name, {}};
    auto& steps = edited.sections[edit.place.section].steps;
    const auto cut = steps.begin() + static_cast<std::ptrdiff_t>(edit.place.index);
    after.steps.assign(std::make_move_iterator(cut), std::make_move_iterator(steps.end()));
    steps.erase(cut, steps.end());
    edited.sections.insert(edited.sections.begin() + static_cast<std::ptrdiff_t>(edit.place.section + 1),
                           std::move(after));
  });
}

Edited apply(const ClassPlan& plan, const RenameClass& edit) {
  return changeClass(plan, checkName(edit.name), [&](ClassPlan& edited) { edited.name = edit.name; });
}

Edited apply(const ClassPlan& plan, const SetDate& edit) {
  return changeClass(plan, std::nullopt, [&](ClassPlan& edited) { edited.date = edit.date; });
}

Edited apply(const ClassPlan& plan, const SetTarget& edit) {
  const bool inRange = edit.target >= ClassPlan::kShortestTarget && edit.target <= ClassPlan::kLongestTarget;
  return changeClass(plan, inRange ? std::nullopt : Refused(Refusal::targetOutOfRange),
                     [&](ClassPlan& edited) { edited.target = edit.target; });
}

Edited apply(const ClassPlan& plan, const SetClassNote& edit) {
  return changeClass(plan, checkNote(edit.note), [&](ClassPlan& edited) { edited.note = edit.note; });
}

Edited apply(const ClassPlan& plan, const SetPace& edit) {
  return changeClass(plan, isWellFormed(edit.pace) ? std::nullopt : Refused(Refusal::paceOutOfRange),
                     [&](ClassPlan& edited) { edited.pace = edit.pace; });
}

Edited apply(const ClassPlan& plan, const SetPeople& edit) {
  Refused refused;
  const std::unordered_set<PersonId> distinct(edit.people.begin(), edit.people.end());
  if (edit.people.size() > ClassPlan::kMostPeople)
    refused = Refusal::tooManyPeople;
  else if (distinct.size() != edit.people.size())
    refused = Refusal::personNamedTwice;
  return changeClass(plan, refused, [&](ClassPlan& edited) { edited.people = edit.people; });
}

Edited apply(const ClassPlan& plan, const EditGroup& group) {
  Edited edited = plan;
  for (const Edit& edit : group.edits) {
    edited = applyEdit(*edited, edit);
    if (!edited)
      return edited;
  }
  return edited;
}

} // namespace

Result<ClassPlan, Refusal> applyEdit(const ClassPlan& plan, const Edit& edit) {
  return std::visit([&](const auto& one) { return apply(plan, one); }, edit);
}

} // namespace matwright
