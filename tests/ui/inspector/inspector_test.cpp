#include "tests/support/Finding.h"
#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/controls/CautionCard.h"
#include "ui/controls/Fields.h"
#include "ui/inspector/InspectorPanel.h"
#include "ui/inspector/StepFactsText.h"
#include "ui/text/CautionText.h"
#include "ui/text/VocabularyText.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QTest>
#include <QToolButton>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using testing::Panels;

struct Inspector : ::testing::Test, Panels {
  Inspector() : panel(document, selection, commands) { testing::layOut(panel, {300, 700}); }

  // The control that assistive technology knows by this name, among those that can be seen.
  template <class Widget> Widget& named(const QString& name) { return testing::namedIn<Widget>(panel, name); }
  bool says(const QString& words) const { return testing::saysIn(panel, words); }
  QPushButton& button(const QString& words) { return testing::buttonIn(panel, words); }
  const Step& step(const char* movement) const { return *findStep(document.plan(), stepOf(movement)); }
  int entries() const { return document.undoStack()->count(); }

  InspectorPanel panel;
};

TEST_F(Inspector, ShowsTheCurrentStep) {
  selection.select(stepOf("saw"));
  EXPECT_TRUE(says(QStringLiteral("Saw")));
  EXPECT_TRUE(says(QStringLiteral("Step 15")));
  EXPECT_TRUE(says(QString::fromStdString(document.knowledge().catalogue.find({"saw"})->setUp)));
  selection.select(stepOf("hundred"));
  EXPECT_TRUE(says(QStringLiteral("The hundred")));
  EXPECT_TRUE(says(QStringLiteral("Step 10")));
}

TEST_F(Inspector, SeveralChangesOfOneDoseAreOneEntry) {
  selection.select(stepOf("hundred"));
  auto& dose = named<QSpinBox>(QStringLiteral("Dose"));
  dose.setValue(7);
  dose.setValue(6);
  EXPECT_EQ(step("hundred").dose, (Dose{6, DoseUnit::breaths}));
  EXPECT_EQ(entries(), 1);
  document.undoStack()->undo();
  EXPECT_EQ(dose.value(), 10);
}

TEST_F(Inspector, ADoseChangedAfterLookingElsewhereIsAnotherEntry) {
  selection.select(stepOf("hundred"));
  named<QSpinBox>(QStringLiteral("Dose")).setValue(7);
  selection.select(stepOf("saw"));
  selection.select(stepOf("hundred"));
  named<QSpinBox>(QStringLiteral("Dose")).setValue(6);
  EXPECT_EQ(entries(), 2);
}

TEST_F(Inspector, AnotherUnitKeepsAboutTheSameWork) {
  selection.select(stepOf("hundred")); // 10 breaths of 10 counts at half a second: 50 s
  auto& unit = named<QComboBox>(QStringLiteral("Unit of the dose"));
  unit.setCurrentIndex(static_cast<int>(DoseUnit::seconds));
  EXPECT_EQ(step("hundred").dose, (Dose{50, DoseUnit::seconds}));
  unit.setCurrentIndex(static_cast<int>(DoseUnit::repetitions));
  EXPECT_EQ(step("hundred").dose, (Dose{10, DoseUnit::repetitions}));
}

TEST_F(Inspector, TypingANoteIsOneEntryUntilTheFieldIsLeft) {
  selection.select(stepOf("saw"));
  panel.activateWindow();
  auto& note = named<NoteField>(QStringLiteral("Note"));
  note.setFocus();
  QTest::keyClicks(&note, QStringLiteral("slow"));
  EXPECT_EQ(step("saw").note, "slow");
  EXPECT_EQ(entries(), 1);
  named<QSpinBox>(QStringLiteral("Dose")).setFocus();
  note.setFocus();
  note.moveCursor(QTextCursor::End);
  QTest::keyClicks(&note, QStringLiteral("er"));
  EXPECT_EQ(step("saw").note, "slower");
  EXPECT_EQ(entries(), 2);
  document.undoStack()->undo();
  EXPECT_EQ(note.toPlainText(), QStringLiteral("slow"));
}

