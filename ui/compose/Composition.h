#pragma once

#include "core/compose/ComposeAgain.h"
#include "core/compose/ComposeReasons.h"
#include "core/compose/Reasons.h"
#include "ui/document/Background.h"
#include "ui/document/PlanDocument.h"

#include <set>

namespace matwright {

// What a search gave, with what it was asked for.
struct Composed {
  std::shared_ptr<const Knowledge> knowledge; // that owns what the result points to
  ClassWishes wishes;
  ClassPlan base; // what was there, and what is to stay: nobody chose it
  std::vector<MovementId> unlike;
  ComposeResult result;
};

// What speaks for a step of a composed class, and what another one in its place would cost.
struct Explained {
  StepId step;
  std::vector<ComposeReason> facts; // none for a step that was kept
  Reasons reasons;
};

// A class that is being composed from wishes: which of its steps stay, the search away from the interface thread, and
// what it found. The class of the last search that found one is shown until another one takes its place.
class Composition : public QObject {
  Q_OBJECT

public:
  // The document must outlive it: people, knowledge and today are its.
  explicit Composition(PlanDocument& document, QObject* parent = nullptr);

  // An own class, or the open one, filled up: its steps stay. What was found before is forgotten.
  void beginNew();
  void beginFrom(const ClassPlan& open);
  bool completes() const { return open_.has_value(); }
  const std::optional<ClassPlan>& open() const { return open_; } // the class that is filled up

  // Each looks in place of what still runs. The wishes have no fault.
  void compose(const ClassWishes& wishes);
  void composeAnother(const ClassWishes& wishes); // unlike the one that is shown
  void composeSection(std::size_t section);       // of the class that is shown; the rest stays
  void rename(const ClassWishes& wishes);         // takes names alone over, of what is still found, too
  void stop();                                    // the best so far is what is found
  void drop();                                    // nothing more is told
  bool isSearching() const { return background_.isRunning(); }

  // Steps that stay whatever is composed anew, besides those of the open class.
  bool isKept(StepId step) const { return kept_.contains(step) || isOpen(step); }
  bool isOpen(StepId step) const { return open_ && findStep(*open_, step); }
  void keep(StepId step, bool kept);
  bool canComposeSection(std::size_t section) const; // there is something in it that may go

  const std::optional<Composed>& last() const { return last_; }   // of the last search, whatever it gave
  const std::optional<Composed>& shown() const { return shown_; } // the class in document(); nothing: none yet
  PlanDocument& document() { return shownDocument_; }
  // Finds out why a step is there; explained() tells it, unless another one is asked for before.
  void explain(std::optional<StepId> step);

  // How far a search may go; the same number gives the same class on every machine.
  void setEvaluations(std::int64_t evaluations) { evaluations_ = evaluations; }

Q_SIGNALS:
  void started();
  void progressed(const matwright::ComposeProgress& progress);
  void finished(); // with last()
  void keptChanged();
  void surroundingsChanged(); // people, movements or rules: what was found may be wrong by now
  void explained(const matwright::Explained& explained);

private:
  void takeSurroundings();
  ClassPlan baseFor(const ClassWishes& wishes) const;
  void search(Composed asked, std::optional<std::size_t> section);
  void take(Composed found, bool whole);

  PlanDocument& document_;
  PlanDocument shownDocument_;
  std::optional<ClassPlan> open_;
  std::set<StepId> kept_;
  std::optional<Composed> last_, shown_;
  std::optional<ClassWishes> names_;
  std::vector<MovementId> tried_; // in sections composed anew since the whole was
  std::uint64_t turns_ = 0;       // how often that was
  std::int64_t evaluations_ = ComposeLimits{}.evaluations;
  Background background_, explaining_; // go first: what they tell touches the rest
};

} // namespace matwright
