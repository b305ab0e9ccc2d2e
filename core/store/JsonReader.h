// Strict decoding of JSON trees. Whatever is wrong is noted with its place, and decoding goes on with a harmless value,
// so that one pass finds all errors; a decoded value is good only when nothing was noted.
#pragma once

#include "core/base/Date.h"
#include "core/base/EnumSet.h"
#include "core/base/Id.h"
#include "core/store/JsonText.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace matwright {

// What comes of decoding one text, beside its value.
struct Reading {
  std::string file;
  std::vector<Error> errors;
  std::map<std::string, Json> leftovers; // keys that were not asked for, by the place given to ObjectReader::keepRest
  // When set, gets every key that is asked for, as a pointer with * for an index: what the format knows.
  std::set<std::string>* asked = nullptr;

  void note(ErrorCode code, std::string path, std::string expected, std::string found = {});
};

// A value of the tree and where it stands. Refers to tree and reading, which must outlive it.
struct Spot {
  const Json* json;
  std::string path;
  Reading* reading;

  void note(ErrorCode code, std::string expected) const;
  void note(ErrorCode code, std::string expected, std::string found) const;
};

// The keys of one object. Asking for a key takes it; what nobody took is the rest.
class ObjectReader {
public:
  // Without a spot, or when it is no object, every key is absent and nothing more is noted.
  explicit ObjectReader(const std::optional<Spot>& spot);

  // False when the spot is no object.
  explicit operator bool() const { return object_ != nullptr; }
  std::optional<Spot> need(const char* key); // notes missingKey
  std::optional<Spot> find(const char* key); // for keys that may be absent
  void note(ErrorCode code, const char* key, std::string expected, std::string found = {}) const;

  void refuseRest();                       // each is an unknownKey
  void keepRest(const std::string& place); // into Reading::leftovers

private:
  const Json* object_ = nullptr;
  std::string path_;
  Reading* reading_ = nullptr;
  std::set<std::string, std::less<>> taken_;
};

// All of these give a harmless value for an absent spot (about which need() has spoken already).
std::string readText(const std::optional<Spot>& spot, std::size_t leastBytes, std::size_t mostBytes);
std::string readWords(const std::optional<Spot>& spot, int least, int most); // text measured in words
std::string readIdText(const std::optional<Spot>& spot);
double readNumber(const std::optional<Spot>& spot, double least, double most);
std::int64_t readInteger(const std::optional<Spot>& spot, std::int64_t least, std::int64_t most);
bool readFlag(const std::optional<Spot>& spot);
Date readDate(const std::optional<Spot>& spot);
// The entries of a list, whose length is checked; none beyond `most`.
std::vector<Spot> readList(const std::optional<Spot>& spot, std::size_t least, std::size_t most);
// The entries of an object whose keys are not fixed.
std::vector<std::pair<std::string, Spot>> readEntries(const std::optional<Spot>& spot);

std::string oneOf(const std::string_view* words, std::size_t count);

template <class Enum> std::optional<Enum> findWord(const std::optional<Spot>& spot) {
  if (!spot)
    return std::nullopt;
  if (!spot->json->is_string()) {
    spot->note(ErrorCode::wrongType, "text");
    return std::nullopt;
  }
  const auto value = fromWord<Enum>(spot->json->template get_ref<const std::string&>());
  if (!value)
    spot->note(ErrorCode::unknownWord, oneOf(Words<Enum>::list.data(), kWordCount<Enum>));
  return value;
}

template <class Enum> Enum readWord(const std::optional<Spot>& spot) { return findWord<Enum>(spot).value_or(Enum{}); }

// A list of different words, in their order.
template <class Enum> std::vector<Enum> readWordList(const std::optional<Spot>& spot, std::size_t least) {
  std::vector<Enum> values;
  EnumSet<Enum> seen;
  for (const Spot& entry : readList(spot, least, kWordCount<Enum>)) {
    const auto value = findWord<Enum>(entry);
    if (!value)
      continue;
    if (seen.contains(*value))
      entry.note(ErrorCode::duplicateId, "each word once");
    seen.insert(*value);
    values.push_back(*value);
  }
  return values;
}

template <class Enum> EnumSet<Enum> readWordSet(const std::optional<Spot>& spot, std::size_t least = 0) {
  EnumSet<Enum> set;
  for (const Enum value : readWordList<Enum>(spot, least))
    set.insert(value);
  return set;
}

template <class AnyId> AnyId readId(const std::optional<Spot>& spot) { return AnyId{readIdText(spot)}; }

} // namespace matwright
