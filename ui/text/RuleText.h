// A rule, and a condition that rules are for, in words, apart from any class and person.
#pragma once

#include "core/screening/Rule.h"

#include <QString>
#include <QStringList>

namespace matwright {

QString text(SourceKind kind);                     // "review"
QString unitText(double amount, MeasureUnit unit); // what is counted: "repetitions", "step", "% of the class"
QString text(QualifierKind kind);                  // "yes or no"
QString shortText(Strength strength);              // one or two words: "guideline"
QString shortText(Scope scope);                    // "in a row"

// What tells a rule from its neighbours: what it looks for, "Loaded forward bend or impact", or what to do, for a rule
// on the class as a whole.
QString titleText(const Rule& rule);
// Where it looks, in short: "in a row without a break, more than 3:00". The whole sentence is in RuleMeaning.h.
QString placeText(const Rule& rule);

// For whom: "For people with diastasis, aged 65 to 79", "For everybody".
QString audienceText(const Rule& rule, const RuleBook& book);
// One line for each test on a qualifier, with what it means while the qualifier is not known.
QStringList testLines(const Rule& rule, const RuleBook& book);
// The tests in short, without that: "weeks 6 to 11". Empty for none.
QString testsText(const Rule& rule, const RuleBook& book);

// What is asked about a condition: "How it is now: acute, irritable or settled".
QString qualifierText(const QualifierSpec& qualifier);

// Why a threshold may be changed, or may not. Empty for a rule without one.
QString thresholdText(const Rule& rule);
// What comes before the amount of a rule: "Speaks when there is more than".
QString speaksText(const Rule& rule);

} // namespace matwright
