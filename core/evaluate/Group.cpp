#include "core/evaluate/Group.h"

#include "core/evaluate/Facts.h"

#include <algorithm>
#include <cstdlib>
#include <string_view>
#include <tuple>
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
  caution.asked = finding.asked;
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

// What is wrong with a step in itself, for everybody or for the one who does it in her own way.
void addPlainCautions(const Step& step, const TimedStep& timed, std::size_t person, std::vector<Caution>& cautions) {
  const auto add = [&](CautionKind kind, Level level, std::string name) {
    cautions.push_back(plainCaution(kind, level, step.id, std::move(name)));
    cautions.back().person = person;
  };
  if (!timed.movement)
    add(CautionKind::unknownMovement, Level::askFirst, step.movement.value);
  if (!timed.reachable)
    add(CautionKind::noWay, Level::askFirst, {});
  if (timed.movement && !timed.option && !step.option.empty())
    add(CautionKind::unknownOption, Level::watch, step.option.value);
}

// The order in which findings are given. Nobody (everybody) and nowhere (the class as a whole) come first.
auto rank(const Finding& finding) {
  return std::tuple(finding.step + 1, -static_cast<int>(finding.level), finding.person + 1, finding.rule);
}

const Step& stepAt(const ClassPlan& plan, std::size_t index) {
  for (const Section& section : plan.sections) {
    if (index < section.steps.size())
      return section.steps[index];
    index -= section.steps.size();
  }
  std::abort(); // facts and plan are of one class
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

struct Group::Varied {
  std::size_t person = 0;
  ClassPlan plan; // as she does it
  Schedule schedule;
  std::vector<StepFacts> facts;
};

std::vector<Group::Varied> Group::variedIn(const ClassPlan& plan) const {
  std::vector<Varied> varied;
  for (std::size_t person = 0; person < found_.size(); ++person) {
    const PersonId& id = found_[person]->id;
    bool any = false;
    forEachStep(plan, [&](const Step& step) { any |= variantOf(step, id) != nullptr; });
    if (!any)
      continue;
    Varied own{person, asDoneBy(id, plan, knowledge_.catalogue), {}, {}};
    own.schedule = scheduleOf(knowledge_.catalogue, knowledge_.transitions, *ways_, own.plan);
    own.facts = factsOf(knowledge_, own.schedule);
    varied.push_back(std::move(own));
  }
  return varied;
}

std::vector<Finding> Group::screened(std::span<const ActiveRule> active, std::span<const StepFacts> facts) const {
  return screen(knowledge_.rules, found_, active, facts, day_);
}

std::vector<Finding> Group::findingsOn(std::span<const Varied> varied, std::span<const StepFacts> facts) const {
  if (varied.empty())
    return screened(active_, facts);
  std::vector<ActiveRule> common = active_;
  std::vector<Finding> findings;
  for (const Varied& own : varied) {
    const auto hers = [&](const ActiveRule& each) { return each.person == own.person; };
    std::vector<ActiveRule> active;
    std::copy_if(common.begin(), common.end(), std::back_inserter(active), hers);
    std::erase_if(common, hers);
    const std::vector<Finding> found = screened(active, own.facts);
    findings.insert(findings.end(), found.begin(), found.end());
  }
  const std::vector<Finding> found = screened(common, facts);
  findings.insert(findings.end(), found.begin(), found.end());
  std::sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) { return rank(a) < rank(b); });
  return findings;
}

std::vector<Caution> Group::cautionsOn(const ClassPlan& plan, const Schedule& schedule,
                                       std::span<const StepFacts> facts) const {
  const std::vector<Varied> varied = variedIn(plan);
  const std::vector<Finding> findings = findingsOn(varied, facts);
  std::vector<Caution> cautions;
  cautions.reserve(findings.size() + unknown_.size());
  auto finding = findings.begin();
  // Both lists have the strongest first; of equal level, what is wrong in itself comes before what rules say.
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
    addPlainCautions(step, schedule.steps[index], Finding::kNone, plain);
    for (const Varied& own : varied)
      if (variantOf(step, found_[own.person]->id))
        addPlainCautions(stepAt(own.plan, index), own.schedule.steps[index], own.person, plain);
    std::stable_sort(plain.begin(), plain.end(), [](const Caution& a, const Caution& b) { return a.level > b.level; });
    merge(plain, index);
    ++index;
  });
  return cautions;
}

} // namespace matwright
