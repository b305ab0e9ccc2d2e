#include "ui/movements/FaultWords.h"

#include "ui/text/FigureText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("FaultWords", text); }

QString number(double value) { return QLocale().toString(value, 'g', 4); }

// Which of the two poses, or which phase.
QString where(const Fault& fault) {
  if (fault.field == Field::startPose)
    return tr("Start: ");
  if (fault.field == Field::endPose)
    return tr("End: ");
  if (fault.field == Field::tempo && fault.place)
    return tr("Phase %1: ").arg(*fault.place + 1);
  return {};
}

QString sentence(const Fault& fault, const Knowledge& all) {
  const QString what = QString::fromStdString(fault.what), features = featureList(fault.features);
  switch (fault.kind) {
  case FaultKind::empty:
    return tr("Something has to stand here.");
  case FaultKind::tooLong:
    return tr("Too long: %1 at most, %2 are there.").arg(number(fault.bound), number(fault.found));
  case FaultKind::tooFewWords:
    return tr("Too short: %1 words at least, %2 are there.").arg(number(fault.bound), number(fault.found));
  case FaultKind::tooManyWords:
    return tr("Too long: %1 words at most, %2 are there.").arg(number(fault.bound), number(fault.found));
  case FaultKind::outOfRange:
    return tr("%1 is out of its bounds; the nearest is %2.").arg(number(fault.found), number(fault.bound));
  case FaultKind::unknown:
    return tr("\"%1\" is not there.").arg(what);
  case FaultKind::itself:
    return tr("A movement cannot need itself, nor one that needs it first.");
  case FaultKind::twice:
    return fault.field == Field::name ? tr("\"%1\" is called so too.").arg(movementName(all, {fault.what}))
                                      : tr("The same stands here twice.");
  case FaultKind::removesAbsent:
    return tr("Takes away what is not there: %1.").arg(features);
  case FaultKind::addsPresent:
    return tr("Adds what is there already: %1.").arg(features);
  case FaultKind::ofThePosition:
    return tr("Comes with the position already: %1.").arg(features);
  case FaultKind::againstKind:
    if (fault.field == Field::effort)
      return tr("An effort of %1, where the movement has %2, does not go with its kind.")
          .arg(number(fault.found), number(fault.bound));
    return tr("Does not go with its kind: %1.").arg(features);
  case FaultKind::doesNotRest:
    return tr("What should rest on the floor or the wall does not, or something sinks below the floor.");
  case FaultKind::jointTooFar:
    return tr("No joint goes so far: %1, %2; at most %3.")
        .arg(fault.joint ? text(*fault.joint) : QString(), degreesText(fault.found), degreesText(fault.bound));
  case FaultKind::notShown:
    return tr("Neither pose shows it: %1.").arg(features);
  case FaultKind::shownOnly:
    return tr("The poses show it, and it is not ticked: %1.").arg(features);
  case FaultKind::needsHold:
    return tr("The breath is said to be held, and no phase holds it.");
  case FaultKind::holdUnnamed:
    return tr("A phase holds the breath, and it is not ticked: %1.").arg(features);
  case FaultKind::needsFeature:
    return tr("Where there is \"%1\", there is one of these too: %2.").arg(features, featureList(fault.also));
  case FaultKind::tooShortFor:
    return tr("Counts from %1 s on, and the work lasts %2 s: %3.")
        .arg(number(fault.bound), number(fault.found), features);
  case FaultKind::sameStrain:
    return tr("\"%1\" strains the same way, as hard or harder: %2.").arg(movementName(all, {fault.what}), features);
  case FaultKind::propUnnamed:
    return tr("Speaks of a %1, which is not among the props.").arg(what);
  default:
    return tr("Does not fit here.");
  }
}

} // namespace

QString wordsFor(const Fault& fault, const Knowledge& all) { return where(fault) + sentence(fault, all); }

} // namespace matwright
