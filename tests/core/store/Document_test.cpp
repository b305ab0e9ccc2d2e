// The frame of all files, and migration, with a format of the test's own.
#include "core/store/Document.h"

#include <array>
#include <gtest/gtest.h>

namespace matwright {
namespace {

// Version 1 called the name a title, and version 2 counted minutes.
constexpr std::array<Migration, 2> kMigrations = {
    [](Json& root) {
      if (root.contains("title"))
        root["name"] = root["title"];
      root.erase("title");
    },
    [](Json& root) {
      if (root.contains("minutes") && root["minutes"].is_number())
        root["seconds"] = root["minutes"].get<double>() * 60;
      root.erase("minutes");
    },
};
const Format kThird{"matwright-thing", 3, kMigrations};

Error errorOf(std::string_view text) {
  const auto tree = openTree(text, "f.json", kThird);
  return tree ? Error{} : tree.error();
}

TEST(OpenTree, LeavesThePresentVersionAsItIs) {
  const auto tree = openTree(R"({"format": "matwright-thing", "version": 3, "title": 1, "minutes": 2})", "", kThird);
  ASSERT_TRUE(tree);
  EXPECT_EQ(*tree, (Json{{"format", "matwright-thing"}, {"version", 3}, {"title", 1}, {"minutes", 2}}));
}

TEST(OpenTree, MigratesEachVersionIntoTheNext) {
  const Json migrated = {{"format", "matwright-thing"}, {"version", 3}, {"name", "a"}, {"seconds", 120.0}, {"x", 1}};
  const auto first =
      openTree(R"({"format": "matwright-thing", "version": 1, "title": "a", "minutes": 2, "x": 1})", "", kThird);
  ASSERT_TRUE(first);
  EXPECT_EQ(*first, migrated);
  const auto second =
      openTree(R"({"format": "matwright-thing", "version": 2, "name": "a", "minutes": 2, "x": 1})", "", kThird);
  ASSERT_TRUE(second);
  EXPECT_EQ(*second, migrated);
}

TEST(OpenTree, DoesNotMigrateWhatALaterVersionMeansOtherwise) {
  const auto tree = openTree(R"({"format": "matwright-thing", "version": 2, "title": "kept"})", "", kThird);
  ASSERT_TRUE(tree);
  EXPECT_EQ((*tree)["title"], "kept");
}

TEST(OpenTree, RefusesNewerVersions) {
  EXPECT_EQ(errorOf(R"({"format": "matwright-thing", "version": 4})"),
            (Error{ErrorCode::newerVersion, "f.json", "/version", "version 3 or older", "4"}));
}

TEST(OpenTree, LooksAtFormatBeforeVersion) {
  EXPECT_EQ(errorOf(R"({"format": "matwright-class", "version": 99})"),
            (Error{ErrorCode::wrongFormat, "f.json", "/format", "matwright-thing", "matwright-class"}));
}

TEST(OpenTree, NamesWhatIsWrongWithTheFrame) {
  const auto expectError = [](const char* text, ErrorCode code, const char* path) {
    EXPECT_EQ(errorOf(text).code, code) << text;
    EXPECT_EQ(errorOf(text).path, path) << text;
  };
  expectError("[]", ErrorCode::wrongType, "");
  expectError("\"matwright-thing\"", ErrorCode::wrongType, "");
  expectError("{}", ErrorCode::missingKey, "/format");
  expectError(R"({"format": 3, "version": 3})", ErrorCode::wrongType, "/format");
  expectError(R"({"format": "matwright-thing"})", ErrorCode::missingKey, "/version");
  expectError(R"({"format": "matwright-thing", "version": "3"})", ErrorCode::wrongType, "/version");
  expectError(R"({"format": "matwright-thing", "version": 2.5})", ErrorCode::wrongType, "/version");
  expectError(R"({"format": "matwright-thing", "version": 0})", ErrorCode::outOfRange, "/version");
  expectError(R"({"format": "matwright-thing", "version": -1})", ErrorCode::outOfRange, "/version");
  expectError(R"({"format": "matwright-thing", "version": 99999999999999999999})", ErrorCode::outOfRange, "/version");
  expectError(R"({"format": "matwright-thing", "version": 1, "version": 3})", ErrorCode::duplicateId, "/version");
}

TEST(Formats, HaveAMigrationFromEachOlderVersion) {
  for (const Format* format : {&kClassFormat, &kPersonFormat, &kStudioFormat, &kStepsFormat, &kPositionsFormat,
                               &kChangesFormat, &kCatalogueFormat, &kConditionsFormat, &kSourcesFormat, &kRulesFormat})
    EXPECT_EQ(format->migrations.size() + 1, static_cast<std::size_t>(format->version)) << format->name;
}

} // namespace
} // namespace matwright
