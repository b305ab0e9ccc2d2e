#include "tests/support/PanelFixture.h"
#include "ui/controls/DateField.h"
#include "ui/inspector/ClassList.h"
#include "ui/inspector/InspectorPanel.h"

#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <algorithm>
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

TEST_F(ClassPageTest, SaysWhoComesWithConditionsWishesAndCautions) {
  std::vector<Person> roster = testing::sixPeople();
  roster[0].wishes = "Lift her <grandson>";
  document.setRoster(roster);
  const QString html = classListHtml(document, Qt::gray);
  for (const Person& person : roster)
    EXPECT_TRUE(html.contains(QString::fromStdString(person.name)));
  EXPECT_TRUE(html.contains(QStringLiteral("Wishes: Lift her &lt;grandson&gt;")));
  EXPECT_TRUE(html.contains(QStringLiteral("High blood pressure; Rotator-cuff shoulder pain")));
  const QString noor = html.mid(html.indexOf(QStringLiteral("Noor Hallam")));
  EXPECT_TRUE(noor.contains(QStringLiteral("no condition noted")));
  EXPECT_TRUE(noor.contains(QStringLiteral("no caution of their own, which is no clearance")));
  const Evaluation& evaluation = document.evaluation();
  const auto adapt = std::count_if(evaluation.cautions.begin(), evaluation.cautions.end(), [](const Caution& caution) {
    return caution.person == 0 && caution.level == Level::adapt;
  });
  ASSERT_GT(adapt, 0);
  EXPECT_TRUE(html.section(QStringLiteral("</p>"), 0, 0).contains(QStringLiteral("%1 adapt").arg(adapt)));
  const auto labels = panel.findChildren<QLabel*>();
  EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
    return label->isVisibleTo(label->window()) && label->text().contains(QStringLiteral("Wanda Ostrow"));
  }));
  (void)document.perform(SetPeople{{}}, {});
  EXPECT_TRUE(classListHtml(document, Qt::gray).isEmpty());
}

} // namespace
} // namespace matwright
