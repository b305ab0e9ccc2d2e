#include "ui/text/ErrorText.h"

#include <QCoreApplication>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("ErrorText", text); }

QString sentence(const Error& error) {
  const QString expected = QString::fromStdString(error.expected);
  const QString found = QString::fromStdString(error.found);
  switch (error.code) {
  case ErrorCode::cannotRead:
    return tr("cannot be read") + (found.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(found));
  case ErrorCode::tooLarge:
    return tr("is larger than any true file of its kind");
  case ErrorCode::notJson:
    return tr("is not valid JSON") + (found.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(found));
  case ErrorCode::wrongFormat:
    return tr("is another kind of file: expected %1, found %2").arg(expected, found);
  case ErrorCode::newerVersion:
    return tr("was written by a newer Matwright (version %1; this one reads up to %2) and is left as it is")
        .arg(found, expected);
  case ErrorCode::missingKey:
    return tr("is missing: expected %1").arg(expected);
  case ErrorCode::unknownKey:
    return tr("is not known here: expected %1").arg(expected);
  case ErrorCode::wrongType:
  case ErrorCode::outOfRange:
  case ErrorCode::unknownWord:
    return tr("expected %1, found %2").arg(expected, found);
  case ErrorCode::duplicateId:
    return tr("the id %1 is used twice").arg(found);
  case ErrorCode::unknownReference:
    return tr("%1 is not on file: expected %2").arg(found, expected);
  case ErrorCode::cannotWrite:
    return tr("cannot be written; what was there before is untouched") +
           (found.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(found));
  case ErrorCode::changedOnDisk:
    return tr("was changed by somebody else since it was opened");
  }
  return {};
}

} // namespace

QString text(const Error& error) {
  QStringList parts;
  if (!error.file.empty())
    parts << QString::fromStdString(error.file);
  if (!error.path.empty())
    parts << QString::fromStdString(error.path);
  parts << sentence(error);
  return parts.join(QStringLiteral(": "));
}

QString text(Refusal refusal) {
  switch (refusal) {
  case Refusal::noSuchStep:
    return tr("That step is no longer in the class.");
  case Refusal::noSuchSection:
    return tr("That section is no longer in the class.");
  case Refusal::noSuchPlace:
    return tr("There is no such place in the class.");
  case Refusal::stepIdTaken:
    return tr("A step with that number is in the class already.");
  case Refusal::stepNamedTwice:
    return tr("The same step was named twice.");
  case Refusal::doseOutOfRange:
    return tr("A dose goes from 1 to %1.").arg(Dose::kMost);
  case Refusal::tempoOutOfRange:
    return tr("A tempo has 1 to %1 phases of 1 to %2 counts, and a count lasts %3 to %4 seconds.")
        .arg(Tempo::kMostPhases)
        .arg(Tempo::kMostCounts)
        .arg(Tempo::kFastestCount)
        .arg(Tempo::kSlowestCount);
  case Refusal::targetOutOfRange:
    return tr("A class lasts %1 to %2 minutes.")
        .arg(ClassPlan::kShortestTarget.minutes())
        .arg(ClassPlan::kLongestTarget.minutes());
  case Refusal::paceOutOfRange:
    return tr("The pace is outside its range.");
  case Refusal::nameEmpty:
    return tr("A name is needed.");
  case Refusal::nameTooLong:
    return tr("The name is too long.");
  case Refusal::noteTooLong:
    return tr("The note is too long.");
  case Refusal::lastSection:
    return tr("A class keeps at least one section.");
  case Refusal::tooManySections:
    return tr("A class has at most %1 sections.").arg(ClassPlan::kMostSections);
  case Refusal::tooManySteps:
    return tr("A class has at most %1 steps.").arg(ClassPlan::kMostSteps);
  case Refusal::tooManyPeople:
    return tr("A class has at most %1 people.").arg(ClassPlan::kMostPeople);
  case Refusal::personNamedTwice:
    return tr("The same person was named twice.");
  case Refusal::tooManyVariants:
    return tr("A step has at most %1 variants.").arg(ClassPlan::kMostPeople);
  }
  return {};
}

} // namespace matwright
