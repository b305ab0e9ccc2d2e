// The PDF is read back by poppler's tools, which share nothing with what wrote it.
#include "tests/support/RunTool.h"
#include "ui/paper/Pdf.h"
#include "ui/paper/TextPages.h"
#include "ui/paper/TextStyle.h"
#include "ui/theme/Theme.h"

#include <QFile>
#include <QImage>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace matwright {
namespace {

using testing::run;

QString paragraphs(int count) {
  QString html;
  for (int i = 1; i <= count; ++i)
    html += QStringLiteral("<p>Paragraph %1 says something of its own that takes about a line of the page.</p>").arg(i);
  return html;
}

struct TextOnPaper : ::testing::Test {
  QTemporaryDir folder;
  QString write(const TextSheet& sheet, QSizeF paper = kA4Millimetres) {
    const QString file = folder.filePath(QStringLiteral("text.pdf"));
    QFile out(file);
    EXPECT_TRUE(out.open(QIODevice::WriteOnly));
    out.write(textPdf(sheet, paper));
    return file;
  }
  QString pageOf(const QString& file, int page) {
    const QString number = QString::number(page);
    return run(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), QStringLiteral("-f"), number,
                                             QStringLiteral("-l"), number, file, QStringLiteral("-")});
  }
};

TEST_F(TextOnPaper, HasTheSizeOfThePaperAndItsTitle) {
  const TextSheet sheet{QStringLiteral("Signs <to> stop"), paragraphs(3), QStringLiteral("A foot")};
  const QString a4 = run(QStringLiteral("pdfinfo"), {write(sheet)});
  EXPECT_TRUE(a4.contains(QStringLiteral("(A4)"))) << a4.toStdString();
  EXPECT_TRUE(a4.contains(QStringLiteral("Signs <to> stop"))) << a4.toStdString();
  EXPECT_TRUE(a4.contains(QRegularExpression(QStringLiteral("Pages: +1\n"))));
  EXPECT_TRUE(run(QStringLiteral("pdfinfo"), {write(sheet, kLetterMillimetres)}).contains(QStringLiteral("(letter)")));
}

TEST_F(TextOnPaper, EveryParagraphIsOnOnePageAndEveryPageHasItsFoot) {
  const TextSheet sheet{QStringLiteral("Long"), paragraphs(150), QStringLiteral("The foot of it")};
  const TextPages pages(sheet, kA4Millimetres);
  ASSERT_GT(pages.count(), 2);
  const QString file = write(sheet);
  QString all;
  for (int page = 1; page <= pages.count(); ++page) {
    const QString text = pageOf(file, page);
    EXPECT_TRUE(text.contains(QStringLiteral("The foot of it")));
    EXPECT_TRUE(text.contains(QStringLiteral("Page %1 of %2").arg(page).arg(pages.count()))) << text.toStdString();
    all += text;
  }
  for (int i = 1; i <= 150; ++i)
    EXPECT_EQ(all.count(QStringLiteral("Paragraph %1 says").arg(i)), 1) << i;
}

TEST_F(TextOnPaper, EverySheetOfSeveralSaysWhatItIsOf) {
  const TextSheet sheet{QStringLiteral("Signs to stop"), paragraphs(80), QStringLiteral("Foot")};
  const QString file = write(sheet);
  const int count = TextPages(sheet, kA4Millimetres).count();
  ASSERT_GT(count, 1);
  for (int page = 1; page <= count; ++page)
    EXPECT_TRUE(pageOf(file, page).contains(QStringLiteral("Signs to stop. Page %1 of %2").arg(page).arg(count)));
}

TEST_F(TextOnPaper, OnePageHasNoNumber) {
  const QString text = pageOf(write({QStringLiteral("Short"), paragraphs(1), QStringLiteral("Foot")}), 1);
  EXPECT_FALSE(text.contains(QStringLiteral("Page 1")));
  EXPECT_FALSE(text.contains(QStringLiteral("Short")));
}

TEST_F(TextOnPaper, ATableGoesToTheNextPageWholeAndTakesItsHeadingWithIt) {
  const QString heading = QStringLiteral("<h2>The heading</h2>");
  const QString table = QStringLiteral("<table><tr><td>First cell</td><td>Beside<br>it</td></tr><tr><td>%1</td>"
                                       "<td>Last cell</td></tr></table>")
                            .arg(paragraphs(4));
  for (const QString& before : {QString(), heading})
    for (int lines = 40; lines < 75; ++lines) {
      const TextSheet sheet{QStringLiteral("Tables"), paragraphs(lines) + before + table, {}};
      const QString file = write(sheet);
      const int count = TextPages(sheet, kA4Millimetres).count();
      for (int page = 1; page <= count; ++page) {
        const QString text = pageOf(file, page);
        const bool begins = text.contains(QStringLiteral("First cell"));
        EXPECT_EQ(text.contains(QStringLiteral("Last cell")), begins) << lines << " lines, page " << page;
        EXPECT_EQ(text.contains(QStringLiteral("The heading")), begins && !before.isEmpty())
            << lines << " lines, page " << page;
      }
    }
}

