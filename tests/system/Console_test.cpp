#include "tests/system/Console.h"

#include <algorithm>
#include <array>
#include <sstream>

namespace {

using namespace matwright::test;

TEST_F(Console, ChecksTheDemoClassForItsPeople) {
  const Answer answer = run({"check", thursday, "--json"});
  ASSERT_EQ(answer.code, 0) << answer.err;
  const Json tree = Json::parse(answer.out);
  EXPECT_EQ(tree["format"], "matwright-check");
  EXPECT_EQ(tree["version"], 1);
  EXPECT_EQ(tree["people"].size(), 6U);
  EXPECT_EQ(tree["day"], "2026-11-26");
  double sum = 0;
  for (const Json& step : tree["steps"]) {
    EXPECT_NEAR(step["begin"].get<double>(), sum, 0.2);
    sum = step["finish"];
  }
  EXPECT_NEAR(tree["length"].get<double>(), sum, 0.2);
  std::size_t counted = 0;
  for (const Json& count : tree["cautionCounts"])
    counted += count.get<std::size_t>();
  EXPECT_EQ(counted, tree["cautions"].size());
  // The hundred is ten breaths of five counts in and five out at half a second: fifty seconds. Common practice, no
  // source.
  for (const Json& step : tree["steps"])
    if (step["movement"] == "hundred") {
      EXPECT_EQ(step["work"], 50.0);
    }
}

TEST_F(Console, ACautionTellsWhatWasMeasuredAndAgainstWhichMark) {
  const Json tree = Json::parse(run({"check", thursday, "--json"}).out);
  std::size_t measured = 0;
  for (const Json& caution : tree["cautions"]) {
    EXPECT_FALSE(caution["instructed"].get<bool>());
    if (!caution.contains("measured"))
      continue;
    ++measured;
    const bool more = caution.contains("over");
    const char* mark = more ? "over" : caution.contains("within") ? "within" : "between";
    EXPECT_EQ(caution["usual"], caution[mark]);
    EXPECT_EQ(caution["measured"] > caution[mark], more) << caution;
    EXPECT_TRUE(caution["threshold"] == "ours" || caution["threshold"] == "published");
    EXPECT_FALSE(caution["unit"].get<std::string>().empty());
    EXPECT_EQ(caution.contains("earlier"), caution["scope"] == "order");
  }
  EXPECT_GT(measured, 0U);
}

TEST_F(Console, PeopleOnTheCommandLineStandInForThoseOfTheClass) {
  const Answer nobody = run({"check", thursday, "--people", demo + "/people/marlo.json", "--json"});
  ASSERT_EQ(nobody.code, 0) << nobody.err;
  EXPECT_EQ(Json::parse(nobody.out)["people"], Json::array({"marlo"}));
  const Answer twice = run(
      {"check", thursday, "--people", demo + "/people/rosa.json", "--people", demo + "/people/imre.json", "--json"});
  EXPECT_EQ(Json::parse(twice.out)["people"].size(), 2U);
}

TEST_F(Console, EndsWithOneWhenSomethingIsToBeLeftOut) {
  const std::string fragile = put("fragile.json", R"({"format": "matwright-person", "version": 1, "id": "ulla",
    "name": "Ulla", "initials": "U.", "conditions": [{"condition": "vertebral-fracture", "qualifiers": {}, "clearances": []}]})");
  const Answer answer = run({"check", thursday, "--people", fragile});
  EXPECT_EQ(answer.code, 1) << answer.err;
  EXPECT_NE(answer.out.find("leave out"), std::string::npos);
  EXPECT_NE(answer.out.find("No mark does not mean safe."), std::string::npos);
}

