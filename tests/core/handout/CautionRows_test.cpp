#include "core/handout/CautionRows.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::ElementsAre;

const std::vector<std::string> kInitials{"I.A.", "B.O.", "I.A."};

std::vector<CardCaution> rowsOf(const std::vector<Caution>& cautions) {
  std::vector<const Caution*> pointers;
  for (const Caution& each : cautions)
    pointers.push_back(&each);
  return cardCautions(pointers, [](std::size_t person) { return kInitials.at(person); });
}

Rule saying(const std::string& instead) {
  Rule made = rule("r", Scope::step, Level::adapt);
  made.instead = instead;
  return made;
}

Caution of(const Rule& rule, Level level, std::size_t person = Finding::kNone) {
  Caution caution;
  caution.level = level;
  caution.rule = &rule;
  caution.person = person;
  return caution;
}

const Rule kBend = saying("bend the knees"), kHands = saying("on forearms"), kBendToo = saying("bend the knees");

TEST(CautionRows, SameWordsAndLevelArePutTogetherInTheOrderOfTheClass) {
  EXPECT_THAT(rowsOf({of(kBend, Level::adapt, 1), of(kHands, Level::adapt, 2), of(kBendToo, Level::adapt, 0)}),
              ElementsAre(CardCaution{Level::adapt, {"I.A.", "B.O."}, "bend the knees"},
                          CardCaution{Level::adapt, {"I.A."}, "on forearms"}));
}

TEST(CautionRows, StrongestComeFirstAndLevelsStayApart) {
  EXPECT_THAT(rowsOf({of(kBend, Level::watch, 0), of(kBend, Level::leaveOut, 1), of(kHands, Level::askFirst, 2)}),
              ElementsAre(CardCaution{Level::leaveOut, {"B.O."}, "bend the knees"},
                          CardCaution{Level::askFirst, {"I.A."}, "on forearms"},
                          CardCaution{Level::watch, {"I.A."}, "bend the knees"}));
}

TEST(CautionRows, ForEverybodyNamesNobody) {
  EXPECT_THAT(rowsOf({of(kBend, Level::watch, 0), of(kBendToo, Level::watch), of(kBend, Level::watch, 1)}),
              ElementsAre(CardCaution{Level::watch, {}, "bend the knees"}));
}

TEST(CautionRows, OnePersonIsNamedOnceAndTwoWithTheSameInitialsTwice) {
  EXPECT_THAT(rowsOf({of(kBend, Level::adapt, 0), of(kBendToo, Level::adapt, 0), of(kBend, Level::adapt, 2)}),
              ElementsAre(CardCaution{Level::adapt, {"I.A.", "I.A."}, "bend the knees"}));
}

TEST(CautionRows, WithoutARuleThereAreNoWords) {
  Caution unknown;
  unknown.kind = CautionKind::unknownMovement;
  unknown.level = Level::askFirst;
  unknown.name = "handstand";
  Caution stranger;
  stranger.kind = CautionKind::unknownPerson;
  stranger.level = Level::watch;
  stranger.name = "rosa-amberley";
  EXPECT_THAT(rowsOf({unknown, stranger}),
              ElementsAre(CardCaution{Level::askFirst, {}, ""}, CardCaution{Level::watch, {"R.A."}, ""}));
}

} // namespace
} // namespace matwright::test
