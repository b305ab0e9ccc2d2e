// The PDF is read back by poppler's tools, which share nothing with what wrote it.
#include "tests/support/RunTool.h"
#include "tests/ui/card/Cards.h"
#include "ui/card/CardPdf.h"
#include "ui/card/CardWords.h"

#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <gtest/gtest.h>

namespace matwright {
namespace {

using testing::run;

struct ReadBack : ::testing::Test {
  QTemporaryDir folder;
  QString write(const Card& card, QSizeF paper, int pages = 1) {
    const QString file = folder.filePath(QStringLiteral("card.pdf"));
    QFile out(file);
    EXPECT_TRUE(out.open(QIODevice::WriteOnly));
    out.write(cardPdf(card, paper, pages));
    return file;
  }
};

TEST_F(ReadBack, HasOnePageOfTheRightSizeAndItsTitle) {
  Card card = cardOfSteps(1, 20);
  card.title = "Tuesday <slow> & steady";
  const QString a4 = run(QStringLiteral("pdfinfo"), {write(card, kA4Millimetres)});
  EXPECT_TRUE(a4.contains(QRegularExpression(QStringLiteral("Pages: +1\n")))) << a4.toStdString();
  EXPECT_TRUE(a4.contains(QStringLiteral("(A4)"))) << a4.toStdString();
  EXPECT_TRUE(a4.contains(QStringLiteral("Tuesday <slow> & steady"))) << a4.toStdString();
  const QString letter = run(QStringLiteral("pdfinfo"), {write(card, kLetterMillimetres)});
  EXPECT_TRUE(letter.contains(QStringLiteral("(letter)"))) << letter.toStdString();
  EXPECT_TRUE(run(QStringLiteral("pdfinfo"), {write(card, kA4Millimetres, 2)})
                  .contains(QRegularExpression(QStringLiteral("Pages: +2\n"))));
}

TEST_F(ReadBack, MetadataIsWellFormedXmp) {
  Card card = cardOfSteps(1, 3);
  card.title = "Tuesday <slow> & steady";
  const QString xmp = run(QStringLiteral("pdfinfo"), {QStringLiteral("-meta"), write(card, kA4Millimetres)});
  QXmlStreamReader reader(xmp);
  QString title;
  while (!reader.atEnd()) {
    reader.readNext();
    if (reader.isStartElement() && reader.name() == QLatin1String("li") && title.isEmpty())
      title = reader.readElementText();
  }
  EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
  EXPECT_EQ(title, QStringLiteral("Tuesday <slow> & steady"));
}

TEST_F(ReadBack, EveryFontIsEmbedded) {
  const QString fonts = run(QStringLiteral("pdffonts"), {write(cardOfSteps(2, 16), kA4Millimetres)});
  QStringList lines = fonts.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
  ASSERT_GT(lines.size(), 2);
  for (const QString& line : lines.mid(2)) {
    EXPECT_TRUE(line.contains(QStringLiteral("Inter"))) << line.toStdString();
    EXPECT_TRUE(line.contains(QRegularExpression(QStringLiteral("Identity-H +yes")))) << line.toStdString();
  }
}

TEST_F(ReadBack, TheTextHoldsEveryMovementDoseAndNotice) {
  const Card card = cardOfSteps(3, 18, everyCondition());
  const CardWords words = wordsOf(card, Density::namesAndDoses);
  const QString text =
      run(QStringLiteral("pdftotext"), {QStringLiteral("-raw"), write(card, kA4Millimetres), QStringLiteral("-")})
          .simplified();
  for (const SectionWords& section : words.sections)
    for (const RowWords& row : section.rows) {
      EXPECT_TRUE(text.contains(row.name)) << row.name.toStdString();
      EXPECT_TRUE(text.contains(row.dose)) << row.dose.toStdString();
      EXPECT_TRUE(text.contains(row.time)) << row.time.toStdString();
    }
  EXPECT_TRUE(text.contains(QStringLiteral("No mark does not mean safe.")));
  EXPECT_TRUE(text.contains(QStringLiteral("leave out ask first adapt watch")));
}

TEST_F(ReadBack, AClassForNobodySaysThatNothingWasScreened) {
  const QString text =
      run(QStringLiteral("pdftotext"), {write(cardOfSteps(3, 5), kA4Millimetres), QStringLiteral("-")});
  EXPECT_TRUE(text.simplified().contains(QStringLiteral("Not screened for anybody")));
}

} // namespace
} // namespace matwright
