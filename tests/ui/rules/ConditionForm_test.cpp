#include "tests/support/Finding.h"
#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/controls/Fields.h"
#include "ui/rules/ConditionForm.h"
#include "ui/rules/ConditionQuestion.h"

#include <QComboBox>
#include <QTest>
#include <QToolButton>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

struct ConditionFields : ::testing::Test {
  ConditionFields() : form(document) {
    OwnKnowledge own;
    own.conditions.resize(1);
    own.conditions[0].id = {"own-knee"};
    own.conditions[0].name = "Cranky knee";
    own.conditions[0].about = "A knee that has its days.";
    document.load(own);
    form.setCondition({"own-knee"});
    testing::layOut(form, {900, 690});
    form.activateWindow();
  }

  template <class Widget> Widget& named(const QString& name) { return testing::namedIn<Widget>(form, name); }
  bool says(const QString& words) const { return testing::saysIn(form, words); }
  const Condition& kept() const { return document.own().conditions.at(0); }
  template <class Field> void retype(Field& field, const QString& words) {
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, words);
  }
  QLineEdit& question(int at) {
    int seen = 0;
    for (QLineEdit* field : form.findChildren<QLineEdit*>())
      if (field->accessibleName() == QStringLiteral("Question: what is asked") && field->isVisibleTo(&form) &&
          seen++ == at)
        return *field;
    ADD_FAILURE() << "no question " << at;
    std::abort();
  }
  void addQuestion(const QString& words) {
    testing::buttonIn(form, QStringLiteral("Add a question")).click();
    QTest::keyClicks(&question(static_cast<int>(form.draft().qualifiers.size()) - 1), words);
  }

  KnowledgeDocument document{testing::knowledge()};
  ConditionForm form;
};

TEST_F(ConditionFields, NameAndMeaningAreWrittenAsOneEntryEach) {
  retype(named<QLineEdit>(QStringLiteral("Name of the condition")), QStringLiteral("Grumpy knee"));
  EXPECT_EQ(kept().name, "Grumpy knee");
  EXPECT_EQ(kept().id, ConditionId{"own-knee"});
  retype(named<NoteField>(QStringLiteral("About the condition")), QStringLiteral("Has its days."));
  EXPECT_EQ(kept().about, "Has its days.");
  EXPECT_EQ(document.undoStack()->count(), 2);
  document.undoStack()->undo();
  document.undoStack()->undo();
  EXPECT_EQ(named<QLineEdit>(QStringLiteral("Name of the condition")).text(), QStringLiteral("Cranky knee"));
  EXPECT_TRUE(says(QStringLiteral("No rule asks for it yet")));
  EXPECT_EQ(testing::cutParts(form), QStringList());
}

// The shape is that of the ICD-10 of the World Health Organization: a letter, two characters, and up to four behind a
// point.
TEST_F(ConditionFields, CodesAreReadAsTheyAreTypedAndTheirShapeIsLookedAt) {
  auto& codes = named<QLineEdit>(QStringLiteral("ICD-10 codes"));
  QTest::keyClicks(&codes, QStringLiteral("m54.5, G90.a Z34"));
  EXPECT_THAT(kept().icd10, ElementsAre("M54.5", "G90.A", "Z34"));
  EXPECT_FALSE(says(QStringLiteral("is not written as a code")));
  QTest::keyClicks(&codes, QStringLiteral(", knee"));
  EXPECT_TRUE(says(QStringLiteral("\"KNEE\" is not written as a code")));
  for (const char* good : {"M81", "M54.5", "S83.20", "C7A", "G90.A", "S72.001A"})
    EXPECT_TRUE(isCodeShaped(good)) << good;
  for (const char* odd : {"M5", "54.5", "M54.", "M54.12345", "M54,5", "MM4"})
    EXPECT_FALSE(isCodeShaped(odd)) << odd;
}

TEST_F(ConditionFields, AQuestionGetsItsIdFromItsNameAndKeepsIt) {
  addQuestion(QStringLiteral("Swollen today"));
  ASSERT_THAT(kept().qualifiers, SizeIs(1));
  EXPECT_EQ(kept().qualifiers[0].id, "swollen-today");
  EXPECT_EQ(kept().qualifiers[0].kind, QualifierKind::flag);
  QTest::keyClick(&question(0), Qt::Key_Return);
  retype(question(0), QStringLiteral("Warm today"));
  EXPECT_EQ(kept().qualifiers[0].name, "Warm today");
  EXPECT_EQ(kept().qualifiers[0].id, "swollen-today");
  addQuestion(QStringLiteral("Swollen, today!"));
  EXPECT_EQ(kept().qualifiers[1].id, "swollen-today-2");
}

