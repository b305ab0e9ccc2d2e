// The sentences of which a person's sheet is made.
#pragma once

#include "core/handout/PersonSheet.h"

#include <QString>
#include <QStringList>

namespace matwright {

void addOnce(QStringList& list, const QString& words); // nothing that is there already, and nothing empty

QString shortText(Verification verification); // one word; the long form stands under the sources
QString sentence(const std::string& note);    // what somebody wrote, as a sentence among others

// Whose mark it is, told to somebody who did not set it. Empty for rules without a threshold.
QString thresholdOnSheet(const Rule& rule);
QString concernsText(const SheetRow& row); // "loaded forward bend, in a row without a break, more than 3:00"
bool onWholeClass(const SheetRow& row);    // whatever is in it

QString answerText(const SheetQualifier& qualifier); // one that is answered
QString paperText(const SheetPaper& paper);
QString questionText(const SheetQuestion& question, const PersonSheet& sheet); // one sentence or two

} // namespace matwright
