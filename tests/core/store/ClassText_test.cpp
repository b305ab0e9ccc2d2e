#include "core/store/JsonText.h"
#include "core/store/Store.h"
#include "tests/core/store/FullDocuments.h"
#include "tests/core/store/RandomDocuments.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

Stored<ClassPlan> parsed(const std::string& text) {
  auto plan = parseClass(text, "");
  if (!plan) {
    ADD_FAILURE() << plan.error().path << ": " << plan.error().expected << ", found " << plan.error().found;
    return {};
  }
  return std::move(*plan);
}

TEST(ParseClass, ReadsEverythingThatMayStandInAClass) {
  const auto stored = parsed(kFullClass);
  ClassPlan plan;
  plan.name = "Tuesday, gentle";
  plan.date = dateFromIso("2026-11-26");
  plan.target = Seconds(3000);
  plan.note = "Mats along the window.";
  plan.pace = {1.25, 130, Seconds(2.5)};
  plan.people = {{"rosa"}, {"imre"}};
  Step hundred{{12},
               {"hundred"},
               {"knees-bent"},
               {10, DoseUnit::breaths},
               {Seconds(1.1), {{Breath::in, 5}, {Breath::out, 5}}},
               Side::left,
               "Head down for Imre.",
               {{{"imre"}, {"hundred"}, {"head-down"}}, {{"rosa"}, {"head-nod"}, {}}}};
  Step resting{{7}, {"resting"}, {}, {60, DoseUnit::seconds}, {Seconds(1), {{Breath::free, 1}}}, {}, "", {}};
  plan.sections = {{"Arrive", {hundred}}, {"Settle", {resting}}};
  EXPECT_EQ(stored.value, plan);
  EXPECT_EQ(stored.fingerprint, fingerprintOf(kFullClass));
}

TEST(ParseClass, TakesWhatMayBeAbsentAsEmpty) {
  const auto plan = parsed(R"({"format": "matwright-class", "version": 1, "name": "A", "targetSeconds": 300,
    "pace": {"mobility": 1, "wordsPerMinute": 150, "settleSeconds": 0}, "people": [],
    "sections": [{"name": "B", "steps": []}]})")
                        .value;
  EXPECT_FALSE(plan.date);
  EXPECT_EQ(plan.note, "");
  EXPECT_EQ(plan.sections, (std::vector<Section>{{"B", {}}}));
}

TEST(ParseClass, DoesNotAskTheCatalogue) {
  EXPECT_EQ(parsed(kFullClass).value.sections[0].steps[0].movement, MovementId{"hundred"});
}

TEST(ParseClass, TakesWholeNumbersHoweverTheyAreWritten) {
  Json tree = Json::parse(kFullClass);
  tree["sections"][0]["steps"][0]["dose"]["amount"] = 10.0;
  tree["targetSeconds"] = 3000.0;
  EXPECT_EQ(parsed(tree.dump()).value, parsed(kFullClass).value);
}

TEST(ClassText, IsCanonical) {
  ClassPlan plan = parsed(kFullClass).value;
  plan.sections.pop_back();
  plan.sections[0].steps[0].tempo.phases.pop_back();
  EXPECT_EQ(classText(plan), R"({
  "date": "2026-11-26",
  "format": "matwright-class",
  "name": "Tuesday, gentle",
  "note": "Mats along the window.",
  "pace": {
    "mobility": 1.25,
    "settleSeconds": 2.5,
    "wordsPerMinute": 130
  },
  "people": [
    "rosa",
    "imre"
  ],
  "sections": [
    {
      "name": "Arrive",
      "steps": [
        {
          "dose": {
            "amount": 10,
            "unit": "breaths"
          },
          "id": 12,
          "movement": "hundred",
          "note": "Head down for Imre.",
          "onlySide": "left",
          "option": "knees-bent",
          "tempo": {
            "phases": [
              {
                "breath": "in",
                "counts": 5
              }
            ],
            "secondsPerCount": 1.1
          },
          "variants": [
            {
              "movement": "hundred",
              "option": "head-down",
              "person": "imre"
            },
            {
              "movement": "head-nod",
              "person": "rosa"
            }
          ]
        }
      ]
    }
  ],
  "targetSeconds": 3000,
  "version": 1
}
)");
}

TEST(ClassText, ReadsBackAsTheSameClassAndTheSameBytes) {
  RandomDocuments random(1);
  for (int i = 0; i < 150; ++i) {
    const ClassPlan plan = random.plan();
    const std::string text = classText(plan);
    const auto back = parsed(text);
    ASSERT_EQ(back.value, plan) << text;
    ASSERT_EQ(classText(back.value), text);
    ASSERT_EQ(classText(back.value, back.kept), text);
  }
}

TEST(ClassText, HoldsTheLargestClass) {
  RandomDocuments random(2);
  ClassPlan plan = random.plan();
  plan.sections.assign(ClassPlan::kMostSections, {"Part", {}});
  for (std::size_t i = 0; i < ClassPlan::kMostSteps; ++i)
    plan.sections[i % ClassPlan::kMostSections].steps.push_back(random.step());
  plan.people.clear();
  for (std::size_t i = 0; i < ClassPlan::kMostPeople; ++i)
    plan.people.push_back({"p" + std::to_string(i)});
  plan.note = std::string(kLongestNote, 'n');
  EXPECT_EQ(parsed(classText(plan)).value, plan);
}

