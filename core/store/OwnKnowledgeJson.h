#pragma once

#include "core/knowledge/OwnKnowledge.h"
#include "core/store/Kept.h"

namespace matwright {

// From the tree that openTree gave; what is wrong stands in the reading. Without `builtIn`, references to what is not
// in the file are not checked.
OwnKnowledge readOwnKnowledgeTree(const Json& tree, const Knowledge* builtIn, Reading& reading);

} // namespace matwright
