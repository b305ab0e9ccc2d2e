#include "core/knowledge/OwnKnowledge.h"
#include "tests/support/Finding.h"
#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/controls/Fields.h"
#include "ui/people/ClearanceEditor.h"
#include "ui/people/ConditionEditor.h"
#include "ui/people/ConditionPicker.h"
#include "ui/people/PeopleChooser.h"
#include "ui/people/PeopleList.h"
#include "ui/people/PeopleWorkspace.h"
#include "ui/people/QualifierField.h"
#include "ui/people/SeenChooser.h"
#include "ui/text/CautionText.h"

#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QListView>
#include <QListWidget>
#include <QLocale>
#include <QMenu>
#include <QPushButton>
#include <QTest>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using testing::Panels;

Date day(const char* iso) { return *dateFromIso(iso); }

struct People : ::testing::Test, Panels {
  People() : workspace(document, people) { testing::layOut(workspace, {1000, 700}); }

  template <class Widget> Widget& named(const QString& name) {
    return testing::visibleIn<Widget>(workspace, name,
                                      [&](const Widget& widget) { return widget.accessibleName().startsWith(name); });
  }
  QPushButton& button(const QString& words) { return testing::buttonIn(workspace, words); }
  bool says(const QString& words) const { return testing::saysIn(workspace, words); }
  const Person& person(const char* id) const { return *people.find({id}); }
  QListView& list() { return named<QListView>(QStringLiteral("People on file")); }
  int cautions(const char* id, Level level) const {
    int count = 0;
    for (const Caution& caution : document.evaluation().cautions)
      count += caution.level == level && caution.person < document.evaluation().people.size() &&
               document.evaluation().people[caution.person].value == id;
    return count;
  }

  PeopleWorkspace workspace;
};

TEST_F(People, AreListedWithTheirConditionsInWords) {
  const QModelIndex kofi = list().model()->index(3, 0);
  EXPECT_EQ(kofi.data().toString(), QStringLiteral("Kofi Larkspur \u00b7 K.L."));
  EXPECT_EQ(kofi.data(PeopleList::kConditionsRole).toString(),
            QStringLiteral("High blood pressure; Rotator-cuff shoulder pain"));
  EXPECT_TRUE(says(standingNotice()));
  EXPECT_TRUE(says(QStringLiteral("health data")));
}

TEST_F(People, TickingPutsSomebodyIntoTheClassAndTakesThemOut) {
  list().setCurrentIndex(list().model()->index(0, 0));
  QTest::keyClick(&list(), Qt::Key_Space);
  EXPECT_FALSE(isInClass(document.plan(), {"person-1"}));
  EXPECT_EQ(document.undoStack()->count(), 1);
  EXPECT_EQ(cautions("person-1", Level::leaveOut), 0);
  const QRect row = list().visualRect(list().model()->index(0, 0));
  QTest::mouseClick(list().viewport(), Qt::LeftButton, {}, row.topLeft() + QPoint(14, 14));
  EXPECT_TRUE(isInClass(document.plan(), {"person-1"}));
  document.undoStack()->undo();
  EXPECT_FALSE(isInClass(document.plan(), {"person-1"}));
}

TEST_F(People, TheSheetIsWantedForWhoeverIsOnThePage) {
  PersonId wanted;
  int changes = 0;
  QObject::connect(&workspace, &PeopleWorkspace::sheetWanted, [&](const PersonId& person) { wanted = person; });
  QObject::connect(&workspace, &PeopleWorkspace::shownChanged, [&] { ++changes; });
  QPushButton& sheet = button(QStringLiteral("Sheet for the clinician\u2026"));
  EXPECT_TRUE(testing::cutParts(workspace).isEmpty())
      << testing::cutParts(workspace).join(QLatin1Char(' ')).toStdString();
  list().setCurrentIndex(list().model()->index(2, 0));
  EXPECT_GT(changes, 0);
  sheet.click();
  EXPECT_EQ(wanted, people.people()[2].id);
  EXPECT_EQ(workspace.shown(), wanted);
  (void)document.perform(SetPeople{{PersonId{"nobody-known"}}}, {});
  workspace.showPerson(PersonId{"nobody-known"});
  EXPECT_TRUE(workspace.shown().empty());
  EXPECT_FALSE(sheet.isEnabled());
}

