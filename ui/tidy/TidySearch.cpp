#include "ui/tidy/TidySearch.h"

#include "core/evaluate/Outcome.h"

#include <algorithm>

namespace matwright {
namespace {

std::vector<Caution> strongestFirst(std::vector<Caution> cautions) {
  std::stable_sort(cautions.begin(), cautions.end(),
                   [](const Caution& a, const Caution& b) { return a.level > b.level; });
  return cautions;
}

} // namespace

TidySearch::TidySearch(PlanDocument& document, QObject* parent) : QObject(parent), document_(document) {}

void TidySearch::begin(const TidyRequest& request) {
  found_.reset();
  refusal_.reset();
  background_.start([this, request, nodes = nodes_, before = document_.snapshot(), roster = document_.roster(),
                     day = document_.day()](const Background::Post& post) -> Background::Telling {
    TidyLimits limits;
    limits.nodes = nodes;
    limits.stop = [&] { return post.isStopped(); };
    limits.progress = [&](const TidyProgress& progress) {
      post.progress([this, progress] { Q_EMIT progressed(progress); });
    };
    auto result = tidied(*before.knowledge, *before.plan, roster, day, request, limits);
    if (!result)
      return [this, refusal = result.error()] {
        refusal_ = refusal;
        Q_EMIT finished();
      };
    TidyFound found{request, *std::move(result), before, before, {}, {}};
    if (!found.result.moves.empty()) {
      const Group group(*before.knowledge, before.plan->people, roster, day);
      const Outcome today = outcomeOf(*before.knowledge, group, *before.plan);
      const Outcome then = outcomeOf(*before.knowledge, group, found.result.plan);
      found.come = strongestFirst(newCautions(today, then));
      found.gone = strongestFirst(newCautions(then, today));
    }
    return [this, found = std::move(found)] {
      found_ = found;
      if (!found.result.moves.empty())
        if (auto after = document_.preview(editOf(*found.before.plan, found.result)))
          found_->after = *std::move(after);
      Q_EMIT finished();
    };
  });
}

void TidySearch::stop() { background_.stop(); }

void TidySearch::drop() {
  background_.drop();
  found_.reset();
  refusal_.reset();
}

} // namespace matwright
