#include "app/console/CheckReport.h"
#include "app/console/Commands.h"

#include <iostream>

namespace matwright {

int checkCommand(const Arguments& arguments) {
  const auto knowledge = loadKnowledgeFor(arguments.free.front());
  if (!knowledge)
    return kBadInput;
  const auto people = arguments.values.find("--people");
  const auto loaded =
      loadClass(arguments.free.front(), people == arguments.values.end() ? std::vector<std::string>{} : people->second);
  if (!loaded)
    return kBadInput;
  const Evaluation evaluation = evaluate(*knowledge, loaded->plan, loaded->roster, loaded->day);
  std::cout << (arguments.has("--json") ? checkTree(*knowledge, *loaded, evaluation).text()
                                        : checkText(*knowledge, *loaded, evaluation));
  return evaluation.cautionCounts[static_cast<std::size_t>(Level::leaveOut)] > 0 ? kLeaveOut : kFine;
}

} // namespace matwright
