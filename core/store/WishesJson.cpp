#include "core/store/WishesJson.h"

#include "core/store/PlanParts.h"
#include "core/store/Store.h"

#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr const char* kEachMovementOnce = "each movement once";
constexpr Seconds kLongestSection = ClassPlan::kLongestTarget + Seconds(1); // they may miss the class by that

std::string placeOf(const char* list, std::size_t index) { return pointerTo(pointerTo("", list), index); }

template <class Enum> Json wordsJson(EnumSet<Enum> set) {
  Json words = Json::array();
  set.forEach([&](Enum value) { words.push_back(word(value)); });
  return words;
}

ClassFocus readFocus(const std::optional<Spot>& spot) {
  ObjectReader object(spot);
  ClassFocus focus{readWordSet<Region>(object.find("regions")), readWordSet<SpineAction>(object.find("spine")),
                   readWordSet<Feature>(object.find("skills"))};
  object.keepRest("/focus");
  return focus;
}

std::vector<WishedSection> readSections(const std::optional<Spot>& spot) {
  std::vector<WishedSection> sections;
  for (const Spot& entry : readList(spot, 1, ClassPlan::kMostSections)) {
    ObjectReader object(entry);
    const std::string name = readText(object.find("name"), 0, kLongestName);
    const Seconds length(readNumber(object.find("lengthSeconds"), 0, kLongestSection.value()));
    object.keepRest(placeOf("sections", sections.size()));
    sections.push_back({name, length});
  }
  return sections;
}

std::vector<MovementId> readMovements(const std::optional<Spot>& spot) {
  return readIdsOnce<MovementId>(spot, ClassWishes::kMostNamed, kEachMovementOnce);
}

std::vector<RecentClass> readRecent(const std::optional<Spot>& spot) {
  std::vector<RecentClass> recent;
  for (const Spot& entry : readList(spot, 0, ClassWishes::kMostRecent)) {
    ObjectReader object(entry);
    std::string name = readText(object.find("name"), 0, kLongestName);
    auto movements = readIdsOnce<MovementId>(object.need("movements"), ClassPlan::kMostSteps, kEachMovementOnce);
    object.keepRest(placeOf("recent", recent.size()));
    recent.push_back({std::move(name), std::move(movements)});
  }
  return recent;
}

EffortArc readArc(const Spot& spot) {
  EffortArc arc;
  double before = 0;
  for (const Spot& entry : readList(spot, 1, ClassWishes::kMostArcPoints)) {
    ObjectReader object(entry);
    const double at = readNumber(object.need("at"), before, 1);
    arc.push_back({at, readNumber(object.need("effort"), 0, Effort::kHighest)});
    before = std::max(before, at);
    object.keepRest(placeOf("arc", arc.size() - 1));
  }
  return arc;
}

// The lengths of sections against one another and against that of the class; without one, it is as long as they are.
void settleLengths(bool lengthGiven, ClassWishes& wishes, Reading& reading) {
  Seconds sum;
  for (const WishedSection& section : wishes.sections)
    sum += section.length;
  if (sum == Seconds{})
    return;
  bool all = true;
  for (std::size_t i = 0; i < wishes.sections.size(); ++i)
    if (wishes.sections[i].length == Seconds{}) {
      reading.note(ErrorCode::missingKey, pointerTo(placeOf("sections", i), "lengthSeconds"),
                   "a length, as other sections have one");
      all = false;
    }
  if (!all)
    return;
  if (!lengthGiven)
    wishes.length = sum;
  const auto fault = faultIn(wishes);
  if (fault == WishesFault::lengthOutOfRange)
    reading.note(ErrorCode::outOfRange, "/sections",
                 "sections of " + numberText(ClassPlan::kShortestTarget.value()) + " to " +
                     numberText(ClassPlan::kLongestTarget.value()) + " s together",
                 numberText(sum.value()) + " s");
  else if (fault == WishesFault::sectionLengths)
    reading.note(ErrorCode::outOfRange, "/lengthSeconds",
                 "as long as the sections together, " + numberText(sum.value()), numberText(wishes.length.value()));
}

} // namespace

