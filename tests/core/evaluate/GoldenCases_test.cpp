// The corpus in tests/data/golden: one folder a case, a class and its people worked by hand from guidelines, with every
// caution that must be raised and no other. `source` in expected.json names the guidelines, `about` the reasoning.
#include "core/evaluate/Evaluation.h"
#include "core/store/Store.h"
#include "tests/support/CaseFolders.h"
#include "tests/support/RealKnowledge.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <set>

namespace matwright::test {
namespace {

namespace fs = std::filesystem;
using Json = nlohmann::json;

const fs::path kCorpus = fs::path(MATWRIGHT_SOURCE_DIR) / "tests/data/golden";

std::string line(const std::string& step, std::string_view level, const std::string& rule, const std::string& person) {
  return step + ' ' + std::string(level) + ' ' + rule + ' ' + person;
}

// "7 adapt disc-flexion ansel"; "class" for the class as a whole, "everybody" where the rule is for no one person.
std::string lineOf(const Caution& caution, const Evaluation& evaluation) {
  return line(caution.step ? std::to_string(caution.step->value) : "class", word(caution.level),
              caution.rule ? caution.rule->id.value : "no rule: " + caution.name,
              caution.person == Finding::kNone ? "everybody" : evaluation.people[caution.person].value);
}

std::string lineOf(const Json& caution) {
  const Json &step = caution.at("step"), &person = caution.at("person");
  return line(step.is_null() ? "class" : std::to_string(step.get<int>()), caution.at("level").get<std::string>(),
              caution.at("rule").get<std::string>(), person.is_null() ? "everybody" : person.get<std::string>());
}

// What one list has more often than the other, a line each.
std::string onlyIn(const std::vector<std::string>& these, const std::vector<std::string>& others) {
  std::multiset<std::string> left(these.begin(), these.end());
  for (const std::string& each : others)
    if (const auto at = left.find(each); at != left.end())
      left.erase(at);
  std::string lines;
  for (const std::string& each : left)
    lines += "  " + each + '\n';
  return lines;
}

class GoldenCase : public testing::TestWithParam<std::string> {
protected:
  void SetUp() override {
    ASSERT_TRUE(readRealKnowledge()) << whatIsWrongWithRealKnowledge();
    std::ifstream file(folder() / "expected.json");
    expected_ = Json::parse(file);
    const auto plan = readClass(folder() / "class.json");
    ASSERT_TRUE(plan) << plan.error().path << ": " << plan.error().expected;
    plan_ = plan->value;
    const PeopleFolder people = readPeople(folder() / "people");
    ASSERT_TRUE(people.errors.empty()) << people.errors[0].file << people.errors[0].path;
    for (const Stored<Person>& each : people.people)
      roster_.push_back(each.value);
  }
  fs::path folder() const { return kCorpus / GetParam(); }
  const Json& expected() const { return expected_; }
  const ClassPlan& plan() const { return plan_; }
  const std::vector<Person>& roster() const { return roster_; }
  Evaluation evaluated() const {
    const auto day = dateFromIso(expected_.at("day").get<std::string>());
    return evaluate(realKnowledge(), plan_, roster_, day.value());
  }

private:
  Json expected_;
  ClassPlan plan_;
  std::vector<Person> roster_;
};

TEST_P(GoldenCase, RaisesExactlyTheCautionsThatTheGuidelinesGive) {
  const Evaluation evaluation = evaluated();
  std::vector<std::string> found, wanted;
  for (const Caution& each : evaluation.cautions)
    found.push_back(lineOf(each, evaluation));
  for (const Json& each : expected().at("cautions"))
    wanted.push_back(lineOf(each));
  const std::string missing = onlyIn(wanted, found), surplus = onlyIn(found, wanted);
  EXPECT_TRUE(missing.empty() && surplus.empty()) << "expected and not raised:\n"
                                                  << missing << "raised and not expected:\n"
                                                  << surplus;
  EXPECT_EQ(found, wanted) << "the order differs";
}

TEST_P(GoldenCase, KnowsAllThatIsInItAndNamesWhereItsCautionsComeFrom) {
  EXPECT_FALSE(expected().at("source").get<std::string>().empty());
  EXPECT_FALSE(expected().at("about").get<std::string>().empty());
  EXPECT_EQ(evaluated().people.size(), roster().size());
  EXPECT_GE(countSteps(plan()), 8u);
  for (const Person& person : roster())
    for (const PersonCondition& held : person.conditions) {
      const Condition* condition = realKnowledge().rules.findCondition(held.condition);
      ASSERT_NE(condition, nullptr) << held.condition.value;
      // Every question is answered, so nothing is raised on a guess.
      EXPECT_EQ(held.qualifiers.size(), condition->qualifiers.size()) << held.condition.value;
    }
  for (const Caution& each : evaluated().cautions)
    EXPECT_FALSE(each.assumed) << each.rule->id.value;
}

INSTANTIATE_TEST_SUITE_P(Corpus, GoldenCase, testing::ValuesIn(caseNames(kCorpus)), [](const auto& named) {
  std::string name = named.param;
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
});

// The cases that the project promises, so that an empty folder is not taken for success.
TEST(GoldenCorpus, HoldsTheCasesPromised) {
  const std::vector<std::string> names = caseNames(kCorpus);
  for (const char* each : {"disc-settled", "glaucoma-hypertension", "group-of-three", "hip-posterior-week-6",
                           "pregnancy-week-22", "stenosis", "vertebral-fracture"})
    EXPECT_TRUE(std::binary_search(names.begin(), names.end(), each)) << each;
}

} // namespace
} // namespace matwright::test
