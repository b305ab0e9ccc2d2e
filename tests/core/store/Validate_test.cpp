#include "tests/core/store/SpoiltKnowledge.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

namespace fs = std::filesystem;
using testing::ElementsAre;
using testing::IsEmpty;

TEST(ValidateFile, FindsNothingInGoodFiles) {
  for (const char* file : {kPositions, kChanges, kFaceUp, kSideLying, kConditions, kSources, kRules})
    EXPECT_THAT(validateFile(kKnowledgeFolder / file, nullptr), IsEmpty()) << file;
}

TEST(ValidateFile, SaysWhatKeepsAFileFromBeingRead) {
  const auto errors = validateFile("/nowhere/at/all.json", nullptr);
  ASSERT_EQ(errors.size(), 1u);
  EXPECT_EQ(errors[0].code, ErrorCode::cannotRead);
}

TEST(ValidateFile, HoldsAClassAgainstTheCatalogue) {
  ClassPlan plan = emptyClass("A");
  const Movement& curl = *goodKnowledge().catalogue.find({"curl"});
  plan.sections[0].steps = {stepOf({1}, curl), stepOf({2}, curl, {"slow"}), stepOf({3}, curl)};
  plan.sections[0].steps[2].option = {"sideways"};
  plan.sections[2].steps = {stepOf({4}, curl)};
  plan.sections[2].steps[0].movement = {"flying"};
  const TemporaryFolder folder;
  const fs::path file = folder.put("a.json", classText(plan));
  EXPECT_THAT(validateFile(file, nullptr), IsEmpty());
  std::vector<std::string> found;
  for (const Error& error : validateFile(file, &goodKnowledge()))
    found.push_back(codeAndPath(error) + ' ' + error.found);
  EXPECT_THAT(found, ElementsAre("unknownReference /sections/0/steps/2/option sideways",
                                 "unknownReference /sections/2/steps/0/movement flying"));
}

TEST(ValidateFile, HoldsAPersonAgainstTheConditions) {
  const Date day = *dateFromIso("2026-10-01");
  Person person{{"rosa"}, "Rosa", "R.", {}, ""};
  person.conditions = {
      {{"hip-new"}, {{"weeks", day}, {"approach", std::string("front")}}, {}, ""},
      {{"hip-new"}, {{"weeks", true}, {"approach", std::string("above")}, {"side", std::string("left")}}, {}, ""},
      {{"unsteady"}, {{"falls", day}}, {}, ""},
      {{"unknown"}, {{"falls", day}}, {}, ""}};
  const TemporaryFolder folder;
  const fs::path file = folder.put("rosa.json", personText(person));
  EXPECT_THAT(validateFile(file, nullptr), IsEmpty());
  std::vector<std::string> found;
  for (const Error& error : validateFile(file, &goodKnowledge()))
    found.push_back(codeAndPath(error));
  EXPECT_THAT(found,
              ElementsAre("unknownReference /conditions/1/qualifiers/approach",
                          "unknownReference /conditions/1/qualifiers/side", "wrongType /conditions/1/qualifiers/weeks",
                          "wrongType /conditions/2/qualifiers/falls", "unknownReference /conditions/3/condition"));
}

} // namespace
} // namespace matwright
