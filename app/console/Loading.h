#pragma once

#include "core/evaluate/Evaluation.h"
#include "core/store/Store.h"

#include <optional>
#include <string>
#include <vector>

namespace matwright {

// Prints errors one a line to the standard error.
void complain(const std::vector<Error>& errors);
void complain(const Error& error);

// The knowledge that comes with the program; complains and gives nothing when it cannot be read.
std::optional<Knowledge> loadKnowledge();

// The same with what the studio knows of its own that a class, a person or wishes belong to, when it knows anything.
// Complains and gives nothing when that cannot be read: without it a class would be checked by other rules than its
// teacher's.
std::optional<Knowledge> loadKnowledgeFor(const std::string& file);
std::optional<Knowledge> withStudio(const Knowledge& builtIn, const std::string& file);

Date today();

// People from the files `people`, who then are `who` comes; when there are none, everybody of the studio that the file
// belongs to, and `who` stays. Complains and gives nothing when a file cannot be read.
std::optional<std::vector<Person>> loadRoster(const std::string& file, const std::vector<std::string>& people,
                                              std::vector<PersonId>& who);

// A class with the people named on the command line, or else those of its studio.
struct LoadedClass {
  ClassPlan plan;
  std::vector<Person> roster;
  Date day; // the class's date, or today
};

// `people`: person files. When there are any, they are who comes to the class; otherwise the people whom the class
// names are looked for in <studio>/people. Complains and gives nothing when a file cannot be read.
std::optional<LoadedClass> loadClass(const std::string& file, const std::vector<std::string>& people);

} // namespace matwright
