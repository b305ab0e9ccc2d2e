#include "tests/support/Documents.h"
#include "tests/support/PanelFixture.h"

#include <QSignalSpy>

namespace matwright {
namespace {

TEST(PlanDocument, PerformIsOneUndoEntryWithTheEvaluationOfItsPlan) {
  OpenClass open;
  QSignalSpy changed(&open.document, &PlanDocument::changed);
  open.add("hundred", {0, 0});
  EXPECT_EQ(open.document.undoStack()->count(), 1);
  EXPECT_EQ(changed.count(), 1);
  EXPECT_EQ(open.document.evaluation(),
            evaluate(open.document.knowledge(), open.document.plan(), open.document.roster(), open.document.day()));
}

TEST(PlanDocument, TheBodyOfLoadsIsAWayOfLookingAndChangesNothingElse) {
  OpenClass open;
  open.add("hundred", {0, 0});
  const Snapshot before = open.document.snapshot();
  EXPECT_EQ(before.body, BodySize{});
  QSignalSpy changed(&open.document, &PlanDocument::changed);
  const BodySize small{.mass = 50, .stature = 1.50};
  open.document.setBody(small);
  open.document.setBody(small);
  EXPECT_EQ(changed.count(), 1);
  EXPECT_EQ(open.document.snapshot().body, small);
  EXPECT_GT(open.document.snapshot().revision, before.revision);
  EXPECT_EQ(open.document.snapshot().evaluation, before.evaluation);
  EXPECT_EQ(open.document.undoStack()->count(), 1);
  open.add("saw", {0, 1});
  EXPECT_EQ(open.document.snapshot().body, small);
}

TEST(PlanDocument, AChangeToNothingLeavesNoEntry) {
  OpenClass open;
  const StepId step = open.add("hundred", {0, 0});
  const Dose dose = findStep(open.document.plan(), step)->dose;
  EXPECT_TRUE(open.document.perform(SetDose{step, dose}, QStringLiteral("same")));
  EXPECT_EQ(open.document.undoStack()->count(), 1);
}

TEST(PlanDocument, ARefusalChangesNothingAndIsTold) {
  OpenClass open;
  const StepId step = open.add("hundred", {0, 0});
  const Snapshot before = open.document.snapshot();
  QSignalSpy refused(&open.document, &PlanDocument::refused);
  const auto result = open.document.perform(SetDose{step, Dose{0, DoseUnit::breaths}}, QStringLiteral("none"));
  ASSERT_FALSE(result);
  EXPECT_EQ(result.error(), Refusal::doseOutOfRange);
  EXPECT_EQ(refused.count(), 1);
  EXPECT_EQ(open.document.snapshot().revision, before.revision);
}

TEST(PlanDocument, UndoAndRedoBringTheSameValuesBack) {
  OpenClass open;
  const ClassPlan empty = open.document.plan();
  open.add("hundred", {0, 0});
  open.add("saw", {1, 0});
  const ClassPlan full = open.document.plan();
  open.document.undoStack()->undo();
  open.document.undoStack()->undo();
  EXPECT_EQ(open.document.plan(), empty);
  open.document.undoStack()->redo();
  open.document.undoStack()->redo();
  EXPECT_EQ(open.document.plan(), full);
}

TEST(PlanDocument, OneKeyIsOneGestureUntilSealed) {
  OpenClass open;
  const StepId step = open.add("hundred", {0, 0});
  const auto type = [&](int amount) {
    (void)open.document.perform(SetDose{step, Dose{amount, DoseUnit::breaths}}, QStringLiteral("dose"),
                                QStringLiteral("dose"));
  };
  type(11);
  type(12);
  type(13);
  EXPECT_EQ(open.document.undoStack()->count(), 2);
  open.document.sealGesture();
  type(14);
  EXPECT_EQ(open.document.undoStack()->count(), 3);
  open.document.undoStack()->undo();
  open.document.undoStack()->undo();
  EXPECT_EQ(findStep(open.document.plan(), step)->dose.amount, 10);
}

TEST(PlanDocument, AGestureThatEndsWhereItBeganLeavesNoEntry) {
  OpenClass open;
  const StepId step = open.add("hundred", {0, 0});
  const auto type = [&](int amount) {
    (void)open.document.perform(SetDose{step, Dose{amount, DoseUnit::breaths}}, QStringLiteral("dose"),
                                QStringLiteral("dose"));
  };
  type(11);
  type(10);
  EXPECT_EQ(open.document.undoStack()->count(), 1);
}

TEST(PlanDocument, PreviewIsWhatPerformWouldGive) {
  OpenClass open;
  open.add("hundred", {0, 0});
  const auto edit = open.commands.insertion(MovementId{"saw"}, {0, 1});
  ASSERT_TRUE(edit);
  const auto preview = open.document.preview(*edit);
  ASSERT_TRUE(preview);
  EXPECT_EQ(countSteps(open.document.plan()), 1U);
  ASSERT_TRUE(open.document.perform(*edit, QStringLiteral("add")));
  EXPECT_EQ(open.document.plan(), *preview->plan);
  EXPECT_EQ(open.document.evaluation(), *preview->evaluation);
}

TEST(PlanDocument, AnUndoneIdIsNeverUsedAgain) {
  OpenClass open;
  const StepId first = open.add("hundred", {0, 0});
  open.document.undoStack()->undo();
  const StepId second = open.add("hundred", {0, 0});
  EXPECT_GT(second, first);
}

TEST(PlanDocument, TheClassesOwnDateDecidesTheDay) {
  OpenClass open;
  EXPECT_EQ(open.document.day(), testDay());
  const Date march{std::chrono::year{2027}, std::chrono::month{3}, std::chrono::day{1}};
  ASSERT_TRUE(open.document.perform(SetDate{march}, QStringLiteral("date")));
  EXPECT_EQ(open.document.day(), march);
}

struct SeenDocument : ::testing::Test, testing::Panels {};

TEST_F(SeenDocument, IsSeenForEverybodyUntilSomebodyIsChosen) {
  EXPECT_TRUE(document.seenPeople().empty());
  EXPECT_EQ(&document.seen(), &document.evaluation());
  QSignalSpy changed(&document, &PlanDocument::changed);
  document.setSeenPeople({{"person-1"}});
  EXPECT_EQ(changed.count(), 1);
  EXPECT_EQ(document.seen(), seenFor(document.evaluation(), std::vector<PersonId>{{"person-1"}}));
  EXPECT_LT(document.seen().cautions.size(), document.evaluation().cautions.size());
  document.setSeenPeople({{"person-1"}});
  EXPECT_EQ(changed.count(), 1) << "nothing changed";
  document.setSeenPeople({});
  EXPECT_EQ(document.seen(), document.evaluation());
}

TEST_F(SeenDocument, WhomItIsSeenForIsNoChangeOfTheClass) {
  const ClassPlan before = document.plan();
  const int entries = document.undoStack()->count();
  document.setSeenPeople({{"person-1"}});
  EXPECT_EQ(document.plan(), before);
  EXPECT_EQ(document.undoStack()->count(), entries);
}

TEST_F(SeenDocument, StrangersAreNotSeenForAndWhoLeftComesBackByUndo) {
  document.setSeenPeople({{"stranger"}});
  EXPECT_TRUE(document.seenPeople().empty());
  document.setSeenPeople({{"person-1"}});
  (void)document.perform(SetPeople{{{"person-2"}}}, {});
  EXPECT_TRUE(document.seenPeople().empty());
  EXPECT_EQ(document.seen(), document.evaluation());
  document.undoStack()->undo();
  EXPECT_EQ(document.seenPeople(), std::vector<PersonId>{{"person-1"}});
}

TEST_F(SeenDocument, APreviewIsSeenForTheSamePeople) {
  document.setSeenPeople({{"person-1"}});
  const auto would = document.preview(RemoveSteps{{stepOf("hundred")}});
  ASSERT_TRUE(would);
  EXPECT_EQ(would->seenPeople, document.seenPeople());
  EXPECT_EQ(*would->seen, seenFor(*would->evaluation, document.seenPeople()));
}

TEST_F(SeenDocument, AnotherClassIsSeenForEverybody) {
  document.setSeenPeople({{"person-1"}});
  document.load(testing::twentySteps());
  EXPECT_TRUE(document.seenPeople().empty());
}

} // namespace
} // namespace matwright
