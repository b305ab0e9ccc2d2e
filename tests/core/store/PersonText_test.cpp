#include "core/store/JsonText.h"
#include "core/store/Store.h"
#include "tests/core/store/FullDocuments.h"
#include "tests/core/store/RandomDocuments.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

Stored<Person> parsed(const std::string& text) {
  auto person = parsePerson(text, "");
  if (!person) {
    ADD_FAILURE() << person.error().path << ": " << person.error().expected << ", found " << person.error().found;
    return {};
  }
  return std::move(*person);
}

TEST(ParsePerson, ReadsEverythingThatMayBeKnown) {
  const auto stored = parsed(kFullPerson);
  const Clearance clearance{*dateFromIso("2026-10-01"),
                            dateFromIso("2027-01-31"),
                            "her midwife",
                            {Feature::supine, Feature::flexLoad},
                            Level::adapt,
                            "By letter."};
  const PersonCondition pregnancy{
      {"pregnancy"},
      {{"due", *dateFromIso("2027-03-01")}, {"complications", false}, {"phase", std::string("settled")}},
      {clearance},
      "Second child."};
  EXPECT_EQ(stored.value, (Person{{"rosa"},
                                  "Rosa Amberley",
                                  "R.A.",
                                  {pregnancy},
                                  "Likes the mat by the door.",
                                  AgeBand::from18,
                                  1.68,
                                  71.5,
                                  "Stay strong until the birth."}));
  EXPECT_EQ(stored.fingerprint, fingerprintOf(kFullPerson));
}

TEST(PersonText, ReadsBackAsTheSamePersonAndTheSameBytes) {
  RandomDocuments random(11);
  for (int i = 0; i < 150; ++i) {
    const Person person = random.person();
    const std::string text = personText(person);
    const auto back = parsed(text);
    ASSERT_EQ(back.value, person) << text;
    ASSERT_EQ(personText(back.value), text);
    ASSERT_EQ(personText(back.value, back.kept), text);
  }
}

TEST(PersonText, KeepsUnknownKeys) {
  Json tree = Json::parse(kFullPerson);
  tree["pronoun"] = "she";
  tree["conditions"][0]["side"] = "left";
  tree["conditions"][0]["clearances"][0]["scan"] = {{"page", 2}};
  const auto stored = parsed(tree.dump());
  EXPECT_EQ(Json::parse(personText(stored.value, stored.kept)), tree);
  Person other = stored.value;
  other.conditions.insert(other.conditions.begin(), PersonCondition{{"osteoporosis"}, {}, {}, ""});
  const Json written = Json::parse(personText(other, stored.kept));
  EXPECT_EQ(written["conditions"][1], tree["conditions"][0]);
  EXPECT_FALSE(written["conditions"][0].contains("side"));
}

TEST(PersonText, TellsTwoOfTheSameConditionApart) {
  Json tree = Json::parse(kFullPerson);
  tree["conditions"].push_back(tree["conditions"][0]);
  tree["conditions"][0]["side"] = "left";
  tree["conditions"][1]["side"] = "right";
  const auto stored = parsed(tree.dump());
  EXPECT_EQ(Json::parse(personText(stored.value, stored.kept)), tree);
}

TEST(StudioText, GoesThereAndBack) {
  Json tree = Json::parse(kFullStudio);
  tree["colour"] = {1, 2};
  const auto stored = parseStudio(tree.dump(), "");
  ASSERT_TRUE(stored);
  EXPECT_EQ(stored->value, (Studio{"The Long Room", "Eight mats."}));
  EXPECT_EQ(Json::parse(studioText(stored->value, stored->kept)), tree);
  EXPECT_EQ(studioText({"A", ""}), "{\n  \"format\": \"matwright-studio\",\n  \"name\": \"A\",\n  \"version\": 1\n}\n");
}

} // namespace
} // namespace matwright
