#include "tests/support/Finding.h"
#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/controls/Fields.h"
#include "ui/controls/OrderedList.h"
#include "ui/movements/MovementEditor.h"
#include "ui/movements/MovementsWorkspace.h"
#include "ui/movements/PoseCanvas.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QListView>
#include <QListWidget>
#include <QPushButton>
#include <QSpinBox>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <gmock/gmock.h>

namespace matwright {
namespace {

struct Workspace : ::testing::Test {
  Workspace() : workspace(document) {
    testing::layOut(workspace, {1280, 730});
    workspace.activateWindow();
  }

  template <class Widget> Widget& named(const QString& name) { return testing::namedIn<Widget>(workspace, name); }
  QPushButton& button(const QString& words) { return testing::buttonIn(workspace, words); }
  bool says(const QString& words) const { return testing::saysIn(workspace, words); }
  void page(int index) {
    workspace.findChild<QTabWidget*>()->setCurrentIndex(index);
    QApplication::processEvents();
  }
  QString tab(int index) { return workspace.findChild<QTabWidget*>()->tabText(index); }
  void retype(QLineEdit& field, const QString& words) {
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, words);
  }
  void retype(NoteField& field, const QString& words) {
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, words);
  }
  const Movement& own(std::size_t at = 0) const { return document.own().movements.at(at); }
  void addNew() { button(QStringLiteral("New movement")).click(); }

  KnowledgeDocument document{testing::knowledge()};
  MovementsWorkspace workspace;
};

constexpr int kFacts = 0, kCues = 1, kPoses = 2, kFeatures = 3, kOptions = 4;

TEST_F(Workspace, WhatComesWithTheProgramIsReadAndNotChanged) {
  workspace.showMovement({"hundred"});
  EXPECT_TRUE(says(QStringLiteral("comes with the program")));
  EXPECT_FALSE(button(QStringLiteral("Remove")).isEnabled());
  EXPECT_FALSE(workspace.editor().isVisibleTo(&workspace));
  EXPECT_EQ(testing::cutParts(workspace), QStringList());
}

TEST_F(Workspace, ACopyIsOnesOwnAndTheOriginalStaysAsItIs) {
  workspace.showMovement({"hundred"});
  button(QStringLiteral("Copy to my own")).click();
  ASSERT_EQ(document.own().movements.size(), 1U);
  EXPECT_TRUE(isOwn(workspace.current()));
  retype(named<QLineEdit>(QStringLiteral("Name")), QStringLiteral("Half hundred"));
  EXPECT_EQ(own().name, "Half hundred");
  EXPECT_EQ(document.knowledge()->catalogue.find({"hundred"})->name,
            testing::knowledge()->catalogue.find({"hundred"})->name);
  EXPECT_EQ(own().options, testing::knowledge()->catalogue.find({"hundred"})->options);
}

TEST_F(Workspace, ANewMovementIsNamedByTypingAsOneEntryOfTheUndoList) {
  addNew();
  EXPECT_EQ(document.undoStack()->count(), 1);
  QTest::keyClicks(&named<QLineEdit>(QStringLiteral("Name")), QStringLiteral("Ribbon roll"));
  EXPECT_EQ(own().name, "Ribbon roll");
  EXPECT_EQ(document.undoStack()->count(), 2);
  document.undoStack()->undo();
  EXPECT_EQ(own().name, "New movement");
  document.undoStack()->undo();
  EXPECT_TRUE(document.own().empty());
  EXPECT_FALSE(isOwn(workspace.current()));
}

TEST_F(Workspace, OnesOwnStandFirstAndAllAreSearched) {
  addNew();
  auto& list = named<QListView>(QStringLiteral("All movements"));
  EXPECT_EQ(list.model()->index(0, 0).data().toString(), QStringLiteral("New movement"));
  QTest::keyClicks(&named<QLineEdit>(QStringLiteral("Search the movements")), QStringLiteral("hundred"));
  EXPECT_GE(list.model()->rowCount(), 1);
  EXPECT_TRUE(list.model()->index(0, 0).data().toString().contains(QStringLiteral("undred")));
  QTest::keyClicks(&named<QLineEdit>(QStringLiteral("Search the movements")), QStringLiteral(" zebra"));
  EXPECT_EQ(list.model()->rowCount(), 0);
  EXPECT_TRUE(says(QStringLiteral("No movement is found")));
}

