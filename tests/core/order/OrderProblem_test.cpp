#include "core/order/OrderProblem.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

OrderProblem fourItems() {
  OrderProblem problem;
  problem.places = 1;
  problem.ways = {0};
  problem.items = {{0, 0}, {0, 0}, {0, 0}, {0, 0}};
  return problem;
}

TEST(OrderProblem, KnowsWhatFollowsFromItsPrecedences) {
  OrderProblem problem = fourItems();
  problem.before = {{0, 1}, {1, 2}};
  problem.last = 3;
  const auto relation = relationOf(problem);
  ASSERT_TRUE(relation);
  EXPECT_TRUE(relation->before(0, 2));
  EXPECT_TRUE(relation->before(0, 3));
  EXPECT_FALSE(relation->before(2, 0));
}

TEST(OrderProblem, SectionsFollowOneAnother) {
  OrderProblem problem = fourItems();
  problem.sections = {5, 1, 5, 1};
  const auto relation = relationOf(problem);
  ASSERT_TRUE(relation);
  EXPECT_TRUE(relation->before(1, 0));
  EXPECT_TRUE(relation->before(3, 2));
  EXPECT_FALSE(relation->before(0, 2));
}

TEST(OrderProblem, APairThatIsAddedBringsWhatFollows) {
  OrderRelation relation(4);
  relation.add(0, 1);
  relation.add(2, 3);
  relation.add(1, 2);
  EXPECT_TRUE(relation.before(0, 3));
  EXPECT_FALSE(relation.before(3, 0));
}

struct FaultCase {
  const char* name;
  OrderFault fault;
  void (*spoil)(OrderProblem&);
};

class OrderProblemFaults : public testing::TestWithParam<FaultCase> {};

TEST_P(OrderProblemFaults, AreNamed) {
  OrderProblem problem = fourItems();
  ASSERT_TRUE(relationOf(problem));
  GetParam().spoil(problem);
  const auto relation = relationOf(problem);
  ASSERT_FALSE(relation);
  EXPECT_EQ(relation.error(), GetParam().fault);
}

INSTANTIATE_TEST_SUITE_P(
    All, OrderProblemFaults,
    testing::Values(FaultCase{"Cycle", OrderFault::cycle,
                              [](auto& problem) {
                                problem.before = {{0, 1}, {1, 2}, {2, 0}};
                              }},
                    FaultCase{"BeforeItself", OrderFault::cycle,
                              [](auto& problem) {
                                problem.before = {{1, 1}};
                              }},
                    FaultCase{"AgainstSections", OrderFault::cycle,
                              [](auto& problem) {
                                problem.sections = {0, 0, 1, 1};
                                problem.before = {{3, 0}};
                              }},
                    FaultCase{"BeforeTheFirst", OrderFault::cycle,
                              [](auto& problem) {
                                problem.first = 2;
                                problem.before = {{3, 2}};
                              }},
                    FaultCase{"TooMany", OrderFault::tooManyItems,
                              [](auto& problem) { problem.items.resize(kMostOrderItems + 1); }},
                    FaultCase{"Ways", OrderFault::wrongSize, [](auto& problem) { problem.places = 2; }},
                    FaultCase{"Sections", OrderFault::wrongSize, [](auto& problem) { problem.sections = {0}; }},
                    FaultCase{"Place", OrderFault::unknownPlace, [](auto& problem) { problem.items[2].end = 1; }},
                    FaultCase{"Origin", OrderFault::unknownPlace, [](auto& problem) { problem.origin = -1; }},
                    FaultCase{"Pair", OrderFault::unknownItem,
                              [](auto& problem) {
                                problem.before = {{0, 4}};
                              }},
                    FaultCase{"Last", OrderFault::unknownItem, [](auto& problem) { problem.last = 4; }},
                    FaultCase{"Pin", OrderFault::unknownItem,
                              [](auto& problem) {
                                problem.pinned = {{0, 4}};
                              }},
                    FaultCase{"PinTwice", OrderFault::pinnedTwice,
                              [](auto& problem) {
                                problem.pinned = {{0, 1}, {0, 2}};
                              }},
                    FaultCase{"PinOnPin", OrderFault::pinnedTwice,
                              [](auto& problem) {
                                problem.pinned = {{0, 1}, {2, 1}};
                              }},
                    FaultCase{"Negative", OrderFault::costOutOfRange, [](auto& problem) { problem.ways = {-2}; }},
                    FaultCase{"Dear", OrderFault::costOutOfRange,
                              [](auto& problem) { problem.ways = {kLargestOrderCost + 1}; }},
                    FaultCase{"State", OrderFault::badAutomaton,
                              [](auto& problem) {
                                problem.automaton = {1, 0, {0, 0, 1, 0}, {0, 0, 0, 0}};
                              }},
                    FaultCase{"MachineSize", OrderFault::wrongSize,
                              [](auto& problem) {
                                problem.automaton = {2, 0, {0, 0, 1, 0}, {0, 0, 0, 0}};
                              }},
                    FaultCase{"Extra", OrderFault::costOutOfRange,
                              [](auto& problem) {
                                problem.automaton = {1, 0, {0, 0, 0, 0}, {0, 0, -5, 0}};
                              }},
                    FaultCase{"Arc", OrderFault::badArc,
                              [](auto& problem) {
                                problem.arc = {{1, 1, -1, 1}, 1, 1, {0, 0, 0, 0}};
                              }},
                    FaultCase{"ArcSize", OrderFault::wrongSize,
                              [](auto& problem) {
                                problem.arc = {{1, 1, 1, 1}, 1, 2, {0, 0}};
                              }}),
    [](const auto& tested) { return std::string(tested.param.name); });

TEST(OrderAutomaton, TwoMachinesTogetherAskWhatEachAsks) {
  const OrderAutomaton counting{3, 0, {1, 0, 2, 0, 2, 0}, {0, 0, 1, 0, 10, 0}}; // dislikes item 0 running
  const OrderAutomaton turning{2, 0, {1, 0, 0, 1}, {5, 7, 0, kNoWay}};
  const OrderAutomaton both = combined(counting, turning, 2);
  EXPECT_EQ(both.extra[0], 5);
  const int after = both.next[0];
  EXPECT_EQ(both.extra[static_cast<std::size_t>(after) * 2], 1);
  EXPECT_EQ(both.extra[static_cast<std::size_t>(after) * 2 + 1], kNoWay);
  EXPECT_EQ(combined(counting, {}, 2), counting);
}

} // namespace
} // namespace matwright
