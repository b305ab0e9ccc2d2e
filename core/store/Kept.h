// Keys of a document that this version does not know, and how they come back when it is written.
#pragma once

#include "core/store/Document.h"
#include "core/store/Store.h"

#include <map>
#include <string>

namespace matwright {

// By the place of the thing they belong to: a pointer in which a step stands as /steps/<id>, a condition of a person as
// /conditions/<condition>/<which of that name>, and sections, phases and clearances by index.
class SourceTree {
public:
  explicit SourceTree(std::map<std::string, Json> leftovers) : leftovers_(std::move(leftovers)) {}

  // Adds to `object` what belonged to the thing at `place`.
  void putBack(const std::string& place, Json& object) const;

private:
  std::map<std::string, Json> leftovers_;
};

void putBack(const SourceTree* kept, const std::string& place, Json& object); // kept may be null

// The value with all that goes with it, or the first error of the reading.
template <class Value> Result<Stored<Value>> stored(Value value, Reading& reading, std::string_view text) {
  if (!reading.errors.empty())
    return failure(std::move(reading.errors.front()));
  return Stored<Value>{std::move(value), std::make_shared<const SourceTree>(std::move(reading.leftovers)),
                       fingerprintOf(text)};
}

} // namespace matwright
