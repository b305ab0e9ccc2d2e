#include "ui/tidy/TidyRows.h"

#include "ui/text/CautionText.h"
#include "ui/text/TidyText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("TidyRows", text); }

TidyRow rowOf(const Caution& caution, const Snapshot& snapshot, std::span<const Person> roster) {
  const CautionWords words = wordsFor(caution, *snapshot.knowledge, *snapshot.plan, *snapshot.evaluation, roster);
  return {caution.level, caution.step, words.headline, words.what, words.instead};
}

} // namespace

std::vector<TidyRowGroup> rowsOf(const TidyFound& found, std::span<const Person> roster) {
  TidyRowGroup come{tr("Cautions that this order raises (%1)").arg(found.come.size()), {}};
  for (const Caution& caution : found.come)
    come.rows.push_back(rowOf(caution, found.after, roster));
  const auto& moves = found.result.moves;
  TidyRowGroup moved{tr("What moves, and why (%1)").arg(moves.size()), {}};
  const Knowledge& knowledge = *found.before.knowledge;
  for (const TidyMove& move : moves)
    moved.rows.push_back({{},
                          move.step,
                          movementName(knowledge, findStep(found.result.plan, move.step)->movement),
                          moveText(knowledge, found.result, move),
                          withCapital(gainsText(move))});
  TidyRowGroup gone{tr("Cautions that it no longer raises (%1)").arg(found.gone.size()), {}};
  for (const Caution& caution : found.gone)
    gone.rows.push_back(rowOf(caution, found.before, roster));
  std::vector<TidyRowGroup> groups;
  for (TidyRowGroup* group : {&come, &moved, &gone})
    if (!group->rows.empty())
      groups.push_back(std::move(*group));
  return groups;
}

} // namespace matwright
