#include "core/screening/ScopeForm.h"
#include "tests/support/Finding.h"
#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/controls/DateField.h"
#include "ui/controls/FeatureList.h"
#include "ui/controls/Fields.h"
#include "ui/rules/RuleForm.h"
#include "ui/rules/SourcePicker.h"
#include "ui/text/VocabularyText.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QListWidget>
#include <QMenu>
#include <QScrollArea>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTest>
#include <QToolButton>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

Date dayOf(int year, unsigned month, unsigned day) {
  return {std::chrono::year{year}, std::chrono::month{month}, std::chrono::day{day}};
}

Rule freshRule() {
  Rule rule;
  rule.asks.any = {Feature::flexLoad};
  rule.level = Level::adapt;
  rule.why = "Bending under load may be too much for now.";
  rule.instead = "keep the head down";
  rule.strength = Strength::practice;
  rule.reviewed = dayOf(2026, 11, 1);
  return rule;
}

// One of three kinds of questions, as the program's own conditions have them.
Condition askedCondition(std::string id, std::string name) {
  Condition condition;
  condition.id = {std::move(id)};
  condition.name = std::move(name);
  condition.about = "Something of one's own.";
  condition.qualifiers = {{"weeks", "Weeks since it began", QualifierKind::weeksSince, {}},
                          {"phase", "How it is now", QualifierKind::choice, {{"acute", "Acute"}, {"calm", "Calm"}}},
                          {"numb", "Anything numb", QualifierKind::flag, {}}};
  return condition;
}

struct Form : ::testing::Test {
  Form() : form(document) {
    OwnKnowledge own;
    own.conditions = {askedCondition("own-knee", "Cranky knee"), askedCondition("own-other", "Other thing")};
    own.conditions[1].qualifiers.pop_back();
    own.rules = {freshRule()};
    own.rules[0].id = {"own-rule"};
    document.load(own);
    form.setRule({"own-rule"});
    testing::layOut(form, {900, 690});
    form.activateWindow();
  }

  template <class Widget> Widget& named(const QString& name) { return testing::namedIn<Widget>(form, name); }
  bool isShown(const QString& name) const {
    for (const QWidget* widget : form.findChildren<QWidget*>())
      if (widget->accessibleName() == name && widget->isVisibleTo(&form))
        return true;
    return false;
  }
  bool says(const QString& words) const { return testing::saysIn(form, words); }
  const Rule& kept() const { return document.own().rules.at(0); }
  void choose(const QString& name, int index) { named<QComboBox>(name).setCurrentIndex(index); }
  void chooseScope(Scope scope) { choose(QStringLiteral("Where it looks"), static_cast<int>(scope)); }
  void chooseCondition(const QString& words) {
    auto& box = named<QComboBox>(QStringLiteral("For people with"));
    box.setCurrentIndex(box.findText(words));
  }
  void addTest(const QString& question) {
    auto& button = named<QPushButton>(QStringLiteral("Add a test on what is known about the condition"));
    for (QAction* action : button.menu()->actions())
      if (action->text() == question)
        return action->trigger();
    ADD_FAILURE() << question.toStdString();
  }
  void retype(QLineEdit& field, const QString& words) {
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, words);
  }
  void tickFeature(const QString& list, Feature feature) {
    auto& features = named<FeatureList>(list);
    for (QCheckBox* box : features.findChildren<QCheckBox*>())
      if (box->text().compare(text(feature), Qt::CaseInsensitive) == 0)
        box->click();
  }
  QStringList lines() {
    QStringList all;
    const auto& list = named<QListWidget>(QStringLiteral("What is to be put right"));
    for (int row = 0; row < list.count(); ++row)
      all << list.item(row)->text();
    return all;
  }

  KnowledgeDocument document{testing::knowledge()};
  RuleForm form;
};

const QString kAny = QStringLiteral("What it looks for: one of these is enough");
const QString kAll = QStringLiteral("What it looks for: all of these together");

