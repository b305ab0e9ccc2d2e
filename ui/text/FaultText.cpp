#include "ui/text/FaultText.h"

#include "ui/text/FigureText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("FaultText", text); }

QString number(double value) { return QLocale().toString(value, 'g', 4); }

// Which of the two poses, which phase, or which entry of a list that is written one below the other.
QString where(const Fault& fault) {
  if (fault.field == Field::startPose)
    return tr("Start: ");
  if (fault.field == Field::endPose)
    return tr("End: ");
  if (fault.field == Field::tempo && fault.place)
    return tr("Phase %1: ").arg(*fault.place + 1);
  if (fault.field == Field::choices && fault.place && fault.within)
    return tr("Question %1, choice %2: ").arg(*fault.place + 1).arg(*fault.within + 1);
  if ((fault.field == Field::qualifiers || fault.field == Field::choices) && fault.place)
    return tr("Question %1: ").arg(*fault.place + 1);
  if (fault.field == Field::when && fault.place)
    return tr("Test %1: ").arg(*fault.place + 1);
  if (fault.field == Field::icd10 && fault.place)
    return tr("Code %1: ").arg(*fault.place + 1);
  return {};
}

QString misfit(const Fault& fault) {
  switch (fault.field) {
  case Field::when:
    return tr("\"%1\" cannot be asked that.").arg(QString::fromStdString(fault.what));
  case Field::asks:
    return tr("A rule that looks at this cannot ask for it.");
  case Field::threshold:
    return tr("A rule that looks at this measures nothing, or in other units.");
  case Field::after:
    return tr("Only a rule on the order of steps looks at what came before.");
  case Field::choices:
    return tr("Only a question with choices has them.");
  default:
    return tr("Does not fit here.");
  }
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
    return fault.field == Field::name && !fault.option
               ? tr("\"%1\" is called so too.").arg(movementName(all, {fault.what}))
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
    return tr("What should rest on floor, wall or prop does not, or something sinks below the floor.");
  case FaultKind::jointTooFar:
    if (fault.joint && fault.with)
      return tr("Nobody goes so far: %1 and %2 together, %3; at most %4.")
          .arg(text(*fault.with), text(*fault.joint), degreesText(fault.found), degreesText(fault.bound));
    return tr("Nobody goes so far: %1, %2; at most %3.")
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
  case FaultKind::harderCounter:
    return tr("\"%1\" is harder (effort %2) than the movement that it is to undo (%3).")
        .arg(movementName(all, {fault.what}), number(fault.found), number(fault.bound));
  case FaultKind::propUnnamed:
    return tr("Speaks of a %1, which is not among the props.").arg(what);
  case FaultKind::doesNotFit:
    return misfit(fault);
  case FaultKind::notAsked:
    return tr("No rule asks for it yet, so nothing is screened for it.");
  case FaultKind::withoutSource:
    return tr("Names no source: then what stands behind it is practice.");
  case FaultKind::noDay:
    return tr("The calendar has no such day.");
  }
  return {};
}

} // namespace

QString text(const Fault& fault, const Knowledge& all) { return where(fault) + sentence(fault, all); }

QString needText(const Error& refusal) {
  const QString expected = QString::fromStdString(refusal.expected), found = QString::fromStdString(refusal.found);
  switch (refusal.code) {
  case ErrorCode::duplicateId:
    return tr("%1; \"%2\" stands twice.").arg(expected, found);
  case ErrorCode::unknownReference:
    return tr("Needs %1; \"%2\" is none.").arg(expected, found);
  default:
    return found.isEmpty() ? tr("Needs %1.").arg(expected) : tr("Needs %1; there is %2.").arg(expected, found);
  }
}

QString line(const Fault& fault, const Movement& movement, const Knowledge& all) {
  QStringList parts{QString::fromStdString(movement.id.value)};
  if (fault.option)
    parts << QString::fromStdString(movement.options[*fault.option].id.value);
  const std::string_view key = word(fault.field);
  parts << QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size())) << text(fault, all);
  return parts.join(QStringLiteral(": "));
}

} // namespace matwright
