// Ten thousand random edits. After each the class is held against what must always be true of it, and what was computed
// of it against what must always be true of that.
#include "core/edit/Edit.h"
#include "core/evaluate/Evaluation.h"
#include "tests/support/RandomClass.h"
#include "tests/support/SmallKnowledge.h"

#include <cmath>
#include <gtest/gtest.h>
#include <set>

namespace matwright::test {
namespace {

const Date kDay = day(2026, 6, 1);

const Knowledge& knowledge() {
  static const Knowledge made = [] {
    RuleBook book;
    book.conditions = {condition("ache", {{"sore", "", QualifierKind::flag, {}}}), condition("pang")};
    book.rules = {rule("bend", Scope::step, Level::adapt, {Feature::flexLoad}, "ache"),
                  rule("up", Scope::way, Level::askFirst, {Feature::rise, Feature::flexLoad}, "pang"),
                  rule("back", Scope::total, Level::watch, {Feature::supine}),
                  rule("head", Scope::stretch, Level::leaveOut, {Feature::neckLift}, "ache"),
                  rule("class", Scope::wholeClass, Level::watch, {}, "pang")};
    book.rules[2].threshold = Threshold{120, MeasureUnit::seconds, ThresholdOrigin::ours, 120};
    book.rules[3].threshold = Threshold{10, MeasureUnit::repetitions, ThresholdOrigin::ours, 10};
    return smallKnowledge(std::move(book));
  }();
  return made;
}

const std::vector<Person>& roster() {
  static const std::vector<Person> people{person("ida", {"ache"}), person("bo", {"pang", "ache"}), person("cy"),
                                          person("di", {"cramp"})};
  return people;
}

// Draws edits, most of them possible, some not.
class EditDraw {
public:
  explicit EditDraw(unsigned seed) : draw_(seed) {}

  Edit next(const ClassPlan& plan, int depth = 0) {
    switch (draw_.below(depth == 0 ? 22 : 21)) {
    case 0:
    case 1:
    case 2:
      return InsertSteps{place(plan), newSteps()};
    case 3:
      return RemoveSteps{someSteps(plan)};
    case 4:
    case 5:
    case 6:
      return MoveSteps{someSteps(plan), place(plan)};
    case 7:
      return SetDose{stepId(plan), dose()};
    case 8:
      return SetTempo{stepId(plan), anyTempo()};
    case 9:
      return SetOption{stepId(plan), OptionId{draw_.chance(0.5) ? "low" : ""}, dose(), anyTempo()};
    case 10:
      return SetOnlySide{stepId(plan), draw_.chance(0.5) ? std::nullopt : std::optional(Side::right)};
    case 11:
      return SetStepNote{stepId(plan), text()};
    case 12:
      return ReplaceStep{stepId(plan), newStep()};
    case 13:
      return InsertSection{draw_.below(plan.sections.size() + 2), text()};
    case 14:
      return RemoveSection{draw_.below(plan.sections.size() + 1)};
    case 15:
      return MoveSection{draw_.below(plan.sections.size()), draw_.below(plan.sections.size() + 1)};
    case 16:
      return RenameSection{draw_.below(plan.sections.size() + 1), text()};
    case 17:
      return SplitSection{place(plan), text()};
    case 18:
      return SetPace{{draw_.from(3, 42) / 10.0, static_cast<double>(draw_.from(50, 250)), Seconds(draw_.from(0, 61))}};
    case 19:
      return SetPeople{people()};
    case 20:
      return draw_.chance(0.5) ? Edit{RenameClass{text()}} : Edit{SetTarget{minutes(draw_.from(1, 250))}};
    default:
      break;
    }
    EditGroup group;
    ClassPlan reached = plan;
    for (int i = draw_.from(0, 4); i > 0; --i) {
      group.edits.push_back(next(reached, depth + 1));
      if (auto edited = applyEdit(reached, group.edits.back()))
        reached = *std::move(edited);
    }
    return group;
  }

private:
  Place place(const ClassPlan& plan) {
    const std::size_t section = draw_.below(plan.sections.size() + (draw_.chance(0.05) ? 1 : 0));
    const std::size_t steps = section < plan.sections.size() ? plan.sections[section].steps.size() : 0;
    return {section, draw_.below(steps + (draw_.chance(0.05) ? 3 : 1))};
  }
  StepId stepId(const ClassPlan& plan) {
    std::vector<StepId> all;
    forEachStep(plan, [&](const Step& each) { all.push_back(each.id); });
    return all.empty() || draw_.chance(0.05) ? StepId{999999} : draw_.oneOf(all);
  }
  std::vector<StepId> someSteps(const ClassPlan& plan) {
    std::vector<StepId> some;
    for (int i = draw_.from(0, 3); i > 0; --i)
      some.push_back(stepId(plan));
    return some;
  }
  Step newStep() {
    static const std::vector<std::string> names{"curl", "kick", "swing", "arch", "roll", "fold", "handstand"};
    return step(++minted_, draw_.oneOf(names), draw_.chance(0.2) ? "low" : draw_.chance(0.1) ? "gone" : "");
  }
  std::vector<Step> newSteps() {
    std::vector<Step> steps;
    for (int i = draw_.from(0, 3); i > 0; --i)
      steps.push_back(newStep());
    return steps;
  }
  Dose dose() { return {draw_.from(0, 12), static_cast<DoseUnit>(draw_.below(3))}; }
  Tempo anyTempo() { return tempo(draw_.from(1, 30) / 10.0, {{Breath::in, draw_.from(0, 5)}, {Breath::out, 3}}); }
  std::string text() { return std::string(draw_.below(4), 'x'); }
  std::vector<PersonId> people() {
    std::vector<PersonId> some;
    for (const char* name : {"ida", "bo", "cy", "di", "stranger"})
      if (draw_.chance(0.4))
        some.push_back(PersonId{name});
    return some;
  }

