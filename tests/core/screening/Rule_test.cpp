#include "tests/support/SmallKnowledge.h"

#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using Met = std::optional<FeatureSet>;

Demand asking(FeatureSet any, FeatureSet all = {}) { return {any, all, {}, 0}; }
Asked features(FeatureSet asked) { return {asked, {}, Effort{}}; }

TEST(Demand, IsMetByAnyOfItsFeatures) {
  const Demand any = asking({Feature::rot, Feature::latflex});
  EXPECT_EQ(met(any, features({Feature::latflex, Feature::kneel})), Met({Feature::latflex}));
  EXPECT_EQ(met(any, features({Feature::latflex, Feature::rot})), Met({Feature::rot, Feature::latflex}));
  EXPECT_FALSE(met(any, features({Feature::kneel})));
  EXPECT_FALSE(met(any, features({})));
}

TEST(Demand, IsMetByAllOfItsFeaturesTogether) {
  const Demand all = asking({}, {Feature::rot, Feature::spineFast});
  EXPECT_EQ(met(all, features({Feature::rot, Feature::spineFast, Feature::kneel})),
            Met({Feature::rot, Feature::spineFast}));
  EXPECT_FALSE(met(all, features({Feature::rot})));
}

TEST(Demand, WithAnyAndAllNeedsBoth) {
  const Demand both = asking({Feature::supine, Feature::prone}, {Feature::breathHold});
  EXPECT_EQ(met(both, features({Feature::prone, Feature::breathHold})), Met({Feature::prone, Feature::breathHold}));
  EXPECT_FALSE(met(both, features({Feature::prone})));
  EXPECT_FALSE(met(both, features({Feature::breathHold})));
}

TEST(Demand, IsMetAtOneOfItsHeights) {
  Demand upright;
  upright.at = {Elevation::kneeling, Elevation::standing};
  EXPECT_EQ(met(upright, {{Feature::balance}, {Elevation::standing}, Effort{}}), Met(FeatureSet{}));
  EXPECT_TRUE(met(upright, {{}, {Elevation::sitting, Elevation::kneeling}, Effort{}}));
  EXPECT_FALSE(met(upright, {{}, {Elevation::sitting}, Effort{}}));
  EXPECT_FALSE(met(upright, {{}, {}, Effort{}}));
}

TEST(Demand, IsMetFromItsEffortOn) {
  Demand hard;
  hard.effortFrom = 7;
  EXPECT_FALSE(met(hard, {{Feature::balance}, {}, Effort(6)}));
  EXPECT_EQ(met(hard, {{Feature::balance}, {}, Effort(7)}), Met(FeatureSet{}));
  EXPECT_TRUE(met(hard, {{}, {}, Effort(8)}));
  EXPECT_FALSE(met(hard, {{}, {}, Effort{}})); // of a movement that nobody knows
}

TEST(Demand, IsMetFromItsLeverOn) {
  Demand lever;
  lever.leverFrom = 60;
  EXPECT_FALSE(namesNothing(lever));
  EXPECT_FALSE(met(lever, {{Feature::legsLong}, {}, Effort(9), 59}));
  EXPECT_EQ(met(lever, {{Feature::legsLong}, {}, Effort{}, 60}), Met(FeatureSet{}));
  EXPECT_TRUE(met(lever, {{}, {}, Effort{}, 130}));
  EXPECT_FALSE(met(lever, {{Feature::legsLong}, {}, Effort(9)})); // of a movement whose load nobody knows
}

TEST(Demand, OfAllKindsNeedsAllOfThem) {
  const Demand demand{{Feature::armOver, Feature::inverted}, {Feature::breathHold}, {Elevation::standing}, 5};
  const Asked enough{{Feature::armOver, Feature::breathHold}, {Elevation::standing}, Effort(5)};
  EXPECT_EQ(met(demand, enough), Met({Feature::armOver, Feature::breathHold}));
  Asked less = enough;
  less.features = {Feature::armOver};
  EXPECT_FALSE(met(demand, less));
  less = enough;
  less.features = {Feature::breathHold};
  EXPECT_FALSE(met(demand, less));
  less = enough;
  less.at = {Elevation::faceUp};
  EXPECT_FALSE(met(demand, less));
  less = enough;
  less.effort = Effort(4);
  EXPECT_FALSE(met(demand, less));
}

TEST(Demand, ThatNamesNothingIsNeverMet) {
  EXPECT_TRUE(namesNothing(Demand{}));
  EXPECT_FALSE(met(Demand{}, {{Feature::rot}, {Elevation::standing}, Effort(10)}));
  for (const Demand& each : {asking({Feature::rot}), asking({}, {Feature::rot}),
                             Demand{{}, {}, {Elevation::sitting}, 0}, Demand{{}, {}, {}, 1}})
    EXPECT_FALSE(namesNothing(each));
}

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
