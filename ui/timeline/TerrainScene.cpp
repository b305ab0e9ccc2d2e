#include "ui/timeline/TerrainScene.h"

#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace matwright {
namespace {

Elevation elevationOf(const TransitionGraph& graph, const PositionId& id, Elevation otherwise) {
  const Position* position = graph.find(id);
  return position ? position->elevation : otherwise;
}

QString shortDoseText(const Step& step, const Movement* movement) {
  QString amount = QString::number(step.dose.amount);
  if (step.dose.unit == DoseUnit::seconds)
    amount = QCoreApplication::translate("TerrainScene", "%1\u00a0s").arg(amount);
  const bool both = movement && movement->sides == Sides::each && !step.onlySide;
  return both ? QStringLiteral("%1+%1").arg(amount) : amount;
}

std::vector<TerrainStep::Stop> stopsOf(const TimedStep& timed, const TransitionGraph& graph, Elevation from,
                                       Elevation to) {
  std::vector<TerrainStep::Stop> stops{{0.0, from}};
  double passed = 0;
  for (const Change* change : timed.way.changes) {
    passed += change->seconds.value();
    const double share = timed.way.seconds.value() > 0 ? passed / timed.way.seconds.value() : 1.0;
    stops.push_back({std::min(share, 1.0), elevationOf(graph, change->to, to)});
  }
  if (stops.size() == 1)
    stops.push_back({1.0, to});
  stops.back() = {1.0, to};
  return stops;
}

// 10, 20, 40, 60, 80, 100, 200 ...: the least of them from the greatest peak up.
double loadScaleOf(const std::vector<TerrainStep>& steps) {
  double most = 0;
  for (const TerrainStep& step : steps)
    most = std::max(most, step.loadPeak);
  if (most <= 0)
    return 0;
  double step = 10;
  for (; most > step * 10; step *= 10)
    ;
  const double scale = std::ceil(most / step - 1e-9) * step;
  return scale == step || std::fmod(scale, 2 * step) == 0 ? scale : scale + step;
}

void strengthen(std::optional<Level>& level, Level other) { level = std::max(level.value_or(other), other); }

// Whether a caution at a step is about getting there, and not about the work or the change of sides within it.
bool speaksOfWay(const Caution& caution, const TimedStep& timed, const PositionId& before) {
  if (caution.kind == CautionKind::noWay)
    return timed.way.changes.empty() && timed.start != before;
  return caution.kind == CautionKind::rule && caution.rule && caution.rule->scope == Scope::way &&
         caution.because.intersects(timed.way.features);
}

} // namespace

TerrainScene sceneOf(const Snapshot& snapshot) {
  const Knowledge& knowledge = *snapshot.knowledge;
  const ClassPlan& plan = *snapshot.plan;
  const Schedule& schedule = snapshot.evaluation->schedule;
  const TransitionGraph& graph = knowledge.transitions;
  TerrainScene scene;
  scene.length = schedule.length;
  scene.target = plan.target;
  scene.knowledge = snapshot.knowledge;

  std::unordered_map<StepId, std::vector<const Caution*>> cautions;
  for (const Caution& caution : snapshot.seen->cautions)
    if (caution.step)
      cautions[*caution.step].push_back(&caution);

  scene.steps.reserve(schedule.steps.size());
  Elevation resting = Elevation::faceUp;
  PositionId restingAt;
  std::size_t next = 0;
  for (std::size_t section = 0; section < plan.sections.size(); ++section) {
    const auto& steps = plan.sections[section].steps;
    const Seconds begin = section < schedule.sectionBegin.size() ? schedule.sectionBegin[section] : Seconds{};
    scene.sections.push_back({QString::fromStdString(plan.sections[section].name), begin, begin, steps.size()});
    for (std::size_t index = 0; index < steps.size() && next < schedule.steps.size(); ++index, ++next) {
      const Step& step = steps[index];
      const TimedStep& timed = schedule.steps[next];
      const Movement* movement = timed.movement;
      TerrainStep shown;
      shown.id = step.id;
      shown.place = {section, index};
      shown.name = movementName(knowledge, step.movement);
      shown.dose = doseText(step.dose, movement ? movement->sides : Sides::together, step.onlySide);
      if (const auto space = shown.dose.indexOf(QLatin1Char(' ')); space > 0)
        shown.dose[space] = QChar(QChar::Nbsp); // a number is never parted from what it counts
      shown.shortDose = shortDoseText(step, movement);
      shown.pose = movement ? &posesOf(*movement, timed.option).end : nullptr;
      shown.elevation = elevationOf(graph, timed.start, resting);
      shown.ending = elevationOf(graph, timed.end, shown.elevation);
      shown.begin = timed.begin;
      shown.workBegin = timed.workBegin;
      shown.finish = timed.finish;
      if (movement && movement->sides == Sides::each && !step.onlySide)
        shown.sideChange = timed.workBegin + timed.work.left + timed.turning * 0.5;
      if (next > 0) {
        shown.way = stopsOf(timed, graph, resting, shown.elevation);
        shown.moving = timed.moving;
        shown.changes = static_cast<int>(timed.way.changes.size());
      }
      for (const Caution* caution : cautions[step.id]) {
        strengthen(shown.caution, caution->level);
        if (next > 0 && speaksOfWay(*caution, timed, restingAt))
          strengthen(shown.wayCaution, caution->level);
      }
      if (movement) {
        shown.region = movement->regions.empty() ? std::nullopt : std::optional{movement->regions.front()};
        const StepLoad& load = snapshot.evaluation->load.steps[next];
        constexpr std::size_t kLowBack = matwright::index(LoadedJoint::lowBack);
        shown.load = load.mean[kLowBack] * newtonMetres(snapshot.body);
        shown.loadPeak = load.peak[kLowBack] * newtonMetres(snapshot.body);
        shown.effort = effortOf(*movement, timed.option).value();
        shown.spine = movement->spine.empty() ? SpineAction::neutral : movement->spine.front();
      }
      resting = shown.ending;
      restingAt = timed.end;
      scene.sections.back().end = shown.finish;
      scene.steps.push_back(std::move(shown));
    }
  }
  scene.loadScale = loadScaleOf(scene.steps);
  return scene;
}

std::array<bool, kWordCount<Elevation>> elevationsIn(const TerrainScene& scene) {
  std::array<bool, kWordCount<Elevation>> used{};
  for (const TerrainStep& step : scene.steps)
    used[static_cast<std::size_t>(step.elevation)] = true;
  return used;
}

} // namespace matwright
