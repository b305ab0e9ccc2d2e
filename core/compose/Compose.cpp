#include "core/compose/Compose.h"

#include "core/compose/Bans.h"
#include "core/compose/ComposeCheck.h"
#include "core/compose/FillSearch.h"
#include "core/compose/Obstacles.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace matwright {
namespace {

constexpr int kMostVain = 12;               // searches that were in vain because of what only a whole class shows
constexpr int kMostVainRelaxed = 4;         // the same for one wish less
constexpr double kSharePerVain = 0.25;      // of the evaluations, for another one at the least
constexpr double kSharePerRelaxation = 0.1; // of the evaluations

Seconds seconds(std::int64_t milliseconds) { return Seconds(static_cast<double>(milliseconds) / 1000); }

class Composing {
public:
  Composing(const Knowledge& knowledge, const ClassWishes& wishes, std::span<const Person> roster, Date day,
            const ClassPlan& plan, const ComposeLimits& limits, std::span<const MovementId> unlike)
      : knowledge_(knowledge), wishes_(wishes), roster_(roster), day_(day), kept_(plan), limits_(limits),
        unlike_(unlike) {
    kept_.people = wishes.people;
    kept_.pace = wishes.pace;
    kept_.target = wishes.length;
  }

  ComposeResult run() {
    const Group group(knowledge_, wishes_.people, roster_, day_);
    result_.plan = kept_;
    result_.obstacles = keptOut(knowledge_, group, kept_);
    if (!result_.obstacles.empty())
      result_.status = ComposeStatus::impossible;
    else
      search(group);
    if (result_.status == ComposeStatus::notFound)
      findWhatIsInTheWay();
    return std::move(result_);
  }

private:
  void search(const Group& group) {
    for (int vain = 0;; ++vain) {
      const Offer offer = offerFor(knowledge_, wishes_, group, kept_, unlike_, bans_);
      result_.obstacles = proofsAgainst(wishes_, offer);
      if (!result_.obstacles.empty()) {
        // What was banned might do in another class.
        result_.status = bans_.empty() ? ComposeStatus::impossible : ComposeStatus::notFound;
        return;
      }
      const FillAnswer answer = solveFill(offer.problem, limitsFor(std::max(limits_.evaluations - result_.evaluations,
                                                                            vain > 0 ? share(kSharePerVain) : 0)));
      result_.evaluations += answer.evaluations;
      result_.stopped = answer.stopped;
      if (!answer.filling) {
        result_.status = answer.stopped ? ComposeStatus::cancelled : ComposeStatus::notFound;
        return;
      }
      const ClassPlan plan = planOf(offer, *answer.filling);
      if (!bringsCautions(wishes_, plan)) {
        take(offer, answer, plan);
        return;
      }
      if (answer.stopped) {
        result_.status = ComposeStatus::cancelled;
        return;
      }
      const std::vector<Ban> more = bansAfter(knowledge_, wishes_, group, kept_, plan);
      if (more.empty())
        tellWhoIsKeptOut(group, plan);
      if (more.empty() || vain == kMostVain)
        return; // not found
      bans_.insert(bans_.end(), more.begin(), more.end());
    }
  }

  std::int64_t share(double part) const {
    return std::max<std::int64_t>(1, static_cast<std::int64_t>(part * static_cast<double>(limits_.evaluations)));
  }

  FillLimits limitsFor(std::int64_t evaluations) const {
    FillLimits limits;
    limits.evaluations = evaluations;
    limits.seed = wishes_.seed;
    limits.stop = &limits_.stop;
    if (limits_.progress)
      limits.progress = [this](std::optional<std::int64_t> cost, std::int64_t done) {
        limits_.progress(
            {cost ? std::optional(seconds(*cost)) : std::nullopt, result_.evaluations + done, limits_.evaluations});
      };
    return limits;
  }

  ClassPlan planOf(const Offer& offer, const Filling& filling) const {
    ClassPlan plan = kept_;
    std::int64_t id = highestStepId(kept_).value;
    std::size_t at = 0;
    for (std::size_t section = 0; section < plan.sections.size(); ++section) {
      std::vector<Step> kept = std::move(plan.sections[section].steps), steps;
      auto next = kept.begin();
      for (; at < filling.ends[section]; ++at) {
        if (filling.kept[at]) {
          steps.push_back(std::move(*next++));
          continue;
        }
        const Offered& choice = offer.choices[filling.items[at]];
        steps.push_back(stepOf(StepId{++id}, *choice.movement, choice.option ? choice.option->id : OptionId{}));
        steps.back().dose = choice.dose;
      }
      plan.sections[section].steps = std::move(steps);
    }
    return plan;
  }

