#include "tests/ui/window/Windows.h"
#include "ui/people/PeopleWorkspace.h"
#include "ui/print/PersonSheetPreview.h"

#include <QAction>
#include <QPushButton>
#include <algorithm>

namespace matwright {
namespace {

const QString kEntry = QStringLiteral("Person\u2019s Sheet");

struct SheetWindow : WindowTest {
  QPushButton& sheetButton() const {
    for (QPushButton* button : window->findChildren<QPushButton*>())
      if (button->text().startsWith(QStringLiteral("Sheet for")))
        return *button;
    throw std::runtime_error("no button for the sheet");
  }
};

TEST_F(SheetWindow, TheSheetOfAPersonIsOpenedWhereThePeopleAre) {
  EXPECT_FALSE(action(kEntry)->isEnabled());
  action(QStringLiteral("People"))->trigger();
  EXPECT_TRUE(action(kEntry)->isEnabled());
  action(kEntry)->trigger();
  const auto* sheet = window->findChild<PersonSheetPreview*>();
  ASSERT_TRUE(sheet && sheet->isVisible());
  const Person& first = window->people().people().front();
  EXPECT_TRUE(sheet->sheet().title.contains(QString::fromStdString(first.initials)));
  action(QStringLiteral("Movements"))->trigger();
  EXPECT_FALSE(action(kEntry)->isEnabled());
}

TEST_F(SheetWindow, TheSheetFollowsThePersonTheClassAndTheKnowledge) {
  action(QStringLiteral("People"))->trigger();
  const PersonId imre{"imre"};
  window->findChild<PeopleWorkspace*>()->showPerson(imre);
  sheetButton().click();
  const auto* sheet = window->findChild<PersonSheetPreview*>();
  ASSERT_TRUE(sheet && sheet->isVisible());
  const auto says = [&](const char* words) { return sheet->sheet().html.contains(QString::fromUtf8(words)); };
  EXPECT_TRUE(says("with the class")) << "Imre comes to the class that is open";
  EXPECT_FALSE(says("for the mountains"));
  Person changed = *window->people().find(imre);
  changed.wishes = "for the mountains";
  window->people().change(changed, {});
  EXPECT_TRUE(QTest::qWaitFor([&] { return says("for the mountains"); }));
  (void)document().perform(SetPeople{{}}, {});
  EXPECT_TRUE(QTest::qWaitFor([&] { return !says("with the class"); }));
  OwnKnowledge own;
  Rule& rule = own.rules.emplace_back(*std::find_if(document().knowledge().rules.rules.begin(),
                                                    document().knowledge().rules.rules.end(),
                                                    [](const Rule& each) { return each.id.value == "disc-flexion"; }));
  rule.id.value = "own-bending";
  rule.why = "Bending was too much last week.";
  ASSERT_TRUE(window->knowledge().change(own, {}));
  EXPECT_TRUE(QTest::qWaitFor([&] { return says("Bending was too much last week."); }));
  window->people().remove(imre, {});
  EXPECT_TRUE(QTest::qWaitFor([&] { return !sheet->isVisible(); }));
}

} // namespace
} // namespace matwright
