#include "core/knowledge/FaultList.h"
#include "core/screening/ScopeForm.h"

namespace matwright {
namespace {

template <class Value, class IdOf>
std::optional<std::size_t> before(const std::vector<Value>& values, std::size_t at, IdOf idOf) {
  for (std::size_t i = 0; i < at; ++i)
    if (idOf(values[i]) == idOf(values[at]))
      return i;
  return std::nullopt;
}

void checkQualifier(FaultList& faults, const QualifierSpec& spec, std::size_t place) {
  faults.text(Field::qualifiers, spec.name, kLongestNote, place);
  const bool chosen = spec.kind == QualifierKind::choice;
  if (chosen == spec.choices.empty())
    faults.add(chosen ? FaultKind::empty : FaultKind::doesNotFit, Field::choices).place = place;
  for (std::size_t i = 0; i < spec.choices.size(); ++i) {
    const Choice& choice = spec.choices[i];
    const auto note = [&](FaultKind kind, const std::string& what) {
      Fault& fault = faults.add(kind, Field::choices);
      fault.place = place;
      fault.within = i;
      fault.what = what;
    };
    if (choice.id.empty() || choice.name.empty())
      note(FaultKind::empty, choice.id);
    else if (choice.id.size() > kLongestName || choice.name.size() > kLongestNote)
      note(FaultKind::tooLong, choice.id);
    if (before(spec.choices, i, [](const Choice& each) { return each.id; }))
      note(FaultKind::twice, choice.id);
  }
}

// Whether the test asks what the qualifier can answer.
bool fits(const QualifierTest& test, QualifierKind kind) {
  const bool weeks = test.from || test.below;
  switch (kind) {
  case QualifierKind::weeksSince:
  case QualifierKind::pregnancyWeek:
    return weeks && !test.flag && test.choices.empty();
  case QualifierKind::choice:
    return !weeks && !test.flag && !test.choices.empty();
  case QualifierKind::flag:
    break;
  }
  return !weeks && test.flag && test.choices.empty();
}

void checkTest(FaultList& faults, const QualifierTest& test, const Condition* condition, std::size_t place) {
  const auto note = [&](FaultKind kind, const std::string& what) {
    Fault& fault = faults.add(kind, Field::when);
    fault.place = place;
    fault.what = what;
  };
  const QualifierSpec* spec = condition ? findQualifier(*condition, test.qualifier) : nullptr;
  if (!spec)
    return note(FaultKind::unknown, test.qualifier);
  if (!fits(test, spec->kind))
    return note(FaultKind::doesNotFit, test.qualifier);
  if (test.from && test.below && *test.from >= *test.below)
    note(FaultKind::outOfRange, test.qualifier);
  for (const std::string& choice : test.choices)
    if (std::none_of(spec->choices.begin(), spec->choices.end(), [&](const Choice& each) { return each.id == choice; }))
      note(FaultKind::unknown, choice);
}

void checkDemand(FaultList& faults, const Demand& demand, const ScopeForm& form, Field field) {
  const bool features = !demand.any.empty() || !demand.all.empty();
  const bool steps = !demand.at.empty() || demand.effortFrom > 0 || demand.leverFrom > 0;
  if ((features && !form.asks) || (steps && !form.onSteps))
    faults.add(FaultKind::doesNotFit, field);
  if (form.asks && !features && !(steps && form.onSteps))
    faults.add(FaultKind::empty, field);
  if (demand.effortFrom < 0 || demand.effortFrom > Effort::kHighest)
    FaultList::compare(faults.add(FaultKind::outOfRange, field), demand.effortFrom, Effort::kHighest);
  if (demand.leverFrom < 0 || demand.leverFrom > Demand::kMostLever)
    FaultList::compare(faults.add(FaultKind::outOfRange, field), demand.leverFrom, Demand::kMostLever);
}

void checkThreshold(FaultList& faults, const Rule& rule, const ScopeForm& form) {
  using enum ScopeForm::Amount;
  if (!rule.threshold) {
    if (form.amount == needed)
      faults.add(FaultKind::empty, Field::threshold);
    return;
  }
  const auto& [amount, unit, origin, usual] = *rule.threshold;
  if (form.amount == none || !form.units.contains(unit)) {
    faults.add(FaultKind::doesNotFit, Field::threshold);
    return;
  }
  if (!(amount >= form.least && amount <= mostOf(unit)))
    FaultList::compare(faults.add(FaultKind::outOfRange, Field::threshold), amount,
                       amount > mostOf(unit) ? mostOf(unit) : form.least);
}

void checkAfter(FaultList& faults, const Rule& rule) {
  if (rule.scope != Scope::order) {
    if (rule.after)
      faults.add(FaultKind::doesNotFit, Field::after);
    return;
  }
  if (!rule.after) {
    faults.add(FaultKind::empty, Field::after);
    return;
  }
  checkDemand(faults, rule.after->demand, formOf(Scope::order), Field::after);
  const double lasting = rule.after->lasting.value();
  if (lasting != 0 && !(lasting >= 1 && lasting <= Threshold::kMost))
    FaultList::compare(faults.add(FaultKind::outOfRange, Field::after), lasting, lasting < 1 ? 1 : Threshold::kMost);
}

} // namespace

std::vector<Fault> faultsIn(const Condition& condition, const Knowledge& knowledge) {
  FaultList faults;
  faults.text(Field::name, condition.name, kLongestName);
  faults.text(Field::about, condition.about, kLongestNote);
  for (std::size_t i = 0; i < condition.icd10.size(); ++i)
    faults.text(Field::icd10, condition.icd10[i], kLongestName, i);
  for (std::size_t i = 0; i < condition.qualifiers.size(); ++i) {
    const QualifierSpec& spec = condition.qualifiers[i];
    if (faults.text(Field::qualifiers, spec.id, kLongestName, i) &&
        before(condition.qualifiers, i, [](const QualifierSpec& each) { return each.id; })) {
      Fault& fault = faults.add(FaultKind::twice, Field::qualifiers);
      fault.place = i;
      fault.what = spec.id;
    }
    checkQualifier(faults, spec, i);
  }
  const auto& rules = knowledge.rules.rules;
  if (std::none_of(rules.begin(), rules.end(), [&](const Rule& rule) { return rule.condition == condition.id; }))
    faults.hint(FaultKind::notAsked, Field::name);
  return faults.take();
}

std::vector<Fault> faultsIn(const Source& source, const Knowledge&) {
  FaultList faults;
  faults.text(Field::cite, source.cite, kLongestNote);
  return faults.take();
}

std::vector<Fault> faultsIn(const Rule& rule, const Knowledge& knowledge) {
  FaultList faults;
  const Condition* condition = rule.condition ? knowledge.rules.findCondition(*rule.condition) : nullptr;
  if (rule.condition && !condition)
    faults.add(FaultKind::unknown, Field::condition).what = rule.condition->value;
  if (condition || !rule.condition)
    for (std::size_t i = 0; i < rule.when.size(); ++i)
      checkTest(faults, rule.when[i], condition, i);
  const auto measured = rule.threshold ? std::optional(rule.threshold->unit) : std::nullopt;
  const ScopeForm form = formOf(rule.scope, measured);
  checkDemand(faults, rule.asks, form, Field::asks);
  checkThreshold(faults, rule, form);
  checkAfter(faults, rule);
  faults.text(Field::why, rule.why, kLongestNote);
  faults.words(Field::instead, rule.instead, 1, Rule::kLongestInstead);
  if (rule.contested.size() > kLongestNote)
    FaultList::compare(faults.add(FaultKind::tooLong, Field::contested), static_cast<double>(rule.contested.size()),
                       kLongestNote);
  if (rule.sources.empty() && rule.strength != Strength::practice)
    faults.add(FaultKind::withoutSource, Field::sources);
  faults.once(Field::sources, rule.sources);
  for (std::size_t i = 0; i < rule.sources.size(); ++i)
    if (!knowledge.rules.findSource(rule.sources[i])) {
      Fault& fault = faults.add(FaultKind::unknown, Field::sources);
      fault.place = i;
      fault.what = rule.sources[i].value;
    }
  if (!rule.reviewed.ok())
    faults.add(FaultKind::noDay, Field::reviewed);
  return faults.take();
}

} // namespace matwright
