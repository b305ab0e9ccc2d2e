#include "core/store/JsonText.h"
#include "core/store/Store.h"
#include "tests/core/store/ErrorWords.h"
#include "tests/core/store/FullDocuments.h"
#include "tests/core/store/RandomDocuments.h"
#include "tests/core/store/TemporaryFolder.h"
#include "tests/support/RandomWishes.h"
#include "tests/support/RealKnowledge.h"
#include "tests/support/Seeds.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

Stored<ClassWishes> parsed(const std::string& text) {
  auto wishes = parseWishes(text, "");
  if (!wishes) {
    ADD_FAILURE() << wishes.error().path << ": " << wishes.error().expected << ", found " << wishes.error().found;
    return {};
  }
  return std::move(*wishes);
}

Json framedWith(Json keys) {
  keys["format"] = "matwright-wishes";
  keys["version"] = 1;
  return keys;
}

std::string errorOf(const Json& keys) {
  const auto wishes = parseWishes(framedWith(keys).dump(), "");
  return wishes ? "" : codeAndPath(wishes.error());
}

TEST(ParseWishes, ReadsEverythingThatMayBeWished) {
  const auto stored = parsed(kFullWishes);
  ClassWishes wishes;
  wishes.name = "Tuesday, for the back";
  wishes.date = dateFromIso("2026-11-26");
  wishes.length = Seconds(3000);
  wishes.challenge = Challenge::gentle;
  wishes.focus = {{Region::lowerBack, Region::hips}, {SpineAction::extension}, {Feature::balance}};
  wishes.sections = {{"Arrive", Seconds(600)}, {"Main", Seconds(2400)}};
  wishes.props = {Prop::band, Prop::cushion};
  wishes.wall = false;
  wishes.people = {{"rosa"}, {"imre"}};
  wishes.pace = {1.25, 130, Seconds(2.5)};
  wishes.include = {{"bridge"}};
  wishes.leaveOut = {{"hundred"}, {"roll-up"}};
  wishes.recent = {{"Last week", {{"bridge"}, {"cat"}}}};
  wishes.known = {{"cat"}};
  wishes.recentIsKnown = false;
  wishes.arc = {{0.25, 2}, {1, 4.5}};
  wishes.fewerRises = true;
  wishes.seed = 7;
  EXPECT_EQ(stored.value, wishes);
  EXPECT_EQ(stored.fingerprint, fingerprintOf(kFullWishes));
}

TEST(ParseWishes, TakesWhatIsNotSaidAsUsual) {
  ClassWishes usual;
  usual.sections = usualSections(usual.length);
  EXPECT_EQ(parsed(framedWith({}).dump()).value, usual);
  usual.length = minutes(75);
  usual.sections = usualSections(usual.length);
  EXPECT_EQ(parsed(framedWith({{"lengthSeconds", 4500}}).dump()).value, usual);
}

TEST(ParseWishes, TakesTheSectionsTogetherForTheLengthThatIsNotSaid) {
  const Json sections = Json::parse(R"([{"name": "A", "lengthSeconds": 600}, {"lengthSeconds": 1200}])");
  EXPECT_EQ(parsed(framedWith({{"sections", sections}}).dump()).value.length, minutes(30));
  const Json open = Json::parse(R"([{"name": "A"}, {"lengthSeconds": 0}])");
  const ClassWishes wishes = parsed(framedWith({{"sections", open}}).dump()).value;
  EXPECT_EQ(wishes.length, ClassWishes{}.length);
  EXPECT_EQ(wishes.sections, (std::vector<WishedSection>{{"A", {}}, {"", {}}}));
}

TEST(ParseWishes, NamesTheSectionOrTheLengthThatDoesNotFit) {
  const auto lengths = [](std::vector<Json> each) {
    Json sections = Json::array();
    for (Json& length : each)
      sections.push_back(length.is_null() ? Json::object() : Json{{"lengthSeconds", std::move(length)}});
    return sections;
  };
  EXPECT_EQ(errorOf({{"sections", lengths({600, 1200})}, {"lengthSeconds", 1801}}), "") << "a second does not matter";
  EXPECT_EQ(errorOf({{"sections", lengths({600, 1200})}, {"lengthSeconds", 1801.5}}), "outOfRange /lengthSeconds");
  EXPECT_EQ(errorOf({{"sections", lengths({600, 1200})}, {"lengthSeconds", 1700}}), "outOfRange /lengthSeconds");
  EXPECT_EQ(errorOf({{"sections", lengths({600, nullptr, 1200})}, {"lengthSeconds", 1800}}),
            "missingKey /sections/1/lengthSeconds");
  EXPECT_EQ(errorOf({{"sections", lengths({0, 1200})}}), "missingKey /sections/0/lengthSeconds");
  EXPECT_EQ(errorOf({{"sections", lengths({100, 150})}}), "outOfRange /sections");
  EXPECT_EQ(errorOf({{"sections", lengths({14400, 14400})}}), "outOfRange /sections");
}

