#include "core/handout/Card.h"
#include "tests/ui/window/Windows.h"
#include "ui/catalogue/CataloguePanel.h"
#include "ui/cautions/CautionList.h"
#include "ui/group/GroupView.h"
#include "ui/movements/MovementsWorkspace.h"
#include "ui/outline/OutlineView.h"
#include "ui/print/CardPreview.h"
#include "ui/print/TextPreview.h"
#include "ui/rules/RulesWorkspace.h"
#include "ui/text/LoadText.h"
#include "ui/tidy/TidyDialog.h"
#include "ui/timeline/TerrainView.h"

#include <QAbstractButton>
#include <QFile>
#include <QFileDialog>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QMessageBox>
#include <QPointer>
#include <QPushButton>
#include <QSignalSpy>
#include <QToolButton>
#include <QTreeView>
#include <algorithm>

namespace matwright {
namespace {

struct Window : WindowTest {
  TerrainView& terrain() { return *window->findChild<TerrainView*>(); }
  CataloguePanel& catalogue() { return *window->findChild<CataloguePanel*>(); }

  // The middle of a step's block on the terrain's viewport.
  QPoint middleOf(StepId step) {
    for (const auto& block : terrain().settledGeometry().blocks())
      if (block.id == step)
        return terrain().toViewport(block.rect).center().toPoint();
    ADD_FAILURE() << "no block";
    return {};
  }
  StepId stepAt(std::size_t section, std::size_t index) { return document().plan().sections[section].steps[index].id; }
  // Waits for a message box and presses the button with this text.
  void answer(const QString& text) {
    QMessageBox* box = nullptr;
    ASSERT_TRUE(QTest::qWaitFor([&] { return (box = window->findChild<QMessageBox*>()) && box->isVisible(); }));
    for (QAbstractButton* button : box->buttons())
      if (QString plain = button->text(); plain.remove(QLatin1Char('&')) == text)
        return button->click();
    ADD_FAILURE() << "no button " << text.toStdString();
  }
  void acceptFile(const QString& file) {
    QFileDialog* dialog = nullptr;
    ASSERT_TRUE(QTest::qWaitFor([&] { return (dialog = window->findChild<QFileDialog*>()) && dialog->isVisible(); }));
    dialog->selectFile(file);
    Q_EMIT dialog->fileSelected(file);
    dialog->close();
  }
};

TEST_F(Window, AFirstStartOpensTheDemoStudioWithSomethingToDrag) {
  EXPECT_GT(steps(), 10U);
  EXPECT_FALSE(document().evaluation().people.empty());
  EXPECT_FALSE(window->files().isModified());
  EXPECT_TRUE(QFile::exists(studioFile("thursday-mixed-level.json")));
  EXPECT_EQ(QFile::permissions(folder.filePath(QStringLiteral("studio/people/rosa.json"))) &
                (QFile::ReadGroup | QFile::ReadOther),
            QFile::Permissions());
}

TEST_F(Window, EachWorkspaceHasItsKeyAndItsOwnUndo) {
  document().perform(RenameClass{"Another name"}, QStringLiteral("Rename"));
  auto* undo = action(QStringLiteral("Undo Rename"));
  ASSERT_TRUE(undo);
  EXPECT_TRUE(undo->isEnabled());
  auto* movements = window->findChild<MovementsWorkspace*>();
  ASSERT_TRUE(movements);
  EXPECT_FALSE(movements->isVisible());
  QTest::keyClick(window.get(), Qt::Key_3, Qt::ControlModifier);
  EXPECT_TRUE(movements->isVisible());
  EXPECT_FALSE(undo->isEnabled());
  ASSERT_TRUE(window->knowledge().add(blankMovement(*window->knowledge().knowledge()), QStringLiteral("Add")));
  EXPECT_TRUE(undo->isEnabled());
  undo->trigger();
  EXPECT_TRUE(window->knowledge().own().empty());
  EXPECT_EQ(document().plan().name, "Another name");
  QTest::keyClick(window.get(), Qt::Key_1, Qt::ControlModifier);
  EXPECT_FALSE(movements->isVisible());
}

TEST_F(Window, AThresholdIsSetAmongTheRulesAndTheClassHearsOfIt) {
  auto* rules = window->findChild<RulesWorkspace*>();
  ASSERT_TRUE(rules);
  QTest::keyClick(window.get(), Qt::Key_4, Qt::ControlModifier);
  EXPECT_TRUE(rules->isVisible());
  ASSERT_TRUE(window->knowledge().setThreshold({"everyone-kneel-stretch"}, 60, QStringLiteral("Set")));
  const auto& book = document().knowledge().rules;
  const auto set = std::find_if(book.rules.begin(), book.rules.end(),
                                [](const Rule& rule) { return rule.id == RuleId{"everyone-kneel-stretch"}; });
  EXPECT_EQ(set->threshold->amount, 60);
  EXPECT_TRUE(window->files().isModified());
  auto* undo = action(QStringLiteral("Undo Set"));
  ASSERT_TRUE(undo);
  undo->trigger();
  EXPECT_TRUE(window->knowledge().own().empty());
}

TEST_F(Window, ClosingAsksAboutAMovementThatIsNotKeptYet) {
  ASSERT_TRUE(window->knowledge().add(blankMovement(*window->knowledge().knowledge()), QStringLiteral("Add")));
  ASSERT_TRUE(window->files().save());
  const MovementId id = window->knowledge().own().movements.at(0).id;
  auto* movements = window->findChild<MovementsWorkspace*>();
  movements->showMovement(id);
  QLineEdit* name = nullptr;
  for (QLineEdit* field : movements->findChildren<QLineEdit*>())
    if (field->accessibleName() == QStringLiteral("Name"))
      name = field;
  ASSERT_TRUE(name);
  name->selectAll();
  QTest::keyClick(name, Qt::Key_Backspace);
  EXPECT_FALSE(window->files().isModified());
  window->close();
  answer(QStringLiteral("Put them right"));
  EXPECT_TRUE(window->isVisible());
  EXPECT_TRUE(movements->isVisible());
  EXPECT_EQ(movements->current(), id);
  QTest::qWait(20);
  window->close();
  answer(QStringLiteral("Go on without"));
  EXPECT_TRUE(QTest::qWaitFor([&] { return !window->isVisible(); }));
  EXPECT_EQ(window->knowledge().own().movements.at(0).name, "New movement");
}

TEST_F(Window, ClosingAsksAboutARuleThatIsNotKeptYet) {
  auto* rules = window->findChild<RulesWorkspace*>();
  QTest::keyClick(window.get(), Qt::Key_4, Qt::ControlModifier);
  for (QPushButton* button : rules->findChildren<QPushButton*>())
    if (button->text() == QStringLiteral("New rule"))
      button->click();
  const auto unkept = rules->firstUnkept();
  ASSERT_TRUE(unkept);
  QTest::keyClick(window.get(), Qt::Key_1, Qt::ControlModifier);
  window->close();
  answer(QStringLiteral("Put them right"));
  EXPECT_TRUE(window->isVisible());
  EXPECT_TRUE(rules->isVisible());
  EXPECT_EQ(rules->current(), unkept);
  QTest::qWait(20);
  window->close();
  answer(QStringLiteral("Go on without"));
  EXPECT_TRUE(QTest::qWaitFor([&] { return !window->isVisible(); }));
  EXPECT_TRUE(window->knowledge().own().empty());
}

TEST_F(Window, TheNextStartOpensTheClassThatWasOpen) {
  const QString other = studioFile("wednesday-back-care.json");
  open(other);
  window->close();
  open({});
  EXPECT_EQ(window->files().classFile(), other);
}

TEST_F(Window, FindingAMovementAndPressingReturnPutsItIntoTheClass) {
  const std::size_t before = steps();
  action(QStringLiteral("Find a Movement"))->trigger();
  auto* search = catalogue().findChild<QLineEdit*>();
  ASSERT_TRUE(search);
  QTest::keyClicks(search, QStringLiteral("mermaid"));
  auto* list = catalogue().findChild<QListView*>();
  ASSERT_TRUE(QTest::qWaitFor([&] { return list->model()->rowCount() == 1; }));
  list->setCurrentIndex(list->model()->index(0, 0));
  QTest::keyClick(list, Qt::Key_Return);
  EXPECT_EQ(steps(), before + 1);
  EXPECT_EQ(document().undoStack()->count(), 1);
}

TEST_F(Window, KeysOnTheTerrainEditTheSelectedStepAndUndoTakesItBack) {
  const ClassPlan before = document().plan();
  const StepId step = stepAt(1, 0);
  terrain().selectStep(step);
  terrain().setFocus();
  QTest::keyClick(terrain().viewport(), Qt::Key_Plus);
  EXPECT_EQ(findStep(document().plan(), step)->dose.amount, findStep(before, step)->dose.amount + 1);
  action(QStringLiteral("Duplicate"))->trigger();
  EXPECT_EQ(steps(), countSteps(before) + 1);
  action(QStringLiteral("Remove"))->trigger();
  EXPECT_EQ(steps(), countSteps(before));
  while (document().undoStack()->canUndo())
    document().undoStack()->undo();
  EXPECT_EQ(document().plan(), before);
}

TEST_F(Window, AStepIsReplacedFromTheTerrainByKeysAloneAndTheKeyboardStaysThere) {
  const ClassPlan before = document().plan();
  const StepId step = stepAt(1, 0);
  terrain().selectStep(step);
  terrain().setFocus();
  auto* list = window->findChild<QListWidget*>(QStringLiteral("replacements"));
  ASSERT_TRUE(list);
  QTest::keyClick(&terrain(), Qt::Key_R, Qt::ControlModifier);
  ASSERT_TRUE(list->isVisible() && list->hasFocus());
  QTest::keyClick(list, Qt::Key_Return);
  EXPECT_NE(findStep(document().plan(), step)->movement, findStep(before, step)->movement);
  EXPECT_EQ(document().undoStack()->count(), 1);
  EXPECT_FALSE(list->isVisible());
  EXPECT_TRUE(terrain().hasFocus());
  document().undoStack()->undo();
  EXPECT_EQ(document().plan(), before);
}

TEST_F(Window, ReplacingIsForASingleStep) {
  QAction* replace = action(QStringLiteral("Replace this Step"));
  terrain().selectStep(stepAt(1, 0));
  EXPECT_TRUE(replace->isEnabled());
  action(QStringLiteral("Select All Steps"))->trigger();
  EXPECT_FALSE(replace->isEnabled());
  EXPECT_TRUE(action(QStringLiteral("Duplicate"))->isEnabled());
}

TEST_F(Window, DraggingABlockMovesItsStepAsOneEntry) {
  const StepId moved = stepAt(0, 0);
  const QPoint from = middleOf(moved);
  const QPoint to = middleOf(stepAt(3, 2)) + QPoint(2, 0);
  QWidget* viewport = terrain().viewport();
  QTest::mousePress(viewport, Qt::LeftButton, {}, from);
  for (int step = 1; step <= 10; ++step)
    QTest::mouseMove(viewport, from + (to - from) * step / 10);
  QTest::mouseRelease(viewport, Qt::LeftButton, {}, to);
  EXPECT_EQ(document().undoStack()->count(), 1);
  EXPECT_EQ(placeOf(document().plan(), moved)->section, 3U);
}

TEST_F(Window, SavesUnderANameAndReadsTheSameClassBack) {
  terrain().selectStep(stepAt(0, 0));
  action(QStringLiteral("Duplicate"))->trigger();
  EXPECT_TRUE(window->isWindowModified());
  const QString file = studioFile("copy.json");
  action(QStringLiteral("Save As"))->trigger();
  acceptFile(file);
  EXPECT_FALSE(window->isWindowModified());
  const auto read = readClass(file.toStdString());
  ASSERT_TRUE(read);
  EXPECT_EQ(read->value, document().plan());
}

TEST_F(Window, AsksBeforeUnsavedWorkIsLost) {
  terrain().selectStep(stepAt(0, 0));
  action(QStringLiteral("Remove"))->trigger();
  window->close();
  EXPECT_TRUE(window->isVisible());
  answer(QStringLiteral("Cancel"));
  EXPECT_TRUE(window->isVisible());
  window->close();
  answer(QStringLiteral("Save"));
  EXPECT_FALSE(window->isVisible());
  EXPECT_EQ(readClass(window->files().classFile().toStdString())->value, document().plan());
}

TEST_F(Window, AsksBeforeReplacingWhatSomebodyElseWrote) {
  terrain().selectStep(stepAt(0, 0));
  action(QStringLiteral("Remove"))->trigger();
  const std::string foreign = classText(emptyClass("Foreign"));
  ASSERT_TRUE(writeFile(window->files().classFile().toStdString(), foreign));
  action(QStringLiteral("Save"))->trigger();
  answer(QStringLiteral("Cancel"));
  EXPECT_EQ(*readFile(window->files().classFile().toStdString()), foreign);
}

TEST_F(Window, OffersUnsavedWorkAfterARunThatDidNotEndWell) {
  const QString file = window->files().classFile();
  terrain().selectStep(stepAt(0, 0));
  action(QStringLiteral("Remove"))->trigger();
  const ClassPlan lost = document().plan();
  window->files().autosaveNow();
  // As after a crash: the folder is there and nobody holds its lock.
  const QString own =
      QDir(folder.filePath(QStringLiteral("recovery"))).entryList(QDir::Dirs | QDir::NoDotAndDotDot).value(0);
  const QString kept = folder.filePath(QStringLiteral("recovery/after-a-crash"));
  QDir().mkpath(kept);
  for (const char* name : {"class.json", "origin.txt"})
    ASSERT_TRUE(QFile::copy(folder.filePath(QStringLiteral("recovery/") + own + QLatin1Char('/') + QLatin1String(name)),
                            kept + QLatin1Char('/') + QLatin1String(name)));
  open({});
  answer(QStringLiteral("Recover"));
  EXPECT_EQ(document().plan(), lost);
  EXPECT_EQ(window->files().classFile(), file);
  EXPECT_TRUE(window->isWindowModified());
}

TEST_F(Window, TheCardFollowsTheClassAndIsSavedAsPdf) {
  action(QStringLiteral("Card"))->trigger();
  auto* preview = window->findChild<CardPreview*>();
  ASSERT_TRUE(preview && preview->isVisible());
  const QString file = folder.filePath(QStringLiteral("card.pdf"));
  ASSERT_TRUE(preview->savePdf(file));
  QFile pdf(file);
  ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
  EXPECT_TRUE(pdf.readAll().startsWith("%PDF-"));
  EXPECT_FALSE(preview->savePdf(folder.filePath(QStringLiteral("no/such/folder/card.pdf"))));
}

TEST_F(Window, UndoGoesToThePeopleWhileTheyAreShown) {
  action(QStringLiteral("People"))->trigger();
  window->people().add(QStringLiteral("Ines"), QStringLiteral("Add Ines"));
  EXPECT_TRUE(window->isWindowModified());
  const std::size_t before = window->people().people().size();
  for (QAction* undo : window->findChildren<QAction*>())
    if (undo->shortcut() == QKeySequence(Qt::CTRL | Qt::Key_Z))
      undo->trigger();
  EXPECT_EQ(window->people().people().size(), before - 1);
  EXPECT_FALSE(window->isWindowModified());
}

TEST_F(Window, DarkAndLightAreChosenAndKept) {
  action(QStringLiteral("Dark"))->trigger();
  EXPECT_LT(window->palette().color(QPalette::Base).lightness(), 80);
  open({});
  EXPECT_LT(window->palette().color(QPalette::Base).lightness(), 80);
  action(QStringLiteral("Light"))->trigger();
  EXPECT_GT(window->palette().color(QPalette::Base).lightness(), 200);
}

TEST_F(WindowTest, ShowsTheGroupInThePlaceOfTheTimeline) {
  auto* group = window->findChild<GroupView*>();
  auto* terrain = window->findChild<TerrainView*>();
  ASSERT_TRUE(group && terrain);
  EXPECT_TRUE(terrain->isVisible());
  action(QStringLiteral("Group"))->trigger();
  EXPECT_TRUE(group->isVisible());
  EXPECT_FALSE(terrain->isVisible());
  EXPECT_TRUE(action(QStringLiteral("Group"))->isChecked());
  action(QStringLiteral("Timeline"))->trigger();
  EXPECT_TRUE(terrain->isVisible());
  EXPECT_FALSE(group->isVisible());
}

TEST_F(WindowTest, ACellOfTheGroupShowsItsCautionInTheList) {
  const Evaluation& evaluation = document().evaluation();
  const auto caution = std::find_if(evaluation.cautions.begin(), evaluation.cautions.end(), [&](const Caution& each) {
    return each.step && each.person < evaluation.people.size();
  });
  ASSERT_NE(caution, evaluation.cautions.end());
  const PersonId person = evaluation.people[caution->person];
  action(QStringLiteral("Group"))->trigger();
  Q_EMIT window->findChild<GroupView*>()->cautionWanted(caution->step, person);
  const auto* list = window->findChild<CautionList*>()->findChild<QTreeView*>();
  const Person* found = findPerson(document().roster(), person);
  ASSERT_TRUE(found);
  EXPECT_TRUE(list->currentIndex().data().toString().startsWith(QString::fromStdString(found->name)));
}

TEST_F(WindowTest, TheCardIsForEverybodyForWhomeverTheClassIsSeen) {
  const auto card = [this] {
    return cardOf(document().knowledge(), document().plan(), document().evaluation(), document().roster(),
                  NameStyle::initials);
  };
  const Card before = card();
  document().setSeenPeople({document().evaluation().people.back()});
  ASSERT_NE(document().seen(), document().evaluation());
  EXPECT_EQ(card(), before);
}

TEST_F(WindowTest, SeeingTheClassForSomebodyIsNothingToSave) {
  document().setSeenPeople({document().evaluation().people.front()});
  EXPECT_FALSE(window->files().isModified());
}

TEST_F(WindowTest, RedFlagsAreOpenedFromEveryWorkspaceAndFollowTheClass) {
  for (const char* workspace : {"Class", "People", "Movements", "Rules"}) {
    action(QLatin1String(workspace))->trigger();
    EXPECT_TRUE(action(QStringLiteral("Red Flags and Stop Signs"))->isEnabled());
    bool button = false;
    for (const QToolButton* each : window->findChildren<QToolButton*>())
      button |= each->text() == QStringLiteral("Red Flags") &&
                each->defaultAction() == action(QStringLiteral("Red Flags and Stop Signs")) && each->isVisible();
    EXPECT_TRUE(button) << workspace;
  }
  action(QStringLiteral("Red Flags and Stop Signs"))->trigger();
  const auto* page = window->findChild<TextPreview*>();
  ASSERT_TRUE(page && page->isVisible());
  EXPECT_FALSE(page->sheet().html.contains(QStringLiteral("concerns somebody")));
  const auto& roster = document().roster();
  const auto pregnant = std::find_if(roster.begin(), roster.end(), [](const Person& person) {
    return std::any_of(person.conditions.begin(), person.conditions.end(),
                       [](const PersonCondition& held) { return held.condition.value == "pregnancy"; });
  });
  ASSERT_NE(pregnant, roster.end());
  (void)document().perform(SetPeople{{pregnant->id}}, {});
  EXPECT_TRUE(page->sheet().html.contains(QStringLiteral("concerns somebody")));
  EXPECT_FALSE(page->sheet().html.contains(QString::fromStdString(pregnant->name)));
}

TEST_F(WindowTest, TheBodyOfTheSettingsTakesEffectEverywhereAtOnce) {
  action(QStringLiteral("About Load Figures"))->trigger();
  const auto* page = window->findChild<TextPreview*>();
  ASSERT_TRUE(page && page->isVisible());
  EXPECT_TRUE(page->sheet().html.contains(bodyText(BodyTable::winter, BodySize{}).toHtmlEscaped()));
  const ClassLoad before = document().evaluation().load;
  const BodySize small{.mass = 50, .stature = 1.50};
  settings->setBodySize(small);
  EXPECT_EQ(document().snapshot().body, small);
  EXPECT_EQ(document().evaluation().load, before);
  settings->setBodyTable(BodyTable::deLevaWomen);
  EXPECT_EQ(document().knowledge().loads->table(), BodyTable::deLevaWomen);
  EXPECT_NE(document().evaluation().load, before);
  EXPECT_TRUE(page->sheet().html.contains(bodyText(BodyTable::deLevaWomen, small).toHtmlEscaped()));
  EXPECT_FALSE(window->files().isModified());
}

TEST_F(WindowTest, AnOpenedStudioKeepsTheTableOfTheSettings) {
  settings->setBodyTable(BodyTable::deLevaMen);
  window->knowledge().load({});
  EXPECT_EQ(document().knowledge().loads->table(), BodyTable::deLevaMen);
}

TEST_F(WindowTest, RedFlagsAreThoseOfTheKnowledgeInForce) {
  QAction* open = action(QStringLiteral("Red Flags and Stop Signs"));
  open->trigger();
  auto* page = window->findChild<TextPreview*>();
  ASSERT_TRUE(page);
  Knowledge other = document().knowledge();
  other.redFlags.groups.front().title = "Another title altogether";
  document().setKnowledge(std::make_shared<const Knowledge>(other));
  EXPECT_TRUE(page->sheet().html.contains(QStringLiteral("Another title altogether")));
  page->close();
  open->trigger();
  EXPECT_TRUE(page->isVisible());
  EXPECT_EQ(window->findChildren<TextPreview*>().size(), 1);
}

TEST_F(Window, TheOrderIsTidiedForWhatIsSelected) {
  QAction* tidy = action(QStringLiteral("Tidy the Order"));
  ASSERT_TRUE(tidy);
  tidy->trigger();
  auto* dialog = window->findChild<TidyDialog*>();
  ASSERT_TRUE(dialog && dialog->isVisible());
  ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog->search().isSearching(); }, 60000));
  EXPECT_FALSE(dialog->search().found()->request.section);
  const std::size_t before = steps();
  dialog->accept();
  // All steps of one section are that section; the dialog is the same.
  std::vector<StepId> main;
  for (const Step& step : document().plan().sections[2].steps)
    main.push_back(step.id);
  Q_EMIT window->findChild<OutlineView*>()->tidyWanted(main);
  EXPECT_EQ(window->findChildren<TidyDialog*>().size(), 1);
  ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog->search().isSearching(); }, 60000));
  EXPECT_EQ(dialog->search().found()->request.section, 2U);
  EXPECT_EQ(steps(), before);
}

TEST_F(Window, NoOtherActionHasTheKeysOfTidying) {
  int found = 0;
  for (const QAction* candidate : window->findChildren<QAction*>())
    found += candidate->shortcuts().contains(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_T)) ? 1 : 0;
  EXPECT_EQ(found, 1);
}

} // namespace
} // namespace matwright
