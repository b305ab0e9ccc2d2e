#include "core/evaluate/Group.h"

#include <algorithm>
#include <string_view>
#include <unordered_map>
#include <unordered_set>

namespace matwright {
namespace {

Caution plainCaution(CautionKind kind, Level level, std::optional<StepId> step, std::string name) {
  Caution caution;
  caution.kind = kind;
  caution.level = level;
  caution.step = step;
  caution.name = std::move(name);
  return caution;
}

Caution cautionOf(const RuleBook& book, const Finding& finding, const Schedule& schedule) {
  Caution caution;
  caution.kind = CautionKind::rule;
  caution.level = finding.level;
  if (finding.step != Finding::kNone)
    caution.step = schedule.steps[finding.step].id;
  caution.rule = &book.rules[finding.rule];
  caution.person = finding.person;
  caution.condition = finding.condition;
  caution.because = finding.because;
  caution.cleared = finding.cleared;
  caution.assumed = finding.assumed;
  caution.measured = finding.measured;
  caution.instructed = finding.instructed;
  caution.clearance = finding.clearance;
  if (finding.earlier != Finding::kNone)
    caution.earlier = schedule.steps[finding.earlier].id;
  return caution;
}

// Those named, in the order they are named; null for those who are not on file.
std::vector<const Person*> pick(std::span<const PersonId> named, std::span<const Person> roster) {
  std::unordered_map<std::string_view, const Person*> byId;
  byId.reserve(named.size());
  for (const PersonId& id : named)
    byId.emplace(id.value, nullptr);
  for (const Person& person : roster)
    if (const auto at = byId.find(person.id.value); at != byId.end())
      at->second = &person;
  std::vector<const Person*> picked;
  picked.reserve(named.size());
  for (const PersonId& id : named)
    picked.push_back(byId.at(id.value));
  return picked;
}

// What is wrong with a step whoever does it.
void addPlainCautions(const Step& step, const TimedStep& timed, std::vector<Caution>& cautions) {
  if (!timed.movement)
    cautions.push_back(plainCaution(CautionKind::unknownMovement, Level::askFirst, step.id, step.movement.value));
  if (!timed.reachable)
    cautions.push_back(plainCaution(CautionKind::noWay, Level::askFirst, step.id, {}));
  if (timed.movement && !timed.option && !step.option.empty())
    cautions.push_back(plainCaution(CautionKind::unknownOption, Level::watch, step.id, step.option.value));
}

} // namespace

Group::Group(const Knowledge& knowledge, std::span<const PersonId> people, std::span<const Person> roster, Date day)
    : knowledge_(knowledge), day_(day) {
  const std::vector<const Person*> picked = pick(people, roster);
  for (std::size_t i = 0; i < people.size(); ++i) {
    if (std::find(people.begin(), people.begin() + i, people[i]) != people.begin() + i)
      continue;
    if (picked[i])
      found_.push_back(picked[i]);
    else
      unknown_.push_back(plainCaution(CautionKind::unknownPerson, Level::watch, {}, people[i].value));
  }
  addUnknownConditions();
  active_ = activeRules(knowledge.rules, found_, day);
  ways_.emplace(knowledge.transitions, featuresToAvoidOnWays(knowledge.rules, active_));
}

void Group::addUnknownConditions() {
  std::unordered_set<std::string_view> known;
  for (const Rule& rule : knowledge_.rules.rules)
    if (rule.condition)
      known.insert(rule.condition->value);
  for (std::size_t person = 0; person < found_.size(); ++person) {
    const std::vector<PersonCondition>& conditions = found_[person]->conditions;
    for (std::size_t i = 0; i < conditions.size(); ++i) {
      if (known.contains(conditions[i].condition.value))
        continue;
      Caution caution = plainCaution(CautionKind::unknownCondition, Level::watch, {}, conditions[i].condition.value);
      caution.person = person;
      caution.condition = i;
      unknown_.push_back(std::move(caution));
    }
  }
}

std::vector<PersonId> Group::ids() const {
  std::vector<PersonId> ids;
  ids.reserve(found_.size());
  for (const Person* person : found_)
    ids.push_back(person->id);
  return ids;
}

std::vector<Finding> Group::findingsOn(std::span<const StepFacts> facts) const {
  return screen(knowledge_.rules, found_, active_, facts, day_);
}

std::vector<Caution> Group::cautionsOn(const ClassPlan& plan, const Schedule& schedule,
                                       std::span<const StepFacts> facts) const {
  const std::vector<Finding> findings = findingsOn(facts);
  std::vector<Caution> cautions;
  cautions.reserve(findings.size() + unknown_.size());
  auto finding = findings.begin();
  // Both lists have the strongest first; of equal level, what is wrong for everybody comes before what rules say.
  const auto merge = [&](std::vector<Caution>& plain, std::size_t place) {
    for (Caution& caution : plain) {
      for (; finding != findings.end() && finding->step == place && finding->level > caution.level; ++finding)
        cautions.push_back(cautionOf(knowledge_.rules, *finding, schedule));
      cautions.push_back(std::move(caution));
    }
    for (; finding != findings.end() && finding->step == place; ++finding)
      cautions.push_back(cautionOf(knowledge_.rules, *finding, schedule));
    plain.clear();
  };
  std::vector<Caution> plain = unknown_;
  merge(plain, Finding::kNone);
  std::size_t index = 0;
  forEachStep(plan, [&](const Step& step) {
    addPlainCautions(step, schedule.steps[index], plain);
    merge(plain, index);
    ++index;
  });
  return cautions;
}

} // namespace matwright