TEST_F(Form, ARuleThatCanBeKeptHasNothingToPutRightAndSaysWhatItMeans) {
  EXPECT_THAT(form.faults(), IsEmpty());
  EXPECT_TRUE(
      says(QStringLiteral("For everybody, when a step asks for loaded forward bend: adapt, \"keep the head down\".")));
  EXPECT_EQ(testing::cutParts(form), QStringList());
}

TEST_F(Form, WhomItIsForIsWritten) {
  chooseCondition(QStringLiteral("Cranky knee (own)"));
  EXPECT_EQ(kept().condition, ConditionId{"own-knee"});
  named<QCheckBox>(QStringLiteral("Aged 65 to 79")).click();
  EXPECT_EQ(kept().ages, EnumSet<AgeBand>{AgeBand::from65});
  EXPECT_TRUE(says(QStringLiteral("For people aged 65 to 79 with \"Cranky knee\"")));
  choose(QStringLiteral("For people with"), 0);
  EXPECT_FALSE(kept().condition);
}

TEST_F(Form, TheConditionsOfTheProgramAreOfferedToo) {
  auto& box = named<QComboBox>(QStringLiteral("For people with"));
  EXPECT_EQ(static_cast<std::size_t>(box.count()), 1 + document.knowledge()->rules.conditions.size());
}

TEST_F(Form, EachKindOfQuestionIsTestedInItsOwnWay) {
  chooseCondition(QStringLiteral("Cranky knee (own)"));
  addTest(QStringLiteral("Weeks since it began"));
  named<QSpinBox>(QStringLiteral("Weeks since it began: from week")).setValue(6);
  named<QCheckBox>(QStringLiteral("Weeks since it began: has a last week")).click();
  named<QSpinBox>(QStringLiteral("Weeks since it began: before week")).setValue(12);
  ASSERT_THAT(kept().when, SizeIs(1));
  EXPECT_EQ(kept().when[0], (QualifierTest{"weeks", 6, 12, {}, {}, true}));
  addTest(QStringLiteral("Anything numb"));
  choose(QStringLiteral("Anything numb: the answer"), 1);
  choose(QStringLiteral("Anything numb: while nobody has filled it in"), 1);
  ASSERT_THAT(kept().when, SizeIs(2));
  EXPECT_EQ(kept().when[1], (QualifierTest{"numb", {}, {}, {}, false, false}));
  addTest(QStringLiteral("How it is now"));
  EXPECT_TRUE(form.hasUnkept({"own-rule"})) << "no answer is chosen yet";
  EXPECT_TRUE(says(QStringLiteral("Test 3: choose for which answers the rule speaks.")));
  named<QCheckBox>(QStringLiteral("How it is now: Calm")).click();
  named<QCheckBox>(QStringLiteral("How it is now: Acute")).click();
  ASSERT_THAT(kept().when, SizeIs(3));
  EXPECT_THAT(kept().when[2].choices, ElementsAre("acute", "calm"));
  EXPECT_FALSE(form.hasUnkept({"own-rule"}));
  named<QToolButton>(QStringLiteral("Take away the test: Weeks since it began")).click();
  EXPECT_THAT(kept().when, SizeIs(2));
  EXPECT_EQ(testing::cutParts(form), QStringList());
}

TEST_F(Form, AnotherConditionKeepsTheTestsThatFitAndSaysWhichAreTakenAway) {
  chooseCondition(QStringLiteral("Cranky knee (own)"));
  addTest(QStringLiteral("Weeks since it began"));
  addTest(QStringLiteral("Anything numb"));
  ASSERT_THAT(kept().when, SizeIs(2));
  chooseCondition(QStringLiteral("Other thing (own)"));
  ASSERT_THAT(kept().when, SizeIs(1));
  EXPECT_EQ(kept().when[0].qualifier, "weeks");
  EXPECT_TRUE(says(QStringLiteral("Taken away, because \"Other thing\" is not asked this: Anything numb.")));
  document.undoStack()->undo();
  EXPECT_THAT(kept().when, SizeIs(2));
  EXPECT_FALSE(says(QStringLiteral("Taken away")));
  choose(QStringLiteral("For people with"), 0);
  EXPECT_THAT(kept().when, IsEmpty());
  EXPECT_TRUE(says(QStringLiteral("without a condition")));
}

