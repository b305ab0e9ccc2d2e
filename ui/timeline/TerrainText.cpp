#include "ui/timeline/TerrainText.h"

#include "ui/text/CautionText.h"
#include "ui/text/LoadText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr int kMostCautions = 6; // in one tool tip; the list of cautions shows them all

struct TerrainTipText {
  Q_DECLARE_TR_FUNCTIONS(TerrainTipText)
};

QString html(const QString& text) { return text.toHtmlEscaped(); }
QString bold(const QString& text) { return QStringLiteral("<b>%1</b>").arg(html(text)); }

QString page(const QStringList& lines) {
  return QStringLiteral("<div style='white-space:normal'>%1</div>").arg(lines.join(QStringLiteral("<br>")));
}

std::vector<const Caution*> cautionsAt(const TerrainSubject& subject, StepId step) {
  std::vector<const Caution*> found;
  for (const Caution& caution : subject.snapshot.seen->cautions)
    if (caution.step == step)
      found.push_back(&caution);
  std::stable_sort(found.begin(), found.end(),
                   [](const Caution* one, const Caution* other) { return one->level > other->level; });
  return found;
}

CautionWords words(const TerrainSubject& subject, const Caution& caution) {
  return wordsFor(caution, subject.knowledge, *subject.snapshot.plan, *subject.snapshot.seen, subject.roster);
}

// "adapt for Rosa", "leave out for Imre and Rosa": one phrase a level, strongest first.
QStringList spokenCautions(const TerrainSubject& subject, StepId step) {
  QStringList phrases;
  const auto cautions = cautionsAt(subject, step);
  for (std::size_t i = 0; i < cautions.size();) {
    const Level level = cautions[i]->level;
    QStringList who;
    for (; i < cautions.size() && cautions[i]->level == level; ++i) {
      const Caution& caution = *cautions[i];
      const QString name =
          caution.person == Finding::kNone ? TerrainTipText::tr("everybody") : words(subject, caution).who;
      if (!who.contains(name))
        who << name;
    }
    phrases << TerrainTipText::tr("%1 for %2").arg(text(level), QLocale().createSeparatedList(who));
  }
  return phrases;
}

QStringList cautionLines(const TerrainSubject& subject, StepId step) {
  const auto cautions = cautionsAt(subject, step);
  QStringList lines;
  for (std::size_t i = 0; i < cautions.size() && i < kMostCautions; ++i) {
    const CautionWords said = words(subject, *cautions[i]);
    QString line = QStringLiteral("%1 · %2: %3").arg(bold(text(cautions[i]->level)), html(said.who), html(said.what));
    if (!said.instead.isEmpty())
      line += TerrainTipText::tr(" – instead: %1").arg(html(said.instead));
    lines << line;
  }
  if (cautions.size() > kMostCautions)
    lines << TerrainTipText::tr("and %1 more in the list of cautions").arg(cautions.size() - kMostCautions);
  if (cautions.empty())
    lines << html(noCautionText(!subject.snapshot.plan->people.empty()));
  return lines;
}

QStringList wayLines(const TerrainSubject& subject, std::size_t into) {
  const TimedStep& timed = subject.snapshot.evaluation->schedule.steps[into];
  QStringList lines;
  if (into == 0)
    return lines;
  if (!timed.reachable)
    lines << html(TerrainTipText::tr("No change of position is charted here."));
  for (const Change* change : timed.way.changes)
    lines << html(TerrainTipText::tr("%1, %2 s")
                      .arg(QString::fromStdString(change->cue))
                      .arg(std::lround(change->seconds.value())));
  if (timed.way.changes.empty() && timed.reachable)
    lines << html(TerrainTipText::tr("No change of position."));
  lines << html(TerrainTipText::tr("Gap %1, of which moving %2, cue %3")
                    .arg(clock(timed.gap), clock(timed.moving), clock(timed.cue)));
  return lines;
}

// "low back: peak 62 N·m, mean 31 N·m"; empty for a movement that is not in the catalogue.
QString loadLine(const TerrainSubject& subject, std::size_t step) {
  if (!subject.snapshot.evaluation->schedule.steps[step].movement)
    return {};
  const StepLoad& load = subject.snapshot.evaluation->load.steps[step];
  return jointLoadText(LoadedJoint::lowBack, load.peak, load.mean, subject.snapshot.body);
}

std::optional<std::size_t> stepAt(const TerrainScene& scene, Seconds at) {
  for (std::size_t i = 0; i < scene.steps.size(); ++i)
    if (at >= scene.steps[i].workBegin && at < scene.steps[i].finish)
      return i;
  return std::nullopt;
}

} // namespace

QString spokenStep(const TerrainSubject& subject, std::size_t step) {
  const TerrainStep& shown = subject.scene.steps[step];
  QStringList parts{shown.name, TerrainTipText::tr("step %1").arg(step + 1),
                    subject.scene.sections[shown.place.section].name, shown.dose,
                    clock(shown.finish - shown.workBegin)};
  if (const QString load = loadLine(subject, step); !load.isEmpty())
    parts << TerrainTipText::tr("effort %1").arg(shown.effort) << load;
  parts << spokenCautions(subject, shown.id);
  return parts.join(QStringLiteral(", ")).replace(QChar(QChar::Nbsp), QLatin1Char(' '));
}

