#include "ui/compose/Composition.h"

#include <algorithm>

namespace matwright {
namespace {

// The section of wishes that a section of another class goes into: the one of the same name, or else of the same place.
std::size_t sectionLike(const std::vector<Section>& sections, const std::string& name, std::size_t place) {
  if (place < sections.size() && sections[place].name == name)
    return place;
  const auto named = std::find_if(sections.begin(), sections.end(), [&](const Section& s) { return s.name == name; });
  return named == sections.end() ? std::min(place, sections.size() - 1)
                                 : static_cast<std::size_t>(named - sections.begin());
}

void takeNames(ClassPlan& plan, const ClassWishes& wishes) {
  plan.name = wishes.name;
  for (std::size_t i = 0; i < plan.sections.size() && i < wishes.sections.size(); ++i)
    plan.sections[i].name = wishes.sections[i].name;
}

void takeNames(Composed& composed, const ClassWishes& wishes) {
  composed.wishes.name = wishes.name;
  for (std::size_t i = 0; i < composed.wishes.sections.size() && i < wishes.sections.size(); ++i)
    composed.wishes.sections[i].name = wishes.sections[i].name;
  takeNames(composed.base, wishes);
  takeNames(composed.result.plan, wishes);
}

} // namespace

Composition::Composition(PlanDocument& document, QObject* parent)
    : QObject(parent), document_(document),
      shownDocument_(document.snapshot().knowledge, [this] { return document_.today(); }) {
  connect(&document_, &PlanDocument::changed, this, &Composition::takeSurroundings);
  takeSurroundings();
}

void Composition::takeSurroundings() {
  const bool known = shownDocument_.snapshot().knowledge == document_.snapshot().knowledge;
  const bool same = known && shownDocument_.roster() == document_.roster();
  shownDocument_.setKnowledge(document_.snapshot().knowledge);
  if (!same)
    shownDocument_.setRoster(document_.roster());
  shownDocument_.setBody(document_.snapshot().body);
  if (!same)
    Q_EMIT surroundingsChanged();
}

void Composition::beginNew() {
  drop();
  open_.reset();
  kept_.clear();
  last_.reset();
  shown_.reset();
  names_.reset();
  shownDocument_.load(emptyClass({}));
}

void Composition::beginFrom(const ClassPlan& open) {
  beginNew();
  open_ = open;
  shownDocument_.load(open);
}

ClassPlan Composition::baseFor(const ClassWishes& wishes) const {
  ClassPlan base = open_ ? *open_ : blankClass(wishes);
  if (!shown_)
    return base;
  std::vector<StepId> staying(kept_.begin(), kept_.end());
  if (open_)
    forEachStep(*open_, [&](const Step& step) { staying.push_back(step.id); });
  const ClassPlan kept = keptWith(document_.knowledge().catalogue, shown_->result.plan, staying);
  if (open_) // has the same sections
    base.sections = kept.sections;
  else
    for (std::size_t i = 0; i < kept.sections.size(); ++i) {
      const auto& steps = kept.sections[i].steps;
      auto& into = base.sections[sectionLike(base.sections, kept.sections[i].name, i)].steps;
      into.insert(into.end(), steps.begin(), steps.end());
    }
  return base;
}

void Composition::compose(const ClassWishes& wishes) { search({{}, wishes, baseFor(wishes), {}, {}}, {}); }

void Composition::composeAnother(const ClassWishes& wishes) {
  ClassPlan base = baseFor(wishes);
  std::vector<MovementId> unlike = shown_ ? movementsBeyond(shown_->result.plan, base) : std::vector<MovementId>();
  search({{}, wishes, std::move(base), std::move(unlike), {}}, {});
}

void Composition::composeSection(std::size_t section) {
  if (!canComposeSection(section))
    return;
  Composed asked{{}, shown_->wishes, baseFor(shown_->wishes), tried_, {}};
  for (const Step& step : shown_->result.plan.sections[section].steps)
    if (!findStep(asked.base, step.id) &&
        std::find(asked.unlike.begin(), asked.unlike.end(), step.movement) == asked.unlike.end())
      asked.unlike.push_back(step.movement);
  tried_ = asked.unlike;
  asked.result.plan = shown_->result.plan;
  ++turns_;
  search(std::move(asked), section);
}

bool Composition::canComposeSection(std::size_t section) const {
  if (!shown_ || section >= shown_->result.plan.sections.size())
    return false;
  const auto& steps = shown_->result.plan.sections[section].steps;
  return std::any_of(steps.begin(), steps.end(), [this](const Step& step) { return !isKept(step.id); });
}

void Composition::search(Composed asked, std::optional<std::size_t> section) {
  asked.knowledge = document_.snapshot().knowledge;
  names_.reset();
  background_.start([this, asked = std::move(asked), section, turns = turns_, evaluations = evaluations_,
                     roster = document_.roster(),
                     today = document_.today()](const Background::Post& post) -> Background::Telling {
    ComposeLimits limits;
    limits.evaluations = evaluations;
    limits.stop = [&] { return post.isStopped(); };
    limits.progress = [&](const ComposeProgress& progress) {
      post.progress([this, progress] { Q_EMIT progressed(progress); });
    };
    const Knowledge& knowledge = *asked.knowledge;
    const Date day = asked.base.date.value_or(today);
    ClassWishes wishes = asked.wishes;
    if (section)
      wishes.seed += turns * kSectionTries; // what was looked at before is not looked at again
    auto result = section ? sectionComposedAgain(knowledge, wishes, roster, day, asked.base, asked.result.plan,
                                                 *section, limits, asked.unlike)
                          : composed(knowledge, wishes, roster, day, asked.base, limits, asked.unlike);
    Composed found = asked;
    if (result)
      found.result = *std::move(result);
    return [this, found = std::move(found), whole = !section] { take(found, whole); };
  });
  Q_EMIT started();
}

void Composition::take(Composed found, bool whole) {
  if (names_)
    takeNames(found, *names_);
  last_ = std::move(found);
  if (last_->result.status == ComposeStatus::composed) {
    shown_ = last_;
    if (whole) {
      tried_.clear();
      turns_ = 0;
    }
    std::erase_if(kept_, [this](StepId step) { return !findStep(shown_->result.plan, step); });
    shownDocument_.load(shown_->result.plan);
  }
  Q_EMIT finished();
}

void Composition::rename(const ClassWishes& wishes) {
  if (open_)
    return;
  names_ = wishes;
  for (std::optional<Composed>* each : {&last_, &shown_})
    if (*each)
      takeNames(**each, wishes);
  if (shown_)
    shownDocument_.load(shown_->result.plan);
}

void Composition::stop() { background_.stop(); }
void Composition::drop() {
  background_.drop();
  explaining_.drop();
}

void Composition::keep(StepId step, bool kept) {
  if (kept == kept_.contains(step) || isOpen(step))
    return;
  if (kept)
    kept_.insert(step);
  else
    kept_.erase(step);
  Q_EMIT keptChanged();
}

void Composition::explain(std::optional<StepId> step) {
  if (!step || !shown_ || !findStep(shown_->result.plan, *step))
    return explaining_.drop();
  explaining_.start([this, step = *step, of = *shown_, roster = document_.roster(),
                     day = shownDocument_.day()](const Background::Post&) -> Background::Telling {
    const ComposeResult& result = of.result;
    Explained explained{step, {}, {}};
    if (std::find(result.chosen.begin(), result.chosen.end(), step) != result.chosen.end())
      explained.facts =
          reasonsFor(*of.knowledge, of.wishes, roster, day, result.plan, std::span(&step, 1)).front().reasons;
    if (auto reasons = reasonsFor(*of.knowledge, of.wishes, roster, day, result.plan, result.chosen, step, of.unlike))
      explained.reasons = *std::move(reasons);
    return [this, explained = std::move(explained)] { Q_EMIT this->explained(explained); };
  });
}

} // namespace matwright