TEST_F(Form, WhatItLooksForIsWritten) {
  tickFeature(kAny, Feature::kneel);
  EXPECT_EQ(kept().asks.any, (FeatureSet{Feature::flexLoad, Feature::kneel}));
  tickFeature(kAll, Feature::wristLoad);
  EXPECT_EQ(kept().asks.all, FeatureSet{Feature::wristLoad});
  named<QCheckBox>(QStringLiteral("What it looks for: Standing")).click();
  EXPECT_EQ(kept().asks.at, EnumSet<Elevation>{Elevation::standing});
  named<QSpinBox>(QStringLiteral("What it looks for: effort from")).setValue(7);
  EXPECT_EQ(kept().asks.effortFrom, 7);
  named<QSpinBox>(QStringLiteral("What it looks for: long lever from")).setValue(60);
  EXPECT_EQ(kept().asks.leverFrom, 60);
  EXPECT_TRUE(says(definition(Feature::kneel)));
}

TEST_F(Form, HeightsStandSideBySide) {
  const auto& down = named<QCheckBox>(QStringLiteral("What it looks for: Face down"));
  const auto& up = named<QCheckBox>(QStringLiteral("What it looks for: Face up"));
  EXPECT_EQ(down.mapTo(&form, QPoint()).y(), up.mapTo(&form, QPoint()).y());
}

TEST_F(Form, WhatItConcernsIsCountedWhileItIsWritten) {
  const auto said = [this] { return says(QStringLiteral("of the catalogue ask for this as written")); };
  EXPECT_TRUE(said());
  tickFeature(kAny, Feature::flexLoad);
  EXPECT_FALSE(said());
  EXPECT_TRUE(says(QStringLiteral("It looks for nothing yet")));
  tickFeature(kAny, Feature::flexLoad);
  chooseScope(Scope::way);
  EXPECT_TRUE(says(QStringLiteral("charted changes of position ask for this")));
  chooseScope(Scope::wholeClass);
  EXPECT_TRUE(says(QStringLiteral("It looks at no movement")));
}

TEST_F(Form, WhatHasALongLeverIsCountedBeforeTheRuleIsKept) {
  tickFeature(kAny, Feature::flexLoad);
  chooseScope(Scope::order); // what came before is not chosen yet
  named<QSpinBox>(QStringLiteral("What it looks for: long lever from")).setValue(100);
  EXPECT_TRUE(form.hasUnkept({"own-rule"}));
  EXPECT_FALSE(says(QStringLiteral("No movement of the catalogue asks for this")));
  EXPECT_TRUE(says(QStringLiteral("of the catalogue ask for this as written")));
}

TEST_F(Form, EachScopeShowsWhatItHasAUseForAndCanBeKept) {
  const QString amount = QStringLiteral("Unit of the amount"), steps = QStringLiteral("What it looks for: effort from"),
                before = QStringLiteral("What came before: one of these is enough");
  for (std::size_t i = 0; i < kWordCount<Scope>; ++i) {
    const auto scope = static_cast<Scope>(i);
    chooseScope(scope);
    const ScopeForm use = formOf(scope);
    EXPECT_EQ(isShown(amount), use.amount == ScopeForm::Amount::needed) << word(scope);
    EXPECT_EQ(isShown(kAny), use.asks) << word(scope);
    EXPECT_EQ(isShown(steps), use.asks && use.onSteps) << word(scope);
    EXPECT_EQ(isShown(before), scope == Scope::order) << word(scope);
    EXPECT_EQ(form.hasUnkept({"own-rule"}), scope == Scope::order) << word(scope);
    if (use.amount == ScopeForm::Amount::needed) {
      auto& units = named<QComboBox>(amount);
      EXPECT_EQ(units.count(), use.units.size()) << word(scope);
    }
    QApplication::processEvents();
    EXPECT_EQ(testing::cutParts(form), QStringList()) << word(scope);
  }
}

