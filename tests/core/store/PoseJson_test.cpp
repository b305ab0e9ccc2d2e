#include "core/figure/Support.h"
#include "core/store/PoseJson.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

std::vector<std::string> errorsOf(const Json& tree) {
  Reading reading;
  readPose(Spot{&tree, "", &reading});
  std::vector<std::string> places;
  for (const Error& error : reading.errors)
    places.push_back(error.path);
  return places;
}

Json poseWith(const char* key, const Json& value) {
  return {{"base", "upright"}, {"set", Json::object()}, {key, value}};
}

Pose read(const Json& tree, const Pose& base = {}) {
  Reading reading;
  const PoseSpec spec = readPose(Spot{&tree, "", &reading});
  EXPECT_THAT(reading.errors, IsEmpty()) << tree.dump();
  return poseOn(base, spec);
}

TEST(PoseJson, TakesWhatASupportCanBearAndNothingElse) {
  for (std::size_t i = 0; i < kWordCount<Support>; ++i)
    for (std::size_t j = 0; j < kWordCount<Contact>; ++j) {
      const auto support = static_cast<Support>(i);
      const auto contact = static_cast<Contact>(j);
      const std::string name(word(support));
      const Json tree = poseWith("supports", {{name, Json::array({word(contact)})}});
      if (bearable(support).contains(contact))
        EXPECT_THAT(errorsOf(tree), IsEmpty()) << tree.dump();
      else
        EXPECT_THAT(errorsOf(tree), ElementsAre("/supports/" + name)) << tree.dump();
    }
}

TEST(PoseJson, TakesThePlacesWhereAThingIsHeldAndNoOther) {
  for (std::size_t i = 0; i < kWordCount<Held>; ++i)
    for (std::size_t j = 0; j < kWordCount<HeldAt>; ++j) {
      const auto what = static_cast<Held>(i);
      const auto at = static_cast<HeldAt>(j);
      const Json tree = poseWith("holds", {{"prop", word(what)}, {"where", word(at)}});
      if (canHold(what, at)) {
        EXPECT_EQ(read(tree).holds, (HeldProp{what, at}));
      } else {
        EXPECT_THAT(errorsOf(tree), ElementsAre("/holds/where")) << tree.dump();
      }
    }
}

TEST(PoseJson, PutsEveryContactOnTheFloor) {
  for (std::size_t j = 0; j < kWordCount<Contact>; ++j) {
    const auto contact = static_cast<Contact>(j);
    EXPECT_EQ(read(poseWith("on", {word(contact)})).on, EnumSet<Contact>{contact});
  }
}

TEST(PoseJson, LetsAContactRestOnOneThing) {
  EXPECT_THAT(errorsOf(poseWith("supports", Json::parse(R"({"chair": ["hands"], "chair-top": ["hands.near"]})"))),
              ElementsAre("/supports/chair-top"));
  Json tree = poseWith("supports", Json::parse(R"({"chair": ["seat"]})"));
  tree["on"] = {"seat"};
  EXPECT_THAT(errorsOf(tree), ElementsAre("/supports/chair"));
}

TEST(PoseJson, LetsACushionLieOnAChair) {
  EXPECT_THAT(errorsOf(poseWith("supports", Json::parse(R"({"chair": ["seat"], "cushion": ["seat"]})"))), IsEmpty());
  EXPECT_THAT(errorsOf(poseWith("supports", Json::parse(R"({"chair": ["seat"], "ball": ["seat"]})"))),
              ElementsAre("/supports/ball"));
}

TEST(PoseJson, KeepsWhatTheBaseRestsOnUnlessItIsPutElsewhere) {
  Pose base;
  base.on = {Contact::footNear, Contact::footFar};
  base.onSupport(Support::chair) = {Contact::seat};
  const Pose oneFoot = read(poseWith("on", {"feet.far"}), base);
  EXPECT_EQ(oneFoot.onSupport(Support::chair), EnumSet<Contact>{Contact::seat});
  const Pose onFloor = read(poseWith("on", {"seat"}), base);
  EXPECT_TRUE(onFloor.onSupport(Support::chair).empty());
  const Pose feetUp = read(poseWith("supports", Json::parse(R"({"chair": ["feet.near"]})")), base);
  EXPECT_EQ(feetUp.on, EnumSet<Contact>{Contact::footFar});
}

TEST(PoseJson, WritesSupportsAndWhatIsHeldAsItReadsThem) {
  const Json tree = Json::parse(R"({"base": "upright", "set": {"lean": 56}, "on": ["toes"],
      "supports": {"chair": ["hands.near"], "cushion": ["hands.far"]}, "wall": ["feet"],
      "holds": {"prop": "ring", "where": "knees"}})");
  EXPECT_EQ(poseJson(read(tree)), tree);
}

TEST(PoseJson, OneHandMayRestAgainstTheWall) {
  EXPECT_EQ(read(poseWith("wall", {"hands.near"})).wall, EnumSet<WallContact>{WallContact::handNear});
  EXPECT_EQ(read(poseWith("wall", {"hands"})).wall,
            (EnumSet<WallContact>{WallContact::handNear, WallContact::handFar}));
  EXPECT_THAT(errorsOf(poseWith("wall", {"hands", "hands.near"})), ElementsAre("/wall/1"));
}

} // namespace
} // namespace matwright
