#include "core/store/Store.h"
#include "tests/support/PanelFixture.h"
#include "ui/compose/RecentClasses.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace matwright {
namespace {

struct RecentClassesTest : ::testing::Test {
  QTemporaryDir studio;

  RecentClassesTest() { QDir(studio.path()).mkdir(QStringLiteral("classes")); }
  QString fileOf(const char* name) const {
    return studio.filePath(QStringLiteral("classes/%1.json").arg(QLatin1String(name)));
  }
  void put(const char* name, const ClassPlan& plan) {
    QFile file(fileOf(name));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString(classText(plan)));
  }
  static ClassPlan classOn(int year, const char* name) {
    ClassPlan plan = testing::twentySteps();
    plan.name = name;
    plan.date = Date{std::chrono::year{year}, std::chrono::month{5}, std::chrono::day{4}};
    return plan;
  }
};

TEST_F(RecentClassesTest, TheLastOneComesFirst) {
  put("a", classOn(2024, "Old"));
  put("b", classOn(2026, "New"));
  put("c", classOn(2025, "Middle"));
  const auto classes = classesOnFile(studio.path(), {});
  ASSERT_EQ(classes.size(), 3u);
  EXPECT_EQ(classes[0].recent.name, "New");
  EXPECT_EQ(classes[1].recent.name, "Middle");
  EXPECT_EQ(classes[2].recent.name, "Old");
  EXPECT_EQ(classes[0].recent, recentClass(classOn(2026, "New")));
}

TEST_F(RecentClassesTest, TheOpenOneAndWhatCannotBeReadAreLeftOut) {
  put("a", classOn(2024, "Open"));
  put("b", emptyClass("Without steps"));
  QFile broken(fileOf("c"));
  ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
  broken.write("{");
  broken.close();
  EXPECT_EQ(classesOnFile(studio.path(), {}).size(), 1u);
  EXPECT_TRUE(classesOnFile(studio.path(), fileOf("a")).empty());
  EXPECT_TRUE(classesOnFile({}, {}).empty());
}

} // namespace
} // namespace matwright
