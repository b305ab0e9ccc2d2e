// The people of a class on a day, with all that follows from them before any step is chosen: the rules that concern
// them and the ways that spare them. It is the same while a class is edited, and while candidates for a gap are
// compared.
#pragma once

#include "core/evaluate/Evaluation.h"

#include <optional>

namespace matwright {

class Group {
public:
  // Everything given must outlive the group. Whoever is named twice is in it once.
  Group(const Knowledge& knowledge, std::span<const PersonId> people, std::span<const Person> roster, Date day);

  const Ways& ways() const { return *ways_; }
  std::vector<PersonId> ids() const; // of those found
  // What rules say of anything done by everybody, as screen() gives it. `person` refers to ids().
  std::vector<Finding> findingsOn(std::span<const StepFacts> facts) const { return screened(active_, facts); }

  // All cautions on a class with this schedule, as in Evaluation::cautions. Who has variants is screened for what she
  // does: her own facts, along the ways of the group.
  std::vector<Caution> cautionsOn(const ClassPlan& plan, const Schedule& schedule,
                                  std::span<const StepFacts> facts) const;

private:
  struct Varied; // somebody who does some steps in her own way

  void addUnknownConditions();
  std::vector<Varied> variedIn(const ClassPlan& plan) const;
  std::vector<Finding> findingsOn(std::span<const Varied> varied, std::span<const StepFacts> facts) const;
  std::vector<Finding> screened(std::span<const ActiveRule> active, std::span<const StepFacts> facts) const;

  const Knowledge& knowledge_;
  Date day_;
  std::vector<const Person*> found_;
  std::vector<Caution> unknown_;   // people and conditions that nothing is known of
  std::vector<ActiveRule> active_; // by person
  std::optional<Ways> ways_;       // set in the constructor
};

} // namespace matwright