TEST_F(Inspector, AnOptionBringsItsDoseAndTempo) {
  // A movement with an option that has both of its own.
  const Movement* movement = nullptr;
  const Option* option = nullptr;
  for (const Movement& candidate : document.knowledge().catalogue.movements())
    for (const Option& own : candidate.options)
      if (!option && own.dose && own.tempo && *own.dose != candidate.dose && *own.tempo != candidate.tempo) {
        movement = &candidate;
        option = &own;
      }
  ASSERT_TRUE(option);
  commands.insertMovement(movement->id, {0, 0});
  const StepId id = *selection.current();
  auto& choice = named<QComboBox>(QStringLiteral("Option"));
  choice.setCurrentIndex(choice.findData(QString::fromStdString(option->id.value)));
  const Step* now = findStep(document.plan(), id);
  EXPECT_EQ(now->option, option->id);
  EXPECT_EQ(now->dose, *option->dose);
  EXPECT_EQ(now->tempo, *option->tempo);
  EXPECT_TRUE(says(QString::fromStdString(option->how)));
  EXPECT_EQ(entries(), 2);
  document.undoStack()->undo();
  EXPECT_EQ(*findStep(document.plan(), id), matwright::stepOf(id, *movement));
}

TEST_F(Inspector, AnOptionSaysWhatItTakesAwayAndAdds) {
  selection.select(stepOf("hundred"));
  auto& choice = named<QComboBox>(QStringLiteral("Option"));
  const Movement* hundred = document.knowledge().catalogue.find({"hundred"});
  bool any = false;
  for (const Option& option : hundred->options) {
    choice.setCurrentIndex(choice.findData(QString::fromStdString(option.id.value)));
    EXPECT_EQ(says(QStringLiteral("Takes away: %1").arg(featureList(option.removes))), !option.removes.empty());
    any |= !option.removes.empty();
  }
  EXPECT_TRUE(any);
}

TEST_F(Inspector, EditsThePhasesOfTheTempo) {
  selection.select(stepOf("hundred"));
  named<QSpinBox>(QStringLiteral("Counts of phase 2")).setValue(7);
  EXPECT_EQ(step("hundred").tempo.phases, (std::vector<Phase>{{Breath::in, 5}, {Breath::out, 7}}));
  named<QComboBox>(QStringLiteral("Breath in phase 2")).setCurrentIndex(static_cast<int>(Breath::free));
  EXPECT_EQ(step("hundred").tempo.phases[1].breath, Breath::free);
  button(QStringLiteral("Add a phase")).click();
  ASSERT_EQ(step("hundred").tempo.phases.size(), 3U);
  named<QToolButton>(QStringLiteral("Remove phase 1")).click();
  EXPECT_EQ(step("hundred").tempo.phases, (std::vector<Phase>{{Breath::free, 7}, {Breath::in, 1}}));
  named<QDoubleSpinBox>(QStringLiteral("Seconds a count")).setValue(1.5);
  EXPECT_EQ(step("hundred").tempo.secondsPerCount, Seconds(1.5));
  while (entries() > 0 && document.undoStack()->canUndo())
    document.undoStack()->undo();
  EXPECT_EQ(document.plan(), testing::twentySteps());
}

TEST_F(Inspector, TheLastPhaseStays) {
  selection.select(stepOf("hundred"));
  named<QToolButton>(QStringLiteral("Remove phase 2")).click();
  EXPECT_FALSE(named<QToolButton>(QStringLiteral("Remove phase 1")).isEnabled());
}

TEST_F(Inspector, OffersASideOnlyForMovementsDoneOnEach) {
  selection.select(stepOf("hundred"));
  int sides = 0;
  for (QComboBox* box : panel.findChildren<QComboBox*>())
    sides += box->accessibleName() == QStringLiteral("Side") && box->isVisibleTo(&panel);
  EXPECT_EQ(sides, 0);
  selection.select(stepOf("side-kick-front-back"));
  named<QComboBox>(QStringLiteral("Side")).setCurrentIndex(2);
  EXPECT_EQ(step("side-kick-front-back").onlySide, Side::right);
  named<QComboBox>(QStringLiteral("Side")).setCurrentIndex(0);
  EXPECT_EQ(step("side-kick-front-back").onlySide, std::nullopt);
}

TEST_F(Inspector, ShowsTheCautionsOfTheStepWithTheirWholeReasons) {
  selection.select(stepOf("hundred"));
  std::vector<const Caution*> wanted;
  for (const Caution& caution : document.evaluation().cautions)
    if (caution.step == stepOf("hundred"))
      wanted.push_back(&caution);
  ASSERT_FALSE(wanted.empty());
  QApplication::processEvents();
  const auto cards = panel.findChildren<CautionCard*>();
  std::vector<const CautionCard*> shown;
  for (const CautionCard* card : cards)
    if (card->isVisibleTo(&panel))
      shown.push_back(card);
  ASSERT_EQ(shown.size(), wanted.size());
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    EXPECT_EQ(shown[i]->lines().level, wanted[i]->level);
    EXPECT_EQ(
        shown[i]->lines().whole,
        wordsFor(*wanted[i], document.knowledge(), document.plan(), document.evaluation(), document.roster()).whole);
  }
  EXPECT_TRUE(says(standingNotice()));
}

