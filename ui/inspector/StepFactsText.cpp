#include "ui/inspector/StepFactsText.h"

#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QStringList>

namespace matwright {
namespace {

QString tr(const char* text, int n = -1) { return QCoreApplication::translate("StepFactsText", text, nullptr, n); }

QString wayText(const Way& way, Seconds moving) {
  return tr("%1 \u00b7 %2").arg(clock(moving), tr("%n change(s)", static_cast<int>(way.changes.size())));
}

QString cuesOf(const Way& way) {
  QStringList cues;
  for (const Change* change : way.changes)
    if (!change->cue.empty()) {
      QString cue = withCapital(QString::fromStdString(change->cue));
      if (!cue.endsWith(QLatin1Char('.')))
        cue += QLatin1Char('.');
      cues << cue;
    }
  return cues.join(QLatin1Char(' '));
}

} // namespace

StepFactsText factsOf(const Snapshot& snapshot, const Knowledge& knowledge, StepId step) {
  const auto place = placeOf(*snapshot.plan, step);
  const TimedStep* timed = snapshot.evaluation->timed(step);
  StepFactsText facts;
  if (!place || !timed)
    return facts;
  std::size_t number = place->index + 1;
  for (std::size_t section = 0; section < place->section; ++section)
    number += snapshot.plan->sections[section].steps.size();
  const QString start = positionName(knowledge, timed->start);
  const QString end = positionName(knowledge, timed->end);
  QStringList parts{tr("Step %1").arg(number), QString::fromStdString(snapshot.plan->sections[place->section].name)};
  if (timed->movement)
    parts << (start == end ? start : tr("%1, ends %2").arg(start, end));
  facts.place = parts.join(QStringLiteral(" \u00b7 "));

  facts.work = clock(timed->work.whole);
  if (timed->turning > Seconds{})
    facts.work += tr(", and %1 between the sides").arg(clock(timed->turning));

  const bool first = number == 1;
  if (first)
    facts.wayIn = tr("the class starts here");
  else if (!timed->reachable)
    facts.wayIn = tr("no change of position is charted from the step before");
  else if (timed->way.changes.empty())
    facts.wayIn = tr("already there");
  else
    facts.wayIn = wayText(timed->way, timed->moving);
  if (timed->reachable && !first)
    facts.cues = cuesOf(timed->way);
  const Seconds settle = snapshot.plan->pace.settle;
  facts.gap = timed->cue > timed->moving ? tr("%1 before the first count: the set-up takes %2 to say, %3 to settle")
                                               .arg(clock(timed->gap), clock(timed->cue), clock(settle))
                                         : tr("%1 before the first count: %2 to move, %3 to settle")
                                               .arg(clock(timed->gap), clock(timed->moving), clock(settle));
  return facts;
}

} // namespace matwright
