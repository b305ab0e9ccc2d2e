// Each fault is made on purpose in a movement that has none.
#include "core/knowledge/OwnKnowledge.h"
#include "core/knowledge/Shape.h"
#include "tests/core/knowledge/FaultLines.h"
#include "tests/support/RealKnowledge.h"

#include <functional>
#include <gmock/gmock.h>
#include <map>
#include <ostream>
#include <set>

namespace matwright {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Not;

const Movement& shipped(const char* id) { return *test::realKnowledge().catalogue.find({id}); }

struct Spoiling {
  const char* line;     // of the fault that must be found, among others perhaps
  const char* movement; // to spoil
  std::function<void(Movement&)> spoil;
};

void PrintTo(const Spoiling& spoiling, std::ostream* out) { *out << spoiling.line; }

std::string words(int count) {
  std::string text;
  for (int i = 0; i < count; ++i)
    text += "word ";
  return text;
}

const Spoiling kSpoilings[] = {
    {"empty name", "hundred", [](Movement& m) { m.name.clear(); }},
    {"too-long name", "hundred", [](Movement& m) { m.name.assign(kLongestName + 1, 'a'); }},
    {"twice name: hundred", "roll-up", [](Movement& m) { m.name = shipped("hundred").name; }},
    {"empty about", "hundred", [](Movement& m) { m.about.clear(); }},
    {"too-long about", "hundred", [](Movement& m) { m.about.assign(kLongestNote + 1, 'a'); }},
    {"unknown start: floating", "hundred", [](Movement& m) { m.start = {"floating"}; }},
    {"empty end", "hundred", [](Movement& m) { m.end = {}; }},
    {"out-of-range dose", "hundred", [](Movement& m) { m.dose.amount = 0; }},
    {"out-of-range dose", "hundred", [](Movement& m) { m.dose.amount = Dose::kMost + 1; }},
    {"out-of-range tempo", "hundred", [](Movement& m) { m.tempo.secondsPerCount = Seconds(0.1); }},
    {"out-of-range tempo", "hundred", [](Movement& m) { m.tempo.secondsPerCount = Seconds(11); }},
    {"out-of-range tempo/1", "hundred", [](Movement& m) { m.tempo.phases[1].counts = 0; }},
    {"empty tempo", "hundred", [](Movement& m) { m.tempo.phases.clear(); }},
    {"too-long tempo", "hundred", [](Movement& m) { m.tempo.phases.resize(Tempo::kMostPhases + 1); }},
    {"empty setUp", "hundred", [](Movement& m) { m.setUp = " "; }},
    {"too-few-words setUp", "hundred", [](Movement& m) { m.setUp = words(7); }},
    {"too-many-words setUp", "hundred", [](Movement& m) { m.setUp = words(26); }},
    {"empty action", "hundred", [](Movement& m) { m.action.clear(); }},
    {"too-many-words action", "hundred", [](Movement& m) { m.action = words(10); }},
    {"empty regions", "hundred", [](Movement& m) { m.regions.clear(); }},
    {"twice regions/1", "hundred",
     [](Movement& m) {
       m.regions = {Region::hips, Region::hips};
     }},
    {"empty spine", "hundred", [](Movement& m) { m.spine.clear(); }},
    {"unknown prerequisites/0: flying", "hundred", [](Movement& m) { m.prerequisites = {{"flying"}}; }},
    {"itself prerequisites/1: hundred", "hundred",
     [](Movement& m) {
       m.prerequisites = {{"roll-up"}, {"hundred"}};
     }},
    {"twice prerequisites/1", "hundred",
     [](Movement& m) {
       m.prerequisites = {{"toe-taps"}, {"toe-taps"}};
     }},
    {"itself prerequisites", "head-nod-curl", [](Movement& m) { m.prerequisites = {{"roll-up"}}; }},
    {"unknown counters/0: flying", "hundred", [](Movement& m) { m.counters = {{"flying"}}; }},
    {"same-strain counters/0: roll-up flex-load", "single-leg-stretch",
     [](Movement& m) { m.counters = {{"roll-up"}}; }},
    {"of-the-position features: supine", "hundred", [](Movement& m) { m.features.insert(Feature::supine); }},
    {"needs-hold features: breath-hold", "hundred", [](Movement& m) { m.features.insert(Feature::breathHold); }},
    {"hold-unnamed features: breath-hold", "hundred", [](Movement& m) { m.tempo.phases[0].breath = Breath::hold; }},
    {"needs-feature features: neck-load", "hundred", [](Movement& m) { m.features.insert(Feature::neckLoad); }},
    {"needs-feature features: spine-roll", "shoulder-bridge",
     [](Movement& m) { m.features.insert(Feature::spineRoll); }},
    {"needs-feature features: legs-long", "hundred", [](Movement& m) { m.features.erase(Feature::abdPressure); }},
    {"too-short-for features: stretch-end", "spine-twist",
     [](Movement& m) {
       m.features.insert(Feature::stretchEnd);
       m.dose = {30, DoseUnit::seconds};
     }},
    {"too-short-for features: iso-hold", "spine-twist",
     [](Movement& m) {
       m.features.insert(Feature::isoHold);
       m.dose = {20, DoseUnit::seconds};
     }},
    {"does-not-rest poses/start", "hundred",
     [](Movement& m) {
       m.poses.start.on = {Contact::back, Contact::upperBack, Contact::seat, Contact::toesNear, Contact::head};
     }},
    {"joint-too-far poses/end: thorax.rot", "hundred",
     [](Movement& m) {
       m.poses.end.lumbar.turn = 12;
       m.poses.end.thorax.turn = 40;
     }},
    {"joint-too-far poses/end: knee.near", "hundred", [](Movement& m) { m.poses.end.legs[0].knee = -20; }},
    {"not-shown features: rot", "hundred", [](Movement& m) { m.features.insert(Feature::rot); }},
    {"shown-only features: rot", "spine-twist", [](Movement& m) { m.features.erase(Feature::rot); }},
    {"shown-only features: ext-load prone arm-over", "hundred",
     [](Movement& m) { m.poses = shipped("swimming").poses; }},
    {"too-long options", "hundred", [](Movement& m) { m.options.resize(Movement::kMostOptions + 1, m.options[0]); }},
    {"feet-down twice options: feet-down", "hundred", [](Movement& m) { m.options.push_back(m.options[1]); }},
    {"head-down empty name", "hundred", [](Movement& m) { m.options[0].name.clear(); }},
    {"head-down empty how", "hundred", [](Movement& m) { m.options[0].how.clear(); }},
    {"head-down removes-absent removes: rot", "hundred",
     [](Movement& m) { m.options[0].removes.insert(Feature::rot); }},
    {"low-legs adds-present adds: legs-long", "hundred",
     [](Movement& m) { m.options[3].adds.insert(Feature::legsLong); }},
    {"head-down against-kind effort", "hundred", [](Movement& m) { m.options[0].effort = Effort(7); }},
    {"low-legs against-kind effort", "hundred", [](Movement& m) { m.options[3].effort = Effort(5); }},
    {"head-cushion against-kind effort", "hundred", [](Movement& m) { m.options[4].effort = Effort(9); }},
    {"head-down out-of-range dose", "hundred",
     [](Movement& m) {
       m.options[0].dose = Dose{0, DoseUnit::breaths};
     }},
    {"head-down empty tempo", "hundred",
     [](Movement& m) {
       m.options[0].tempo = Tempo{Seconds(1), {}};
     }},
    {"head-down shown-only features: flex-load neck-lift legs-long", "hundred",
     [](Movement& m) { m.options[0].poses = m.poses; }},
    {"head-down joint-too-far poses/start: lumbar", "hundred",
     [](Movement& m) { m.options[0].poses->start.lumbar.bend = 90; }},
};

class SpoiltMovement : public testing::TestWithParam<Spoiling> {};

TEST_P(SpoiltMovement, IsCaught) {
  Movement movement = shipped(GetParam().movement);
  EXPECT_THAT(linesOf(faultsIn(movement, test::realKnowledge()), &movement), Not(Contains(GetParam().line)));
  GetParam().spoil(movement);
  EXPECT_THAT(linesOf(faultsIn(movement, test::realKnowledge()), &movement), Contains(GetParam().line));
}

INSTANTIATE_TEST_SUITE_P(Movements, SpoiltMovement, testing::ValuesIn(kSpoilings));

TEST(MovementFaults, CompareWhatWasFoundWithItsBound) {
  Movement movement = shipped("hundred");
  movement.setUp = words(30);
  const auto faults = withoutHints(faultsIn(movement, test::realKnowledge()));
  ASSERT_EQ(faults.size(), 1u);
  EXPECT_EQ(faults[0].found, 30);
  EXPECT_EQ(faults[0].bound, Movement::kLongestSetUp);
}

TEST(MovementFaults, SeeAMovementThatIsNotAddedYet) {
  Movement movement = shipped("hundred");
  movement.id = {"own-hundred"};
  movement.name = "Own hundred";
  movement.prerequisites.push_back({"hundred"});
  EXPECT_THAT(linesOf(withoutHints(faultsIn(movement, test::realKnowledge()))), IsEmpty());
}

TEST(MovementFaults, FindCirclesThroughOthersOfOnesOwn) {
  Movement one = shipped("hundred"), other = shipped("roll-up");
  one.id = {"own-one"};
  one.prerequisites = {{"own-other"}};
  other.id = {"own-other"};
  other.prerequisites = {{"own-one"}};
  const Knowledge all = layered(test::realKnowledge(), {{one, other}, {}, {}, {}, {}});
  EXPECT_THAT(linesOf(faultsIn(one, all)), Contains("itself prerequisites"));
  EXPECT_THAT(linesOf(faultsIn(shipped("roll-up"), all)), Not(Contains("itself prerequisites")));
}

TEST(MovementFaults, HintAtWhatIsUnusual) {
  Movement movement = shipped("hundred");
  movement.options[0].how = "Rest your head on a firm pillow.";
  movement.options[0].adds.insert(Feature::kneel);
  movement.options[3].removes.insert(Feature::legsLong);
  movement.counters = {{"swan-dive"}};
  std::vector<std::string> hints;
  for (const Fault& fault : faultsIn(movement, test::realKnowledge()))
    if (fault.hint)
      hints.push_back(lineOf(fault, &movement));
  EXPECT_THAT(hints, Contains("head-down prop-unnamed how: pillow"));
  EXPECT_THAT(hints, Contains("harder-counter counters/0: swan-dive"));
  EXPECT_THAT(hints, Contains("head-down against-kind adds: kneel"));
  EXPECT_THAT(hints, Contains("low-legs against-kind removes: legs-long"));
  movement.options[0].props = PropSet{Prop::cushion};
  EXPECT_THAT(linesOf(faultsIn(movement, test::realKnowledge()), &movement),
              Not(Contains("head-down prop-unnamed how: pillow")));
}

// Taking a feature from the movements that have it, or giving it to one that stands still, is noticed by the drawing.
TEST(MovementFaults, HoldFeaturesAgainstDrawings) {
  FeatureSet taken, given;
  for (const Movement& whole : test::realKnowledge().catalogue.movements()) {
    FeatureSet places;
    for (const PositionId& id : {whole.start, whole.end})
      places |= test::realKnowledge().transitions.find(id)->features;
    const Shape shapes[] = {Shape(whole.poses.start), Shape(whole.poses.end)};
    taken |= shownBy(shapes) & whole.features.without(places);
  }
  FeatureSet all;
  for (std::size_t i = 0; i < kWordCount<Feature>; ++i)
    all.insert(static_cast<Feature>(i));
  Pose standing;
  standing.on = {Contact::footNear, Contact::footFar, Contact::head};
  const Shape still[] = {Shape(standing)};
  given = unshown(all, still);
  const FeatureSet untold{Feature::spineFast, Feature::abdPressure, Feature::breathHold, Feature::isoHold,
                          Feature::rise,      Feature::balance,     Feature::impact,     Feature::stretchEnd,
                          Feature::kneeTwist, Feature::armAber};
  const FeatureSet ofPlaces{Feature::supine, Feature::prone, Feature::sidelie, Feature::reclineFlat};
  const auto namesOf = [](FeatureSet features) {
    std::vector<std::string> names;
    features.forEach([&](Feature feature) { names.emplace_back(word(feature)); });
    return names;
  };
  EXPECT_EQ(namesOf(given), namesOf(all.without(untold | ofPlaces)));
  // Those that no shipped movement shows beyond doubt are tried below.
  const FeatureSet rare{Feature::extRot, Feature::spineRoll, Feature::hipIr, Feature::hipExtEr};
  EXPECT_EQ(namesOf(taken.without(ofPlaces | rare)), namesOf(all.without(untold | ofPlaces | rare)));
}

TEST(MovementFaults, SeeInADrawingWhatIsRare) {
  const auto shows = [](const std::function<void(Pose&)>& make, Feature feature) {
    Pose pose;
    make(pose);
    const Shape shapes[] = {Shape(pose)};
    return shownBy(shapes).contains(feature);
  };
  const auto turned = [](double turn, double bend) {
    return [=](Pose& pose) {
      pose.thorax.turn = turn;
      pose.thorax.bend = bend;
    };
  };
  EXPECT_TRUE(shows(turned(20, -10), Feature::extRot));
  EXPECT_TRUE(shows(turned(-20, -10), Feature::extRot)); // to the other side
  EXPECT_FALSE(shows(turned(20, -9), Feature::extRot));
  EXPECT_FALSE(shows(turned(19, -10), Feature::extRot));
  EXPECT_TRUE(shows([](Pose& pose) { pose.legs[1].turn = -35; }, Feature::hipIr));
  EXPECT_FALSE(shows([](Pose& pose) { pose.legs[1].turn = -34; }, Feature::hipIr));
  const auto behind = [](double hip, double turn) {
    return [=](Pose& pose) {
      pose.legs[0].hip = hip;
      pose.legs[0].turn = turn;
    };
  };
  EXPECT_TRUE(shows(behind(-10, 20), Feature::hipExtEr));
  EXPECT_FALSE(shows(behind(-9, 20), Feature::hipExtEr));
  EXPECT_FALSE(shows(behind(-10, 19), Feature::hipExtEr));
}

// Chairs and rollers are not drawn, so that a drawing does not tell what they carry.
TEST(MovementFaults, LeaveToTheWriterWhatAChairCarries) {
  Movement movement = shipped("hundred");
  movement.features.insert(Feature::wristLoad);
  EXPECT_THAT(linesOf(withoutHints(faultsIn(movement, test::realKnowledge()))),
              Contains("not-shown features: wrist-load"));
  movement.props.insert(Prop::chair);
  EXPECT_THAT(linesOf(withoutHints(faultsIn(movement, test::realKnowledge()))),
              Not(Contains("not-shown features: wrist-load")));
  EXPECT_THAT(linesOf(faultsIn(movement, test::realKnowledge())), Contains("not-shown features: wrist-load"));
}

TEST(MovementFaults, TakeRollingFromBackToSeatForRolling) {
  Pose lying, sitting;
  lying.on = {Contact::back};
  sitting.on = {Contact::seat};
  const Shape both[] = {Shape(lying), Shape(sitting)}, twice[] = {Shape(lying), Shape(lying)};
  EXPECT_TRUE(unshown({Feature::spineRoll}, both).empty());
  EXPECT_FALSE(unshown({Feature::spineRoll}, twice).empty());
}

} // namespace
} // namespace matwright