TEST_F(Workspace, EveryFactIsWrittenToTheDocument) {
  addNew();
  named<QComboBox>(QStringLiteral("Kind")).setCurrentIndex(static_cast<int>(Repertoire::stretch));
  retype(named<NoteField>(QStringLiteral("About")), QStringLiteral("Opens the ribs."));
  auto& start = named<QComboBox>(QStringLiteral("Starts in"));
  start.setCurrentIndex(start.findData(QStringLiteral("long-sit")));
  named<QComboBox>(QStringLiteral("Sides")).setCurrentIndex(static_cast<int>(Sides::each));
  named<QSpinBox>(QStringLiteral("Amount")).setValue(7);
  named<QComboBox>(QStringLiteral("Unit")).setCurrentIndex(static_cast<int>(DoseUnit::breaths));
  named<QSpinBox>(QStringLiteral("Effort")).setValue(6);
  EXPECT_EQ(own().repertoire, Repertoire::stretch);
  EXPECT_EQ(own().about, "Opens the ribs.");
  EXPECT_EQ(own().start, PositionId{"long-sit"});
  EXPECT_EQ(own().sides, Sides::each);
  EXPECT_EQ(own().dose, (Dose{7, DoseUnit::breaths}));
  EXPECT_EQ(own().effort, Effort(6));
  EXPECT_TRUE(says(QStringLiteral("hard")));
  for (QCheckBox* box : workspace.findChildren<QCheckBox*>())
    if (box->text() == QStringLiteral("Roller") && box->isVisibleTo(&workspace))
      box->click();
  EXPECT_EQ(own().props, PropSet{Prop::roller});
}

TEST_F(Workspace, APoseThatIsJustThePositionsFollowsThePosition) {
  addNew();
  auto& start = named<QComboBox>(QStringLiteral("Starts in"));
  const auto& positions = document.builtIn().transitions;
  start.setCurrentIndex(start.findData(QStringLiteral("stand")));
  EXPECT_EQ(own().poses.start, positions.find({"stand"})->pose);
  EXPECT_EQ(own().poses.end, positions.find(own().end)->pose);
  page(kPoses);
  named<QToolButton>(QStringLiteral("Edit the start pose")).click();
  named<QDoubleSpinBox>(QStringLiteral("Neck, bend")).setValue(11);
  page(kFacts);
  start.setCurrentIndex(start.findData(QStringLiteral("long-sit")));
  EXPECT_EQ(own().poses.start.neck.bend, 11);
}

TEST_F(Workspace, RegionsAndCountersAreChosenFromWhatThereIs) {
  addNew();
  Q_EMIT named<OrderedList>(QStringLiteral("Regions")).edited({QStringLiteral("hips"), QStringLiteral("arms")});
  EXPECT_EQ(own().regions, (std::vector<Region>{Region::hips, Region::arms}));
  auto* find = named<OrderedList>(QStringLiteral("Counter-movements")).findChild<QLineEdit*>();
  QTest::keyClicks(find, QStringLiteral("hundred"));
  QTest::keyClick(find, Qt::Key_Return);
  QTest::qWait(20);
  ASSERT_EQ(own().counters.size(), 1U);
  EXPECT_NE(document.knowledge()->catalogue.find(own().counters[0]), nullptr);
}

TEST_F(Workspace, ACueThatIsTooShortIsNotKeptAndIsMarkedUntilItIsLongEnough) {
  addNew();
  const std::string before = own().setUp;
  page(kCues);
  auto& cue = named<NoteField>(QStringLiteral("Set-up cue"));
  retype(cue, QStringLiteral("Lie down now"));
  EXPECT_TRUE(says(QStringLiteral("3 words; 8 to 25")));
  EXPECT_TRUE(workspace.editor().hasUnkept(workspace.current()));
  EXPECT_NE(own().setUp, "Lie down now");
  EXPECT_EQ(cue.toPlainText(), QStringLiteral("Lie down now"));
  EXPECT_TRUE(cue.property("faulty").toBool());
  EXPECT_FALSE(cue.accessibleDescription().isEmpty());
  EXPECT_TRUE(tab(kCues).startsWith(QStringLiteral("\u25b2"))) << tab(kCues).toStdString();
  EXPECT_TRUE(says(QStringLiteral("Not kept yet")));
  QTest::keyClicks(&cue, QStringLiteral(" and let both knees bend up"));
  EXPECT_FALSE(workspace.editor().hasUnkept(workspace.current()));
  EXPECT_EQ(own().setUp, "Lie down now and let both knees bend up");
  EXPECT_FALSE(cue.property("faulty").toBool());
  EXPECT_FALSE(says(QStringLiteral("Not kept yet")));
}

