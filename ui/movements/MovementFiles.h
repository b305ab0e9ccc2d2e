// Movements as files that teachers give each other.
#pragma once

#include "ui/document/KnowledgeDocument.h"

namespace matwright {

// The movement of one's own, with those of one's own that it names as prerequisite or counter-movement, and theirs:
// what a file needs so that it can be read elsewhere. Empty for an unknown id.
OwnKnowledge withWhatItNames(const OwnKnowledge& own, const MovementId& movement);

Result<void> exportMovement(const KnowledgeDocument& document, const MovementId& movement, const QString& file);

struct Imported {
  std::vector<MovementId> movements; // as they are called here now
  int alreadyHere = 0;               // the same in every letter
  int notTaken = 0;                  // conditions, sources, rules and thresholds that were in the file too
};

// The movements of a file as one entry of the undo list. Ids that are taken here by something else are made anew, also
// where the file's movements name each other.
Result<Imported, std::vector<Error>> importMovements(KnowledgeDocument& document, const QString& file);

} // namespace matwright
