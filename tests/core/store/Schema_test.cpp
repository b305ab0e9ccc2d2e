// The schemas in resources/schema say what the decoders do. Every property is walked, and the full document of its kind
// is changed at that place to what the schema just allows and just forbids.
#include "core/store/ClassJson.h"
#include "core/store/PersonJson.h"
#include "core/store/StudioJson.h"
#include "tests/core/store/ErrorWords.h"
#include "tests/core/store/FullDocuments.h"
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
};

const Kind kKinds[] = {
    {"class", &kFullClass, [](const Json& tree, Reading& reading) { readClassTree(tree, reading); }},
    {"person", &kFullPerson, [](const Json& tree, Reading& reading) { readPersonTree(tree, reading); }},
    {"studio", &kFullStudio, [](const Json& tree, Reading& reading) { readStudioTree(tree, reading); }},
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
  void walk(const Visit& visit) const { walk(schema_, "", "", visit); }

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
    return name == "class"    ? parseClass(text, "").has_value()
           : name == "person" ? parsePerson(text, "").has_value()
                              : parseStudio(text, "").has_value();
  }

  const Json schema_, full_;

private:
  const Json& resolved(const Json& node) const {
    return node.contains("$ref") ? schema_.at(Json::json_pointer(node["$ref"].get<std::string>().substr(1))) : node;
  }
  void walk(const Json& node, const std::string& pointer, const std::string& place, const Visit& visit) const {
    const Json required = node.value("required", Json::array());
    const Json properties = node.value("properties", Json::object());
    for (const Json& key : required)
      EXPECT_TRUE(properties.contains(key.get<std::string>())) << place << ' ' << key;
    for (const auto& [key, child] : properties.items()) {
      const Json& property = resolved(child);
      const bool needed = std::find(required.begin(), required.end(), key) != required.end();
      visit(pointer + '/' + key, place + '/' + key, property, needed);
      walk(property, pointer + '/' + key, place + '/' + key, visit);
    }
    if (node.contains("items"))
      walk(resolved(node["items"]), pointer + "/0", place + "/*", visit);
  }
};

std::vector<std::string> only(const char* code, const std::string& pointer) {
  return {std::string(code) + ' ' + pointer};
}

TEST_P(Schema, NamesTheKeysThatTheDecoderTakes) {
  std::set<std::string> named, asked;
  walk([&](const std::string&, const std::string& place, const Json&, bool) { named.insert(place); });
  Reading reading;
  reading.asked = &asked;
  GetParam().read(full_, reading);
  EXPECT_TRUE(reading.errors.empty());
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
    for (const Json& word : list ? property["items"]["enum"] : property["enum"])
      EXPECT_EQ(errorsWith(pointer, asFound(word)), std::vector<std::string>{}) << word;
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
                                             {"sets", wordsOf<Level>()}};
  walk([&](const std::string& pointer, const std::string&, const Json& property, bool) {
    const Json& holder = property.contains("items") ? property["items"] : property;
    if (holder.contains("enum")) {
      EXPECT_EQ(holder["enum"], lists.at(pointer.substr(pointer.rfind('/') + 1))) << pointer;
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
  for (const auto& [pointer, value] : flat.items())
    EXPECT_FALSE(pointer.ends_with("/additionalProperties") && value == false) << pointer;
  Json later = full_;
  later["later"] = 1;
  EXPECT_TRUE(opens(later));
}

void PrintTo(const Kind& kind, std::ostream* out) { *out << kind.name; }

INSTANTIATE_TEST_SUITE_P(Documents, Schema, testing::ValuesIn(kKinds),
                         [](const auto& test) { return std::string(test.param.name); });

} // namespace
} // namespace matwright
