#include "ui/document/PlanDocument.h"

#include "ui/document/ValueChange.h"

#include <algorithm>

namespace matwright {

PlanDocument::PlanDocument(std::shared_ptr<const Knowledge> knowledge, std::function<Date()> today, QObject* parent)
    : QObject(parent), knowledge_(std::move(knowledge)), today_(std::move(today)) {
  load(emptyClass({}));
}

Date PlanDocument::day() const { return plan().date ? *plan().date : today_(); }

Result<void, Refusal> PlanDocument::perform(const Edit& edit, const QString& what, const QString& mergeKey) {
  auto after = applyEdit(plan(), edit);
  if (!after) {
    Q_EMIT refused(after.error());
    return failure(after.error());
  }
  if (*after == plan())
    return {};
  lastMinted_ = std::max(lastMinted_, highestStepId(*after));
  undoStack_.push(new ValueChange<ClassPlan>([this](std::shared_ptr<const ClassPlan> plan) { show(std::move(plan)); },
                                             snapshot_.plan, std::make_shared<const ClassPlan>(std::move(*after)), what,
                                             mergeKey, gesture_));
  return {};
}

void PlanDocument::sealGesture() { ++gesture_; }

std::optional<Snapshot> PlanDocument::preview(const Edit& edit) const {
  auto after = applyEdit(plan(), edit);
  if (!after)
    return std::nullopt;
  return snapshotOf(snapshot_.revision, std::make_shared<const ClassPlan>(std::move(*after)));
}

StepId PlanDocument::mintStepId() {
  ++lastMinted_.value;
  return lastMinted_;
}

void PlanDocument::load(ClassPlan plan) {
  undoStack_.clear();
  lastMinted_ = highestStepId(plan);
  seenPeople_.clear();
  ++gesture_;
  Q_EMIT loaded();
  show(std::make_shared<const ClassPlan>(std::move(plan)));
}

void PlanDocument::setRoster(std::vector<Person> roster) {
  roster_ = std::move(roster);
  show(snapshot_.plan);
}

void PlanDocument::setKnowledge(std::shared_ptr<const Knowledge> knowledge) {
  if (knowledge == knowledge_)
    return;
  knowledge_ = std::move(knowledge);
  take(snapshot_.plan);
  Q_EMIT knowledgeChanged();
  Q_EMIT changed();
}

void PlanDocument::show(std::shared_ptr<const ClassPlan> plan) {
  take(std::move(plan));
  Q_EMIT changed();
}

void PlanDocument::take(std::shared_ptr<const ClassPlan> plan) {
  snapshot_ = snapshotOf(snapshot_.revision + 1, std::move(plan));
}

Snapshot PlanDocument::snapshotOf(quint64 revision, std::shared_ptr<const ClassPlan> plan) const {
  const Date day = plan->date ? *plan->date : today_();
  auto evaluation = std::make_shared<const Evaluation>(evaluate(*knowledge_, *plan, roster_, day));
  std::vector<PersonId> people;
  std::copy_if(evaluation->people.begin(), evaluation->people.end(), std::back_inserter(people),
               [this](const PersonId& person) {
                 return std::find(seenPeople_.begin(), seenPeople_.end(), person) != seenPeople_.end();
               });
  auto seen = people.empty() ? evaluation : std::make_shared<const Evaluation>(seenFor(*evaluation, people));
  return {revision, knowledge_, std::move(plan), std::move(evaluation), std::move(people), std::move(seen), body_};
}

void PlanDocument::setSeenPeople(std::vector<PersonId> people) {
  if (people == seenPeople_)
    return;
  seenPeople_ = std::move(people);
  show(snapshot_.plan);
}

void PlanDocument::setBody(const BodySize& body) {
  if (body == body_)
    return;
  body_ = body;
  ++snapshot_.revision;
  snapshot_.body = body;
  Q_EMIT changed();
}

} // namespace matwright