// Puts a key that nobody knows into every object of the tree.
void strew(Json& tree, int& count) {
  if (tree.is_object())
    tree["later"] = {{"n", ++count}};
  for (Json& child : tree)
    if (child.is_structured() && !(child.is_object() && child.contains("n")))
      strew(child, count);
}

TEST(KeptKeys, ComeBackWhereTheyStood) {
  Json tree = Json::parse(kFullClass);
  int count = 0;
  strew(tree, count);
  EXPECT_EQ(count, 15); // root, pace, 2 sections, 2 steps, 2 doses, 2 tempos, 3 phases, 2 variants
  const auto stored = parsed(tree.dump());
  EXPECT_EQ(stored.value, parsed(kFullClass).value);
  EXPECT_EQ(Json::parse(classText(stored.value, stored.kept)), tree);
  EXPECT_EQ(Json::parse(classText(stored.value)), Json::parse(kFullClass));
}

TEST(KeptKeys, GoWithTheStepsTheyBelongTo) {
  Json tree = Json::parse(kFullClass);
  int count = 0;
  strew(tree, count);
  const Json before = tree["sections"][0]["steps"][0];
  const auto stored = parsed(tree.dump());
  ClassPlan moved = stored.value;
  moved.sections[1].steps.push_back(moved.sections[0].steps[0]); // as a move does
  moved.sections[0].steps.clear();
  const Json written = Json::parse(classText(moved, stored.kept));
  EXPECT_EQ(written["sections"][1]["steps"][1], before);
  EXPECT_EQ(written["sections"][0]["later"], tree["sections"][0]["later"]);
}

TEST(KeptKeys, EndWithTheirStep) {
  Json tree = Json::parse(kFullClass);
  int count = 0;
  strew(tree, count);
  const auto stored = parsed(tree.dump());
  ClassPlan fewer = stored.value;
  fewer.sections[0].steps.clear();
  fewer.sections[1].steps[0].id = {99}; // as when a step is pasted
  const Json written = Json::parse(classText(fewer, stored.kept));
  EXPECT_TRUE(written["sections"][0]["steps"].empty());
  EXPECT_FALSE(written["sections"][1]["steps"][0].contains("later"));
  EXPECT_FALSE(written["sections"][1]["steps"][0]["dose"].contains("later"));
}

TEST(KeptKeys, EndWithTheirPhaseOrSection) {
  Json tree = Json::parse(kFullClass);
  int count = 0;
  strew(tree, count);
  const auto stored = parsed(tree.dump());
  ClassPlan fewer = stored.value;
  fewer.sections.pop_back();
  fewer.sections[0].steps[0].tempo.phases.pop_back();
  Json expected = tree;
  expected["sections"].erase(1);
  expected["sections"][0]["steps"][0]["tempo"]["phases"].erase(1);
  EXPECT_EQ(Json::parse(classText(fewer, stored.kept)), expected);
}

TEST(KeptKeys, NeverBringBackWhatTheTeacherTookOut) {
  const auto stored = parsed(kFullClass);
  ClassPlan bare = stored.value;
  bare.date.reset();
  bare.note.clear();
  Step& step = bare.sections[0].steps[0];
  step.option = {};
  step.onlySide.reset();
  step.note.clear();
  EXPECT_EQ(classText(bare, stored.kept), classText(bare));
}

TEST(KeptKeys, NeverTakeThePlaceOfKnownOnes) {
  Json tree = Json::parse(kFullClass);
  tree["later"] = {{"name", "nobody"}, {"date", 1}};
  const auto stored = parsed(tree.dump());
  const Json written = Json::parse(classText(stored.value, stored.kept));
  EXPECT_EQ(written, tree);
}

TEST(StepsText, GoesThereAndBack) {
  RandomDocuments random(3);
  for (int i = 0; i < 100; ++i) {
    std::vector<Step> steps(1 + static_cast<std::size_t>(i % 7));
    for (Step& step : steps)
      step = random.step();
    const auto back = parseSteps(stepsText(steps));
    ASSERT_TRUE(back) << back.error().path;
    ASSERT_EQ(*back, steps);
  }
}

TEST(StepsText, MayNameAStepTwice) { // as when two classes are copied from
  const Step step = RandomDocuments(4).step();
  EXPECT_EQ(parseSteps(stepsText({step, step})), (std::vector{step, step}));
}

TEST(ParseSteps, RefusesOtherClipboards) {
  const auto codeOf = [](std::string_view text) { return parseSteps(text).error().code; };
  EXPECT_EQ(codeOf("some words"), ErrorCode::notJson);
  EXPECT_EQ(codeOf(kFullClass), ErrorCode::wrongFormat);
  EXPECT_EQ(codeOf(R"({"format": "matwright-steps", "version": 2, "steps": []})"), ErrorCode::newerVersion);
  EXPECT_EQ(codeOf(R"({"format": "matwright-steps", "version": 1, "steps": []})"), ErrorCode::outOfRange);
  EXPECT_EQ(codeOf(R"({"format": "matwright-steps", "version": 1, "steps": [1]})"), ErrorCode::wrongType);
  const auto tooLong = parseSteps(stepsText(std::vector<Step>(401, RandomDocuments(5).step())));
  ASSERT_FALSE(tooLong);
  EXPECT_EQ(tooLong.error().path, "/steps");
}

} // namespace
} // namespace matwright
