#include "ui/totals/Totals.h"

#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <cmath>

namespace matwright {
namespace {

QString tr(const char* text, int n = -1) { return QCoreApplication::translate("Totals", text, nullptr, n); }

int percent(double share) { return static_cast<int>(std::lround(share * 100)); }

// Never quite certain: the ends of the scale are said as bounds.
QString chanceText(double chance) {
  if (chance > 0.99)
    return tr("over 99 % to end in time");
  if (chance < 0.01)
    return tr("under 1 % to end in time");
  return tr("%1 % to end in time").arg(percent(chance));
}

double movingShare(const Schedule& schedule) {
  return schedule.length > Seconds{} ? schedule.moving / schedule.length : 0.0;
}

Total sidesTotal(const Balance& balance) {
  if (sidesMatch(balance)) {
    const bool any = balance.left > Seconds{} || balance.right > Seconds{};
    return {tr("L = R"), {}, any ? tr("sides\nmatch") : tr("no work\non one side"), {}};
  }
  const Seconds more = balance.left - balance.right;
  return more > Seconds{} ? Total{tr("L %1").arg(signedClock(more)), {}, tr("left works\nlonger"), {}}
                          : Total{tr("R %1").arg(signedClock(-more)), {}, tr("right works\nlonger"), {}};
}

QString signedNumber(int number) {
  if (number == 0)
    return {};
  return number > 0 ? QStringLiteral("+%1").arg(number) : QString::number(number);
}

} // namespace

Totals totalsOf(const Snapshot& snapshot) {
  const ClassPlan& plan = *snapshot.plan;
  const Evaluation& evaluation = *snapshot.evaluation;
  const Schedule& schedule = evaluation.schedule;
  Totals totals;
  totals.length = {clock(schedule.length),
                   tr("of %1").arg(clock(plan.target)),
                   tr("likely %1\u2013%2\n%3")
                       .arg(clock(schedule.likelyFrom), clock(schedule.likelyTo), chanceText(schedule.chanceInTime)),
                   {}};
  totals.changes = {
      QString::number(schedule.changes), {}, tr("changes of\nposition, %1").arg(clock(schedule.moving)), {}};
  totals.moving = {tr("%1 %").arg(percent(movingShare(schedule))), {}, tr("of the time\nmoving"), {}};
  totals.sides = sidesTotal(evaluation.balance);
  totals.cautions = snapshot.seen->cautionCounts;
  const int people = static_cast<int>(plan.people.size());
  if (people == 0)
    totals.people = tr("nobody chosen yet");
  else if (snapshot.seenPeople.empty())
    totals.people = tr("for %n person(s)", people);
  else
    totals.people = tr("for %1 of %n people", people).arg(snapshot.seenPeople.size());
  return totals;
}

Totals totalsOf(const Snapshot& snapshot, const Snapshot& standing) {
  Totals totals = totalsOf(snapshot);
  const Schedule& now = standing.evaluation->schedule;
  const Schedule& then = snapshot.evaluation->schedule;
  if (clock(then.length) != clock(now.length))
    totals.length.difference = signedClock(then.length - now.length);
  totals.changes.difference = signedNumber(then.changes - now.changes);
  totals.moving.difference = signedNumber(percent(movingShare(then)) - percent(movingShare(now)));
  for (std::size_t level = 0; level < totals.cautions.size(); ++level)
    totals.moreCautions[level] = totals.cautions[level] - standing.seen->cautionCounts[level];
  return totals;
}

} // namespace matwright
