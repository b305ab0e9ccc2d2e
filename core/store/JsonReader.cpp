#include "core/store/JsonReader.h"

#include "core/base/Text.h"

#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr std::size_t kLongestId = 120;      // bytes
constexpr std::size_t kLongestSaying = 4000; // bytes, of a text that is measured in words

std::string counted(std::size_t least, std::size_t most, const std::string& unit) {
  if (least == 0)
    return "at most " + std::to_string(most) + ' ' + unit;
  return std::to_string(least) + " to " + std::to_string(most) + ' ' + unit;
}

// A pointer with * for every index: one place of the format for many of the file.
std::string formatPlace(const std::string& pointer) {
  std::string place;
  for (std::size_t at = 0; at < pointer.size();) {
    const std::size_t end = std::min(pointer.find('/', at + 1), pointer.size());
    const std::string part = pointer.substr(at + 1, end - at - 1);
    place += !part.empty() && part.find_first_not_of("0123456789") == std::string::npos ? "/*" : '/' + part;
    at = end;
  }
  return place;
}

const std::string* textOf(const std::optional<Spot>& spot, const char* expected) {
  if (!spot)
    return nullptr;
  if (spot->json->is_string())
    return &spot->json->get_ref<const std::string&>();
  spot->note(ErrorCode::wrongType, expected);
  return nullptr;
}

} // namespace

void Reading::note(ErrorCode code, std::string path, std::string expected, std::string found) {
  errors.push_back({code, file, std::move(path), std::move(expected), std::move(found)});
}

void Spot::note(ErrorCode code, std::string expected) const { note(code, std::move(expected), extractOfValue(*json)); }

void Spot::note(ErrorCode code, std::string expected, std::string found) const {
  reading->note(code, path, std::move(expected), std::move(found));
}

ObjectReader::ObjectReader(const std::optional<Spot>& spot) {
  if (!spot)
    return;
  if (!spot->json->is_object()) {
    spot->note(ErrorCode::wrongType, "object");
    return;
  }
  object_ = spot->json;
  path_ = spot->path;
  reading_ = spot->reading;
}

std::optional<Spot> ObjectReader::find(const char* key) {
  if (!object_)
    return std::nullopt;
  taken_.insert(key);
  if (reading_->asked)
    reading_->asked->insert(formatPlace(pointerTo(path_, key)));
  const auto at = object_->find(key);
  if (at == object_->end())
    return std::nullopt;
  return Spot{&*at, pointerTo(path_, key), reading_};
}

std::optional<Spot> ObjectReader::need(const char* key) {
  auto spot = find(key);
  if (!spot)
    note(ErrorCode::missingKey, key, std::string("key ") + key);
  return spot;
}

void ObjectReader::note(ErrorCode code, const char* key, std::string expected, std::string found) const {
  if (object_)
    reading_->note(code, pointerTo(path_, key), std::move(expected), std::move(found));
}

void ObjectReader::refuseRest() {
  if (!object_)
    return;
  for (const auto& [key, value] : object_->items())
    if (!taken_.contains(key))
      reading_->note(ErrorCode::unknownKey, pointerTo(path_, key), "a key of the format", extractOf(key));
}

void ObjectReader::keepRest(const std::string& place) {
  if (!object_)
    return;
  Json rest = Json::object();
  for (const auto& [key, value] : object_->items())
    if (!taken_.contains(key))
      rest[key] = value;
  if (!rest.empty())
    reading_->leftovers[place] = std::move(rest);
}

std::string readText(const std::optional<Spot>& spot, std::size_t leastBytes, std::size_t mostBytes) {
  const std::string* text = textOf(spot, "text");
  if (!text)
    return {};
  if (text->size() < leastBytes || text->size() > mostBytes)
    spot->note(ErrorCode::outOfRange, "text of " + counted(leastBytes, mostBytes, "bytes"));
  return *text;
}

std::string readWords(const std::optional<Spot>& spot, int least, int most) {
  const std::string text = readText(spot, 0, kLongestSaying);
  if (!spot || !spot->json->is_string())
    return text;
  const int words = countWords(text);
  if (words < least || words > most)
    spot->note(ErrorCode::outOfRange, counted(static_cast<std::size_t>(least), static_cast<std::size_t>(most), "words"),
               std::to_string(words) + ": " + extractOf(text));
  return text;
}

