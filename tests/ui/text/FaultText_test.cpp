#include "tests/support/RealKnowledge.h"
#include "ui/text/FaultText.h"

#include <gtest/gtest.h>
#include <set>

namespace matwright {
namespace {

const Knowledge& real() { return test::realKnowledge(); }

TEST(FaultText, EveryKindHasASentenceOfItsOwn) {
  std::set<QString> said;
  for (std::size_t i = 0; i < kWordCount<FaultKind>; ++i) {
    Fault fault;
    fault.kind = static_cast<FaultKind>(i);
    fault.field = Field::features;
    fault.joint = Joint::kneeNear;
    EXPECT_TRUE(said.insert(text(fault, real())).second) << word(fault.kind);
  }
  EXPECT_FALSE(said.contains(QString()));
}

TEST(FaultText, SaysWhatIsThereAndWhatMayBe) {
  Movement movement = *real().catalogue.find({"hundred"});
  movement.setUp = "Lie down now.";
  movement.options[0].effort = Effort(9);
  const auto faults = withoutHints(faultsIn(movement, real()));
  ASSERT_EQ(faults.size(), 2U);
  EXPECT_EQ(text(faults[0], real()), QStringLiteral("Too short: 8 words at least, 3 are there."));
  EXPECT_EQ(line(faults[0], movement, real()),
            QStringLiteral("hundred: setUp: Too short: 8 words at least, 3 are there."));
  EXPECT_TRUE(line(faults[1], movement, real())
                  .startsWith(QStringLiteral("hundred: head-down: effort: An effort of 9, where the movement has 6")));
}

TEST(FaultText, SaysWhichQuestionTestOrPoseIsMeant) {
  const auto textOf = [](Field field, std::size_t place) {
    Fault fault;
    fault.kind = FaultKind::empty;
    fault.field = field;
    fault.place = place;
    return text(fault, real());
  };
  EXPECT_TRUE(textOf(Field::qualifiers, 1).startsWith(QStringLiteral("Question 2: ")));
  EXPECT_TRUE(textOf(Field::when, 0).startsWith(QStringLiteral("Test 1: ")));
  EXPECT_TRUE(textOf(Field::tempo, 2).startsWith(QStringLiteral("Phase 3: ")));
  EXPECT_TRUE(textOf(Field::endPose, 0).startsWith(QStringLiteral("End: ")));
  Fault choice;
  choice.kind = FaultKind::empty;
  choice.field = Field::choices;
  choice.place = 0;
  choice.within = 1;
  EXPECT_TRUE(text(choice, real()).startsWith(QStringLiteral("Question 1, choice 2: ")));
}

} // namespace
} // namespace matwright
