#include "core/store/ClassJson.h"
#include "core/store/KnowledgeParts.h"
#include "core/store/OwnKnowledgeJson.h"
#include "core/store/PersonJson.h"
#include "core/store/StudioJson.h"
#include "core/store/WishesJson.h"

#include <array>
#include <utility>

namespace matwright {
namespace {

const std::array<std::pair<DocumentKind, const Format*>, 13> kKinds = {{
    {DocumentKind::classPlan, &kClassFormat},
    {DocumentKind::person, &kPersonFormat},
    {DocumentKind::studio, &kStudioFormat},
    {DocumentKind::ownKnowledge, &kOwnKnowledgeFormat},
    {DocumentKind::wishes, &kWishesFormat},
    {DocumentKind::positions, &kPositionsFormat},
    {DocumentKind::changes, &kChangesFormat},
    {DocumentKind::catalogue, &kCatalogueFormat},
    {DocumentKind::conditions, &kConditionsFormat},
    {DocumentKind::sources, &kSourcesFormat},
    {DocumentKind::rules, &kRulesFormat},
    {DocumentKind::redFlags, &kRedFlagsFormat},
    {DocumentKind::measuredLoads, &kMeasuredLoadsFormat},
}};

const Format& formatOf(DocumentKind kind) {
  for (const auto& [each, format] : kKinds)
    if (each == kind)
      return *format;
  std::abort();
}

void holdAgainst(const Knowledge& knowledge, const ClassPlan& plan, const std::string& file, Errors& errors) {
  for (std::size_t s = 0; s < plan.sections.size(); ++s)
    for (std::size_t i = 0; i < plan.sections[s].steps.size(); ++i) {
      const Step& step = plan.sections[s].steps[i];
      const Origin at{file, "/sections/" + std::to_string(s) + "/steps/" + std::to_string(i)};
      if (step.movement.empty())
        continue;
      const Movement* movement = knowledge.catalogue.find(step.movement);
      if (!movement)
        noteAt(errors, at, "/movement", ErrorCode::unknownReference, "a movement of the catalogue",
               step.movement.value);
      else if (!step.option.empty() && !findOption(*movement, step.option))
        noteAt(errors, at, "/option", ErrorCode::unknownReference, "an option of the movement", step.option.value);
    }
}

void holdAgainst(const Catalogue& catalogue, const std::vector<MovementId>& movements, const Origin& at,
                 Errors& errors) {
  for (std::size_t i = 0; i < movements.size(); ++i)
    if (!movements[i].empty() && !catalogue.find(movements[i]))
      noteAt(errors, at, '/' + std::to_string(i), ErrorCode::unknownReference, "a movement of the catalogue",
             movements[i].value);
}

void holdAgainst(const Knowledge& knowledge, const ClassWishes& wishes, const std::string& file, Errors& errors) {
  holdAgainst(knowledge.catalogue, wishes.include, {file, "/include"}, errors);
  holdAgainst(knowledge.catalogue, wishes.leaveOut, {file, "/leaveOut"}, errors);
  for (std::size_t i = 0; i < wishes.recent.size(); ++i)
    holdAgainst(knowledge.catalogue, wishes.recent[i].movements, {file, "/recent/" + std::to_string(i) + "/movements"},
                errors);
  holdAgainst(knowledge.catalogue, wishes.known, {file, "/known"}, errors);
}

bool answers(const QualifierSpec& spec, const QualifierValue& value) {
  switch (spec.kind) {
  case QualifierKind::weeksSince:
  case QualifierKind::pregnancyWeek:
    return std::holds_alternative<Date>(value);
  case QualifierKind::flag:
    return std::holds_alternative<bool>(value);
  case QualifierKind::choice:
    break;
  }
  return std::holds_alternative<std::string>(value);
}

const char* answerOf(QualifierKind kind) {
  return kind == QualifierKind::flag ? "true or false" : kind == QualifierKind::choice ? "a choice" : "a date";
}

void holdQualifier(const QualifierSpec* spec, const std::string& name, const QualifierValue& value, const Origin& at,
                   Errors& errors) {
  const std::string below = pointerTo("/qualifiers", name);
  if (!spec) {
    noteAt(errors, at, below, ErrorCode::unknownReference, "a qualifier of the condition", name);
    return;
  }
  if (!answers(*spec, value)) {
    noteAt(errors, at, below, ErrorCode::wrongType, answerOf(spec->kind), name);
    return;
  }
  const std::string* choice = std::get_if<std::string>(&value);
  if (!choice)
    return;
  for (const Choice& each : spec->choices)
    if (each.id == *choice)
      return;
  noteAt(errors, at, below, ErrorCode::unknownReference, "a choice of the qualifier", *choice);
}

void holdAgainst(const Knowledge& knowledge, const Person& person, const std::string& file, Errors& errors) {
  for (std::size_t i = 0; i < person.conditions.size(); ++i) {
    const PersonCondition& held = person.conditions[i];
    const Origin at{file, "/conditions/" + std::to_string(i)};
    if (held.condition.empty())
      continue;
    const Condition* condition = nullptr;
    for (const Condition& each : knowledge.rules.conditions)
      if (each.id == held.condition)
        condition = &each;
    if (!condition) {
      noteAt(errors, at, "/condition", ErrorCode::unknownReference, "a condition", held.condition.value);
      continue;
    }
    for (const auto& [name, value] : held.qualifiers)
      holdQualifier(findQualifier(*condition, name), name, value, at, errors);
  }
}

// Decodes the tree as the kind of file that it is.
void decode(DocumentKind kind, const Json& tree, const Knowledge* knowledge, Reading& reading) {
  Errors& errors = reading.errors;
  switch (kind) {
  case DocumentKind::classPlan: {
    const ClassPlan plan = readClassTree(tree, reading);
    if (knowledge)
      holdAgainst(*knowledge, plan, reading.file, errors);
    return;
  }
  case DocumentKind::person: {
    const Person person = readPersonTree(tree, reading);
    if (knowledge)
      holdAgainst(*knowledge, person, reading.file, errors);
    return;
  }
  case DocumentKind::studio:
    readStudioTree(tree, reading);
    return;
  case DocumentKind::ownKnowledge:
    readOwnKnowledgeTree(tree, knowledge, reading);
    return;
  case DocumentKind::wishes: {
    const ClassWishes wishes = readWishesTree(tree, reading);
    if (knowledge)
      holdAgainst(*knowledge, wishes, reading.file, errors);
    return;
  }
  case DocumentKind::positions: {
    auto positions = readPositionDrafts(tree, reading);
    checkPositions(positions, errors);
    return;
  }
  case DocumentKind::changes:
    checkChanges(readChangeDrafts(tree, reading), nullptr, errors);
    return;
  case DocumentKind::catalogue: {
    auto movements = readMovementDrafts(tree, reading);
    checkMovements(movements, nullptr, false, errors);
    return;
  }
  case DocumentKind::conditions:
    checkConditions(readConditionDrafts(tree, reading), errors);
    return;
  case DocumentKind::sources:
    checkSources(readSourceDrafts(tree, reading), errors);
    return;
  case DocumentKind::rules:
    checkRules(readRuleDrafts(tree, reading), nullptr, nullptr, errors);
    return;
  case DocumentKind::redFlags:
    checkRedFlags(readRedFlagDrafts(tree, reading), nullptr, nullptr, errors);
    return;
  case DocumentKind::measuredLoads:
    checkMeasuredLoads(readMeasuredLoadDrafts(tree, reading), nullptr, nullptr, errors);
    return;
  }
}

} // namespace

Result<DocumentKind> documentKind(std::string_view text, const std::string& file) {
  const auto tree = parseJson(text, file);
  if (!tree)
    return failure(tree.error());
  Reading reading{file, {}, {}, nullptr};
  ObjectReader root(Spot{&*tree, {}, &reading});
  const auto format = root.need("format");
  const std::string name = readText(format, 0, kLargestFile);
  if (!reading.errors.empty())
    return failure(reading.errors.front());
  for (const auto& [kind, each] : kKinds)
    if (each->name == name)
      return kind;
  return failure(Error{ErrorCode::wrongFormat, file, format->path, "a format of Matwright", extractOf(name)});
}

std::vector<Error> validateFile(const std::filesystem::path& file, const Knowledge* knowledge) {
  const std::string name = file.string();
  const auto text = readFile(file);
  if (!text)
    return {text.error()};
  const auto kind = documentKind(*text, name);
  if (!kind)
    return {kind.error()};
  const auto tree = openTree(*text, name, formatOf(*kind));
  if (!tree)
    return {tree.error()};
  Reading reading{name, {}, {}, nullptr};
  decode(*kind, *tree, knowledge, reading);
  return std::move(reading.errors);
}

} // namespace matwright
