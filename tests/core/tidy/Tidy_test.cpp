// Small classes worked by hand with the ways of SmallKnowledge.h.
#include "core/tidy/Tidy.h"
#include "tests/support/SmallKnowledge.h"

#include <gtest/gtest.h>

namespace matwright::test {
namespace {

const Date kDay = day(2026, 6, 1);

std::vector<std::int64_t> idsIn(const ClassPlan& plan) {
  std::vector<std::int64_t> ids;
  forEachStep(plan, [&](const Step& each) { ids.push_back(each.id.value); });
  return ids;
}

TidyResult tidy(const ClassPlan& plan, const TidyRequest& request = {}, const TidyLimits& limits = {}) {
  static const Knowledge knowledge = smallKnowledge();
  TidyResult result = tidied(knowledge, plan, {}, kDay, request, limits).value();
  const auto edited = applyEdit(plan, editOf(plan, result));
  EXPECT_TRUE(edited && *edited == result.plan) << "the edit does not make the class";
  return result;
}

using Ids = std::vector<std::int64_t>;

// curl (lying), fold (sitting), curl: lying to sit 4, back 3. The two curls together: 4 alone, or fold first: 3.
TEST(Tidy, FindsTheShortestWayAndSaysSo) {
  const ClassPlan plan = classOf({step(1, "curl"), step(2, "fold"), step(3, "curl")});
  const TidyResult result = tidy(plan);
  EXPECT_EQ(result.status, TidyStatus::shortest);
  EXPECT_EQ(result.before, (TidyCost{Seconds(7), 2, {}}));
  EXPECT_EQ(result.after, (TidyCost{Seconds(3), 1, {}}));
  EXPECT_EQ(result.lower, Seconds(3));
  EXPECT_EQ(idsIn(result.plan), (Ids{2, 1, 3}));
  ASSERT_EQ(result.moves.size(), 1U);
  EXPECT_EQ(result.moves[0].step, StepId{1}); // as well as 2
  EXPECT_EQ(result.moves[0].from, (Place{0, 0}));
  EXPECT_EQ(result.moves[0].to, (Place{0, 1}));
  EXPECT_EQ(result.moves[0].gains, (std::vector<TidyGain>{{TidyReason::shorterWay, Seconds(4)}}));
}

TEST(Tidy, MobilityStretchesWhatIsSaved) {
  ClassPlan plan = classOf({step(1, "curl"), step(2, "fold"), step(3, "curl")});
  plan.pace.mobility = 2;
  EXPECT_EQ(tidy(plan).before.moving, Seconds(14));
  EXPECT_EQ(tidy(plan).after.moving, Seconds(6));
}

TEST(Tidy, LeavesAnOrderThatIsAsGoodAsAny) {
  const ClassPlan plan = classOf({step(1, "fold"), step(2, "arch"), step(3, "swing")});
  const TidyResult once = tidy(classOf({step(1, "swing"), step(2, "fold")}));
  EXPECT_EQ(once.status, TidyStatus::nothingToDo); // 2 seconds; up again are 6
  EXPECT_TRUE(once.moves.empty());
  EXPECT_EQ(tidy(tidy(plan).plan).status, TidyStatus::nothingToDo);
}

TEST(Tidy, AnEmptyClassAndOneStepAreLeftAlone) {
  EXPECT_EQ(tidy(classOf({})).status, TidyStatus::nothingToDo);
  EXPECT_EQ(tidy(classOf({step(1, "curl")})).status, TidyStatus::nothingToDo);
  EXPECT_EQ(tidy(classOf({step(1, "unheard")})).status, TidyStatus::nothingToDo);
}

TEST(Tidy, SectionsKeepTheirSteps) {
  ClassPlan plan = classOf({step(1, "curl"), step(2, "fold")});
  plan.sections.push_back({"Second", {step(3, "fold"), step(4, "curl")}});
  const TidyResult result = tidy(plan);
  EXPECT_EQ(idsIn(result.plan), (Ids{1, 2, 3, 4})); // 4 + 0 + 3; fold first would not help
  plan.sections[1].steps = {step(3, "curl"), step(4, "fold")};
  EXPECT_EQ(tidy(plan).before.moving, Seconds(11)); // 4 + 3 + 4
  EXPECT_EQ(tidy(plan).after.moving, Seconds(7));   // 3 + 0 + 4, or 4 + 0 + 3
  EXPECT_EQ(tidy(plan).moves.size(), 1U);
}

TEST(Tidy, PinnedStepsAndThoseOutsideTheScopeStay) {
  const ClassPlan plan = classOf({step(1, "curl"), step(2, "fold"), step(3, "curl")});
  TidyRequest request;
  request.pinned = {StepId{2}};
  EXPECT_EQ(tidy(plan, request).status, TidyStatus::nothingToDo);
  request.pinned = {StepId{1}};
  EXPECT_EQ(idsIn(tidy(plan, request).plan), (Ids{1, 3, 2}));
  request = {};
  request.steps = {StepId{2}, StepId{3}};
  EXPECT_EQ(idsIn(tidy(plan, request).plan), (Ids{1, 3, 2}));
}

TEST(Tidy, RefusesWhatTheClassDoesNotHave) {
  const Knowledge knowledge = smallKnowledge();
  const ClassPlan plan = classOf({step(1, "curl")});
  TidyRequest request;
  request.section = 1;
  EXPECT_EQ(tidied(knowledge, plan, {}, kDay, request).error(), Refusal::noSuchSection);
  request = {};
  request.pinned = {StepId{7}};
  EXPECT_EQ(tidied(knowledge, plan, {}, kDay, request).error(), Refusal::noSuchStep);
}

// Sitting first would cost 3 in place of 4.
TEST(Tidy, APrerequisiteStaysBeforeWhatNeedsIt) {
  std::vector<Movement> movements = smallMovements();
  movements.back().prerequisites = {MovementId{"curl"}}; // of fold
  Knowledge knowledge = smallKnowledge();
  knowledge.catalogue = Catalogue(movements);
  const ClassPlan plan = classOf({step(1, "curl"), step(2, "fold")});
  EXPECT_EQ(tidied(knowledge, plan, {}, kDay).value().status, TidyStatus::nothingToDo);
  EXPECT_EQ(tidied(smallKnowledge(), plan, {}, kDay).value().status, TidyStatus::shortest);
}

// roll (lying to sitting) needs curl. Roll first would cost 3 to lie down again; curl first nothing.
TEST(Tidy, MendsAPrerequisiteThatComesTooLate) {
  const TidyResult result = tidy(classOf({step(1, "roll"), step(2, "curl")}));
  EXPECT_EQ(idsIn(result.plan), (Ids{2, 1}));
  EXPECT_EQ(result.moves[0].gains[0].reason, TidyReason::prerequisite);
  TidyRequest pinned;
  pinned.pinned = {StepId{1}, StepId{2}};
  const ClassPlan plan = classOf({step(1, "roll"), step(2, "curl"), step(3, "swing"), step(4, "swing", "x")});
  EXPECT_EQ(idsIn(tidy(plan, pinned).plan), idsIn(plan));
}

TEST(Tidy, ASeriesStaysTogether) {
  const TidyResult result =
      tidy(classOf({step(1, "curl"), step(2, "fold"), step(3, "fold"), step(4, "curl"), step(5, "unheard")}));
  EXPECT_EQ(idsIn(result.plan), (Ids{2, 3, 1, 4, 5}));
}

// curl, fold: two flexions; then swing and curl do not counter, arch does. Without the wish nothing moves arch.
TEST(Tidy, ACounterMovementComesSoonAfterFlexion) {
  const ClassPlan plan =
      classOf({step(1, "curl"), step(2, "fold"), step(3, "kick"), step(4, "swing"), step(5, "arch")});
  TidyRequest request;
  request.wishes.counterMovement = true;
  EXPECT_EQ(tidy(plan, request).before.wished, Seconds(30));
  EXPECT_EQ(tidy(plan, request).after.wished, Seconds{});
}

TEST(Tidy, EachWishIsWeighed) {
  const ClassPlan plan =
      classOf({step(1, "kick"), step(2, "swing"), step(3, "curl"), step(4, "swing"), step(5, "fold")});
  TidyRequest request;
  request.wishes.otherRegion = true;
  EXPECT_EQ(tidy(plan, request).before.wished, Seconds(5)); // hips twice
  request.wishes = {};
  request.wishes.fewerRises = true;
  EXPECT_GE(tidy(plan, request).before.wished, Seconds(40)); // to stand and back, twice
  EXPECT_LE(tidy(plan, request).after.wished, tidy(plan, request).before.wished - Seconds(20));
  request.wishes = {};
  request.wishes.wishedArc = true;
  EXPECT_GT(tidy(plan, request).before.wished, Seconds{});
  EXPECT_LE(tidy(plan, request).after.total(), tidy(plan, request).before.total());
}

TEST(Tidy, StopsWhenToldTo) {
  TidyLimits limits;
  limits.stop = [] { return true; };
  const ClassPlan plan = classOf({step(1, "curl"), step(2, "fold"), step(3, "curl"), step(4, "swing"), step(5, "arch"),
                                  step(6, "curl"), step(7, "kick"), step(8, "fold")});
  const TidyResult result = tidy(plan, {}, limits);
  EXPECT_EQ(result.status, TidyStatus::cancelled);
  EXPECT_LE(result.after.total(), result.before.total());
  EXPECT_LE(result.lower, result.after.total());
}

TEST(Tidy, TellsHowFarItIs) {
  std::optional<Seconds> best;
  TidyLimits limits;
  limits.progress = [&](const TidyProgress& progress) { best = progress.best ? progress.best : best; };
  tidy(classOf({step(1, "curl"), step(2, "fold"), step(3, "curl")}), {}, limits);
  EXPECT_EQ(best, Seconds(3));
}

} // namespace
} // namespace matwright::test
