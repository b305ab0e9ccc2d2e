#include "app/console/Commands.h"
#include "app/console/Loading.h"

#include <iostream>

namespace matwright {

int validateCommand(const Arguments& arguments) {
  const auto knowledge = loadKnowledge();
  if (!knowledge)
    return kBadInput;
  int code = kFine;
  for (const std::string& file : arguments.free) {
    const std::vector<Error> errors = validateFile(file, &*knowledge);
    complain(errors);
    if (errors.empty())
      std::cout << file << ": no fault found\n";
    else
      code = kBadInput;
  }
  return code;
}

} // namespace matwright
