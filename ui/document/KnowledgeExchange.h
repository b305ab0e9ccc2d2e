// What teachers give each other of their own knowledge, as files.
#pragma once

#include "core/knowledge/Exchange.h"
#include "ui/document/KnowledgeDocument.h"

namespace matwright {

Result<void> exportKnowledge(const OwnKnowledge& given, const QString& file);

// What a file holds, as one entry of the undo list; see merged(). Of a file that cannot be read nothing is taken.
Result<Merged, std::vector<Error>> importKnowledge(KnowledgeDocument& document, const QString& file);

} // namespace matwright