TEST_F(Inspector, WithoutCautionsItNeverSaysSafe) {
  document.perform(SetPeople{{}}, {});
  selection.select(stepOf("standing-breathing"));
  EXPECT_TRUE(says(noCautionText(false)));
}

TEST_F(Inspector, ShowsAnUnknownMovementPlainlyAndKeepsItsDoseEditable) {
  ClassPlan plan = testing::twentySteps();
  plan.sections[0].steps[1].movement = {"lost-movement"};
  document.load(plan);
  selection.select(plan.sections[0].steps[1].id);
  EXPECT_TRUE(says(QStringLiteral("not in the catalogue")));
  EXPECT_TRUE(says(QStringLiteral("lost-movement")));
  named<QSpinBox>(QStringLiteral("Dose")).setValue(3);
  EXPECT_EQ(document.plan().sections[0].steps[1].dose.amount, 3);
}

TEST_F(Inspector, WorksOnSeveralAtOnce) {
  selection.set({stepOf("hundred"), stepOf("saw")}, stepOf("saw"));
  const TimedStep* one = document.evaluation().timed(stepOf("hundred"));
  const TimedStep* other = document.evaluation().timed(stepOf("saw"));
  EXPECT_TRUE(says(clock(one->gap + one->work.whole + one->turning + other->gap + other->work.whole + other->turning)));
  button(QStringLiteral("More")).click();
  EXPECT_EQ(step("hundred").dose.amount, 11);
  EXPECT_EQ(step("saw").dose.amount, document.knowledge().catalogue.find({"saw"})->dose.amount + 1);
  EXPECT_EQ(entries(), 1);
  button(QStringLiteral("Remove")).click();
  EXPECT_EQ(countSteps(document.plan()), 18U);
}

TEST_F(Inspector, TellsTheWayInAndItsCues) {
  const StepId hundred = stepOf("hundred");
  const StepFactsText facts = factsOf(document.snapshot(), document.knowledge(), hundred);
  const TimedStep* timed = document.evaluation().timed(hundred);
  ASSERT_FALSE(timed->way.changes.empty());
  EXPECT_TRUE(facts.wayIn.startsWith(clock(timed->moving)));
  for (const Change* change : timed->way.changes)
    EXPECT_TRUE(facts.cues.contains(QString::fromStdString(change->cue).mid(1)));
  EXPECT_FALSE(facts.cues.contains(QStringLiteral("..")));
  const StepId first = stepOf("breathing-ribs");
  EXPECT_EQ(factsOf(document.snapshot(), document.knowledge(), first).wayIn, QStringLiteral("the class starts here"));
}

TEST_F(Inspector, TheFocusGoesToTheFirstFieldOfWhatIsShown) {
  panel.activateWindow();
  selection.select(stepOf("saw"));
  panel.setFocus();
  EXPECT_TRUE(named<QSpinBox>(QStringLiteral("Dose")).hasFocus());
  selection.clear();
  panel.setFocus();
  EXPECT_TRUE(named<QLineEdit>(QStringLiteral("Name of the class")).hasFocus());
}

TEST_F(Inspector, CutsNothingInANarrowDock) {
  forEachStep(document.plan(), [&](const Step& one) {
    selection.select(one.id);
    testing::layOut(panel, {300, 700});
    EXPECT_THAT(testing::cutParts(panel), ::testing::IsEmpty()) << one.movement.value;
  });
  selection.clear();
  testing::layOut(panel, {300, 700});
  EXPECT_THAT(testing::cutParts(panel), ::testing::IsEmpty());
  selection.selectAll();
  testing::layOut(panel, {300, 700});
  EXPECT_THAT(testing::cutParts(panel), ::testing::IsEmpty());
}

TEST_F(Inspector, EveryControlHasAName) {
  for (const char* movement : {"side-kick-front-back", "hundred"}) {
    selection.select(stepOf(movement));
    for (const QWidget* widget : panel.findChildren<QWidget*>()) {
      const bool control = qobject_cast<const QAbstractSpinBox*>(widget) || qobject_cast<const QComboBox*>(widget) ||
                           qobject_cast<const QPlainTextEdit*>(widget);
      if (control && widget->isVisibleTo(&panel)) {
        EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->metaObject()->className();
      }
    }
  }
}

} // namespace
} // namespace matwright
