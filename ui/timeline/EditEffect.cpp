#include "ui/timeline/EditEffect.h"

#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cstdlib>

namespace matwright {
namespace {

struct EditEffectText {
  Q_DECLARE_TR_FUNCTIONS(EditEffectText)
};

bool belongsToStep(const Caution& caution) {
  return !caution.rule || (caution.rule->scope != Scope::total && caution.rule->scope != Scope::stretch);
}

// The same finding, although a sum may now pass its mark at another step.
bool same(const Caution& one, const Caution& other) {
  return one.kind == other.kind && one.level == other.level && one.rule == other.rule && one.person == other.person &&
         one.condition == other.condition && one.name == other.name && (!belongsToStep(one) || one.step == other.step);
}

// Those of `these` that have no partner in `those`, one to one.
std::vector<const Caution*> without(const std::vector<Caution>& these, const std::vector<Caution>& those) {
  std::vector<bool> taken(those.size(), false);
  std::vector<const Caution*> left;
  for (const Caution& caution : these) {
    std::size_t partner = 0;
    while (partner < those.size() && (taken[partner] || !same(caution, those[partner])))
      ++partner;
    if (partner < those.size())
      taken[partner] = true;
    else
      left.push_back(&caution);
  }
  return left;
}

} // namespace

EditEffect effectBetween(const Evaluation& before, const Evaluation& after) {
  EditEffect effect;
  effect.added = after.schedule.length - before.schedule.length;
  effect.addedChanges = after.schedule.changes - before.schedule.changes;
  const auto fresh = without(after.cautions, before.cautions);
  effect.newCautions = static_cast<int>(fresh.size());
  for (const Caution* caution : fresh)
    effect.strongest = std::max(effect.strongest.value_or(caution->level), caution->level);
  effect.goneCautions = static_cast<int>(without(before.cautions, after.cautions).size());
  return effect;
}

QString effectText(const EditEffect& effect) {
  QStringList parts;
  parts << (std::abs(effect.added.value()) < 0.5 ? EditEffectText::tr("same length") : signedClock(effect.added));
  const int changes = std::abs(effect.addedChanges);
  if (effect.addedChanges > 0)
    parts << (changes == 1 ? EditEffectText::tr("1 more change") : EditEffectText::tr("%1 more changes").arg(changes));
  else if (effect.addedChanges < 0)
    parts << (changes == 1 ? EditEffectText::tr("1 change fewer")
                           : EditEffectText::tr("%1 changes fewer").arg(changes));
  else
    parts << EditEffectText::tr("no more changes");
  if (effect.newCautions == 0)
    parts << EditEffectText::tr("no new caution raised");
  else if (effect.newCautions == 1)
    parts << EditEffectText::tr("1 new caution (%1)").arg(text(*effect.strongest));
  else
    parts << EditEffectText::tr("%1 new cautions (strongest: %2)").arg(effect.newCautions).arg(text(*effect.strongest));
  if (effect.goneCautions > 0)
    parts << (effect.goneCautions == 1 ? EditEffectText::tr("1 caution gone")
                                       : EditEffectText::tr("%1 cautions gone").arg(effect.goneCautions));
  return parts.join(QStringLiteral(" \u00b7 "));
}

} // namespace matwright
