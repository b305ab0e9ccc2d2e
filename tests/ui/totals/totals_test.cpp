// The class is worked out by hand:
//   lying   10 repetitions of 4 s            = 40 s of work, cue of 5 words at 150 a minute = 2 s, settling 2 s
//   sitting  5 repetitions of 4 s, each side = 40 s of work, cue 2 s, the way up takes 8 s, settling 2 s
// in all 2 + 2 + 40 + 8 + 2 + 40 = 94 s, of which 8 s moving: 8.5 %, one change of position.
#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/totals/LengthBar.h"
#include "ui/totals/TotalsLine.h"

#include <QLabel>
#include <gmock/gmock.h>

namespace matwright {
namespace {

Movement movement(const char* id, const char* position, Sides sides, int amount) {
  Movement made;
  made.id = {id};
  made.name = id;
  made.start = made.end = {position};
  made.sides = sides;
  made.dose = {amount, DoseUnit::repetitions};
  made.tempo = {Seconds(1), {{Breath::in, 2}, {Breath::out, 2}}};
  made.setUp = "five words are enough here";
  made.regions = {Region::hips};
  made.spine = {SpineAction::neutral};
  return made;
}

Position position(const char* id, Elevation elevation) {
  Position made;
  made.id = {id};
  made.name = id;
  made.elevation = elevation;
  return made;
}

std::shared_ptr<const Knowledge> twoMovements() {
  Knowledge made;
  made.catalogue =
      Catalogue({movement("lying", "floor", Sides::together, 10), movement("sitting", "seat", Sides::each, 5)});
  made.transitions = TransitionGraph(
      {position("floor", Elevation::faceUp), position("seat", Elevation::sitting)},
      {{{"floor"}, {"seat"}, Seconds(8), {}, "Sit up.", {}}, {{"seat"}, {"floor"}, Seconds(6), {}, "Lie down.", {}}});
  return std::make_shared<const Knowledge>(std::move(made));
}

struct TotalsTest : ::testing::Test {
  TotalsTest() : document(twoMovements(), testing::today) {
    ClassPlan plan = emptyClass("By hand");
    plan.target = minutes(5);
    const auto& catalogue = document.knowledge().catalogue;
    plan.sections[0].steps = {stepOf({1}, *catalogue.find({"lying"})), stepOf({2}, *catalogue.find({"sitting"}))};
    document.load(plan);
  }
  static QStringList texts(const QWidget& widget) {
    QStringList all;
    for (const QLabel* label : widget.findChildren<QLabel*>())
      if (label->isVisibleTo(&widget))
        all << label->text();
    return all;
  }

