#include "ui/document/KnowledgeDocument.h"

#include "core/store/Store.h"
#include "ui/document/ValueChange.h"

namespace matwright {
namespace {

template <class Value> void put(std::vector<Value>& values, const Value& value) {
  if (Value* there = findById(values, value.id))
    *there = value;
}

} // namespace

KnowledgeDocument::KnowledgeDocument(std::shared_ptr<const Knowledge> builtIn, QObject* parent)
    : QObject(parent), builtIn_(std::move(builtIn)), knowledge_(builtIn_) {}

void KnowledgeDocument::setBodyTable(BodyTable table) {
  if (table == loads_->table())
    return;
  loads_ = std::make_shared<const Loads>(table);
  show(own_);
}

void KnowledgeDocument::load(OwnKnowledge own) {
  undoStack_.clear();
  ++gesture_;
  lockedBy_.clear();
  show(std::make_shared<const OwnKnowledge>(std::move(own)));
}

void KnowledgeDocument::lock(std::vector<Error> errors) {
  undoStack_.clear();
  ++gesture_;
  lockedBy_ = std::move(errors);
  show(std::make_shared<const OwnKnowledge>());
}

KnowledgeDocument::Done KnowledgeDocument::change(OwnKnowledge after, const QString& what, const QString& mergeKey) {
  if (after == *own_)
    return {};
  if (!lockedBy_.empty())
    return failure(lockedBy_);
  auto read = parseOwnKnowledge(ownKnowledgeText(after), {}, *builtIn_);
  if (!read)
    return failure(std::move(read.error()));
  after = std::move(read->value);
  if (after == *own_)
    return {};
  undoStack_.push(new ValueChange<OwnKnowledge>([this](Shared own) { show(std::move(own)); }, own_,
                                                std::make_shared<const OwnKnowledge>(std::move(after)), what, mergeKey,
                                                gesture_));
  return {};
}

Result<MovementId, std::vector<Error>> KnowledgeDocument::add(Movement movement, const QString& what) {
  if (movement.id.empty())
    movement.id = mintMovementId(*knowledge_, movement.name);
  OwnKnowledge after = *own_;
  after.movements.push_back(movement);
  return change(std::move(after), what).map([&] { return movement.id; });
}

Result<ConditionId, std::vector<Error>> KnowledgeDocument::add(Condition condition, const QString& what) {
  if (condition.id.empty())
    condition.id = mintConditionId(*knowledge_, condition.name);
  OwnKnowledge after = *own_;
  after.conditions.push_back(condition);
  return change(std::move(after), what).map([&] { return condition.id; });
}

Result<SourceId, std::vector<Error>> KnowledgeDocument::add(Source source, const QString& what) {
  if (source.id.empty())
    source.id = mintSourceId(*knowledge_, source.cite);
  OwnKnowledge after = *own_;
  after.sources.push_back(source);
  return change(std::move(after), what).map([&] { return source.id; });
}

Result<RuleId, std::vector<Error>> KnowledgeDocument::add(Rule rule, const QString& what) {
  if (rule.id.empty())
    rule.id = mintRuleId(*knowledge_, rule.instead);
  OwnKnowledge after = *own_;
  after.rules.push_back(rule);
  return change(std::move(after), what).map([&] { return rule.id; });
}

KnowledgeDocument::Done KnowledgeDocument::replace(const Movement& movement, const QString& what,
                                                   const QString& mergeKey) {
  OwnKnowledge after = *own_;
  put(after.movements, movement);
  return change(std::move(after), what, mergeKey);
}

KnowledgeDocument::Done KnowledgeDocument::replace(const Condition& condition, const QString& what,
                                                   const QString& mergeKey) {
  OwnKnowledge after = *own_;
  put(after.conditions, condition);
  return change(std::move(after), what, mergeKey);
}

KnowledgeDocument::Done KnowledgeDocument::replace(const Source& source, const QString& what, const QString& mergeKey) {
  OwnKnowledge after = *own_;
  put(after.sources, source);
  return change(std::move(after), what, mergeKey);
}

KnowledgeDocument::Done KnowledgeDocument::replace(const Rule& rule, const QString& what, const QString& mergeKey) {
  OwnKnowledge after = *own_;
  put(after.rules, rule);
  return change(std::move(after), what, mergeKey);
}

KnowledgeDocument::Done KnowledgeDocument::remove(const MovementId& movement, const QString& what) {
  return change(without(*own_, movement), what);
}

KnowledgeDocument::Done KnowledgeDocument::remove(const ConditionId& condition, const QString& what) {
  return change(without(*own_, condition), what);
}

KnowledgeDocument::Done KnowledgeDocument::remove(const SourceId& source, const QString& what) {
  return change(without(*own_, source), what);
}

KnowledgeDocument::Done KnowledgeDocument::remove(const RuleId& rule, const QString& what) {
  return change(without(*own_, rule), what);
}

KnowledgeDocument::Done KnowledgeDocument::setThreshold(const RuleId& rule, std::optional<double> amount,
                                                        const QString& what, const QString& mergeKey) {
  const Rule* found = builtIn_->rules.findRule(rule);
  if (!found || !thresholdIsOpen(*found))
    return failure(std::vector{
        Error{ErrorCode::unknownReference, {}, {}, "a rule whose threshold is open to change", rule.value}});
  OwnKnowledge after = *own_;
  if (amount && *amount != found->threshold->amount)
    after.thresholds[rule] = *amount;
  else
    after.thresholds.erase(rule);
  return change(std::move(after), what, mergeKey);
}

std::optional<Movement> KnowledgeDocument::copyOf(const MovementId& movement) const {
  const Movement* original = knowledge_->catalogue.find(movement);
  if (!original)
    return std::nullopt;
  Movement copy = *original;
  copy.id = mintMovementId(*knowledge_, original->id.value);
  copy.name = tr("%1, own").arg(QString::fromStdString(original->name)).toStdString();
  return copy;
}

std::optional<Rule> KnowledgeDocument::copyOf(const RuleId& rule) const {
  const Rule* original = knowledge_->rules.findRule(rule);
  if (!original)
    return std::nullopt;
  Rule copy = *original;
  copy.id = mintRuleId(*knowledge_, original->id.value);
  if (copy.threshold)
    copy.threshold->usual = copy.threshold->amount;
  return copy;
}

Result<ConditionId, std::vector<Error>> KnowledgeDocument::addCopyOf(const ConditionId& condition,
                                                                     const QString& what) {
  const Condition* original = knowledge_->rules.findCondition(condition);
  if (!original)
    return failure(std::vector{Error{ErrorCode::unknownReference, {}, {}, "a condition", condition.value}});
  const OwnKnowledge copy =
      copyWithRules(*knowledge_, condition, tr("%1, own").arg(QString::fromStdString(original->name)).toStdString());
  OwnKnowledge after = *own_;
  after.conditions.insert(after.conditions.end(), copy.conditions.begin(), copy.conditions.end());
  after.rules.insert(after.rules.end(), copy.rules.begin(), copy.rules.end());
  if (const auto done = change(std::move(after), what); !done)
    return failure(done.error());
  return copy.conditions[0].id;
}

void KnowledgeDocument::show(Shared own) {
  own_ = std::move(own);
  Knowledge both = layered(*builtIn_, *own_);
  both.loads = loads_;
  knowledge_ = std::make_shared<const Knowledge>(std::move(both));
  Q_EMIT changed();
}

} // namespace matwright