TEST_F(Console, BadInputNamesFilePathAndWhatWasExpected) {
  Json tree = Json::parse(textOf(thursday));
  tree["sections"][0]["steps"][0]["dose"]["amount"] = 0;
  const std::string broken = put("broken.json", tree.dump());
  const Answer answer = run({"check", broken});
  EXPECT_EQ(answer.code, 2);
  EXPECT_NE(answer.err.find(broken + ": /sections/0/steps/0/dose/amount: expected"), std::string::npos) << answer.err;
  EXPECT_EQ(run({"check", (folder / "missing.json").string()}).code, 2);
  EXPECT_EQ(run({"check", thursday, "--people", broken}).code, 2);
}

TEST_F(Console, AFileOfANewerVersionIsRefusedAndLeftAsItIs) {
  Json tree = Json::parse(textOf(thursday));
  tree["version"] = 999;
  const std::string newer = put("newer.json", tree.dump());
  const Answer answer = run({"validate", newer});
  EXPECT_EQ(answer.code, 2);
  EXPECT_NE(answer.err.find("newer"), std::string::npos) << answer.err;
  EXPECT_EQ(textOf(newer), tree.dump());
}

TEST_F(Console, AnUnknownMovementKeepsItsPlaceAndIsACaution) {
  Json tree = Json::parse(textOf(thursday));
  tree["sections"][0]["steps"][0]["movement"] = "moonwalk";
  const Answer answer = run({"check", put("unknown.json", tree.dump()), "--json"});
  ASSERT_EQ(answer.code, 0) << answer.err;
  const Json report = Json::parse(answer.out);
  EXPECT_EQ(report["steps"][0]["movement"], "moonwalk");
  bool said = false;
  for (const Json& caution : report["cautions"])
    said = said || (caution["kind"] == "unknown-movement" && caution["name"] == "moonwalk");
  EXPECT_TRUE(said);
}

// The hundred of a studio's own, copied out of the catalogue, in a class of that studio.
struct OwnStudio : Console {
  Json movement;
  std::string classFile;

  void SetUp() override {
    Console::SetUp();
    std::filesystem::create_directory(folder / "classes");
    const Json catalogue = Json::parse(textOf(MATWRIGHT_SOURCE_DIR "/resources/catalogue/face-up.json"));
    for (const Json& each : catalogue["movements"])
      if (each["id"] == "hundred")
        movement = each;
    movement["id"] = "own-hundred";
    movement["name"] = "Our hundred";
    Json tree = Json::parse(textOf(thursday));
    tree["people"] = Json::array();
    tree["sections"][0]["steps"][0]["movement"] = "own-hundred";
    tree["sections"][0]["steps"][0].erase("option");
    classFile = put("classes/own.json", tree.dump());
  }
  std::string putKnowledge(const Json& movements) const {
    return put("knowledge.json",
               Json{{"format", "matwright-knowledge"}, {"version", 1}, {"movements", movements}}.dump());
  }
};

TEST_F(OwnStudio, IsCheckedByWhatItKnowsOfItsOwn) {
  const auto unknown = [&] {
    const Json report = Json::parse(run({"check", classFile, "--json"}).out);
    for (const Json& caution : report["cautions"])
      if (caution["kind"] == "unknown-movement")
        return true;
    return false;
  };
  EXPECT_TRUE(unknown());
  EXPECT_EQ(run({"validate", classFile}).code, 2);
  putKnowledge(Json::array({movement}));
  EXPECT_FALSE(unknown());
  EXPECT_EQ(run({"validate", classFile}).code, 0);
  EXPECT_NE(run({"export", classFile, "--csv"}).out.find("Our hundred"), std::string::npos);
}

TEST_F(OwnStudio, WishesForWhatItKnowsOfItsOwn) {
  std::filesystem::create_directory(folder / "wishes");
  const Json wishes{{"format", "matwright-wishes"},
                    {"version", 1},
                    {"include", {"own-hundred"}},
                    {"lengthSeconds", 1800},
                    {"known", movement["prerequisites"]}};
  const std::string file = put("wishes/own.json", wishes.dump());
  EXPECT_EQ(run({"validate", file}).code, 2);
  EXPECT_EQ(run({"compose", file}).code, 3);
  putKnowledge(Json::array({movement}));
  EXPECT_EQ(run({"validate", file}).code, 0);
  const Answer answer = run({"compose", file, "--evaluations", "12000"});
  EXPECT_EQ(answer.code, 0) << answer.err;
  EXPECT_NE(answer.out.find("Our hundred"), std::string::npos) << answer.out;
}

