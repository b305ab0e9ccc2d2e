#include "tests/core/store/SpoiltKnowledge.h"

#include <gmock/gmock.h>
#include <map>
#include <set>

namespace matwright {
namespace {

namespace fs = std::filesystem;
using testing::ElementsAre;
using testing::IsEmpty;

TEST(ReadKnowledge, TellsOfEveryFileThatIsMissing) {
  const auto read = readKnowledge("/nowhere/at/all");
  ASSERT_FALSE(read);
  std::vector<std::string> files;
  for (const Error& error : read.error()) {
    EXPECT_EQ(error.code, ErrorCode::cannotRead);
    files.push_back(error.file.substr(std::string("/nowhere/at/all/").size()));
  }
  EXPECT_THAT(files, ElementsAre(kPositions, kChanges, "catalogue", kConditions, kSources, kRules, kRedFlags,
                                 "screening/measured-loads.json"));
}

TEST(ReadKnowledge, AsksForAtLeastOneCatalogue) {
  const Spoilt spoilt;
  fs::remove(spoilt.folder() / kFaceUp);
  fs::remove(spoilt.folder() / kSideLying);
  EXPECT_THAT(spoilt.errors(), ElementsAre("catalogue cannotRead "));
}

TEST(ReadKnowledge, GivesTheErrorsOfAllFiles) {
  Spoilt spoilt;
  spoilt.set(kPositions, "/positions/0/colour", "red")
      .set(kFaceUp, "/movements/0/effort", 11)
      .set(kSideLying, "/movements/0/sides", "both")
      .set(kRules, "/rules/0/level", "forbid");
  EXPECT_THAT(spoilt.errors(),
              ElementsAre("positions.json unknownKey /positions/0/colour",
                          "a-face-up.json outOfRange /movements/0/effort",
                          "b-side-lying.json unknownWord /movements/0/sides", "rules.json unknownWord /rules/0/level"));
}

TEST(ReadKnowledge, SaysNothingOfReferencesIntoAFileThatCannotBeRead) {
  const Spoilt spoilt;
  for (const char* file : {kPositions, kConditions, kSources, kFaceUp})
    spoilt.folder().put(file, "{");
  EXPECT_THAT(spoilt.errors(),
              ElementsAre("positions.json notJson line 1, column 2", "a-face-up.json notJson line 1, column 2",
                          "conditions.json notJson line 1, column 2", "sources.json notJson line 1, column 2"));
}

TEST(ReadKnowledge, HoldsChangesAgainstPositions) {
  Spoilt spoilt;
  spoilt.set(kChanges, "/changes/0/from", "floating").set(kChanges, "/changes/1/to", "flying");
  EXPECT_THAT(spoilt.errors(), ElementsAre("changes.json unknownReference /changes/0/from",
                                           "changes.json unknownReference /changes/1/to"));
}

TEST(ReadKnowledge, CountsMirroredChangesAsOne) {
  Spoilt spoilt;
  spoilt.change(kChanges, [](Json& tree) {
    Json right = tree["changes"][0];
    right["to"] = "side-right";
    tree["changes"].push_back(right);
  });
  EXPECT_THAT(spoilt.errors(), ElementsAre("changes.json duplicateId /changes/5"));
  spoilt.set(kChanges, "/changes/5/by", "press");
  EXPECT_THAT(spoilt.errors(), IsEmpty());
}

TEST(ReadKnowledge, HoldsMovementsAgainstPositions) {
  Spoilt spoilt;
  spoilt.set(kSideLying, "/movements/0/start", "floating")
      .set(kSideLying, "/movements/0/end", "flying")
      .set(kSideLying, "/movements/0/poses/end/base", "hanging")
      .set(kFaceUp, "/movements/0/options/1/poses/start/base", "hanging");
  EXPECT_THAT(spoilt.errors(), ElementsAre("a-face-up.json unknownReference /movements/0/options/1/poses/start/base",
                                           "b-side-lying.json unknownReference /movements/0/start",
                                           "b-side-lying.json unknownReference /movements/0/end",
                                           "b-side-lying.json unknownReference /movements/0/poses/end/base"));
}

TEST(ReadKnowledge, KnowsMovementsAcrossFiles) {
  Spoilt twice;
  twice.set(kSideLying, "/movements/0/id", "curl");
  EXPECT_THAT(twice.errors(), ElementsAre("b-side-lying.json duplicateId /movements/0/id"));
  Spoilt unknown;
  unknown.set(kSideLying, "/movements/0/prerequisites", {"curl", "flying"});
  EXPECT_THAT(unknown.errors(), ElementsAre("b-side-lying.json unknownReference /movements/0/prerequisites/1"));
  Spoilt circle;
  circle.set(kFaceUp, "/movements/0/prerequisites", {"side-lift"});
  EXPECT_THAT(circle.errors(), ElementsAre("a-face-up.json unknownReference /movements/1/prerequisites/0"));
}

TEST(ReadKnowledge, HoldsRulesAgainstConditionsAndSources) {
  Spoilt spoilt;
  spoilt.set(kRules, "/rules/0/condition", "old-hip")
      .set(kRules, "/rules/1/sources", {"one-2020", "two-2021", "one-2020"})
      .set(kRules, "/rules/3/id", "supine-long");
  EXPECT_THAT(spoilt.errors(),
              ElementsAre("rules.json unknownReference /rules/0/condition",
                          "rules.json unknownReference /rules/1/sources/1", "rules.json duplicateId /rules/1/sources/2",
                          "rules.json duplicateId /rules/3/id"));
}

TEST(ReadKnowledge, HoldsTestsAgainstQualifiers) {
  const auto errorsOf = [](const Json& test) {
    Spoilt spoilt;
    spoilt.set(kRules, "/rules/0/when", {test});
    return spoilt.errors();
  };
  EXPECT_THAT(errorsOf({{"qualifier", "weeks"}, {"from", -4}, {"below", 4}}), IsEmpty());
  EXPECT_THAT(errorsOf({{"qualifier", "approach"}, {"is", {"front", "back"}}}), IsEmpty());
  EXPECT_THAT(errorsOf({{"qualifier", "phase"}, {"from", 4}}),
              ElementsAre("rules.json unknownReference /rules/0/when/0/qualifier"));
  EXPECT_THAT(errorsOf({{"qualifier", "weeks"}, {"is", {"front"}}}),
              ElementsAre("rules.json wrongType /rules/0/when/0/is"));
  EXPECT_THAT(errorsOf({{"qualifier", "weeks"}, {"is", {true}}}),
              ElementsAre("rules.json wrongType /rules/0/when/0/is"));
  EXPECT_THAT(errorsOf({{"qualifier", "approach"}, {"from", 4}}),
              ElementsAre("rules.json wrongType /rules/0/when/0/qualifier"));
  EXPECT_THAT(errorsOf({{"qualifier", "approach"}, {"is", {true}}}),
              ElementsAre("rules.json wrongType /rules/0/when/0/is"));
  EXPECT_THAT(errorsOf({{"qualifier", "approach"}, {"is", {"back", "above"}}}),
              ElementsAre("rules.json unknownReference /rules/0/when/0/is/1"));
}

TEST(ReadKnowledge, HoldsTestsOfFlagsToTrueOrFalse) {
  const auto errorsOf = [](const Json& test) {
    Spoilt spoilt;
    spoilt.set(kRules, "/rules/3/when", {test});
    return spoilt.errors();
  };
  EXPECT_THAT(errorsOf({{"qualifier", "falls"}, {"is", {false}}}), IsEmpty());
  EXPECT_THAT(errorsOf({{"qualifier", "falls"}, {"is", {"no"}}}),
              ElementsAre("rules.json wrongType /rules/3/when/0/is"));
  EXPECT_THAT(errorsOf({{"qualifier", "falls"}, {"below", 3}}),
              ElementsAre("rules.json wrongType /rules/3/when/0/qualifier"));
}

TEST(ReadKnowledge, AllowsTestsOnlyWithACondition) {
  Spoilt spoilt;
  spoilt.set(kRules, "/rules/2/when", {{{"qualifier", "weeks"}, {"below", 4}}});
  EXPECT_THAT(spoilt.errors(), ElementsAre("rules.json unknownReference /rules/2/when/0/qualifier"));
}

// What stands in a class, and how it is measured, in turn: each kind of rule takes its own amount and no other.
TEST(ReadKnowledge, TakesOfAmountsOnlyThatOfTheScope) {
  const std::map<std::string, std::set<std::string>> own = {
      {"step", {"over"}},     {"way", {}},           {"total", {"over"}},
      {"stretch", {"over"}},  {"early", {"within"}}, {"late", {"within"}},
      {"order", {"between"}}, {"missing", {}},       {"class", {}}};
  const std::map<std::string, std::set<std::string>> units = {{"step", {"seconds"}},
                                                              {"total", {"seconds", "repetitions", "steps", "changes"}},
                                                              {"stretch", {"seconds", "repetitions", "steps"}},
                                                              {"early", {"seconds", "percent"}},
                                                              {"late", {"seconds", "percent"}},
                                                              {"order", {"seconds", "steps"}}};
  ASSERT_EQ(own.size(), kWordCount<Scope>);
  for (const auto& [scope, keys] : own)
    for (const char* key : {"over", "within", "between"})
      for (std::string_view unit : Words<MeasureUnit>::list) {
        Spoilt spoilt;
        spoilt.change(kRules, [&, &name = scope](Json& tree) {
          Json& rule = tree["rules"][0];
          rule["scope"] = name;
          rule[key] = {{"amount", 5}, {"unit", unit}};
          rule["threshold"] = "ours";
          if (name == "class")
            rule.erase("any");
          if (name == "order")
            rule["after"] = {{"any", {"supine"}}};
        });
        const bool good = keys.contains(key) && units.at(scope).contains(std::string(unit));
        EXPECT_EQ(spoilt.errors().empty(), good) << scope << ' ' << key << ' ' << unit;
      }
}

TEST(ReadKnowledge, IsStrictAboutEveryKey) {
  // Each key of each file in turn is left out, and one that nobody knows is put beside it.
  const std::vector<std::string> mayBeAbsent = {
      "mirror", "by",        "condition", "when", "any", "all",        "contested", "effort", "dose",
      "tempo",  "poses",     "view",      "flip", "on",  "wall",       "from",      "below",  "choices",
      "over",   "threshold", "is",        "ages", "at",  "effortFrom", "leverFrom"};
  for (const char* file : {kPositions, kChanges, kFaceUp, kConditions, kSources, kRules}) {
    const Json flat = Json::parse(bytesOf(kKnowledgeFolder / file)).flatten();
    std::set<std::string> objects, keys;
    for (const auto& [pointer, value] : flat.items())
      for (Json::json_pointer at(pointer); !at.empty(); at.pop_back())
        if (at.back().find_first_not_of("0123456789") != std::string::npos) {
          objects.insert(at.parent_pointer().to_string());
          keys.insert(at.to_string());
        }
    for (const std::string& object : objects) {
      Spoilt spoilt;
      spoilt.set(file, (object + "/nonsense").c_str(), 1);
      EXPECT_THAT(spoilt.errors(),
                  ElementsAre(fs::path(file).filename().string() + " unknownKey " + object + "/nonsense"));
    }
    for (const std::string& key : keys) {
      const Json::json_pointer at(key);
      if (!at.parent_pointer().empty() && at.parent_pointer().back() == "set")
        continue; // angles
      Spoilt spoilt;
      spoilt.change(file, [&](Json& tree) { tree[at.parent_pointer()].erase(at.back()); });
      const auto errors = spoilt.errors();
      const bool optional = std::count(mayBeAbsent.begin(), mayBeAbsent.end(), at.back()) > 0;
      const std::string missing = fs::path(file).filename().string() + " missingKey " + key;
      if (!optional) {
        EXPECT_THAT(errors, testing::Contains(missing)) << file << key;
      }
    }
  }
}

} // namespace
} // namespace matwright
