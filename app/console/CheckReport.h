#pragma once

#include "app/console/Loading.h"
#include "core/store/Tree.h"

namespace matwright {

// What `check --json` prints; described in app/console/OUTPUT.md.
Tree checkTree(const Knowledge& knowledge, const LoadedClass& loaded, const Evaluation& evaluation);

// The same for people to read.
std::string checkText(const Knowledge& knowledge, const LoadedClass& loaded, const Evaluation& evaluation);

// One caution on the class that is given, as `check --json` has it.
Tree cautionTree(const Caution& caution, const Knowledge& knowledge, const LoadedClass& loaded,
                 const Evaluation& evaluation);

} // namespace matwright