  Draw draw_;
  std::int64_t minted_ = 0;
};

void expectConsistent(const ClassPlan& plan) {
  std::set<std::int64_t> ids;
  forEachStep(plan, [&](const Step& each) {
    ASSERT_TRUE(ids.insert(each.id.value).second) << "step id " << each.id.value << " occurs twice";
    ASSERT_TRUE(isWellFormed(each.dose) && isWellFormed(each.tempo));
  });
  ASSERT_FALSE(plan.sections.empty());
  ASSERT_LE(plan.sections.size(), ClassPlan::kMostSections);
  ASSERT_LE(ids.size(), ClassPlan::kMostSteps);
  ASSERT_TRUE(isWellFormed(plan.pace));
  ASSERT_GE(plan.target, ClassPlan::kShortestTarget);
  for (const Section& section : plan.sections)
    ASSERT_FALSE(section.name.empty());
}

void expectConsistent(const ClassPlan& plan, const Evaluation& evaluation) {
  const Schedule& schedule = evaluation.schedule;
  ASSERT_EQ(schedule.steps.size(), countSteps(plan));
  ASSERT_EQ(evaluation.facts.size(), schedule.steps.size());
  ASSERT_EQ(schedule.sectionBegin.size(), plan.sections.size());
  Seconds at;
  double parts = 0;
  int changes = 0;
  for (const TimedStep& each : schedule.steps) {
    ASSERT_EQ(each.begin, at);
    ASSERT_GE(each.workBegin, each.begin);
    ASSERT_GE(each.finish, each.workBegin);
    parts += (each.gap + each.work.whole + each.turning).value();
    changes += each.changes;
    at = each.finish;
  }
  ASSERT_NEAR(schedule.length.value(), parts, 1e-6);
  ASSERT_EQ(schedule.length, at);
  ASSERT_EQ(schedule.changes, changes);
  for (std::size_t i = 0; i < schedule.sectionBegin.size(); ++i) {
    ASSERT_GE(schedule.sectionBegin[i], i == 0 ? Seconds{} : schedule.sectionBegin[i - 1]);
    ASSERT_LE(schedule.sectionBegin[i], schedule.length);
  }
  ASSERT_LE(schedule.likelyFrom, schedule.likelyTo);
  ASSERT_TRUE(schedule.chanceInTime >= 0 && schedule.chanceInTime <= 1);
  int counted = 0;
  for (int count : evaluation.cautionCounts)
    counted += count;
  ASSERT_EQ(static_cast<std::size_t>(counted), evaluation.cautions.size());
  for (const Caution& each : evaluation.cautions)
    ASSERT_TRUE(!each.step || findStep(plan, *each.step));
}

class RandomEdits : public testing::TestWithParam<unsigned> {};

TEST_P(RandomEdits, KeepTheClassConsistentAndCanBeTakenBackAndDoneAgain) {
  EditDraw edits(GetParam());
  ClassPlan current = emptyClass("Drawn");
  Evaluation evaluation = evaluate(knowledge(), current, roster(), kDay);
  int refused = 0, done = 0;
  for (int i = 0; i < 1000; ++i) {
    const ClassPlan before = current;
    const Edit edit = edits.next(before);
    SCOPED_TRACE("edit " + std::to_string(i) + " of kind " + std::to_string(edit.index()));
    const auto after = applyEdit(current, edit);
    ASSERT_EQ(current, before);
    if (!after) {
      ++refused;
      ASSERT_EQ(applyEdit(before, edit).error(), after.error());
      continue;
    }
    ++done;
    ASSERT_NO_FATAL_FAILURE(expectConsistent(*after));
    const Evaluation evaluationAfter = evaluate(knowledge(), *after, roster(), kDay);
    ASSERT_NO_FATAL_FAILURE(expectConsistent(*after, evaluationAfter));
    if (*after == before) {
      ASSERT_EQ(evaluationAfter, evaluation);
    }
    current = before; // undo
    ASSERT_EQ(evaluate(knowledge(), current, roster(), kDay), evaluation);
    current = *applyEdit(current, edit); // redo
    ASSERT_EQ(current, *after);
    ASSERT_EQ(evaluate(knowledge(), current, roster(), kDay), evaluationAfter);
    current = before; // undo again, and on from the other end
    ASSERT_EQ(*applyEdit(current, edit), *after);
    current = *after;
    evaluation = evaluationAfter;
  }
  // Some of both, or the draw tests nothing.
  EXPECT_GT(refused, 50);
  EXPECT_GT(done, 400);
}

INSTANTIATE_TEST_SUITE_P(Seeds, RandomEdits, testing::Range(1u, 11u));

} // namespace
} // namespace matwright::test
