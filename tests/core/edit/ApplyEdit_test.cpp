#include "core/edit/Edit.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::ElementsAre;

// Sections One (1 2 3), Two (4 5) and Three (nothing).
ClassPlan plan() {
  ClassPlan made;
  made.name = "Small";
  made.people = {PersonId{"ida"}};
  made.sections = {{"One", {step(1, "curl"), step(2, "kick"), step(3, "swing")}},
                   {"Two", {step(4, "arch"), step(5, "fold")}},
                   {"Three", {}}};
  return made;
}

ClassPlan after(const Edit& edit, const ClassPlan& before = plan()) {
  const auto edited = applyEdit(before, edit);
  EXPECT_TRUE(edited) << "refused with " << (edited ? 0 : static_cast<int>(edited.error()));
  return edited.value_or(ClassPlan{});
}

// "1 2 3 | 4 5 | " : the ids by section.
std::string order(const ClassPlan& shown) {
  std::string text;
  for (std::size_t i = 0; i < shown.sections.size(); ++i) {
    if (i > 0)
      text += "| ";
    for (const Step& each : shown.sections[i].steps)
      text += std::to_string(each.id.value) + ' ';
  }
  return text;
}

std::vector<std::string> names(const ClassPlan& shown) {
  std::vector<std::string> all;
  for (const Section& section : shown.sections)
    all.push_back(section.name);
  return all;
}

// The class with one step changed by hand.
template <class Change> ClassPlan withStep(std::int64_t id, Change change) {
  ClassPlan changed = plan();
  const Place place = *placeOf(changed, StepId{id});
  change(changed.sections[place.section].steps[place.index]);
  return changed;
}

TEST(InsertSteps, PutsThemBeforeThePlaceInTheirOrder) {
  EXPECT_EQ(order(after(InsertSteps{{0, 1}, {step(8, "curl"), step(7, "arch")}})), "1 8 7 2 3 | 4 5 | ");
  EXPECT_EQ(order(after(InsertSteps{{0, 0}, {step(8, "curl")}})), "8 1 2 3 | 4 5 | ");
  EXPECT_EQ(order(after(InsertSteps{{1, 2}, {step(8, "curl")}})), "1 2 3 | 4 5 8 | ");
  EXPECT_EQ(order(after(InsertSteps{{2, 0}, {step(8, "curl")}})), "1 2 3 | 4 5 | 8 ");
}

TEST(InsertSteps, KeepsEverythingOfAStep) {
  Step made = step(8, "kick");
  made.onlySide = Side::right;
  made.note = "cushion";
  made.option = OptionId{"gone"};
  EXPECT_EQ(*findStep(after(InsertSteps{{2, 0}, {made}}), StepId{8}), made);
}

TEST(InsertSteps, TakesMovementsThatNoCatalogueKnows) {
  EXPECT_EQ(order(after(InsertSteps{{2, 0}, {step(8, "handstand")}})), "1 2 3 | 4 5 | 8 ");
}

TEST(InsertSteps, OfNoneChangesNothing) { EXPECT_EQ(after(InsertSteps{{1, 1}, {}}), plan()); }

TEST(RemoveSteps, TakesThemOutOfWhateverSection) {
  EXPECT_EQ(order(after(RemoveSteps{{StepId{5}, StepId{1}}})), "2 3 | 4 | ");
  EXPECT_EQ(order(after(RemoveSteps{{StepId{1}, StepId{2}, StepId{3}}})), "| 4 5 | ");
}

TEST(RemoveSteps, OfNoneChangesNothing) { EXPECT_EQ(after(RemoveSteps{{}}), plan()); }

