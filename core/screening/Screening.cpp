#include "core/screening/Screening.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace matwright {
namespace {

// Sums of seconds pass a threshold only by more than the rounding of their terms.
constexpr double kRounding = 1e-6;

// Where a running rule speaks, and for what.
struct Passing {
  std::size_t step = 0;
  FeatureSet because;
  double measured = 0;
};

// One sum in the making: of the whole class, or of a stretch.
class Running {
public:
  Running(const Rule& rule, std::vector<Passing>& passings)
      : rule_(rule), over_(rule.over.value_or(Threshold{})), passings_(passings) {}

  bool inSeconds() const { return over_.unit == MeasureUnit::seconds; }
  void addGap(const StepFacts& facts) {
    if (const FeatureSet resting = matched(rule_, facts.restFeatures); inSeconds() && !resting.empty()) {
      sum_ += facts.gap.value();
      because_ |= resting;
    }
  }
  void addWork(std::size_t step, const StepFacts& facts) {
    if (const FeatureSet asked = matched(rule_, facts.features); !asked.empty()) {
      sum_ += inSeconds() ? facts.work.value() : facts.repetitions;
      because_ |= asked;
    }
    if (passedAt_ == Finding::kNone && sum_ > over_.amount + kRounding)
      passedAt_ = step;
  }
  void close() {
    if (passedAt_ != Finding::kNone)
      passings_.push_back({passedAt_, because_, sum_});
    sum_ = 0;
    because_ = {};
    passedAt_ = Finding::kNone;
  }

private:
  const Rule& rule_;
  Threshold over_;
  std::vector<Passing>& passings_;
  double sum_ = 0;
  FeatureSet because_;
  std::size_t passedAt_ = Finding::kNone;
};

std::vector<Passing> totalPassings(const Rule& rule, std::span<const StepFacts> steps) {
  std::vector<Passing> passings;
  Running running(rule, passings);
  for (std::size_t i = 0; i < steps.size(); ++i) {
    running.addGap(steps[i]);
    running.addWork(i, steps[i]);
  }
  running.close();
  return passings;
}

// What goes on from one step to the next: what lasts in the rest between them, and what both ask without owing it to
// the shape they rest in (a head lifted in two movements in a row).
FeatureSet carriedOver(const StepFacts& before, const StepFacts& after) {
  return after.restFeatures |
         (before.features.without(before.shapeFeatures) & after.features.without(after.shapeFeatures));
}

std::vector<Passing> stretchPassings(const Rule& rule, std::span<const StepFacts> steps) {
  std::vector<Passing> passings;
  Running running(rule, passings);
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (matched(rule, steps[i].features).empty()) {
      running.close();
      continue;
    }
    if (i > 0 && running.inSeconds() && matched(rule, carriedOver(steps[i - 1], steps[i])).empty())
      running.close();
    running.addGap(steps[i]);
    running.addWork(i, steps[i]);
  }
  running.close();
  return passings;
}

bool covered(const PersonCondition& condition, FeatureSet because, Date day) {
  return std::any_of(condition.clearances.begin(), condition.clearances.end(), [&](const Clearance& clearance) {
    const bool covers = clearance.features.empty() || (!because.empty() && clearance.features.containsAll(because));
    return covers && holdsOn(clearance, day);
  });
}

// What a rule says at one step, whoever it speaks for.
struct Voice {
  bool speaks = false;
  FeatureSet because;
  double measured = 0;
};

Voice voiceFor(FeatureSet because) { return {!because.empty(), because, 0}; }

// The rules that anybody is concerned by, each heard once a step.
class Voices {
public:
  Voices(const RuleBook& book, std::span<const ActiveRule> active, std::span<const StepFacts> steps)
      : book_(book), steps_(steps), passings_(book.rules.size()), now_(book.rules.size()) {
    std::vector<bool> listed(book.rules.size(), false);
    for (const ActiveRule& each : active) {
      if (listed[each.rule])
        continue;
      listed[each.rule] = true;
      rules_.push_back(each.rule);
      const Rule& rule = book.rules[each.rule];
      if (rule.scope == Scope::total)
        passings_[each.rule] = totalPassings(rule, steps);
      else if (rule.scope == Scope::stretch)
        passings_[each.rule] = stretchPassings(rule, steps);
    }
  }

  // Hears every rule at a step, or on the class as a whole; false when all are silent.
  bool hear(std::size_t step) {
    bool any = false;
    for (std::size_t rule : rules_) {
      now_[rule] = step == Finding::kNone ? onClass(book_.rules[rule]) : at(rule, step);
      any |= now_[rule].speaks;
    }
    return any;
  }
  const Voice& operator[](std::size_t rule) const { return now_[rule]; }

private:
  Voice onClass(const Rule& rule) const {
    if (rule.scope != Scope::wholeClass)
      return {};
    if (rule.any.empty() && rule.all.empty())
      return {true, {}, 0};
    FeatureSet asked;
    for (const StepFacts& facts : steps_)
      asked |= facts.features;
    return voiceFor(matched(rule, asked));
  }
  Voice at(std::size_t index, std::size_t step) const {
    const Rule& rule = book_.rules[index];
    switch (rule.scope) {
    case Scope::step:
      return voiceFor(matched(rule, steps_[step].features));
    case Scope::way:
      return voiceFor(matched(rule, steps_[step].wayFeatures));
    case Scope::total:
    case Scope::stretch:
      for (const Passing& passing : passings_[index])
        if (passing.step == step)
          return {true, passing.because, passing.measured};
      return {};
    case Scope::wholeClass:
      break;
    }
    return {};
  }

  const RuleBook& book_;
  std::span<const StepFacts> steps_;
  std::vector<std::vector<Passing>> passings_; // by rule
  std::vector<Voice> now_;                     // by rule
  std::vector<std::size_t> rules_;             // without repetition
};

// kNone (everybody) comes first.
auto place(const ActiveRule& each) { return std::tuple(each.person + 1, each.rule, each.condition + 1); }
bool before(const ActiveRule& a, const ActiveRule& b) { return place(a) < place(b); }

bool weighsMore(const Finding& a, const Finding& b) {
  return a.level != b.level ? a.level > b.level : !a.assumed && b.assumed;
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
  Voices voices(book, active, steps);
  const auto findAt = [&](std::size_t step) {
    if (!voices.hear(step))
      return;
    for (std::size_t i = 0; i < active.size();) {
      const ActiveRule& first = active[i];
      const Voice& voice = voices[first.rule];
      std::optional<Finding> weightiest;
      for (; i < active.size() && active[i].rule == first.rule && active[i].person == first.person; ++i) {
        if (!voice.speaks)
          continue;
        const ActiveRule& each = active[i];
        Finding finding{each.rule,     each.person,       each.condition, step,          book.rules[each.rule].level,
                        voice.because, /*cleared=*/false, each.assumed,   voice.measured};
        if (finding.level == Level::askFirst && each.person != Finding::kNone &&
            covered(personAt(each.person).conditions[each.condition], voice.because, day)) {
          finding.level = Level::watch;
          finding.cleared = true;
        }
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
