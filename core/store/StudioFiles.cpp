#include "core/store/KnowledgeParts.h"
#include "core/store/Store.h"

#include <algorithm>
#include <unordered_set>

namespace matwright {
namespace {

namespace fs = std::filesystem;

template <class Value>
Result<Stored<Value>> readDocument(const fs::path& file,
                                   Result<Stored<Value>> (*parse)(std::string_view, const std::string&)) {
  return readFile(file).and_then([&](const std::string& text) { return parse(text, file.string()); });
}

} // namespace

Result<Stored<ClassPlan>> readClass(const fs::path& file) { return readDocument(file, parseClass); }
Result<Stored<Person>> readPerson(const fs::path& file) { return readDocument(file, parsePerson); }
Result<Stored<Studio>> readStudio(const fs::path& file) { return readDocument(file, parseStudio); }
Result<Stored<ClassWishes>> readWishes(const fs::path& file) { return readDocument(file, parseWishes); }

PeopleFolder readPeople(const fs::path& folder) {
  PeopleFolder found;
  const auto files = jsonFilesIn(folder);
  if (!files) {
    found.errors.push_back(files.error());
    return found;
  }
  std::unordered_set<PersonId> seen;
  for (const fs::path& file : *files) {
    auto person = readPerson(file);
    if (!person)
      found.errors.push_back(person.error());
    else if (!seen.insert(person->value.id).second)
      found.errors.push_back(
          {ErrorCode::duplicateId, file.string(), "/id", "each person in one file", person->value.id.value});
    else
      found.people.push_back(std::move(*person));
  }
  std::sort(found.people.begin(), found.people.end(), [](const Stored<Person>& one, const Stored<Person>& other) {
    return std::tie(one.value.name, one.value.id) < std::tie(other.value.name, other.value.id);
  });
  return found;
}

} // namespace matwright
