#include "ui/document/PlanDocument.h"

#include "ui/document/ValueChange.h"

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
  auto evaluation = evaluated(*after);
  return Snapshot{snapshot_.revision, knowledge_, std::make_shared<const ClassPlan>(std::move(*after)),
                  std::move(evaluation)};
}

StepId PlanDocument::mintStepId() {
  ++lastMinted_.value;
  return lastMinted_;
}

void PlanDocument::load(ClassPlan plan) {
  undoStack_.clear();
  lastMinted_ = highestStepId(plan);
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
  auto evaluation = evaluated(*plan);
  snapshot_ = Snapshot{snapshot_.revision + 1, knowledge_, std::move(plan), std::move(evaluation)};
}

std::shared_ptr<const Evaluation> PlanDocument::evaluated(const ClassPlan& plan) const {
  return std::make_shared<const Evaluation>(evaluate(*knowledge_, plan, roster_, plan.date ? *plan.date : today_()));
}

} // namespace matwright
