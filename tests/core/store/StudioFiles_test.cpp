#include "core/store/Store.h"
#include "tests/core/store/FullDocuments.h"
#include "tests/core/store/TemporaryFolder.h"

#include <gmock/gmock.h>
#include <sys/stat.h>

namespace matwright {
namespace {

std::string personNamed(const std::string& id, const std::string& name) {
  return personText(Person{{id}, name, "", {}, ""});
}

TEST(ReadClass, NamesTheFile) {
  const TemporaryFolder folder;
  const auto missing = readClass(folder / "missing.json");
  ASSERT_FALSE(missing);
  EXPECT_EQ(missing.error().code, ErrorCode::cannotRead);
  EXPECT_EQ(missing.error().file, (folder / "missing.json").string());
  const auto broken = readClass(folder.put("broken.json", "{"));
  ASSERT_FALSE(broken);
  EXPECT_EQ(broken.error().file, (folder / "broken.json").string());
}

TEST(ReadClass, GivesTheFingerprintThatWritingAsksFor) {
  const TemporaryFolder folder;
  const auto file = folder.put("a.json", kFullClass);
  const auto first = readClass(file);
  ASSERT_TRUE(first);
  const auto written = writeFile(file, classText(first->value, first->kept), Privacy::ordinary, &first->fingerprint);
  ASSERT_TRUE(written);
  const auto second = readClass(file);
  ASSERT_TRUE(second);
  EXPECT_EQ(second->fingerprint, *written);
  EXPECT_EQ(second->value, first->value);
  const auto stale = writeFile(file, "", Privacy::ordinary, &first->fingerprint);
  ASSERT_FALSE(stale);
  EXPECT_EQ(stale.error().code, ErrorCode::changedOnDisk);
}

TEST(ReadPerson, ReadsWhatWasWrittenForTheOwnerAlone) {
  const TemporaryFolder folder;
  ASSERT_TRUE(writeFile(folder / "rosa.json", kFullPerson, Privacy::personal));
  struct stat state {};
  ASSERT_EQ(::stat((folder / "rosa.json").c_str(), &state), 0);
  EXPECT_EQ(state.st_mode & 07777, 0600u);
  EXPECT_TRUE(readPerson(folder / "rosa.json"));
}

TEST(ReadStudio, ReadsTheStudio) {
  const TemporaryFolder folder;
  const auto studio = readStudio(folder.put("studio.json", kFullStudio));
  ASSERT_TRUE(studio);
  EXPECT_EQ(studio->value.name, "The Long Room");
}

TEST(ReadPeople, OrdersByNameThenId) {
  const TemporaryFolder folder;
  folder.put("1.json", personNamed("z", "Bea"));
  folder.put("2.json", personNamed("c", "Ada"));
  folder.put("3.json", personNamed("a", "Bea"));
  folder.put("notes.txt", "not a person");
  folder.put(".hidden.json", "not a person");
  const PeopleFolder people = readPeople(folder.path());
  EXPECT_TRUE(people.errors.empty());
  std::vector<std::string> ids;
  for (const auto& person : people.people)
    ids.push_back(person.value.id.value);
  EXPECT_THAT(ids, testing::ElementsAre("c", "a", "z"));
}

TEST(ReadPeople, ShowsTheOthersWhenOneIsBroken) {
  const TemporaryFolder folder;
  folder.put("1.json", personNamed("a", "Ada"));
  folder.put("2.json", "{");
  folder.put("3.json", kFullClass);
  folder.put("4.json", personNamed("b", "Bea"));
  folder.put("5.json", personNamed("a", "Ada again"));
  std::filesystem::create_directory(folder / "6.json");
  const PeopleFolder people = readPeople(folder.path());
  ASSERT_EQ(people.people.size(), 2u);
  EXPECT_EQ(people.people[0].value.name, "Ada");
  std::vector<std::pair<ErrorCode, std::string>> errors;
  for (const Error& error : people.errors)
    errors.emplace_back(error.code, std::filesystem::path(error.file).filename().string() + error.path);
  EXPECT_THAT(errors, testing::ElementsAre(std::pair(ErrorCode::notJson, "2.jsonline 1, column 2"),
                                           std::pair(ErrorCode::wrongFormat, "3.json/format"),
                                           std::pair(ErrorCode::duplicateId, "5.json/id"),
                                           std::pair(ErrorCode::cannotRead, "6.json")));
}

TEST(ReadPeople, SaysThatTheFolderIsMissing) {
  const PeopleFolder people = readPeople("/nowhere/at/all");
  EXPECT_TRUE(people.people.empty());
  ASSERT_EQ(people.errors.size(), 1u);
  EXPECT_EQ(people.errors[0].code, ErrorCode::cannotRead);
}

TEST(DocumentKindOf, IsSaidByTheRoot) {
  EXPECT_EQ(documentKind(kFullClass, ""), DocumentKind::classPlan);
  EXPECT_EQ(documentKind(kFullPerson, ""), DocumentKind::person);
  EXPECT_EQ(documentKind(kFullStudio, ""), DocumentKind::studio);
  EXPECT_EQ(documentKind(kFullWishes, ""), DocumentKind::wishes);
  EXPECT_EQ(documentKind(R"({"format": "matwright-rules", "version": 77})", ""), DocumentKind::rules);
}

TEST(DocumentKindOf, RefusesWhatIsNotOfMatwright) {
  const auto codeOf = [](std::string_view text) { return documentKind(text, "").error().code; };
  EXPECT_EQ(codeOf("x"), ErrorCode::notJson);
  EXPECT_EQ(codeOf("[]"), ErrorCode::wrongType);
  EXPECT_EQ(codeOf("{}"), ErrorCode::missingKey);
  EXPECT_EQ(codeOf(R"({"format": 1})"), ErrorCode::wrongType);
  EXPECT_EQ(codeOf(R"({"format": "matwright-steps", "version": 1, "steps": []})"), ErrorCode::wrongFormat);
}

} // namespace
} // namespace matwright