  PlanDocument document;
};

TEST_F(TotalsTest, SayWhatWasWorkedOutByHand) {
  const Totals totals = totalsOf(document.snapshot());
  EXPECT_EQ(totals.length.value, QStringLiteral("1:34"));
  EXPECT_EQ(totals.length.beside, QStringLiteral("of 5:00"));
  EXPECT_TRUE(totals.length.under.contains(QStringLiteral("over 99 %")));
  EXPECT_EQ(totals.changes.value, QStringLiteral("1"));
  EXPECT_TRUE(totals.changes.under.contains(QStringLiteral("0:08")));
  EXPECT_EQ(totals.moving.value, QStringLiteral("9 %"));
  EXPECT_EQ(totals.sides.value, QStringLiteral("L = R"));
  EXPECT_EQ(totals.length.difference, QString());
}

TEST_F(TotalsTest, SayWhichSideWorksLonger) {
  document.perform(SetOnlySide{{2}, Side::right}, {});
  EXPECT_EQ(totalsOf(document.snapshot()).sides.value, QStringLiteral("R +0:20")); // 5 x 4 s
  document.perform(SetOnlySide{{2}, Side::left}, {});
  EXPECT_EQ(totalsOf(document.snapshot()).sides.value, QStringLiteral("L +0:20"));
}

TEST_F(TotalsTest, AnEmptyClassDividesByNothing) {
  document.load(emptyClass("Nothing"));
  const Totals totals = totalsOf(document.snapshot());
  EXPECT_EQ(totals.length.value, QStringLiteral("0:00"));
  EXPECT_EQ(totals.moving.value, QStringLiteral("0 %"));
}

TEST_F(TotalsTest, APreviewSaysTheNewTotalsAndTheDifference) {
  // Lying down again: 6 s of moving, 2 s of settling, 40 s of work.
  const Step again = stepOf({3}, *document.knowledge().catalogue.find({"lying"}));
  const auto preview = document.preview(InsertSteps{{0, 2}, {again}});
  ASSERT_TRUE(preview);
  const Totals totals = totalsOf(*preview, document.snapshot());
  EXPECT_EQ(totals.length.value, QStringLiteral("2:22"));
  EXPECT_EQ(totals.length.difference, QStringLiteral("+0:48"));
  EXPECT_EQ(totals.changes.value, QStringLiteral("2"));
  EXPECT_EQ(totals.changes.difference, QStringLiteral("+1"));
}

TEST_F(TotalsTest, ThePreviewIsShownAndEndsWithTheChange) {
  TotalsLine line(document);
  testing::layOut(line, {700, 90});
  EXPECT_TRUE(texts(line).contains(QStringLiteral("1:34")));
  const Step again = stepOf({3}, *document.knowledge().catalogue.find({"lying"}));
  const InsertSteps edit{{0, 2}, {again}};
  line.showPreview(document.preview(edit));
  EXPECT_TRUE(texts(line).contains(QStringLiteral("2:22")));
  EXPECT_TRUE(texts(line).contains(QStringLiteral("+0:48")));
  line.showPreview(std::nullopt);
  EXPECT_TRUE(texts(line).contains(QStringLiteral("1:34")));
  EXPECT_FALSE(texts(line).contains(QStringLiteral("+0:48")));
  line.showPreview(document.preview(edit));
  document.perform(edit, {});
  EXPECT_FALSE(line.showsPreview());
  EXPECT_TRUE(texts(line).contains(QStringLiteral("2:22")));
  EXPECT_FALSE(texts(line).contains(QStringLiteral("+0:48")));
}

TEST_F(TotalsTest, NoCautionIsNotCalledAClearance) {
  TotalsLine line(document);
  testing::layOut(line, {700, 90});
  EXPECT_TRUE(texts(line).join(QLatin1Char('|')).contains(QStringLiteral("no clearance")));
  EXPECT_TRUE(texts(line).join(QLatin1Char('|')).contains(QStringLiteral("nobody chosen")));
}

TEST_F(TotalsTest, TheBarPutsTargetAndLengthToScale) {
  LengthBar bar;
  bar.resize(520, 12);
  bar.show({Seconds(94), Seconds(85), Seconds(103), Seconds(300)});
  // 4 % are left beyond the longest, here the target: 300 s lie at 520 / 1.04.
  EXPECT_NEAR(bar.at(Seconds(300)), 500, 0.5);
  EXPECT_NEAR(bar.at(Seconds(150)), 250, 0.5);
  EXPECT_EQ(bar.at(Seconds(9999)), 520);
}

TEST(TotalsLineOfSix, CountsCautionsByLevelAndCutsNothing) {
  testing::Panels panels;
  TotalsLine line(panels.document);
  testing::layOut(line, {700, line.heightForWidth(700)});
  EXPECT_THAT(testing::cutParts(line), ::testing::IsEmpty());
  const Totals totals = totalsOf(panels.document.snapshot());
  EXPECT_EQ(totals.cautions, panels.document.evaluation().cautionCounts);
  QStringList shown;
  for (const QLabel* label : line.findChildren<QLabel*>())
    if (label->isVisibleTo(&line))
      shown << label->text();
  for (const int count : totals.cautions)
    EXPECT_TRUE(count == 0 || shown.contains(QString::number(count))) << count;

  panels.selection.select(panels.stepOf("single-straight-leg-stretch"));
  const auto edit = panels.commands.insertion({"four-point-opposite-reach"}, panels.selection.gap());
  line.showPreview(panels.document.preview(*edit));
  testing::layOut(line, {700, line.heightForWidth(700)});
  EXPECT_THAT(testing::cutParts(line), ::testing::IsEmpty());
}

TEST(TotalsLineOfSix, CountsForThoseItIsSeenFor) {
  testing::Panels panels;
  panels.document.setSeenPeople({{"person-1"}, {"person-3"}});
  const Totals totals = totalsOf(panels.document.snapshot());
  EXPECT_EQ(totals.cautions, panels.document.seen().cautionCounts);
  EXPECT_NE(totals.cautions, panels.document.evaluation().cautionCounts);
  EXPECT_EQ(totals.people, QStringLiteral("for 2 of 6 people"));
}

} // namespace
} // namespace matwright
