#include "ui/settings/Settings.h"
#include "ui/settings/SettingsDialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QSignalSpy>
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
    settings.setLayout(QStringLiteral("window"), "state");
  }
  const Settings again;
  EXPECT_EQ(again.appearance(), Appearance::dark);
  EXPECT_EQ(again.paper(), Paper::letter);
  EXPECT_TRUE(again.namesOnCard());
  EXPECT_TRUE(again.reducedMotion());
  EXPECT_EQ(again.layout(QStringLiteral("window")), QByteArray("state"));
}

TEST_F(SettingsTest, PeopleArePrintedByInitialsUnlessAsked) { EXPECT_FALSE(Settings().namesOnCard()); }

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
