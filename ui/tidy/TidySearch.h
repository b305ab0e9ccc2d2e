#pragma once

#include "core/tidy/Tidy.h"
#include "ui/document/Background.h"
#include "ui/document/PlanDocument.h"

namespace matwright {

// An order that was found for the class as it is in `before`.
struct TidyFound {
  TidyRequest request;
  TidyResult result;
  Snapshot before, after;          // the same where nothing moves
  std::vector<Caution> come, gone; // strongest first; of the evaluations after and before
};

// Looks for the order of the open class, away from the interface thread. What it found stays until it is asked again.
class TidySearch : public QObject {
  Q_OBJECT

public:
  explicit TidySearch(PlanDocument& document, QObject* parent = nullptr);

  void begin(const TidyRequest& request); // of the class as it is now, in place of what still runs
  void stop();                            // the best so far is what is found, at once
  void drop();                            // and forgets what was found
  bool isSearching() const { return background_.isRunning(); }

  const std::optional<TidyFound>& found() const { return found_; } // nothing while searching
  std::optional<Refusal> refusal() const { return refusal_; }      // why there is nothing

  // How far a search may go; the same number gives the same order on every machine.
  void setNodes(std::int64_t nodes) { nodes_ = nodes; }

Q_SIGNALS:
  void progressed(const matwright::TidyProgress& progress);
  void finished(); // with what was found, or a refusal

private:
  PlanDocument& document_;
  std::int64_t nodes_ = TidyLimits{}.nodes;
  std::optional<TidyFound> found_;
  std::optional<Refusal> refusal_;
  Background background_; // goes first: what it tells touches the rest
};

} // namespace matwright
