// Ways in random graphs, held against an independent all-pairs reference (Floyd and Warshall) and against what must be
// true of shortest ways whatever the graph.
#include "tests/support/RandomClass.h"
#include "tests/support/Seeds.h"
#include "tests/support/SmallKnowledge.h"

#include <cmath>
#include <gtest/gtest.h>
#include <map>

namespace matwright::test {
namespace {

struct Cost {
  int offences = 0;
  long tenths = 0;
  friend bool operator==(const Cost&, const Cost&) = default;
  friend auto operator<=>(const Cost&, const Cost&) = default;
  Cost operator+(const Cost& other) const { return {offences + other.offences, tenths + other.tenths}; }
};

const std::vector<Feature> kFeatures{Feature::rise, Feature::flexLoad, Feature::wristLoad, Feature::kneel};

FeatureSet randomFeatures(Draw& draw) {
  FeatureSet features;
  for (Feature feature : kFeatures)
    if (draw.chance(0.25))
      features.insert(feature);
  return features;
}

TransitionGraph randomGraph(Draw& draw) {
  std::vector<Position> positions;
  const int pairs = draw.from(0, 3);
  for (int i = 0; i < pairs; ++i) {
    const std::string left = "left-" + std::to_string(i), right = "right-" + std::to_string(i);
    positions.push_back(position(left, Elevation::sideLying, {}, right));
    positions.push_back(position(right, Elevation::sideLying, {}, left));
  }
  for (int i = draw.from(1, 6); i > 0; --i)
    positions.push_back(position("middle-" + std::to_string(i), Elevation::sitting));
  std::vector<Change> changes;
  const int count = draw.from(0, static_cast<int>(3 * positions.size()));
  for (int i = 0; i < count; ++i) {
    const Position& from = draw.oneOf(positions);
    const Position& to = draw.oneOf(positions);
    if (from.id != to.id) // each its own means, so that all are mirrored
      changes.push_back(change(from.id.value, to.id.value, draw.from(1, 40) / 10.0, randomFeatures(draw), "",
                               "means " + std::to_string(i)));
  }
  return {std::move(positions), std::move(changes)};
}

Cost costOf(const Change& change, FeatureSet avoid) {
  return {change.features.intersects(avoid) ? 1 : 0, std::lround(change.seconds.value() * 10)};
}

using Table = std::map<std::pair<std::string, std::string>, Cost>; // pairs without a way are absent

Table referenceOf(const TransitionGraph& graph, FeatureSet avoid) {
  Table best;
  const auto improve = [&](const std::string& from, const std::string& to, const Cost& cost) {
    const auto [at, isNew] = best.try_emplace({from, to}, cost);
    if (!isNew && cost < at->second)
      at->second = cost;
  };
  for (const Position& each : graph.positions())
    improve(each.id.value, each.id.value, {});
  for (const Change& each : graph.changes())
    improve(each.from.value, each.to.value, costOf(each, avoid));
  for (const Position& over : graph.positions())
    for (const Position& from : graph.positions())
      for (const Position& to : graph.positions()) {
        const auto first = best.find({from.id.value, over.id.value});
        const auto second = best.find({over.id.value, to.id.value});
        if (first != best.end() && second != best.end())
          improve(from.id.value, to.id.value, first->second + second->second);
      }
  return best;
}

Cost costOf(const Way& way, FeatureSet avoid) {
  Cost cost;
  for (const Change* each : way.changes)
    cost = cost + costOf(*each, avoid);
  return cost;
}

struct RandomGraphs {
  explicit RandomGraphs(unsigned seed) : draw(seed) {}
  template <class Visit> void forEachPair(Visit visit) const {
    for (const Position& from : graph.positions())
      for (const Position& to : graph.positions())
        visit(from.id, to.id);
  }

