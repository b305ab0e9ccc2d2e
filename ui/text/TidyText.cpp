#include "ui/text/TidyText.h"

#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <cmath>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("TidyText", text); }

QString changesText(int changes) {
  return changes == 1 ? tr("1 change of position") : tr("%1 changes of position").arg(changes);
}

QString sectionName(const ClassPlan& plan, std::size_t section) {
  const QString name = QString::fromStdString(plan.sections[section].name);
  return name.isEmpty() ? tr("Section %1").arg(section + 1) : name;
}

bool anyOf(const TidyWishes& wishes) { return !(wishes == TidyWishes{}); }

// As it is told: below ten seconds with a tenth.
double shown(Seconds seconds) {
  const double value = seconds.value();
  return std::abs(value) < 9.95 ? std::round(value * 10) / 10 : std::round(value);
}

// A bound is not rounded up, or it would promise too much.
QString boundText(Seconds lower) { return secondsText(Seconds(std::floor(lower.value()))); }

} // namespace

QString secondsText(Seconds seconds) {
  const double value = shown(seconds);
  return tr("%1\u00a0s").arg(QLocale().toString(value, 'f', value == std::round(value) ? 0 : 1));
}

TidyWishWords wordsFor(TidyReason wish) {
  switch (wish) {
  case TidyReason::counterMovement:
    return {tr("Counter-movement after bending"),
            tr("Adds 30 s where two or more movements that bend the spine are followed by two of which none counters "
               "that: arches the spine, or is named as a counter-movement of one that bends.")};
  case TidyReason::otherRegion:
    return {tr("No region twice running"), tr("Adds 5 s where a movement has the main region of the one before it.")};
  case TidyReason::wishedArc:
    return {tr("Effort near the wished arc"),
            tr("Adds 1 s for every 20 s that a movement is one step of effort off the wished arc: up from 2 to 6 over "
               "the first third of the class, there until three quarters, down to 1 at the end.")};
  case TidyReason::fewerRises:
    return {tr("Fewer rises from the floor"),
            tr("Adds 10 s for each change of position that asks people to get up from the floor: gentle for those who "
               "rise slowly.")};
  case TidyReason::shorterWay:
  case TidyReason::prerequisite:
  case TidyReason::withOthers:
    break;
  }
  return {};
}

QString costText(const TidyCost& cost) {
  QStringList parts{tr("%1 of moving").arg(secondsText(cost.moving)), changesText(cost.changes)};
  if (cost.wished > Seconds{})
    parts << tr("%1 for wishes").arg(secondsText(cost.wished));
  return parts.join(QStringLiteral(", "));
}

QString savedText(const TidyCost& before, const TidyCost& after) {
  QStringList parts;
  const double moving = shown(before.moving) - shown(after.moving); // what two numbers beside each other show
  if (std::abs(moving) > 1e-6)
    parts << (moving > 0 ? tr("%1 less moving") : tr("%1 more moving")).arg(secondsText(Seconds(std::abs(moving))));
  if (const int changes = before.changes - after.changes; changes != 0)
    parts << (changes > 0 ? tr("%1 fewer") : tr("%1 more")).arg(changesText(std::abs(changes)));
  return parts.join(QStringLiteral(", "));
}

QString outcomeText(const TidyResult& result, const TidyWishes& wishes) {
  const QString lower = boundText(result.lower);
  const QString bound =
      result.after.wished > Seconds{}
          ? tr("With wishes it comes to %1; no order can be below %2.").arg(secondsText(result.after.total()), lower)
          : tr("No order can be below %1.").arg(lower);
  switch (result.status) {
  case TidyStatus::shortest:
    return anyOf(wishes) ? tr("Best possible with these wishes (proven).") : tr("Shortest possible (proven).");
  case TidyStatus::nothingToDo:
    return anyOf(wishes) ? tr("Nothing to do: no order is better with these wishes (proven).")
                         : tr("Nothing to do: no order is shorter (proven).");
  case TidyStatus::bounded:
    return (result.moves.empty() ? tr("No better order was found.") : tr("The best that was found.")) +
           QLatin1Char(' ') + bound;
  case TidyStatus::cancelled:
    return (result.moves.empty() ? tr("Stopped before a better order was found.")
                                 : tr("Stopped: the best until then.")) +
           QLatin1Char(' ') + bound;
  }
  return {};
}

QString progressText(const TidyProgress& progress) {
  const QString bound = tr("no order can be below %1").arg(boundText(progress.lower));
  return progress.best ? tr("Searching: the best so far takes %1, %2.").arg(secondsText(*progress.best), bound)
                       : tr("Searching: %1.").arg(bound);
}

QString moveText(const Knowledge& knowledge, const TidyResult& result, const TidyMove& move) {
  const std::vector<Step>& steps = result.plan.sections[move.to.section].steps;
  const QString neighbour = move.to.index == 0
                                ? tr("at the beginning")
                                : tr("after %1").arg(movementName(knowledge, steps[move.to.index - 1].movement));
  const QString section = sectionName(result.plan, move.to.section);
  if (move.from.index == move.to.index)
    return tr("%1, still %2, now %3").arg(section, QString::number(move.to.index + 1), neighbour);
  return tr("%1, from %2 to %3, %4").arg(section).arg(move.from.index + 1).arg(move.to.index + 1).arg(neighbour);
}

QString gainText(const TidyGain& gain) {
  const QString seconds = secondsText(gain.seconds);
  switch (gain.reason) {
  case TidyReason::shorterWay:
    return tr("%1 less moving").arg(seconds);
  case TidyReason::prerequisite:
    return tr("what builds on another comes after it");
  case TidyReason::counterMovement:
    return tr("a counter-movement after bending (%1)").arg(seconds);
  case TidyReason::otherRegion:
    return tr("another region than before (%1)").arg(seconds);
  case TidyReason::wishedArc:
    return tr("effort nearer to the wished arc (%1)").arg(seconds);
  case TidyReason::fewerRises:
    return tr("fewer rises from the floor (%1)").arg(seconds);
  case TidyReason::withOthers:
    return tr("goes along with the others");
  }
  return {};
}

QString gainsText(const TidyMove& move) {
  QStringList parts;
  for (const TidyGain& gain : move.gains)
    parts << gainText(gain);
  return parts.join(QStringLiteral("; "));
}

QString levelCountsText(const LevelCounts& counts) {
  QStringList parts;
  for (std::size_t level = counts.size(); level-- > 0;)
    if (counts[level] > 0)
      parts << QStringLiteral("%1 %2").arg(counts[level]).arg(text(static_cast<Level>(level)));
  return parts.join(QStringLiteral(", "));
}

QString broughtText(const TidyResult& result) {
  const QString come = levelCountsText(result.come);
  return come.isEmpty() ? tr("This order raises no further caution.") : tr("This order raises cautions: %1.").arg(come);
}

QString takenText(const TidyResult& result) {
  const QString gone = levelCountsText(result.gone);
  return gone.isEmpty() ? QString() : tr("It no longer raises: %1.").arg(gone);
}

} // namespace matwright