TEST_F(OwnStudio, IsNotCheckedWithoutWhatCannotBeRead) {
  movement["setUp"] = "Lie down.";
  const std::string file = putKnowledge(Json::array({movement}));
  const Answer answer = run({"check", classFile});
  EXPECT_EQ(answer.code, 2);
  EXPECT_NE(answer.err.find(file + ": /movements/0/setUp: expected"), std::string::npos) << answer.err;
}

TEST_F(OwnStudio, IsToldTheFaultsOfItsMovements) {
  for (Json& option : movement["options"])
    if (option["id"] == "head-cushion")
      option.erase("props"); // its cue still names the cushion
  const std::string fine = putKnowledge(Json::array({movement}));
  const Answer good = run({"validate", fine});
  EXPECT_EQ(good.code, 0) << good.err;
  EXPECT_NE(good.out.find("hint: own-hundred: head-cushion: how:"), std::string::npos) << good.out;
  movement["features"].push_back("rot");
  const Answer bad = run({"validate", putKnowledge(Json::array({movement}))});
  EXPECT_EQ(bad.code, 2);
  EXPECT_NE(bad.err.find("own-hundred: features: Neither pose shows it"), std::string::npos) << bad.err;
}

TEST_F(OwnStudio, AFileOfTheCatalogueIsToldItsFaultsToo) {
  movement["id"] = "hundred";
  movement["options"][0]["effort"] = 9;
  const std::string file =
      put("draft.json",
          Json{{"format", "matwright-catalogue"}, {"version", 1}, {"movements", Json::array({movement})}}.dump());
  const Answer answer = run({"validate", file});
  EXPECT_EQ(answer.code, 2);
  EXPECT_NE(answer.err.find("hundred: head-down: effort: An effort of 9"), std::string::npos) << answer.err;
  EXPECT_EQ(answer.out.find("no fault found"), std::string::npos);
}

TEST_F(Console, WritesTheCardWithoutADisplay) {
  const std::string card = (folder / "card.pdf").string();
  for (const char* paper : {"a4", "letter"}) {
    const Answer answer = run({"card", thursday, "-o", card, "--paper", paper});
    ASSERT_EQ(answer.code, 0) << answer.err;
    EXPECT_EQ(textOf(card).substr(0, 5), "%PDF-");
  }
  EXPECT_EQ(run({"card", thursday, "-o", (folder / "no/such/folder.pdf").string()}).code, 2);
  EXPECT_EQ(run({"card", thursday}).code, 2);
  EXPECT_EQ(run({"card", thursday, "-o", card, "--paper", "a5"}).code, 2);
}

TEST_F(Console, PrintsAPersonsSheetOrWritesIt) {
  const std::string imre = demo + "/people/imre.json", wednesday = demo + "/classes/wednesday-back-care.json";
  const Answer plain = run({"sheet", imre, "--date", "2026-12-02"});
  ASSERT_EQ(plain.code, 0) << plain.err;
  EXPECT_NE(plain.out.find("I.K.: for a talk with the clinician"), std::string::npos) << plain.out;
  EXPECT_EQ(plain.out.find("Imre"), std::string::npos) << "names are printed only when asked for";
  EXPECT_NE(plain.out.find("2 December 2026"), std::string::npos);
  EXPECT_NE(plain.out.find("Disc-related back pain"), std::string::npos);
  EXPECT_EQ(plain.out.find("Back care for one"), std::string::npos);
  EXPECT_NE(run({"sheet", imre, "--names"}).out.find("Imre Kesk"), std::string::npos);
  const Answer inClass = run({"sheet", imre, "--class", wednesday});
  EXPECT_NE(inClass.out.find("Back care for one"), std::string::npos) << inClass.err;
  EXPECT_NE(inClass.out.find("2 December 2026"), std::string::npos) << "the day of the class";

  const std::string page = (folder / "sheet.pdf").string();
  ASSERT_EQ(run({"sheet", imre, "--class", wednesday, "-o", page}).code, 0);
  EXPECT_EQ(textOf(page).substr(0, 5), "%PDF-");
}

