// The schemas in resources/schema say what the decoders do. Every property is walked, and the full document of its kind
// is changed at that place to what the schema just allows and just forbids.
#include "core/store/ClassJson.h"
#include "core/store/OwnKnowledgeJson.h"
#include "core/store/PersonJson.h"
#include "core/store/StudioJson.h"
#include "core/store/WishesJson.h"
#include "tests/core/store/ErrorWords.h"
#include "tests/core/store/FullDocuments.h"
#include "tests/core/store/SpoiltKnowledge.h"
#include "tests/core/store/TemporaryFolder.h"

#include <functional>
#include <gmock/gmock.h>
#include <map>
#include <ostream>
#include <set>

namespace matwright {
namespace {

struct Kind {
  const char* name;
  const std::string* full;
  std::function<void(const Json&, Reading&)> read;
  // Places of which the value, or whether it is there, goes with other keys, so that it cannot be changed alone.
  std::set<std::string> bound = {};
};

// Rules with the keys that the one in the full document cannot have.
const Json kOtherRules = Json::parse(R"([{
  "id": "own-other", "scope": "order", "any": ["flex-end"], "between": {"amount": 2, "unit": "steps"},
  "after": {"any": ["ext-end"], "all": ["prone"], "at": ["face-down"], "effortFrom": 2, "leverFrom": 45,
            "over": {"amount": 30, "unit": "seconds"}},
  "threshold": "ours", "level": "watch", "why": "So.", "instead": "wait", "strength": "practice", "check": "memory",
  "sources": [], "reviewed": "2026-11-26", "when": [{"qualifier": "weeks", "from": 1, "below": 2}]
}, {
  "id": "own-early", "scope": "early", "any": ["flex-end"], "within": {"amount": 20, "unit": "percent"},
  "threshold": "ours", "level": "watch", "why": "So.", "instead": "wait", "strength": "practice", "check": "memory",
  "sources": [], "reviewed": "2026-11-26"
}])");

const Kind kKinds[] = {
    {"class", &kFullClass, [](const Json& tree, Reading& reading) { readClassTree(tree, reading); }},
    {"person", &kFullPerson, [](const Json& tree, Reading& reading) { readPersonTree(tree, reading); }},
    {"studio", &kFullStudio, [](const Json& tree, Reading& reading) { readStudioTree(tree, reading); }},
    {"wishes",
     &kFullWishes,
     [](const Json& tree, Reading& reading) { readWishesTree(tree, reading); },
     {"/lengthSeconds", "/sections/*/lengthSeconds", "/arc/*/at"}},
    {"knowledge",
     &kFullOwnKnowledge,
     [](const Json& tree, Reading& reading) { readOwnKnowledgeTree(tree, nullptr, reading); },
     {"/movements/*/id", "/movements/*/setUp", "/movements/*/options/*/removes", "/movements/*/options/*/adds",
      "/conditions/*/id", "/conditions/*/qualifiers/*/kind", "/conditions/*/qualifiers/*/choices", "/sources/*/id",
      "/rules/*/id", "/rules/*/condition", "/rules/*/when/*/from", "/rules/*/when/*/below", "/rules/*/when/*/is",
      "/rules/*/scope", "/rules/*/over", "/rules/*/within", "/rules/*/between", "/rules/*/after",
      "/rules/*/threshold"}},
};

class Schema : public testing::TestWithParam<Kind> {
protected:
  Schema()
      : schema_(Json::parse(bytesOf(std::filesystem::path(MATWRIGHT_SOURCE_DIR) / "resources/schema" /
                                    (std::string(GetParam().name) + ".schema.json")))),
        full_(Json::parse(*GetParam().full)) {}

  // Calls visit(pointer, place, property, required) for every property; `pointer` is into the full document, `place`
  // has * for its indices.
  using Visit = std::function<void(const std::string&, const std::string&, const Json&, bool)>;
  void walkAll(const Visit& visit) const { walk(schema_, "", "", visit, {}); }
  // Without those that go with others.
  void walk(const Visit& visit) const { walk(schema_, "", "", visit, GetParam().bound); }

