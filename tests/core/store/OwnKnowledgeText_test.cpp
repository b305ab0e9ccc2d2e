#include "core/store/JsonText.h"
#include "tests/core/store/FullDocuments.h"
#include "tests/core/store/SpoiltKnowledge.h"
#include "tests/support/RealKnowledge.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

std::vector<std::string> errorsOf(const std::string& text) {
  const auto read = parseOwnKnowledge(text, "own.json", goodKnowledge());
  std::vector<std::string> lines;
  for (const Error& error : read ? std::vector<Error>{} : read.error())
    lines.push_back(codeAndPath(error));
  return lines;
}

std::vector<std::string> errorsWith(const char* pointer, Json value) {
  Json tree = Json::parse(kFullOwnKnowledge);
  tree[Json::json_pointer(pointer)] = std::move(value);
  return errorsOf(tree.dump());
}

OwnKnowledge full() {
  const auto read = parseOwnKnowledge(kFullOwnKnowledge, "own.json", goodKnowledge());
  return read ? read->value : OwnKnowledge{};
}

// Everything that comes with the program, as if somebody had written it.
OwnKnowledge copyOfEverything() {
  const Knowledge& real = test::realKnowledge();
  OwnKnowledge own{
      real.catalogue.movements(), real.rules.conditions, real.rules.sources, real.rules.rules, {{{"some-rule"}, 12.5}}};
  const auto rename = [](auto& values) {
    for (auto& value : values)
      value.id.value.insert(0, kOwnPrefix);
  };
  rename(own.movements);
  rename(own.conditions);
  rename(own.sources);
  rename(own.rules);
  return own;
}

TEST(OwnKnowledgeText, HoldsEverything) {
  EXPECT_THAT(errorsOf(kFullOwnKnowledge), IsEmpty());
  const OwnKnowledge own = full();
  ASSERT_EQ(own.movements.size(), 1u);
  const Movement& movement = own.movements[0];
  EXPECT_EQ(movement.id, MovementId{"own-slow-curl"});
  EXPECT_EQ(movement.prerequisites, std::vector{MovementId{"curl"}});
  EXPECT_EQ(movement.props, (PropSet{Prop::ball, Prop::cushion}));
  Pose lying = goodKnowledge().transitions.find({"lying"})->pose;
  lying.on = {Contact::back, Contact::head};
  lying.wall = {WallContact::back};
  lying.onSupport(Support::chair) = lying.onSupport(Support::cushion) = {Contact::heelFar};
  lying.onSupport(Support::chairTop) = {Contact::forearmNear};
  lying.onSupport(Support::chairBack) = {Contact::front};
  lying.onSupport(Support::rollerAlong) = {Contact::seat};
  lying.onSupport(Support::rollerAcross) = {Contact::toesNear};
  lying.onSupport(Support::ball) = {Contact::heelNear};
  lying.onSupport(Support::bolster) = {Contact::kneeNear, Contact::kneeFar};
  lying.onSupport(Support::wedge) = {Contact::upperBack};
  lying.holds = HeldProp{Held::band, HeldAt::hands};
  EXPECT_EQ(movement.poses.start, lying);
  EXPECT_TRUE(movement.poses.end.flip);
  ASSERT_EQ(own.rules.size(), 1u);
  EXPECT_EQ(own.rules[0].condition, ConditionId{"own-tired"});
  EXPECT_EQ(own.rules[0].sources, (std::vector<SourceId>{{"own-talk"}}));
  EXPECT_EQ(own.conditions[0].id, ConditionId{"own-tired"});
  EXPECT_EQ(own.thresholds, (std::map<RuleId, double>{{{"sum-of-lifts"}, 42.5}}));
}

TEST(OwnKnowledgeText, IsReadAsItWasWritten) {
  for (const OwnKnowledge& own : {full(), OwnKnowledge{}}) {
    const std::string text = ownKnowledgeText(own);
    const auto again = parseOwnKnowledge(text, "own.json", goodKnowledge());
    ASSERT_TRUE(again);
    EXPECT_EQ(again->value, own);
    EXPECT_EQ(ownKnowledgeText(again->value, again->kept), text);
  }
}

TEST(OwnKnowledgeText, IsReadAsItWasWrittenForAllThatComesWithTheProgram) {
  ASSERT_EQ(test::whatIsWrongWithRealKnowledge(), "");
  const OwnKnowledge own = copyOfEverything();
  const auto again = parseOwnKnowledge(ownKnowledgeText(own), "own.json", test::realKnowledge());
  ASSERT_TRUE(again) << codeAndPath(again.error().front()) << again.error().front().found;
  EXPECT_EQ(again->value.conditions, own.conditions);
  EXPECT_EQ(again->value.sources, own.sources);
  EXPECT_EQ(again->value.rules, own.rules);
  EXPECT_EQ(again->value.thresholds, own.thresholds);
  ASSERT_EQ(again->value.movements.size(), own.movements.size());
  for (std::size_t i = 0; i < own.movements.size(); ++i)
    EXPECT_EQ(again->value.movements[i], own.movements[i]) << own.movements[i].id.value;
}

TEST(OwnKnowledgeText, NeedNotHoldEveryList) {
  EXPECT_THAT(errorsOf(R"({"format": "matwright-knowledge", "version": 1})"), IsEmpty());
  EXPECT_EQ(ownKnowledgeText({}), "{\n  \"format\": \"matwright-knowledge\",\n  \"version\": 1\n}\n");
}