TEST_F(Console, ASheetNeedsAPersonWhoComesToTheClassAndADayOfTheCalendar) {
  const std::string rosa = demo + "/people/rosa.json", wednesday = demo + "/classes/wednesday-back-care.json";
  const Answer stranger = run({"sheet", rosa, "--class", wednesday});
  EXPECT_EQ(stranger.code, 2);
  EXPECT_NE(stranger.err.find("rosa does not come to"), std::string::npos) << stranger.err;
  EXPECT_EQ(run({"sheet", rosa, "--date", "2026-02-30"}).code, 2);
  EXPECT_EQ(run({"sheet", wednesday}).code, 2);
  EXPECT_EQ(run({"sheet", rosa, "-o", (folder / "sheet.pdf").string(), "--paper", "a5"}).code, 2);
  EXPECT_FALSE(std::filesystem::exists(folder / "sheet.pdf"));
}

TEST_F(Console, TellsTheLoadOfEveryStepAndOfTheClassWithItsLimits) {
  const Answer answer = run({"load", thursday});
  ASSERT_EQ(answer.code, 0) << answer.err;
  const Json plan = Json::parse(textOf(thursday));
  std::size_t steps = 0;
  for (const Json& section : plan["sections"])
    steps += section["steps"].size();
  std::size_t lines = 0;
  std::istringstream text(answer.out);
  for (std::string line; std::getline(text, line);)
    lines += line.find(": low back ") != std::string::npos ? 1 : 0;
  EXPECT_EQ(lines, steps);
  EXPECT_NE(answer.out.find("for Winter (men and women alike), 175 cm, 70 kg"), std::string::npos) << answer.out;
  EXPECT_NE(answer.out.find("Whole class\n  low back: "), std::string::npos);
  EXPECT_NE(answer.out.find("N\u00b7m \u00d7 min"), std::string::npos);
  EXPECT_NE(answer.out.find("a limit for nobody"), std::string::npos);
}

TEST_F(Console, TellsLoadsForTheBodyThatIsAskedFor) {
  const auto peak = [&](const std::vector<std::string>& more) {
    std::vector<std::string> words{"load", thursday, "--json"};
    words.insert(words.end(), more.begin(), more.end());
    const Answer answer = run(words);
    EXPECT_EQ(answer.code, 0) << answer.err;
    const Json tree = Json::parse(answer.out);
    EXPECT_EQ(tree["format"], "matwright-load");
    EXPECT_FALSE(tree["steps"].empty());
    EXPECT_FALSE(tree["notice"].get<std::string>().empty());
    return tree["peak"]["low-back"].get<double>();
  };
  // Moments grow with mass times stature, whatever the pose: rounding leaves a tenth.
  const double usual = peak({});
  EXPECT_GT(usual, 20);
  EXPECT_NEAR(peak({"--mass", "35"}), usual / 2, 0.11);
  EXPECT_NEAR(peak({"--mass=140", "--stature=210"}), usual * 2 * 1.2, 0.2);
  EXPECT_NE(peak({"--table", "de-leva-women"}), usual);
  for (const auto& wrong : std::vector<std::vector<std::string>>{
           {"--mass", "7"}, {"--stature", "1.75"}, {"--table", "nobody"}, {"--mass", "70kg"}}) {
    std::vector<std::string> words{"load", thursday};
    words.insert(words.end(), wrong.begin(), wrong.end());
    const Answer answer = run(words);
    EXPECT_EQ(answer.code, 2);
    EXPECT_NE(answer.err.find(wrong[0]), std::string::npos);
    EXPECT_TRUE(answer.out.empty());
  }
}

