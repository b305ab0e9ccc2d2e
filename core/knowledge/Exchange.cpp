#include "core/knowledge/Exchange.h"

#include "core/base/Text.h"

#include <algorithm>
#include <set>

namespace matwright {
namespace {

template <class Value, class AnyId> const Value* find(const std::vector<Value>& values, const AnyId& id) {
  const auto at = std::find_if(values.begin(), values.end(), [&](const Value& value) { return value.id == id; });
  return at == values.end() ? nullptr : &*at;
}

template <class Value, class AnyId>
bool take(std::vector<Value>& taken, const std::vector<Value>& from, const AnyId& id) {
  const Value* value = find(from, id);
  if (!value || find(taken, id))
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

template <class AnyId> using Names = std::map<AnyId, AnyId>; // what came, by what it is called here

template <class AnyId> void rename(AnyId& id, const Names<AnyId>& names) {
  if (const auto here = names.find(id); here != names.end())
    id = here->second;
}

void rename(Movement& movement, const Names<MovementId>& names) {
  for (auto* named : {&movement.prerequisites, &movement.counters})
    for (MovementId& id : *named)
      rename(id, names);
}

// The things of one kind that came, each with what it is here: the same as one of one's own, or a new one.
template <class Value, class AnyId> class Kind {
public:
  Kind(const std::vector<Value>& here, const std::vector<Value>& incoming, std::vector<Value>& after,
       std::vector<Value>& taken)
      : here_(here), after_(after), taken_(taken) {
    for (const auto* list : {&here, &incoming})
      for (const Value& each : *list)
        ids_.insert(each.id.value);
  }

  const Names<AnyId>& names() const { return names_; }

  // One of one's own that is `came`, which names things as here: under its id, or, where that is something else's,
  // under another. Null for none.
  const Value* same(const Value& came) const {
    const Value* named = find(here_, came.id);
    if (!named || *named == came)
      return named;
    const auto at = std::find_if(here_.begin(), here_.end(), [&](const Value& each) {
      Value renamed = came;
      renamed.id = each.id;
      return each == renamed;
    });
    return at == here_.end() ? nullptr : &*at;
  }

  void be(const AnyId& came, const AnyId& here) { names_[came] = here; }

  // The id under which it is taken: its own where that is free.
  AnyId freeId(const AnyId& came) {
    if (!find(here_, came))
      return came;
    const AnyId id{untakenId(came.value, [&](const std::string& text) { return ids_.contains(text); })};
    ids_.insert(id.value);
    be(came, id);
    return id;
  }

  void take(Value value) {
    after_.push_back(value);
    taken_.push_back(std::move(value));
  }

private:
  const std::vector<Value>& here_; // one's own
  std::vector<Value>& after_;      // the same with what is taken
  std::vector<Value>& taken_;
  std::set<std::string> ids_; // that are somebody's
  Names<AnyId> names_;
};

class Merging {
public:
  Merging(const Knowledge& builtIn, const OwnKnowledge& own, const OwnKnowledge& incoming)
      : builtIn_(builtIn), own_(own), incoming_(incoming) {
    result_.own = own;
  }

  Merged run() {
    Kind<Condition, ConditionId> conditions(own_.conditions, incoming_.conditions, result_.own.conditions,
                                            result_.taken.conditions);
    Kind<Source, SourceId> sources(own_.sources, incoming_.sources, result_.own.sources, result_.taken.sources);
    Kind<Rule, RuleId> rules(own_.rules, incoming_.rules, result_.own.rules, result_.taken.rules);
    for (const Condition& condition : incoming_.conditions)
      put(conditions, condition);
    for (const Source& source : incoming_.sources)
      put(sources, source);
    for (Rule rule : incoming_.rules) {
      if (rule.condition)
        rename(*rule.condition, conditions.names());
      for (SourceId& source : rule.sources)
        rename(source, sources.names());
      put(rules, std::move(rule));
    }
    putMovements();
    putThresholds();
    return std::move(result_);
  }

private:
  template <class Value, class AnyId> void put(Kind<Value, AnyId>& kind, Value came) {
    if (const Value* here = kind.same(came)) {
      kind.be(came.id, here->id);
      ++result_.alreadyHere;
      return;
    }
    const AnyId id = kind.freeId(came.id);
    result_.renamed += id == came.id ? 0 : 1;
    came.id = id;
    kind.take(std::move(came));
  }

  // Movements name each other, in circles too. Those that are one of one's own are found by doubt: each is held for the
  // same as long as all that it names is.
  void putMovements() {
    std::map<MovementId, std::vector<const Movement*>> same = candidates();
    for (bool settled = false; !settled;) {
      settled = true;
      for (const Movement& came : incoming_.movements)
        settled = std::erase_if(same[came.id], [&](const Movement* here) { return !agree(came, *here, same); }) == 0 &&
                  settled;
    }
    Kind<Movement, MovementId> movements(own_.movements, incoming_.movements, result_.own.movements,
                                         result_.taken.movements);
    std::vector<Movement> fresh;
    for (const Movement& came : incoming_.movements) {
      if (const auto& found = same[came.id]; !found.empty()) {
        movements.be(came.id, found.front()->id);
        ++result_.alreadyHere;
        continue;
      }
      fresh.push_back(came);
      fresh.back().id = movements.freeId(came.id);
      result_.renamed += fresh.back().id == came.id ? 0 : 1;
    }
    for (Movement& movement : fresh) {
      rename(movement, movements.names());
      movements.take(std::move(movement));
    }
  }

  // Of each movement that came, what of one's own it may be, its own id first: alike in all but in what it names. Under
  // another id only where its own is something else's.
  std::map<MovementId, std::vector<const Movement*>> candidates() const {
    std::map<MovementId, std::vector<const Movement*>> all;
    for (const Movement& came : incoming_.movements) {
      const Movement* named = find(own_.movements, came.id);
      if (!named)
        continue;
      auto& found = all[came.id];
      if (alike(came, *named))
        found.push_back(named);
      for (const Movement& each : own_.movements)
        if (each.id != came.id && alike(came, each))
          found.push_back(&each);
    }
    return all;
  }

  static bool alike(const Movement& came, Movement here) {
    here.id = came.id;
    here.prerequisites = came.prerequisites;
    here.counters = came.counters;
    return came == here;
  }

  template <class Candidates> bool agree(const Movement& came, const Movement& here, const Candidates& same) const {
    const auto all = [&](const std::vector<MovementId>& names, const std::vector<MovementId>& others) {
      return std::equal(names.begin(), names.end(), others.begin(), others.end(),
                        [&](const MovementId& name, const MovementId& other) {
                          const auto found = same.find(name);
                          if (found == same.end())
                            return name == other && !find(incoming_.movements, name);
                          return std::any_of(found->second.begin(), found->second.end(),
                                             [&](const Movement* each) { return each->id == other; });
                        });
    };
    return all(came.prerequisites, here.prerequisites) && all(came.counters, here.counters);
  }

  void putThresholds() {
    for (const auto& [rule, amount] : incoming_.thresholds) {
      const Rule* found = find(builtIn_.rules.rules, rule);
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
