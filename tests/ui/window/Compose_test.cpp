#include "tests/support/Finding.h"
#include "tests/ui/window/Windows.h"
#include "ui/compose/ComposeDialog.h"
#include "ui/compose/WishesForm.h"

#include <QAbstractButton>
#include <QMessageBox>
#include <gtest/gtest.h>

namespace matwright {
namespace {

struct Composing : WindowTest {
  // Opened by an entry of the menu, for a short class.
  ComposeDialog& dialog(const char* entry) {
    action(QString::fromUtf8(entry))->trigger();
    auto* opened = window->findChild<ComposeDialog*>();
    opened->composition().setEvaluations(15'000);
    if (!opened->composition().completes()) {
      ClassWishes wishes = opened->form().wishes();
      wishes.length = minutes(15);
      wishes.sections = usualSections(wishes.length);
      opened->form().show(wishes);
    }
    opened->hide();
    opened->show();
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return !opened->composition().isSearching() && opened->composition().last(); }, 120000));
    return *opened;
  }
  void answer(const QString& text) {
    QMessageBox* box = nullptr;
    ASSERT_TRUE(QTest::qWaitFor([&] { return (box = window->findChild<QMessageBox*>()) && box->isVisible(); }));
    for (QAbstractButton* button : box->buttons())
      if (QString plain = button->text(); plain.remove(QLatin1Char('&')) == text)
        return button->click();
    ADD_FAILURE() << "no button " << text.toStdString();
  }
};

TEST_F(Composing, AComposedClassIsANewOneThatIsNotSaved) {
  ComposeDialog& composing = dialog("Compose a Class");
  const ClassPlan composed = composing.composition().document().plan();
  testing::buttonIn(composing, QStringLiteral("&Use This Class")).click();
  EXPECT_FALSE(composing.isVisible());
  EXPECT_EQ(document().plan(), composed);
  EXPECT_TRUE(window->files().classFile().isEmpty());
  EXPECT_TRUE(window->files().isModified()) << "it would be lost";
}

TEST_F(Composing, TheOpenClassIsAskedAboutFirst) {
  document().perform(RenameClass{"Changed"}, QStringLiteral("Rename"));
  ComposeDialog& composing = dialog("Compose a Class");
  testing::buttonIn(composing, QStringLiteral("&Use This Class")).click();
  answer(QStringLiteral("Cancel"));
  EXPECT_EQ(document().plan().name, "Changed");
  EXPECT_TRUE(composing.isVisible()) << "what was composed is still there";
}

TEST_F(Composing, AnEmptyClassOffersIt) {
  window->files().startNew(emptyClass("Empty"));
  testing::buttonIn(*window, QStringLiteral("Compose a Class from Wishes\u2026")).click();
  auto* composing = window->findChild<ComposeDialog*>();
  ASSERT_TRUE(composing);
  EXPECT_TRUE(composing->isVisible());
  EXPECT_FALSE(composing->composition().completes());
}

TEST_F(Composing, CompletingIsForTheClassWorkspace) {
  action(QStringLiteral("People"))->trigger();
  EXPECT_FALSE(action(QStringLiteral("Complete this Class"))->isEnabled());
  action(QStringLiteral("Class"))->trigger();
  EXPECT_TRUE(action(QStringLiteral("Complete this Class"))->isEnabled());
}

TEST_F(Composing, TheWindowMayGoWhileItSearches) {
  action(QStringLiteral("Compose a Class"))->trigger();
  EXPECT_TRUE(window->findChild<ComposeDialog*>()->composition().isSearching());
  window.reset();
}

} // namespace
} // namespace matwright
