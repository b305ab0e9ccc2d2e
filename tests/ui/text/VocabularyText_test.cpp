#include "tests/support/RealKnowledge.h"
#include "ui/text/Translations.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QFile>
#include <QLocale>
#include <gtest/gtest.h>
#include <set>

namespace matwright {
namespace {

TEST(Clock, RoundsToWholeSecondsAndShowsHoursFromSixtyMinutes) {
  EXPECT_EQ(clock(Seconds(50)), QStringLiteral("0:50"));
  EXPECT_EQ(clock(Seconds(59.6)), QStringLiteral("1:00"));
  EXPECT_EQ(clock(Seconds(725)), QStringLiteral("12:05"));
  EXPECT_EQ(clock(Seconds(3599.6)), QStringLiteral("1:00:00"));
  EXPECT_EQ(clock(Seconds(-10)), QStringLiteral("-0:10"));
  EXPECT_EQ(clock(Seconds(-0.2)), QStringLiteral("0:00"));
  EXPECT_EQ(signedClock(Seconds(76)), QStringLiteral("+1:16"));
  EXPECT_EQ(signedClock(Seconds(0.2)), QStringLiteral("0:00"));
}

TEST(DoseText, SaysHowSidesShareIt) {
  EXPECT_EQ(doseText({10, DoseUnit::breaths}, Sides::together, {}), QStringLiteral("10 breaths"));
  EXPECT_EQ(doseText({1, DoseUnit::breaths}, Sides::together, {}), QStringLiteral("1 breath"));
  EXPECT_EQ(doseText({8, DoseUnit::repetitions}, Sides::alternating, {}), QStringLiteral("8 alternating"));
  EXPECT_EQ(doseText({5, DoseUnit::repetitions}, Sides::each, {}), QStringLiteral("5 each side"));
  EXPECT_EQ(doseText({5, DoseUnit::repetitions}, Sides::each, Side::left), QStringLiteral("5 left"));
  EXPECT_EQ(doseText({30, DoseUnit::seconds}, Sides::each, {}), QStringLiteral("30 s each side"));
  EXPECT_EQ(doseText({120, DoseUnit::seconds}, Sides::together, {}), QStringLiteral("2 min"));
}

TEST(TempoText, NamesBreathAndCounts) {
  // The hundred: five counts in, five counts out, about half a second each. Common practice, no source.
  const Tempo hundred{Seconds(0.5), {{Breath::in, 5}, {Breath::out, 5}}};
  EXPECT_EQ(tempoText(hundred), QStringLiteral("in 5, out 5 at \u00bd s a count"));
}

// Every value of every list has words of its own, and none is left empty.
template <class Enum> void expectWordsForAll() {
  std::set<QString> said;
  for (std::size_t i = 0; i < kWordCount<Enum>; ++i) {
    const QString words = text(static_cast<Enum>(i));
    EXPECT_FALSE(words.isEmpty()) << word(static_cast<Enum>(i));
    EXPECT_TRUE(said.insert(words).second) << words.toStdString();
  }
}

TEST(Words, AreThereForEveryValue) {
  expectWordsForAll<Elevation>();
  expectWordsForAll<Region>();
  expectWordsForAll<SpineAction>();
  expectWordsForAll<Breath>();
  expectWordsForAll<Level>();
  expectWordsForAll<Strength>();
  expectWordsForAll<Verification>();
  expectWordsForAll<OptionKind>();
  expectWordsForAll<Repertoire>();
  expectWordsForAll<Sides>();
  expectWordsForAll<Feature>();
}

// The vocabulary of the knowledge files has a row in their description for each feature.
TEST(Words, EveryFeatureIsDefinedInTheDescriptionOfTheFiles) {
  QFile description(QStringLiteral(MATWRIGHT_SOURCE_DIR "/resources/FORMAT.md"));
  ASSERT_TRUE(description.open(QIODevice::ReadOnly));
  const QByteArray page = description.readAll();
  for (const std::string_view name : Words<Feature>::list)
    EXPECT_TRUE(page.contains("| `" + QByteArray(name.data(), static_cast<qsizetype>(name.size())) + "` |")) << name;
}

TEST(Words, PluralsOfEnglishAreATranslation) {
  loadTranslations(QLocale(QLocale::English));
  EXPECT_EQ(QCoreApplication::translate("matwright::PeopleChooser", "%n person(s)", nullptr, 1),
            QStringLiteral("1 person"));
  EXPECT_EQ(QCoreApplication::translate("matwright::PeopleChooser", "%n person(s)", nullptr, 6),
            QStringLiteral("6 people"));
}

TEST(Names, AreTheIdOfWhatIsNotOnFile) {
  const Knowledge& knowledge = test::realKnowledge();
  EXPECT_EQ(movementName(knowledge, MovementId{"hundred"}), QStringLiteral("The hundred"));
  EXPECT_EQ(movementName(knowledge, MovementId{"no-such"}), QStringLiteral("no-such"));
  EXPECT_EQ(optionName(knowledge, MovementId{"hundred"}, {}), QStringLiteral("as written"));
  EXPECT_EQ(positionName(knowledge, PositionId{"gone"}), QStringLiteral("gone"));
}

} // namespace
} // namespace matwright