TEST(ParseWishes, NamesThePointOfTheArcThatComesTooEarly) {
  const auto arc = [](std::vector<double> at) {
    Json points = Json::array();
    for (const double each : at)
      points.push_back({{"at", each}, {"effort", 3}});
    return Json{{"arc", points}};
  };
  EXPECT_EQ(errorOf(arc({0, 0.5, 0.5, 1})), "");
  EXPECT_EQ(errorOf(arc({0, 0.5, 0.4, 1})), "outOfRange /arc/2/at");
  EXPECT_EQ(errorOf(arc({})), "outOfRange /arc");
}

TEST(ParseWishes, DoesNotAskTheCatalogue) {
  EXPECT_EQ(parsed(kFullWishes).value.include, (std::vector<MovementId>{{"bridge"}}));
}

TEST(WishesText, IsCanonical) {
  ClassWishes wishes = parsed(kFullWishes).value;
  wishes.sections = {{"All", {}}};
  wishes.recent.clear();
  wishes.arc.pop_back();
  EXPECT_EQ(wishesText(wishes), R"({
  "arc": [
    {
      "at": 0.25,
      "effort": 2
    }
  ],
  "challenge": "gentle",
  "date": "2026-11-26",
  "fewerRises": true,
  "focus": {
    "regions": [
      "lower-back",
      "hips"
    ],
    "skills": [
      "balance"
    ],
    "spine": [
      "extension"
    ]
  },
  "format": "matwright-wishes",
  "include": [
    "bridge"
  ],
  "known": [
    "cat"
  ],
  "leaveOut": [
    "hundred",
    "roll-up"
  ],
  "lengthSeconds": 3000,
  "name": "Tuesday, for the back",
  "pace": {
    "mobility": 1.25,
    "settleSeconds": 2.5,
    "wordsPerMinute": 130
  },
  "people": [
    "rosa",
    "imre"
  ],
  "props": [
    "band",
    "cushion"
  ],
  "recent": [],
  "recentIsKnown": false,
  "sections": [
    {
      "name": "All"
    }
  ],
  "seed": 7,
  "version": 1,
  "wall": false
}
)");
}

void expectToComeBack(const ClassWishes& wishes) {
  ASSERT_FALSE(faultIn(wishes));
  const std::string text = wishesText(wishes);
  const auto back = parsed(text);
  ASSERT_EQ(back.value, wishes) << text;
  ASSERT_EQ(wishesText(back.value), text);
  ASSERT_EQ(wishesText(back.value, back.kept), text);
}

TEST(WishesText, ReadsBackAsTheSameWishesAndTheSameBytes) {
  RandomDocuments random(21);
  for (int i = 0; i < 150; ++i)
    ASSERT_NO_FATAL_FAILURE(expectToComeBack(random.wishes()));
  ASSERT_NO_FATAL_FAILURE(expectToComeBack({}));
}

struct Wished {
  explicit Wished(unsigned seed) {
    test::Draw draw(seed);
    people = test::randomPeople(draw, test::realKnowledge().rules, *dateFromIso("2026-11-26"), draw.from(0, 6), 2);
    wishes = test::randomWishes(draw, test::realKnowledge().catalogue, people);
  }
  std::vector<Person> people;
  ClassWishes wishes;
};

TEST(WishesText, ReadsBackWhatTeachersMayWish) {
  ASSERT_TRUE(test::readRealKnowledge()) << test::whatIsWrongWithRealKnowledge();
  test::forEachSeed<Wished>(1, 200, [](const Wished& scene) { expectToComeBack(scene.wishes); });
}

TEST(WishesText, HoldsTheHighestSeed) {
  ClassWishes wishes;
  wishes.seed = static_cast<std::uint64_t>(kHighestSeed);
  EXPECT_EQ(parsed(wishesText(wishes)).value, wishes);
  EXPECT_EQ(errorOf({{"seed", kHighestSeed + 1}}), "outOfRange /seed");
}

