// An open class over the real knowledge, for tests of the documents.
#pragma once

#include "tests/support/RealKnowledge.h"
#include "ui/document/ClassCommands.h"
#include "ui/document/PlanDocument.h"
#include "ui/document/StepSelection.h"

#include <gtest/gtest.h>
#include <memory>

namespace matwright {

inline std::shared_ptr<const Knowledge> sharedKnowledge() {
  return {std::shared_ptr<const Knowledge>{}, &test::realKnowledge()}; // lives as long as the program
}

inline Date testDay() { return Date{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{26}}; }

struct OpenClass {
  PlanDocument document{sharedKnowledge(), testDay};
  StepSelection selection{document};
  ClassCommands commands{document, selection};

  StepId add(const char* movement, Place place) {
    commands.insertMovement(MovementId{movement}, place);
    return *selection.current();
  }
  std::vector<std::string> movements() const {
    std::vector<std::string> names;
    forEachStep(document.plan(), [&](const Step& step) { names.push_back(step.movement.value); });
    return names;
  }
};

} // namespace matwright