TEST(OwnKnowledgeText, KeepsUnknownKeysAtTheRootAlone) {
  Json tree = Json::parse(kFullOwnKnowledge);
  tree["colour"] = "green";
  const auto read = parseOwnKnowledge(tree.dump(), "own.json", goodKnowledge());
  ASSERT_TRUE(read);
  EXPECT_THAT(ownKnowledgeText(read->value, read->kept), HasSubstr("\"colour\": \"green\""));
  EXPECT_THAT(errorsWith("/movements/0/colour", "green"), ElementsAre("unknownKey /movements/0/colour"));
  EXPECT_THAT(errorsWith("/rules/0/colour", "green"), ElementsAre("unknownKey /rules/0/colour"));
}

TEST(OwnKnowledgeText, HasIdsThatCannotBeThoseOfTheProgram) {
  EXPECT_THAT(errorsWith("/movements/0/id", "slow-curl"), ElementsAre("wrongType /movements/0/id"));
  EXPECT_THAT(errorsWith("/rules/0/id", "quiet"), ElementsAre("wrongType /rules/0/id"));
  EXPECT_THAT(errorsWith("/conditions/0/id", "tired"),
              ElementsAre("wrongType /conditions/0/id", "unknownReference /rules/0/condition"));
  EXPECT_THAT(errorsWith("/sources/0/id", "talk"),
              ElementsAre("wrongType /sources/0/id", "unknownReference /rules/0/sources/0"));
}

TEST(OwnKnowledgeText, HasEachIdOnce) {
  Json tree = Json::parse(kFullOwnKnowledge);
  for (const char* list : {"movements", "conditions", "sources", "rules"})
    tree[list].push_back(tree[list][0]);
  EXPECT_THAT(errorsOf(tree.dump()), ElementsAre("duplicateId /conditions/1/id", "duplicateId /sources/1/id",
                                                 "duplicateId /movements/1/id", "duplicateId /rules/1/id"));
}

TEST(OwnKnowledgeText, RefersToItselfAndToWhatComesWithTheProgram) {
  EXPECT_THAT(errorsWith("/movements/0/prerequisites", {"roll-up"}), IsEmpty());
  EXPECT_THAT(errorsWith("/movements/0/prerequisites", {"flying"}),
              ElementsAre("unknownReference /movements/0/prerequisites/0"));
  EXPECT_THAT(errorsWith("/movements/0/counters", {"own-slow-curl"}),
              ElementsAre("unknownReference /movements/0/counters/0"));
  EXPECT_THAT(errorsWith("/movements/0/start", "floating"), ElementsAre("unknownReference /movements/0/start"));
  EXPECT_THAT(errorsWith("/movements/0/poses/start/base", "floating"),
              ElementsAre("unknownReference /movements/0/poses/start/base"));
  EXPECT_THAT(errorsWith("/rules/0/sources", {"own-talk", "own-tale"}),
              ElementsAre("unknownReference /rules/0/sources/1"));
  EXPECT_THAT(errorsWith("/rules/0/when/0/is", {"very", "much"}), ElementsAre("unknownReference /rules/0/when/0/is/1"));
}

// The editor tells of it. One pose must not keep a teacher from all her own movements.
TEST(OwnKnowledgeText, IsReadWithAnglesThatNoBodyHas) {
  EXPECT_THAT(errorsWith("/movements/0/poses/end/set/lumbar.rot", 44), IsEmpty());
}

TEST(OwnKnowledgeText, HoldsThresholdsOfRulesThatAreNoMore) {
  EXPECT_THAT(errorsWith("/thresholds/long-gone", 3), IsEmpty());
  EXPECT_THAT(errorsWith("/thresholds/Not an id", 3), ElementsAre("wrongType /thresholds/Not an id"));
  EXPECT_THAT(errorsWith("/thresholds/long-gone", -1), ElementsAre("outOfRange /thresholds/long-gone"));
}

TEST(OwnKnowledgeText, IsKnownByItsFormat) {
  EXPECT_EQ(documentKind(kFullOwnKnowledge, "").value(), DocumentKind::ownKnowledge);
  const TemporaryFolder folder;
  const auto file = folder.put("knowledge.json", kFullOwnKnowledge);
  EXPECT_THAT(validateFile(file, nullptr), IsEmpty());
  EXPECT_THAT(validateFile(file, &goodKnowledge()), IsEmpty());
  EXPECT_EQ(readOwnKnowledge(file, goodKnowledge())->value, full());
  Json tree = Json::parse(kFullOwnKnowledge);
  tree["movements"][0]["start"] = "floating";
  folder.put("knowledge.json", tree.dump());
  EXPECT_THAT(validateFile(file, nullptr), IsEmpty());
  EXPECT_EQ(validateFile(file, &goodKnowledge()).size(), 1u);
  EXPECT_EQ(readOwnKnowledge("/nowhere.json", goodKnowledge()).error().front().code, ErrorCode::cannotRead);
}

// A pose holds what the picture needs, in as few words as it can.
TEST(PoseText, SaysOnlyWhatIsNotUpright) {
  OwnKnowledge own = full();
  Pose& pose = own.movements[0].poses.start = {};
  pose.lean = -90;
  pose.legs[0].hip = pose.legs[1].hip = 45;
  pose.arms[0].elbow = 30;
  pose.on = {Contact::back, Contact::footNear, Contact::footFar, Contact::handFar};
  pose.wall = {WallContact::handNear, WallContact::handFar};
  const Json tree = Json::parse(ownKnowledgeText(own));
  EXPECT_EQ(tree["movements"][0]["poses"]["start"],
            Json::parse(R"({"base": "upright", "set": {"lean": -90, "hip": 45, "elbow.near": 30},
                            "on": ["back", "hands.far", "feet"], "wall": ["hands"]})"));
}

} // namespace
} // namespace matwright