TEST_F(People, AClickOnTheNameDoesNotTick) {
  const QRect row = list().visualRect(list().model()->index(2, 0));
  QTest::mouseClick(list().viewport(), Qt::LeftButton, {}, row.center());
  EXPECT_TRUE(isInClass(document.plan(), {"person-3"}));
  EXPECT_EQ(named<QLineEdit>(QStringLiteral("Name")).text(), QStringLiteral("Wanda Ostrow"));
}

TEST_F(People, ANewPersonIsNamedByTyping) {
  workspace.activateWindow();
  button(QStringLiteral("Add a person")).click();
  auto& name = named<QLineEdit>(QStringLiteral("Name"));
  name.selectAll();
  QTest::keyClicks(&name, QStringLiteral("Ilse Marrow"));
  ASSERT_EQ(people.people().size(), 7U);
  EXPECT_EQ(people.people().back().name, "Ilse Marrow");
  EXPECT_EQ(people.people().back().initials, "I.M.");
  EXPECT_EQ(people.undoStack()->count(), 2); // added, named
  people.undoStack()->undo();
  people.undoStack()->undo();
  EXPECT_EQ(people.people(), testing::sixPeople());
}

TEST_F(People, InitialsOfTheirOwnAreKeptWhenTheNameChanges) {
  workspace.showPerson({"person-1"});
  auto& initials = named<QLineEdit>(QStringLiteral("Initials"));
  initials.selectAll();
  QTest::keyClicks(&initials, QStringLiteral("Ro"));
  auto& name = named<QLineEdit>(QStringLiteral("Name"));
  name.selectAll();
  QTest::keyClicks(&name, QStringLiteral("Rose"));
  EXPECT_EQ(person("person-1").initials, "Ro");
  EXPECT_EQ(person("person-1").name, "Rose");
}

TEST_F(People, ANameIsNeverEmptyOnFile) {
  workspace.showPerson({"person-1"});
  auto& name = named<QLineEdit>(QStringLiteral("Name"));
  name.selectAll();
  QTest::keyClick(&name, Qt::Key_Backspace);
  EXPECT_EQ(person("person-1").name, "Rosa Amberley");
}

TEST_F(People, WhoIsTakenOffTheFileIsStillNamedByTheClass) {
  workspace.showPerson({"person-2"});
  button(QStringLiteral("Remove from file")).click();
  EXPECT_FALSE(people.find({"person-2"}));
  EXPECT_TRUE(isInClass(document.plan(), {"person-2"}));
  const QModelIndex last = list().model()->index(list().model()->rowCount() - 1, 0);
  EXPECT_TRUE(last.data().toString().contains(QStringLiteral("not on file")));
  people.undoStack()->undo();
  EXPECT_EQ(people.people(), testing::sixPeople());
}

TEST_F(People, AConditionIsFoundByItsNameAndAdded) {
  workspace.showPerson({"person-6"});
  button(QStringLiteral("Add a condition")).click();
  auto& search = named<QLineEdit>(QStringLiteral("Find a condition"));
  QTest::keyClicks(&search, QStringLiteral("knee osteo"));
  EXPECT_EQ(named<QListWidget>(QStringLiteral("Conditions")).count(), 1);
  QTest::keyClick(&search, Qt::Key_Return);
  ASSERT_EQ(person("person-6").conditions.size(), 1U);
  EXPECT_EQ(person("person-6").conditions[0].condition.value, "knee-osteoarthritis");
  EXPECT_TRUE(says(QString::fromStdString(document.knowledge().rules.findCondition({"knee-osteoarthritis"})->about)));
  people.undoStack()->undo();
  EXPECT_TRUE(person("person-6").conditions.empty());
}

TEST_F(People, AConditionIsFoundByItsCode) {
  workspace.showPerson({"person-6"});
  button(QStringLiteral("Add a condition")).click();
  QTest::keyClicks(&named<QLineEdit>(QStringLiteral("Find a condition")), QStringLiteral("M51"));
  const auto& found = named<QListWidget>(QStringLiteral("Conditions"));
  ASSERT_EQ(found.count(), 1);
  EXPECT_EQ(found.item(0)->text(), QStringLiteral("Disc-related back pain"));
}

