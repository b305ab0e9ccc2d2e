#include "ui/settings/Settings.h"
#include "ui/settings/SettingsDialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace matwright {
namespace {

struct SettingsTest : testing::Test {
  QTemporaryDir folder;
  void SetUp() override {
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder.path());
  }
  QString file(const QString& name) {
    QFile made(folder.filePath(name));
    EXPECT_TRUE(made.open(QIODevice::WriteOnly));
    return made.fileName();
  }
};

TEST_F(SettingsTest, AreKeptForTheNextTime) {
  {
    Settings settings;
    settings.setAppearance(Appearance::dark);
    settings.setPaper(Paper::letter);
    settings.setNamesOnCard(true);
    settings.setReducedMotion(true);
    settings.setBodyTable(BodyTable::deLevaMen);
    settings.setBodySize({.mass = 82, .stature = 1.68});
    settings.setLayout(QStringLiteral("window"), "state");
  }
  const Settings again;
  EXPECT_EQ(again.appearance(), Appearance::dark);
  EXPECT_EQ(again.paper(), Paper::letter);
  EXPECT_TRUE(again.namesOnCard());
  EXPECT_TRUE(again.reducedMotion());
  EXPECT_EQ(again.bodyTable(), BodyTable::deLevaMen);
  EXPECT_EQ(again.bodySize(), (BodySize{.mass = 82, .stature = 1.68}));
  EXPECT_EQ(again.layout(QStringLiteral("window")), QByteArray("state"));
}

TEST_F(SettingsTest, PeopleArePrintedByInitialsUnlessAsked) { EXPECT_FALSE(Settings().namesOnCard()); }

// The body of the worked examples in D. A. Winter's book is near it; which one is our choice.
TEST_F(SettingsTest, LoadsAreToldForOneUsualBodyUnlessAsked) {
  EXPECT_EQ(Settings().bodyTable(), BodyTable::winter);
  EXPECT_EQ(Settings().bodySize(), (BodySize{.mass = 70, .stature = 1.75}));
}

TEST_F(SettingsTest, ABodyOutOfItsBoundsIsBroughtBackIntoThem) {
  QSettings written;
  written.setValue(QStringLiteral("loads/kilograms"), 7);
  written.setValue(QStringLiteral("loads/centimetres"), 900);
  written.setValue(QStringLiteral("loads/table"), QStringLiteral("nobody's"));
  written.sync();
  EXPECT_EQ(Settings().bodySize(), (BodySize{.mass = BodySize::kLeastMass, .stature = BodySize::kMostStature}));
  EXPECT_EQ(Settings().bodyTable(), BodyTable::winter);
}

TEST_F(SettingsTest, TheBodyOfLoadsIsChosenInTheDialogAndTakesEffectAtOnce) {
  Settings settings;
  SettingsDialog dialog(settings);
  QSignalSpy changed(&settings, &Settings::changed);
  auto* table = dialog.findChildren<QComboBox*>().value(2);
  ASSERT_TRUE(table);
  ASSERT_EQ(table->count(), 3);
  EXPECT_EQ(table->itemText(0), QStringLiteral("Winter (men and women alike)"));
  Q_EMIT table->activated(1);
  EXPECT_EQ(settings.bodyTable(), BodyTable::deLevaWomen);
  const auto boxes = dialog.findChildren<QSpinBox*>();
  ASSERT_EQ(boxes.size(), 2);
  EXPECT_EQ(boxes[0]->minimum(), 120);
  EXPECT_EQ(boxes[0]->maximum(), 220);
  EXPECT_EQ(boxes[1]->minimum(), 30);
  EXPECT_EQ(boxes[1]->maximum(), 200);
  boxes[0]->setValue(160);
  boxes[1]->setValue(55);
  EXPECT_EQ(settings.bodySize(), (BodySize{.mass = 55, .stature = 1.60}));
  EXPECT_EQ(changed.count(), 3);
}

TEST_F(SettingsTest, RecentClassesComeLatestFirstOnceEachAndOnlyWhileTheyExist) {
  Settings settings;
  const QString one = file(QStringLiteral("one.json"));
  const QString two = file(QStringLiteral("two.json"));
  settings.noteRecent(one);
  settings.noteRecent(two);
  settings.noteRecent(one);
  EXPECT_EQ(settings.recentClasses(), (QStringList{one, two}));
  QFile::remove(one);
  EXPECT_EQ(settings.lastClass(), two);
  settings.clearRecent();
  EXPECT_TRUE(settings.recentClasses().isEmpty());
}

TEST_F(SettingsTest, OnlySoManyRecentClassesAreKept) {
  Settings settings;
  for (int i = 0; i < Settings::kMostRecent + 4; ++i)
    settings.noteRecent(file(QStringLiteral("class%1.json").arg(i)));
  EXPECT_EQ(settings.recentClasses().size(), Settings::kMostRecent);
}

TEST_F(SettingsTest, TheDialogShowsAndChangesThem) {
  Settings settings;
  settings.setAppearance(Appearance::dark);
  SettingsDialog dialog(settings);
  auto* appearance = dialog.findChildren<QComboBox*>().value(0);
  ASSERT_TRUE(appearance);
  EXPECT_EQ(appearance->currentIndex(), static_cast<int>(Appearance::dark));
  QSignalSpy changed(&settings, &Settings::changed);
  for (QCheckBox* box : dialog.findChildren<QCheckBox*>())
    box->click();
  EXPECT_TRUE(settings.namesOnCard());
  EXPECT_TRUE(settings.reducedMotion());
  EXPECT_EQ(changed.count(), 2);
}

} // namespace
} // namespace matwright