TEST_F(Workspace, WhatIsNotKeptYetIsNotLostByWorkOnAnotherPage) {
  addNew();
  page(kCues);
  retype(named<NoteField>(QStringLiteral("Set-up cue")), QStringLiteral("Lie down"));
  page(kPoses);
  named<QDoubleSpinBox>(QStringLiteral("Neck, bend")).setValue(9);
  page(kCues);
  auto& cue = named<NoteField>(QStringLiteral("Set-up cue"));
  EXPECT_EQ(cue.toPlainText(), QStringLiteral("Lie down"));
  cue.moveCursor(QTextCursor::End);
  QTest::keyClicks(&cue, QStringLiteral(" now and let both knees bend up"));
  EXPECT_EQ(own().setUp, "Lie down now and let both knees bend up");
  EXPECT_EQ(own().poses.end.neck.bend, 9);
}

TEST_F(Workspace, ALineOfTheListOfFaultsLeadsToItsField) {
  addNew();
  page(kCues);
  retype(named<QLineEdit>(QStringLiteral("Action cue")), QStringLiteral("out and in and out and in and out and in"));
  page(kFacts);
  auto& faults = named<QListWidget>(QStringLiteral("What is to be put right"));
  int at = -1;
  for (int i = 0; i < faults.count(); ++i)
    if (faults.item(i)->text().contains(QStringLiteral("Action cue")))
      at = i;
  ASSERT_GE(at, 0);
  Q_EMIT faults.itemClicked(faults.item(at));
  EXPECT_EQ(workspace.findChild<QTabWidget*>()->currentIndex(), kCues);
  EXPECT_TRUE(named<QLineEdit>(QStringLiteral("Action cue")).hasFocus());
}

TEST_F(Workspace, WhatIsKeptMayStillBeWrongAndIsSaid) {
  addNew();
  EXPECT_TRUE(workspace.editor().faults().empty());
  page(kFeatures);
  for (QCheckBox* box : workspace.findChildren<QCheckBox*>())
    if (box->isVisibleTo(&workspace) && box->text() == QStringLiteral("Breath held"))
      box->click();
  ASSERT_EQ(own().features, FeatureSet{Feature::breathHold});
  EXPECT_FALSE(workspace.editor().hasUnkept(workspace.current()));
  EXPECT_TRUE(says(QStringLiteral("no phase holds it")));
  EXPECT_TRUE(says(QStringLiteral("Kept, but something is not right yet")));
  EXPECT_TRUE(tab(kFeatures).startsWith(QStringLiteral("\u25b2")));
}

TEST_F(Workspace, AHintIsNoFault) {
  addNew();
  retype(named<QLineEdit>(QStringLiteral("Name")),
         QString::fromStdString(document.knowledge()->catalogue.find({"hundred"})->name));
  EXPECT_TRUE(says(QStringLiteral("Worth a look")));
  EXPECT_FALSE(named<QLineEdit>(QStringLiteral("Name")).property("faulty").toBool());
  EXPECT_FALSE(tab(kFacts).startsWith(QStringLiteral("\u25b2")));
  EXPECT_FALSE(says(QStringLiteral("not right yet")));
}

TEST_F(Workspace, AFaultOfAnOptionLeadsToIt) {
  workspace.showMovement({"single-leg-stretch"});
  button(QStringLiteral("Copy to my own")).click();
  page(kOptions);
  auto& options = named<QListWidget>(QStringLiteral("Options"));
  ASSERT_GE(options.count(), 2);
  options.setCurrentRow(1);
  auto& how = named<NoteField>(QStringLiteral("How it is done"));
  how.setFocus();
  how.selectAll();
  QTest::keyClick(&how, Qt::Key_Backspace);
  options.setCurrentRow(0);
  page(kFacts);
  auto& faults = named<QListWidget>(QStringLiteral("What is to be put right"));
  ASSERT_GE(faults.count(), 1);
  Q_EMIT faults.itemClicked(faults.item(0));
  EXPECT_EQ(workspace.findChild<QTabWidget*>()->currentIndex(), kOptions);
  EXPECT_EQ(options.currentRow(), 1);
  EXPECT_TRUE(options.item(1)->text().startsWith(QStringLiteral("\u25b2")));
}