ClassWishes readWishesTree(const Json& tree, Reading& reading) {
  ObjectReader root(Spot{&tree, {}, &reading});
  takeFrame(root);
  ClassWishes wishes;
  wishes.name = readText(root.find("name"), 0, kLongestName);
  if (const auto date = root.find("date"))
    wishes.date = readDate(date);
  const std::size_t before = reading.errors.size();
  const auto length = root.find("lengthSeconds");
  if (length)
    wishes.length = Seconds(readNumber(length, ClassPlan::kShortestTarget.value(), ClassPlan::kLongestTarget.value()));
  if (const auto sections = root.find("sections")) {
    wishes.sections = readSections(sections);
    if (reading.errors.size() == before)
      settleLengths(length.has_value(), wishes, reading);
  } else {
    wishes.sections = usualSections(wishes.length);
  }
  if (const auto challenge = root.find("challenge"))
    wishes.challenge = readWord<Challenge>(challenge);
  wishes.focus = readFocus(root.find("focus"));
  wishes.props = readWordSet<Prop>(root.find("props"));
  if (const auto wall = root.find("wall"))
    wishes.wall = readFlag(wall);
  wishes.people = readIdsOnce<PersonId>(root.find("people"), ClassPlan::kMostPeople, "each person once");
  if (const auto pace = root.find("pace"))
    wishes.pace = readPace(pace);
  wishes.include = readMovements(root.find("include"));
  wishes.leaveOut = readMovements(root.find("leaveOut"));
  wishes.recent = readRecent(root.find("recent"));
  wishes.known = readMovements(root.find("known"));
  if (const auto known = root.find("recentIsKnown"))
    wishes.recentIsKnown = readFlag(known);
  if (const auto arc = root.find("arc"))
    wishes.arc = readArc(*arc);
  wishes.fewerRises = readFlag(root.find("fewerRises"));
  if (const auto seed = root.find("seed"))
    wishes.seed = static_cast<std::uint64_t>(readInteger(seed, 0, kHighestSeed));
  root.keepRest("");
  return wishes;
}

Result<Stored<ClassWishes>> parseWishes(std::string_view text, const std::string& file) {
  const auto tree = openTree(text, file, kWishesFormat);
  if (!tree)
    return failure(tree.error());
  Reading reading{file, {}, {}, nullptr};
  ClassWishes wishes = readWishesTree(*tree, reading);
  return stored(std::move(wishes), reading, text);
}

std::string wishesText(const ClassWishes& wishes, const KeptTree& kept) {
  Json root = framed(kWishesFormat);
  root["name"] = wishes.name;
  if (wishes.date)
    root["date"] = isoDate(*wishes.date);
  root["lengthSeconds"] = wishes.length.value();
  root["challenge"] = word(wishes.challenge);
  Json focus = {{"regions", wordsJson(wishes.focus.regions)},
                {"spine", wordsJson(wishes.focus.spine)},
                {"skills", wordsJson(wishes.focus.skills)}};
  putBack(kept.get(), "/focus", focus);
  root["focus"] = std::move(focus);
  Json sections = Json::array();
  for (const WishedSection& section : wishes.sections) {
    Json object = {{"name", section.name}};
    if (section.length > Seconds{})
      object["lengthSeconds"] = section.length.value();
    putBack(kept.get(), placeOf("sections", sections.size()), object);
    sections.push_back(std::move(object));
  }
  root["sections"] = std::move(sections);
  root["props"] = wordsJson(wishes.props);
  root["wall"] = wishes.wall;
  root["people"] = idsJson(wishes.people);
  root["pace"] = paceJson(wishes.pace, kept.get());
  root["include"] = idsJson(wishes.include);
  root["leaveOut"] = idsJson(wishes.leaveOut);
  Json recent = Json::array();
  for (const RecentClass& each : wishes.recent) {
    Json object = {{"name", each.name}, {"movements", idsJson(each.movements)}};
    putBack(kept.get(), placeOf("recent", recent.size()), object);
    recent.push_back(std::move(object));
  }
  root["recent"] = std::move(recent);
  root["known"] = idsJson(wishes.known);
  root["recentIsKnown"] = wishes.recentIsKnown;
  Json arc = Json::array();
  for (const ArcPoint& point : wishes.arc) {
    Json object = {{"at", point.at}, {"effort", point.effort}};
    putBack(kept.get(), placeOf("arc", arc.size()), object);
    arc.push_back(std::move(object));
  }
  root["arc"] = std::move(arc);
  root["fewerRises"] = wishes.fewerRises;
  root["seed"] = wishes.seed;
  putBack(kept.get(), "", root);
  return canonicalText(root);
}

} // namespace matwright
