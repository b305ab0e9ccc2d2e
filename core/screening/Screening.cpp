#include "core/screening/Screening.h"

#include "core/screening/Voices.h"

#include <algorithm>
#include <array>
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

// Sets the level of a finding by what the person's clinician allowed or instructed.
void heed(const std::vector<Clearance>& clearances, Date day, Finding& finding) {
  std::size_t instruction = Finding::kNone, allowance = Finding::kNone;
  for (std::size_t i = 0; i < clearances.size(); ++i) {
    if (!covers(clearances[i], finding.because, day))
      continue;
    if (!clearances[i].sets)
      allowance = std::min(allowance, i);
    else if (instruction == Finding::kNone || outweighs(clearances[i], clearances[instruction]))
      instruction = i;
  }
  if (instruction != Finding::kNone) {
    finding.level = *clearances[instruction].sets;
    finding.instructed = true;
    finding.clearance = instruction;
  } else if (allowance != Finding::kNone && finding.level == Level::askFirst) {
    finding.level = Level::watch;
    finding.cleared = true;
    finding.clearance = allowance;
  }
}

// The rules that anybody is concerned by, each heard once a step, from the first step to the last.
class Hearing {
public:
  Hearing(const RuleBook& book, std::span<const ActiveRule> active, std::span<const StepFacts> steps)
      : voices_(book.rules.size()), next_(book.rules.size(), 0), now_(book.rules.size(), nullptr) {
    std::vector<bool> listed(book.rules.size(), false);
    for (const ActiveRule& each : active) {
      if (listed[each.rule])
        continue;
      listed[each.rule] = true;
      voices_[each.rule] = voicesOf(book.rules[each.rule], steps);
      if (!voices_[each.rule].empty())
        rules_.push_back(each.rule);
    }
  }

  // Hears every rule on the class as a whole (which comes first), or at a step; false when all are silent.
  bool hear(std::size_t step) {
    bool any = false;
    for (std::size_t rule : rules_) {
      const std::vector<Voice>& voices = voices_[rule];
      std::size_t& next = next_[rule];
      const bool speaks = next < voices.size() && voices[next].step == step;
      now_[rule] = speaks ? &voices[next++] : nullptr;
      any |= speaks;
    }
    return any;
  }
  // Null when the rule is silent here.
  const Voice* operator[](std::size_t rule) const { return now_[rule]; }

private:
  std::vector<std::vector<Voice>> voices_; // by rule
  std::vector<std::size_t> next_;          // by rule: what was not yet heard
  std::vector<const Voice*> now_;          // by rule
  std::vector<std::size_t> rules_;         // that speak anywhere, without repetition
};

// kNone (everybody) comes first.
auto place(const ActiveRule& each) { return std::tuple(each.person + 1, each.rule, each.condition + 1); }
bool before(const ActiveRule& a, const ActiveRule& b) { return place(a) < place(b); }

bool weighsMore(const Finding& a, const Finding& b) {
  return a.level != b.level ? a.level > b.level : !a.assumed && b.assumed;
}

Finding findingOf(const ActiveRule& active, const Voice& voice, Level level) {
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
  return finding;
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

  std::vector<Finding> findings;
  std::array<std::vector<Finding>, kWordCount<Level>> byLevel; // of one step, each by person and rule
  Hearing hearing(book, active, steps);
  const auto findAt = [&](std::size_t step) {
    if (!hearing.hear(step))
      return;
    for (std::size_t i = 0; i < active.size();) {
      const ActiveRule& first = active[i];
      const Voice* voice = hearing[first.rule];
      std::optional<Finding> weightiest;
      for (; i < active.size() && active[i].rule == first.rule && active[i].person == first.person; ++i) {
        if (!voice)
          continue;
        const ActiveRule& each = active[i];
        Finding finding = findingOf(each, *voice, book.rules[each.rule].level);
        if (each.condition != Finding::kNone)
          heed(personAt(each.person).conditions[each.condition].clearances, day, finding);
        if (!weightiest || weighsMore(finding, *weightiest))
          weightiest = finding;
      }
      if (weightiest)
        byLevel[static_cast<std::size_t>(weightiest->level)].push_back(*weightiest);
    }
    for (auto level = byLevel.rbegin(); level != byLevel.rend(); ++level) {
      findings.insert(findings.end(), level->begin(), level->end());
      level->clear();
    }
  };
  findAt(Finding::kNone);
  for (std::size_t step = 0; step < steps.size(); ++step)
    findAt(step);
  return findings;
}

} // namespace

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