TEST_F(Workspace, WhatIsNotKeptYetIsStillThereAfterLookingElsewhere) {
  addNew();
  const MovementId id = workspace.current();
  retype(named<NoteField>(QStringLiteral("About")), QStringLiteral("x"));
  QTest::keyClick(&named<NoteField>(QStringLiteral("About")), Qt::Key_Backspace);
  ASSERT_TRUE(workspace.editor().hasUnkept(id));
  workspace.showMovement({"hundred"});
  workspace.showMovement(id);
  EXPECT_EQ(named<NoteField>(QStringLiteral("About")).toPlainText(), QString());
  EXPECT_TRUE(workspace.editor().hasUnkept(id));
  document.undoStack()->undo(); // of what was kept before
  EXPECT_FALSE(workspace.editor().hasUnkept(id));
}

TEST_F(Workspace, TempoPhasesAreAddedAndMoved) {
  addNew();
  page(kCues);
  button(QStringLiteral("Add a phase")).click();
  ASSERT_EQ(own().tempo.phases.size(), 3U);
  named<QComboBox>(QStringLiteral("Breath in phase 3")).setCurrentIndex(static_cast<int>(Breath::free));
  named<QToolButton>(QStringLiteral("Move phase 3 up")).click();
  EXPECT_EQ(own().tempo.phases[1].breath, Breath::free);
  EXPECT_EQ(own().tempo.phases[2].breath, Breath::out);
  named<QDoubleSpinBox>(QStringLiteral("Seconds a count")).setValue(1.5);
  EXPECT_EQ(own().tempo.secondsPerCount, Seconds(1.5));
}

TEST_F(Workspace, ADragOfAJointIsOneEntryOfTheUndoList) {
  addNew();
  page(kPoses);
  const Pose before = own().poses.end;
  const int entries = document.undoStack()->count();
  auto& canvas = named<PoseCanvas>(QStringLiteral("End pose"));
  canvas.setHandle(Handle::handNear);
  const QPoint from = canvas.spotOf(Handle::handNear).toPoint();
  QTest::mousePress(&canvas, Qt::LeftButton, {}, from);
  for (int i = 1; i <= 8; ++i)
    QTest::mouseMove(&canvas, from + QPoint(-5 * i, -9 * i));
  QTest::mouseRelease(&canvas, Qt::LeftButton, {}, from + QPoint(-40, -72));
  EXPECT_NE(own().poses.end, before);
  EXPECT_EQ(document.undoStack()->count(), entries + 1);
  document.undoStack()->undo();
  EXPECT_EQ(own().poses.end, before);
  EXPECT_EQ(canvas.pose(), before);
}

TEST_F(Workspace, HoldingAnArrowKeyIsOneEntryOfTheUndoList) {
  addNew();
  page(kPoses);
  const int entries = document.undoStack()->count();
  auto& canvas = named<PoseCanvas>(QStringLiteral("End pose"));
  canvas.setFocus();
  canvas.setHandle(Handle::head);
  for (int i = 0; i < 6; ++i)
    QTest::keyClick(&canvas, Qt::Key_Up);
  EXPECT_EQ(own().poses.end.neck.bend, 6);
  EXPECT_EQ(document.undoStack()->count(), entries + 1);
}

TEST_F(Workspace, FeaturesOfThePositionAreLockedAndOthersAreTicked) {
  addNew();
  page(kFeatures);
  QCheckBox *supine = nullptr, *legs = nullptr;
  for (QCheckBox* box : workspace.findChildren<QCheckBox*>()) {
    if (!box->isVisibleTo(&workspace))
      continue;
    if (box->text() == QStringLiteral("Flat on the back"))
      supine = box;
    if (box->text() == QStringLiteral("Head held up"))
      legs = box;
  }
  ASSERT_TRUE(supine && legs);
  EXPECT_TRUE(supine->isChecked());
  EXPECT_FALSE(supine->isEnabled());
  legs->click();
  EXPECT_EQ(own().features, FeatureSet{Feature::neckLift});
}

