// A class from wishes on the console.
#include "tests/system/Console.h"

#include <algorithm>
#include <cmath>

namespace {

using namespace matwright::test;

struct ComposeConsole : Console {
  const std::string wednesday = demo + "/wishes/wednesday-back-care.json";
  const std::string out = "composed.json";

  std::string outFile() const { return (folder / out).string(); }
  // Fewer classes are looked at than usual, which is enough for what is told here.
  Answer compose(const std::string& wishes, std::vector<std::string> more = {}) const {
    std::vector<std::string> words{"compose", wishes, "--evaluations", "12000"};
    words.insert(words.end(), more.begin(), more.end());
    return run(words);
  }
  // Wishes of the demo studio with some keys changed, beside its people.
  std::string wished(const Json& keys) const {
    std::filesystem::create_directories(folder / "people");
    for (const auto& entry : std::filesystem::directory_iterator(demo + "/people"))
      std::filesystem::copy(entry, folder / "people", std::filesystem::copy_options::overwrite_existing);
    Json tree = Json::parse(textOf(wednesday));
    tree.merge_patch(keys);
    std::filesystem::create_directories(folder / "wishes");
    return put("wishes/changed.json", tree.dump());
  }
  static std::vector<std::string> movementsOf(const Json& plan, std::size_t section) {
    std::vector<std::string> movements;
    for (const Json& step : plan["sections"][section]["steps"])
      movements.push_back(step["movement"]);
    return movements;
  }
};

TEST_F(ComposeConsole, EveryDemoWishIsMetByAClassThatTheCheckFindsTheSameOf) {
  for (const char* name : {"wednesday-back-care", "monday-expecting-at-the-wall", "thursday-strong"}) {
    const std::string wishes = demo + "/wishes/" + name + ".json";
    const Answer answer = compose(wishes, {"-o", outFile(), "--json"});
    ASSERT_EQ(answer.code, 0) << name << ": " << answer.err;
    const Json tree = Json::parse(answer.out), wished = Json::parse(textOf(wishes));
    EXPECT_EQ(tree["format"], "matwright-compose");
    EXPECT_EQ(tree["status"], "composed");
    EXPECT_EQ(tree["seed"], wished["seed"]);
    EXPECT_LE(std::abs(tree["length"].get<double>() - tree["target"].get<double>()), 15.0) << name;
    EXPECT_EQ(tree["cautionCounts"]["leave-out"], 0);
    for (const Json& id : wished["include"])
      EXPECT_TRUE(std::any_of(tree["steps"].begin(), tree["steps"].end(),
                              [&](const Json& step) { return step["movement"] == id; }))
          << name << ": " << id;
    // What was written is what was told, for the same people.
    std::vector<std::string> words{"check", outFile(), "--json"};
    for (const Json& person : wished["people"]) {
      words.emplace_back("--people");
      words.push_back(demo + "/people/" + person.get<std::string>() + ".json");
    }
    const Json check = Json::parse(run(words).out);
    EXPECT_EQ(check["length"], tree["length"]) << name;
    EXPECT_EQ(check["changes"], tree["changes"]);
    EXPECT_EQ(check["day"], tree["day"]);
    EXPECT_EQ(check["cautionCounts"], tree["cautionCounts"]);
    ASSERT_EQ(check["steps"].size(), tree["steps"].size());
    for (std::size_t i = 0; i < check["steps"].size(); ++i)
      EXPECT_EQ(check["steps"][i]["movement"], tree["steps"][i]["movement"]);
    EXPECT_EQ(run({"validate", outFile()}).code, 0);
  }
}

TEST_F(ComposeConsole, TheSameSeedGivesTheSameClassAndAnotherAnotherOne) {
  const std::string first = compose(wednesday, {"--json"}).out;
  EXPECT_EQ(compose(wednesday, {"--json"}).out, first);
  EXPECT_EQ(compose(wednesday, {"--seed", "9", "--json"}).out, first) << "the seed of the file";
  const Json other = Json::parse(compose(wednesday, {"--seed", "10", "--json"}).out);
  EXPECT_EQ(other["seed"], 10);
  EXPECT_NE(other["steps"], Json::parse(first)["steps"]);
}

TEST_F(ComposeConsole, SaysWhyEachStepWasChosenWhenAsked) {
  const Answer plain = compose(wednesday), told = compose(wednesday, {"--explain"});
  EXPECT_EQ(plain.code, 0) << plain.err;
  EXPECT_EQ(plain.out.find("wished for"), std::string::npos);
  EXPECT_NE(told.out.find("wished for"), std::string::npos) << told.out;
  EXPECT_NE(told.out.find("No mark does not mean safe."), std::string::npos);
  EXPECT_NE(told.out.find(" in its place would be "), std::string::npos) << told.out;
  EXPECT_FALSE(Json::parse(compose(wednesday, {"--json"}).out)["steps"][0].contains("why"));
  const Json tree = Json::parse(compose(wednesday, {"--explain", "--json"}).out);
  for (const Json& step : tree["steps"]) {
    EXPECT_TRUE(step["chosen"].get<bool>());
    EXPECT_FALSE(step["why"]["text"].get<std::string>().empty()) << step;
    EXPECT_EQ(step["why"].contains("instead"), step["why"]["others"] > 0) << step;
    const bool included = step["movement"] == "shoulder-bridge" || step["movement"] == "four-point-opposite-reach";
    EXPECT_EQ(step["why"]["included"], included) << step;
  }
}

TEST_F(ComposeConsole, WishesThatCannotBeMetEndWithThreeAndAreToldWhy) {
  const Answer answer = compose(wished({{"include", {"hundred", "moonwalk", "roll-over"}},
                                        {"leaveOut", {"head-nod-curl"}},
                                        {"recentIsKnown", false}}),
                                {"-o", outFile(), "--json"});
  EXPECT_EQ(answer.code, 3);
  EXPECT_FALSE(std::filesystem::exists(outFile()));
  EXPECT_NE(answer.err.find("moonwalk is to be included, and is not in the catalogue."), std::string::npos)
      << answer.err;
  const Json tree = Json::parse(answer.out);
  EXPECT_EQ(tree["status"], "impossible");
  EXPECT_FALSE(tree.contains("steps"));
  ASSERT_EQ(tree["obstacles"].size(), 3U);
  for (const Json& obstacle : tree["obstacles"])
    EXPECT_NE(answer.err.find(obstacle["text"].get<std::string>()), std::string::npos) << obstacle;
  const Answer words = compose(wished({{"include", {"moonwalk"}}}));
  EXPECT_EQ(words.code, 3);
  EXPECT_NE(words.out.find("No class can meet these wishes."), std::string::npos) << words.out;
}

TEST_F(ComposeConsole, FillsUpAClassAndKeepsItsSteps) {
  const std::string begun = demo + "/classes/wednesday-back-care.json";
  const Json before = Json::parse(textOf(begun));
  const Answer answer = compose(wished({{"lengthSeconds", 2700}, {"include", Json::array()}, {"seed", 1}}),
                                {"--complete", begun, "-o", outFile(), "--json"});
  ASSERT_EQ(answer.code, 0) << answer.err;
  const Json after = Json::parse(textOf(outFile())), tree = Json::parse(answer.out);
  EXPECT_EQ(after["name"], before["name"]);
  for (std::size_t i = 0; i < before["sections"].size(); ++i) {
    std::vector<Json> kept;
    for (const Json& step : after["sections"][i]["steps"])
      for (const Json& old : before["sections"][i]["steps"])
        if (step["id"] == old["id"])
          kept.push_back(step);
    EXPECT_EQ(Json(kept), before["sections"][i]["steps"]) << i;
  }
  EXPECT_GT(std::count_if(tree["steps"].begin(), tree["steps"].end(),
                          [](const Json& step) { return step["chosen"].get<bool>(); }),
            0);
}

TEST_F(ComposeConsole, FillsOneSectionOfAClassAnew) {
  ASSERT_EQ(compose(wednesday, {"-o", outFile()}).code, 0);
  const Json before = Json::parse(textOf(outFile()));
  const std::string anew = (folder / "anew.json").string();
  for (const std::string section : {"3", "Main"}) {
    const Answer answer =
        compose(wished({{"include", Json::array()}}), {"--complete", outFile(), "--section", section, "-o", anew});
    ASSERT_EQ(answer.code, 0) << answer.err;
    const Json after = Json::parse(textOf(anew));
    for (std::size_t i : {0U, 1U, 3U})
      EXPECT_EQ(after["sections"][i], before["sections"][i]) << i;
    const std::vector<std::string> had = movementsOf(before, 2), has = movementsOf(after, 2);
    EXPECT_GT(has.size(), 3U);
    const auto again = [&](const std::string& id) { return std::find(had.begin(), had.end(), id) != had.end(); };
    // Variety has a price and is no must, so one or two may come again.
    EXPECT_LE(std::count_if(has.begin(), has.end(), again) * 4, std::ssize(has)) << "others than it had";
  }
  for (const char* none : {"0", "5", "Middle"}) {
    const Answer answer = compose(wednesday, {"--complete", outFile(), "--section", none});
    EXPECT_EQ(answer.code, 2);
    EXPECT_NE(answer.err.find("--section: the class has no section"), std::string::npos) << answer.err;
  }
  EXPECT_EQ(compose(wednesday, {"--section", "1"}).code, 2);
}

TEST_F(ComposeConsole, RecentClassesOfTheCommandLineComeFirst) {
  ASSERT_EQ(compose(wednesday, {"-o", outFile()}).code, 0);
  const auto costs = [](const Answer& answer) { return Json::parse(answer.out)["cost"]["variety"].get<double>(); };
  const std::string bare = wished({{"recent", Json::array()}, {"seed", 9}});
  EXPECT_EQ(costs(compose(bare, {"--json"})), 0);
  const Answer varied = compose(bare, {"--recent", outFile(), "--json"});
  ASSERT_EQ(varied.code, 0) << varied.err;
  EXPECT_GT(costs(varied), 0) << "what is to be included was there, and comes again";
}

TEST_F(ComposeConsole, PeopleAndDayOfTheCommandLineStandInForThoseOfTheFile) {
  const Answer answer =
      compose(wednesday, {"--people", demo + "/people/odile.json", "--date", "2026-12-14", "-o", outFile(), "--json"});
  ASSERT_EQ(answer.code, 0) << answer.err;
  EXPECT_EQ(Json::parse(answer.out)["day"], "2026-12-14");
  const Json plan = Json::parse(textOf(outFile()));
  EXPECT_EQ(plan["date"], "2026-12-14");
  EXPECT_EQ(plan["people"], Json::array({"odile"}));
}

TEST_F(ComposeConsole, EndsWhenTheSecondsAreOver) {
  const Answer answer = run({"compose", wednesday, "--seconds", "0.000001", "-o", outFile(), "--json"});
  EXPECT_EQ(answer.code, 3);
  EXPECT_EQ(Json::parse(answer.out)["status"], "cancelled");
  EXPECT_LT(Json::parse(answer.out)["evaluations"], 1000);
  EXPECT_FALSE(std::filesystem::exists(outFile()));
}

TEST_F(ComposeConsole, BadWishesAndWordsAreNamed) {
  const auto refused = [&](const Answer& answer, const std::string& saying) {
    EXPECT_EQ(answer.code, 2) << saying;
    EXPECT_TRUE(answer.out.empty());
    EXPECT_NE(answer.err.find(saying), std::string::npos) << answer.err;
  };
  refused(compose(wished({{"challenge", "fierce"}})), "/challenge: expected one of gentle, middle, strong");
  refused(compose(wished({{"leaveOut", {"hundred", "hundret"}}})), "/leaveOut/1: hundret is not on file");
  refused(compose(wished({{"people", {"imre", "nobody"}}})), "/people/1: nobody is not on file");
  refused(compose(thursday), "is another kind of file");
  refused(compose(wednesday, {"--seed", "-1"}), "--seed: whole number from 0 to 9007199254740991 expected, found -1");
  refused(compose(wednesday, {"--seed", "9x"}), "--seed");
  refused(compose(wednesday, {"--date", "2026-02-30"}), "--date");
  refused(compose(wednesday, {"--evaluations", "none"}), "--evaluations");
  refused(compose(wednesday, {"--seconds", "0"}), "--seconds");
  refused(compose(wednesday, {"--recent", wednesday}), "is another kind of file");
  refused(compose(wednesday, {"--complete", (folder / "none.json").string()}), "cannot be read");
  refused(compose(wednesday, {"-o", (folder / "no/such/folder.json").string()}), "cannot be written");
  std::vector<std::string> many;
  for (int i = 0; i < 13; ++i) {
    many.emplace_back("--recent");
    many.push_back(thursday);
  }
  refused(compose(wednesday, many), "12 recent classes");
}

} // namespace