QString stepToolTip(const TerrainSubject& subject, std::size_t step) {
  const TerrainStep& shown = subject.scene.steps[step];
  QStringList lines{bold(shown.name)};
  lines << html(TerrainTipText::tr("Step %1 · %2 · %3")
                    .arg(step + 1)
                    .arg(subject.scene.sections[shown.place.section].name, text(shown.elevation)));
  lines << html(TerrainTipText::tr("%1 · %2 of work, from %3")
                    .arg(shown.dose, clock(shown.finish - shown.workBegin), clock(shown.workBegin)));
  if (const QString load = loadLine(subject, step); !load.isEmpty())
    lines << html(withCapital(load));
  lines << wayLines(subject, step) << cautionLines(subject, shown.id);
  return page(lines);
}

QString wayToolTip(const TerrainSubject& subject, std::size_t into) {
  QStringList lines{
      QStringLiteral("<b>%1</b>").arg(html(TerrainTipText::tr("Into %1").arg(subject.scene.steps[into].name)))};
  lines << wayLines(subject, into);
  for (const Caution* caution : cautionsAt(subject, subject.scene.steps[into].id))
    if (caution->kind == CautionKind::noWay || (caution->rule && caution->rule->scope == Scope::way)) {
      const CautionWords said = words(subject, *caution);
      lines << QStringLiteral("%1 · %2: %3").arg(bold(text(caution->level)), html(said.who), html(said.what));
    }
  return page(lines);
}

QString sectionToolTip(const TerrainSubject& subject, std::size_t section) {
  const TerrainSection& shown = subject.scene.sections[section];
  if (shown.steps == 0)
    return page({bold(shown.name), html(TerrainTipText::tr("Empty"))});
  const QString count =
      shown.steps == 1 ? TerrainTipText::tr("1 step") : TerrainTipText::tr("%1 steps").arg(shown.steps);
  return page(
      {bold(shown.name),
       html(TerrainTipText::tr("%1 · %2, from %3").arg(count, clock(shown.end - shown.begin), clock(shown.begin)))});
}

QString effortToolTip(const TerrainSubject& subject, Seconds at) {
  QStringList lines{bold(TerrainTipText::tr("Effort, 0 (rest) to 10 (the most one can do)"))};
  if (const auto step = stepAt(subject.scene, at))
    lines << html(
        TerrainTipText::tr("%1: %2").arg(subject.scene.steps[*step].name).arg(subject.scene.steps[*step].effort));
  if (at.value() >= 0 && at <= subject.scene.length && subject.scene.length.value() > 0)
    lines << html(TerrainTipText::tr("Wished for at %1: %2")
                      .arg(clock(at), QLocale().toString(wishedEffort(at, subject.scene.length), 'f', 1)));
  lines << html(TerrainTipText::tr("Filled: this class. Dashed: the arc wished for."));
  if (subject.scene.loadScale <= 0)
    return page(lines);
  lines << bold(TerrainTipText::tr("Load of the low back, scale at the right"));
  if (const auto step = stepAt(subject.scene, at))
    if (const QString load = loadLine(subject, *step); !load.isEmpty()) {
      const double lever = subject.snapshot.evaluation->load.steps[*step].lever;
      lines << html(QStringLiteral("%1: %2, %3").arg(subject.scene.steps[*step].name, load, leverText(lever)));
    }
  lines << html(TerrainTipText::tr("Line with a diamond: the mean of a step. Short line above it: its peak."));
  lines << html(loadNotice());
  return page(lines);
}

QString spineToolTip(const TerrainSubject& subject, Seconds at) {
  QStringList lines{bold(TerrainTipText::tr("What the spine does"))};
  if (const auto step = stepAt(subject.scene, at)) {
    const Movement* movement = subject.snapshot.evaluation->schedule.steps[*step].movement;
    QStringList actions;
    if (movement)
      for (const SpineAction action : movement->spine)
        actions << text(action);
    lines << html(QStringLiteral("%1: %2").arg(subject.scene.steps[*step].name,
                                               actions.isEmpty() ? TerrainTipText::tr("not known")
                                                                 : actions.join(QStringLiteral(", "))));
  }
  const char* const signs[] = {
      QT_TRANSLATE_NOOP("TerrainTipText", "level line"), QT_TRANSLATE_NOOP("TerrainTipText", "line that rounds"),
      QT_TRANSLATE_NOOP("TerrainTipText", "line that hollows"), QT_TRANSLATE_NOOP("TerrainTipText", "line that leans"),
      QT_TRANSLATE_NOOP("TerrainTipText", "turning arrow")};
  static_assert(std::size(signs) == kWordCount<SpineAction>);
  for (std::size_t i = 0; i < kWordCount<SpineAction>; ++i)
    lines << html(QStringLiteral("%1: %2").arg(shortText(static_cast<SpineAction>(i)), TerrainTipText::tr(signs[i])));
  return page(lines);
}

} // namespace matwright
