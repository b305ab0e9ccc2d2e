// The one owner of an open class. Every change goes through perform(); every view reads snapshot().
#pragma once

#include "core/edit/Edit.h"
#include "core/evaluate/Evaluation.h"

#include <QObject>
#include <QUndoStack>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace matwright {

// A class with its evaluation: neither is ever seen without the other. Cheap to copy, never changes. What the
// evaluation points to in the knowledge stays as long as the snapshot.
struct Snapshot {
  quint64 revision = 0;
  std::shared_ptr<const Knowledge> knowledge; // that it was evaluated by
  std::shared_ptr<const ClassPlan> plan;
  std::shared_ptr<const Evaluation> evaluation;
  std::vector<PersonId> seenPeople;       // those in the class whom it is seen for; empty: everybody
  std::shared_ptr<const Evaluation> seen; // as seenFor() leaves it for them; the same value for everybody
  BodySize body;                          // in which its loads are told
};

class PlanDocument : public QObject {
  Q_OBJECT

public:
  // `today` gives the day for classes without a date of their own; it is asked whenever the class is evaluated.
  PlanDocument(std::shared_ptr<const Knowledge> knowledge, std::function<Date()> today, QObject* parent = nullptr);

  const Snapshot& snapshot() const { return snapshot_; }
  const ClassPlan& plan() const { return *snapshot_.plan; }
  const Evaluation& evaluation() const { return *snapshot_.evaluation; }
  const Evaluation& seen() const { return *snapshot_.seen; } // for views of cautions
  const std::vector<PersonId>& seenPeople() const { return snapshot_.seenPeople; }
  // May be another one after knowledgeChanged(); who keeps pointers into it keeps snapshot().knowledge with them.
  const Knowledge& knowledge() const { return *knowledge_; }
  const std::vector<Person>& roster() const { return roster_; }
  Date day() const; // the class's own date, or today
  Date today() const { return today_(); }

  // Does the edit as one entry of the undo list, named `what` ("Move 2 steps"). An edit that changes nothing leaves
  // no entry. With a `mergeKey`, an entry directly before with the same key is continued: typing in one field, or
  // holding a key, is one gesture until sealGesture(). On refusal nothing changes and refused() is emitted.
  Result<void, Refusal> perform(const Edit& edit, const QString& what, const QString& mergeKey = {});
  void sealGesture();

  // The class as it would be, without doing it; nothing when the edit would be refused.
  std::optional<Snapshot> preview(const Edit& edit) const;

  // An id that no step of this document has or ever had.
  StepId mintStepId();

  // Another class altogether; the undo list starts anew.
  void load(ClassPlan plan);
  // The people on file. Not part of the undo list of the class; the class is evaluated again.
  void setRoster(std::vector<Person> roster);
  // Other movements and rules to know classes by. Not part of the undo list of the class; it is evaluated again.
  void setKnowledge(std::shared_ptr<const Knowledge> knowledge);
  // Whom the class is seen for; nobody: everybody. A way of looking, so it is in no file and no undo list. Who leaves
  // the class is forgotten when another class is loaded, not before: undo brings her back.
  void setSeenPeople(std::vector<PersonId> people);
  // The body in which views tell loads; the evaluation does not depend on it. In no file and no undo list.
  void setBody(const BodySize& body);

  QUndoStack* undoStack() { return &undoStack_; }
  const QUndoStack* undoStack() const { return &undoStack_; }

Q_SIGNALS:
  void changed();          // the snapshot is a new one
  void loaded();           // another class altogether; comes before its changed()
  void knowledgeChanged(); // knowledge() and the snapshot are new ones; comes before changed()
  void refused(matwright::Refusal refusal);

private:
  void show(std::shared_ptr<const ClassPlan> plan);
  void take(std::shared_ptr<const ClassPlan> plan);
  Snapshot snapshotOf(quint64 revision, std::shared_ptr<const ClassPlan> plan) const;

  std::shared_ptr<const Knowledge> knowledge_;
  std::function<Date()> today_;
  std::vector<Person> roster_;
  BodySize body_;
  std::vector<PersonId> seenPeople_; // as chosen, whether or not they are in the class
  Snapshot snapshot_;
  QUndoStack undoStack_;
  StepId lastMinted_;
  quint64 gesture_ = 0;
};

} // namespace matwright
