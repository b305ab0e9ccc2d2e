#include "tests/core/store/SpoiltKnowledge.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

namespace fs = std::filesystem;
using testing::ElementsAre;
using testing::IsEmpty;

TEST(ReadKnowledge, ReadsMovementsInTheOrderOfTheFilesNames) {
  std::vector<std::string> ids;
  for (const Movement& movement : goodKnowledge().catalogue.movements())
    ids.push_back(movement.id.value);
  EXPECT_THAT(ids, ElementsAre("curl", "roll-up", "side-lift"));
}

TEST(ReadKnowledge, ReadsEverythingOfAMovement) {
  const Movement* curl = goodKnowledge().catalogue.find({"curl"});
  ASSERT_TRUE(curl);
  EXPECT_EQ(curl->name, "Curl");
  EXPECT_EQ(curl->repertoire, Repertoire::fundamental);
  EXPECT_EQ(curl->about, "Lifts the head and the shoulders.");
  EXPECT_EQ(curl->start, PositionId{"bent"});
  EXPECT_EQ(curl->end, PositionId{"lying"});
  EXPECT_EQ(curl->sides, Sides::together);
  EXPECT_EQ(curl->dose, (Dose{5, DoseUnit::repetitions}));
  EXPECT_EQ(curl->tempo, (Tempo{Seconds(1), {{Breath::in, 3}, {Breath::out, 3}}}));
  EXPECT_EQ(curl->setUp, "Lie on your back with both knees bent and your hands behind your head.");
  EXPECT_EQ(curl->action, "out: curl, in: lower");
  EXPECT_EQ(curl->regions, std::vector{Region::abdominals});
  EXPECT_EQ(curl->spine, std::vector{SpineAction::flexion});
  EXPECT_EQ(curl->features, FeatureSet{Feature::flexLoad});
  EXPECT_EQ(curl->effort, Effort(3));
  EXPECT_THAT(curl->prerequisites, IsEmpty());
  EXPECT_EQ(goodKnowledge().catalogue.find({"roll-up"})->prerequisites, std::vector{MovementId{"curl"}});
}

TEST(ReadKnowledge, ReadsEverythingOfAnOption) {
  const Movement* curl = goodKnowledge().catalogue.find({"curl"});
  ASSERT_TRUE(curl);
  ASSERT_EQ(curl->options.size(), 2u);
  const Option& small = curl->options[0];
  EXPECT_EQ(small.id, OptionId{"small"});
  EXPECT_EQ(small.name, "Small");
  EXPECT_EQ(small.kind, OptionKind::easier);
  EXPECT_EQ(small.how, "Lift only the head.");
  EXPECT_EQ(small.removes, FeatureSet{Feature::flexLoad});
  EXPECT_EQ(small.adds, FeatureSet{Feature::neckLift});
  EXPECT_EQ(small.effort, Effort(2));
  EXPECT_FALSE(small.dose || small.tempo || small.poses);
  const Option& slow = curl->options[1];
  EXPECT_EQ(slow.dose, (Dose{3, DoseUnit::breaths}));
  EXPECT_EQ(slow.tempo, (Tempo{Seconds(1.5), {{Breath::out, 4}, {Breath::hold, 1}}}));
  ASSERT_TRUE(slow.poses);
  EXPECT_EQ(slow.poses->start, goodKnowledge().transitions.find({"lying"})->pose);
  Pose pointed;
  pointed.legs[0].ankle = pointed.legs[1].ankle = -20;
  EXPECT_EQ(slow.poses->end, pointed);
}

Pose lyingPose() {
  Pose pose;
  pose.lean = -90;
  pose.arms[0].shoulder = pose.arms[1].shoulder = 5;
  pose.on = {Contact::head, Contact::back, Contact::heelNear, Contact::heelFar};
  return pose;
}

Pose bentPose() {
  Pose pose = lyingPose();
  pose.legs[0] = {60, 10, 0, 90, 0};
  pose.legs[1] = {45, 10, 20, 90, 0};
  pose.on = {Contact::back, Contact::footNear};
  return pose;
}

TEST(ReadKnowledge, BuildsPosesOnOtherPoses) {
  const TransitionGraph& graph = goodKnowledge().transitions;
  EXPECT_EQ(graph.find({"lying"})->pose, lyingPose());
  EXPECT_EQ(graph.find({"bent"})->pose, bentPose()); // stands before the one it rests on
  Pose side = lyingPose();
  side.roll = -90;
  side.on = {Contact::side};
  side.flip = true;
  EXPECT_EQ(graph.find({"side-left"})->pose, side);
  Pose standing;
  standing.on = {Contact::footNear, Contact::footFar};
  standing.wall = {WallContact::handNear, WallContact::handFar};
  standing.view = View::front;
  EXPECT_EQ(graph.find({"standing"})->pose, standing);
}

TEST(ReadKnowledge, BuildsThePosesOfMovementsOnPositions) {
  const KeyPoses& poses = goodKnowledge().catalogue.find({"curl"})->poses;
  EXPECT_EQ(poses.start, bentPose());
  Pose end = bentPose();
  end.thorax.bend = 35;
  end.neck.turn = -8;
  end.lumbar.side = 3;
  end.legs[0].knee = 100;
  end.view = View::top;
  EXPECT_EQ(poses.end, end);
}

