#include "tests/ui/card/Cards.h"
#include "ui/card/CardLayout.h"
#include "ui/card/CardPdf.h"

#include <QFontMetricsF>
#include <gtest/gtest.h>

namespace matwright {
namespace {

// Every text keeps within the paper and its words within its box.
void expectNothingCut(const CardLayout& layout) {
  for (const PlacedPage& page : layout.pages) {
    const QRectF paper(QPointF(), layout.paper);
    for (const PlacedText& text : page.texts) {
      EXPECT_TRUE(paper.contains(text.box)) << text.text.toStdString();
      const QRectF needed = QFontMetricsF(text.font).boundingRect(text.box, Qt::AlignTop, text.text);
      EXPECT_LE(needed.height(), text.box.height() + 5) << text.text.toStdString();
      EXPECT_LE(needed.width(), text.box.width() + 2) << text.text.toStdString();
    }
    for (const PlacedFigure& figure : page.figures)
      EXPECT_TRUE(paper.contains(figure.box));
  }
}

// No two texts stand on one another.
void expectNothingOverlaps(const CardLayout& layout) {
  for (const PlacedPage& page : layout.pages)
    for (std::size_t i = 0; i < page.texts.size(); ++i)
      for (std::size_t j = i + 1; j < page.texts.size(); ++j) {
        const auto inked = [](const PlacedText& text) {
          return QFontMetricsF(text.font)
              .boundingRect(text.box, text.toRight ? Qt::AlignRight : Qt::AlignLeft, text.text)
              .adjusted(1, 1, -1, -1);
        };
        const QRectF shared = inked(page.texts[i]).intersected(inked(page.texts[j]));
        EXPECT_TRUE(shared.width() < 2 || shared.height() < 2)
            << page.texts[i].text.toStdString() << " / " << page.texts[j].text.toStdString();
      }
}

std::size_t countRows(const CardLayout& layout) {
  std::size_t rows = 0;
  for (const PlacedPage& page : layout.pages)
    rows += page.figures.size();
  return rows;
}

using Case = std::tuple<int, QSizeF>;
class CardOfAnyLength : public testing::TestWithParam<Case> {};

TEST_P(CardOfAnyLength, FitsOnePageWithEveryStepAndNothingCut) {
  const auto& [steps, paper] = GetParam();
  for (unsigned seed : {1U, 2U}) {
    const Card card = cardOfSteps(seed, steps);
    const CardLayout layout = layOut(card, paper);
    ASSERT_EQ(layout.pages.size(), 1U);
    EXPECT_EQ(countRows(layout), static_cast<std::size_t>(steps));
    expectNothingCut(layout);
    expectNothingOverlaps(layout);
  }
}

INSTANTIATE_TEST_SUITE_P(Lengths, CardOfAnyLength,
                         testing::Combine(testing::Values(0, 1, 6, 20, 45, 150, 400),
                                          testing::Values(kA4Millimetres, kLetterMillimetres)));

TEST(CardLayout, AClassOfUsualLengthIsLegibleAtArmsLength) {
  // About 11 points at arm's length: 16 minutes of arc at 0.7 m ask for capitals of 3.26 mm in the preferred case and
  // 2.33 mm at 0.5 m (ISO 9241-3 by way of NUREG-0700, h = 6.283 D MA / 21600).
  for (int steps : {10, 15, 18})
    EXPECT_GE(layOut(cardOfSteps(7, steps), kA4Millimetres).points, 9.5) << steps;
  EXPECT_TRUE(layOut(cardOfSteps(7, 30), kA4Millimetres).legible);
}

TEST(CardLayout, OutlivesTheCardItWasMadeFrom) {
  std::optional<Card> card = cardOfSteps(3, 8);
  const CardLayout layout = layOut(*card, kA4Millimetres);
  std::vector<std::optional<KeyPoses>> poses;
  for (const CardSection& section : card->sections)
    for (const CardRow& row : section.rows)
      poses.push_back(row.poses);
  card.reset();
  std::vector<std::optional<KeyPoses>> placed;
  for (const PlacedFigure& figure : layout.pages.front().figures)
    placed.push_back(figure.poses);
  EXPECT_EQ(placed, poses);
}

TEST(CardLayout, SaysWhenOnePageIsTooSmallAndASecondHelps) {
  const Card card = cardOfSteps(5, 400, everyCondition());
  const CardLayout one = layOut(card, kA4Millimetres);
  EXPECT_FALSE(one.legible);
  const CardLayout two = layOut(card, kA4Millimetres, 2);
  EXPECT_EQ(two.pages.size(), 2U);
  EXPECT_GT(two.points, one.points);
  EXPECT_EQ(countRows(two), 400U);
}

TEST(CardLayout, ManyCautionsCutNothing) {
  const CardLayout layout = layOut(cardOfSteps(9, 24, everyCondition()), kA4Millimetres);
  ASSERT_EQ(layout.pages.size(), 1U);
  EXPECT_EQ(countRows(layout), 24U);
  expectNothingCut(layout);
  expectNothingOverlaps(layout);
}

TEST(CardLayout, LongNamesAndNotesCutNothing) {
  Card card = cardOfSteps(4, 12);
  card.title = std::string(120, 'W');
  card.note =
      "A note that goes on and on, about mats and cushions and where they stand, until it has to be wrapped twice "
      "or more because nobody stopped writing.";
  for (CardSection& section : card.sections)
    for (CardRow& row : section.rows) {
      row.name = "A movement with an uncommonly long name that nobody would remember";
      row.option = "in an option with a long name";
      row.note = "Remember the cushion, the blanket, and the person at the back who needs a hand.";
    }
  const CardLayout layout = layOut(card, kLetterMillimetres);
  expectNothingCut(layout);
}

} // namespace
} // namespace matwright