  Draw draw;
  TransitionGraph graph = randomGraph(draw);
  FeatureSet avoid = randomFeatures(draw);
  Ways ways{graph, avoid};
  Table reference = referenceOf(graph, avoid);
};

TEST(RandomGraphs, WaysCostWhatTheReferenceSays) {
  forEachSeed<RandomGraphs>(1, 200, [](RandomGraphs& scene) {
    scene.forEachPair([&](const PositionId& from, const PositionId& to) {
      const auto way = scene.ways.between(from, to);
      const auto expected = scene.reference.find({from.value, to.value});
      ASSERT_EQ(way.has_value(), expected != scene.reference.end()) << from.value << " -> " << to.value;
      if (way) {
        EXPECT_EQ(costOf(*way, scene.avoid), expected->second) << from.value << " -> " << to.value;
      }
    });
  });
}

TEST(RandomGraphs, WaysAreChainsWhoseSumsAndFeaturesAreThoseOfTheirChanges) {
  forEachSeed<RandomGraphs>(1, 200, [](RandomGraphs& scene) {
    scene.forEachPair([&](const PositionId& from, const PositionId& to) {
      const auto way = scene.ways.between(from, to);
      if (!way)
        return;
      PositionId at = from;
      Seconds seconds;
      FeatureSet features;
      for (const Change* each : way->changes) {
        EXPECT_EQ(each->from, at);
        at = each->to;
        seconds += each->seconds;
        features |= each->features;
      }
      EXPECT_EQ(at, to);
      EXPECT_NEAR(way->seconds.value(), seconds.value(), 1e-9);
      EXPECT_EQ(way->features, features);
      EXPECT_EQ(way->unavoided, features & scene.avoid);
    });
  });
}

TEST(RandomGraphs, EachChangeIsTheFirstListedOfThoseThatLeadOnAsCheaply) {
  forEachSeed<RandomGraphs>(1, 200, [](RandomGraphs& scene) {
    scene.forEachPair([&](const PositionId& from, const PositionId& to) {
      const auto way = scene.ways.between(from, to);
      if (!way)
        return;
      for (const Change* taken : way->changes) {
        const Cost rest = scene.reference.at({taken->from.value, to.value});
        for (const Change& listed : scene.graph.changes()) {
          if (&listed == taken)
            break;
          const auto onward = scene.reference.find({listed.to.value, to.value});
          const bool asGood = listed.from == taken->from && onward != scene.reference.end() &&
                              costOf(listed, scene.avoid) + onward->second == rest;
          EXPECT_FALSE(asGood) << "passed over " << listed.by << " for " << taken->by;
        }
      }
    });
  });
}

TEST(RandomGraphs, NoDetourIsCheaper) {
  forEachSeed<RandomGraphs>(1, 200, [](RandomGraphs& scene) {
    for (const Position& over : scene.graph.positions())
      scene.forEachPair([&](const PositionId& from, const PositionId& to) {
        const auto first = scene.ways.between(from, over.id);
        const auto second = scene.ways.between(over.id, to);
        if (!first || !second)
          return;
        const auto direct = scene.ways.between(from, to);
        ASSERT_TRUE(direct);
        EXPECT_LE(costOf(*direct, scene.avoid), costOf(*first, scene.avoid) + costOf(*second, scene.avoid));
      });
  });
}

TEST(RandomGraphs, TheOtherSideCostsTheSame) {
  forEachSeed<RandomGraphs>(1, 200, [](RandomGraphs& scene) {
    scene.forEachPair([&](const PositionId& from, const PositionId& to) {
      const auto way = scene.ways.between(from, to);
      const auto other = scene.ways.between(scene.graph.mirrored(from), scene.graph.mirrored(to));
      ASSERT_EQ(way.has_value(), other.has_value());
      if (way) {
        EXPECT_EQ(costOf(*way, scene.avoid), costOf(*other, scene.avoid));
      }
    });
  });
}

TEST(RandomGraphs, AvoidingNeverAddsOffencesNorSavesTime) {
  forEachSeed<RandomGraphs>(1, 200, [](RandomGraphs& scene) {
    const Ways plain(scene.graph, {});
    scene.forEachPair([&](const PositionId& from, const PositionId& to) {
      const auto careful = scene.ways.between(from, to);
      const auto quick = plain.between(from, to);
      ASSERT_EQ(careful.has_value(), quick.has_value());
      if (careful) {
        EXPECT_LE(costOf(*careful, scene.avoid).offences, costOf(*quick, scene.avoid).offences);
        EXPECT_GE(costOf(*careful, {}).tenths, costOf(*quick, {}).tenths);
      }
    });
  });
}

} // namespace
} // namespace matwright::test
