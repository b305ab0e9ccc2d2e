#include "core/knowledge/Exchange.h"

#include "core/base/Text.h"

#include <algorithm>
#include <set>

namespace matwright {
namespace {

template <class Value, class AnyId>
bool take(std::vector<Value>& taken, const std::vector<Value>& from, const AnyId& id) {
  const Value* value = findById(from, id);
  if (!value || findById(taken, id))
    return false;
  taken.push_back(*value);
  return true;
}

void takeMovement(OwnKnowledge& taken, const OwnKnowledge& own, const MovementId& id) {
  if (!take(taken.movements, own.movements, id))
    return;
  const Movement movement = taken.movements.back();
  for (const auto& named : {movement.prerequisites, movement.counters})
    for (const MovementId& other : named)
      takeMovement(taken, own, other);
}

void takeRule(OwnKnowledge& taken, const OwnKnowledge& own, const RuleId& id) {
  if (!take(taken.rules, own.rules, id))
    return;
  const Rule rule = taken.rules.back();
  if (rule.condition)
    take(taken.conditions, own.conditions, *rule.condition);
  for (const SourceId& source : rule.sources)
    take(taken.sources, own.sources, source);
}

// Of each thing that came, what of one's own it is, the best first; nothing where its id is free.
template <class AnyId> using Same = std::map<AnyId, std::vector<AnyId>>;
// What came, by what it is called here, where that is another id.
template <class AnyId> using Names = std::map<AnyId, AnyId>;

template <class AnyId> void rename(AnyId& id, const Names<AnyId>& names) {
  if (const auto here = names.find(id); here != names.end())
    id = here->second;
}

template <class AnyId> void rename(std::vector<AnyId>& ids, const Names<AnyId>& names) {
  for (AnyId& id : ids)
    rename(id, names);
}

// Whether a name in what came is that name in what is here.
template <class AnyId> bool sameName(const AnyId& came, const AnyId& here, const Same<AnyId>& same) {
  const auto found = same.find(came);
  return found == same.end() ? came == here
                             : std::find(found->second.begin(), found->second.end(), here) != found->second.end();
}

template <class AnyId>
bool sameNames(const std::vector<AnyId>& came, const std::vector<AnyId>& here, const Same<AnyId>& same) {
  return std::equal(came.begin(), came.end(), here.begin(), here.end(),
                    [&](const AnyId& a, const AnyId& b) { return sameName(a, b, same); });
}

// By alike(came, here), which leaves the id out of account: the thing of its own id first, then those under others. A
// thing whose id is free is itself.
template <class Value, class Alike>
auto sameOf(const std::vector<Value>& incoming, const std::vector<Value>& own, Alike alike) {
  Same<decltype(Value::id)> same;
  for (const Value& came : incoming) {
    auto& found = same[came.id];
    const Value* named = findById(own, came.id);
    if (!named)
      continue;
    if (alike(came, *named))
      found.push_back(named->id);
    for (const Value& each : own)
      if (each.id != came.id && alike(came, each))
        found.push_back(each.id);
  }
  return same;
}

// Equal but for the id.
template <class Value> bool equalBesides(const Value& came, Value here) {
  here.id = came.id;
  return came == here;
}

// Movements name each other, in circles too. Each is held for the same as long as all that it names is.
Same<MovementId> sameMovements(const OwnKnowledge& incoming, const OwnKnowledge& own) {
  Same<MovementId> same = sameOf(incoming.movements, own.movements, [](const Movement& came, Movement here) {
    here.prerequisites = came.prerequisites;
    here.counters = came.counters;
    return equalBesides(came, here);
  });
  for (bool settled = false; !settled;) {
    settled = true;
    for (const Movement& came : incoming.movements) {
      const auto differs = [&](const MovementId& id) {
        const Movement& here = *findById(own.movements, id);
        return !sameNames(came.prerequisites, here.prerequisites, same) ||
               !sameNames(came.counters, here.counters, same);
      };
      settled = std::erase_if(same[came.id], differs) == 0 && settled;
    }
  }
  return same;
}

class Merging {
public:
  Merging(const Knowledge& builtIn, const OwnKnowledge& own, const OwnKnowledge& incoming)
      : builtIn_(builtIn), own_(own), incoming_(incoming) {
    result_.own = own;
  }

