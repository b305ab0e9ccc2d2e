#include "core/evaluate/Outcome.h"

#include "core/evaluate/Facts.h"

#include <algorithm>
#include <tuple>

namespace matwright {
namespace {

// Where a caution belongs.
auto identity(const Caution& caution) {
  const std::int64_t step = isRunning(caution) || !caution.step ? 0 : caution.step->value;
  return std::tuple(caution.kind, step, caution.rule, caution.person + 1, caution.level);
}
bool before(const Caution& a, const Caution& b) { return identity(a) < identity(b); }

} // namespace

bool isRunning(const Caution& caution) {
  return caution.rule && (caution.rule->scope == Scope::total || caution.rule->scope == Scope::stretch);
}

Outcome outcomeOf(const Knowledge& knowledge, const Group& group, const ClassPlan& plan) {
  Outcome outcome{scheduleOf(knowledge.catalogue, knowledge.transitions, group.ways(), plan), {}};
  outcome.cautions = group.cautionsOn(plan, outcome.schedule, factsOf(knowledge, outcome.schedule));
  std::sort(outcome.cautions.begin(), outcome.cautions.end(), before);
  return outcome;
}

std::vector<Caution> newCautions(const Outcome& without, const Outcome& with) {
  std::vector<Caution> added;
  std::set_difference(with.cautions.begin(), with.cautions.end(), without.cautions.begin(), without.cautions.end(),
                      std::back_inserter(added), before);
  return added;
}

Chosen::Chosen(std::span<const PersonId> inClass, std::span<const PersonId> wanted) {
  std::vector<bool> chosen(inClass.size());
  std::transform(inClass.begin(), inClass.end(), chosen.begin(), [&](const PersonId& person) {
    return std::find(wanted.begin(), wanted.end(), person) != wanted.end();
  });
  if (std::find(chosen.begin(), chosen.end(), true) != chosen.end())
    chosen_ = std::move(chosen);
}

bool Chosen::concernedBy(const Caution& caution) const {
  return chosen_.empty() || caution.person >= chosen_.size() || chosen_[caution.person];
}

LevelCounts countLevels(std::span<const Caution> cautions) {
  LevelCounts counts{};
  for (const Caution& caution : cautions)
    ++counts[static_cast<std::size_t>(caution.level)];
  return counts;
}

std::optional<Level> strongestOf(const LevelCounts& counts) {
  for (std::size_t level = counts.size(); level > 0; --level)
    if (counts[level - 1] > 0)
      return static_cast<Level>(level - 1);
  return std::nullopt;
}

} // namespace matwright