TEST(RandomWishes, AreOfEveryKindAndTheSameForTheSameSeed) {
  ASSERT_TRUE(test::readRealKnowledge()) << test::whatIsWrongWithRealKnowledge();
  const Catalogue& catalogue = test::realKnowledge().catalogue;
  std::size_t lengthsGiven = 0, bothWays = 0, unknown = 0, tooHard = 0, people = 0, bare = 0;
  for (unsigned seed = 1; seed <= 300; ++seed) {
    const ClassWishes wishes = Wished(seed).wishes;
    ASSERT_EQ(wishes, Wished(seed).wishes);
    ASSERT_FALSE(faultIn(wishes)) << "seed " << seed;
    lengthsGiven += wishes.sections.front().length > Seconds{};
    people += !wishes.people.empty();
    bare += wishes.props.empty() && !wishes.wall;
    for (const MovementId& id : wishes.include) {
      const Movement* movement = catalogue.find(id);
      unknown += !movement;
      tooHard += movement && movement->effort > hardestOf(wishes.challenge);
      bothWays += std::count(wishes.leaveOut.begin(), wishes.leaveOut.end(), id) > 0;
    }
  }
  for (const std::size_t count : {lengthsGiven, bothWays, unknown, tooHard, people, bare})
    EXPECT_GT(count, 0u);
  EXPECT_LT(lengthsGiven, 300u);
  EXPECT_LT(people, 300u);
}

// Puts a key that nobody knows into every object of the tree.
void strew(Json& tree, int& count) {
  if (tree.is_object())
    tree["later"] = {{"n", ++count}};
  for (Json& child : tree)
    if (child.is_structured() && !(child.is_object() && child.contains("n")))
      strew(child, count);
}

TEST(KeptKeysOfWishes, ComeBackWhereTheyStoodAndEndWithTheirPlace) {
  Json tree = Json::parse(kFullWishes);
  int count = 0;
  strew(tree, count);
  EXPECT_EQ(count, 8); // root, focus, 2 sections, pace, a recent class, 2 points of the arc
  const auto stored = parsed(tree.dump());
  EXPECT_EQ(stored.value, parsed(kFullWishes).value);
  EXPECT_EQ(Json::parse(wishesText(stored.value, stored.kept)), tree);
  EXPECT_EQ(Json::parse(wishesText(stored.value)), Json::parse(kFullWishes));
  ClassWishes fewer = stored.value;
  fewer.recent.clear();
  fewer.arc.pop_back();
  Json expected = tree;
  expected["recent"].erase(0);
  expected["arc"].erase(1);
  EXPECT_EQ(Json::parse(wishesText(fewer, stored.kept)), expected);
}

TEST(ValidateFile, HoldsWishesAgainstTheCatalogue) {
  ASSERT_TRUE(test::readRealKnowledge()) << test::whatIsWrongWithRealKnowledge();
  Json tree = Json::parse(kFullWishes);
  tree["include"].push_back("moonwalk");
  tree["leaveOut"] = {"flying"};
  tree["recent"] = Json::parse(R"([{"movements": ["hundred"]}, {"movements": ["hundred", "gliding"]}])");
  tree["known"] = {"floating"};
  tree["include"][0] = "hundred";
  const TemporaryFolder folder;
  const auto file = folder.put("wishes.json", tree.dump());
  EXPECT_THAT(validateFile(file, nullptr), testing::IsEmpty());
  std::vector<std::string> found;
  for (const Error& error : validateFile(file, &test::realKnowledge()))
    found.push_back(codeAndPath(error) + ' ' + error.found);
  EXPECT_THAT(found, testing::ElementsAre("unknownReference /include/1 moonwalk", "unknownReference /leaveOut/0 flying",
                                          "unknownReference /recent/1/movements/1 gliding",
                                          "unknownReference /known/0 floating"));
}

TEST(ReadWishes, ReadsAFile) {
  const TemporaryFolder folder;
  const auto read = readWishes(folder.put("tuesday.json", kFullWishes));
  ASSERT_TRUE(read);
  EXPECT_EQ(read->value, parsed(kFullWishes).value);
  EXPECT_EQ(readWishes(folder / "none.json").error().code, ErrorCode::cannotRead);
}

} // namespace
} // namespace matwright