// Heights of letters as pdftotext measures them, of what stands at the top of the first page.
TEST_F(TextOnPaper, SmallerTypeIsTakenOnlyWhereItSavesAPage) {
  const auto heightOfFirstWord = [&](int lines) {
    const QString words = run(QStringLiteral("pdftotext"),
                              {QStringLiteral("-bbox"), write({{}, paragraphs(lines), {}}), QStringLiteral("-")});
    static const QRegularExpression box(
        QStringLiteral("yMin=\"([0-9.]+)\" xMax=\"[0-9.]+\" yMax=\"([0-9.]+)\">Paragraph"));
    const QRegularExpressionMatch match = box.match(words);
    EXPECT_TRUE(match.hasMatch());
    return match.captured(2).toDouble() - match.captured(1).toDouble();
  };
  int most = 1; // paragraphs on one page in the usual size
  const double usual = heightOfFirstWord(1);
  while (most < 100 && heightOfFirstWord(most + 1) == usual)
    ++most;
  EXPECT_NEAR(heightOfFirstWord(most + 1) / usual, TextPages::kSmallPoints / TextPages::kPoints, 0.02);
  EXPECT_EQ(TextPages({{}, paragraphs(most + 1), {}}, kA4Millimetres).count(), 1);
  EXPECT_EQ(heightOfFirstWord(most * 3 / 2), usual) << "two pages either way";
}

TEST(PlainText, TellsHeadingsListsAndTablesApart) {
  const TextSheet sheet{
      QStringLiteral("Title"),
      QStringLiteral("<h1>Title</h1><p>Said&nbsp;first.</p><h2>Part</h2><table><tr><td>Cell</td><td><ul>"
                     "<li>one</li><li>two</li></ul></td></tr></table><table><tr><td>Next</td></tr>"
                     "</table><p>Last.</p>"),
      QStringLiteral("Foot")};
  EXPECT_EQ(plainText(sheet).toStdString(), "Title\n=====\nSaid first.\n\nPart\n----\n\nCell\n  - one\n  - two\n\n"
                                            "Next\n\nLast.");
}

TEST_F(TextOnPaper, AHeadingGoesToTheNextPageWithItsText) {
  for (int lines = 40; lines < 75; ++lines) {
    const TextSheet sheet{QStringLiteral("Heads"),
                          paragraphs(lines) + QStringLiteral("<h2>The heading</h2><h3>Under it</h3><p>The headed.</p>"),
                          {}};
    const QString file = write(sheet);
    const int count = TextPages(sheet, kA4Millimetres).count();
    for (int page = 1; page <= count; ++page) {
      const QString text = pageOf(file, page);
      EXPECT_EQ(text.contains(QStringLiteral("The heading")), text.contains(QStringLiteral("The headed")))
          << lines << " lines, page " << page;
      EXPECT_EQ(text.contains(QStringLiteral("Under it")), text.contains(QStringLiteral("The headed")))
          << lines << " lines, page " << page;
    }
  }
}

TEST_F(TextOnPaper, FontsAreEmbedded) {
  const QString fonts = run(QStringLiteral("pdffonts"), {write({QStringLiteral("Fonts"), paragraphs(2), {}})});
  const QStringList rows = fonts.trimmed().split(QLatin1Char('\n')).mid(2);
  ASSERT_FALSE(rows.isEmpty());
  for (const QString& row : rows)
    EXPECT_TRUE(row.contains(QRegularExpression(QStringLiteral(" yes +(yes|no) +(yes|no) ")))) << row.toStdString();
}

TEST_F(TextOnPaper, IsBlackOnWhite) {
  const TextPages pages({QStringLiteral("Ink"), paragraphs(20), {}}, kA4Millimetres);
  QImage image(420, 594, QImage::Format_RGB32);
  image.fill(Qt::red);
  QPainter painter(&image);
  pages.paint(painter, image.rect(), 0);
  painter.end();
  EXPECT_EQ(image.pixelColor(2, 2), QColor(Qt::white));
  int dark = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) {
      const QColor colour = image.pixelColor(x, y);
      EXPECT_LT(colour.hsvSaturation(), 40);
      dark += colour.lightness() < 128;
    }
  EXPECT_GT(dark, 500);
}

TEST(TextStyle, HasAColourForEveryPlace) {
  for (const Theme* theme : {&lightTheme(), &darkTheme(), &printTheme()}) {
    const QString style = textStyleOf(*theme);
    EXPECT_FALSE(style.contains(QLatin1Char('@')));
    EXPECT_TRUE(style.contains(theme->inkSoft.name()));
  }
}

} // namespace
} // namespace matwright
