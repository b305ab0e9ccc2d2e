#include "tests/support/Finding.h"
#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/controls/Fields.h"
#include "ui/document/KnowledgeExchange.h"
#include "ui/rules/RuleFilterBar.h"
#include "ui/rules/RuleForm.h"
#include "ui/rules/RuleTree.h"
#include "ui/rules/RulesWorkspace.h"

#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <gmock/gmock.h>

namespace matwright {
namespace {

// The documents joined as the window joins them.
struct Rules : ::testing::Test, testing::Panels {
  Rules() : workspace(own, document) {
    QObject::connect(&own, &KnowledgeDocument::changed, &document, [this] { document.setKnowledge(own.knowledge()); });
    testing::layOut(workspace, {1280, 730});
    workspace.activateWindow();
  }

  template <class Widget> Widget& named(const QString& name) { return testing::namedIn<Widget>(workspace, name); }
  QPushButton& button(const QString& words) { return testing::buttonIn(workspace, words); }
  bool says(const QString& words) const { return testing::saysIn(workspace, words); }
  void showRule(const char* id) { workspace.show({RuleId{id}, {}}); }
  QLineEdit& search() { return named<QLineEdit>(QStringLiteral("Search conditions, rules and sources")); }
  RuleTree& tree() { return *workspace.findChild<RuleTree*>(); }
  QDoubleSpinBox& threshold() { return named<QDoubleSpinBox>(QStringLiteral("Threshold")); }
  bool speaks(const char* rule) const {
    for (const Caution& caution : document.evaluation().cautions)
      if (caution.rule && caution.rule->id == RuleId{rule})
        return true;
    return false;
  }
  ConditionId addCondition(const char* name) {
    Condition condition;
    condition.name = name;
    condition.about = "Slept badly.";
    return own.add(condition, QStringLiteral("Add")).value();
  }
  QMessageBox& question() {
    QApplication::processEvents();
    return *workspace.findChild<QMessageBox*>();
  }
  void answer(const QString& words) {
    for (QAbstractButton* each : question().buttons())
      if (each->text() == words)
        return each->click();
    FAIL() << words.toStdString();
  }

