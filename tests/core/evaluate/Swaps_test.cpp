#include "core/evaluate/Swaps.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

const Date kDay = day(2026, 6, 1);

class SwapsTest : public testing::Test {
protected:
  SwapsTest() {
    RuleBook book;
    book.conditions = {condition("ache")};
    book.rules = {rule("bend", Scope::step, Level::adapt, {Feature::flexLoad}, "ache"),
                  rule("long", Scope::step, Level::watch, {Feature::legsLong}, "ache"),
                  rule("back", Scope::wholeClass, Level::watch, {}, "ache")};
    knowledge_.rules = std::move(book);
    plan_ = classOf({step(1, "curl"), step(2, "fold")});
    plan_.people = {PersonId{"ida"}, PersonId{"bo"}};
  }

  Evaluation evaluated() const { return evaluate(knowledge_, plan_, roster_, kDay); }
  Caution cautionAt(std::optional<std::int64_t> step) const {
    for (const Caution& each : evaluated().cautions)
      if (each.step.has_value() == step.has_value() && (!step || each.step->value == *step))
        return each;
    ADD_FAILURE() << "no caution there";
    return {};
  }
  std::vector<Swap> swaps(const Caution& caution, std::optional<PersonId> person = {}) const {
    return swapsFor(knowledge_, plan_, roster_, kDay, caution, std::move(person));
  }
  static std::vector<std::string> names(const std::vector<Swap>& swaps) {
    std::vector<std::string> all;
    for (const Swap& each : swaps)
      all.push_back(each.movement->id.value + (each.option ? '/' + each.option->id.value : ""));
    return all;
  }
  // A second movement that works the same, without the bend; better than its option only in what it costs to get there.
  void addPress(const std::string& where) {
    std::vector<Movement> movements = smallMovements();
    Movement press = movement("press", where);
    press.regions = {Region::abdominals, Region::neck};
    press.spine = {SpineAction::flexion};
    Option ring;
    ring.id = OptionId{"ring"};
    ring.name = "With a ring";
    ring.props = PropSet{Prop::ring};
    press.options = {ring};
    movements.push_back(press);
    knowledge_.catalogue = Catalogue(std::move(movements));
  }

  Knowledge knowledge_ = smallKnowledge();
  std::vector<Person> roster_{person("ida", {"ache"}), person("bo")};
  ClassPlan plan_;
};

TEST_F(SwapsTest, OfferTheOptionThatTakesTheFeatureAway) {
  // `hard` still bends, and brings long legs beside.
  const auto found = swaps(cautionAt(1));
  EXPECT_THAT(names(found), ElementsAre("curl/low"));
  const Swap& low = found.at(0);
  EXPECT_TRUE(low.sameMovement);
  EXPECT_EQ(low.likeness, 1);
  EXPECT_EQ(countLevels(low.gone), (LevelCounts{0, 1, 0, 0}));
  EXPECT_THAT(low.come, IsEmpty());
  EXPECT_EQ(low.left, std::nullopt);
  EXPECT_EQ(low.added, Seconds(-12)) << "three repetitions in place of five";
}

TEST_F(SwapsTest, OfferOtherMovementsOfLikePurposeAfterTheOptions) {
  addPress("lying");
  const auto found = swaps(cautionAt(1));
  EXPECT_THAT(names(found), ElementsAre("curl/low", "press"));
  EXPECT_FALSE(found.at(1).sameMovement);
  EXPECT_EQ(found.at(1).fetched, PropSet{}) << "of two ways to do it the one without the ring";
}

TEST_F(SwapsTest, LeaveOutWhatTheClassHasAndWhatIsForOtherThings) {
  addPress("lying");
  plan_.sections[0].steps.push_back(step(3, "arch"));
  Step press = stepOf(StepId{4}, *knowledge_.catalogue.find(MovementId{"press"}));
  plan_.sections[0].steps.push_back(press);
  EXPECT_THAT(names(swaps(cautionAt(1))), ElementsAre("curl/low"));
}

TEST_F(SwapsTest, SayWhatMovingTheyCost) {
  addPress("sit");
  const auto found = swaps(cautionAt(1));
  ASSERT_THAT(names(found), ElementsAre("curl/low", "press"));
  // People start where the first step is, so the change to sitting falls away.
  EXPECT_EQ(found.at(1).addedChanges, -1);
  EXPECT_EQ(found.at(1).addedMoving, Seconds(-4));
}

TEST_F(SwapsTest, ForAPersonLeaveTheClassItsTimes) {
  const auto found = swaps(cautionAt(1), PersonId{"ida"});
  ASSERT_THAT(names(found), ElementsAre("curl/low"));
  EXPECT_EQ(found.at(0).added, Seconds{});
  EXPECT_EQ(countLevels(found.at(0).gone), (LevelCounts{0, 1, 0, 0}));
  EXPECT_EQ(variantFor(PersonId{"ida"}, found.at(0)), (Variant{PersonId{"ida"}, MovementId{"curl"}, OptionId{"low"}}));
}

TEST_F(SwapsTest, AreNoneForTheClassAsAWhole) { EXPECT_THAT(swaps(cautionAt(std::nullopt)), IsEmpty()); }

TEST_F(SwapsTest, AreNoneForAMovementThatNobodyKnows) {
  plan_.sections[0].steps[0].movement = MovementId{"handstand"};
  EXPECT_THAT(swaps(cautionAt(1)), IsEmpty());
}

TEST_F(SwapsTest, KeepWhatBelongsToTheStep) {
  Step curl = dosed(step(1, "curl"), 9);
  curl.note = "slowly";
  curl.variants = {{PersonId{"bo"}, MovementId{"fold"}, {}}};
  plan_.sections[0].steps[0] = curl;
  addPress("lying");
  const auto found = swaps(cautionAt(1));
  ASSERT_EQ(found.size(), 2u);
  const Step low = swapped(curl, found[0]);
  EXPECT_EQ(low.id, StepId{1});
  EXPECT_EQ(low.option, OptionId{"low"});
  EXPECT_EQ(low.dose.amount, 3) << "the option brings its own";
  EXPECT_EQ(low.note, "slowly");
  EXPECT_EQ(low.variants, curl.variants);
  const Step press = swapped(curl, found[1]);
  EXPECT_EQ(press.movement, MovementId{"press"});
  EXPECT_EQ(press.dose.amount, 5);
  EXPECT_EQ(press.note, "slowly");
  EXPECT_THAT(press.variants, IsEmpty()) << "they were for another movement";
}

TEST(Likeness, CountsSharedRegionsTheSpineAndTheEffort) {
  Movement a = movement("a", "lying"), b = movement("b", "lying");
  EXPECT_EQ(likeness(a, b), 1);
  b.regions = {Region::hips, Region::abdominals}; // shared 1 of (2 abdominals + 2 hips)
  EXPECT_DOUBLE_EQ(likeness(a, b), 0.25);
  EXPECT_DOUBLE_EQ(likeness(b, a), 0.25);
  b.regions = a.regions;
  b.spine = {SpineAction::rotation};
  EXPECT_DOUBLE_EQ(likeness(a, b), 0.7);
  b.effort = Effort(7); // three more
  EXPECT_DOUBLE_EQ(likeness(a, b), 0.7 * 0.7);
}

} // namespace
} // namespace matwright::test
