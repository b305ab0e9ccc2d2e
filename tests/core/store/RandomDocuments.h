// Documents made of a seed: every value that the bounds allow, with every optional thing there or not.
#pragma once

#include "core/people/Person.h"
#include "core/plan/ClassWishes.h"

#include <algorithm>
#include <cmath>
#include <random>
#include <string>
#include <vector>

namespace matwright {

class RandomDocuments {
public:
  explicit RandomDocuments(unsigned seed) : random_(seed) {}

  ClassPlan plan() {
    ClassPlan plan;
    plan.name = text(1, kLongestName);
    if (flag())
      plan.date = date();
    plan.target = Seconds(number(ClassPlan::kShortestTarget.value(), ClassPlan::kLongestTarget.value()));
    plan.note = text(0, 300);
    plan.pace = {number(Pace::kLowestMobility, Pace::kHighestMobility),
                 number(Pace::kSlowestSpeech, Pace::kFastestSpeech), Seconds(number(0, Pace::kLongestSettle))};
    for (std::size_t people = upTo(8); plan.people.size() < people;)
      plan.people.push_back({"person-" + std::to_string(plan.people.size()) + idText()});
    const std::size_t sections = 1 + upTo(5);
    for (std::size_t i = 0; i < sections; ++i) {
      Section section{text(1, kLongestName), {}};
      for (std::size_t steps = upTo(9); section.steps.size() < steps;)
        section.steps.push_back(step());
      plan.sections.push_back(std::move(section));
    }
    return plan;
  }