TEST_F(Form, WhatAScopeHasNoUseForComesBackWithTheScope) {
  named<QCheckBox>(QStringLiteral("What it looks for: Standing")).click();
  chooseScope(Scope::wholeClass);
  EXPECT_TRUE(namesNothing(kept().asks));
  chooseScope(Scope::way);
  EXPECT_EQ(kept().asks.any, FeatureSet{Feature::flexLoad});
  EXPECT_TRUE(kept().asks.at.empty());
  chooseScope(Scope::step);
  EXPECT_EQ(kept().asks.at, EnumSet<Elevation>{Elevation::standing});
}

TEST_F(Form, TheAmountAndItsUnitAreWritten) {
  chooseScope(Scope::total);
  ASSERT_TRUE(kept().threshold);
  EXPECT_EQ(kept().threshold->origin, ThresholdOrigin::ours);
  named<QDoubleSpinBox>(QStringLiteral("Amount")).setValue(180);
  EXPECT_EQ(kept().threshold->amount, 180);
  EXPECT_TRUE(says(QStringLiteral("3:00")));
  auto& unit = named<QComboBox>(QStringLiteral("Unit of the amount"));
  unit.setCurrentIndex(unit.findData(static_cast<int>(MeasureUnit::steps)));
  EXPECT_EQ(kept().threshold->unit, MeasureUnit::steps);
  named<QDoubleSpinBox>(QStringLiteral("Amount")).setValue(5);
  for (QCheckBox* box : form.findChildren<QCheckBox*>())
    if (box->text().startsWith(QStringLiteral("This amount stands in the sources")))
      box->click();
  EXPECT_EQ(kept().threshold, (Threshold{5, MeasureUnit::steps, ThresholdOrigin::published, 5}));
}

TEST_F(Form, ChangesOfPositionAreLookedForInWaysAlone) {
  named<QCheckBox>(QStringLiteral("What it looks for: Standing")).click();
  chooseScope(Scope::total);
  auto& unit = named<QComboBox>(QStringLiteral("Unit of the amount"));
  unit.setCurrentIndex(unit.findData(static_cast<int>(MeasureUnit::changes)));
  EXPECT_EQ(kept().threshold->unit, MeasureUnit::changes);
  EXPECT_TRUE(kept().asks.at.empty());
  EXPECT_FALSE(isShown(QStringLiteral("What it looks for: effort from")));
}

TEST_F(Form, AStepMayHaveAnAmountOrNone) {
  EXPECT_FALSE(isShown(QStringLiteral("Unit of the amount")));
  QCheckBox* box = nullptr;
  for (QCheckBox* each : form.findChildren<QCheckBox*>())
    if (each->text() == QStringLiteral("Only when it lasts longer than"))
      box = each;
  ASSERT_TRUE(box);
  box->click();
  ASSERT_TRUE(kept().threshold);
  EXPECT_EQ(kept().threshold->unit, MeasureUnit::seconds);
  named<QDoubleSpinBox>(QStringLiteral("Amount")).setValue(30);
  EXPECT_TRUE(says(QStringLiteral("for longer than 0:30 on one side")));
  box->click();
  EXPECT_FALSE(kept().threshold);
}

TEST_F(Form, ARuleOnTheOrderOfStepsNeedsWhatCameBefore) {
  chooseScope(Scope::order);
  EXPECT_EQ(kept().scope, Scope::step) << "the document holds what it had";
  EXPECT_EQ(form.draft().scope, Scope::order);
  EXPECT_TRUE(says(QStringLiteral("Not kept yet")));
  EXPECT_THAT(lines(), ElementsAre(QString::fromUtf8("\u25b2 What came before: Something has to stand here.")));
  tickFeature(QStringLiteral("What came before: one of these is enough"), Feature::neckLift);
  EXPECT_EQ(kept().scope, Scope::order);
  EXPECT_EQ(kept().after->demand.any, FeatureSet{Feature::neckLift});
  EXPECT_FALSE(says(QStringLiteral("Not kept yet")));
  for (QCheckBox* box : form.findChildren<QCheckBox*>())
    if (box->text() == QStringLiteral("Only when that went on for longer than"))
      box->click();
  named<QDoubleSpinBox>(QStringLiteral("What came before: longer than")).setValue(40);
  EXPECT_EQ(kept().after->lasting, Seconds(40));
}

