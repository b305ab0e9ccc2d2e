#include "app/console/Commands.h"
#include "app/console/Loading.h"
#include "ui/text/FaultText.h"

#include <iostream>
#include <unordered_set>

namespace matwright {
namespace {

// Everything that comes with the program, but the movements of the file in the place of those with their ids.
Knowledge with(const Knowledge& knowledge, const std::vector<Movement>& movements) {
  std::vector<Movement> all = movements;
  std::unordered_set<MovementId> replaced;
  for (const Movement& movement : movements)
    replaced.insert(movement.id);
  for (const Movement& movement : knowledge.catalogue.movements())
    if (!replaced.contains(movement.id))
      all.push_back(movement);
  Knowledge replacing = knowledge;
  replacing.catalogue = Catalogue(std::move(all));
  return replacing;
}

// Hints go to the standard output, faults to the standard error. Whether there was no fault.
bool tell(const std::string& file, const std::vector<Movement>& movements, const Knowledge& all) {
  bool fine = true;
  for (const Movement& movement : movements)
    for (const Fault& fault : faultsIn(movement, all)) {
      const std::string words = line(fault, movement, all).toStdString();
      if (fault.hint)
        std::cout << file << ": hint: " << words << '\n';
      else
        std::cerr << "matwright-cli: " << file << ": " << words << '\n';
      fine = fine && fault.hint;
    }
  return fine;
}

template <class Value>
bool tell(const std::string& file, const std::vector<Value>& values, const Knowledge& all, const char* list) {
  bool fine = true;
  for (const Value& value : values)
    for (const Fault& fault : withoutHints(faultsIn(value, all))) {
      std::cerr << "matwright-cli: " << file << ": " << list << ": " << value.id.value << ": " << word(fault.field)
                << ": " << text(fault, all).toStdString() << '\n';
      fine = false;
    }
  return fine;
}

std::optional<DocumentKind> kindOf(const std::string& file) {
  const auto kind = readFile(file).and_then([&](const std::string& read) { return documentKind(read, file); });
  return kind ? std::optional(*kind) : std::nullopt;
}

// What is wrong with movements and rules beyond the form of their file. The file has no error.
bool isSound(const std::string& file, const Knowledge& knowledge) {
  const auto kind = kindOf(file);
  if (kind == DocumentKind::catalogue) {
    const auto movements = readMovements(file, knowledge);
    if (movements)
      return tell(file, *movements, with(knowledge, *movements));
    complain(movements.error());
    return false;
  }
  if (kind == DocumentKind::ownKnowledge) {
    const auto own = readOwnKnowledge(file, knowledge);
    if (!own) {
      complain(own.error());
      return false;
    }
    const Knowledge all = layered(knowledge, own->value);
    const bool movements = tell(file, own->value.movements, all);
    const bool conditions = tell(file, own->value.conditions, all, "conditions");
    const bool rules = tell(file, own->value.rules, all, "rules");
    return movements && conditions && rules;
  }
  return true;
}

} // namespace

int validateCommand(const Arguments& arguments) {
  const auto knowledge = loadKnowledge();
  if (!knowledge)
    return kBadInput;
  int code = kFine;
  for (const std::string& file : arguments.free) {
    // A class, a person or wishes are known by what their studio knows; other files stand for themselves.
    const auto kind = kindOf(file);
    const bool ofStudio =
        kind == DocumentKind::classPlan || kind == DocumentKind::person || kind == DocumentKind::wishes;
    const auto all = ofStudio ? withStudio(*knowledge, file) : knowledge;
    if (!all) {
      code = kBadInput;
      continue;
    }
    const std::vector<Error> errors = validateFile(file, &*all);
    complain(errors);
    if (errors.empty() && isSound(file, *knowledge))
      std::cout << file << ": no fault found\n";
    else
      code = kBadInput;
  }
  return code;
}

} // namespace matwright
