#include "ui/document/PlanDocument.h"

namespace matwright {

// One entry of the undo list: the class before and after.
class PlanDocument::Change : public QUndoCommand {
public:
  Change(PlanDocument& document, std::shared_ptr<const ClassPlan> before, std::shared_ptr<const ClassPlan> after,
         const QString& what, QString mergeKey, quint64 gesture)
      : QUndoCommand(what), document_(document), before_(std::move(before)), after_(std::move(after)),
        mergeKey_(std::move(mergeKey)), gesture_(gesture) {}

  void undo() override { document_.show(before_); }
  void redo() override { document_.show(after_); }
  int id() const override { return mergeKey_.isEmpty() ? -1 : 1; }

  bool mergeWith(const QUndoCommand* next) override {
    const auto* change = static_cast<const Change*>(next);
    if (change->mergeKey_ != mergeKey_ || change->gesture_ != gesture_)
      return false;
    after_ = change->after_;
    setObsolete(*before_ == *after_);
    return true;
  }

private:
  PlanDocument& document_;
  std::shared_ptr<const ClassPlan> before_, after_;
  QString mergeKey_;
  quint64 gesture_;
};

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
  undoStack_.push(new Change(*this, snapshot_.plan, std::make_shared<const ClassPlan>(std::move(*after)), what,
                             mergeKey, gesture_));
  return {};
}

void PlanDocument::sealGesture() { ++gesture_; }

std::optional<Snapshot> PlanDocument::preview(const Edit& edit) const {
  auto after = applyEdit(plan(), edit);
  if (!after)
    return std::nullopt;
  auto evaluation = evaluated(*after);
  return Snapshot{snapshot_.revision, std::make_shared<const ClassPlan>(std::move(*after)), std::move(evaluation)};
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

void PlanDocument::show(std::shared_ptr<const ClassPlan> plan) {
  auto evaluation = evaluated(*plan);
  snapshot_ = Snapshot{snapshot_.revision + 1, std::move(plan), std::move(evaluation)};
  Q_EMIT changed();
}

std::shared_ptr<const Evaluation> PlanDocument::evaluated(const ClassPlan& plan) const {
  return std::make_shared<const Evaluation>(evaluate(*knowledge_, plan, roster_, plan.date ? *plan.date : today_()));
}

} // namespace matwright
