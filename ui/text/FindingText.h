// What a rule found, in words: the parts of which sentences about cautions are made.
#pragma once

#include "core/evaluate/Evaluation.h"

#include <QString>

namespace matwright {

// An amount in its unit: "0:30", "3 steps", "33 %".
QString amountText(double amount, MeasureUnit unit);
// What a demand names: "loaded forward bend or rotation, standing or kneeling, effort 7 or more".
QString demandText(const Demand& demand);
// What of it was there, as those do it whom it is about: "loaded forward bend, standing". Empty for what is missing and
// for rules on a whole class.
QString foundText(const Caution& caution);
// How much was measured and where the mark is: "0:32 reached, the mark is 0:30". Empty for rules without a threshold.
QString measuredText(const Caution& caution, const Knowledge& knowledge, const ClassPlan& plan);
// Whose mark that is. Empty for rules without a threshold.
QString markText(const Rule& rule);
// Where the rule looks: "in this step".
QString scopeText(const Rule& rule);

} // namespace matwright
