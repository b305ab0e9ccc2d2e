// Sheets of people who were worked by hand from guidelines (tests/data/golden), by the rules that come with the
// program. The guidelines are named in expected.json of each case.
#include "core/handout/PersonSheet.h"
#include "tests/support/CaseFolders.h"
#include "tests/support/RealKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

namespace matwright::test {
namespace {

using testing::Contains;
using testing::ElementsAre;

const std::filesystem::path kCorpus = std::filesystem::path(MATWRIGHT_SOURCE_DIR) / "tests/data/golden";

Date on(const char* iso) { return *dateFromIso(iso); }
const Date kDay = on("2026-12-02");

Person golden(const std::string& file) {
  const auto read = readPerson(kCorpus / file);
  EXPECT_TRUE(read) << file;
  return read->value;
}

PersonSheet sheetOf(const Person& person) { return personSheetOf(realKnowledge(), person, kDay, NameStyle::initials); }

std::vector<std::string> lines(const PersonSheet& sheet) {
  std::vector<std::string> all;
  for (const SheetRow& row : sheet.rows)
    for (const SheetRule& said : row.rules)
      all.push_back(std::string(word(row.level)) + ' ' + said.rule.id.value);
  return all;
}

std::vector<std::string> asked(const PersonSheet& sheet, QuestionKind kind) {
  std::vector<std::string> all;
  for (const SheetQuestion& question : sheet.questions)
    if (question.kind == kind)
      all.push_back(kind == QuestionKind::permission ? sheet.rows[question.row].rules[0].rule.id.value
                    : question.asked                 ? question.asked->spec.id
                                                     : question.condition);
  return all;
}

// George 2021 and McGill 1998: loaded bending is adapted, nothing is left out.
TEST(RealSheets, ASettledDiscIsAdaptedAndItsOpenQualifiersAreAsked) {
  Person ansel = golden("disc-settled/people/ansel.json");
  EXPECT_THAT(lines(sheetOf(ansel)), ElementsAre("adapt disc-rolling", "adapt disc-flexion", "adapt disc-flexion-way"));
  EXPECT_THAT(asked(sheetOf(ansel), QuestionKind::qualifier), testing::IsEmpty());
  ansel.conditions[0].qualifiers.erase("legSigns");
  ansel.conditions[0].qualifiers.erase("bladderBowel");
  const PersonSheet open = sheetOf(ansel);
  EXPECT_THAT(lines(open), ElementsAre("adapt disc-rolling", "adapt disc-flexion", "adapt disc-flexion-way",
                                       "adapt disc-leg", "adapt disc-leg-stretch"));
  for (const SheetRow& row : open.rows)
    EXPECT_EQ(row.rules[0].assumed, row.rules[0].rule.id.value.starts_with("disc-leg"));
  EXPECT_THAT(asked(open, QuestionKind::qualifier), ElementsAre("legSigns", "bladderBowel"));
  // Saddle numbness is never assumed, but an answer would end the class for him (Finucane 2020).
  EXPECT_EQ(open.questions[0].speaking, (Hanging{2, Level::adapt}));
  EXPECT_EQ(open.questions[1].silent, (Hanging{1, Level::leaveOut}));
}

// CSEP/SOGC 2019: flat on the back goes by symptoms; here by what the midwife wrote.
TEST(RealSheets, APregnancyHeedsAWrittenInstruction) {
  Person dorrit = golden("pregnancy-week-22/people/dorrit.json");
  EXPECT_EQ(sheetOf(dorrit).conditions[0].qualifiers[0].week, 22);
  EXPECT_THAT(lines(sheetOf(dorrit)), Contains("adapt pregnancy-supine"));
  dorrit.conditions[0].clearances = {
      {on("2026-11-02"), {}, "her midwife", {Feature::supine}, Level::leaveOut, {}},
      {on("2026-05-02"), on("2026-11-01"), "her midwife", {Feature::abdPressure}, {}, {}}};
  const PersonSheet sheet = sheetOf(dorrit);
  EXPECT_EQ(lines(sheet)[0], "leave-out pregnancy-supine");
  EXPECT_EQ(sheet.rows[0].paper, dorrit.conditions[0].clearances[0]);
  EXPECT_THAT(asked(sheet, QuestionKind::renewal), ElementsAre("Pregnancy"));
  EXPECT_TRUE(std::is_sorted(sheet.rows.begin(), sheet.rows.end(),
                             [](const SheetRow& a, const SheetRow& b) { return a.level > b.level; }));
}

// Eannucci 2019 for the three together; Reimert and Korfitsen 2023 for each alone, which follows the surgeon.
TEST(RealSheets, AHipOperatedFromTheBackAsksTheSurgeonAtSixWeeks) {
  Person evander = golden("hip-posterior-week-6/people/evander.json");
  const PersonSheet sheet = sheetOf(evander);
  EXPECT_THAT(lines(sheet),
              ElementsAre("leave-out hip-replacement-posterior", "ask-first hip-replacement-posterior-limits",
                          "ask-first hip-replacement-posterior-way"));
  EXPECT_EQ(sheet.conditions[0].qualifiers[0].week, 6);
  EXPECT_THAT(asked(sheet, QuestionKind::permission),
              ElementsAre("hip-replacement-posterior-limits", "hip-replacement-posterior-way"));
  EXPECT_GT(*sheet.rows[1].rules[0].movements, *sheet.rows[0].rules[0].movements);
  evander.conditions[0].qualifiers["surgeonLimits"] = false;
  EXPECT_THAT(asked(sheetOf(evander), QuestionKind::permission), testing::IsEmpty());
}

TEST(RealSheets, TheSameWarningOfTwoConditionsIsOneRow) {
  Person ansel = golden("disc-settled/people/ansel.json");
  ansel.conditions[0].qualifiers["newWeakness"] = true;
  ansel.conditions.push_back({ConditionId{"low-back-pain"}, {{"newWeakness", true}}, {}, {}});
  const PersonSheet sheet = sheetOf(ansel);
  EXPECT_EQ(sheet.rows[0].level, Level::leaveOut);
  EXPECT_EQ(sheet.rows[0].rules.size(), 2U);
  EXPECT_EQ(sheet.rows[0].conditions.size(), 2U);
}

TEST(RealSheets, EveryGoldenPersonIsAskedForWhatIsToBeAskedFirstAndCitesWhatIsListed) {
  for (const std::string& name : caseNames(kCorpus))
    for (const Stored<Person>& person : readPeople(kCorpus / name / "people").people) {
      const PersonSheet sheet = sheetOf(person.value);
      const auto toAsk = std::count_if(sheet.rows.begin(), sheet.rows.end(),
                                       [](const SheetRow& row) { return row.level == Level::askFirst; });
      EXPECT_EQ(asked(sheet, QuestionKind::permission).size(), static_cast<std::size_t>(toAsk)) << name;
      std::set<std::string> cited, listed;
      for (const SheetRow& row : sheet.rows)
        for (const SheetRule& said : row.rules)
          for (const SourceId& id : said.rule.sources)
            cited.insert(id.value);
      for (const Source& source : sheet.sources)
        EXPECT_TRUE(listed.insert(source.id.value).second) << "twice";
      EXPECT_EQ(cited, listed) << name;
    }
}

} // namespace
} // namespace matwright::test
