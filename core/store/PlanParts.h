// Doses, tempos and steps as JSON: the parts that classes, the clipboard and the catalogue share.
#pragma once

#include "core/plan/ClassPlan.h"
#include "core/store/Kept.h"

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

Json doseJson(const Dose& dose, const SourceTree* kept, const std::string& place);
Json tempoJson(const Tempo& tempo, const SourceTree* kept, const std::string& place);
Json stepJson(const Step& step, const SourceTree* kept);

} // namespace matwright
