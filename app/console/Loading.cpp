#include "app/console/Loading.h"

#include "core/store/Resources.h"
#include "ui/text/ErrorText.h"

#include <iostream>

namespace matwright {

namespace {

// Of a class in <studio>/classes, a person in <studio>/people or wishes in <studio>/wishes; of a file elsewhere the
// folder it lies in.
std::filesystem::path studioOf(const std::string& file) {
  const std::filesystem::path folder = std::filesystem::absolute(file).parent_path();
  const std::filesystem::path name = folder.filename();
  return name == "classes" || name == "people" || name == "wishes" ? folder.parent_path() : folder;
}

} // namespace

void complain(const Error& error) { std::cerr << "matwright-cli: " << text(error).toStdString() << '\n'; }

void complain(const std::vector<Error>& errors) {
  for (const Error& error : errors)
    complain(error);
}

std::optional<Knowledge> loadKnowledge() {
  const auto folder = findResources(thisExecutable());
  if (!folder) {
    std::cerr << "matwright-cli: the catalogue that belongs to the program was not found\n";
    return std::nullopt;
  }
  auto knowledge = readKnowledge(*folder);
  if (!knowledge) {
    complain(knowledge.error());
    return std::nullopt;
  }
  return std::move(*knowledge);
}

std::optional<Knowledge> withStudio(const Knowledge& builtIn, const std::string& file) {
  const std::filesystem::path own = studioOf(file) / "knowledge.json";
  std::error_code fault;
  if (!std::filesystem::exists(own, fault))
    return builtIn;
  const auto read = readOwnKnowledge(own, builtIn);
  if (!read) {
    complain(read.error());
    return std::nullopt;
  }
  return layered(builtIn, read->value);
}

std::optional<Knowledge> loadKnowledgeFor(const std::string& file) {
  const auto builtIn = loadKnowledge();
  return builtIn ? withStudio(*builtIn, file) : std::nullopt;
}

Date today() { return Date{std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now())}; }

std::optional<std::vector<Person>> loadRoster(const std::string& file, const std::vector<std::string>& people,
                                              std::vector<PersonId>& who) {
  std::vector<Person> roster;
  if (people.empty()) {
    const std::filesystem::path folder = studioOf(file) / "people";
    std::error_code fault;
    if (!std::filesystem::is_directory(folder, fault))
      return roster;
    PeopleFolder found = readPeople(folder);
    complain(found.errors);
    if (!found.errors.empty())
      return std::nullopt;
    for (Stored<Person>& person : found.people)
      roster.push_back(std::move(person.value));
    return roster;
  }
  who.clear();
  for (const std::string& name : people) {
    auto person = readPerson(name);
    if (!person) {
      complain(person.error());
      return std::nullopt;
    }
    const PersonId id = person->value.id;
    for (const PersonId& known : who)
      if (known == id) {
        complain(Error{ErrorCode::duplicateId, name, "/id", "an id of its own", id.value});
        return std::nullopt;
      }
    who.push_back(id);
    roster.push_back(std::move(person->value));
  }
  return roster;
}

std::optional<LoadedClass> loadClass(const std::string& file, const std::vector<std::string>& people) {
  auto read = readClass(file);
  if (!read) {
    complain(read.error());
    return std::nullopt;
  }
  LoadedClass loaded{std::move(read->value), {}, {}};
  loaded.day = loaded.plan.date.value_or(today());
  auto roster = loadRoster(file, people, loaded.plan.people);
  if (!roster)
    return std::nullopt;
  loaded.roster = std::move(*roster);
  return loaded;
}

} // namespace matwright