  // The errors of the full document with one thing changed.
  std::vector<std::string> errorsWith(const std::string& pointer, Json value) const {
    Json tree = full_;
    tree[Json::json_pointer(pointer)] = std::move(value);
    return errorsOf(tree);
  }
  std::vector<std::string> errorsOf(const Json& tree) const {
    Reading reading;
    GetParam().read(tree, reading);
    std::vector<std::string> lines;
    for (const Error& error : reading.errors)
      lines.push_back(codeAndPath(error));
    return lines;
  }
  // Through the whole of reading, which also looks at format and version.
  bool opens(const Json& tree) const {
    const std::string text = tree.dump(), name = GetParam().name;
    return name == "class"       ? parseClass(text, "").has_value()
           : name == "person"    ? parsePerson(text, "").has_value()
           : name == "wishes"    ? parseWishes(text, "").has_value()
           : name == "knowledge" ? parseOwnKnowledge(text, "", goodKnowledge()).has_value()
                                 : parseStudio(text, "").has_value();
  }

  const Json schema_, full_;

private:
  const Json& resolved(const Json& node) const {
    return node.contains("$ref") ? schema_.at(Json::json_pointer(node["$ref"].get<std::string>().substr(1))) : node;
  }
  void walk(const Json& node, const std::string& pointer, const std::string& place, const Visit& visit,
            const std::set<std::string>& without) const {
    const Json required = node.value("required", Json::array());
    const Json properties = node.value("properties", Json::object());
    for (const Json& key : required)
      EXPECT_TRUE(properties.contains(key.get<std::string>())) << place << ' ' << key;
    for (const auto& [key, child] : properties.items()) {
      if (without.contains(place + '/' + key))
        continue;
      const Json& property = resolved(child);
      const bool needed = std::find(required.begin(), required.end(), key) != required.end();
      visit(pointer + '/' + key, place + '/' + key, property, needed);
      walk(property, pointer + '/' + key, place + '/' + key, visit, without);
    }
    if (node.contains("items"))
      walk(resolved(node["items"]), pointer + "/0", place + "/*", visit, without);
  }
};

std::vector<std::string> only(const char* code, const std::string& pointer) {
  return {std::string(code) + ' ' + pointer};
}

TEST_P(Schema, NamesTheKeysThatTheDecoderTakes) {
  std::set<std::string> named, asked;
  walkAll([&](const std::string&, const std::string& place, const Json&, bool) { named.insert(place); });
  Reading reading;
  reading.asked = &asked;
  Json tree = full_;
  if (tree.contains("rules"))
    tree["rules"].insert(tree["rules"].end(), kOtherRules.begin(), kOtherRules.end());
  GetParam().read(tree, reading);
  for (const Error& error : reading.errors)
    EXPECT_EQ(codeAndPath(error), "unknownReference /rules/1/when/0/qualifier"); // of no condition
  EXPECT_EQ(named, asked);
}

TEST_P(Schema, IsOfAFullDocument) {
  walk([&](const std::string& pointer, const std::string&, const Json&, bool) {
    EXPECT_TRUE(full_.contains(Json::json_pointer(pointer))) << pointer;
  });
}

TEST_P(Schema, SaysWhichKeysMustBeThere) {
  walk([&](const std::string& pointer, const std::string&, const Json&, bool required) {
    Json tree = full_;
    const Json::json_pointer at(pointer);
    tree[at.parent_pointer()].erase(at.back());
    EXPECT_EQ(errorsOf(tree), required ? only("missingKey", pointer) : std::vector<std::string>{});
  });
}

TEST_P(Schema, SaysOfWhichTypeThingsAre) {
  walk([&](const std::string& pointer, const std::string&, const Json& property, bool) {
    const std::string type = property.value("type", "");
    if (type.empty() && !property.contains("enum"))
      return;
    for (const Json& other :
         {Json("text"), Json(1), Json(1.5), Json(true), Json(nullptr), Json::array(), Json::object()}) {
      const bool allowed = (type == "string" || property.contains("enum")) ? other.is_string()
                           : type == "integer" ? other.is_number_integer() || other.is_number_unsigned()
                           : type == "number"  ? other.is_number()
                           : type == "array"   ? other.is_array()
                           : type == "boolean" ? other.is_boolean()
                                               : other.is_object();
      if (!allowed) {
        EXPECT_EQ(errorsWith(pointer, other), only("wrongType", pointer)) << other;
      }
    }
  });
}

