#include "tests/ui/tidy/Untidy.h"
#include "ui/tidy/TidySearch.h"

#include <QElapsedTimer>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using ::testing::ElementsAre;

struct Searching : ::testing::Test, Untidy {
  TidySearch search{document};
  int finished = 0, progressed = 0;

  Searching() {
    QObject::connect(&search, &TidySearch::finished, &search, [this] { ++finished; });
    QObject::connect(&search, &TidySearch::progressed, &search, [this](const TidyProgress&) { ++progressed; });
  }
  bool ends() {
    return QTest::qWaitFor([this] { return !search.isSearching(); }, 60000);
  }
};

TEST_F(Searching, FindsWhatTheCoreFinds) {
  loadRestless();
  search.begin({});
  EXPECT_FALSE(search.found());
  ASSERT_TRUE(ends());
  ASSERT_TRUE(search.found());
  EXPECT_EQ(finished, 1);
  const auto core = tidied(document.knowledge(), document.plan(), document.roster(), document.day());
  EXPECT_EQ(search.found()->result, *core);
  EXPECT_FALSE(core->moves.empty());
}

TEST_F(Searching, TheClassAfterIsTheOneThatTheEditMakes) {
  loadRestless();
  search.begin({});
  ASSERT_TRUE(ends());
  const TidyFound found = *search.found();
  EXPECT_EQ(*found.before.plan, document.plan());
  EXPECT_EQ(*found.after.plan, found.result.plan);
  EXPECT_EQ(found.after.evaluation->schedule.moving, found.result.after.moving);
  ASSERT_TRUE(document.perform(editOf(document.plan(), found.result), QString()));
  EXPECT_EQ(document.plan(), found.result.plan);
  EXPECT_EQ(document.evaluation().schedule.changes, found.result.after.changes);
}

TEST_F(Searching, CautionsThatComeAndGoAreThoseThatTheCoreCounts) {
  test::Draw draw(11);
  Person person = test::randomPerson(draw, document.knowledge().rules, testDay(), 4, "ilo");
  document.setRoster({person});
  ClassPlan plan = test::randomClass(draw, document.knowledge().catalogue, 16);
  plan.people = {person.id};
  document.load(plan);
  search.setNodes(20'000);
  search.begin(wishful());
  ASSERT_TRUE(ends());
  const TidyFound& found = *search.found();
  EXPECT_EQ(countLevels(found.come), found.result.come);
  EXPECT_EQ(countLevels(found.gone), found.result.gone);
  for (const std::vector<Caution>* cautions : {&found.come, &found.gone})
    EXPECT_TRUE(std::is_sorted(cautions->begin(), cautions->end(),
                               [](const Caution& a, const Caution& b) { return a.level > b.level; }));
}

TEST_F(Searching, AnOrderThatIsAsGoodAsAnyLeavesTheClassAsItIs) {
  load({"hundred", "hundred", "clam"});
  search.begin({});
  ASSERT_TRUE(ends());
  EXPECT_EQ(search.found()->result.status, TidyStatus::nothingToDo);
  EXPECT_EQ(search.found()->after.plan, search.found()->before.plan);
}

TEST_F(Searching, WhatTheCoreRefusesIsSaidAndNothingIsFound) {
  loadRestless();
  TidyRequest request;
  request.section = 40;
  search.begin(request);
  ASSERT_TRUE(ends());
  EXPECT_FALSE(search.found());
  EXPECT_EQ(search.refusal(), Refusal::noSuchSection);
  EXPECT_EQ(finished, 1);
  search.begin({});
  EXPECT_FALSE(search.refusal());
  ASSERT_TRUE(ends());
  EXPECT_TRUE(search.found());
}

// What is asked of the search is told by SolveOrder's own test, which times the questions whether to stop.
TEST_F(Searching, StoppedItKeepsTheBestSoFar) {
  loadEndless();
  search.setNodes(std::int64_t{1} << 50);
  search.begin(wishful());
  ASSERT_TRUE(QTest::qWaitFor([this] { return progressed > 0; }, 60000));
  QElapsedTimer clock;
  clock.start();
  search.stop();
  ASSERT_TRUE(ends());
  EXPECT_LT(clock.elapsed(), 3000); // 50 on a machine of one's own
  const TidyResult& result = search.found()->result;
  EXPECT_EQ(result.status, TidyStatus::cancelled);
  EXPECT_LT(result.after.total(), result.before.total());
  EXPECT_FALSE(result.moves.empty());
  EXPECT_EQ(countSteps(result.plan), countSteps(document.plan()));
}

TEST_F(Searching, ANewQuestionTakesThePlaceOfTheOld) {
  loadEndless();
  search.setNodes(std::int64_t{1} << 50);
  search.begin(wishful());
  ASSERT_TRUE(QTest::qWaitFor([this] { return progressed > 0; }, 60000));
  loadRestless();
  search.begin({});
  ASSERT_TRUE(ends());
  EXPECT_EQ(finished, 1);
  EXPECT_EQ(countSteps(search.found()->result.plan), 4U);
}

TEST_F(Searching, DroppedItForgetsWhatItFound) {
  loadRestless();
  search.begin({});
  ASSERT_TRUE(ends());
  search.drop();
  EXPECT_FALSE(search.found());
  search.begin({});
  search.drop();
  EXPECT_FALSE(search.isSearching());
  QTest::qWait(100);
  EXPECT_FALSE(search.found());
  EXPECT_EQ(finished, 1);
}

TEST_F(Searching, AClassWithoutStepsHasNothingToDo) {
  document.load(emptyClass("Empty"));
  search.begin({});
  ASSERT_TRUE(ends());
  EXPECT_EQ(search.found()->result.status, TidyStatus::nothingToDo);
  EXPECT_TRUE(search.found()->result.moves.empty());
}

} // namespace
} // namespace matwright
