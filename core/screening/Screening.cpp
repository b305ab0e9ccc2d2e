#include "core/screening/Screening.h"

#include "core/screening/Voices.h"

#include <algorithm>
#include <tuple>

namespace matwright {
namespace {

bool covers(const Clearance& clearance, FeatureSet because, Date day) {
  return (clearance.features.empty() || (!because.empty() && clearance.features.containsAll(because))) &&
         holdsOn(clearance, day);
}

// Whether one of two written instructions comes before the other in weight: the later one, of one day the stronger.
bool outweighs(const Clearance& a, const Clearance& b) {
  const std::chrono::sys_days one{a.given}, other{b.given};
  return one != other ? one > other : *a.sets > *b.sets;
}

void heed(const Heeded& papers, Finding& finding) {
  finding.level = papers.level;
  finding.cleared = papers.cleared;
  finding.instructed = papers.instructed;
  finding.clearance = papers.clearance;
}

// kNone (everybody) comes first.
auto place(const ActiveRule& each) { return std::tuple(each.person + 1, each.rule, each.condition + 1); }
bool before(const ActiveRule& a, const ActiveRule& b) { return place(a) < place(b); }

bool weighsMore(const Finding& a, const Finding& b) {
  return a.level != b.level ? a.level > b.level : !a.assumed && b.assumed;
}

Finding findingOf(const ActiveRule& active, const Voice& voice, Level level, std::span<const StepFacts> steps) {
  Finding finding;
  finding.rule = active.rule;
  finding.person = active.person;
  finding.condition = active.condition;
  finding.step = voice.step;
  finding.level = level;
  finding.because = voice.because;
  finding.assumed = active.assumed;
  finding.measured = voice.measured;
  finding.earlier = voice.earlier;
  if (voice.step != Finding::kNone)
    finding.asked = askedBy(steps[voice.step]);
  return finding;
}

// What the rules that anybody is concerned by say, by rule.
std::vector<std::vector<Voice>> voicesIn(const RuleBook& book, std::span<const ActiveRule> active,
                                         std::span<const StepFacts> steps) {
  std::vector<std::vector<Voice>> voices(book.rules.size());
  std::vector<bool> heard(book.rules.size(), false);
  for (const ActiveRule& each : active)
    if (!heard[each.rule]) {
      heard[each.rule] = true;
      voices[each.rule] = voicesOf(book.rules[each.rule], steps);
    }
  return voices;
}

// Puts findings that come by person and rule into the order of steps and levels, and leaves them by person and rule
// within each. There are few steps and levels, so each finding is counted to its place.
std::vector<Finding> inOrder(const std::vector<Finding>& findings, std::size_t steps) {
  const auto shelf = [](const Finding& finding) { // kNone (the whole class) comes first
    return (finding.step + 1) * kWordCount<Level> + kWordCount<Level> - 1 - static_cast<std::size_t>(finding.level);
  };
  std::vector<std::size_t> next((steps + 1) * kWordCount<Level> + 1, 0);
  for (const Finding& each : findings)
    ++next[shelf(each) + 1];
  for (std::size_t i = 1; i < next.size(); ++i)
    next[i] += next[i - 1];
  std::vector<Finding> ordered(findings.size());
  for (const Finding& each : findings)
    ordered[next[shelf(each)]++] = each;
  return ordered;
}

template <class PersonAt>
std::vector<Finding> screenOf(const RuleBook& book, PersonAt personAt, std::span<const ActiveRule> given,
                              std::span<const StepFacts> steps, Date day) {
  std::vector<ActiveRule> sorted;
  std::span<const ActiveRule> active = given;
  if (!std::is_sorted(given.begin(), given.end(), before)) {
    sorted.assign(given.begin(), given.end());
    std::sort(sorted.begin(), sorted.end(), before);
    active = sorted;
  }
  const auto voices = voicesIn(book, active, steps);
  std::vector<Finding> findings;
  for (auto first = active.begin(); first != active.end();) {
    const auto last = std::find_if(first, active.end(), [&](const ActiveRule& each) {
      return each.rule != first->rule || each.person != first->person;
    });
    for (const Voice& voice : voices[first->rule]) {
      std::optional<Finding> weightiest;
      for (auto each = first; each != last; ++each) {
        Finding finding = findingOf(*each, voice, book.rules[each->rule].level, steps);
        if (each->condition != Finding::kNone)
          heed(heeded(personAt(each->person).conditions[each->condition].clearances, finding.level, finding.because,
                      day),
               finding);
        if (!weightiest || weighsMore(finding, *weightiest))
          weightiest = finding;
      }
      findings.push_back(*weightiest);
    }
    first = last;
  }
  return inOrder(findings, steps.size());
}

} // namespace

Heeded heeded(std::span<const Clearance> clearances, Level level, FeatureSet because, Date day) {
  std::size_t instruction = Finding::kNone, allowance = Finding::kNone;
  for (std::size_t i = 0; i < clearances.size(); ++i) {
    if (!covers(clearances[i], because, day))
      continue;
    if (!clearances[i].sets)
      allowance = std::min(allowance, i);
    else if (instruction == Finding::kNone || outweighs(clearances[i], clearances[instruction]))
      instruction = i;
  }
  if (instruction != Finding::kNone)
    return {*clearances[instruction].sets, false, true, instruction};
  if (allowance != Finding::kNone && level == Level::askFirst)
    return {Level::watch, true, false, allowance};
  return {level, false, false, Finding::kNone};
}

std::vector<Finding> screen(const RuleBook& book, std::span<const Person> people, std::span<const ActiveRule> active,
                            std::span<const StepFacts> steps, Date day) {
  return screenOf(
      book, [&](std::size_t i) -> const Person& { return people[i]; }, active, steps, day);
}

std::vector<Finding> screen(const RuleBook& book, std::span<const Person* const> people,
                            std::span<const ActiveRule> active, std::span<const StepFacts> steps, Date day) {
  return screenOf(
      book, [&](std::size_t i) -> const Person& { return *people[i]; }, active, steps, day);
}

} // namespace matwright
