#include "tests/support/RealKnowledge.h"
#include "ui/text/LoadText.h"

#include <QLocale>
#include <QRegularExpression>
#include <gmock/gmock.h>

namespace matwright {
namespace {

struct LoadTextTest : testing::Test {
  LoadTextTest() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom)); }
  ~LoadTextTest() override { QLocale::setDefault(before); }
  const QLocale before;
};

QString plain(QString html) {
  html.replace(QStringLiteral("</td>"), QStringLiteral(" "));
  static const QRegularExpression tags(QStringLiteral("<[^>]*>"));
  return html.remove(tags);
}

TEST_F(LoadTextTest, MomentsAreToldInNewtonMetresOfTheLocale) {
  EXPECT_EQ(momentText(62.4), QStringLiteral("62\u00a0N\u00b7m"));
  EXPECT_EQ(momentText(3.14), QStringLiteral("3.1\u00a0N\u00b7m"));
  EXPECT_EQ(momentText(0.04), QStringLiteral("0\u00a0N\u00b7m"));
  EXPECT_EQ(momentText(9.96), QStringLiteral("10\u00a0N\u00b7m"));
  EXPECT_EQ(momentMinutesText(72000), QStringLiteral("1,200\u00a0N\u00b7m\u00a0\u00d7\u00a0min"));
  QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
  EXPECT_EQ(momentText(3.14), QStringLiteral("3,1\u00a0N\u00b7m"));
}

TEST_F(LoadTextTest, WhatSwingingAddsIsToldWhereItIsMoreThanANewtonMetre) {
  const BodySize size{.mass = 70, .stature = 1.75};
  ByLoadedJoint swing{};
  EXPECT_TRUE(swingText(swing, size).isEmpty());
  constexpr std::size_t kHip = index(LoadedJoint::hip);
  swing[kHip] = 0.9 / (70 * 1.75 * 1.75);
  EXPECT_TRUE(swingText(swing, size).isEmpty());
  swing[kHip] = 4.2 / (70 * 1.75 * 1.75);
  EXPECT_TRUE(swingText(swing, size).contains(QStringLiteral("adds up to 4.2\u00a0N\u00b7m about the hip.")));
}

TEST_F(LoadTextTest, AShareIsOfTwoStraightLegs) {
  EXPECT_EQ(leverText(0.617), QStringLiteral("62\u00a0% of two straight legs"));
  EXPECT_EQ(bodyText(BodyTable::deLevaWomen, {.mass = 60, .stature = 1.65}),
            QStringLiteral("de Leva, women, 165\u00a0cm, 60\u00a0kg"));
}

TEST_F(LoadTextTest, NumbersOfOthersCarryTheirSourceAndHowFarTheyWereChecked) {
  const Knowledge& knowledge = test::realKnowledge();
  const auto found = knowledge.measured.of({"head-nod-curl"});
  ASSERT_EQ(found.size(), 1u);
  const QString words = measuredText(*found[0], knowledge);
  EXPECT_TRUE(words.contains(QStringLiteral("1,991"))) << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("as remembered, not checked against the paper")));
  EXPECT_TRUE(words.contains(QStringLiteral("Axler and McGill 1997")));
}

TEST_F(LoadTextTest, ThePageSaysWhatTheFiguresAreNotAndForWhichBody) {
  const QString page = plain(loadPageHtml(test::realKnowledge(), {.mass = 81, .stature = 1.62}));
  for (const char* part : {"No compression", "Muscles are not in it", "What hands hold", "limit for nobody",
                           "her own clinician", "162\u00a0cm, 81\u00a0kg", "Winter", "fit young adults, mostly men"})
    EXPECT_TRUE(page.contains(QString::fromUtf8(part))) << part;
  // Words that judge for somebody else.
  for (const char* part : {"safe", "danger", "too much", "too heavy", "harmless"})
    EXPECT_FALSE(page.contains(QString::fromLatin1(part), Qt::CaseInsensitive)) << part;
}

TEST_F(LoadTextTest, NoNumberOfOursStandsAmongThoseOfOthers) {
  const Knowledge& knowledge = test::realKnowledge();
  const auto tableOf = [&](const BodySize& size) {
    const QString page = loadPageHtml(knowledge, size);
    return page.mid(page.indexOf(QStringLiteral("<table")));
  };
  EXPECT_EQ(tableOf({.mass = 40, .stature = 1.3}), tableOf({.mass = 190, .stature = 2.1}));
  const QString table = plain(tableOf({}));
  for (const MeasuredTask& task : knowledge.measured.tasks)
    for (const auto& value : {task.moment, task.compression})
      if (value) {
        EXPECT_TRUE(table.contains(QLocale().toString(value->value, 'f', 0))) << task.id;
      }
}

} // namespace
} // namespace matwright
