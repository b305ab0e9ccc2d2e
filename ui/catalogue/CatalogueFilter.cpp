#include "ui/catalogue/CatalogueFilter.h"

#include "ui/text/VocabularyText.h"

#include <algorithm>

namespace matwright {
namespace {

const Position* startOf(const Knowledge& knowledge, const Movement& movement) {
  return knowledge.transitions.find(movement.start);
}

} // namespace

QStringList searchWords(const QString& text) {
  QStringList words;
  QString word;
  for (const QChar letter : text.normalized(QString::NormalizationForm_D).toCaseFolded()) {
    if (letter.isLetterOrNumber()) {
      word += letter;
    } else if (!letter.isMark() && !word.isEmpty()) {
      words << word;
      word.clear();
    }
  }
  if (!word.isEmpty())
    words << word;
  return words;
}

CatalogueIndex::CatalogueIndex(const Knowledge& knowledge) : knowledge_(knowledge) {
  for (const Movement& movement : knowledge.catalogue.movements()) {
    QStringList all{QString::fromStdString(movement.name), text(movement.repertoire), text(movement.sides),
                    positionName(knowledge, movement.start), positionName(knowledge, movement.end)};
    if (const Position* start = startOf(knowledge, movement))
      all << text(start->elevation);
    for (const Region region : movement.regions)
      all << text(region);
    for (const SpineAction action : movement.spine)
      all << text(action) << shortText(action);
    words_.push_back(searchWords(all.join(QLatin1Char(' '))));
  }
}

bool CatalogueIndex::passesWords(std::size_t movement, const QStringList& terms) const {
  return std::all_of(terms.begin(), terms.end(), [&](const QString& term) {
    return std::any_of(words_[movement].begin(), words_[movement].end(),
                       [&](const QString& word) { return word.startsWith(term); });
  });
}

bool CatalogueIndex::passes(const Candidate& candidate, const CatalogueFilter& filter) const {
  const Movement& movement = *candidate.movement;
  const auto place = static_cast<std::size_t>(&movement - knowledge_.catalogue.movements().data());
  if (!passesWords(place, searchWords(filter.words)))
    return false;
  const Position* start = startOf(knowledge_, movement);
  if (!filter.elevations.empty() && (!start || !filter.elevations.contains(start->elevation)))
    return false;
  if (!filter.regions.empty() && std::none_of(movement.regions.begin(), movement.regions.end(),
                                              [&](Region region) { return filter.regions.contains(region); }))
    return false;
  if (!filter.repertoires.empty() && !filter.repertoires.contains(movement.repertoire))
    return false;
  return !filter.watchAtMost || !candidate.strongest || *candidate.strongest <= Level::watch;
}

} // namespace matwright
