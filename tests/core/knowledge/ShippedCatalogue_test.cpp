// What comes with the program has none of the faults that a teacher would be told of in her own.
#include "tests/core/knowledge/FaultLines.h"
#include "tests/support/RealKnowledge.h"

#include <functional>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using testing::Contains;
using testing::IsEmpty;

struct Shipped : testing::Test {
  void SetUp() override { ASSERT_EQ(test::whatIsWrongWithRealKnowledge(), ""); }
};

TEST_F(Shipped, MovementsHaveNoFault) {
  for (const Movement& movement : test::realKnowledge().catalogue.movements())
    for (const std::string& line : linesOf(withoutHints(faultsIn(movement, test::realKnowledge())), &movement))
      ADD_FAILURE() << movement.id.value << ": " << line;
}

TEST_F(Shipped, ConditionsSourcesAndRulesHaveNoFault) {
  const Knowledge& real = test::realKnowledge();
  for (const Condition& condition : real.rules.conditions)
    EXPECT_THAT(linesOf(withoutHints(faultsIn(condition, real))), IsEmpty()) << condition.id.value;
  for (const Source& source : real.rules.sources)
    EXPECT_THAT(linesOf(withoutHints(faultsIn(source, real))), IsEmpty()) << source.id.value;
  for (const Rule& rule : real.rules.rules)
    EXPECT_THAT(linesOf(withoutHints(faultsIn(rule, real))), IsEmpty()) << rule.id.value;
}

TEST_F(Shipped, IdsAreNotThoseOfOnesOwn) {
  const Knowledge& real = test::realKnowledge();
  const auto expectNone = [](const auto& values) {
    for (const auto& value : values)
      EXPECT_FALSE(value.id.value.starts_with("own-")) << value.id.value;
  };
  expectNone(real.catalogue.movements());
  expectNone(real.rules.conditions);
  expectNone(real.rules.sources);
  expectNone(real.rules.rules);
}

} // namespace
} // namespace matwright