TEST_F(Console, PrintsTheRedFlagsOrWritesThem) {
  const Answer plain = run({"red-flags"});
  ASSERT_EQ(plain.code, 0) << plain.err;
  EXPECT_NE(plain.out.find("\n  - Collapse or loss of consciousness\n"), std::string::npos);
  EXPECT_NE(plain.out.find("Signs to stop on in pregnancy"), std::string::npos);
  const std::string page = (folder / "flags.pdf").string();
  ASSERT_EQ(run({"red-flags", "-o", page}).code, 0);
  EXPECT_EQ(textOf(page).substr(0, 5), "%PDF-");
  EXPECT_EQ(run({"red-flags", "-o", page, "--paper", "a5"}).code, 2);
  EXPECT_EQ(run({"red-flags", "-o", (folder / "no/such/folder.pdf").string()}).code, 2);
}

TEST_F(Console, DrawsAMovementAsSvgOrWritesIt) {
  const Answer plain = run({"figure", "hundred"});
  ASSERT_EQ(plain.code, 0) << plain.err;
  EXPECT_NE(plain.out.find("<svg"), std::string::npos);
  EXPECT_NE(plain.out.find("viewBox=\"0 0 "), std::string::npos);
  EXPECT_NE(plain.out.find("<title>The hundred</title>"), std::string::npos) << plain.out.substr(0, 600);
  EXPECT_EQ(plain.out.find("<image"), std::string::npos);
  const std::string file = (folder / "figure.svg").string();
  const Answer written = run({"figure", "hundred/head-down", "--pose", "start", "-o", file});
  ASSERT_EQ(written.code, 0) << written.err;
  EXPECT_NE(textOf(file).find("<title>The hundred, "), std::string::npos);
  EXPECT_NE(run({"figure", "hundred", "--pose", "start"}).out, run({"figure", "hundred", "--pose", "end"}).out);
}

TEST_F(Console, AFigureNeedsAMovementAnOptionAndAPoseThatThereAre) {
  const Answer unknown = run({"figure", "moonwalk"});
  EXPECT_EQ(unknown.code, 2);
  EXPECT_NE(unknown.err.find("moonwalk"), std::string::npos) << unknown.err;
  EXPECT_EQ(run({"figure", "hundred/upside-down"}).code, 2);
  EXPECT_EQ(run({"figure", "hundred", "--pose", "middle"}).code, 2);
  EXPECT_EQ(run({"figure", "hundred", "-o", (folder / "no/such/figure.svg").string()}).code, 2);
  EXPECT_TRUE(unknown.out.empty());
}

TEST_F(Console, ExportsATableAndAPage) {
  const Answer csv = run({"export", thursday, "--csv"});
  ASSERT_EQ(csv.code, 0) << csv.err;
  EXPECT_NE(csv.out.find("The hundred"), std::string::npos);
  EXPECT_NE(csv.out.find("\r\n"), std::string::npos);
  const Answer page = run({"export", thursday, "--markdown"});
  EXPECT_EQ(page.out.substr(0, 2), "# ");
  EXPECT_EQ(run({"export", thursday}).code, 2);
  EXPECT_EQ(run({"export", thursday, "--csv", "--markdown"}).code, 2);
}

TEST_F(Console, ListsWhatThereIs) {
  // The promise of the catalogue: at least 70 movements, 18 positions, the conditions of spine and pregnancy.
  const std::array<std::pair<const char*, std::size_t>, 3> lists{
      {{"movements", 70}, {"positions", 18}, {"conditions", 15}}};
  for (const auto& [what, least] : lists) {
    const Answer answer = run({"list", what, "--json"});
    ASSERT_EQ(answer.code, 0) << answer.err;
    const Json items = Json::parse(answer.out)["items"];
    EXPECT_GE(items.size(), least) << what;
    const Answer plain = run({"list", what});
    EXPECT_EQ(static_cast<std::size_t>(std::count(plain.out.begin(), plain.out.end(), '\n')), items.size());
  }
  EXPECT_EQ(run({"list", "planets"}).code, 2);
}

