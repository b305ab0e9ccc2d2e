#include "core/screening/Screening.h"

#include <algorithm>

namespace matwright {
namespace {

enum class Answer { holds, speaksAgainst, open };

Answer answer(bool holds) { return holds ? Answer::holds : Answer::speaksAgainst; }

Answer answerTo(const QualifierTest& test, const QualifierSpec& spec, const QualifierValue& value, Date day) {
  switch (spec.kind) {
  case QualifierKind::weeksSince:
  case QualifierKind::pregnancyWeek: {
    const Date* date = std::get_if<Date>(&value);
    if (!date || !date->ok())
      return Answer::open;
    const int week = std::max(0, weekOn(spec.kind, *date, day));
    return answer((!test.from || *test.from <= week) && (!test.below || week < *test.below));
  }
  case QualifierKind::choice: {
    const std::string* choice = std::get_if<std::string>(&value);
    const bool known = choice && std::any_of(spec.choices.begin(), spec.choices.end(),
                                             [&](const Choice& candidate) { return candidate.id == *choice; });
    if (!known)
      return Answer::open;
    return answer(std::find(test.choices.begin(), test.choices.end(), *choice) != test.choices.end());
  }
  case QualifierKind::flag: {
    const bool* flag = std::get_if<bool>(&value);
    if (!flag)
      return Answer::open;
    return answer(!test.flag || *test.flag == *flag);
  }
  }
  return Answer::open;
}

// Whether all tests of the rule hold for one condition of a person: open when none speaks against it and one is open.
Answer answerTo(const Rule& rule, const Condition* condition, const PersonCondition& held, Date day) {
  Answer all = Answer::holds;
  for (const QualifierTest& test : rule.when) {
    const QualifierSpec* spec = condition ? findQualifier(*condition, test.qualifier) : nullptr;
    const auto value = held.qualifiers.find(test.qualifier);
    const Answer one =
        spec && value != held.qualifiers.end() ? answerTo(test, *spec, value->second, day) : Answer::open;
    if (one == Answer::speaksAgainst || (one == Answer::open && !test.openHolds))
      return Answer::speaksAgainst;
    if (one == Answer::open)
      all = one;
  }
  return all;
}

// What one rule has to do with one person, added to `active`.
void addFor(const RuleBook& book, std::size_t index, const Person& person, std::size_t place, Date day,
            std::vector<ActiveRule>& active) {
  const Rule& rule = book.rules[index];
  if (!rule.ages.empty() && !(person.ageBand && rule.ages.contains(*person.ageBand)))
    return;
  if (!rule.condition) {
    active.push_back({index, place, Finding::kNone, !rule.when.empty()});
    return;
  }
  for (std::size_t at = 0; at < person.conditions.size(); ++at) {
    const PersonCondition& held = person.conditions[at];
    if (*rule.condition != held.condition)
      continue;
    const Condition* condition = rule.when.empty() ? nullptr : book.findCondition(*rule.condition);
    const Answer all = answerTo(rule, condition, held, day);
    if (all != Answer::speaksAgainst)
      active.push_back({index, place, at, all == Answer::open});
  }
}

template <class PersonAt>
std::vector<ActiveRule> activeRulesOf(const RuleBook& book, std::size_t people, PersonAt personAt, Date day) {
  std::vector<ActiveRule> active;
  std::vector<std::size_t> forSome;
  for (std::size_t rule = 0; rule < book.rules.size(); ++rule) {
    if (isForSome(book.rules[rule]))
      forSome.push_back(rule);
    else
      active.push_back({rule, Finding::kNone, Finding::kNone, !book.rules[rule].when.empty()});
  }
  for (std::size_t person = 0; person < people; ++person)
    for (std::size_t rule : forSome)
      addFor(book, rule, personAt(person), person, day, active);
  return active;
}

} // namespace

std::vector<ActiveRule> activeRules(const RuleBook& book, std::span<const Person> people, Date day) {
  return activeRulesOf(
      book, people.size(), [&](std::size_t i) -> const Person& { return people[i]; }, day);
}

std::vector<ActiveRule> activeRules(const RuleBook& book, std::span<const Person* const> people, Date day) {
  return activeRulesOf(
      book, people.size(), [&](std::size_t i) -> const Person& { return *people[i]; }, day);
}

FeatureSet featuresToAvoidOnWays(const RuleBook& book, std::span<const ActiveRule> active) {
  FeatureSet avoid;
  for (const ActiveRule& each : active) {
    const Rule& rule = book.rules[each.rule];
    if (rule.scope == Scope::way && rule.level >= Level::adapt)
      avoid |= rule.asks.any | rule.asks.all;
  }
  return avoid;
}

} // namespace matwright
