// Wishes of a class drawn at random, the same for the same seed: such as teachers have, and such as nobody can meet.
#pragma once

#include "core/plan/ClassWishes.h"
#include "tests/support/RandomClass.h"

#include <algorithm>
#include <span>

namespace matwright::test {

// So many movements of the catalogue, each once; all of them where there are fewer.
inline std::vector<MovementId> randomMovements(Draw& draw, const Catalogue& catalogue, std::size_t count) {
  std::vector<MovementId> left;
  for (const Movement& movement : catalogue.movements())
    left.push_back(movement.id);
  std::vector<MovementId> drawn;
  while (!left.empty() && drawn.size() < count) {
    const std::size_t at = draw.below(left.size());
    drawn.push_back(std::move(left[at]));
    left.erase(left.begin() + static_cast<std::ptrdiff_t>(at));
  }
  return drawn;
}

template <class Enum> EnumSet<Enum> randomSet(Draw& draw, double each) {
  EnumSet<Enum> set;
  for (std::size_t i = 0; i < kWordCount<Enum>; ++i)
    if (draw.chance(each))
      set.insert(static_cast<Enum>(i));
  return set;
}

inline Seconds randomLength(Draw& draw) {
  constexpr int usual[] = {5, 10, 15, 20, 30, 40, 45, 50, 55, 60, 75, 90};
  if (draw.chance(0.05))
    return draw.chance(0.5) ? ClassPlan::kShortestTarget : ClassPlan::kLongestTarget;
  Seconds length = minutes(usual[draw.below(std::size(usual))]);
  if (draw.chance(0.2))
    length += Seconds(draw.from(0, 600) / 10.0);
  return length;
}

// The usual ones, one alone, some that come out as they will, or the length shared out at random, however unevenly.
inline std::vector<WishedSection> randomSections(Draw& draw, Seconds length) {
  if (draw.chance(0.4))
    return usualSections(length);
  if (draw.chance(0.3))
    return {{draw.chance(0.5) ? "All of it" : "", {}}};
  std::vector<WishedSection> sections;
  for (int count = draw.chance(0.05) ? static_cast<int>(ClassPlan::kMostSections) : draw.from(1, 6); count > 0; --count)
    sections.push_back({"Part " + std::to_string(count), {}});
  if (draw.chance(0.4))
    return sections;
  std::vector<double> shares;
  double sum = 0;
  for (std::size_t i = 0; i < sections.size(); ++i)
    sum += shares.emplace_back(draw.from(1, draw.chance(0.8) ? 4 : 40));
  for (std::size_t i = 0; i < sections.size(); ++i)
    sections[i].length = length * (shares[i] / sum);
  return sections;
}

inline EffortArc randomArc(Draw& draw) {
  if (draw.chance(0.6))
    return usualArc();
  EffortArc arc(draw.chance(0.3) ? 1 : 1 + draw.below(ClassWishes::kMostArcPoints));
  for (ArcPoint& point : arc)
    point = {draw.from(0, 100) / 100.0, draw.from(0, 20) / 2.0};
  std::sort(arc.begin(), arc.end(), [](const ArcPoint& one, const ArcPoint& other) { return one.at < other.at; });
  return arc;
}

inline Pace randomPace(Draw& draw) {
  if (draw.chance(0.6))
    return {};
  return {draw.from(5, 40) / 10.0, static_cast<double>(draw.from(60, 240)), Seconds(draw.from(0, 20))};
}

// Without fault, and as a file can hold them. Some ask for more than can be: movements that are left out as well, too
// many or too hard ones, ones that nobody knows, props that are not there, a person who is not on file.
inline ClassWishes randomWishes(Draw& draw, const Catalogue& catalogue, std::span<const Person> roster) {
  ClassWishes wishes;
  wishes.name = "Wished " + std::to_string(draw.below(1000));
  if (draw.chance(0.5))
    wishes.date =
        Date{std::chrono::sys_days{Date{std::chrono::year{2026}, std::chrono::month{1}, std::chrono::day{1}}} +
             std::chrono::days{draw.from(0, 700)}};
  wishes.length = randomLength(draw);
  wishes.sections = randomSections(draw, wishes.length);
  wishes.challenge = static_cast<Challenge>(draw.below(kWordCount<Challenge>));
  if (draw.chance(0.6))
    wishes.focus = {randomSet<Region>(draw, 0.1), randomSet<SpineAction>(draw, 0.15), randomSet<Feature>(draw, 0.03)};
  constexpr double oneOfThree[] = {0, 0.5, 1};
  wishes.props = randomSet<Prop>(draw, oneOfThree[draw.below(3)]);
  wishes.wall = draw.chance(0.7);
  const double comes = oneOfThree[draw.below(3)];
  for (const Person& person : roster)
    if (draw.chance(comes) && wishes.people.size() < ClassPlan::kMostPeople)
      wishes.people.push_back(person.id);
  if (draw.chance(0.03) && wishes.people.size() < ClassPlan::kMostPeople)
    wishes.people.push_back(PersonId{"nobody-on-file"});
  wishes.pace = randomPace(draw);
  if (draw.chance(0.5))
    wishes.include = randomMovements(draw, catalogue, draw.chance(0.1) ? 40 : 1 + draw.below(4));
  if (draw.chance(0.02))
    wishes.include.push_back(MovementId{"moonwalk"});
  if (draw.chance(0.4))
    wishes.leaveOut = randomMovements(draw, catalogue, draw.chance(0.1) ? ClassWishes::kMostNamed : 1 + draw.below(10));
  if (draw.chance(0.9)) // else nothing keeps a movement from being wished for and left out
    std::erase_if(wishes.leaveOut, [&](const MovementId& id) {
      return std::find(wishes.include.begin(), wishes.include.end(), id) != wishes.include.end();
    });
  for (std::size_t count = draw.chance(0.05) ? ClassWishes::kMostRecent : draw.below(4); count > 0; --count)
    wishes.recent.push_back({"Recent " + std::to_string(count), randomMovements(draw, catalogue, draw.below(25))});
  if (draw.chance(0.3))
    wishes.known = randomMovements(draw, catalogue, draw.chance(0.2) ? ClassWishes::kMostNamed : draw.below(20));
  wishes.recentIsKnown = draw.chance(0.7);
  wishes.arc = randomArc(draw);
  wishes.fewerRises = draw.chance(0.3);
  wishes.seed = draw.below(std::size_t{1} << 32) << draw.below(22);
  return wishes;
}

} // namespace matwright::test