TEST_F(Console, EveryFileOfTheDemoStudioIsValid) {
  std::vector<std::string> words{"validate"};
  for (const auto& entry : std::filesystem::recursive_directory_iterator(demo))
    if (entry.path().extension() == ".json")
      words.push_back(entry.path().string());
  const Answer answer = run(words);
  EXPECT_EQ(answer.code, 0) << answer.err;
  EXPECT_GE(words.size(), 10U);
}

// By hand: of the orders 0 1 2 3 and 0 2 1 3 the second costs 5 + 3 + 1.
TEST_F(Console, OrdersASequentialOrderingInstance) {
  const std::string file = put("four.sop", "4\n0 4 5 100\n-1 0 4 1\n-1 3 0 6\n-1 -1 -1 0\n");
  const Answer words = run({"sop", file});
  EXPECT_EQ(words.code, 0) << words.err;
  EXPECT_NE(words.out.find("four.sop: optimal, cost 9, bound 9, "), std::string::npos) << words.out;
  EXPECT_NE(words.out.find("\n  0 2 1 3\n"), std::string::npos) << words.out;
  const Json tree = Json::parse(run({"sop", file, file, "--nodes", "1000", "--seconds", "2", "--json"}).out);
  EXPECT_EQ(tree["format"], "matwright-sop");
  ASSERT_EQ(tree["instances"].size(), 2U);
  EXPECT_EQ(tree["instances"][1]["cost"], 9);
  EXPECT_EQ(tree["instances"][1]["lower"], 9);
  EXPECT_EQ(tree["instances"][1]["stop"], "proven");
  EXPECT_EQ(tree["instances"][1]["order"], (Json::array({0, 2, 1, 3})));
}

TEST_F(Console, ABrokenSequentialOrderingInstanceIsNamedByItsLine) {
  const std::string broken = put("broken.sop", "3\n0 4 5\n-1 zero 4\n-1 -1 0\n");
  const Answer answer = run({"sop", broken, put("fine.sop", "2\n0 7\n-1 0\n")});
  EXPECT_EQ(answer.code, 2);
  EXPECT_NE(answer.err.find("/line/3"), std::string::npos) << answer.err;
  EXPECT_NE(answer.out.find("fine.sop: optimal, cost 7"), std::string::npos) << answer.out;
}

TEST_F(Console, NamesWhatCouldStandInThePlaceOfAStep) {
  const Json check = Json::parse(run({"check", thursday, "--json"}).out);
  const Answer answer = run({"replace", thursday, "--step", "12", "--json"});
  ASSERT_EQ(answer.code, 0) << answer.err;
  const Json tree = Json::parse(answer.out);
  EXPECT_EQ(tree["format"], "matwright-replace");
  EXPECT_EQ(tree["step"], 12);
  EXPECT_FALSE(tree["notice"].get<std::string>().empty());
  ASSERT_EQ(tree["replacements"].size(), 10U);
  const Json& first = tree["replacements"][0];
  EXPECT_FALSE(first["gone"].empty());
  for (const Json& each : tree["replacements"]) {
    for (const Json& step : check["steps"])
      EXPECT_NE(step["movement"], each["movement"]);
    for (const Json& caution : each["come"])
      EXPECT_NE(caution["level"], "leave-out");
    EXPECT_GE(each["likeness"], 0);
    EXPECT_TRUE(each["dose"].contains("unit"));
  }
  const Answer words = run({"replace", thursday, "--step", "12"});
  EXPECT_EQ(words.code, 0);
  EXPECT_NE(words.out.find("\n  10. "), std::string::npos) << words.out;
  EXPECT_EQ(words.out.find("(s)"), std::string::npos) << "plurals are written out";
  EXPECT_NE(words.out.find("No mark does not mean safe."), std::string::npos);
}