  Step step() {
    lastId_ += 1 + integer(0, 1) * integer(0, 1'000'000'000);
    Step step;
    step.id = {lastId_};
    step.movement = {idText()};
    if (flag())
      step.option = {idText()};
    step.dose = {integer(1, Dose::kMost), word<DoseUnit>()};
    step.tempo.secondsPerCount = Seconds(number(Tempo::kFastestCount, Tempo::kSlowestCount));
    step.tempo.phases.clear();
    for (std::size_t phases = 1 + upTo(Tempo::kMostPhases - 1); step.tempo.phases.size() < phases;)
      step.tempo.phases.push_back({word<Breath>(), integer(1, Tempo::kMostCounts)});
    if (flag())
      step.onlySide = word<Side>();
    step.note = flag() ? text(0, 200) : "";
    for (std::size_t variants = flag() ? upTo(3) : 0; step.variants.size() < variants;)
      step.variants.push_back({{"person-" + std::to_string(step.variants.size()) + idText()},
                               {idText()},
                               flag() ? OptionId{idText()} : OptionId{}});
    return step;
  }

  Person person() {
    Person person{{idText()}, text(1, kLongestName), text(0, 12), {}, text(0, 300), {}, {}, {}, {}};
    if (flag())
      person.ageBand = word<AgeBand>();
    if (flag())
      person.stature = number(Person::kShortest, Person::kTallest);
    if (flag())
      person.mass = number(Person::kLightest, Person::kHeaviest);
    person.wishes = flag() ? text(0, 100) : "";
    for (std::size_t conditions = upTo(4); person.conditions.size() < conditions;)
      person.conditions.push_back(condition());
    return person;
  }

  // Every bound reached, and nothing that makes sense.
  ClassWishes wishes() {
    ClassWishes wishes;
    wishes.name = text(0, kLongestName);
    if (flag())
      wishes.date = date();
    wishes.length = Seconds(number(ClassPlan::kShortestTarget.value(), ClassPlan::kLongestTarget.value()));
    wishes.challenge = word<Challenge>();
    wishes.focus = {words<Region>(), words<SpineAction>(), words<Feature>()};
    wishes.sections.assign(1 + upTo(ClassPlan::kMostSections - 1), {});
    const bool lengths = flag();
    for (WishedSection& section : wishes.sections)
      section = {text(0, kLongestName),
                 lengths ? wishes.length / static_cast<double>(wishes.sections.size()) : Seconds()};
    if (lengths)
      wishes.sections.front().length += Seconds(number(-0.99, 0.99));
    wishes.props = words<Prop>();
    wishes.wall = flag();
    wishes.people = ids<PersonId>(ClassPlan::kMostPeople);
    wishes.pace = {number(Pace::kLowestMobility, Pace::kHighestMobility),
                   number(Pace::kSlowestSpeech, Pace::kFastestSpeech), Seconds(number(0, Pace::kLongestSettle))};
    wishes.include = ids<MovementId>(ClassWishes::kMostNamed);
    wishes.leaveOut = ids<MovementId>(ClassWishes::kMostNamed);
    for (std::size_t recent = upTo(ClassWishes::kMostRecent); wishes.recent.size() < recent;)
      wishes.recent.push_back({text(0, kLongestName), ids<MovementId>(40)});
    wishes.known = ids<MovementId>(ClassWishes::kMostNamed);
    wishes.recentIsKnown = flag();
    wishes.arc.assign(1 + upTo(ClassWishes::kMostArcPoints - 1), {});
    for (ArcPoint& point : wishes.arc)
      point = {number(0, 1), number(0, 10)};
    std::sort(wishes.arc.begin(), wishes.arc.end(),
              [](const ArcPoint& one, const ArcPoint& other) { return one.at < other.at; });
    wishes.fewerRises = flag();
    wishes.seed = std::uniform_int_distribution<std::uint64_t>(0, (std::uint64_t{1} << 53) - 1)(random_);
    return wishes;
  }

private:
  template <class AnyId> std::vector<AnyId> ids(std::size_t most) {
    std::vector<AnyId> ids;
    for (std::size_t count = upTo(3) ? upTo(5) : upTo(1) ? 0 : most; ids.size() < count;)
      ids.push_back({"a" + std::to_string(ids.size()) + idText()});
    return ids;
  }
  template <class Enum> EnumSet<Enum> words() {
    EnumSet<Enum> set;
    for (std::size_t count = upTo(4); count > 0; --count)
      set.insert(word<Enum>());
    return set;
  }
  PersonCondition condition() {
    PersonCondition condition{{idText()}, {}, {}, flag() ? text(0, 100) : ""};
    for (std::size_t i = upTo(3); i > 0; --i)
      condition.qualifiers.emplace(text(1, 20), qualifier());
    for (std::size_t clearances = upTo(3); condition.clearances.size() < clearances;) {
      Clearance clearance{date(), {}, text(0, 40), {}, {}, flag() ? text(0, 60) : ""};
      if (flag())
        clearance.sets = word<Level>();
      if (flag())
        clearance.until = date();
      for (std::size_t i = upTo(6); i > 0; --i)
        clearance.features.insert(word<Feature>());
      condition.clearances.push_back(std::move(clearance));
    }
    return condition;
  }
  QualifierValue qualifier() {
    switch (upTo(2)) {
    case 0:
      return flag();
    case 1:
      return idText();
    default:
      return date();
    }
  }

  int integer(int least, int most) { return std::uniform_int_distribution<int>(least, most)(random_); }
  std::size_t upTo(std::size_t most) { return std::uniform_int_distribution<std::size_t>(0, most)(random_); }
  bool flag() { return upTo(1) == 1; }
  // Both bounds, round numbers and long fractions.
  double number(double least, double most) {
    switch (upTo(3)) {
    case 0:
      return upTo(1) ? least : most;
    case 1:
      return std::clamp(std::round(std::uniform_real_distribution<double>(least, most)(random_)), least, most);
    default:
      return std::uniform_real_distribution<double>(least, most)(random_);
    }
  }
  template <class Enum> Enum word() { return static_cast<Enum>(upTo(kWordCount<Enum> - 1)); }
  Date date() {
    return Date{std::chrono::sys_days{Date{std::chrono::year{1990}, std::chrono::month{1}, std::chrono::day{1}}} +
                std::chrono::days{integer(0, 30'000)}};
  }
  std::string idText() {
    std::string id(1, static_cast<char>('a' + integer(0, 25)));
    for (std::size_t i = upTo(12); i > 0; --i) {
      const char next = "abcdefghijklmnopqrstuvwxyz0123456789-"[upTo(36)];
      id += next == '-' && id.back() == '-' ? 'x' : next;
    }
    if (id.back() == '-')
      id += 'z';
    return id;
  }
  // Letters of one to four bytes, and what JSON must escape.
  std::string text(std::size_t leastBytes, std::size_t mostBytes) {
    static const std::vector<std::string> letters = {"a",      "b",      " ",      "\"",     "\\",        "\n",
                                                     "\t",     "/",      "{",      "]",      "\x01",      "\x7f",
                                                     "\u00e9", "\u0142", "\u4e0b", "\u2028", "\U0001F9D8"};
    std::string made;
    const std::size_t bytes = leastBytes + upTo(mostBytes - leastBytes);
    while (made.size() < bytes) {
      const std::string& letter = letters[upTo(letters.size() - 1)];
      made += made.size() + letter.size() <= bytes ? letter : "x";
    }
    return made;
  }

  std::mt19937 random_;
  std::int64_t lastId_ = 0;
};

} // namespace matwright
