#include "core/base/EnumSet.h"
#include "core/base/Id.h"
#include "core/base/Result.h"

#include <gtest/gtest.h>
#include <unordered_set>
#include <vector>

namespace matwright {

enum class Fruit { apple, pear, plum };
template <> struct Words<Fruit> { static constexpr auto list = wordList("apple", "pear", "plum"); };

namespace {

using Basket = EnumSet<Fruit>;

TEST(Words, GoThereAndBack) {
  EXPECT_EQ(kWordCount<Fruit>, 3u);
  for (const Fruit fruit : {Fruit::apple, Fruit::pear, Fruit::plum})
    EXPECT_EQ(fromWord<Fruit>(word(fruit)), fruit);
}

TEST(Words, KnowNoOthers) {
  for (const char* text : {"", "Apple", "apple ", "appl", "apples", "cherry"})
    EXPECT_FALSE(fromWord<Fruit>(text)) << text;
}

TEST(EnumSet, HoldsEachOnce) {
  Basket basket{Fruit::plum, Fruit::apple, Fruit::plum};
  EXPECT_EQ(basket.size(), 2);
  EXPECT_TRUE(basket.contains(Fruit::apple));
  EXPECT_FALSE(basket.contains(Fruit::pear));
  basket.erase(Fruit::apple);
  basket.erase(Fruit::pear);
  EXPECT_EQ(basket, Basket{Fruit::plum});
  EXPECT_TRUE(Basket{}.empty());
}

TEST(EnumSet, IsVisitedInTheOrderOfTheWords) {
  std::vector<Fruit> seen;
  Basket{Fruit::plum, Fruit::apple}.forEach([&](Fruit fruit) { seen.push_back(fruit); });
  EXPECT_EQ(seen, (std::vector{Fruit::apple, Fruit::plum}));
}

TEST(EnumSet, ComparesAsSetsDo) {
  const Basket both{Fruit::apple, Fruit::pear};
  const Basket one{Fruit::pear};
  EXPECT_TRUE(both.containsAll(one));
  EXPECT_TRUE(both.containsAll({}));
  EXPECT_FALSE(one.containsAll(both));
  EXPECT_TRUE(both.intersects(one));
  EXPECT_FALSE(both.intersects({Fruit::plum}));
  EXPECT_FALSE(both.intersects({}));
  EXPECT_EQ(both & one, one);
  EXPECT_EQ(one | Basket{Fruit::apple}, both);
  EXPECT_EQ(both.without(one), Basket{Fruit::apple});
  EXPECT_EQ(one.without(both), Basket{});
}

TEST(Id, ServesAsAKey) {
  struct Tag;
  using ThingId = Id<Tag>;
  EXPECT_TRUE(ThingId{}.empty());
  EXPECT_LT(ThingId{"a"}, ThingId{"b"});
  const std::unordered_set<ThingId> ids{{"a"}, {"b"}, {"a"}};
  EXPECT_EQ(ids.size(), 2u);
}

TEST(Result, HoldsAValueOrAnError) {
  const auto half = [](int number) -> Result<int> {
    if (number % 2)
      return failure(Error{ErrorCode::outOfRange, {}, {}, "an even number", std::to_string(number)});
    return number / 2;
  };
  EXPECT_EQ(half(4), 2);
  ASSERT_FALSE(half(5));
  EXPECT_EQ(half(5).error().found, "5");
}

} // namespace
} // namespace matwright
