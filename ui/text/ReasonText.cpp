#include "ui/text/ReasonText.h"

#include "ui/text/MovementText.h"
#include "ui/text/PeopleText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("ReasonText", text); }

QString needOf(const ComposeReason& reason) {
  return reason.region  ? text(*reason.region)
         : reason.spine ? text(*reason.spine)
         : reason.skill ? text(*reason.skill)
                        : QString();
}

QString focusText(const QString& parts) { return tr("gives time to the focus (%1)").arg(parts); }

QString missingText(const ComposeReason& reason) {
  return reason.prop ? tr("in this option, as written it needs what is not at hand (%1)").arg(text(*reason.prop))
                     : tr("in this option, as written it needs a free wall");
}

QString cautionText(const ComposeReason& reason, const ComposeNames& names) {
  const Condition* condition =
      reason.rule && reason.rule->condition ? names.knowledge.rules.findCondition(*reason.rule->condition) : nullptr;
  const QString whose = reason.person ? shortName(*reason.person, names.roster) : tr("everybody");
  return condition ? tr("in this option, as written it brings a caution for %1 (%2)")
                         .arg(whose, QString::fromStdString(condition->name))
                   : tr("in this option, as written it brings a caution for %1").arg(whose);
}

} // namespace

QString text(const ComposeReason& reason, const ComposeNames& names) {
  switch (reason.kind) {
  case ComposeReasonKind::included:
    return tr("wished for");
  case ComposeReasonKind::neededFor:
    return tr("needed before %1").arg(movementName(names.knowledge, reason.movement));
  case ComposeReasonKind::focus:
    return focusText(needOf(reason));
  case ComposeReasonKind::counters:
    return tr("answers the bending of %1").arg(movementName(names.knowledge, reason.movement));
  case ComposeReasonKind::onlyOne:
    return tr("nothing else works this: %1").arg(needOf(reason));
  case ComposeReasonKind::noChange:
    return tr("begins where the step before ends");
  case ComposeReasonKind::asHard:
    return tr("about as hard as wished for here");
  case ComposeReasonKind::notRecent:
    return tr("in no recent class");
  case ComposeReasonKind::propMissing:
    return missingText(reason);
  case ComposeReasonKind::tooHard:
    return tr("in this option, as written it is too hard");
  case ComposeReasonKind::cautioned:
    return cautionText(reason, names);
  case ComposeReasonKind::challenge:
    return tr("in the option that goes with a class that is %1").arg(text(names.wishes.challenge));
  case ComposeReasonKind::timeLeft:
    return tr("in a dose that fits the time");
  case ComposeReasonKind::nothingElse:
    return tr("fits the time");
  }
  return {};
}

} // namespace matwright