TEST_F(Form, WhatItSaysIsWrittenAndItsWordsAreCounted) {
  choose(QStringLiteral("Level"), static_cast<int>(Level::askFirst));
  EXPECT_EQ(kept().level, Level::askFirst);
  auto& instead = named<QLineEdit>(QStringLiteral("Instead"));
  retype(instead, QStringLiteral("feet on the floor"));
  EXPECT_EQ(kept().instead, "feet on the floor");
  EXPECT_TRUE(says(QStringLiteral("4 of 8 words")));
  auto& why = named<NoteField>(QStringLiteral("Why"));
  why.selectAll();
  QTest::keyClicks(&why, QStringLiteral("Too soon."));
  EXPECT_EQ(kept().why, "Too soon.");
}

TEST_F(Form, ADraftThatIsRefusedStaysAndIsSaid) {
  QSignalSpy spy(&form, &RuleForm::keptChanged);
  auto& instead = named<QLineEdit>(QStringLiteral("Instead"));
  retype(instead, QStringLiteral("one two three four five six seven eight nine"));
  EXPECT_EQ(kept().instead, "one two three four five six seven eight ") << "as it was when it could last be kept";
  EXPECT_EQ(form.draft().instead, "one two three four five six seven eight nine");
  EXPECT_EQ(instead.text(), QStringLiteral("one two three four five six seven eight nine"));
  EXPECT_TRUE(form.hasUnkept({"own-rule"}));
  EXPECT_EQ(form.firstUnkept(), RuleId{"own-rule"});
  EXPECT_TRUE(says(QStringLiteral("Too long: 8 words at most, 9 are there.")));
  EXPECT_TRUE(instead.accessibleDescription().contains(QStringLiteral("Too long")));
  EXPECT_EQ(spy.count(), 1);
  for (int i = 0; i < 5; ++i)
    QTest::keyClick(&instead, Qt::Key_Backspace);
  EXPECT_FALSE(form.hasUnkept({"own-rule"}));
  EXPECT_EQ(spy.count(), 2);
}

TEST_F(Form, ALineOfWhatIsWrongLeadsToItsField) {
  chooseScope(Scope::order);
  auto& list = named<QListWidget>(QStringLiteral("What is to be put right"));
  auto* area = form.findChild<QScrollArea*>();
  ASSERT_TRUE(area);
  Q_EMIT list.itemClicked(list.item(0));
  const QWidget* focus = QApplication::focusWidget();
  ASSERT_TRUE(focus);
  EXPECT_TRUE(named<QWidget>(QStringLiteral("What came before: one of these is enough")).isAncestorOf(focus));
}

TEST_F(Form, WhatIsDroppedIsShownAsItIsKept) {
  retype(named<QLineEdit>(QStringLiteral("Instead")), QStringLiteral("a b c d e f g h i"));
  ASSERT_TRUE(form.hasUnkept({"own-rule"}));
  form.dropUnkept();
  EXPECT_FALSE(form.hasUnkept({"own-rule"}));
  EXPECT_EQ(named<QLineEdit>(QStringLiteral("Instead")).text().toStdString(), kept().instead);
}

TEST_F(Form, AGestureOnOneFieldIsOneEntryAndUndoFillsTheFieldsAgain) {
  auto& instead = named<QLineEdit>(QStringLiteral("Instead"));
  retype(instead, QStringLiteral("feet down"));
  EXPECT_EQ(document.undoStack()->count(), 1);
  choose(QStringLiteral("Level"), static_cast<int>(Level::watch));
  EXPECT_EQ(document.undoStack()->count(), 2);
  tickFeature(kAny, Feature::kneel);
  EXPECT_EQ(document.undoStack()->count(), 3);
  document.undoStack()->undo();
  document.undoStack()->undo();
  EXPECT_EQ(named<QComboBox>(QStringLiteral("Level")).currentIndex(), static_cast<int>(Level::adapt));
  EXPECT_EQ(named<FeatureList>(kAny).ticked(), FeatureSet{Feature::flexLoad});
  document.undoStack()->undo();
  EXPECT_EQ(instead.text(), QStringLiteral("keep the head down"));
  document.undoStack()->redo();
  EXPECT_EQ(instead.text(), QStringLiteral("feet down"));
}

