#include "core/edit/Edit.h"
#include "tests/support/SmallKnowledge.h"

#include <gtest/gtest.h>
#include <limits>

namespace matwright::test {
namespace {

ClassPlan plan() {
  ClassPlan made;
  made.name = "Small";
  made.sections = {{"One", {step(1, "curl"), step(2, "kick")}}, {"Two", {step(3, "arch")}}};
  return made;
}

// What is said to the edit; nothing when it is done.
std::optional<Refusal> said(const Edit& edit, const ClassPlan& to = plan()) {
  const auto edited = applyEdit(to, edit);
  return edited ? std::nullopt : std::optional(edited.error());
}

Step with(Dose dose) {
  Step made = step(8, "curl");
  made.dose = dose;
  return made;
}
Step with(Tempo tempo) {
  Step made = step(8, "curl");
  made.tempo = std::move(tempo);
  return made;
}
Step withNote(std::size_t length) {
  Step made = step(8, "curl");
  made.note = std::string(length, 'n');
  return made;
}

const Tempo kNoPhases = tempo(1, {});
const Dose kNoDose{0, DoseUnit::repetitions};
const Step kNew = step(8, "curl");

TEST(Refusals, NoSuchStep) {
  const StepId gone{77};
  for (const Edit& edit : std::vector<Edit>{RemoveSteps{{StepId{1}, gone}}, MoveSteps{{gone}, {0, 0}},
                                            SetDose{gone, {}}, SetTempo{gone, {}}, SetOption{gone, {}, {}, {}},
                                            SetOnlySide{gone, {}}, SetStepNote{gone, ""}, ReplaceStep{gone, kNew}})
    EXPECT_EQ(said(edit), Refusal::noSuchStep) << edit.index();
}

TEST(Refusals, NoSuchSection) {
  for (const Edit& edit :
       std::vector<Edit>{InsertSteps{{2, 0}, {kNew}}, MoveSteps{{StepId{1}}, {2, 0}}, RemoveSection{2},
                         MoveSection{2, 0}, RenameSection{2, "n"}, SplitSection{{2, 0}, "n"}})
    EXPECT_EQ(said(edit), Refusal::noSuchSection) << edit.index();
}

TEST(Refusals, NoSuchPlace) {
  for (const Edit& edit : std::vector<Edit>{InsertSteps{{0, 3}, {kNew}}, MoveSteps{{StepId{3}}, {0, 3}},
                                            SplitSection{{1, 2}, "n"}, InsertSection{3, "n"}, MoveSection{0, 2}})
    EXPECT_EQ(said(edit), Refusal::noSuchPlace) << edit.index();
}

TEST(Refusals, StepIdTaken) {
  EXPECT_EQ(said(InsertSteps{{0, 0}, {kNew, step(3, "curl")}}), Refusal::stepIdTaken);
  EXPECT_EQ(said(InsertSteps{{0, 0}, {step(0, "curl")}}), Refusal::stepIdTaken); // 0 is nobody's to take
  EXPECT_EQ(said(InsertSteps{{0, 0}, {step(-1, "curl")}}), Refusal::stepIdTaken);
}

TEST(Refusals, StepNamedTwice) {
  EXPECT_EQ(said(InsertSteps{{0, 0}, {kNew, kNew}}), Refusal::stepNamedTwice);
  EXPECT_EQ(said(RemoveSteps{{StepId{1}, StepId{1}}}), Refusal::stepNamedTwice);
  EXPECT_EQ(said(MoveSteps{{StepId{1}, StepId{2}, StepId{1}}, {1, 0}}), Refusal::stepNamedTwice);
}

TEST(Refusals, DoseOutOfRange) {
  for (const Dose& dose : {kNoDose, Dose{-1, DoseUnit::breaths}, Dose{Dose::kMost + 1, DoseUnit::seconds}})
    for (const Edit& edit : std::vector<Edit>{SetDose{StepId{1}, dose}, SetOption{StepId{1}, {}, dose, Tempo{}},
                                              InsertSteps{{0, 0}, {with(dose)}}, ReplaceStep{StepId{1}, with(dose)}})
      EXPECT_EQ(said(edit), Refusal::doseOutOfRange) << edit.index();
}

TEST(Refusals, TempoOutOfRange) {
  for (const Tempo& bad : {kNoPhases, tempo(0.1, {{Breath::in, 1}}), tempo(1, {{Breath::in, 0}}),
                           tempo(std::numeric_limits<double>::quiet_NaN(), {{Breath::in, 1}})})
    for (const Edit& edit : std::vector<Edit>{SetTempo{StepId{1}, bad}, SetOption{StepId{1}, {}, Dose{}, bad},
                                              InsertSteps{{0, 0}, {with(bad)}}, ReplaceStep{StepId{1}, with(bad)}})
      EXPECT_EQ(said(edit), Refusal::tempoOutOfRange) << edit.index();
}

TEST(Refusals, TargetOutOfRange) {
  for (double seconds :
       {0.0, 299.9, 14400.1, -5.0, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()})
    EXPECT_EQ(said(SetTarget{Seconds(seconds)}), Refusal::targetOutOfRange) << seconds;
}

TEST(Refusals, PaceOutOfRange) {
  EXPECT_EQ(said(SetPace{{0.4, 150, Seconds(2)}}), Refusal::paceOutOfRange);
  EXPECT_EQ(said(SetPace{{1, 20, Seconds(2)}}), Refusal::paceOutOfRange);
  EXPECT_EQ(said(SetPace{{1, 150, Seconds(-2)}}), Refusal::paceOutOfRange);
}

TEST(Refusals, NameEmpty) {
  for (const char* name : {"", " ", " \t\r\n"})
    for (const Edit& edit : std::vector<Edit>{RenameClass{name}, RenameSection{0, name}, InsertSection{0, name},
                                              SplitSection{{0, 1}, name}})
      EXPECT_EQ(said(edit), Refusal::nameEmpty) << edit.index();
}

TEST(Refusals, NameTooLong) {
  const std::string name(kLongestName + 1, 'n');
  for (const Edit& edit :
       std::vector<Edit>{RenameClass{name}, RenameSection{0, name}, InsertSection{0, name}, SplitSection{{0, 1}, name}})
    EXPECT_EQ(said(edit), Refusal::nameTooLong) << edit.index();
}

TEST(Refusals, NoteTooLong) {
  const std::string note(kLongestNote + 1, 'n');
  for (const Edit& edit :
       std::vector<Edit>{SetStepNote{StepId{1}, note}, SetClassNote{note}, InsertSteps{{0, 0}, {withNote(note.size())}},
                         ReplaceStep{StepId{1}, withNote(note.size())}})
    EXPECT_EQ(said(edit), Refusal::noteTooLong) << edit.index();
}

TEST(Refusals, LastSection) { EXPECT_EQ(said(RemoveSection{0}, classOf({step(1, "curl")})), Refusal::lastSection); }

TEST(Refusals, TooManySections) {
  ClassPlan full = plan();
  full.sections.resize(ClassPlan::kMostSections, Section{"More", {}});
  EXPECT_EQ(said(InsertSection{0, "n"}, full), Refusal::tooManySections);
  EXPECT_EQ(said(SplitSection{{0, 1}, "n"}, full), Refusal::tooManySections);
  full.sections.pop_back();
  EXPECT_EQ(said(InsertSection{0, "n"}, full), std::nullopt);
  EXPECT_EQ(said(SplitSection{{0, 1}, "n"}, full), std::nullopt);
}

TEST(Refusals, TooManySteps) {
  std::vector<Step> steps;
  for (int i = 1; i < static_cast<int>(ClassPlan::kMostSteps); ++i)
    steps.push_back(step(i, "curl"));
  const ClassPlan almostFull = classOf(steps);
  EXPECT_EQ(said(InsertSteps{{0, 0}, {step(1001, "curl")}}, almostFull), std::nullopt);
  EXPECT_EQ(said(InsertSteps{{0, 0}, {step(1001, "curl"), step(1002, "curl")}}, almostFull), Refusal::tooManySteps);
}

TEST(Refusals, TooManyPeople) {
  std::vector<PersonId> people;
  for (std::size_t i = 0; i < ClassPlan::kMostPeople; ++i)
    people.push_back(PersonId{"person-" + std::to_string(i)});
  EXPECT_EQ(said(SetPeople{people}), std::nullopt);
  people.push_back(PersonId{"one-more"});
  EXPECT_EQ(said(SetPeople{people}), Refusal::tooManyPeople);
}

TEST(Refusals, PersonNamedTwice) {
  EXPECT_EQ(said(SetPeople{{PersonId{"ida"}, PersonId{"bo"}, PersonId{"ida"}}}), Refusal::personNamedTwice);
}

TEST(Refusals, TooManyVariants) {
  Step crowded = step(1, "curl");
  for (std::size_t i = 0; i < ClassPlan::kMostPeople; ++i)
    crowded.variants.push_back({PersonId{"person-" + std::to_string(i)}, MovementId{"fold"}, {}});
  const ClassPlan full = classOf({crowded});
  EXPECT_EQ(said(SetVariant{StepId{1}, {PersonId{"one-more"}, MovementId{"fold"}, {}}}, full),
            Refusal::tooManyVariants);
  EXPECT_EQ(said(SetVariant{StepId{1}, {PersonId{"person-7"}, MovementId{"arch"}, {}}}, full), std::nullopt);
  crowded.variants.push_back({PersonId{"one-more"}, MovementId{"fold"}, {}});
  EXPECT_EQ(said(ReplaceStep{StepId{1}, crowded}, full), Refusal::tooManyVariants);
  crowded.variants = {{PersonId{"ida"}, MovementId{"fold"}, {}}, {PersonId{"ida"}, MovementId{"arch"}, {}}};
  EXPECT_EQ(said(ReplaceStep{StepId{1}, crowded}, full), Refusal::personNamedTwice);
}

TEST(Refusals, OfOneRefuseTheWholeGroup) {
  const EditGroup group{
      {RenameClass{"Changed"}, RemoveSteps{{StepId{1}}}, SetDose{StepId{1}, {}}, RenameClass{"Again"}}};
  EXPECT_EQ(said(group), Refusal::noSuchStep); // it was taken out by the edit before
}

} // namespace
} // namespace matwright::test
