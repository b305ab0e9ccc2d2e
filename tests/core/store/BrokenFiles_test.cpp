// The corpus in tests/data/broken: one folder a case, with a file and all the errors that must be found in it.
#include "core/store/JsonText.h"
#include "core/store/Store.h"
#include "tests/core/store/ErrorWords.h"
#include "tests/core/store/TemporaryFolder.h"
#include "tests/support/CaseFolders.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <set>

namespace matwright {
namespace {

namespace fs = std::filesystem;

const fs::path kCorpus = fs::path(MATWRIGHT_SOURCE_DIR) / "tests/data/broken";

std::vector<std::string> expectedErrors(const std::string& name) {
  std::vector<std::string> lines;
  const Json expected = Json::parse(bytesOf(kCorpus / name / "expected.json"));
  for (const Json& error : expected.at("errors"))
    lines.push_back(error.at("code").get<std::string>() + ' ' + error.at("path").get<std::string>());
  return lines;
}

class BrokenFile : public testing::TestWithParam<std::string> {};

TEST_P(BrokenFile, HasExactlyTheErrorsExpected) {
  const fs::path file = kCorpus / GetParam() / "input.json";
  std::vector<std::string> found;
  for (const Error& error : validateFile(file, nullptr)) {
    EXPECT_EQ(error.file, file.string());
    EXPECT_FALSE(error.expected.empty()) << codeAndPath(error);
    EXPECT_LE(error.found.size(), 100u) << codeAndPath(error);
    found.push_back(codeAndPath(error));
  }
  const auto expected = expectedErrors(GetParam());
  ASSERT_FALSE(expected.empty());
  EXPECT_EQ(found, expected);
}

// A document that is opened has one error to show: the first of them.
TEST_P(BrokenFile, IsNotOpened) {
  const fs::path file = kCorpus / GetParam() / "input.json";
  const std::string first = expectedErrors(GetParam()).front();
  const auto expectError = [&](const auto& read) {
    ASSERT_FALSE(read);
    EXPECT_EQ(codeAndPath(read.error()), first);
  };
  if (GetParam().starts_with("class"))
    expectError(readClass(file));
  else if (GetParam().starts_with("person"))
    expectError(readPerson(file));
  else if (GetParam().starts_with("studio"))
    expectError(readStudio(file));
  else if (GetParam().starts_with("wishes"))
    expectError(readWishes(file));
  else
    EXPECT_FALSE(readClass(file) || readPerson(file) || readStudio(file) || readWishes(file));
}

INSTANTIATE_TEST_SUITE_P(Corpus, BrokenFile, testing::ValuesIn(test::caseNames(kCorpus)), [](const auto& test) {
  std::string name = test.param;
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
});

TEST(BrokenFiles, ShowEveryCodeThatReadingCanGive) {
  std::set<std::string> seen;
  for (const std::string& name : test::caseNames(kCorpus))
    for (const std::string& error : expectedErrors(name))
      seen.insert(error.substr(0, error.find(' ')));
  // cannotRead and tooLarge are of the file, not of what is in it; the last two are of writing.
  EXPECT_THAT(seen, testing::UnorderedElementsAre("notJson", "wrongFormat", "newerVersion", "missingKey", "unknownKey",
                                                  "wrongType", "outOfRange", "unknownWord", "duplicateId",
                                                  "unknownReference"));
}

} // namespace
} // namespace matwright