TEST_P(Schema, HasTheBoundsOfNumbers) {
  walk([&](const std::string& pointer, const std::string&, const Json& property, bool) {
    const bool whole = property.value("type", "") == "integer";
    if (!whole && property.value("type", "") != "number")
      return;
    ASSERT_TRUE(property.contains("minimum") && property.contains("maximum")) << pointer;
    const Json least = property["minimum"], most = property["maximum"];
    EXPECT_EQ(errorsWith(pointer, least), std::vector<std::string>{}) << least;
    EXPECT_EQ(errorsWith(pointer, most), std::vector<std::string>{}) << most;
    const Json below = whole ? Json(least.get<std::int64_t>() - 1) : Json(least.get<double>() - 1e-9);
    const Json above = whole ? Json(most.get<std::int64_t>() + 1) : Json(most.get<double>() + 1e-9);
    EXPECT_EQ(errorsWith(pointer, below), only("outOfRange", pointer));
    EXPECT_EQ(errorsWith(pointer, above), only("outOfRange", pointer));
  });
}

TEST_P(Schema, HasTheLengthsOfText) {
  walk([&](const std::string& pointer, const std::string&, const Json& property, bool) {
    if (property.value("type", "") != "string" || property.contains("format"))
      return;
    ASSERT_TRUE(property.contains("maxLength")) << pointer;
    const auto most = property["maxLength"].get<std::size_t>();
    EXPECT_EQ(errorsWith(pointer, std::string(most, 'a')), std::vector<std::string>{}) << pointer;
    EXPECT_EQ(errorsWith(pointer, std::string(most + 1, 'a')), only("outOfRange", pointer));
    const bool mayBeEmpty = !property.contains("minLength") && !property.contains("pattern");
    EXPECT_EQ(errorsWith(pointer, "").empty(), mayBeEmpty) << pointer;
  });
}

TEST_P(Schema, HasTheFormsOfIdsAndDates) {
  walk([&](const std::string& pointer, const std::string&, const Json& property, bool) {
    if (!property.contains("pattern"))
      return;
    EXPECT_EQ(errorsWith(pointer, "Not one, nor the other"), only("wrongType", pointer));
    const bool date = property.value("format", "") == "date";
    EXPECT_EQ(errorsWith(pointer, "2026-11-26").empty(), date) << pointer;
    EXPECT_EQ(errorsWith(pointer, "a-b2-c").empty(), !date) << pointer;
  });
}

TEST_P(Schema, HasTheWordsOfClosedLists) {
  walk([&](const std::string& pointer, const std::string&, const Json& property, bool) {
    const bool list = property.contains("items") && property["items"].contains("enum");
    if (!list && !property.contains("enum"))
      return;
    const auto asFound = [&](const Json& word) { return list ? Json::array({word}) : word; };
    // Not every word goes with those beside it here: see PoseJson_test.cpp.
    const bool alone = pointer.find("/supports/") == std::string::npos &&
                       pointer.find("/holds/") == std::string::npos && !pointer.ends_with("/on");
    if (alone) {
      for (const Json& word : list ? property["items"]["enum"] : property["enum"])
        EXPECT_EQ(errorsWith(pointer, asFound(word)), std::vector<std::string>{}) << word;
    }
    EXPECT_EQ(errorsWith(pointer, asFound("nonsense")), only("unknownWord", pointer + (list ? "/0" : "")));
  });
}

template <class Enum> Json wordsOf() {
  Json words = Json::array();
  for (const std::string_view word : Words<Enum>::list)
    words.push_back(word);
  return words;
}

