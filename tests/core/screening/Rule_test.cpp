#include "tests/support/SmallKnowledge.h"

#include <gtest/gtest.h>

namespace matwright::test {
namespace {

Rule asking(FeatureSet any, FeatureSet all) {
  Rule made = rule("asks", Scope::step, Level::adapt, any);
  made.asks.all = all;
  return made;
}

TEST(Rule, SpeaksForAnyOfItsFeatures) {
  const Rule any = asking({Feature::rot, Feature::latflex}, {});
  EXPECT_EQ(matched(any, {Feature::latflex, Feature::kneel}), FeatureSet{Feature::latflex});
  EXPECT_EQ(matched(any, {Feature::latflex, Feature::rot}), (FeatureSet{Feature::rot, Feature::latflex}));
  EXPECT_TRUE(matched(any, {Feature::kneel}).empty());
  EXPECT_TRUE(matched(any, {}).empty());
}

TEST(Rule, SpeaksForAllOfItsFeaturesTogether) {
  const Rule all = asking({}, {Feature::rot, Feature::spineFast});
  EXPECT_EQ(matched(all, {Feature::rot, Feature::spineFast, Feature::kneel}),
            (FeatureSet{Feature::rot, Feature::spineFast}));
  EXPECT_TRUE(matched(all, {Feature::rot}).empty());
}

TEST(Rule, WithBothDemandsNeedsBoth) {
  const Rule both = asking({Feature::supine, Feature::prone}, {Feature::breathHold});
  EXPECT_EQ(matched(both, {Feature::prone, Feature::breathHold}), (FeatureSet{Feature::prone, Feature::breathHold}));
  EXPECT_TRUE(matched(both, {Feature::prone}).empty());
  EXPECT_TRUE(matched(both, {Feature::breathHold}).empty());
}

TEST(Rule, WithoutDemandsFindsNoFeatures) { EXPECT_TRUE(matched(asking({}, {}), {Feature::rot}).empty()); }

TEST(RuleBook, FindsConditionsAndSources) {
  RuleBook book;
  book.conditions = {condition("glaucoma"), condition("falls")};
  book.sources = {{SourceId{"a"}, "A 2020", SourceKind::study}, {SourceId{"b"}, "B 2021", SourceKind::review}};
  EXPECT_EQ(book.findCondition(ConditionId{"falls"}), &book.conditions[1]);
  EXPECT_EQ(book.findCondition(ConditionId{"gout"}), nullptr);
  EXPECT_EQ(book.findSource(SourceId{"b"}), &book.sources[1]);
  EXPECT_EQ(book.findSource(SourceId{"c"}), nullptr);
}

} // namespace
} // namespace matwright::test
