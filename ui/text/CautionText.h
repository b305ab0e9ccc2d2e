#pragma once

#include "core/evaluate/Evaluation.h"

#include <QString>
#include <QStringList>
#include <span>

namespace matwright {

// One caution in sentences, from short to long.
struct CautionWords {
  QString who;      // "Rosa", or "Everybody"
  QString headline; // "Rosa: The hundred - adapt" without markup
  QString what;     // what was found: features, or the sum reached
  QString instead;  // what to do; may be empty
  QString whole; // the whole reason: condition, feature, rule, sources, strength, how far verified, what is disputed,
                 // what was assumed, clearance; paragraphs separated by newlines
};

CautionWords wordsFor(const Caution& caution, const Knowledge& knowledge, const ClassPlan& plan,
                      const Evaluation& evaluation, std::span<const Person> roster);

QString giverText(const Clearance& paper); // "of Dr Ellis, 3 March 2026", as far as it was noted

QString remarkText(const Remark& remark, const Knowledge& knowledge, const ClassPlan& plan);

// Said wherever cautions are listed: what a missing caution does not mean, and who decides.
QString standingNotice();
QString noCautionText(bool anybodyChosen); // instead of an empty list; never says "safe"
QStringList stopSigns();                   // short, for card and screen

} // namespace matwright