TEST_F(People, FlagsHaveThreeAnswers) {
  workspace.showPerson({"person-1"});
  auto& box = named<QComboBox>(QStringLiteral("New sudden back pain"));
  EXPECT_EQ(box.currentText(), QStringLiteral("not known"));
  EXPECT_TRUE(says(QStringLiteral("What is not known mostly counts as if it held")));
  box.setCurrentIndex(2);
  EXPECT_EQ(person("person-1").conditions[0].qualifiers.at("suddenPain"), QualifierValue(false));
  EXPECT_FALSE(says(QStringLiteral("What is not known mostly counts as if it held")));
  box.setCurrentIndex(1);
  EXPECT_EQ(person("person-1").conditions[0].qualifiers.at("suddenPain"), QualifierValue(true));
  box.setCurrentIndex(0);
  EXPECT_TRUE(person("person-1").conditions[0].qualifiers.empty());
}

TEST_F(People, ChoicesCanBeSetBackToNotKnown) {
  workspace.showPerson({"person-4"});
  auto& box = named<QComboBox>(QStringLiteral("Resting blood pressure"));
  box.setCurrentIndex(1);
  ASSERT_EQ(person("person-4").conditions[0].qualifiers.size(), 1U);
  EXPECT_TRUE(std::holds_alternative<std::string>(person("person-4").conditions[0].qualifiers.begin()->second));
  box.setCurrentIndex(0);
  EXPECT_TRUE(person("person-4").conditions[0].qualifiers.empty());
}

// The due date is 18 weeks after the day of the class: 40 - 18.
TEST_F(People, ADueDateIsShownAsTheWeekOnTheDayOfTheClass) {
  workspace.showPerson({"person-3"});
  EXPECT_TRUE(says(QStringLiteral("week 22")));
  document.perform(SetDate{day("2026-12-10")}, {}); // two weeks later
  EXPECT_TRUE(says(QStringLiteral("week 24")));
}

TEST_F(People, AnEventIsShownInWeeksAndItsDateCanBeTakenAway) {
  workspace.showPerson({"person-5"});
  EXPECT_TRUE(says(QStringLiteral("9 week")));
  auto& date = named<QDateEdit>(QStringLiteral("Date of the operation"));
  date.setDate(QDate(2026, 11, 5)); // three weeks before
  EXPECT_TRUE(says(QStringLiteral("3 week")));
  EXPECT_EQ(person("person-5").conditions[0].qualifiers.begin()->second, QualifierValue(day("2026-11-05")));
}

TEST_F(People, AClearanceLowersAskFirstToWatchAndNeverLeaveOut) {
  workspace.showPerson({"person-5"});
  const int asked = cautions("person-5", Level::askFirst);
  const int watched = cautions("person-5", Level::watch);
  const int leftOut = cautions("person-5", Level::leaveOut);
  ASSERT_GT(asked, 0);
  button(QStringLiteral("Add a clearance")).click();
  ASSERT_EQ(person("person-5").conditions[0].clearances.size(), 1U);
  auto& given = named<QDateEdit>(QStringLiteral("Given on"));
  given.setDate(QDate(2026, 11, 20));
  EXPECT_EQ(cautions("person-5", Level::askFirst), 0);
  EXPECT_EQ(cautions("person-5", Level::watch), watched + asked);
  EXPECT_EQ(cautions("person-5", Level::leaveOut), leftOut);
  EXPECT_TRUE(says(QStringLiteral("Holds on")));

  given.setDate(QDate(2026, 11, 27)); // the day after the class
  EXPECT_EQ(cautions("person-5", Level::askFirst), asked);
  EXPECT_TRUE(says(QStringLiteral("Does not hold yet")));
  while (people.undoStack()->canUndo())
    people.undoStack()->undo();
  EXPECT_EQ(people.people(), testing::sixPeople());
  EXPECT_EQ(cautions("person-5", Level::askFirst), asked);
}