  // Whether the whole class shows what its steps and ways alone do not.
  bool bringsCautions(const ClassWishes& wishes, const ClassPlan& plan) const {
    const std::vector<ComposeBreachAt> breaches = breachesOf(knowledge_, wishes, roster_, day_, kept_, plan);
    const auto isCaution = [](const ComposeBreachAt& each) { return each.breach == ComposeBreach::caution; };
    if (!std::all_of(breaches.begin(), breaches.end(), isCaution))
      std::abort(); // the search does not do what it says
    return !breaches.empty();
  }

  // By what is said of the class as a whole; no choice can mend it.
  void tellWhoIsKeptOut(const Group& group, const ClassPlan& plan) {
    const std::vector<PersonId> people = group.ids();
    for (const Caution& caution : outcomeOf(knowledge_, group, plan).cautions)
      if (caution.level == Level::leaveOut && !caution.step) {
        Obstacle& obstacle = result_.obstacles.emplace_back();
        obstacle.kind = ObstacleKind::personKeptOut;
        obstacle.rule = caution.rule;
        if (caution.person != Finding::kNone)
          obstacle.person = people[caution.person];
      }
  }

  void take(const Offer& offer, const FillAnswer& answer, const ClassPlan& plan) {
    result_.status = ComposeStatus::composed;
    result_.plan = plan;
    forEachStep(plan, [&](const Step& step) {
      if (!findStep(kept_, step.id))
        result_.chosen.push_back(step.id);
    });
    result_.cost = costOf(answer.weight);
    FillScale scale(offer.problem);
    scale.weigh(*answer.filling);
    tellShortfalls(offer.problem, scale.given());
  }

  // Needs of the focus come first: regions, what the spine does, skills.
  void tellShortfalls(const FillProblem& problem, const std::vector<std::int64_t>& given) {
    std::size_t need = 0;
    const auto tell = [&](auto set) {
      const FillNeed& wish = problem.needs[need];
      if (given[need] < wish.wished) {
        Shortfall& shortfall = result_.shortfalls.emplace_back();
        shortfall.wished = seconds(wish.wished);
        shortfall.given = seconds(given[need]);
        set(shortfall);
      }
      ++need;
    };
    wishes_.focus.regions.forEach([&](Region region) { tell([&](Shortfall& each) { each.region = region; }); });
    wishes_.focus.spine.forEach([&](SpineAction action) { tell([&](Shortfall& each) { each.spine = action; }); });
    wishes_.focus.skills.forEach([&](Feature skill) { tell([&](Shortfall& each) { each.skill = skill; }); });
  }

  void findWhatIsInTheWay() {
    for (const Relaxed& relaxed : relaxations(knowledge_, wishes_)) {
      if (isFoundBy(relaxed))
        result_.obstacles.push_back(relaxed.obstacle);
      if (hasToStop_)
        return;
    }
  }

  bool isFoundBy(const Relaxed& relaxed) {
    const Group group(knowledge_, relaxed.wishes.people, roster_, day_);
    std::vector<Ban> bans;
    if (relaxed.obstacle.wish != Wish::people)
      bans = bans_;
    for (int vain = 0; vain <= kMostVainRelaxed; ++vain) {
      const Offer offer = offerFor(knowledge_, relaxed.wishes, group, kept_, unlike_, bans);
      FillLimits limits = limitsFor(share(kSharePerRelaxation));
      limits.firstOnly = true;
      limits.progress = {};
      const FillAnswer answer = solveFill(offer.problem, limits);
      result_.evaluations += answer.evaluations;
      hasToStop_ = answer.stopped;
      if (!answer.filling)
        return false;
      ClassPlan plan = planOf(offer, *answer.filling);
      plan.people = relaxed.wishes.people;
      if (!bringsCautions(relaxed.wishes, plan))
        return true;
      const std::vector<Ban> more = bansAfter(knowledge_, relaxed.wishes, group, kept_, plan);
      if (more.empty() || hasToStop_)
        return false;
      bans.insert(bans.end(), more.begin(), more.end());
    }
    return false;
  }

  const Knowledge& knowledge_;
  const ClassWishes& wishes_;
  std::span<const Person> roster_;
  Date day_;
  ClassPlan kept_;
  const ComposeLimits& limits_;
  std::span<const MovementId> unlike_;
  std::vector<Ban> bans_;
  bool hasToStop_ = false; // while it is found out what is in the way
  ComposeResult result_;
};

} // namespace

Result<ComposeResult, WishesFault> composed(const Knowledge& knowledge, const ClassWishes& wishes,
                                            std::span<const Person> roster, Date day, const ClassPlan& plan,
                                            const ComposeLimits& limits, std::span<const MovementId> unlike) {
  if (const auto fault = faultIn(wishes))
    return failure(*fault);
  if (plan.sections.size() != wishes.sections.size())
    return failure(WishesFault::otherSections);
  return Composing(knowledge, wishes, roster, day, plan, limits, unlike).run();
}

} // namespace matwright
