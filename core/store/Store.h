// The documents of a studio in files: classes, people, the studio itself, and the knowledge that comes with the
// program. JSON stays behind this room.
#pragma once

#include "core/knowledge/OwnKnowledge.h"
#include "core/plan/ClassWishes.h"
#include "core/store/Files.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace matwright {

// The tree that a document was read from; keys that this version does not know survive in it until the next write.
class SourceTree;
using KeptTree = std::shared_ptr<const SourceTree>;

template <class Value> struct Stored {
  Value value;
  KeptTree kept;           // null for a new document
  Fingerprint fingerprint; // of the bytes it was read from or written as
};

// What a studio is called and how it is set up; studio.json.
struct Studio {
  std::string name;
  std::string note;
  friend bool operator==(const Studio&, const Studio&) = default;
};

inline constexpr int kClassVersion = 1;
inline constexpr int kPersonVersion = 1;
inline constexpr int kStudioVersion = 1;
inline constexpr int kOwnKnowledgeVersion = 1;
inline constexpr int kWishesVersion = 1;

// Knowledge from a folder laid out as resources/ (positions/, catalogue/, screening/). Strict: unknown keys are errors,
// every reference is checked. All errors found are given, not only the first.
Result<Knowledge, std::vector<Error>> readKnowledge(const std::filesystem::path& folder);

// The movements of one file of a catalogue, for those who write it. Positions are those of `beside`; movements that
// they name may stand anywhere.
Result<std::vector<Movement>, std::vector<Error>> readMovements(const std::filesystem::path& file,
                                                                const Knowledge& beside);

// What a studio knows of its own: `knowledge.json` of a studio, and what teachers give each other. Ids must begin with
// kOwnPrefix, every reference must go to what stands there or comes with the program, and unknown keys are kept at the
// root alone. Thresholds are not held against the rules. All errors found are given.
Result<Stored<OwnKnowledge>, std::vector<Error>> parseOwnKnowledge(std::string_view text, const std::string& file,
                                                                   const Knowledge& builtIn);
Result<Stored<OwnKnowledge>, std::vector<Error>> readOwnKnowledge(const std::filesystem::path& file,
                                                                  const Knowledge& builtIn);
std::string ownKnowledgeText(const OwnKnowledge& own, const KeptTree& kept = nullptr); // canonical, as below

// Documents: newer versions are refused, older ones are migrated, unknown keys are kept, everything known is checked
// and named by path. References into the catalogue are not checked: an unknown movement keeps its place.
Result<Stored<ClassPlan>> parseClass(std::string_view text, const std::string& file);
Result<Stored<Person>> parsePerson(std::string_view text, const std::string& file);
Result<Stored<Studio>> parseStudio(std::string_view text, const std::string& file);

// What a teacher wishes of a class, alike; what is not said is as in ClassWishes, but for the sections: without any,
// the usual ones. Where sections have lengths and the class has none, it is as long as they are together. faultIn()
// finds nothing in what was read.
Result<Stored<ClassWishes>> parseWishes(std::string_view text, const std::string& file);

// The highest seed that a file can hold: exact in every program that reads JSON numbers as doubles.
inline constexpr std::int64_t kHighestSeed = (std::int64_t{1} << 53) - 1;

// Canonical text: keys sorted, two spaces, C locale, newline at the end; the same value gives the same bytes. Unknown
// keys of `kept` are put back where the thing they belonged to still is (steps by id, sections and phases by place).
// Wishes have no fault, name nothing twice in one list, and have a seed up to kHighestSeed.
std::string classText(const ClassPlan& plan, const KeptTree& kept = nullptr);
std::string personText(const Person& person, const KeptTree& kept = nullptr);
std::string studioText(const Studio& studio, const KeptTree& kept = nullptr);
std::string wishesText(const ClassWishes& wishes, const KeptTree& kept = nullptr);

// Steps as text for the clipboard, and back. Ids are not meant to be kept: who pastes mints new ones.
std::string stepsText(const std::vector<Step>& steps);
Result<std::vector<Step>> parseSteps(std::string_view text);

Result<Stored<ClassPlan>> readClass(const std::filesystem::path& file);
Result<Stored<Person>> readPerson(const std::filesystem::path& file);
Result<Stored<Studio>> readStudio(const std::filesystem::path& file);
Result<Stored<ClassWishes>> readWishes(const std::filesystem::path& file);

// All people of a folder (one file each, *.json), ordered by name then id. A broken file does not hide the others.
struct PeopleFolder {
  std::vector<Stored<Person>> people;
  std::vector<Error> errors;
};
PeopleFolder readPeople(const std::filesystem::path& folder);

enum class DocumentKind {
  classPlan,
  person,
  studio,
  ownKnowledge,
  wishes,
  positions,
  changes,
  catalogue,
  conditions,
  sources,
  rules,
  redFlags,
  measuredLoads
};

// Which kind of file the text says it is by its root `format`; an Error when it is not JSON or says something unknown.
Result<DocumentKind> documentKind(std::string_view text, const std::string& file);

// Every error in one file of any kind, on its own (references into other files are not checked, except that a class, a
// person, wishes or own knowledge are also held against `knowledge` when that is given). Empty: nothing found.
std::vector<Error> validateFile(const std::filesystem::path& file, const Knowledge* knowledge);

} // namespace matwright