TEST_F(People, AClearanceCanSpeakForSomeFeaturesAlone) {
  workspace.showPerson({"person-5"});
  button(QStringLiteral("Add a clearance")).click();
  named<QDateEdit>(QStringLiteral("Given on")).setDate(QDate(2026, 11, 20));
  auto* editor = workspace.findChild<ClearanceEditor*>();
  ASSERT_TRUE(editor);
  auto* menu = editor->findChild<QMenu*>();
  Q_EMIT menu->aboutToShow();
  ASSERT_FALSE(menu->actions().isEmpty());
  menu->actions().front()->trigger();
  EXPECT_EQ(person("person-5").conditions[0].clearances[0].features.size(), 1);
  auto& by = named<QLineEdit>(QStringLiteral("Given by"));
  QTest::keyClicks(&by, QStringLiteral("surgeon"));
  EXPECT_EQ(person("person-5").conditions[0].clearances[0].by, "surgeon");
}

TEST_F(People, AWrittenInstructionComesBeforeTheRule) {
  workspace.showPerson({"person-5"});
  button(QStringLiteral("Add a clearance")).click();
  named<QDateEdit>(QStringLiteral("Given on")).setDate(QDate(2026, 11, 20));
  auto& instruction = named<QComboBox>(QStringLiteral("What it says"));
  EXPECT_EQ(instruction.currentIndex(), 0);
  instruction.setCurrentIndex(instruction.findText(QStringLiteral("written instruction: adapt")));
  EXPECT_EQ(person("person-5").conditions[0].clearances[0].sets, Level::adapt);
  EXPECT_GT(cautions("person-5", Level::adapt), 0);
  EXPECT_EQ(cautions("person-5", Level::leaveOut), 0);
  EXPECT_TRUE(says(QStringLiteral("a written instruction comes before the rule")));
  EXPECT_FALSE(says(QStringLiteral("never \"leave out\"")));
  const QString leftOut = QStringLiteral("written instruction: leave out");
  instruction.setCurrentIndex(instruction.findText(leftOut));
  EXPECT_EQ(person("person-5").conditions[0].clearances[0].sets, Level::leaveOut);
  EXPECT_EQ(instruction.currentText(), leftOut);
  testing::layOut(workspace, {800, 600});
  EXPECT_THAT(testing::cutParts(workspace), ::testing::IsEmpty());
  instruction.setCurrentIndex(0);
  EXPECT_EQ(person("person-5").conditions[0].clearances[0].sets, std::nullopt);
  EXPECT_TRUE(says(QStringLiteral("never \"leave out\"")));
}

TEST_F(People, AnAgeIsSetUndoneInOneStepAndSetBackToNotNoted) {
  workspace.showPerson({"person-1"});
  auto& age = named<QComboBox>(QStringLiteral("Age"));
  ASSERT_EQ(age.count(), 6);
  EXPECT_EQ(age.currentText(), QStringLiteral("not noted"));
  age.setCurrentIndex(age.findText(QStringLiteral("65 to 79")));
  EXPECT_EQ(person("person-1").ageBand, AgeBand::from65);
  EXPECT_EQ(people.undoStack()->count(), 1);
  people.undoStack()->undo();
  EXPECT_EQ(people.people(), testing::sixPeople());
  EXPECT_EQ(age.currentText(), QStringLiteral("not noted"));
  people.undoStack()->redo();
  EXPECT_EQ(age.currentText(), QStringLiteral("65 to 79"));
  age.setCurrentIndex(0);
  EXPECT_EQ(person("person-1").ageBand, std::nullopt);
}

TEST_F(People, MeasuresAreNotNotedAtTheLeastAndKeptWithinTheirBounds) {
  workspace.showPerson({"person-1"});
  struct Case {
    const char* name;
    std::optional<double> Person::*measure;
    double usual, least, most;
  };
  for (const Case& one : {Case{"Stature", &Person::stature, 1.68, Person::kShortest, Person::kTallest},
                          Case{"Body mass", &Person::mass, 62.5, Person::kLightest, Person::kHeaviest}}) {
    auto& box = named<QDoubleSpinBox>(QLatin1String(one.name));
    EXPECT_EQ(box.text(), QStringLiteral("not noted"));
    for (const double value : {one.usual, one.least, one.most}) {
      box.setValue(value);
      EXPECT_EQ(person("person-1").*one.measure, value) << one.name;
    }
    box.setValue(0);
    EXPECT_EQ(person("person-1").*one.measure, std::nullopt) << one.name;
    EXPECT_EQ(box.text(), QStringLiteral("not noted"));
  }
}

