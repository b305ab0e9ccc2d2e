#include "app/console/ComposeReport.h"

#include "ui/text/CautionText.h"
#include "ui/text/ComposeText.h"
#include "ui/text/VocabularyText.h"

#include <algorithm>
#include <cmath>
#include <sstream>

namespace matwright {
namespace {

double rounded(Seconds seconds) { return std::round(seconds.value() * 10) / 10; }

std::string wordOf(ComposeStatus status) {
  constexpr const char* words[] = {"composed", "impossible", "not-found", "cancelled"};
  return words[static_cast<std::size_t>(status)];
}

std::string wordOf(ObstacleKind kind) {
  constexpr const char* words[] = {
      "unknown-movement", "both-ways",       "left-out", "too-hard",   "prop-missing",  "cautioned",   "no-way-to",
      "circular",         "person-kept-out", "too-much", "too-little", "kept-too-long", "only-without"};
  return words[static_cast<std::size_t>(kind)];
}

template <class Enum> std::string plain(Enum value) { return std::string(word(value)); }

template <class AnyId> void put(Tree& tree, const char* key, const AnyId& id) {
  if (!id.empty())
    tree.set(key, id.value);
}
template <class AnyId> void put(Tree& tree, const char* key, const std::optional<AnyId>& id) {
  if (id)
    put(tree, key, *id);
}
template <class Enum> void putWord(Tree& tree, const char* key, const std::optional<Enum>& value) {
  if (value)
    tree.set(key, plain(*value));
}

ComposeNames namesIn(const ComposeReport& report) { return {report.knowledge, report.roster, report.wishes}; }

Tree obstacleTree(const Obstacle& obstacle, const ComposeReport& report) {
  Tree tree = Tree::object();
  tree.set("kind", wordOf(obstacle.kind)).set("text", text(obstacle, namesIn(report)).toStdString());
  put(tree, "movement", obstacle.movement);
  put(tree, "neededFor", obstacle.neededFor);
  putWord(tree, "prop", obstacle.prop);
  put(tree, "person", obstacle.person);
  if (obstacle.rule)
    put(tree, "rule", obstacle.rule->id);
  if (obstacle.section)
    tree.set("section", static_cast<int>(*obstacle.section));
  if (obstacle.kind == ObstacleKind::tooMuch || obstacle.kind == ObstacleKind::keptTooLong)
    tree.set("least", rounded(obstacle.least)).set("wished", rounded(obstacle.wished));
  if (obstacle.kind == ObstacleKind::tooLittle)
    tree.set("most", rounded(obstacle.most)).set("wished", rounded(obstacle.wished));
  if (obstacle.kind == ObstacleKind::onlyWithout)
    tree.set("wish", plain(obstacle.wish));
  return tree;
}

Tree shortfallTree(const Shortfall& shortfall) {
  Tree tree = Tree::object();
  putWord(tree, "region", shortfall.region);
  putWord(tree, "spine", shortfall.spine);
  putWord(tree, "skill", shortfall.skill);
  tree.set("wished", rounded(shortfall.wished)).set("given", rounded(shortfall.given));
  return tree;
}

Tree costTree(const ComposeCost& cost) {
  Tree tree = Tree::object();
  for (std::size_t i = 0; i < cost.parts.size(); ++i)
    tree.set(word(static_cast<ComposePart>(i)), rounded(cost.parts[i]));
  return tree.set("total", rounded(cost.total()));
}

bool isChosen(const ComposeReport& report, StepId step) {
  return std::find(report.result.chosen.begin(), report.result.chosen.end(), step) != report.result.chosen.end();
}

std::optional<Reasons> reasonsOf(const ComposeReport& report, StepId step) {
  if (!report.explained || !isChosen(report, step))
    return std::nullopt;
  return reasonsFor(report.knowledge, report.wishes, report.roster, report.day, report.result.plan,
                    report.result.chosen, step, report.unlike);
}

Tree reasonsTree(const Reasons& reasons) {
  Tree neededBy = Tree::list(), shares = Tree::object();
  for (const MovementId& id : reasons.neededBy)
    neededBy.add(id.value);
  for (const ReasonShare& share : reasons.shares)
    shares.set(word(share.part), rounded(share.seconds));
  Tree tree = Tree::object();
  tree.set("included", reasons.included).set("neededBy", std::move(neededBy)).set("others", reasons.others);
  if (!reasons.instead)
    return tree;
  put(tree, "instead", reasons.instead->id);
  if (reasons.option)
    put(tree, "insteadOption", reasons.option->id);
  return tree.set("shares", std::move(shares)).set("worse", rounded(reasons.worse));
}

Tree stepsTree(const ComposeReport& report, const Schedule& schedule) {
  Tree steps = Tree::list();
  for (const TimedStep& timed : schedule.steps) {
    const Step& step = *findStep(report.result.plan, timed.id);
    Tree tree = Tree::object();
    tree.set("id", step.id.value)
        .set("section", static_cast<int>(timed.section))
        .set("movement", step.movement.value)
        .set("dose", Tree::object().set("amount", step.dose.amount).set("unit", plain(step.dose.unit)))
        .set("begin", rounded(timed.begin))
        .set("finish", rounded(timed.finish));
    put(tree, "option", step.option);
    tree.set("chosen", isChosen(report, step.id));
    if (const auto reasons = reasonsOf(report, step.id))
      tree.set("why", reasonsTree(*reasons).set("text", text(*reasons, namesIn(report)).toStdString()));
    steps.add(std::move(tree));
  }
  return steps;
}

Tree levelTree(const Evaluation& evaluation) {
  Tree tree = Tree::object();
  for (std::size_t i = 0; i < evaluation.cautionCounts.size(); ++i)
    tree.set(word(static_cast<Level>(i)), evaluation.cautionCounts[i]);
  return tree;
}

void printSteps(std::ostream& out, const ComposeReport& report, const Schedule& schedule) {
  const ClassPlan& plan = report.result.plan;
  std::size_t section = plan.sections.size();
  for (const TimedStep& timed : schedule.steps) {
    if (timed.section != section) {
      section = timed.section;
      out << "  " << plan.sections[section].name << '\n';
    }
    const Step& step = *findStep(plan, timed.id);
    out << "    " << clock(timed.begin).toStdString() << ' '
        << movementName(report.knowledge, step.movement).toStdString();
    if (!step.option.empty())
      out << " (" << optionName(report.knowledge, step.movement, step.option).toStdString() << ')';
    out << ", "
        << doseText(step.dose, timed.movement ? timed.movement->sides : Sides::together, step.onlySide).toStdString()
        << '\n';
    if (const auto reasons = reasonsOf(report, step.id))
      out << "         " << text(*reasons, namesIn(report)).toStdString() << '\n';
  }
}

void printCautions(std::ostream& out, const Evaluation& evaluation) {
  QStringList counts;
  for (std::size_t i = evaluation.cautionCounts.size(); i-- > 0;)
    if (evaluation.cautionCounts[i] > 0)
      counts << QString::number(evaluation.cautionCounts[i]) + QLatin1Char(' ') + text(static_cast<Level>(i));
  out << "  cautions: " << (counts.isEmpty() ? "none raised" : counts.join(QStringLiteral(", ")).toStdString()) << '\n';
}

} // namespace

std::vector<std::string> obstacleTexts(const ComposeReport& report) {
  std::vector<std::string> texts;
  for (const Obstacle& obstacle : report.result.obstacles)
    texts.push_back(text(obstacle, namesIn(report)).toStdString());
  return texts;
}

Tree composeTree(const ComposeReport& report) {
  const ComposeResult& result = report.result;
  Tree obstacles = Tree::list(), shortfalls = Tree::list();
  for (const Obstacle& obstacle : result.obstacles)
    obstacles.add(obstacleTree(obstacle, report));
  for (const Shortfall& shortfall : result.shortfalls)
    shortfalls.add(shortfallTree(shortfall));
  Tree tree = Tree::object();
  tree.set("format", "matwright-compose")
      .set("version", 1)
      .set("class", result.plan.name)
      .set("status", wordOf(result.status))
      .set("day", isoDate(report.day))
      .set("seed", static_cast<std::int64_t>(report.wishes.seed))
      .set("evaluations", result.evaluations)
      .set("stopped", result.stopped)
      .set("obstacles", std::move(obstacles))
      .set("notice", standingNotice().toStdString());
  if (result.status != ComposeStatus::composed)
    return tree;
  const Evaluation evaluation = evaluate(report.knowledge, result.plan, report.roster, report.day);
  return tree.set("length", rounded(evaluation.schedule.length))
      .set("target", rounded(result.plan.target))
      .set("changes", evaluation.schedule.changes)
      .set("cost", costTree(result.cost))
      .set("shortfalls", std::move(shortfalls))
      .set("steps", stepsTree(report, evaluation.schedule))
      .set("cautionCounts", levelTree(evaluation));
}

std::string composeText(const ComposeReport& report) {
  const ComposeResult& result = report.result;
  std::ostringstream out;
  out << result.plan.name << ": " << text(result.status).toStdString();
  if (result.status != ComposeStatus::composed) {
    out << ".\n";
    return out.str();
  }
  const Evaluation evaluation = evaluate(report.knowledge, result.plan, report.roster, report.day);
  out << ", " << clock(evaluation.schedule.length).toStdString() << " of " << clock(result.plan.target).toStdString()
      << ", " << evaluation.schedule.changes << " changes of position, seed " << report.wishes.seed << '\n';
  printSteps(out, report, evaluation.schedule);
  out << "  " << text(result.cost).toStdString() << '\n';
  for (const Shortfall& shortfall : result.shortfalls)
    out << "  less than wished: " << text(shortfall).toStdString() << '\n';
  printCautions(out, evaluation);
  out << '\n' << standingNotice().toStdString() << '\n';
  return out.str();
}

} // namespace matwright
