#include "core/handout/CautionRows.h"

#include <algorithm>
#include <map>
#include <set>

namespace matwright {
namespace {

struct Gathered {
  Level level{};
  std::string instead;
  bool everybody = false;
  std::map<std::size_t, std::string> people; // by index, so that two with the same initials are both named
  std::vector<std::string> strangers;        // not on file
};

Gathered& groupFor(std::vector<Gathered>& groups, const Caution& caution) {
  const std::string instead = caution.rule ? caution.rule->instead : std::string{};
  const auto at = std::find_if(groups.begin(), groups.end(), [&](const Gathered& group) {
    return group.level == caution.level && group.instead == instead;
  });
  return at != groups.end() ? *at : groups.emplace_back(Gathered{caution.level, instead, false, {}, {}});
}

// A card has room for one word to each person: the strongest thing found. What concerns everybody, and strangers,
// stays.
std::vector<const Caution*> strongestOfEach(std::vector<const Caution*> cautions) {
  std::stable_sort(cautions.begin(), cautions.end(),
                   [](const Caution* a, const Caution* b) { return a->level > b->level; });
  std::set<std::size_t> said;
  std::erase_if(cautions, [&](const Caution* caution) {
    return caution->person != Finding::kNone && !said.insert(caution->person).second;
  });
  return cautions;
}

} // namespace

std::vector<CardCaution> cardCautions(const std::vector<const Caution*>& cautions,
                                      const std::function<std::string(std::size_t)>& initialsOf) {
  std::vector<Gathered> groups;
  for (const Caution* caution : strongestOfEach(cautions)) {
    Gathered& group = groupFor(groups, *caution);
    if (caution->kind == CautionKind::unknownPerson)
      group.strangers.push_back(initialsFrom(caution->name));
    else if (caution->person == Finding::kNone)
      group.everybody = true;
    else
      group.people.emplace(caution->person, initialsOf(caution->person));
  }
  std::stable_sort(groups.begin(), groups.end(),
                   [](const Gathered& a, const Gathered& b) { return a.level > b.level; });
  std::vector<CardCaution> rows;
  for (Gathered& group : groups) {
    CardCaution row{group.level, {}, std::move(group.instead)};
    if (!group.everybody) {
      for (auto& [person, initials] : group.people)
        row.initials.push_back(std::move(initials));
      for (std::string& initials : group.strangers)
        row.initials.push_back(std::move(initials));
    }
    rows.push_back(std::move(row));
  }
  return rows;
}

} // namespace matwright
