#include "tests/support/PanelFixture.h"
#include "ui/controls/DateField.h"
#include "ui/inspector/InspectorPanel.h"

#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using testing::Panels;

struct ClassPageTest : ::testing::Test, Panels {
  ClassPageTest() : panel(document, selection, commands) {
    panel.resize(300, 700);
    panel.show();
  }

  template <class Widget> Widget& named(const QString& name) {
    QApplication::processEvents(); // what has just been made is shown then
    for (Widget* widget : panel.findChildren<Widget*>())
      if (widget->accessibleName() == name && widget->isVisibleTo(&panel))
        return *widget;
    ADD_FAILURE() << "no control " << name.toStdString();
    std::abort();
  }

  InspectorPanel panel;
};

TEST_F(ClassPageTest, TypingANameIsOneEntry) {
  auto& name = named<QLineEdit>(QStringLiteral("Name of the class"));
  name.setFocus();
  name.clear();
  EXPECT_EQ(document.plan().name, "Thursday mixed level"); // never without a name
  QTest::keyClicks(&name, QStringLiteral("Friday slow"));
  EXPECT_EQ(document.plan().name, "Friday slow");
  EXPECT_EQ(name.text(), QStringLiteral("Friday slow"));
  EXPECT_EQ(document.undoStack()->count(), 1);
  document.undoStack()->undo();
  EXPECT_EQ(name.text(), QStringLiteral("Thursday mixed level"));
}

TEST_F(ClassPageTest, SetsLengthAndPace) {
  named<QSpinBox>(QStringLiteral("Length")).setValue(45);
  EXPECT_EQ(document.plan().target, minutes(45));
  named<QDoubleSpinBox>(QStringLiteral("Moving")).setValue(1.5);
  named<QSpinBox>(QStringLiteral("Words")).setValue(120);
  named<QSpinBox>(QStringLiteral("Settling")).setValue(4);
  EXPECT_EQ(document.plan().pace, (Pace{1.5, 120, Seconds(4)}));
  EXPECT_EQ(document.undoStack()->count(), 4);
}

TEST_F(ClassPageTest, ADateIsSetAndTakenAway) {
  for (QPushButton* button : panel.findChildren<QPushButton*>())
    if (button->accessibleName().startsWith(QStringLiteral("Date of the class")))
      button->click();
  EXPECT_EQ(document.plan().date, testing::today());
  named<QDateEdit>(QStringLiteral("Date of the class")).setDate(QDate(2026, 12, 3));
  EXPECT_EQ(document.plan().date, dateFromIso("2026-12-03"));
  EXPECT_EQ(document.day(), *dateFromIso("2026-12-03"));
  document.undoStack()->undo();
  EXPECT_EQ(document.plan().date, std::nullopt);
}

} // namespace
} // namespace matwright
