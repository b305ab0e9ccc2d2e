// A whole window over a copy of the demo studio, for tests.
#pragma once

#include "tests/support/RealKnowledge.h"
#include "ui/window/MainWindow.h"

#include <QDir>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

namespace matwright {

inline Date windowDay() { return Date{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{26}}; }

struct WindowTest : ::testing::Test {
  QTemporaryDir folder;
  std::unique_ptr<Settings> settings;
  std::unique_ptr<MainWindow> window;

  void SetUp() override {
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder.filePath(QStringLiteral("settings")));
    open({});
  }
  void open(const QString& file) {
    window.reset();
    settings = std::make_unique<Settings>();
    window = std::make_unique<MainWindow>(
        std::shared_ptr<const Knowledge>(std::shared_ptr<const Knowledge>{}, &test::realKnowledge()), *settings,
        WindowPlaces{QStringLiteral(MATWRIGHT_SOURCE_DIR "/resources/demo"), folder.filePath(QStringLiteral("studio")),
                     folder.filePath(QStringLiteral("recovery"))},
        windowDay);
    window->show();
    window->start(file);
    EXPECT_TRUE(QTest::qWaitForWindowExposed(window.get()));
  }

  PlanDocument& document() { return window->document(); }
  std::size_t steps() { return countSteps(document().plan()); }
  QString studioFile(const char* name) const {
    return folder.filePath(QStringLiteral("studio/classes/") + QLatin1String(name));
  }
  // The action of a menu by its text without the ampersand and the dots.
  QAction* action(const QString& text) const {
    for (QAction* candidate : window->findChildren<QAction*>())
      if (QString plain = candidate->text(); plain.remove(QLatin1Char('&')).remove(QStringLiteral("\u2026")) == text)
        return candidate;
    ADD_FAILURE() << "no action " << text.toStdString();
    return nullptr;
  }
};

} // namespace matwright
