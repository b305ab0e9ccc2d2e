#include "core/store/KnowledgeParts.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

namespace matwright {
namespace {

// Notes every id that stood before.
class OnceEach {
public:
  explicit OnceEach(Errors& errors) : errors_(errors) {}

  void see(const std::string& id, const Origin& origin, const std::string& below) {
    if (!id.empty() && !seen_.insert(id).second)
      noteAt(errors_, origin, below, ErrorCode::duplicateId, "each id once", id);
  }

private:
  std::unordered_set<std::string> seen_;
  Errors& errors_;
};

std::string entry(const char* list, std::size_t index, const char* key) {
  return '/' + std::string(list) + '/' + std::to_string(index) + key;
}

std::string namesOf(const std::vector<Choice>& choices) {
  std::string names;
  for (const Choice& choice : choices)
    names += (names.empty() ? "" : ", ") + choice.id;
  return names;
}

bool hasChoice(const QualifierSpec& spec, const std::string& id) {
  return std::any_of(spec.choices.begin(), spec.choices.end(), [&](const Choice& choice) { return choice.id == id; });
}

void checkTest(const QualifierTest& test, const QualifierSpec& spec, const Origin& at, Errors& errors) {
  const bool weeks = test.from || test.below;
  switch (spec.kind) {
  case QualifierKind::weeksSince:
  case QualifierKind::pregnancyWeek:
    if (!weeks && (test.flag || !test.choices.empty()))
      noteAt(errors, at, "/is", ErrorCode::wrongType, "from and below, because the qualifier is a number of weeks",
             "is");
    return;
  case QualifierKind::choice:
    if (weeks || test.flag)
      noteAt(errors, at, test.flag ? "/is" : "/qualifier", ErrorCode::wrongType,
             "is with choices, because the qualifier is one", spec.id);
    for (std::size_t i = 0; i < test.choices.size(); ++i)
      if (!hasChoice(spec, test.choices[i]))
        noteAt(errors, at, "/is/" + std::to_string(i), ErrorCode::unknownReference, "one of " + namesOf(spec.choices),
               test.choices[i]);
    return;
  case QualifierKind::flag:
    if (weeks || !test.choices.empty())
      noteAt(errors, at, weeks ? "/qualifier" : "/is", ErrorCode::wrongType,
             "is with true or false, because the qualifier is a flag", spec.id);
    return;
  }
}

void checkTests(const RuleDraft& draft, const Condition* condition, Errors& errors) {
  for (std::size_t i = 0; i < draft.rule.when.size(); ++i) {
    const QualifierTest& test = draft.rule.when[i];
    const Origin at{draft.origin.file, draft.origin.path + entry("when", i, "")};
    if (test.qualifier.empty())
      continue;
    if (const QualifierSpec* spec = condition ? findQualifier(*condition, test.qualifier) : nullptr)
      checkTest(test, *spec, at, errors);
    else
      noteAt(errors, at, "/qualifier", ErrorCode::unknownReference, "a qualifier of the rule's condition",
             test.qualifier);
  }
}

// The sources on hand; nothing when they are not known.
using Cited = std::optional<std::unordered_set<SourceId>>;

Cited idsOf(const std::vector<SourceDraft>* sources) {
  if (!sources)
    return std::nullopt;
  Cited ids{std::in_place};
  for (const SourceDraft& draft : *sources)
    ids->insert(draft.source.id);
  return ids;
}

// Each source once, and one that is there.
void checkCited(const std::vector<SourceId>& named, const Origin& origin, const Cited& cited, Errors& errors) {
  OnceEach once(errors);
  for (std::size_t i = 0; i < named.size(); ++i) {
    once.see(named[i].value, origin, entry("sources", i, ""));
    if (cited && !named[i].empty() && !cited->contains(named[i]))
      noteAt(errors, origin, entry("sources", i, ""), ErrorCode::unknownReference, "a source", named[i].value);
  }
}

} // namespace

void checkConditions(const std::vector<ConditionDraft>& conditions, Errors& errors) {
  OnceEach ids(errors);
  for (const ConditionDraft& draft : conditions) {
    ids.see(draft.condition.id.value, draft.origin, "/id");
    OnceEach qualifiers(errors);
    for (std::size_t i = 0; i < draft.condition.qualifiers.size(); ++i) {
      const QualifierSpec& spec = draft.condition.qualifiers[i];
      qualifiers.see(spec.id, draft.origin, entry("qualifiers", i, "/id"));
      OnceEach choices(errors);
      for (std::size_t at = 0; at < spec.choices.size(); ++at)
        choices.see(spec.choices[at].id, draft.origin, entry("qualifiers", i, "") + entry("choices", at, "/id"));
    }
  }
}

void checkSources(const std::vector<SourceDraft>& sources, Errors& errors) {
  OnceEach ids(errors);
  for (const SourceDraft& draft : sources)
    ids.see(draft.source.id.value, draft.origin, "/id");
}

void checkRedFlags(const RedFlagDrafts& drafts, const std::vector<ConditionDraft>* conditions,
                   const std::vector<SourceDraft>* sources, Errors& errors) {
  const Cited cited = idsOf(sources);
  OnceEach ids(errors);
  for (const RedFlagDraft& draft : drafts.groups) {
    const RedFlagGroup& group = draft.group;
    ids.see(group.id, draft.origin, "/id");
    if (conditions && group.condition && !group.condition->empty() &&
        std::none_of(conditions->begin(), conditions->end(),
                     [&](const ConditionDraft& each) { return each.condition.id == *group.condition; }))
      noteAt(errors, draft.origin, "/condition", ErrorCode::unknownReference, "a condition", group.condition->value);
    checkCited(group.sources, draft.origin, cited, errors);
  }
}

void checkMeasuredLoads(const MeasuredLoadDrafts& drafts, const std::vector<MovementDraft>* movements,
                        const std::vector<SourceDraft>* sources, Errors& errors) {
  const Cited cited = idsOf(sources);
  OnceEach ids(errors);
  for (const MeasuredTaskDraft& draft : drafts.tasks) {
    const MeasuredTask& task = draft.task;
    ids.see(task.id, draft.origin, "/id");
    OnceEach once(errors);
    for (std::size_t i = 0; i < task.movements.size(); ++i) {
      const MovementId& named = task.movements[i];
      once.see(named.value, draft.origin, entry("movements", i, ""));
      if (movements && !named.empty() &&
          std::none_of(movements->begin(), movements->end(),
                       [&](const MovementDraft& each) { return each.movement.id == named; }))
        noteAt(errors, draft.origin, entry("movements", i, ""), ErrorCode::unknownReference, "a movement", named.value);
    }
    checkCited(task.sources, draft.origin, cited, errors);
  }
}

void checkRules(const std::vector<RuleDraft>& rules, const std::vector<ConditionDraft>* conditions,
                const std::vector<SourceDraft>* sources, Errors& errors) {
  std::unordered_map<ConditionId, const Condition*> known;
  if (conditions)
    for (const ConditionDraft& draft : *conditions)
      known.emplace(draft.condition.id, &draft.condition);
  const Cited cited = idsOf(sources);
  OnceEach ids(errors);
  for (const RuleDraft& draft : rules) {
    const Rule& rule = draft.rule;
    ids.see(rule.id.value, draft.origin, "/id");
    const bool named = rule.condition && !rule.condition->empty();
    const auto found = named ? known.find(*rule.condition) : known.end();
    if (named && conditions && found == known.end())
      noteAt(errors, draft.origin, "/condition", ErrorCode::unknownReference, "a condition", rule.condition->value);
    else if (!rule.condition || (conditions && found != known.end()))
      checkTests(draft, rule.condition ? found->second : nullptr, errors);
    checkCited(rule.sources, draft.origin, cited, errors);
  }
}

} // namespace matwright
