#include "tests/support/Documents.h"

#include <QClipboard>
#include <QGuiApplication>

namespace matwright {
namespace {

using Names = std::vector<std::string>;

struct Commands : testing::Test {
  OpenClass open;
  StepId a = open.add("hundred", {0, 0});
  StepId b = open.add("saw", {0, 1});
  StepId c = open.add("clam", {1, 0});
  int entries() { return open.document.undoStack()->count(); }
};

TEST_F(Commands, AnInsertedMovementIsSelected) {
  const StepId d = open.add("roll-up", {0, 1});
  EXPECT_EQ(open.movements(), (Names{"hundred", "roll-up", "saw", "clam"}));
  EXPECT_EQ(open.selection.current(), d);
}

TEST_F(Commands, AnUnknownMovementIsNotInserted) {
  open.commands.insertMovement(MovementId{"no-such-thing"}, {0, 0});
  EXPECT_EQ(entries(), 3);
}

TEST_F(Commands, AReplacedStepKeepsItsPlaceAndItsId) {
  Swap swap;
  swap.movement = open.document.knowledge().catalogue.find(MovementId{"roll-up"});
  open.commands.replaceStep(b, swap);
  EXPECT_EQ(open.movements(), (Names{"hundred", "roll-up", "clam"}));
  EXPECT_EQ(placeOf(open.document.plan(), b), (Place{0, 1}));
  EXPECT_EQ(entries(), 4);
  EXPECT_EQ(open.document.undoStack()->undoText(), QStringLiteral("Roll up in place of Saw"));
  open.document.undoStack()->undo();
  EXPECT_EQ(open.movements(), (Names{"hundred", "saw", "clam"}));
}

TEST_F(Commands, AReplacementIsAskedForWhenASingleStepIsSelected) {
  std::vector<StepId> asked;
  QObject::connect(&open.commands, &ClassCommands::replacementsWanted, [&](StepId step) { asked.push_back(step); });
  open.selection.set({a, b}, b);
  open.commands.wantReplacements();
  EXPECT_TRUE(asked.empty());
  open.selection.select(b);
  open.commands.wantReplacements();
  EXPECT_EQ(asked, std::vector<StepId>{b});
}

TEST_F(Commands, NudgingCrossesSectionsAndStopsAtTheEnds) {
  open.selection.select(b);
  open.commands.nudgeSelected(1);
  EXPECT_EQ(placeOf(open.document.plan(), b), (Place{1, 0}));
  open.commands.nudgeSelected(1);
  EXPECT_EQ(placeOf(open.document.plan(), b), (Place{1, 1}));
  open.commands.nudgeSelected(-1);
  open.commands.nudgeSelected(-1);
  open.commands.nudgeSelected(-1);
  EXPECT_EQ(placeOf(open.document.plan(), b), (Place{0, 0}));
  const int before = entries();
  open.commands.nudgeSelected(-1);
  EXPECT_EQ(entries(), before);
}

TEST_F(Commands, CopyAndPasteMintNewStepsAtTheGap) {
  open.selection.set({a, b}, b);
  open.commands.copySelected();
  EXPECT_TRUE(QGuiApplication::clipboard()->text().startsWith(QStringLiteral("The hundred")));
  open.selection.select(c);
  ASSERT_TRUE(open.commands.canPaste());
  open.commands.paste();
  EXPECT_EQ(open.movements(), (Names{"hundred", "saw", "clam", "hundred", "saw"}));
  EXPECT_EQ(open.selection.steps().size(), 2U);
  for (StepId pasted : open.selection.steps())
    EXPECT_GT(pasted, c);
  EXPECT_EQ(entries(), 4);
}

TEST_F(Commands, CutTakesAwayAndPasteBringsBackTheSameDose) {
  open.commands.setDose(a, Dose{7, DoseUnit::breaths});
  open.selection.select(a);
  open.commands.cutSelected();
  EXPECT_EQ(open.movements(), (Names{"saw", "clam"}));
  EXPECT_EQ(open.selection.current(), b);
  open.commands.paste();
  EXPECT_EQ(findStep(open.document.plan(), *open.selection.current())->dose, (Dose{7, DoseUnit::breaths}));
}

TEST_F(Commands, ForeignClipboardTextIsNotPasted) {
  QGuiApplication::clipboard()->setText(QStringLiteral("hello"));
  EXPECT_FALSE(open.commands.canPaste());
  auto* broken = new QMimeData;
  broken->setData(kStepsMime, "{");
  QGuiApplication::clipboard()->setMimeData(broken);
  open.commands.paste();
  EXPECT_EQ(entries(), 3);
}

TEST_F(Commands, DuplicatesStandAfterTheirOriginals) {
  open.selection.set({a, b}, b);
  open.commands.duplicateSelected();
  EXPECT_EQ(open.movements(), (Names{"hundred", "saw", "hundred", "saw", "clam"}));
}

TEST_F(Commands, ChangingTheDoseOfSeveralIsOneEntryAndRefusedAsAWhole) {
  open.selection.set({a, b}, b);
  const int saw = findStep(open.document.plan(), b)->dose.amount;
  open.commands.changeDoseOfSelected(1);
  open.commands.changeDoseOfSelected(1);
  EXPECT_EQ(findStep(open.document.plan(), a)->dose.amount, 12);
  EXPECT_EQ(findStep(open.document.plan(), b)->dose.amount, saw + 2);
  EXPECT_EQ(entries(), 4);
  open.commands.changeDoseOfSelected(-100);
  EXPECT_EQ(findStep(open.document.plan(), a)->dose.amount, 12);
}

TEST_F(Commands, RemovingSelectsWhatComesNext) {
  open.selection.select(a);
  open.commands.removeSelected();
  EXPECT_EQ(open.selection.current(), b);
  open.commands.removeSelected();
  EXPECT_TRUE(open.selection.steps().empty());
}

} // namespace
} // namespace matwright
