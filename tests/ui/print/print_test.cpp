#include "tests/support/Finding.h"
#include "tests/support/PanelFixture.h"
#include "ui/paper/Pdf.h"
#include "ui/paper/TextPages.h"
#include "ui/print/CardPreview.h"
#include "ui/print/PaperBar.h"
#include "ui/print/TextPreview.h"
#include "ui/text/CautionText.h"
#include "ui/text/RedFlagText.h"
#include "ui/theme/Theme.h"

#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QScreen>
#include <QScrollBar>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBrowser>
#include <gtest/gtest.h>

namespace matwright {
namespace {

struct Printing : ::testing::Test, testing::Panels {
  void SetUp() override {
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder.filePath(QStringLiteral("settings")));
    settings = std::make_unique<Settings>();
    settings->setPaper(Paper::a4);
  }
  QString file() const { return folder.filePath(QStringLiteral("out.pdf")); }
  QByteArray written() const {
    QFile in(file());
    return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
  }

  QTemporaryDir folder;
  std::unique_ptr<Settings> settings;
};

TEST_F(Printing, ATextIsReadAndSaved) {
  TextPreview preview(*settings);
  preview.setSheet({QStringLiteral("Stop signs"), QStringLiteral("<h1>Signs</h1><p>Sudden pain.</p>"), {}});
  preview.show();
  const auto& browser = testing::namedIn<QTextBrowser>(preview, QStringLiteral("Stop signs"));
  EXPECT_TRUE(browser.toPlainText().contains(QStringLiteral("Sudden pain.")));
  EXPECT_EQ(preview.windowTitle(), QStringLiteral("Stop signs"));
  EXPECT_TRUE(preview.savePdf(file()));
  EXPECT_TRUE(written().startsWith("%PDF-"));
}

TEST_F(Printing, WhatCannotBeWrittenIsSaid) {
  TextPreview preview(*settings);
  preview.setSheet({QStringLiteral("Stop signs"), QStringLiteral("<p>x</p>"), {}});
  preview.show();
  EXPECT_FALSE(preview.savePdf(folder.filePath(QStringLiteral("no/such/folder/x.pdf"))));
  EXPECT_TRUE(testing::saysIn(preview, QStringLiteral("x.pdf")));
}

TEST_F(Printing, AskingForAPdfNamesTheFile) {
  TextPreview preview(*settings);
  preview.setSheet({QStringLiteral("Stop signs"), QStringLiteral("<p>x</p>"), {}});
  preview.show();
  testing::buttonIn(preview, QStringLiteral("Save as P&DF\u2026")).click();
  auto* dialog = preview.findChild<QFileDialog*>();
  ASSERT_TRUE(dialog);
  Q_EMIT dialog->fileSelected(file());
  EXPECT_TRUE(written().startsWith("%PDF-"));
  dialog->reject();
}

TEST_F(Printing, ThePaperIsRememberedForBoth) {
  TextPreview text(*settings);
  text.setSheet({QStringLiteral("Stop signs"), QStringLiteral("<p>x</p>"), {}});
  text.show();
  auto& paper = testing::namedIn<QComboBox>(text, QStringLiteral("Paper"));
  EXPECT_EQ(paper.currentIndex(), 0);
  ASSERT_TRUE(text.savePdf(file()));
  const QByteArray a4 = written();
  paper.setCurrentIndex(1);
  Q_EMIT paper.activated(1);
  EXPECT_EQ(settings->paper(), Paper::letter);
  ASSERT_TRUE(text.savePdf(file()));
  EXPECT_NE(written(), a4);
  CardPreview card(document, *settings);
  card.show();
  EXPECT_EQ(testing::namedIn<QComboBox>(card, QStringLiteral("Paper")).currentIndex(), 1);
}

TEST_F(Printing, TheTextFollowsTheTheme) {
  TextPreview preview(*settings);
  preview.setSheet({QStringLiteral("Stop signs"), QStringLiteral("<p class='soft'>soft</p>"), {}});
  preview.show();
  const auto& browser = testing::namedIn<QTextBrowser>(preview, QStringLiteral("Stop signs"));
  preview.setPalette(paletteOf(darkTheme()));
  EXPECT_TRUE(browser.document()->defaultStyleSheet().contains(darkTheme().inkSoft.name()));
  preview.setPalette(paletteOf(lightTheme()));
  EXPECT_TRUE(browser.document()->defaultStyleSheet().contains(lightTheme().inkSoft.name()));
}

TEST_F(Printing, WhatIsOpenedFitsOnTheScreen) {
  const QWidget window;
  const QSize room = window.screen()->availableSize();
  EXPECT_EQ(onScreen({300, 200}, window), QSize(300, 200));
  const QSize size = onScreen({300, 9000}, window);
  EXPECT_EQ(size.width(), 300);
  EXPECT_LT(size.height(), room.height());
  EXPECT_GT(size.height(), room.height() * 3 / 4);
}

TEST_F(Printing, RedFlagsAreReadWithoutScrollingAside) {
  TextPreview preview(*settings);
  preview.setSheet({redFlagTitle(), redFlagHtml(document.knowledge(), {}), {}});
  preview.show();
  const auto& browser = testing::namedIn<QTextBrowser>(preview, redFlagTitle());
  QCoreApplication::processEvents();
  for (int width = 493; width < 1000; width += 13) {
    preview.resize(width, 600);
    QCoreApplication::processEvents();
    EXPECT_FALSE(browser.horizontalScrollBar()->isVisible()) << width;
    // A width in percent may be rounded up.
    EXPECT_LE(browser.document()->size().width(), browser.viewport()->width() + 1) << width;
  }
}

TEST_F(Printing, RedFlagsTakeTwoSheetsAtMostWhomeverTheyConcern) {
  Person everything;
  for (const Condition& condition : document.knowledge().rules.conditions)
    everything.conditions.push_back({condition.id, {}, {}, {}});
  const std::vector<Person> nobody, somebody{everything};
  for (const auto* inClass : {&nobody, &somebody})
    for (const QSizeF paper : {kA4Millimetres, kLetterMillimetres})
      EXPECT_LE(
          TextPages({redFlagTitle(), redFlagHtml(document.knowledge(), *inClass), standingNotice()}, paper).count(), 2)
          << paper.height();
}

TEST_F(Printing, TheCardIsSavedOnOnePageOrTwo) {
  CardPreview card(document, *settings);
  ASSERT_TRUE(card.savePdf(file()));
  EXPECT_TRUE(written().startsWith("%PDF-"));
  EXPECT_TRUE(written().contains("/Count 1"));
  testing::namedIn<QComboBox>(card, QStringLiteral("Pages")).setCurrentIndex(1);
  ASSERT_TRUE(card.savePdf(file()));
  EXPECT_TRUE(written().contains("/Count 2"));
}

TEST_F(Printing, ACardThatIsOpenedAgainIsOfTheClassAsItIs) {
  CardPreview card(document, *settings);
  const auto picture = [&card] { return card.findChild<CardSheet*>()->grab().toImage(); };
  card.show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(&card));
  const QImage before = picture();
  card.close();
  (void)document.perform(RenameClass{"Another name altogether"}, {});
  card.show();
  EXPECT_NE(picture(), before);
  document.undoStack()->undo();
  EXPECT_TRUE(QTest::qWaitFor([&] { return picture() == before; }, 3000)) << "an open one follows";
}

} // namespace
} // namespace matwright