TEST(MoveSteps, BringsThemTogetherInTheOrderTheyHave) {
  EXPECT_EQ(order(after(MoveSteps{{StepId{5}, StepId{1}}, {0, 3}})), "2 3 1 5 | 4 | ");
  EXPECT_EQ(order(after(MoveSteps{{StepId{3}, StepId{1}}, {1, 1}})), "2 | 4 1 3 5 | ");
  EXPECT_EQ(order(after(MoveSteps{{StepId{4}}, {2, 0}})), "1 2 3 | 5 | 4 ");
  EXPECT_EQ(order(after(MoveSteps{{StepId{4}}, {0, 0}})), "4 1 2 3 | 5 | ");
}

TEST(MoveSteps, ReadsThePlaceBeforeTheyAreTakenOut) {
  // Before the step now at index 2, which is 3: 1 goes between 2 and 3.
  EXPECT_EQ(order(after(MoveSteps{{StepId{1}}, {0, 2}})), "2 1 3 | 4 5 | ");
  EXPECT_EQ(order(after(MoveSteps{{StepId{1}}, {0, 3}})), "2 3 1 | 4 5 | ");
  EXPECT_EQ(order(after(MoveSteps{{StepId{3}}, {0, 1}})), "1 3 2 | 4 5 | ");
  // The place is among the steps that move.
  EXPECT_EQ(order(after(MoveSteps{{StepId{1}, StepId{3}}, {0, 2}})), "2 1 3 | 4 5 | ");
}

TEST(MoveSteps, ToWhereTheyAreChangesNothing) {
  for (std::size_t index : {0u, 1u})
    EXPECT_EQ(after(MoveSteps{{StepId{1}}, {0, index}}), plan());
  for (std::size_t index : {1u, 2u, 3u})
    EXPECT_EQ(after(MoveSteps{{StepId{2}, StepId{3}}, {0, index}}), plan());
  EXPECT_EQ(after(MoveSteps{{}, {1, 0}}), plan());
}

TEST(SetDose, ChangesTheDoseAlone) {
  const Dose dose{12, DoseUnit::breaths};
  EXPECT_EQ(after(SetDose{StepId{4}, dose}), withStep(4, [&](Step& each) { each.dose = dose; }));
}

TEST(SetTempo, ChangesTheTempoAlone) {
  const Tempo slow = tempo(2, {{Breath::out, 4}});
  EXPECT_EQ(after(SetTempo{StepId{5}, slow}), withStep(5, [&](Step& each) { each.tempo = slow; }));
}

TEST(SetOption, BringsItsDoseAndTempo) {
  const Dose dose{3, DoseUnit::repetitions};
  const Tempo slow = tempo(2, {{Breath::out, 4}});
  EXPECT_EQ(after(SetOption{StepId{1}, OptionId{"low"}, dose, slow}), withStep(1, [&](Step& each) {
              each.option = OptionId{"low"};
              each.dose = dose;
              each.tempo = slow;
            }));
}

TEST(SetOnlySide, ChoosesASideOrBoth) {
  const ClassPlan right = after(SetOnlySide{StepId{2}, Side::right});
  EXPECT_EQ(right, withStep(2, [](Step& each) { each.onlySide = Side::right; }));
  EXPECT_EQ(after(SetOnlySide{StepId{2}, std::nullopt}, right), plan());
}

TEST(SetStepNote, ChangesTheNoteAlone) {
  EXPECT_EQ(after(SetStepNote{StepId{3}, "near the wall"}),
            withStep(3, [](Step& each) { each.note = "near the wall"; }));
}

TEST(ReplaceStep, PutsAnotherMovementInThePlaceUnderTheSameId) {
  const ClassPlan replaced = after(ReplaceStep{StepId{2}, step(99, "roll")});
  EXPECT_EQ(order(replaced), "1 2 3 | 4 5 | ");
  EXPECT_EQ(*findStep(replaced, StepId{2}), step(2, "roll"));
}

