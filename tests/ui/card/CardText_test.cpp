#include "tests/ui/card/Cards.h"
#include "ui/card/CardText.h"
#include "ui/card/CardWords.h"

#include <QStringList>
#include <gtest/gtest.h>

namespace matwright {
namespace {

// A reader of RFC 4180 that shares nothing with the writer.
QList<QStringList> readCsv(const QString& text) {
  QList<QStringList> lines;
  QStringList line;
  QString field;
  bool quoted = false;
  for (qsizetype i = 0; i < text.size(); ++i) {
    const QChar c = text[i];
    if (quoted) {
      if (c != QLatin1Char('"'))
        field += c;
      else if (i + 1 < text.size() && text[i + 1] == QLatin1Char('"'))
        field += text[++i];
      else
        quoted = false;
    } else if (c == QLatin1Char('"')) {
      quoted = true;
    } else if (c == QLatin1Char(',')) {
      line << field;
      field.clear();
    } else if (c == QLatin1Char('\r')) {
      line << field;
      field.clear();
      lines << line;
      line.clear();
      ++i;
    } else {
      field += c;
    }
  }
  return lines;
}

TEST(CardCsv, IsATableWithOneLineAStep) {
  Card card = cardOfSteps(1, 9);
  card.sections[0].rows[0].note = "two \"mats\", one wall\r\nand a ball";
  const auto lines = readCsv(cardCsv(card));
  ASSERT_EQ(lines.size(), 10);
  for (const QStringList& line : lines)
    EXPECT_EQ(line.size(), lines.front().size());
  EXPECT_EQ(lines[1].last(), QStringLiteral("two \"mats\", one wall and a ball"));
  EXPECT_EQ(lines[1][2].toStdString(), card.sections[0].rows[0].name);
}

TEST(CardMarkdown, KeepsTextOutOfItsOwnMarkup) {
  Card card = cardOfSteps(1, 4);
  card.title = "A | B *c* [d]";
  const QString page = cardMarkdown(card);
  EXPECT_TRUE(page.startsWith(QStringLiteral("# A \\| B \\*c\\* \\[d\\]\n")));
  EXPECT_EQ(page.count(QStringLiteral("\n## ")), static_cast<int>(card.sections.size()));
  EXPECT_TRUE(page.contains(QStringLiteral("No mark does not mean safe.")));
}

TEST(CardWords, SayWhoDoesWhatInstead) {
  CardRow row;
  row.variants = {{{"R.A."}, "", "Head down"}, {{"I.K.", "B.N."}, "Knee folds", ""}, {{"S.V."}, "", ""}};
  Card card;
  card.sections = {{"Main", Seconds{}, {row}}};
  const CardWords words = wordsOf(card, Density::full);
  EXPECT_EQ(words.sections[0].rows[0].variants,
            QStringList({QStringLiteral("R.A. does: Head down"), QStringLiteral("I.K., B.N. do: Knee folds"),
                         QStringLiteral("S.V. does: as written")}));
}

TEST(CardWords, NameEverybodyOnceALevel) {
  CardRow row;
  row.cautions = {{Level::adapt, {}, "smaller"},
                  {Level::adapt, {"R.A."}, "slower"},
                  {Level::watch, {}, "one"},
                  {Level::watch, {}, "two"}};
  Card card;
  card.sections = {{"Main", Seconds{}, {row}}};
  const auto lines = wordsOf(card, Density::namesAndDoses).sections[0].rows[0].cautions;
  ASSERT_EQ(lines.size(), 2u);
  EXPECT_EQ(lines[0].text, QStringLiteral("all R.A."));
  EXPECT_EQ(lines[1].text, QStringLiteral("all"));
}

} // namespace
} // namespace matwright
