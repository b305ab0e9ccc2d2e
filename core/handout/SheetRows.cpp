#include "core/handout/SheetRows.h"

#include "core/evaluate/Facts.h"

#include <algorithm>
#include <tuple>

namespace matwright {
namespace {

// What a rule says of some of its features.
struct Verdict {
  Heeded papers;
  std::size_t condition = Finding::kNone;
  bool assumed = false;
  friend bool operator==(const Verdict&, const Verdict&) = default;
};

struct Part {
  Demand asks;
  Verdict verdict;
};

// Of one rule, along all conditions by which it speaks: what weighs most, as in screen().
Verdict verdictOn(const Rule& rule, std::span<const ActiveRule> speaking, const Person& person, FeatureSet because,
                  Date day) {
  std::optional<Verdict> weightiest;
  for (const ActiveRule& each : speaking) {
    Verdict verdict{{rule.level, false, false, Finding::kNone}, each.condition, each.assumed};
    if (each.condition != Finding::kNone)
      verdict.papers = heeded(person.conditions[each.condition].clearances, rule.level, because, day);
    if (!weightiest ||
        std::tuple(verdict.papers.level, !verdict.assumed) > std::tuple(weightiest->papers.level, !weightiest->assumed))
      weightiest = verdict;
  }
  return *weightiest;
}

// A paper speaks for features; a rule that looks for one of several may be covered in part.
std::vector<Part> partsOf(const Rule& rule, std::span<const ActiveRule> speaking, const Person& person, Date day) {
  std::vector<Part> parts;
  if (rule.asks.any.empty())
    return {{rule.asks, verdictOn(rule, speaking, person, rule.asks.all, day)}};
  rule.asks.any.forEach([&](Feature feature) {
    const Verdict verdict = verdictOn(rule, speaking, person, rule.asks.all | FeatureSet{feature}, day);
    auto part = std::find_if(parts.begin(), parts.end(), [&](const Part& each) { return each.verdict == verdict; });
    if (part == parts.end()) {
      part = parts.insert(parts.end(), {rule.asks, verdict});
      part->asks.any = {};
    }
    part->asks.any.insert(feature);
  });
  return parts;
}

class Rows {
public:
  Rows(const Knowledge& knowledge, const Person& person) : knowledge_(knowledge), person_(person) {}

  void add(const Rule& rule, const Part& part, SheetRule said) {
    SheetRow row{part.verdict.papers.level, rule.instead, rule.why, {}, paperOf(part.verdict), {}};
    auto at = std::find_if(rows_.begin(), rows_.end(), [&](const SheetRow& each) {
      return std::tie(each.level, each.instead, each.why, each.paper) ==
             std::tie(row.level, row.instead, row.why, row.paper);
    });
    if (at == rows_.end())
      at = rows_.insert(rows_.end(), std::move(row));
    if (rule.condition)
      if (std::string name = conditionName(knowledge_.rules, *rule.condition);
          std::find(at->conditions.begin(), at->conditions.end(), name) == at->conditions.end())
        at->conditions.push_back(std::move(name));
    at->rules.push_back(std::move(said));
  }
  std::vector<SheetRow> take() {
    std::stable_sort(rows_.begin(), rows_.end(),
                     [](const SheetRow& a, const SheetRow& b) { return a.level > b.level; });
    return std::move(rows_);
  }

private:
  std::optional<Clearance> paperOf(const Verdict& verdict) const {
    if (verdict.papers.clearance == Finding::kNone)
      return std::nullopt;
    return person_.conditions[verdict.condition].clearances[verdict.papers.clearance];
  }

  const Knowledge& knowledge_;
  const Person& person_;
  std::vector<SheetRow> rows_;
};

std::optional<int> movementsAsking(const Rule& rule, const Demand& asks, std::span<const StepFacts> facts) {
  const bool ways = rule.threshold && rule.threshold->unit == MeasureUnit::changes;
  if (ways || rule.scope == Scope::way || rule.scope == Scope::missing || rule.scope == Scope::wholeClass)
    return std::nullopt;
  return static_cast<int>(
      std::count_if(facts.begin(), facts.end(), [&](const StepFacts& each) { return met(asks, askedBy(each)); }));
}

SheetStep stepAs(const Knowledge& knowledge, const ClassPlan& plan, const Person& person, StepId id) {
  SheetStep shown;
  bool found = false;
  forEachStep(plan, [&](const Step& step) {
    shown.number += found ? 0 : 1;
    if (step.id != id)
      return;
    found = true;
    const Variant* own = variantOf(step, person.id);
    const Movement* movement = knowledge.catalogue.find(own ? own->movement : step.movement);
    const Option* option = movement ? findOption(*movement, own ? own->option : step.option) : nullptr;
    shown.name = movement ? movement->name : (own ? own->movement : step.movement).value;
    shown.option = option ? option->name : std::string{};
  });
  return shown;
}

// Puts what a class raises to the part of the rule that it belongs to. What comes of several features together, of
// which no paper covers all, may belong to none: then it is a part of its own.
void addCaution(std::vector<Part>& parts, std::vector<std::vector<const Caution*>>& raised, const Caution& caution) {
  const auto fits = [&](const Part& part) {
    return part.verdict.condition == caution.condition && part.verdict.papers.clearance == caution.clearance;
  };
  auto at = std::find_if(parts.begin(), parts.end(), fits);
  if (at == parts.end()) {
    Demand together = caution.rule->asks;
    together.any = {};
    together.all = caution.because;
    at = parts.insert(parts.end(), {together,
                                    {{caution.level, caution.cleared, caution.instructed, caution.clearance},
                                     caution.condition,
                                     caution.assumed}});
    raised.emplace_back();
  }
  raised[static_cast<std::size_t>(at - parts.begin())].push_back(&caution);
}

} // namespace

std::string conditionName(const RuleBook& book, const ConditionId& id) {
  const Condition* condition = book.findCondition(id);
  return condition ? condition->name : id.value;
}

std::vector<SheetRow> sheetRows(const Knowledge& knowledge, const Person& person, std::span<const ActiveRule> active,
                                Date day, const ClassPlan& plan, const std::vector<const Caution*>& cautions) {
  const std::vector<StepFacts> facts = factsOfCatalogue(knowledge);
  Rows rows(knowledge, person);
  for (auto first = active.begin(); first != active.end();) {
    const auto last =
        std::find_if(first, active.end(), [&](const ActiveRule& each) { return each.rule != first->rule; });
    const Rule& rule = knowledge.rules.rules[first->rule];
    std::vector<Part> parts = partsOf(rule, {first, last}, person, day);
    const bool partly = parts.size() > 1;
    std::vector<std::vector<const Caution*>> raised(parts.size());
    for (const Caution* caution : cautions)
      if (caution->rule == &rule)
        addCaution(parts, raised, *caution);
    for (std::size_t i = 0; i < parts.size(); ++i) {
      SheetRule said{rule, parts[i].asks, partly, parts[i].verdict.assumed, {}, {}, false};
      said.movements = movementsAsking(rule, said.asks, facts);
      for (const Caution* caution : raised[i]) {
        if (caution->step)
          said.steps.push_back(stepAs(knowledge, plan, person, *caution->step));
        else
          said.onClass = true;
      }
      if (rule.scope != Scope::missing || said.onClass)
        rows.add(rule, parts[i], std::move(said));
    }
    first = last;
  }
  return rows.take();
}

} // namespace matwright
