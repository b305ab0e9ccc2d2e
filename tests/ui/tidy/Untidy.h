// Classes to be tidied, over the real knowledge.
#pragma once

#include "core/tidy/Tidy.h"
#include "tests/support/Documents.h"
#include "tests/support/RandomClass.h"

#include <QApplication>
#include <QTest>

namespace matwright {

struct Untidy : OpenClass {
  // Steps 1, 2, 3 ... of these movements in the section Main of an empty class.
  void load(const std::vector<const char*>& movements) {
    ClassPlan plan = emptyClass("Untidy");
    for (const char* movement : movements)
      plan.sections[2].steps.push_back(stepOf(StepId{static_cast<std::int64_t>(plan.sections[2].steps.size()) + 1},
                                              *document.knowledge().catalogue.find(MovementId{movement})));
    document.load(std::move(plan));
  }
  // Lying on the back, on the side, on the back, on the side: two changes too many.
  void loadRestless() { load({"hundred", "clam", "hundred", "clam"}); }
  // So many steps in one section that no search comes to an end.
  void loadEndless() {
    test::Draw draw(3);
    ClassPlan plan = test::randomClass(draw, document.knowledge().catalogue, 90);
    std::vector<Step> all;
    for (Section& section : plan.sections)
      std::move(section.steps.begin(), section.steps.end(), std::back_inserter(all));
    plan.sections = {{"All", std::move(all)}};
    document.load(std::move(plan));
  }
  std::vector<std::int64_t> order() const {
    std::vector<std::int64_t> ids;
    forEachStep(document.plan(), [&](const Step& step) { ids.push_back(step.id.value); });
    return ids;
  }
};

// With all wishes, which hold each other back.
inline TidyRequest wishful() {
  TidyRequest request;
  request.wishes = {true, true, true, true};
  return request;
}

} // namespace matwright