TEST_F(Form, WhatStandsBehindItIsWritten) {
  auto& picker = named<SourcePicker>(QStringLiteral("Sources"));
  const SourceId first = document.knowledge()->rules.sources.front().id;
  Q_EMIT picker.edited({first});
  EXPECT_THAT(kept().sources, ElementsAre(first));
  choose(QStringLiteral("It rests on"), static_cast<int>(Strength::consensus));
  EXPECT_EQ(kept().strength, Strength::consensus);
  choose(QStringLiteral("How far it was checked"), static_cast<int>(Verification::cited));
  EXPECT_EQ(kept().check, Verification::cited);
  QTest::keyClicks(&named<NoteField>(QStringLiteral("Disputed")), QStringLiteral("Few trials."));
  EXPECT_EQ(kept().contested, "Few trials.");
  for (DateField* field : form.findChildren<DateField*>())
    Q_EMIT field->edited(dayOf(2026, 12, 2));
  EXPECT_EQ(kept().reviewed, dayOf(2026, 12, 2));
  QApplication::processEvents();
  for (QToolButton* button : picker.findChildren<QToolButton*>())
    if (button->accessibleName().startsWith(QStringLiteral("Take away the source")) && button->isVisibleTo(&form)) {
      button->click();
      break;
    }
  EXPECT_TRUE(form.hasUnkept({"own-rule"})) << "more than practice needs a source";
  EXPECT_TRUE(says(QStringLiteral("Names no source")));
}

TEST_F(Form, ASourceOfOnesOwnIsAddedToAllAndToTheRuleAsOneEntry) {
  testing::buttonIn(form, QStringLiteral("Add a source of my own")).click();
  testing::buttonIn(form, QStringLiteral("Add this source")).click();
  EXPECT_THAT(document.own().sources, IsEmpty());
  EXPECT_TRUE(says(QStringLiteral("Something has to stand here.")));
  QTest::keyClicks(&named<NoteField>(QStringLiteral("Cited as")), QStringLiteral("My notes, 2026"));
  choose(QStringLiteral("What kind of source it is"), static_cast<int>(SourceKind::study));
  testing::buttonIn(form, QStringLiteral("Add this source")).click();
  ASSERT_THAT(document.own().sources, SizeIs(1));
  const Source source = document.own().sources[0];
  EXPECT_EQ(source.cite, "My notes, 2026");
  EXPECT_EQ(source.kind, SourceKind::study);
  EXPECT_TRUE(isOwn(source.id));
  EXPECT_THAT(kept().sources, ElementsAre(source.id));
  EXPECT_TRUE(says(QStringLiteral("My notes, 2026 (study)")));
  EXPECT_EQ(document.undoStack()->count(), 1);
  named<QToolButton>(QStringLiteral("Change the source: My notes, 2026")).click();
  QTest::keyClicks(&named<NoteField>(QStringLiteral("Cited as")), QStringLiteral("b"));
  EXPECT_EQ(document.own().sources[0].cite.size(), source.cite.size() + 1);
  document.undoStack()->undo();
  document.undoStack()->undo();
  EXPECT_THAT(document.own().sources, IsEmpty());
  EXPECT_THAT(kept().sources, IsEmpty());
}

TEST_F(Form, ASourceIsAddedBesideADraftThatCannotBeKeptYet) {
  retype(named<QLineEdit>(QStringLiteral("Instead")), QStringLiteral("a b c d e f g h i"));
  testing::buttonIn(form, QStringLiteral("Add a source of my own")).click();
  QTest::keyClicks(&named<NoteField>(QStringLiteral("Cited as")), QStringLiteral("My notes"));
  testing::buttonIn(form, QStringLiteral("Add this source")).click();
  ASSERT_THAT(document.own().sources, SizeIs(1));
  EXPECT_THAT(form.draft().sources, SizeIs(1));
  EXPECT_THAT(kept().sources, IsEmpty());
  EXPECT_EQ(form.draft().instead, "a b c d e f g h i");
}

} // namespace
} // namespace matwright