TEST_F(People, AProfileIsShownForEachPersonAndShowingItChangesNothing) {
  Person rosa = person("person-1");
  rosa.ageBand = AgeBand::from80;
  rosa.stature = 1.655; // finer than is shown
  rosa.mass = 58;
  rosa.wishes = "to reach the top shelf";
  people.change(rosa, {});
  const int entries = people.undoStack()->count();
  workspace.showPerson({"person-1"});
  EXPECT_EQ(named<QComboBox>(QStringLiteral("Age")).currentText(), QStringLiteral("80 and over"));
  EXPECT_EQ(named<QDoubleSpinBox>(QStringLiteral("Body mass")).value(), 58);
  EXPECT_EQ(named<NoteField>(QStringLiteral("Wishes")).toPlainText(), QStringLiteral("to reach the top shelf"));
  workspace.showPerson({"person-2"});
  EXPECT_EQ(named<QDoubleSpinBox>(QStringLiteral("Stature")).text(), QStringLiteral("not noted"));
  EXPECT_EQ(named<NoteField>(QStringLiteral("Wishes")).toPlainText(), QString());
  EXPECT_EQ(people.undoStack()->count(), entries);
  EXPECT_EQ(person("person-1"), rosa);
}

TEST_F(People, AMeasureIsTypedAsOneEntryAndStaysWithItsPerson) {
  workspace.showPerson({"person-1"});
  auto& stature = named<QDoubleSpinBox>(QStringLiteral("Stature"));
  stature.selectAll();
  QTest::keyClicks(&stature, stature.locale().toString(1.72, 'f', 2));
  EXPECT_EQ(person("person-1").stature, 1.72);
  EXPECT_EQ(people.undoStack()->count(), 1);
  workspace.showPerson({"person-2"});
  EXPECT_EQ(person("person-2").stature, std::nullopt);
  EXPECT_EQ(stature.text(), QStringLiteral("not noted"));
}

TEST_F(People, WishesAreTypedAsOneEntry) {
  workspace.showPerson({"person-1"});
  QTest::keyClicks(&named<NoteField>(QStringLiteral("Wishes")), QStringLiteral("sleep"));
  EXPECT_EQ(person("person-1").wishes, "sleep");
  EXPECT_EQ(people.undoStack()->count(), 1);
}

TEST_F(People, TypingIsOneEntryAField) {
  workspace.showPerson({"person-1"});
  QTest::keyClicks(&named<NoteField>(QStringLiteral("Note")), QStringLiteral("left knee"));
  EXPECT_EQ(person("person-1").note, "left knee");
  EXPECT_EQ(people.undoStack()->count(), 1);
}

TEST_F(People, RemovingAConditionCanBeUndone) {
  workspace.showPerson({"person-4"});
  QApplication::processEvents(); // what has just been made is shown then
  QApplication::processEvents();
  for (QToolButton* remove : workspace.findChildren<QToolButton*>())
    if (remove->accessibleName().contains(QStringLiteral("High blood pressure")) && remove->isVisibleTo(&workspace)) {
      remove->click();
      break;
    }
  ASSERT_EQ(person("person-4").conditions.size(), 1U);
  EXPECT_EQ(person("person-4").conditions[0].condition.value, "shoulder-pain");
  people.undoStack()->undo();
  EXPECT_EQ(person("person-4"), testing::sixPeople()[3]);
}

TEST_F(People, AConditionThatNoRuleKnowsIsSaidToBeUnscreened) {
  Person rosa = person("person-1");
  rosa.conditions = {PersonCondition{{"unheard-of"}, {}, {}, {}}};
  people.change(rosa, {});
  workspace.showPerson({"person-1"});
  EXPECT_TRUE(says(QStringLiteral("nothing is screened for it")));
}

TEST_F(People, CutNothing) {
  for (const QSize size : {QSize(1280, 700), QSize(800, 600)})
    for (const Person& one : people.people()) {
      workspace.showPerson(one.id);
      testing::layOut(workspace, size);
      EXPECT_THAT(testing::cutParts(workspace), ::testing::IsEmpty()) << one.id.value << ' ' << size.width();
    }
}