TEST_F(Console, ReplacesNoStepThatTheClassDoesNotHave) {
  EXPECT_EQ(run({"replace", thursday}).code, 2);
  const Answer answer = run({"replace", thursday, "--step", "4000"});
  EXPECT_EQ(answer.code, 2);
  EXPECT_NE(answer.err.find("--step"), std::string::npos) << answer.err;
  EXPECT_EQ(run({"replace", thursday, "--step", "12x"}).code, 2);
  EXPECT_TRUE(answer.out.empty());
}

TEST_F(Console, TidiesTheDemoClassAndWritesIt) {
  const std::string out = (folder / "tidy.json").string();
  const Json tree = Json::parse(run({"tidy", thursday, "-o", out, "--json"}).out);
  EXPECT_EQ(tree["format"], "matwright-tidy");
  EXPECT_LE(tree["after"]["moving"].get<double>(), tree["before"]["moving"].get<double>());
  EXPECT_FALSE(tree["moves"].empty());
  // The class that was written takes the moving that was told, for the same people.
  std::vector<std::string> words{"check", out, "--json"};
  const Json check = Json::parse(run({"check", thursday, "--json"}).out);
  for (const Json& person : check["people"]) {
    words.emplace_back("--people");
    words.push_back(demo + "/people/" + person.get<std::string>() + ".json");
  }
  const Json written = Json::parse(run(words).out);
  EXPECT_EQ(written["moving"], tree["after"]["moving"]);
  EXPECT_EQ(written["changes"], tree["after"]["changes"]);
  EXPECT_EQ(check["moving"], tree["before"]["moving"]);
  EXPECT_EQ(written["steps"].size(), check["steps"].size());
  for (std::size_t at = 0; at < written["steps"].size(); ++at)
    EXPECT_EQ(written["steps"][at]["id"], tree["order"][at]);
}

TEST_F(Console, TidyingSaysInWordsWhatMovedAndRefusesWhatIsNotThere) {
  const Answer words = run({"tidy", thursday});
  EXPECT_EQ(words.code, 0) << words.err;
  EXPECT_NE(words.out.find("s less moving"), std::string::npos) << words.out;
  EXPECT_NE(words.out.find("(proven)"), std::string::npos) << words.out;
  EXPECT_EQ(run({"tidy", thursday, "--section", "40"}).code, 2);
  EXPECT_EQ(run({"tidy", thursday, "--section", "none"}).code, 2);
  EXPECT_EQ(run({"tidy", thursday, "--pin", "4000"}).code, 2);
}

TEST_F(Console, TidyingLooksAtAsMuchAsItIsTold) {
  const Json tree = Json::parse(run({"tidy", thursday, "--nodes", "1", "--json"}).out);
  EXPECT_EQ(tree["status"], "bounded");
  const Json whole = Json::parse(run({"tidy", thursday, "--json"}).out);
  EXPECT_LT(tree["nodes"], whole["nodes"]);
  EXPECT_EQ(Json::parse(run({"tidy", thursday, "--seconds", "0.000001", "--json"}).out)["status"], "cancelled");
}

TEST_F(Console, WordsThatDoNotFitAreSaid) {
  for (const std::vector<std::string>& words : {std::vector<std::string>{},
                                                {"fly"},
                                                {"check"},
                                                {"check", thursday, "--fast"},
                                                {"check", thursday, "--people"},
                                                {"sop"},
                                                {"sop", thursday, "--nodes", "none"},
                                                {"tidy", thursday, "--nodes", "0"},
                                                {"tidy", thursday, "--seconds", "soon"},
                                                {"compose"},
                                                {"validate"}}) {
    const Answer answer = run(words);
    EXPECT_EQ(answer.code, 2);
    EXPECT_FALSE(answer.err.empty());
    EXPECT_TRUE(answer.out.empty());
  }
  EXPECT_EQ(run({"--help"}).code, 0);
}

} // namespace