TEST(SetVariant, GivesAPersonAnotherWayAndKeepsThoseOfOthers) {
  const Variant low{PersonId{"ida"}, MovementId{"curl"}, OptionId{"low"}};
  const Variant fold{PersonId{"bo"}, MovementId{"fold"}, {}};
  const ClassPlan both = after(SetVariant{StepId{1}, fold}, after(SetVariant{StepId{1}, low}));
  EXPECT_EQ(both, withStep(1, [&](Step& each) { each.variants = {fold, low}; }));
  const Variant hard{PersonId{"ida"}, MovementId{"curl"}, OptionId{"hard"}};
  EXPECT_EQ(after(SetVariant{StepId{1}, hard}, both), withStep(1, [&](Step& each) { each.variants = {fold, hard}; }));
}

TEST(RemoveVariant, LeavesThoseOfOthersAndMayFindNone) {
  const Variant low{PersonId{"ida"}, MovementId{"curl"}, OptionId{"low"}};
  const Variant fold{PersonId{"bo"}, MovementId{"fold"}, {}};
  const ClassPlan both = withStep(1, [&](Step& each) { each.variants = {fold, low}; });
  EXPECT_EQ(after(RemoveVariant{StepId{1}, PersonId{"bo"}}, both),
            withStep(1, [&](Step& each) { each.variants = {low}; }));
  EXPECT_EQ(after(RemoveVariant{StepId{1}, PersonId{"cy"}}, both), both);
}

TEST(InsertSection, PutsAnEmptyOneBeforeTheIndex) {
  EXPECT_THAT(names(after(InsertSection{0, "New"})), ElementsAre("New", "One", "Two", "Three"));
  EXPECT_THAT(names(after(InsertSection{3, "New"})), ElementsAre("One", "Two", "Three", "New"));
  EXPECT_EQ(order(after(InsertSection{1, "New"})), "1 2 3 | | 4 5 | ");
}

TEST(RemoveSection, GivesItsStepsToTheOneBefore) {
  const ClassPlan removed = after(RemoveSection{1});
  EXPECT_EQ(order(removed), "1 2 3 4 5 | ");
  EXPECT_THAT(names(removed), ElementsAre("One", "Three"));
}

TEST(RemoveSection, GivesTheStepsOfTheFirstToTheStartOfTheNext) {
  const ClassPlan removed = after(RemoveSection{0});
  EXPECT_EQ(order(removed), "1 2 3 4 5 | ");
  EXPECT_THAT(names(removed), ElementsAre("Two", "Three"));
}

TEST(MoveSection, CountsItsNewPlaceAfterItIsTakenOut) {
  EXPECT_THAT(names(after(MoveSection{0, 2})), ElementsAre("Two", "Three", "One"));
  EXPECT_THAT(names(after(MoveSection{0, 1})), ElementsAre("Two", "One", "Three"));
  EXPECT_THAT(names(after(MoveSection{2, 0})), ElementsAre("Three", "One", "Two"));
  EXPECT_EQ(order(after(MoveSection{1, 0})), "4 5 | 1 2 3 | ");
}

TEST(MoveSection, ToWhereItIsChangesNothing) { EXPECT_EQ(after(MoveSection{1, 1}), plan()); }

TEST(RenameSection, ChangesTheNameAlone) {
  ClassPlan expected = plan();
  expected.sections[1].name = "Deux";
  EXPECT_EQ(after(RenameSection{1, "Deux"}), expected);
}

TEST(SplitSection, BeginsANewOneAtThePlace) {
  const ClassPlan split = after(SplitSection{{0, 1}, "New"});
  EXPECT_EQ(order(split), "1 | 2 3 | 4 5 | ");
  EXPECT_THAT(names(split), ElementsAre("One", "New", "Two", "Three"));
}

TEST(SplitSection, AtItsEndsLeavesOnePartEmpty) {
  EXPECT_EQ(order(after(SplitSection{{0, 0}, "New"})), "| 1 2 3 | 4 5 | ");
  EXPECT_EQ(order(after(SplitSection{{0, 3}, "New"})), "1 2 3 | | 4 5 | ");
}