TEST_F(ConditionFields, EachKindOfAnswerIsExplained) {
  addQuestion(QStringLiteral("Since when"));
  auto& kind = named<QComboBox>(QStringLiteral("How it is answered: Since when"));
  kind.setCurrentIndex(static_cast<int>(QualifierKind::weeksSince));
  EXPECT_EQ(kept().qualifiers[0].kind, QualifierKind::weeksSince);
  EXPECT_TRUE(says(QStringLiteral("Weeks are counted from it")));
  kind.setCurrentIndex(static_cast<int>(QualifierKind::pregnancyWeek));
  EXPECT_TRUE(says(QStringLiteral("The due date of a pregnancy")));
}

TEST_F(ConditionFields, ChoicesAreAnOrderedListWithIdsOfTheirOwn) {
  addQuestion(QStringLiteral("How it is now"));
  named<QComboBox>(QStringLiteral("How it is answered: How it is now"))
      .setCurrentIndex(static_cast<int>(QualifierKind::choice));
  EXPECT_TRUE(form.hasUnkept({"own-knee"})) << "a list without choices";
  EXPECT_TRUE(says(QStringLiteral("Question 1: Something has to stand here.")));
  const auto addChoice = [&](const QString& words) {
    testing::buttonIn(form, QStringLiteral("Add a choice")).click();
    const auto count = form.draft().qualifiers[0].choices.size();
    QTest::keyClicks(&named<QLineEdit>(QStringLiteral("Choice %1").arg(count)), words);
  };
  addChoice(QStringLiteral("Calm"));
  addChoice(QStringLiteral("Acute"));
  EXPECT_FALSE(form.hasUnkept({"own-knee"}));
  EXPECT_THAT(kept().qualifiers[0].choices, ElementsAre(Choice{"calm", "Calm"}, Choice{"acute", "Acute"}));
  named<QToolButton>(QStringLiteral("Move up choice 2")).click();
  EXPECT_THAT(kept().qualifiers[0].choices, ElementsAre(Choice{"acute", "Acute"}, Choice{"calm", "Calm"}));
  retype(named<QLineEdit>(QStringLiteral("Choice 1")), QStringLiteral("Flared"));
  EXPECT_EQ(kept().qualifiers[0].choices[0], (Choice{"acute", "Flared"}));
  named<QToolButton>(QStringLiteral("Take away choice 2")).click();
  EXPECT_THAT(kept().qualifiers[0].choices, SizeIs(1));
  EXPECT_EQ(testing::cutParts(form), QStringList());
  document.undoStack()->undo();
  EXPECT_EQ(named<QLineEdit>(QStringLiteral("Choice 2")).text(), QStringLiteral("Calm"));
}

TEST_F(ConditionFields, QuestionsMoveAndGo) {
  addQuestion(QStringLiteral("First"));
  addQuestion(QStringLiteral("Second"));
  named<QToolButton>(QStringLiteral("Move up the question: Second")).click();
  EXPECT_EQ(kept().qualifiers[0].id, "second");
  named<QToolButton>(QStringLiteral("Take away the question: First")).click();
  ASSERT_THAT(kept().qualifiers, SizeIs(1));
  EXPECT_EQ(kept().qualifiers[0].name, "Second");
}

TEST_F(ConditionFields, AQuestionThatARuleAsksStaysAndTheRuleIsNamed) {
  addQuestion(QStringLiteral("Swollen"));
  Rule rule;
  rule.condition = ConditionId{"own-knee"};
  rule.when = {{"swollen", {}, {}, {}, true, true}};
  rule.scope = Scope::wholeClass;
  rule.why = "It may be too much.";
  rule.instead = "ask before class";
  rule.strength = Strength::practice;
  rule.reviewed = testing::today();
  ASSERT_TRUE(document.add(rule, QStringLiteral("Add")));
  named<QToolButton>(QStringLiteral("Take away the question: Swollen")).click();
  EXPECT_THAT(kept().qualifiers, SizeIs(1));
  EXPECT_THAT(form.draft().qualifiers, IsEmpty());
  EXPECT_TRUE(form.hasUnkept({"own-knee"}));
  EXPECT_TRUE(says(QStringLiteral("Your rule \"Ask before class\" would not fit any more")));
  form.dropUnkept();
  EXPECT_EQ(question(0).text(), QStringLiteral("Swollen"));
}

TEST_F(ConditionFields, ANameIsNeeded) {
  auto& name = named<QLineEdit>(QStringLiteral("Name of the condition"));
  name.setFocus();
  name.selectAll();
  QTest::keyClick(&name, Qt::Key_Delete);
  EXPECT_EQ(kept().name, "Cranky knee");
  EXPECT_TRUE(form.hasUnkept({"own-knee"}));
  EXPECT_TRUE(says(QStringLiteral("Not kept yet")));
  QTest::keyClicks(&name, QStringLiteral("Knee"));
  EXPECT_EQ(kept().name, "Knee");
  EXPECT_FALSE(form.hasUnkept({"own-knee"}));
}

} // namespace
} // namespace matwright
