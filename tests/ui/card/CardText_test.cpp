#include "tests/ui/card/Cards.h"
#include "ui/card/CardText.h"

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

} // namespace
} // namespace matwright
