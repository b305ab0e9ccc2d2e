#include "tests/ui/timeline/Terrains.h"

namespace matwright {
namespace {

TEST(TextWrap, FillsLinesWithWholeWords) {
  const auto wrap = wrapWithin(QStringLiteral("Breathing into the ribs"), 60, 4, plainMeasure());
  ASSERT_TRUE(wrap);
  EXPECT_EQ(wrap->lines,
            (QStringList{QStringLiteral("Breathing"), QStringLiteral("into the"), QStringLiteral("ribs")}));
  EXPECT_EQ(wrap->width, 54);
}

TEST(TextWrap, RefusesWhatWouldHaveToBeCut) {
  EXPECT_FALSE(wrapWithin(QStringLiteral("Breathing into the ribs"), 53, 4, plainMeasure()));
  EXPECT_FALSE(wrapWithin(QStringLiteral("Breathing into the ribs"), 60, 2, plainMeasure()));
}

TEST(TextWrap, PartsBehindHyphensAndNotAtNoBreakSpaces) {
  const auto hyphen = wrapWithin(QStringLiteral("Side-lying clam"), 42, 3, plainMeasure());
  ASSERT_TRUE(hyphen);
  EXPECT_EQ(hyphen->lines, (QStringList{QStringLiteral("Side-"), QStringLiteral("lying"), QStringLiteral("clam")}));
  EXPECT_FALSE(wrapWithin(QStringLiteral("10\u00a0breaths"), 50, 2, plainMeasure()));
}

TEST(TextWrap, OntoLinesIsTheNarrowestWay) {
  const QString name = QStringLiteral("Double straight leg lower and lift");
  const auto one = wrapOnto(name, 1, plainMeasure());
  const auto two = wrapOnto(name, 2, plainMeasure());
  const auto three = wrapOnto(name, 3, plainMeasure());
  ASSERT_TRUE(one && two && three);
  EXPECT_EQ(one->width, 6 * 34);
  EXPECT_EQ(two->lines, (QStringList{QStringLiteral("Double straight"), QStringLiteral("leg lower and lift")}));
  EXPECT_EQ(three->width, 6 * 14); // "lower and lift"
  EXPECT_FALSE(wrapOnto(name, 7, plainMeasure()));
  EXPECT_FALSE(wrapOnto(name, 0, plainMeasure()));
}

TEST(TextWrap, LosesNoWord) {
  test::Draw draw(5);
  for (int i = 0; i < 200; ++i) {
    const QString name = randomName(draw);
    for (int lines = 1; lines < 5; ++lines)
      if (const auto wrap = wrapOnto(name, lines, plainMeasure())) {
        EXPECT_EQ(wrap->lines.size(), lines);
        QString joined = wrap->lines.join(QString());
        EXPECT_EQ(joined.remove(QLatin1Char(' ')), QString(name).remove(QLatin1Char(' ')));
      }
    const auto filled = wrapWithin(name, 90, 9, plainMeasure());
    ASSERT_TRUE(filled);
    QString joined = filled->lines.join(QString());
    EXPECT_EQ(joined.remove(QLatin1Char(' ')), QString(name).remove(QLatin1Char(' ')));
    for (const QString& line : filled->lines)
      EXPECT_LE(6 * line.size(), 90);
  }
}

} // namespace
} // namespace matwright
