// What the terrain tells those who listen. A listener needs a true display: the offscreen platform has none.
#include "tests/ui/timeline/Terrains.h"

#include <QAccessible>
#include <QProcess>

namespace matwright {
namespace {

struct Told {
  QAccessible::Event what;
  QString name;
};
std::vector<Told> told;

void hear(QAccessibleEvent* event) {
  QAccessibleInterface* about = event->accessibleInterface();
  told.push_back({event->type(), about ? about->text(QAccessible::Name) : QString()});
}

struct Announce : testing::Test {
  OpenTerrain open;
  QAccessibleInterface* list = nullptr;

  Announce() {
    // The bridge to assistive technology comes up when its service is asked for, as a screen reader does.
    QProcess::execute(QStringLiteral("dbus-send"),
                      {QStringLiteral("--session"), QStringLiteral("--print-reply=literal"),
                       QStringLiteral("--dest=org.a11y.Bus"), QStringLiteral("/org/a11y/bus"),
                       QStringLiteral("org.a11y.Bus.GetAddress")});
    EXPECT_TRUE(QTest::qWaitFor([] { return QAccessible::isActive(); }, 15000));
    open.fill();
    list = QAccessible::queryAccessibleInterface(open.view.get());
    for (int i = 0; i < list->childCount(); ++i)
      list->child(i);
    QAccessible::installUpdateHandler(hear);
    told.clear();
  }
  ~Announce() override { QAccessible::installUpdateHandler(nullptr); }
  static int count(QAccessible::Event what) {
    int found = 0;
    for (const Told& each : told)
      found += each.what == what;
    return found;
  }
};

TEST_F(Announce, SelectionAndItsEnd) {
  open.selection.set({StepId{2}, StepId{3}}, StepId{3});
  EXPECT_EQ(count(QAccessible::SelectionAdd), 2);
  told.clear();
  open.selection.select(StepId{3});
  EXPECT_EQ(count(QAccessible::SelectionRemove), 1);
  EXPECT_EQ(count(QAccessible::SelectionAdd), 0);
}

TEST_F(Announce, TheFocusedStep) {
  open.view->activateWindow();
  open.view->setFocus();
  ASSERT_TRUE(QTest::qWaitForWindowActive(open.view.get()));
  told.clear();
  QTest::keyClick(open.view.get(), Qt::Key_Right);
  bool said = false;
  for (const Told& each : told)
    said = said || (each.what == QAccessible::Focus && each.name.startsWith(QStringLiteral("The hundred, step 1")));
  EXPECT_TRUE(said);
}

TEST_F(Announce, ComingAndGoing) {
  open.commands.insertMovement(MovementId{"saw"}, {0, 0});
  EXPECT_EQ(count(QAccessible::ObjectCreated), 1);
  EXPECT_EQ(list->childCount(), 6);
  told.clear();
  ASSERT_TRUE(open.document.perform(RemoveSteps{{StepId{2}, StepId{3}}}, QString()));
  EXPECT_EQ(count(QAccessible::ObjectDestroyed), 2);
  EXPECT_EQ(list->childCount(), 4);
  told.clear();
  ASSERT_TRUE(open.document.perform(SetDose{StepId{1}, Dose{7, DoseUnit::breaths}}, QString()));
  bool said = false;
  for (const Told& each : told)
    said = said || (each.what == QAccessible::NameChanged && each.name.contains(QStringLiteral("7 breaths")));
  EXPECT_TRUE(said);
}

} // namespace
} // namespace matwright
