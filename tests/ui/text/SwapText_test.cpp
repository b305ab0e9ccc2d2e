#include "tests/support/RealKnowledge.h"
#include "ui/text/SwapText.h"
#include "ui/text/Translations.h"

#include <QLocale>
#include <gtest/gtest.h>

namespace matwright {
namespace {

struct SwapTexts : testing::Test {
  SwapTexts() { loadTranslations(QLocale(QLocale::English)); }

  static const Movement& movement(const char* id) { return *test::realKnowledge().catalogue.find(MovementId{id}); }
  static Person person(const char* id, const char* name) {
    Person made;
    made.id = PersonId{id};
    made.name = name;
    return made;
  }
  Caution caution(Level level, std::size_t who, std::int64_t step = 4) const {
    Caution made;
    made.kind = CautionKind::noWay;
    made.level = level;
    made.person = who;
    made.step = StepId{step};
    return made;
  }
  std::vector<SwapLine> lines() const { return cautionLines(swap, StepId{4}, evaluation, roster); }

  const std::vector<Person> roster{person("ida", "Ida Orm"), person("bo", "Bo Lind")};
  Evaluation evaluation = [] {
    Evaluation made;
    made.people = {PersonId{"ida"}, PersonId{"bo"}, PersonId{"lost"}};
    return made;
  }();
  Swap swap = [] {
    Swap made;
    made.movement = &movement("saw");
    return made;
  }();
};

TEST_F(SwapTexts, NameTheMovementAndItsOption) {
  EXPECT_EQ(swapName(swap), QStringLiteral("Saw"));
  swap.movement = &movement("hundred");
  swap.option = findOption(*swap.movement, OptionId{"head-down"});
  ASSERT_TRUE(swap.option);
  const QString option = QString::fromStdString(swap.option->name);
  EXPECT_EQ(swapName(swap), QStringLiteral("The hundred (%1)").arg(option));
  swap.sameMovement = true;
  EXPECT_EQ(swapName(swap), option);
  swap.option = nullptr;
  EXPECT_EQ(swapName(swap), QStringLiteral("As written"));
}

TEST_F(SwapTexts, SayWhatItDisturbs) {
  EXPECT_EQ(disturbanceText(swap), QStringLiteral("Length as it is"));
  swap.added = Seconds(12);
  swap.addedChanges = -1;
  swap.addedMoving = Seconds(-8.2);
  swap.fetched = PropSet{Prop::ring, Prop::band};
  EXPECT_EQ(disturbanceText(swap),
            QStringLiteral("Length +0:12, 1 change of position fewer, moving -0:08, needs: ring, band"));
  swap = {};
  swap.addedChanges = 2;
  swap.addedMoving = Seconds(0.4);
  EXPECT_EQ(disturbanceText(swap), QStringLiteral("Length as it is, 2 changes of position more"));
}

TEST_F(SwapTexts, SayWhatItSharesWithTheMovementThatIsThere) {
  Movement own = movement("saw"), other = own;
  own.regions = {Region::abdominals, Region::neck};
  own.spine = {SpineAction::flexion};
  other.regions = {Region::hips, Region::neck};
  other.spine = {SpineAction::flexion};
  swap.movement = &other;
  swap.likeness = kLike;
  EXPECT_EQ(likenessText(&own, swap), QStringLiteral("Like it: neck, bend"));
  swap.likeness = kLike - 0.01;
  EXPECT_EQ(likenessText(&own, swap), QStringLiteral("A little like it: neck, bend"));
  other.spine = {SpineAction::extension};
  EXPECT_EQ(likenessText(&own, swap), QStringLiteral("A little like it: neck"));
  other.regions = {Region::hips};
  EXPECT_EQ(likenessText(&own, swap), QStringLiteral("Works elsewhere: hips"));
  EXPECT_EQ(likenessText(nullptr, swap), QStringLiteral("Works elsewhere: hips"));
}

TEST_F(SwapTexts, SayWhomTheCautionsAreAboutThatGoAndCome) {
  swap.gone = {caution(Level::watch, 1), caution(Level::askFirst, 0), caution(Level::watch, 0),
               caution(Level::watch, 1)};
  swap.come = {caution(Level::adapt, Finding::kNone), caution(Level::adapt, 2)};
  swap.left = Level::watch;
  EXPECT_EQ(lines(), (std::vector<SwapLine>{{QStringLiteral("Takes away ask first: Ida Orm"), Level::askFirst},
                                            {QStringLiteral("Takes away watch: Bo Lind (2), Ida Orm"), Level::watch},
                                            {QStringLiteral("Brings adapt: everybody, lost"), Level::adapt},
                                            {QStringLiteral("Left here: watch"), Level::watch}}));
}

TEST_F(SwapTexts, SayWhatIsLeftOnlyWhereNothingAsStrongComesThere) {
  swap.come = {caution(Level::adapt, 0)};
  swap.left = Level::adapt;
  EXPECT_EQ(lines().size(), 1u);
  swap.come = {caution(Level::adapt, 0, 5)};
  EXPECT_EQ(lines().size(), 2u) << "at another step";
}

TEST_F(SwapTexts, NeverSayThatSomethingIsSafe) {
  EXPECT_EQ(lines(), (std::vector<SwapLine>{{QStringLiteral("Leaves the cautions as they are"), {}}}));
}

TEST_F(SwapTexts, SayOnceWhatAllLeaveUnprepared) {
  const Movement &saw = movement("saw"), &roll = movement("roll-up"), &hundred = movement("hundred");
  Swap one = swap, other = swap;
  one.unprepared = {{&saw, &roll}, {&hundred, &roll}, {&roll, &hundred}};
  other.unprepared = {{&saw, &roll}, {&hundred, &roll}};
  EXPECT_EQ(unpreparedByAll(std::vector<Swap>{one, other}), other.unprepared);
  EXPECT_EQ(unpreparedText(one.unprepared),
            (QStringList{QStringLiteral("Roll up would not come before Saw, The hundred, which it prepares"),
                         QStringLiteral("The hundred would not come before Roll up, which it prepares")}));
  EXPECT_EQ(without(one.unprepared, other.unprepared), (std::vector<Unprepared>{{&roll, &hundred}}));
  EXPECT_TRUE(unpreparedByAll({}).empty());
}

} // namespace
} // namespace matwright
