#include "app/console/Commands.h"
#include "app/console/Loading.h"
#include "core/store/Tree.h"
#include "ui/text/LoadText.h"
#include "ui/text/VocabularyText.h"

#include <QStringList>
#include <charconv>
#include <cmath>
#include <iostream>

namespace matwright {
namespace {

// A number of the command line within its bounds; complains, and gives nothing, when it is none.
std::optional<double> numberOf(const Arguments& arguments, const std::string& option, double otherwise, double least,
                               double most) {
  const auto given = arguments.value(option);
  if (!given)
    return otherwise;
  double value = 0;
  const char* const end = given->data() + given->size();
  const auto read = std::from_chars(given->data(), end, value);
  if (read.ec == std::errc{} && read.ptr == end && value >= least && value <= most)
    return value;
  std::cerr << "matwright-cli: " << option << " is a number from " << least << " to " << most << '\n';
  return std::nullopt;
}

std::optional<BodySize> bodyOf(const Arguments& arguments) {
  const BodySize usual;
  const auto mass = numberOf(arguments, "--mass", usual.mass, BodySize::kLeastMass, BodySize::kMostMass);
  const auto stature = numberOf(arguments, "--stature", usual.stature * 100, BodySize::kLeastStature * 100,
                                BodySize::kMostStature * 100);
  if (!mass || !stature)
    return std::nullopt;
  return BodySize{.mass = *mass, .stature = *stature / 100};
}

std::optional<BodyTable> tableOf(const Arguments& arguments) {
  const auto given = arguments.value("--table");
  const auto table = given ? fromWord<BodyTable>(*given) : std::optional(BodyTable::winter);
  if (!table)
    std::cerr << "matwright-cli: --table is winter, de-leva-women or de-leva-men\n";
  return table;
}

struct Told {
  const Knowledge& knowledge;
  const ClassPlan& plan;
  const Evaluation& evaluation;
  BodySize body;

  double inNewtonMetres(double moment) const { return moment * newtonMetres(body); }
};

double rounded(double value) { return std::round(value * 10) / 10; }

Tree jointTree(const Told& told, const ByLoadedJoint& moments) {
  Tree tree = Tree::object();
  for (std::size_t i = 0; i < kLoadedJoints; ++i)
    tree.set(word(static_cast<LoadedJoint>(i)), rounded(told.inNewtonMetres(moments[i])));
  return tree;
}

Tree loadTree(const Told& told) {
  Tree steps = Tree::list();
  const auto& timed = told.evaluation.schedule.steps;
  const ClassLoad& load = told.evaluation.load;
  for (std::size_t i = 0; i < timed.size(); ++i) {
    const Step& step = *findStep(told.plan, timed[i].id);
    Tree tree = Tree::object();
    tree.set("id", static_cast<double>(step.id.value)).set("movement", step.movement.value);
    if (!step.option.empty())
      tree.set("option", step.option.value);
    if (timed[i].movement)
      tree.set("peak", jointTree(told, load.steps[i].peak))
          .set("mean", jointTree(told, load.steps[i].mean))
          .set("lever", std::round(load.steps[i].lever * 1000) / 1000);
    steps.add(std::move(tree));
  }
  return Tree::object()
      .set("format", "matwright-load")
      .set("version", 1)
      .set("class", told.plan.name)
      .set("table", std::string(word(told.knowledge.loads->table())))
      .set("mass", told.body.mass)
      .set("stature", rounded(told.body.stature * 100))
      .set("steps", std::move(steps))
      .set("peak", jointTree(told, load.peak))
      .set("momentSeconds", jointTree(told, load.momentSeconds))
      .set("notice", loadNotice().toStdString());
}

// "low back 62 / 31, hip 40 / 40, shoulder 5.0 / 3.0"
QString briefly(const Told& told, const StepLoad& load) {
  QStringList parts;
  for (std::size_t i = 0; i < kLoadedJoints; ++i)
    parts << QStringLiteral("%1 %2 / %3")
                 .arg(text(static_cast<LoadedJoint>(i)), momentNumber(told.inNewtonMetres(load.peak[i])),
                      momentNumber(told.inNewtonMetres(load.mean[i])));
  return parts.join(QStringLiteral(", "));
}

QString stepLine(const Told& told, std::size_t index) {
  const TimedStep& timed = told.evaluation.schedule.steps[index];
  const Step& step = *findStep(told.plan, timed.id);
  QString line = QStringLiteral("%1  %2").arg(clock(timed.workBegin).rightJustified(7),
                                              movementName(told.knowledge, step.movement));
  if (!step.option.empty())
    line += QStringLiteral(" (%1)").arg(optionName(told.knowledge, step.movement, step.option));
  const QString load =
      timed.movement ? briefly(told, told.evaluation.load.steps[index]) : QStringLiteral("not in the catalogue");
  return QStringLiteral("%1: %2").arg(line, load);
}

QString loadReport(const Told& told) {
  QStringList lines{
      told.plan.name.empty() ? QStringLiteral("Untitled class") : QString::fromStdString(told.plan.name),
      QStringLiteral("  peak / mean in N\u00b7m, for %1").arg(bodyText(told.knowledge.loads->table(), told.body))};
  for (std::size_t i = 0; i < told.evaluation.schedule.steps.size(); ++i)
    lines << QStringLiteral("  ") + stepLine(told, i);
  lines << QString() << QStringLiteral("Whole class");
  const ClassLoad& load = told.evaluation.load;
  for (std::size_t i = 0; i < kLoadedJoints; ++i) {
    const auto joint = static_cast<LoadedJoint>(i);
    QString line =
        QStringLiteral("  %1: %2").arg(text(joint), momentMinutesText(told.inNewtonMetres(load.momentSeconds[i])));
    if (const auto at = heaviestStep(load, joint)) {
      const Step& step = *findStep(told.plan, told.evaluation.schedule.steps[*at].id);
      line += QStringLiteral(", peak %1 at step %2, %3")
                  .arg(momentText(told.inNewtonMetres(load.peak[i])))
                  .arg(*at + 1)
                  .arg(movementName(told.knowledge, step.movement));
    }
    lines << line;
  }
  lines << QString() << loadNotice() << QString();
  return lines.join(QLatin1Char('\n')).replace(QChar(QChar::Nbsp), QLatin1Char(' '));
}

} // namespace

int loadCommand(const Arguments& arguments) {
  const auto body = bodyOf(arguments);
  const auto table = tableOf(arguments);
  if (!body || !table)
    return kBadInput;
  auto knowledge = loadKnowledgeFor(arguments.free.front());
  if (!knowledge)
    return kBadInput;
  knowledge->loads = std::make_shared<const Loads>(*table);
  const auto loaded = loadClass(arguments.free.front(), {});
  if (!loaded)
    return kBadInput;
  const Evaluation evaluation = evaluate(*knowledge, loaded->plan, loaded->roster, loaded->day);
  const Told told{*knowledge, loaded->plan, evaluation, *body};
  std::cout << (arguments.has("--json") ? loadTree(told).text() : loadReport(told).toStdString());
  return kFine;
}

} // namespace matwright
