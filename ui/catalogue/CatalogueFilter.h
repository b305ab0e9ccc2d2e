#pragma once

#include "core/evaluate/Evaluation.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace matwright {

// Which movements are listed. An empty set asks for nothing.
struct CatalogueFilter {
  QString words; // each must begin one of a movement's words
  EnumSet<Elevation> elevations;
  EnumSet<Region> regions;
  EnumSet<Repertoire> repertoires;
  bool watchAtMost = false; // only what adds no caution stronger than `watch`
  friend bool operator==(const CatalogueFilter&, const CatalogueFilter&) = default;

  bool asksForMoreThanWords() const {
    return !elevations.empty() || !regions.empty() || !repertoires.empty() || watchAtMost;
  }
};

// "Épaulé-jeté" -> {"epaule", "jete"}: lower case, without marks, split at anything that is no letter or digit.
QStringList searchWords(const QString& text);

// The words that each movement of a catalogue is found by: name, regions, repertoire, positions and what the spine
// does.
class CatalogueIndex {
public:
  explicit CatalogueIndex(const Knowledge& knowledge); // which must outlive the index

  bool passes(const Candidate& candidate, const CatalogueFilter& filter) const;

private:
  bool passesWords(std::size_t movement, const QStringList& terms) const;

  const Knowledge& knowledge_;
  std::vector<QStringList> words_; // by the movement's place in the catalogue
};

} // namespace matwright
