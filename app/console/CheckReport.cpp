#include "app/console/CheckReport.h"

#include "ui/text/CautionText.h"
#include "ui/text/VocabularyText.h"

#include <cmath>
#include <sstream>

namespace matwright {
namespace {

// Tenths of a second are more than a plan can know.
double rounded(Seconds seconds) { return std::round(seconds.value() * 10) / 10; }

template <class Enum> Tree wordTree(EnumSet<Enum> set) {
  Tree list = Tree::list();
  set.forEach([&](Enum value) { list.add(std::string(word(value))); });
  return list;
}

Tree stepTree(const ClassPlan& plan, const TimedStep& timed) {
  const Step& step = *findStep(plan, timed.id);
  Tree tree = Tree::object();
  tree.set("id", static_cast<double>(timed.id.value))
      .set("section", static_cast<int>(timed.section))
      .set("movement", step.movement.value)
      .set("begin", rounded(timed.begin))
      .set("gap", rounded(timed.gap))
      .set("moving", rounded(timed.moving))
      .set("workBegin", rounded(timed.workBegin))
      .set("work", rounded(timed.work.whole))
      .set("left", rounded(timed.work.left))
      .set("right", rounded(timed.work.right))
      .set("turning", rounded(timed.turning))
      .set("finish", rounded(timed.finish))
      .set("startPosition", timed.start.value)
      .set("endPosition", timed.end.value)
      .set("changes", timed.changes);
  if (!step.option.empty())
    tree.set("option", step.option.value);
  return tree;
}

void addThreshold(Tree& tree, const Caution& caution, const Threshold& threshold) {
  const Scope scope = caution.rule->scope;
  const bool nearTheEdge = scope == Scope::early || scope == Scope::late;
  tree.set("measured", std::round(caution.measured * 10) / 10)
      .set("unit", std::string(word(threshold.unit)))
      .set("threshold", std::string(word(threshold.origin)))
      .set("usual", threshold.usual)
      .set(nearTheEdge             ? "within"
           : scope == Scope::order ? "between"
                                   : "over",
           threshold.amount);
}

template <class Enum> Tree shareTree(const std::array<Share, kWordCount<Enum>>& shares) {
  Tree tree = Tree::object();
  for (std::size_t i = 0; i < shares.size(); ++i)
    if (shares[i].time > Seconds{})
      tree.set(word(static_cast<Enum>(i)), Tree::object()
                                               .set("seconds", rounded(shares[i].time))
                                               .set("effortSeconds", std::round(shares[i].effortSeconds)));
  return tree;
}

Tree remarkTree(const Remark& remark, const Knowledge& knowledge, const ClassPlan& plan) {
  constexpr const char* kinds[] = {"before-prerequisite", "sides-uneven",      "over-target",
                                   "under-target",        "bend-without-arch", "empty-section"};
  Tree tree = Tree::object();
  tree.set("kind", kinds[static_cast<std::size_t>(remark.kind)])
      .set("text", remarkText(remark, knowledge, plan).toStdString());
  if (remark.step)
    tree.set("step", static_cast<double>(remark.step->value));
  return tree;
}

} // namespace

Tree cautionTree(const Caution& caution, const Knowledge& knowledge, const LoadedClass& loaded,
                 const Evaluation& evaluation) {
  constexpr const char* kinds[] = {"rule",  "unknown-movement", "unknown-option", "unknown-condition", "unknown-person",
                                   "no-way"};
  const CautionWords words = wordsFor(caution, knowledge, loaded.plan, evaluation, loaded.roster);
  Tree tree = Tree::object();
  tree.set("kind", kinds[static_cast<std::size_t>(caution.kind)])
      .set("level", std::string(word(caution.level)))
      .set("what", words.what.toStdString())
      .set("instead", words.instead.toStdString())
      .set("because", wordTree(caution.because))
      .set("cleared", caution.cleared)
      .set("instructed", caution.instructed)
      .set("assumed", caution.assumed);
  if (caution.step)
    tree.set("step", static_cast<double>(caution.step->value));
  if (caution.person != Finding::kNone)
    tree.set("person", evaluation.people[caution.person].value);
  if (caution.rule) {
    Tree sources = Tree::list();
    for (const SourceId& source : caution.rule->sources)
      sources.add(source.value);
    tree.set("rule", caution.rule->id.value)
        .set("scope", std::string(word(caution.rule->scope)))
        .set("strength", std::string(word(caution.rule->strength)))
        .set("check", std::string(word(caution.rule->check)))
        .set("contested", !caution.rule->contested.empty())
        .set("sources", std::move(sources));
    if (caution.rule->condition)
      tree.set("condition", caution.rule->condition->value);
    if (caution.rule->threshold)
      addThreshold(tree, caution, *caution.rule->threshold);
    if (caution.earlier)
      tree.set("earlier", static_cast<double>(caution.earlier->value));
  }
  if (!caution.name.empty())
    tree.set("name", caution.name);
  return tree;
}

Tree checkTree(const Knowledge& knowledge, const LoadedClass& loaded, const Evaluation& evaluation) {
  const Schedule& schedule = evaluation.schedule;
  Tree steps = Tree::list(), cautions = Tree::list(), remarks = Tree::list(), people = Tree::list();
  for (const TimedStep& timed : schedule.steps)
    steps.add(stepTree(loaded.plan, timed));
  for (const Caution& caution : evaluation.cautions)
    cautions.add(cautionTree(caution, knowledge, loaded, evaluation));
  for (const Remark& remark : evaluation.remarks)
    remarks.add(remarkTree(remark, knowledge, loaded.plan));
  for (const PersonId& person : evaluation.people)
    people.add(person.value);
  Tree counts = Tree::object();
  for (std::size_t i = 0; i < evaluation.cautionCounts.size(); ++i)
    counts.set(word(static_cast<Level>(i)), evaluation.cautionCounts[i]);
  Tree balance = Tree::object();
  balance.set("left", rounded(evaluation.balance.left))
      .set("right", rounded(evaluation.balance.right))
      .set("regions", shareTree<Region>(evaluation.balance.regions))
      .set("spine", shareTree<SpineAction>(evaluation.balance.spine))
      .set("elevations", shareTree<Elevation>(evaluation.balance.elevations))
      .set("meanEffort", std::round(evaluation.balance.meanEffort * 100) / 100);
  Tree tree = Tree::object();
  tree.set("format", "matwright-check")
      .set("version", 1)
      .set("class", loaded.plan.name)
      .set("day", isoDate(loaded.day))
      .set("length", rounded(schedule.length))
      .set("target", rounded(loaded.plan.target))
      .set("likelyFrom", rounded(schedule.likelyFrom))
      .set("likelyTo", rounded(schedule.likelyTo))
      .set("chanceInTime", std::round(schedule.chanceInTime * 1000) / 1000)
      .set("changes", schedule.changes)
      .set("moving", rounded(schedule.moving))
      .set("people", std::move(people))
      .set("steps", std::move(steps))
      .set("balance", std::move(balance))
      .set("cautionCounts", std::move(counts))
      .set("cautions", std::move(cautions))
      .set("remarks", std::move(remarks))
      .set("notice", standingNotice().toStdString());
  return tree;
}

std::string checkText(const Knowledge& knowledge, const LoadedClass& loaded, const Evaluation& evaluation) {
  std::ostringstream out;
  const Schedule& schedule = evaluation.schedule;
  const auto plain = [](const QString& text) { return text.toStdString(); };
  out << (loaded.plan.name.empty() ? "Untitled class" : loaded.plan.name) << '\n'
      << "  length " << plain(clock(schedule.length)) << " of " << plain(clock(loaded.plan.target)) << ", likely "
      << plain(clock(schedule.likelyFrom)) << " to " << plain(clock(schedule.likelyTo)) << ", "
      << std::lround(schedule.chanceInTime * 100) << " % to end in time\n"
      << "  changes of position " << schedule.changes << ", " << plain(clock(schedule.moving)) << " moving between\n"
      << "  sides left " << plain(clock(evaluation.balance.left)) << ", right "
      << plain(clock(evaluation.balance.right)) << "\n\n";
  std::size_t section = static_cast<std::size_t>(-1);
  for (const TimedStep& timed : schedule.steps) {
    if (timed.section != section) {
      section = timed.section;
      out << loaded.plan.sections[section].name << '\n';
    }
    const Step& step = *findStep(loaded.plan, timed.id);
    out << "  " << plain(clock(timed.workBegin).rightJustified(7)) << "  "
        << plain(movementName(knowledge, step.movement));
    if (!step.option.empty())
      out << " (" << plain(optionName(knowledge, step.movement, step.option)) << ')';
    out << ", " << plain(doseText(step.dose, timed.movement ? timed.movement->sides : Sides::together, step.onlySide));
    if (timed.changes > 0)
      out << "  [to " << plain(positionName(knowledge, timed.start)) << ", " << plain(clock(timed.moving)) << ']';
    out << '\n';
  }
  out << '\n';
  if (evaluation.cautions.empty())
    out << plain(noCautionText(!evaluation.people.empty())) << '\n';
  for (const Caution& caution : evaluation.cautions) {
    const CautionWords words = wordsFor(caution, knowledge, loaded.plan, evaluation, loaded.roster);
    out << plain(words.headline) << "\n    " << plain(words.what);
    if (!words.instead.isEmpty())
      out << "; instead: " << plain(words.instead);
    out << '\n';
  }
  for (const Remark& remark : evaluation.remarks)
    out << plain(remarkText(remark, knowledge, loaded.plan)) << '\n';
  out << '\n' << plain(standingNotice()) << '\n';
  return out.str();
}

} // namespace matwright
