#include "tests/support/SmallKnowledge.h"

#include <gtest/gtest.h>

namespace matwright::test {
namespace {

const Movement& curl() {
  static const std::vector<Movement> movements = smallMovements();
  return movements.front();
}

TEST(Movement, AnOptionIsFoundByItsId) {
  ASSERT_NE(findOption(curl(), OptionId{"hard"}), nullptr);
  EXPECT_EQ(findOption(curl(), OptionId{"hard"})->name, "Legs long");
}

TEST(Movement, NoOptionForAnUnknownIdNorForNone) {
  EXPECT_EQ(findOption(curl(), OptionId{"sideways"}), nullptr);
  EXPECT_EQ(findOption(curl(), OptionId{}), nullptr);
}

TEST(Movement, WithoutAnOptionEverythingIsAsWritten) {
  EXPECT_EQ(doseOf(curl(), nullptr), curl().dose);
  EXPECT_EQ(tempoOf(curl(), nullptr), curl().tempo);
  EXPECT_EQ(effortOf(curl(), nullptr), curl().effort);
  EXPECT_EQ(posesOf(curl(), nullptr), curl().poses);
}

TEST(Movement, AnOptionChangesWhatItSetsAndNothingElse) {
  const Option* low = findOption(curl(), OptionId{"low"});
  EXPECT_EQ(doseOf(curl(), low), (Dose{3, DoseUnit::repetitions}));
  EXPECT_EQ(effortOf(curl(), low), Effort(2));
  EXPECT_EQ(tempoOf(curl(), low), curl().tempo);
  const Option* hard = findOption(curl(), OptionId{"hard"});
  EXPECT_EQ(lengthOf(tempoOf(curl(), hard)), Seconds(12));
  EXPECT_EQ(doseOf(curl(), hard), curl().dose);
}

TEST(Movement, AnOptionMayHavePosesOfItsOwn) {
  Movement movement = curl();
  KeyPoses poses;
  poses.end.lean = -90;
  movement.options[0].poses = poses;
  EXPECT_EQ(posesOf(movement, &movement.options[0]), poses);
  EXPECT_EQ(posesOf(movement, &movement.options[1]), movement.poses);
}

} // namespace
} // namespace matwright::test