  Merged run() {
    const auto conditions = sameOf(incoming_.conditions, own_.conditions, equalBesides<Condition>);
    const auto sources = sameOf(incoming_.sources, own_.sources, equalBesides<Source>);
    const auto rules = sameOf(incoming_.rules, own_.rules, [&](const Rule& came, Rule here) {
      const bool named = came.condition && here.condition ? sameName(*came.condition, *here.condition, conditions)
                                                          : came.condition == here.condition;
      if (!named || !sameNames(came.sources, here.sources, sources))
        return false;
      here.condition = came.condition;
      here.sources = came.sources;
      return equalBesides(came, here);
    });
    const auto conditionNames = take(&OwnKnowledge::conditions, conditions);
    const auto sourceNames = take(&OwnKnowledge::sources, sources);
    take(&OwnKnowledge::rules, rules, [&](Rule& rule, const auto&) {
      if (rule.condition)
        rename(*rule.condition, conditionNames);
      rename(rule.sources, sourceNames);
    });
    take(&OwnKnowledge::movements, sameMovements(incoming_, own_), [](Movement& movement, const auto& names) {
      rename(movement.prerequisites, names);
      rename(movement.counters, names);
    });
    takeThresholds();
    return std::move(result_);
  }

private:
  // Takes the things of one kind that are not here, under their own ids where those are free; `mend` puts the names in
  // them right.
  template <class Value, class AnyId, class Mend>
  Names<AnyId> take(std::vector<Value> OwnKnowledge::*list, const Same<AnyId>& same, Mend mend) {
    std::set<std::string> ids;
    for (const auto* each : {&own_, &incoming_})
      for (const Value& value : each->*list)
        ids.insert(value.id.value);
    Names<AnyId> names;
    std::vector<Value> fresh;
    for (const Value& came : incoming_.*list) {
      if (const auto& found = same.at(came.id); !found.empty()) {
        names[came.id] = found.front();
        ++result_.alreadyHere;
        continue;
      }
      fresh.push_back(came);
      if (!findById(own_.*list, came.id))
        continue;
      const AnyId id{untakenId(came.id.value, [&](const std::string& text) { return ids.contains(text); })};
      ids.insert(id.value);
      fresh.back().id = names[came.id] = id;
      ++result_.renamed;
    }
    for (Value& value : fresh) {
      mend(value, names);
      (result_.own.*list).push_back(value);
      (result_.taken.*list).push_back(std::move(value));
    }
    return names;
  }
  template <class Value, class AnyId>
  Names<AnyId> take(std::vector<Value> OwnKnowledge::*list, const Same<AnyId>& same) {
    return take(list, same, [](Value&, const auto&) {});
  }

  void takeThresholds() {
    for (const auto& [rule, amount] : incoming_.thresholds) {
      const Rule* found = builtIn_.rules.findRule(rule);
      const auto here = own_.thresholds.find(rule);
      if (!found || !thresholdIsOpen(*found)) {
        result_.idleThresholds.push_back(rule);
      } else if (here == own_.thresholds.end()) {
        result_.own.thresholds[rule] = result_.taken.thresholds[rule] = amount;
      } else if (here->second != amount) {
        result_.keptThresholds.push_back(rule);
      } else {
        ++result_.alreadyHere;
      }
    }
  }

  const Knowledge& builtIn_;
  const OwnKnowledge& own_;
  const OwnKnowledge& incoming_;
  Merged result_;
};

} // namespace

OwnKnowledge withWhatItNames(const OwnKnowledge& own, const MovementId& movement) {
  OwnKnowledge taken;
  takeMovement(taken, own, movement);
  return taken;
}

OwnKnowledge withWhatItNames(const OwnKnowledge& own, const ConditionId& condition) {
  OwnKnowledge taken;
  take(taken.conditions, own.conditions, condition);
  for (const Rule& rule : own.rules)
    if (rule.condition == condition)
      takeRule(taken, own, rule.id);
  return taken;
}

OwnKnowledge withWhatItNames(const OwnKnowledge& own, const RuleId& rule) {
  OwnKnowledge taken;
  takeRule(taken, own, rule);
  return taken;
}

OwnKnowledge screeningOf(const OwnKnowledge& own) {
  OwnKnowledge taken = own;
  taken.movements.clear();
  return taken;
}

Merged merged(const Knowledge& builtIn, const OwnKnowledge& own, const OwnKnowledge& incoming) {
  return Merging(builtIn, own, incoming).run();
}

} // namespace matwright
