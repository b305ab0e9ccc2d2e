#include "core/screening/ScopeForm.h"

namespace matwright {
namespace {

constexpr double kWholeClass = 100; // percent

ScopeForm usualForm(Scope scope) {
  using enum MeasureUnit;
  using enum ScopeForm::Amount;
  switch (scope) {
  case Scope::step:
    return {maybe, 0, {seconds}};
  case Scope::way:
    return {.onSteps = false};
  case Scope::total:
    return {needed, 0, {seconds, repetitions, steps, changes}};
  case Scope::stretch:
    return {needed, 0, {seconds, repetitions, steps}};
  case Scope::early:
  case Scope::late:
    return {needed, 1, {seconds, percent}};
  case Scope::order:
    return {needed, 1, {seconds, steps}};
  case Scope::missing:
    return {};
  case Scope::wholeClass:
    break;
  }
  return {.asks = false, .onSteps = false};
}

} // namespace

double mostOf(MeasureUnit unit) { return unit == MeasureUnit::percent ? kWholeClass : Threshold::kMost; }

ScopeForm formOf(Scope scope, std::optional<MeasureUnit> measured) {
  ScopeForm form = usualForm(scope);
  if (measured == MeasureUnit::changes)
    form.onSteps = false;
  return form;
}

} // namespace matwright
