#include "tests/support/Finding.h"
#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "tests/support/RandomWishes.h"
#include "tests/support/Seeds.h"
#include "ui/compose/FormPart.h"
#include "ui/compose/WishesForm.h"
#include "ui/controls/Scrolled.h"

#include <QCheckBox>
#include <QLineEdit>
#include <QScrollArea>
#include <QSignalSpy>
#include <QSpinBox>
#include <QToolButton>
#include <gtest/gtest.h>

namespace matwright {
namespace {

struct WishesFormTest : ::testing::Test {
  WishesForm form;
  QSignalSpy changes{&form, &WishesForm::changed};

  WishesFormTest() {
    form.setKnowledge(*testing::knowledge());
    form.setPeople(*testing::knowledge(), testing::sixPeople());
  }
  QToolButton& word(const char* name) { return testing::namedIn<QToolButton>(form, QString::fromUtf8(name)); }
  void openAll() {
    for (FormPart* part : form.findChildren<FormPart*>())
      part->setOpen(true);
  }
};

TEST_F(WishesFormTest, ShowsAnyWishesAndGivesThemBack) {
  test::forEachSeed<test::Draw>(1, 60, [&](test::Draw& draw) {
    const ClassWishes wishes = test::randomWishes(draw, testing::knowledge()->catalogue, testing::sixPeople());
    form.show(wishes);
    EXPECT_EQ(form.wishes(), wishes);
  });
  EXPECT_EQ(changes.count(), 0);
}

TEST_F(WishesFormTest, TakesWhatIsTicked) {
  openAll();
  word("Regions: hips").click();
  word("What the spine does: side bend").click();
  word("Skills: balance").click();
  word("Props at hand: ring").click();
  word("How hard: Gentle").click();
  testing::namedIn<QSpinBox>(form, QStringLiteral("Length of the class")).setValue(35);
  const ClassWishes wishes = form.wishes();
  EXPECT_EQ(wishes.focus.regions, (EnumSet<Region>{Region::hips}));
  EXPECT_EQ(wishes.focus.spine, (EnumSet<SpineAction>{SpineAction::sideBend}));
  EXPECT_EQ(wishes.focus.skills, FeatureSet{Feature::balance});
  EXPECT_EQ(wishes.props, PropSet{Prop::ring});
  EXPECT_EQ(wishes.challenge, Challenge::gentle);
  EXPECT_EQ(wishes.length, minutes(35));
  EXPECT_EQ(changes.count(), 6);
  EXPECT_TRUE(testing::saysIn(form, QStringLiteral("No step is harder than 4 of 10")));
}

TEST_F(WishesFormTest, ALengthThatChangesTakesTheSectionsAlong) {
  ClassWishes wishes;
  wishes.sections = usualSections(wishes.length);
  form.show(wishes);
  testing::namedIn<QSpinBox>(form, QStringLiteral("Length of the class")).setValue(60);
  EXPECT_FALSE(faultIn(form.wishes()));
  EXPECT_EQ(form.wishes().length, minutes(60));
}

TEST_F(WishesFormTest, WhatIsFoldedSaysWhatIsInIt) {
  ClassWishes wishes;
  wishes.people = {testing::sixPeople().front().id};
  wishes.include = {MovementId{"swimming"}};
  form.show(wishes);
  EXPECT_TRUE(testing::saysIn(form, QStringLiteral("1 person")));
  EXPECT_TRUE(testing::saysIn(form, QStringLiteral("1 to include")));
}

TEST_F(WishesFormTest, ARecentClassThatIsOnFileIsTickedThere) {
  const RecentClass monday{"Monday", {MovementId{"swimming"}}};
  form.setClasses({{QStringLiteral("/monday.json"), monday, testing::today()},
                   {QStringLiteral("/other.json"), {"Other", {MovementId{"teaser"}}}, testing::today()}});
  ClassWishes wishes;
  wishes.recent = {monday, {"Long ago", {MovementId{"saw"}}}};
  form.show(wishes);
  EXPECT_EQ(form.wishes().recent, wishes.recent);
}

TEST_F(WishesFormTest, CompletingAClassLeavesItsNamesAlone) {
  form.setCompleting(true);
  EXPECT_TRUE(testing::namedIn<QLineEdit>(form, QStringLiteral("Name of section 1")).isReadOnly());
  for (QLineEdit* field : form.findChildren<QLineEdit*>())
    EXPECT_FALSE(field->accessibleName() == QStringLiteral("Name of the class") && field->isVisibleTo(&form));
}

TEST_F(WishesFormTest, NothingIsCutInANarrowForm) {
  ClassWishes wishes;
  wishes.sections = usualSections(wishes.length);
  wishes.include = {MovementId{"swimming"}, MovementId{"teaser"}};
  form.show(wishes);
  openAll();
  QScrollArea* area = scrolled(&form);
  testing::layOut(*area, {310, 3000});
  QApplication::processEvents();
  const QStringList cut = testing::cutParts(form);
  area->takeWidget();
  form.setParent(nullptr);
  delete area;
  EXPECT_TRUE(cut.isEmpty()) << cut.join(QStringLiteral("; ")).toStdString();
}

TEST_F(WishesFormTest, EveryFieldHasAName) {
  openAll();
  for (QWidget* field : form.findChildren<QWidget*>()) {
    const bool inside = qobject_cast<QAbstractSpinBox*>(field->parentWidget());
    if (field->focusPolicy() == Qt::NoFocus || !field->isVisibleTo(&form) || inside)
      continue;
    const auto* button = qobject_cast<QAbstractButton*>(field);
    EXPECT_FALSE(field->accessibleName().isEmpty() && (!button || button->text().isEmpty()))
        << field->metaObject()->className();
  }
}

} // namespace
} // namespace matwright