  KnowledgeDocument own{testing::knowledge()};
  RulesWorkspace workspace;
};

TEST_F(Rules, AHeadingAndARuleAreBothLookedAt) {
  EXPECT_EQ(workspace.current(), RuleChoice{});
  EXPECT_TRUE(says(QStringLiteral("For everybody, and by age")));
  workspace.show({{}, ConditionId{"pregnancy"}});
  EXPECT_TRUE(says(QStringLiteral("Week of pregnancy: the due date")));
  EXPECT_TRUE(says(QStringLiteral("Wanda Ostrow")));
  showRule("pregnancy-supine-stretch");
  EXPECT_TRUE(says(QStringLiteral("more than 3:00 in a row")));
  EXPECT_TRUE(says(QStringLiteral("McCowan")));
  EXPECT_TRUE(says(QStringLiteral("Evidence is too thin")));
  EXPECT_TRUE(says(QStringLiteral("For people with this on file: Pregnancy")));
  EXPECT_TRUE(says(QStringLiteral("Counts while nobody has filled it in, too.")));
}

TEST_F(Rules, ItIsReachedByTheKeyboard) {
  search().setFocus();
  QTest::keyClicks(&search(), QStringLiteral("McCowan three minutes"));
  QTest::keyClick(&search(), Qt::Key_Down);
  EXPECT_TRUE(tree().hasFocus());
  QTest::keyClick(&tree(), Qt::Key_Down);
  QTest::keyClick(&tree(), Qt::Key_Down);
  EXPECT_EQ(workspace.current().rule, RuleId{"pregnancy-supine-stretch"});
}

TEST_F(Rules, AThresholdThatIsSetChangesWhatTheClassIsToldAndComesBackByUndo) {
  ASSERT_FALSE(speaks("everyone-kneel-stretch"));
  showRule("everyone-kneel-stretch");
  ASSERT_EQ(threshold().value(), 180);
  EXPECT_FALSE(says(QStringLiteral("your threshold")));
  threshold().setValue(5);
  EXPECT_TRUE(speaks("everyone-kneel-stretch"));
  EXPECT_TRUE(says(QStringLiteral("0:05")));
  EXPECT_TRUE(tree()
                  .currentIndex()
                  .data(Qt::AccessibleTextRole)
                  .toString()
                  .contains(QStringLiteral("your threshold; usually 3:00")));
  EXPECT_EQ(workspace.current().rule, RuleId{"everyone-kneel-stretch"});
  own.undoStack()->undo();
  EXPECT_FALSE(speaks("everyone-kneel-stretch"));
  EXPECT_EQ(threshold().value(), 180);
}

TEST_F(Rules, TypingAThresholdIsOneEntryOfTheUndoList) {
  showRule("everyone-kneel-stretch");
  threshold().setFocus();
  threshold().selectAll();
  QTest::keyClicks(&threshold(), QStringLiteral("125"));
  EXPECT_EQ(own.own().thresholds.at({"everyone-kneel-stretch"}), 125);
  EXPECT_EQ(own.undoStack()->count(), 1);
}

TEST_F(Rules, TheUsualThresholdIsOneButtonAway) {
  showRule("everyone-kneel-stretch");
  threshold().setValue(60);
  button(QStringLiteral("Back to the usual (3:00)")).click();
  EXPECT_TRUE(own.own().empty());
  EXPECT_EQ(threshold().value(), 180);
  for (const QPushButton* each : workspace.findChildren<QPushButton*>())
    EXPECT_FALSE(each->isVisibleTo(&workspace) && each->text().startsWith(QStringLiteral("Back to")));
}

TEST_F(Rules, APublishedThresholdIsToldAndNotToBeSet) {
  showRule("everyone-stretch-dose");
  EXPECT_TRUE(says(QStringLiteral("is published in the sources of the rule, so it stays as it is")));
  for (const QDoubleSpinBox* box : workspace.findChildren<QDoubleSpinBox*>())
    EXPECT_FALSE(box->isVisibleTo(&workspace));
}

TEST_F(Rules, ACopyIsOnesOwnAndTheRuleOfTheProgramStays) {
  showRule("everyone-kneel-stretch");
  const Rule before = *own.knowledge()->rules.findRule({"everyone-kneel-stretch"});
  button(QStringLiteral("Copy to my own")).click();
  ASSERT_EQ(own.own().rules.size(), 1U);
  EXPECT_EQ(workspace.current().rule, own.own().rules[0].id);
  EXPECT_EQ(*own.knowledge()->rules.findRule({"everyone-kneel-stretch"}), before);
  EXPECT_TRUE(says(QStringLiteral("A rule of your own")));
  EXPECT_TRUE(button(QStringLiteral("Done")).isEnabled());
}

TEST_F(Rules, AConditionIsCopiedWithItsRulesAsOneEntry) {
  workspace.show({{}, ConditionId{"ankle-sprain"}});
  const auto rulesFor = [this](const ConditionId& id) {
    const auto& rules = own.knowledge()->rules.rules;
    return std::count_if(rules.begin(), rules.end(), [&](const Rule& rule) { return rule.condition == id; });
  };
  const auto before = rulesFor({"ankle-sprain"});
  ASSERT_GT(before, 1);
  button(QStringLiteral("Copy with its rules")).click();
  ASSERT_EQ(own.own().conditions.size(), 1U);
  const ConditionId copy = own.own().conditions[0].id;
  EXPECT_EQ(workspace.current().condition, copy);
  EXPECT_EQ(rulesFor(copy), before);
  EXPECT_EQ(rulesFor({"ankle-sprain"}), before);
  EXPECT_EQ(own.own().conditions[0].name, "Ankle sprain, own");
  own.undoStack()->undo();
  EXPECT_TRUE(own.own().empty());
}

TEST_F(Rules, ANewRuleIsHeardOnlyOnceItCanBeKept) {
  workspace.show({{}, ConditionId{"pregnancy"}});
  button(QStringLiteral("New rule for it")).click();
  ASSERT_TRUE(workspace.firstUnkept());
  EXPECT_EQ(workspace.current(), *workspace.firstUnkept());
  EXPECT_TRUE(own.own().empty());
  EXPECT_TRUE(tree().currentIndex().data(Qt::AccessibleTextRole).toString().contains(QStringLiteral("not kept yet")));
  EXPECT_FALSE(button(QStringLiteral("Done")).isEnabled());
  auto& form = *workspace.findChild<RuleForm*>();
  EXPECT_EQ(form.draft().condition, ConditionId{"pregnancy"});
  EXPECT_EQ(form.draft().reviewed, testing::today());
}

TEST_F(Rules, WhatIsNotKeptYetIsStillThereAfterLookingElsewhere) {
  button(QStringLiteral("New rule")).click();
  button(QStringLiteral("New rule")).click();
  const RuleChoice second = workspace.current();
  showRule("everyone-kneel-stretch");
  EXPECT_TRUE(says(QStringLiteral("comes with the program")));
  EXPECT_TRUE(tree().has(second));
  workspace.show(second);
  EXPECT_EQ(workspace.current(), second);
  EXPECT_FALSE(button(QStringLiteral("Done")).isEnabled());
  button(QStringLiteral("Remove \u2026")).click();
  answer(QStringLiteral("Remove"));
  EXPECT_FALSE(tree().has(second));
  EXPECT_TRUE(workspace.firstUnkept()); // the first one
  workspace.dropUnkept();
  EXPECT_FALSE(workspace.firstUnkept());
}

TEST_F(Rules, ANewConditionIsKeptOnceItIsWrittenAndThenHasRules) {
  button(QStringLiteral("New condition")).click();
  const ConditionId id = *workspace.current().condition;
  EXPECT_TRUE(own.own().empty());
  QTest::keyClicks(&named<QLineEdit>(QStringLiteral("Name of the condition")), QStringLiteral("Zest is low"));
  QTest::keyClicks(&named<NoteField>(QStringLiteral("About the condition")), QStringLiteral("Slept badly."));
  ASSERT_EQ(own.own().conditions.size(), 1U);
  EXPECT_EQ(own.own().conditions[0].name, "Zest is low");
  EXPECT_EQ(workspace.current().condition, id);
  button(QStringLiteral("Done")).click();
  EXPECT_TRUE(says(QStringLiteral("Slept badly.")));
  button(QStringLiteral("Edit")).click();
  EXPECT_TRUE(named<QLineEdit>(QStringLiteral("Name of the condition")).hasFocus());
}

TEST_F(Rules, WhatIsBeingNamedStaysInSight) {
  button(QStringLiteral("New condition")).click();
  QTest::keyClicks(&named<QLineEdit>(QStringLiteral("Name of the condition")), QStringLiteral("Zest is low"));
  QApplication::processEvents();
  EXPECT_TRUE(tree().viewport()->rect().intersects(tree().visualRect(tree().currentIndex())));
  EXPECT_GT(tree().currentIndex().row(), 40); // among the others by its name
}

TEST_F(Rules, ACopyIsChangedInPlaceOfItsPage) {
  showRule("everyone-kneel-stretch");
  button(QStringLiteral("Copy to my own")).click();
  auto& why = named<NoteField>(QStringLiteral("Why"));
  why.setFocus();
  why.selectAll();
  QTest::keyClick(&why, Qt::Key_Backspace);
  EXPECT_TRUE(workspace.firstUnkept());
  EXPECT_FALSE(own.own().rules[0].why.empty());
  QTest::keyClicks(&why, QStringLiteral("Knees rest."));
  EXPECT_FALSE(workspace.firstUnkept());
  EXPECT_EQ(own.own().rules[0].why, "Knees rest.");
  button(QStringLiteral("Done")).click();
  EXPECT_TRUE(says(QStringLiteral("Knees rest.")));
}

TEST_F(Rules, ARuleIsRemovedAfterAQuestionAndComesBackByUndo) {
  showRule("everyone-kneel-stretch");
  button(QStringLiteral("Copy to my own")).click();
  const RuleChoice copy = workspace.current();
  button(QStringLiteral("Remove \u2026")).click();
  ASSERT_EQ(own.own().rules.size(), 1U); // not before it is answered
  answer(QStringLiteral("Cancel"));
  ASSERT_EQ(own.own().rules.size(), 1U);
  QTest::qWait(20); // the first question goes
  button(QStringLiteral("Remove \u2026")).click();
  answer(QStringLiteral("Remove"));
  EXPECT_TRUE(own.own().rules.empty());
  EXPECT_NE(workspace.current(), copy);
  own.undoStack()->undo();
  EXPECT_EQ(own.own().rules.size(), 1U);
}

TEST_F(Rules, TheQuestionNamesWhatGoesWithACondition) {
  const ConditionId tired = addCondition("Zest is low");
  Rule rule = *own.copyOf(RuleId{"everyone-kneel-stretch"});
  rule.condition = tired;
  ASSERT_TRUE(own.add(rule, QStringLiteral("Add")));
  Person person = people.people()[0];
  person.conditions.push_back({tired, {}, {}, {}});
  people.change(person, QStringLiteral("Change"));
  workspace.show({{}, tired});
  button(QStringLiteral("Remove \u2026")).click();
  EXPECT_TRUE(question().informativeText().contains(QStringLiteral("Kneeling")));
  EXPECT_TRUE(question().informativeText().contains(QStringLiteral("Rosa Amberley")));
  answer(QStringLiteral("Remove"));
  EXPECT_TRUE(own.own().empty());
  EXPECT_EQ(own.undoStack()->count(), 3);
}

TEST_F(Rules, AConditionOfOnesOwnWithoutRulesIsListedAndSaidToBeUnknownToTheScreening) {
  workspace.show({{}, addCondition("Zest is low")});
  EXPECT_TRUE(says(QStringLiteral("none yet: the screening says nothing about it")));
  EXPECT_TRUE(says(QStringLiteral("A condition of your own")));
}

TEST_F(Rules, WhatIsExportedIsImportedAgain) {
  QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("given.json"));
  addCondition("Zest is low");
  ASSERT_TRUE(own.setThreshold({"everyone-kneel-stretch"}, 60, QStringLiteral("Set")));
  const OwnKnowledge before = own.own();
  workspace.exportTo(screeningOf(before), file);
  EXPECT_TRUE(says(QStringLiteral("Saved")));
  own.load({});
  workspace.importFrom(file);
  EXPECT_EQ(own.own(), before);
  EXPECT_TRUE(says(QStringLiteral("Imported: ")));
  EXPECT_EQ(workspace.current().condition, before.conditions[0].id);
  workspace.importFrom(folder.filePath(QStringLiteral("missing.json")));
  EXPECT_TRUE(says(QStringLiteral("Nothing was imported")));
}

TEST_F(Rules, EachFilterOfTheBarIsAskedForAndTakenAway) {
  auto& bar = *workspace.findChild<RuleFilterBar*>();
  const auto tick = [&](const char* button, const char* words) {
    for (const QToolButton* each : bar.findChildren<QToolButton*>())
      if (each->menu() && each->toolTip().startsWith(QString::fromLatin1(button)))
        for (QAction* action : each->menu()->actions())
          if (action->text() == QString::fromLatin1(words))
            return action->trigger();
    FAIL() << words;
  };
  tick("Level", "Ask first");
  tick("Where", "On the way in");
  tick("Rests on", "Common practice");
  RuleFilter asked;
  asked.levels = {Level::askFirst};
  asked.scopes = {Scope::way};
  asked.strengths = {Strength::practice};
  EXPECT_EQ(bar.filter(), asked);
  for (const char* words :
       {"Disputed", "My own", "A threshold I may change", "A threshold I have changed", "Concerns people on file"})
    tick("Only", words);
  asked.contested = asked.own = asked.open = asked.changed = asked.onFile = true;
  EXPECT_EQ(bar.filter(), asked);
  EXPECT_TRUE(says(QStringLiteral("No rule is found by these words and filters.")));
  for (QToolButton* each : bar.findChildren<QToolButton*>())
    if (each->text() == QStringLiteral("Clear"))
      each->click();
  EXPECT_EQ(bar.filter(), RuleFilter{});
  EXPECT_FALSE(says(QStringLiteral("No rule is found by these words and filters.")));
}

TEST_F(Rules, FiltersThatHideARuleAreTakenAwayWhenItIsToBeShown) {
  search().setText(QStringLiteral("epilepsy"));
  showRule("everyone-kneel-stretch");
  EXPECT_EQ(workspace.current().rule, RuleId{"everyone-kneel-stretch"});
  EXPECT_TRUE(search().text().isEmpty());
}

TEST_F(Rules, SearchingLeavesWhatIsLookedAt) {
  showRule("everyone-kneel-stretch");
  search().setText(QStringLiteral("epilepsy"));
  EXPECT_EQ(workspace.current().rule, RuleId{"everyone-kneel-stretch"});
  search().clear();
  EXPECT_EQ(tree().current()->rule, RuleId{"everyone-kneel-stretch"});
}

TEST_F(Rules, NothingIsChangedWhereTheStudiosKnowledgeCannotBeRead) {
  Error error;
  error.code = ErrorCode::notJson;
  error.file = "knowledge.json";
  own.lock({error});
  showRule("everyone-kneel-stretch");
  EXPECT_FALSE(button(QStringLiteral("Copy to my own")).isEnabled());
  EXPECT_FALSE(threshold().isEnabled());
  EXPECT_TRUE(says(QStringLiteral("cannot be read")));
}

TEST_F(Rules, NothingIsCut) {
  for (const QSize& size : {QSize(1024, 560), QSize(1280, 730), QSize(1600, 1000)}) {
    testing::layOut(workspace, size);
    for (const char* rule : {"pregnancy-supine-stretch", "disc-leg-signs-unknown", "everyone-effort-after-fold"}) {
      showRule(rule);
      testing::layOut(workspace, size);
      EXPECT_EQ(testing::cutParts(workspace), QStringList()) << size.width() << ' ' << rule;
    }
    workspace.show({});
    EXPECT_EQ(testing::cutParts(workspace), QStringList()) << size.width();
  }
}

} // namespace
} // namespace matwright
