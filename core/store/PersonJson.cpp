#include "core/store/PersonJson.h"

#include "core/plan/ClassPlan.h"
#include "core/store/Store.h"

#include <algorithm>

namespace matwright {
namespace {

constexpr std::size_t kMostConditions = 100;
constexpr std::size_t kMostClearances = 100;

// Counts the conditions of a person by name: the same one may be there twice, say in either knee.
class ConditionPlaces {
public:
  std::string next(const ConditionId& condition) {
    return "/conditions/" + condition.value + '/' + std::to_string(counts_[condition]++);
  }

private:
  std::map<ConditionId, int> counts_;
};

bool looksLikeDate(const std::string& text) {
  if (text.size() != 10)
    return false;
  for (std::size_t i = 0; i < text.size(); ++i)
    if (i == 4 || i == 7 ? text[i] != '-' : text[i] < '0' || text[i] > '9')
      return false;
  return true;
}

QualifierValue readQualifier(const Spot& spot) {
  const char* const expected = "true, false, a choice or a date like 2026-11-26";
  if (spot.json->is_boolean())
    return spot.json->get<bool>();
  if (!spot.json->is_string()) {
    spot.note(ErrorCode::wrongType, expected);
    return false;
  }
  const std::string text = readText(spot, 1, kLongestName);
  if (!looksLikeDate(text))
    return text;
  return readDate(spot);
}

Clearance readClearance(const Spot& spot, const std::string& place) {
  ObjectReader object(spot);
  Clearance clearance;
  clearance.given = readDate(object.need("given"));
  if (const auto until = object.find("until"))
    clearance.until = readDate(until);
  clearance.by = readText(object.need("by"), 0, kLongestName);
  clearance.features = readWordSet<Feature>(object.need("features"));
  if (const auto sets = object.find("sets"))
    clearance.sets = readWord<Level>(sets);
  clearance.note = readText(object.find("note"), 0, kLongestNote);
  object.keepRest(place);
  return clearance;
}

PersonCondition readCondition(const Spot& spot, ConditionPlaces& places) {
  ObjectReader object(spot);
  PersonCondition condition;
  condition.condition = readId<ConditionId>(object.need("condition"));
  const std::string place = places.next(condition.condition);
  for (const auto& [key, value] : readEntries(object.need("qualifiers"))) {
    if (key.empty() || key.size() > kLongestName)
      value.note(ErrorCode::outOfRange, "qualifier of 1 to " + std::to_string(kLongestName) + " bytes", extractOf(key));
    condition.qualifiers.emplace(key, readQualifier(value));
  }
  for (const Spot& entry : readList(object.need("clearances"), 0, kMostClearances))
    condition.clearances.push_back(
        readClearance(entry, place + "/clearances/" + std::to_string(condition.clearances.size())));
  condition.note = readText(object.find("note"), 0, kLongestNote);
  object.keepRest(place);
  return condition;
}

Json qualifierJson(const QualifierValue& value) {
  if (const bool* flag = std::get_if<bool>(&value))
    return *flag;
  if (const std::string* choice = std::get_if<std::string>(&value))
    return *choice;
  return isoDate(std::get<Date>(value));
}

Json clearanceJson(const Clearance& clearance, const SourceTree* kept, const std::string& place) {
  Json features = Json::array();
  clearance.features.forEach([&](Feature feature) { features.push_back(word(feature)); });
  Json object = {{"given", isoDate(clearance.given)}, {"by", clearance.by}, {"features", std::move(features)}};
  if (clearance.until)
    object["until"] = isoDate(*clearance.until);
  if (clearance.sets)
    object["sets"] = word(*clearance.sets);
  if (!clearance.note.empty())
    object["note"] = clearance.note;
  putBack(kept, place, object);
  return object;
}

Json conditionJson(const PersonCondition& condition, const SourceTree* kept, const std::string& place) {
  Json qualifiers = Json::object();
  for (const auto& [key, value] : condition.qualifiers)
    qualifiers[key] = qualifierJson(value);
  Json clearances = Json::array();
  for (const Clearance& clearance : condition.clearances)
    clearances.push_back(clearanceJson(clearance, kept, place + "/clearances/" + std::to_string(clearances.size())));
  Json object = {{"condition", condition.condition.value},
                 {"qualifiers", std::move(qualifiers)},
                 {"clearances", std::move(clearances)}};
  if (!condition.note.empty())
    object["note"] = condition.note;
  putBack(kept, place, object);
  return object;
}

} // namespace

Person readPersonTree(const Json& tree, Reading& reading) {
  ObjectReader root(Spot{&tree, {}, &reading});
  takeFrame(root);
  Person person;
  person.id = readId<PersonId>(root.need("id"));
  person.name = readText(root.need("name"), 1, kLongestName);
  person.initials = readText(root.need("initials"), 0, kLongestName);
  if (const auto band = root.find("ageBand"))
    person.ageBand = readWord<AgeBand>(band);
  if (const auto stature = root.find("stature"))
    person.stature = readNumber(stature, Person::kShortest, Person::kTallest);
  if (const auto mass = root.find("mass"))
    person.mass = readNumber(mass, Person::kLightest, Person::kHeaviest);
  person.wishes = readText(root.find("wishes"), 0, kLongestNote);
  ConditionPlaces places;
  for (const Spot& entry : readList(root.need("conditions"), 0, kMostConditions))
    person.conditions.push_back(readCondition(entry, places));
  person.note = readText(root.find("note"), 0, kLongestNote);
  root.keepRest("");
  return person;
}

Result<Stored<Person>> parsePerson(std::string_view text, const std::string& file) {
  const auto tree = openTree(text, file, kPersonFormat);
  if (!tree)
    return failure(tree.error());
  Reading reading{file, {}, {}, nullptr};
  Person person = readPersonTree(*tree, reading);
  return stored(std::move(person), reading, text);
}

std::string personText(const Person& person, const KeptTree& kept) {
  Json root = framed(kPersonFormat);
  root["id"] = person.id.value;
  root["name"] = person.name;
  root["initials"] = person.initials;
  if (person.ageBand)
    root["ageBand"] = word(*person.ageBand);
  if (person.stature)
    root["stature"] = *person.stature;
  if (person.mass)
    root["mass"] = *person.mass;
  if (!person.wishes.empty())
    root["wishes"] = person.wishes;
  ConditionPlaces places;
  Json conditions = Json::array();
  for (const PersonCondition& condition : person.conditions)
    conditions.push_back(conditionJson(condition, kept.get(), places.next(condition.condition)));
  root["conditions"] = std::move(conditions);
  if (!person.note.empty())
    root["note"] = person.note;
  putBack(kept.get(), "", root);
  return canonicalText(root);
}

} // namespace matwright
