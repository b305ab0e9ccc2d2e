// The one owner of what a studio knows of its own, and of what it makes of the knowledge that comes with the program.
#pragma once

#include "core/base/Result.h"
#include "core/knowledge/OwnKnowledge.h"

#include <QObject>
#include <QUndoStack>
#include <memory>
#include <optional>
#include <vector>

namespace matwright {

class KnowledgeDocument : public QObject {
  Q_OBJECT

public:
  // What kept a change from being done; a change that changes nothing counts as done.
  using Done = Result<void, std::vector<Error>>;

  explicit KnowledgeDocument(std::shared_ptr<const Knowledge> builtIn, QObject* parent = nullptr);

  const Knowledge& builtIn() const { return *builtIn_; }
  const OwnKnowledge& own() const { return *own_; }
  // Both together; another value after every change, so what was shared before stays as it is.
  std::shared_ptr<const Knowledge> knowledge() const { return knowledge_; }

  // The table by which loads are worked out. A way of looking, so it is in no file and no undo list.
  void setBodyTable(BodyTable table);

  // Other knowledge of one's own altogether; the undo list starts anew.
  void load(OwnKnowledge own);
  // The same with nothing, for a studio whose own knowledge cannot be read. All changes are refused with these errors
  // until something is loaded, so that nothing is ever written over what is there.
  void lock(std::vector<Error> errors);
  const std::vector<Error>& lockedBy() const { return lockedBy_; }

  // Makes `after` of one's own knowledge as one entry of the undo list, which leaves no entry when nothing changes; for
  // `mergeKey` see PlanDocument::perform. Refused is what could not be written to a file and read again: texts and
  // numbers out of their bounds, unknown references, ids twice. An editor keeps such a draft to itself, and shows the
  // faults of it (core/knowledge/Faults.h), until it can be put here. What is kept is what would be read again: without
  // what a scope of rules has no use for.
  Done change(OwnKnowledge after, const QString& what, const QString& mergeKey = {});
  void sealGesture() { ++gesture_; }

  // Each one entry of the undo list. What is added gets an id of its own, made from its name (a rule's from what to do
  // instead), unless it brings one; the id is given back. What is replaced is the one with the same id.
  Result<MovementId, std::vector<Error>> add(Movement movement, const QString& what);
  Result<ConditionId, std::vector<Error>> add(Condition condition, const QString& what);
  Result<SourceId, std::vector<Error>> add(Source source, const QString& what);
  Result<RuleId, std::vector<Error>> add(Rule rule, const QString& what);
  Done replace(const Movement& movement, const QString& what, const QString& mergeKey = {});
  Done replace(const Condition& condition, const QString& what, const QString& mergeKey = {});
  Done replace(const Source& source, const QString& what, const QString& mergeKey = {});
  Done replace(const Rule& rule, const QString& what, const QString& mergeKey = {});
  // With what refers to it within one's own knowledge, see without() and usesOf(). Classes and people that have it keep
  // its id.
  Done remove(const MovementId& movement, const QString& what);
  Done remove(const ConditionId& condition, const QString& what);
  Done remove(const SourceId& source, const QString& what);
  Done remove(const RuleId& rule, const QString& what);

  // One's own threshold for a rule of the program, or none: then the program's holds again, as it does when both are
  // equal. Refused for a rule whose threshold is not open, see thresholdIsOpen().
  Done setThreshold(const RuleId& rule, std::optional<double> amount, const QString& what,
                    const QString& mergeKey = {});

  // A thing of one's own that is like one of the program or of one's own, with a new id; not yet added. Nothing for an
  // unknown id.
  std::optional<Movement> copyOf(const MovementId& movement) const;
  std::optional<Rule> copyOf(const RuleId& rule) const;
  // Adds such a copy of a condition, with copies of all the rules for it.
  Result<ConditionId, std::vector<Error>> addCopyOf(const ConditionId& condition, const QString& what);

  QUndoStack* undoStack() { return &undoStack_; }
  const QUndoStack* undoStack() const { return &undoStack_; }

Q_SIGNALS:
  void changed(); // own() and knowledge() are new ones

private:
  using Shared = std::shared_ptr<const OwnKnowledge>;
  void show(Shared own);

  std::shared_ptr<const Knowledge> builtIn_;
  std::shared_ptr<const Loads> loads_ = builtIn_->loads; // kept over changes: they go by poses, whosever these are
  Shared own_ = std::make_shared<const OwnKnowledge>();
  std::shared_ptr<const Knowledge> knowledge_;
  std::vector<Error> lockedBy_;
  QUndoStack undoStack_;
  quint64 gesture_ = 0;
};

} // namespace matwright
