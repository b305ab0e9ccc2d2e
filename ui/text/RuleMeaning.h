#pragma once

#include "core/screening/Rule.h"

#include <QString>

namespace matwright {

// What a rule means, in one plain sentence: For people with "Diastasis", when a step asks for loaded forward bend:
// adapt, "keep the head down". What is not chosen yet is said to be.
QString meaningText(const Rule& rule, const RuleBook& book);

// What a scope looks at, one sentence for whoever chooses one.
QString explanationOf(Scope scope);
// What an answer of the kind is, one sentence for whoever writes a question.
QString explanationOf(QualifierKind kind);

} // namespace matwright