TEST(ReadKnowledge, LetsAPoseTakeBackWhatItsBaseSays) {
  Spoilt spoilt;
  spoilt.set(kFaceUp, "/movements/0/poses/end",
             {{"base", "side-left"}, {"set", Json::object()}, {"flip", false}, {"on", Json::array()}});
  spoilt.set(kFaceUp, "/movements/0/poses/start",
             {{"base", "standing"}, {"set", Json::object()}, {"wall", Json::array()}, {"view", "side"}});
  const auto read = readKnowledge(spoilt.folder().path());
  ASSERT_TRUE(read);
  const KeyPoses& poses = read->catalogue.find({"curl"})->poses;
  EXPECT_FALSE(poses.end.flip);
  EXPECT_TRUE(poses.end.on.empty());
  EXPECT_EQ(poses.end.roll, -90);
  EXPECT_TRUE(poses.start.wall.empty());
  EXPECT_EQ(poses.start.view, View::side);
  EXPECT_FALSE(poses.start.on.empty());
}

TEST(ReadKnowledge, ReadsPositionsAndChanges) {
  const TransitionGraph& graph = goodKnowledge().transitions;
  const Position* left = graph.find({"side-left"});
  ASSERT_TRUE(left);
  EXPECT_EQ(left->elevation, Elevation::sideLying);
  EXPECT_EQ(left->features, FeatureSet{Feature::sidelie});
  EXPECT_EQ(left->mirror, PositionId{"side-right"});
  ASSERT_FALSE(graph.changes().empty());
  const Change first{{"lying"}, {"side-left"}, Seconds(4), {Feature::rot}, "Roll onto your left side.", "roll"};
  EXPECT_EQ(graph.changes().front(), first);
}

TEST(ReadKnowledge, ReadsTheRuleBook) {
  const RuleBook& book = goodKnowledge().rules;
  ASSERT_EQ(book.conditions.size(), 2u);
  EXPECT_EQ(book.conditions[0], (Condition{{"hip-new"},
                                           "New hip",
                                           {"Z96.6"},
                                           "A hip joint that was replaced.",
                                           {{"weeks", "Date of surgery", QualifierKind::weeksSince, {}},
                                            {"approach",
                                             "Approach",
                                             QualifierKind::choice,
                                             {{"front", "From the front"}, {"back", "From the back"}}}}}));
  EXPECT_EQ(book.sources, (std::vector<Source>{{{"one-2020"}, "One, 2020, a journal", SourceKind::study}}));
  ASSERT_EQ(book.rules.size(), 7u);
  const Rule& front = book.rules[1];
  EXPECT_EQ(front.condition, ConditionId{"hip-new"});
  EXPECT_EQ(front.when, (std::vector<QualifierTest>{{"approach", {}, {}, {"front"}, {}}, {"weeks", 2, 26, {}, {}}}));
  EXPECT_EQ(front.asks.any, FeatureSet{Feature::hipExtEr});
  EXPECT_EQ(front.asks.all, FeatureSet{Feature::prone});
  EXPECT_EQ(front.level, Level::adapt);
  EXPECT_EQ(front.contested, "Some surgeons set no limits.");
  EXPECT_EQ(front.sources, std::vector{SourceId{"one-2020"}});
  EXPECT_EQ(front.reviewed, dateFromIso("2026-11-01"));
  const Rule& supine = book.rules[2];
  EXPECT_FALSE(supine.condition);
  EXPECT_EQ(supine.scope, Scope::stretch);
  EXPECT_EQ(supine.threshold, (Threshold{180, MeasureUnit::seconds, ThresholdOrigin::ours, 180}));
  EXPECT_EQ(supine.strength, Strength::practice);
  EXPECT_EQ(supine.check, Verification::memory);
  const Rule& unsteady = book.rules[3];
  EXPECT_EQ(unsteady.when, (std::vector<QualifierTest>{{"falls", {}, {}, {}, true}}));
  EXPECT_EQ(unsteady.scope, Scope::wholeClass);
  EXPECT_FALSE(unsteady.threshold);
  EXPECT_TRUE(namesNothing(unsteady.asks));
}

TEST(ReadKnowledge, ReadsRulesOnPeopleOfSomeAgesAndOnSequence) {
  const RuleBook& book = goodKnowledge().rules;
  ASSERT_EQ(book.rules.size(), 7u);
  const Rule& late = book.rules[4];
  EXPECT_FALSE(late.condition);
  EXPECT_EQ(late.ages, (EnumSet<AgeBand>{AgeBand::from65, AgeBand::from80}));
  EXPECT_EQ(late.asks, (Demand{{Feature::balance}, {}, {Elevation::standing, Elevation::kneeling}, 3}));
  EXPECT_EQ(late.scope, Scope::late);
  EXPECT_EQ(late.threshold, (Threshold{33, MeasureUnit::percent, ThresholdOrigin::ours, 33}));
  EXPECT_FALSE(late.after);
  const Rule& order = book.rules[5];
  EXPECT_TRUE(order.ages.empty());
  EXPECT_EQ(order.asks, (Demand{{Feature::flexLoad}, {}, {}, 0}));
  EXPECT_EQ(order.scope, Scope::order);
  EXPECT_EQ(order.threshold, (Threshold{120, MeasureUnit::seconds, ThresholdOrigin::published, 120}));
  EXPECT_EQ(order.after, (Earlier{{{Feature::flexEnd}, {Feature::supine}, {Elevation::faceUp}, 2}, Seconds(90)}));
  const Rule& missing = book.rules[6];
  EXPECT_EQ(missing.condition, ConditionId{"unsteady"});
  EXPECT_EQ(missing.scope, Scope::missing);
  EXPECT_EQ(missing.asks.any, FeatureSet{Feature::balance});
  EXPECT_FALSE(missing.threshold);
}

TEST(TheKnowledgeOfTheProgram, IsWithoutErrors) {
  const auto read = readKnowledge(fs::path(MATWRIGHT_SOURCE_DIR) / "resources");
  if (!read)
    for (const Error& error : read.error())
      ADD_FAILURE() << error.file << ' ' << codeAndPath(error) << ": " << error.expected << ", found " << error.found;
}

} // namespace
} // namespace matwright