TEST(SplitSection, IsUndoneByRemovingTheNewOne) {
  EXPECT_EQ(after(RemoveSection{1}, after(SplitSection{{0, 1}, "New"})), plan());
}

TEST(ClassEdits, ChangeTheirOnePartOfTheClass) {
  ClassPlan expected = plan();
  expected.name = "Larger";
  EXPECT_EQ(after(RenameClass{"Larger"}), expected);
  expected = plan();
  expected.date = day(2026, 6, 1);
  EXPECT_EQ(after(SetDate{day(2026, 6, 1)}), expected);
  EXPECT_EQ(after(SetDate{std::nullopt}, expected), plan());
  expected = plan();
  expected.target = minutes(75);
  EXPECT_EQ(after(SetTarget{minutes(75)}), expected);
  expected = plan();
  expected.note = "bring belts";
  EXPECT_EQ(after(SetClassNote{"bring belts"}), expected);
  expected = plan();
  expected.pace = {2, 120, Seconds(5)};
  EXPECT_EQ(after(SetPace{{2, 120, Seconds(5)}}), expected);
  expected = plan();
  expected.people = {PersonId{"bo"}, PersonId{"ida"}};
  EXPECT_EQ(after(SetPeople{{PersonId{"bo"}, PersonId{"ida"}}}), expected);
}

TEST(ClassEdits, TakeBoundsAsTheyAre) {
  EXPECT_EQ(after(SetTarget{ClassPlan::kShortestTarget}).target, minutes(5));
  EXPECT_EQ(after(SetTarget{ClassPlan::kLongestTarget}).target, minutes(240));
  EXPECT_EQ(after(RenameClass{std::string(kLongestName, 'n')}).name.size(), kLongestName);
  EXPECT_EQ(after(SetClassNote{std::string(kLongestNote, 'n')}).note.size(), kLongestNote);
  EXPECT_EQ(after(SetDose{StepId{1}, {Dose::kMost, DoseUnit::seconds}}).sections[0].steps[0].dose.amount, Dose::kMost);
}

TEST(EditGroup, DoesAllInOrder) {
  const EditGroup group{{InsertSteps{{2, 0}, {step(8, "curl")}}, MoveSteps{{StepId{8}}, {0, 0}},
                         RemoveSteps{{StepId{1}}}, RenameClass{"Grouped"}}};
  const ClassPlan grouped = after(group);
  EXPECT_EQ(order(grouped), "8 2 3 | 4 5 | ");
  EXPECT_EQ(grouped.name, "Grouped");
}

TEST(EditGroup, MayHoldGroupsAndMayBeEmpty) {
  EXPECT_EQ(order(after(EditGroup{{EditGroup{{RemoveSteps{{StepId{1}}}}}, RemoveSteps{{StepId{2}}}}})), "3 | 4 5 | ");
  EXPECT_EQ(after(EditGroup{}), plan());
}

TEST(ApplyEdit, ThatSetsWhatIsThereGivesTheSameClass) {
  const Step first = plan().sections[0].steps[0];
  for (const Edit& edit : std::vector<Edit>{
           SetDose{StepId{1}, first.dose}, SetTempo{StepId{1}, first.tempo}, SetOnlySide{StepId{1}, std::nullopt},
           SetStepNote{StepId{1}, ""}, SetOption{StepId{1}, {}, first.dose, first.tempo}, ReplaceStep{StepId{1}, first},
           RenameSection{0, "One"}, RenameClass{"Small"}, SetDate{std::nullopt}, SetTarget{plan().target},
           SetClassNote{""}, SetPace{plan().pace}, SetPeople{plan().people}})
    EXPECT_EQ(after(edit), plan()) << edit.index();
}

TEST(ApplyEdit, LeavesTheGivenClassAsItWas) {
  const ClassPlan given = plan();
  applyEdit(given, RemoveSteps{{StepId{1}}});
  applyEdit(given, RemoveSection{0});
  EXPECT_EQ(given, plan());
}

} // namespace
} // namespace matwright::test