std::string readIdText(const std::optional<Spot>& spot) {
  const char* const expected = "id: lower-case words joined by hyphens";
  const std::string* text = textOf(spot, expected);
  if (!text)
    return {};
  if (!isIdText(*text))
    spot->note(ErrorCode::wrongType, expected);
  else if (text->size() > kLongestId)
    spot->note(ErrorCode::outOfRange, "id of " + counted(1, kLongestId, "bytes"));
  return *text;
}

double readNumber(const std::optional<Spot>& spot, double least, double most) {
  if (!spot)
    return least;
  const std::string expected = "number from " + numberText(least) + " to " + numberText(most);
  if (!spot->json->is_number()) {
    spot->note(ErrorCode::wrongType, expected);
    return least;
  }
  const double value = spot->json->get<double>();
  if (value >= least && value <= most)
    return value == 0 ? 0.0 : value;
  spot->note(ErrorCode::outOfRange, expected);
  return least;
}

std::int64_t readInteger(const std::optional<Spot>& spot, std::int64_t least, std::int64_t most) {
  if (!spot)
    return least;
  const std::string expected = "whole number from " + std::to_string(least) + " to " + std::to_string(most);
  const Json& json = *spot->json;
  // 12.0 is a whole number too, for programs that know only one kind.
  if (!json.is_number() || (json.is_number_float() && std::trunc(json.get<double>()) != json.get<double>())) {
    spot->note(ErrorCode::wrongType, expected);
    return least;
  }
  const bool within = json.is_number_unsigned() ? json.get<std::uint64_t>() <= static_cast<std::uint64_t>(most) &&
                                                      static_cast<std::int64_t>(json.get<std::uint64_t>()) >= least
                      : json.is_number_float() ? json.get<double>() >= static_cast<double>(least) &&
                                                     json.get<double>() <= static_cast<double>(most)
                                               : json.get<std::int64_t>() >= least && json.get<std::int64_t>() <= most;
  if (within)
    return json.get<std::int64_t>();
  spot->note(ErrorCode::outOfRange, expected);
  return least;
}

bool readFlag(const std::optional<Spot>& spot) {
  if (!spot)
    return false;
  if (spot->json->is_boolean())
    return spot->json->get<bool>();
  spot->note(ErrorCode::wrongType, "true or false");
  return false;
}

Date readDate(const std::optional<Spot>& spot) {
  const char* const expected = "date like 2026-11-26";
  const std::string* text = textOf(spot, expected);
  if (!text)
    return {};
  const auto date = dateFromIso(*text);
  if (!date)
    spot->note(ErrorCode::wrongType, expected);
  return date.value_or(Date{});
}

std::vector<Spot> readList(const std::optional<Spot>& spot, std::size_t least, std::size_t most) {
  std::vector<Spot> entries;
  if (!spot)
    return entries;
  if (!spot->json->is_array()) {
    spot->note(ErrorCode::wrongType, "list");
    return entries;
  }
  if (spot->json->size() < least || spot->json->size() > most)
    spot->note(ErrorCode::outOfRange, "list of " + counted(least, most, "entries"));
  for (std::size_t i = 0; i < spot->json->size() && i < most; ++i)
    entries.push_back({&(*spot->json)[i], pointerTo(spot->path, i), spot->reading});
  return entries;
}

std::vector<std::pair<std::string, Spot>> readEntries(const std::optional<Spot>& spot) {
  std::vector<std::pair<std::string, Spot>> entries;
  if (!spot)
    return entries;
  if (!spot->json->is_object()) {
    spot->note(ErrorCode::wrongType, "object");
    return entries;
  }
  for (const auto& [key, value] : spot->json->items())
    entries.emplace_back(key, Spot{&value, pointerTo(spot->path, key), spot->reading});
  return entries;
}

std::string oneOf(const std::string_view* words, std::size_t count) {
  constexpr std::size_t kMostNamed = 15;
  std::string text = "one of ";
  for (std::size_t i = 0; i < count && i < kMostNamed; ++i)
    text += (i ? ", " : "") + std::string(words[i]);
  return count <= kMostNamed ? text : text + ", ... (" + std::to_string(count) + " words)";
}

} // namespace matwright