TEST_P(Schema, LeavesOutNoWordOfAClosedList) {
  const std::map<std::string, Json> lists = {{"unit", wordsOf<DoseUnit>()},
                                             {"breath", wordsOf<Breath>()},
                                             {"onlySide", wordsOf<Side>()},
                                             {"features", wordsOf<Feature>()},
                                             {"ageBand", wordsOf<AgeBand>()},
                                             {"sets", wordsOf<Level>()},
                                             {"level", wordsOf<Level>()},
                                             {"repertoire", wordsOf<Repertoire>()},
                                             {"sides", wordsOf<Sides>()},
                                             {"challenge", wordsOf<Challenge>()},
                                             {"skills", wordsOf<Feature>()},
                                             {"regions", wordsOf<Region>()},
                                             {"spine", wordsOf<SpineAction>()},
                                             {"props", wordsOf<Prop>()},
                                             {"removes", wordsOf<Feature>()},
                                             {"adds", wordsOf<Feature>()},
                                             {"any", wordsOf<Feature>()},
                                             {"all", wordsOf<Feature>()},
                                             {"at", wordsOf<Elevation>()},
                                             {"view", wordsOf<View>()},
                                             {"prop", wordsOf<Held>()},
                                             {"where", wordsOf<HeldAt>()},
                                             {"ages", wordsOf<AgeBand>()},
                                             {"scope", wordsOf<Scope>()},
                                             {"threshold", wordsOf<ThresholdOrigin>()},
                                             {"strength", wordsOf<Strength>()},
                                             {"check", wordsOf<Verification>()},
                                             {"/movements/*/options/*/kind", wordsOf<OptionKind>()},
                                             {"/conditions/*/qualifiers/*/kind", wordsOf<QualifierKind>()},
                                             {"/sources/*/kind", wordsOf<SourceKind>()}};
  const auto listAt = [&](const std::string& place) {
    if (place.starts_with("/rules") && place.ends_with("/unit"))
      return wordsOf<MeasureUnit>();
    const auto found = lists.find(place);
    return found != lists.end() ? found->second : lists.at(place.substr(place.rfind('/') + 1));
  };
  walkAll([&](const std::string&, const std::string& place, const Json& property, bool) {
    const Json& holder = property.contains("items") ? property["items"] : property;
    // What rests may be said for both limbs in one word, which no enumeration has.
    if (holder.contains("enum") && !place.ends_with("/on") && !place.ends_with("/wall") &&
        place.find("/supports/") == std::string::npos) {
      EXPECT_EQ(holder["enum"], listAt(place)) << place;
    }
  });
}

TEST_P(Schema, HasTheLengthsOfLists) {
  walk([&](const std::string& pointer, const std::string&, const Json& property, bool) {
    if (property.value("type", "") != "array")
      return;
    ASSERT_TRUE(property.contains("maxItems")) << pointer;
    const auto most = property["maxItems"].get<std::size_t>();
    const Json entry = full_[Json::json_pointer(pointer)][0];
    const auto tooLong = [&](std::size_t length) {
      const auto errors = errorsWith(pointer, Json::array_t(length, entry));
      return std::count(errors.begin(), errors.end(), "outOfRange " + pointer);
    };
    EXPECT_EQ(tooLong(most), 0) << pointer;
    EXPECT_EQ(tooLong(most + 1), 1) << pointer;
    const bool mayBeEmpty = property.value("minItems", 0) == 0;
    EXPECT_EQ(errorsWith(pointer, Json::array()).empty(), mayBeEmpty) << pointer;
    const bool once = errorsWith(pointer, {entry, entry}) == only("duplicateId", pointer + "/1");
    EXPECT_EQ(property.value("uniqueItems", false), once) << pointer;
  });
}

TEST_P(Schema, NamesFormatAndVersion) {
  ASSERT_TRUE(opens(full_));
  EXPECT_EQ(schema_["properties"]["format"]["const"], full_["format"]);
  EXPECT_EQ(schema_["properties"]["version"]["const"], full_["version"]);
  Json newer = full_;
  newer["version"] = schema_["properties"]["version"]["const"].get<int>() + 1;
  EXPECT_FALSE(opens(newer));
}

TEST_P(Schema, IsOfDraft202012AndLetsUnknownKeysBe) {
  EXPECT_EQ(schema_["$schema"], "https://json-schema.org/draft/2020-12/schema");
  const Json flat = schema_.flatten();
  const bool strictWithin = std::string(GetParam().name) == "knowledge";
  for (const auto& [pointer, value] : flat.items()) {
    const bool within = pointer.find('/', 1) != std::string::npos;
    EXPECT_FALSE(pointer.ends_with("/additionalProperties") && value == false && !(strictWithin && within)) << pointer;
  }
  Json later = full_;
  later["later"] = 1;
  EXPECT_TRUE(opens(later));
}

void PrintTo(const Kind& kind, std::ostream* out) { *out << kind.name; }

INSTANTIATE_TEST_SUITE_P(Documents, Schema, testing::ValuesIn(kKinds),
                         [](const auto& test) { return std::string(test.param.name); });

} // namespace
} // namespace matwright