TEST_F(People, TheChooserTicksWhoComesAndUnknownPeopleToo) {
  PeopleChooser chooser(document, people);
  EXPECT_TRUE(chooser.text().startsWith(QLatin1Char('6')));
  document.perform(SetPeople{{{"person-1"}, {"stranger"}}}, {});
  Q_EMIT chooser.menu()->aboutToShow();
  QStringList ticked;
  for (QAction* action : chooser.menu()->actions())
    if (action->isChecked())
      ticked << action->text();
  EXPECT_EQ(ticked, QStringList({QStringLiteral("Rosa Amberley"), QStringLiteral("stranger (not on file)")}));
  for (QAction* action : chooser.menu()->actions())
    if (action->text().startsWith(QStringLiteral("stranger")))
      action->trigger();
  EXPECT_EQ(document.plan().people, std::vector<PersonId>{{"person-1"}});
}

struct SeenFor : ::testing::Test, Panels {
  SeenFor() : chooser(document) { testing::layOut(chooser, {260, 30}); }
  QAction* entry(const QString& words) {
    Q_EMIT chooser.menu()->aboutToShow();
    const auto entries = chooser.menu()->actions();
    for (QAction* action : entries)
      if (action->text() == words)
        return action;
    return nullptr;
  }

  SeenChooser chooser;
};

TEST_F(SeenFor, SaysForWhomAndTicksThem) {
  EXPECT_EQ(chooser.text(), QStringLiteral("Seen for everybody"));
  entry(QStringLiteral("Rosa Amberley"))->trigger();
  EXPECT_EQ(chooser.text(), QStringLiteral("Seen for R.A."));
  EXPECT_TRUE(chooser.property("narrowed").toBool());
  entry(QStringLiteral("Greta Finch"))->trigger();
  const QStringList both{QStringLiteral("R.A."), QStringLiteral("G.F.")};
  EXPECT_EQ(chooser.text(), QStringLiteral("Seen for ") + QLocale().createSeparatedList(both));
  EXPECT_TRUE(entry(QStringLiteral("Rosa Amberley"))->isChecked());
  EXPECT_FALSE(entry(QStringLiteral("Noor Hallam"))->isChecked());
  entry(QStringLiteral("Rosa Amberley"))->trigger();
  EXPECT_EQ(document.seenPeople(), std::vector<PersonId>{{"person-5"}});
  entry(QStringLiteral("Everybody"))->trigger();
  EXPECT_EQ(chooser.text(), QStringLiteral("Seen for everybody"));
  EXPECT_FALSE(chooser.property("narrowed").toBool());
}

TEST_F(SeenFor, CountsThemWhereTheyAreMany) {
  document.setSeenPeople({{"person-1"}, {"person-2"}, {"person-3"}, {"person-4"}});
  EXPECT_EQ(chooser.text(), QStringLiteral("Seen for 4 people"));
}

TEST_F(SeenFor, OffersTheClassAndIsOffWithoutAnybody) {
  (void)document.perform(SetPeople{{{"person-2"}}}, {});
  EXPECT_EQ(entry(QStringLiteral("Rosa Amberley")), nullptr);
  EXPECT_NE(entry(QStringLiteral("Imre Tolvaj")), nullptr);
  (void)document.perform(SetPeople{{}}, {});
  EXPECT_FALSE(chooser.isEnabled());
}

TEST_F(People, FollowTheKnowledgeOfTheStudio) {
  Condition draughts;
  draughts.id = {"own-draughts"};
  draughts.name = "Minds the draught";
  OwnKnowledge own;
  own.conditions = {draughts};
  document.setKnowledge(std::make_shared<const Knowledge>(layered(*testing::knowledge(), own)));
  Person rosa = person("person-1");
  rosa.conditions.push_back({{"own-draughts"}, {}, {}, {}});
  people.change(rosa, {});
  const QModelIndex index = list().model()->index(0, 0);
  EXPECT_TRUE(index.data(PeopleList::kConditionsRole).toString().contains(QStringLiteral("Minds the draught")));
}

} // namespace
} // namespace matwright