TEST_F(Workspace, OptionsAreAddedCopiedMovedAndRemoved) {
  addNew();
  page(kOptions);
  EXPECT_TRUE(says(QStringLiteral("has no option yet")));
  button(QStringLiteral("Add an option")).click();
  ASSERT_EQ(own().options.size(), 1U);
  retype(named<QLineEdit>(QStringLiteral("Name of the option")), QStringLiteral("Head down"));
  EXPECT_EQ(own().options[0].name, "Head down");
  named<QComboBox>(QStringLiteral("Kind")).setCurrentIndex(static_cast<int>(OptionKind::adapted));
  EXPECT_EQ(own().options[0].kind, OptionKind::adapted);
  for (QCheckBox* box : workspace.findChildren<QCheckBox*>())
    if (box->text() == QStringLiteral("Another effort"))
      box->click();
  named<QSpinBox>(QStringLiteral("Effort of the option")).setValue(1);
  EXPECT_EQ(own().options[0].effort, Effort(1));
  auto& options = named<QListWidget>(QStringLiteral("Options"));
  for (QPushButton* copy : workspace.editor().findChildren<QPushButton*>())
    if (copy->text() == QStringLiteral("Copy"))
      copy->click();
  ASSERT_EQ(own().options.size(), 2U);
  EXPECT_NE(own().options[0].id, own().options[1].id);
  EXPECT_EQ(own().options[1].effort, Effort(1));
  EXPECT_EQ(options.currentRow(), 1);
  button(QStringLiteral("Move up")).click();
  EXPECT_EQ(own().options[0].name, "Head down, copy");
  for (QPushButton* remove : workspace.editor().findChildren<QPushButton*>())
    if (remove->text() == QStringLiteral("Remove"))
      remove->click();
  ASSERT_EQ(own().options.size(), 1U);
  EXPECT_EQ(own().options[0].name, "Head down");
}

TEST_F(Workspace, ARemovedMovementComesBackByUndo) {
  addNew();
  const Movement before = own();
  button(QStringLiteral("Remove")).click();
  EXPECT_TRUE(document.own().empty());
  EXPECT_TRUE(says(QStringLiteral("Removed")));
  document.undoStack()->undo();
  EXPECT_EQ(own(), before);
}

TEST_F(Workspace, NothingIsChangedWhereTheStudiosKnowledgeCannotBeRead) {
  addNew();
  Error error;
  error.code = ErrorCode::notJson;
  error.file = "knowledge.json";
  document.lock({error});
  EXPECT_FALSE(button(QStringLiteral("New movement")).isEnabled());
  EXPECT_FALSE(button(QStringLiteral("Copy to my own")).isEnabled());
  EXPECT_TRUE(says(QStringLiteral("cannot be read")));
}

TEST_F(Workspace, WhatIsExportedIsImportedAgain) {
  QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("given.json"));
  addNew();
  const Movement before = own();
  workspace.exportTo(file);
  EXPECT_TRUE(says(QStringLiteral("Saved")));
  button(QStringLiteral("Remove")).click();
  workspace.importFrom(file);
  EXPECT_EQ(own(), before);
  EXPECT_EQ(workspace.current(), before.id);
  workspace.importFrom(folder.filePath(QStringLiteral("missing.json")));
  EXPECT_TRUE(says(QStringLiteral("Nothing was imported")));
}

TEST_F(Workspace, ABlankMovementCanBeKept) {
  EXPECT_TRUE(document.add(blankMovement(*document.knowledge()), QStringLiteral("Add")));
}

TEST_F(Workspace, NothingIsCutOnAnyPage) {
  workspace.showMovement({"single-leg-stretch"});
  button(QStringLiteral("Copy to my own")).click();
  for (const QSize& size : {QSize(1280, 730), QSize(1600, 1000)}) {
    testing::layOut(workspace, size);
    for (int index = kFacts; index <= kOptions; ++index) {
      page(index);
      testing::layOut(workspace, size);
      EXPECT_EQ(testing::cutParts(workspace), QStringList()) << size.width() << " page " << index;
    }
  }
}

} // namespace
} // namespace matwright
