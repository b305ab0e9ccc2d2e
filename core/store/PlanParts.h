// Doses, tempos, steps, paces and lists of ids as JSON: the parts that classes, wishes, the clipboard and the catalogue
// share.
#pragma once

#include "core/plan/ClassPlan.h"
#include "core/store/Kept.h"

#include <unordered_set>

namespace matwright {

// Ids stay exact in every program that reads JSON numbers as doubles.
inline constexpr std::int64_t kHighestStepId = (std::int64_t{1} << 53) - 1;

// Whether keys that the format does not know are errors, or are kept (and then where).
struct RestPolicy {
  bool keep = false;
  std::string place;

  RestPolicy below(const std::string& part) const { return {keep, place + '/' + part}; }
  void applyTo(ObjectReader& object) const { keep ? object.keepRest(place) : object.refuseRest(); }
};

Dose readDose(const std::optional<Spot>& spot, const RestPolicy& rest);
Tempo readTempo(const std::optional<Spot>& spot, const RestPolicy& rest);
Step readStep(const std::optional<Spot>& spot);
Pace readPace(const std::optional<Spot>& spot); // keeps what it does not know under /pace

// `once`: what is expected of an id that stands twice.
template <class AnyId>
std::vector<AnyId> readIdsOnce(const std::optional<Spot>& spot, std::size_t most, const char* once) {
  std::vector<AnyId> ids;
  std::unordered_set<AnyId> seen;
  for (const Spot& entry : readList(spot, 0, most)) {
    ids.push_back(readId<AnyId>(entry));
    if (!ids.back().empty() && !seen.insert(ids.back()).second)
      entry.note(ErrorCode::duplicateId, once);
  }
  return ids;
}

Json doseJson(const Dose& dose, const SourceTree* kept, const std::string& place);
Json tempoJson(const Tempo& tempo, const SourceTree* kept, const std::string& place);
Json stepJson(const Step& step, const SourceTree* kept);
Json paceJson(const Pace& pace, const SourceTree* kept);

template <class AnyId> Json idsJson(const std::vector<AnyId>& ids) {
  Json list = Json::array();
  for (const AnyId& id : ids)
    list.push_back(id.value);
  return list;
}

} // namespace matwright
