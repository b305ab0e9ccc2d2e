#include "core/store/PlanParts.h"

namespace matwright {
namespace {

std::string placeOfStep(StepId id) { return "/steps/" + std::to_string(id.value); }

std::vector<Variant> readVariants(const std::optional<Spot>& spot, const RestPolicy& rest) {
  std::vector<Variant> variants;
  for (const Spot& entry : readList(spot, 1, ClassPlan::kMostPeople)) {
    ObjectReader object(entry);
    Variant variant{readId<PersonId>(object.need("person")), readId<MovementId>(object.need("movement")),
                    readId<OptionId>(object.find("option"))};
    for (const Variant& other : variants)
      if (!variant.person.empty() && other.person == variant.person)
        object.note(ErrorCode::duplicateId, "person", "each person once", variant.person.value);
    rest.below(variant.person.value).applyTo(object);
    variants.push_back(std::move(variant));
  }
  return variants;
}

Json variantsJson(const std::vector<Variant>& variants, const SourceTree* kept, const std::string& place) {
  Json list = Json::array();
  for (const Variant& variant : variants) {
    Json object = {{"person", variant.person.value}, {"movement", variant.movement.value}};
    if (!variant.option.empty())
      object["option"] = variant.option.value;
    putBack(kept, place + '/' + variant.person.value, object);
    list.push_back(std::move(object));
  }
  return list;
}

} // namespace

Dose readDose(const std::optional<Spot>& spot, const RestPolicy& rest) {
  ObjectReader object(spot);
  Dose dose;
  dose.amount = static_cast<int>(readInteger(object.need("amount"), 1, Dose::kMost));
  dose.unit = readWord<DoseUnit>(object.need("unit"));
  rest.applyTo(object);
  return dose;
}

Tempo readTempo(const std::optional<Spot>& spot, const RestPolicy& rest) {
  ObjectReader object(spot);
  Tempo tempo;
  tempo.secondsPerCount =
      Seconds(readNumber(object.need("secondsPerCount"), Tempo::kFastestCount, Tempo::kSlowestCount));
  tempo.phases.clear();
  std::size_t index = 0;
  for (const Spot& entry : readList(object.need("phases"), 1, Tempo::kMostPhases)) {
    ObjectReader phase(entry);
    tempo.phases.push_back({readWord<Breath>(phase.need("breath")),
                            static_cast<int>(readInteger(phase.need("counts"), 1, Tempo::kMostCounts))});
    rest.below("phases/" + std::to_string(index++)).applyTo(phase);
  }
  rest.applyTo(object);
  return tempo;
}

Step readStep(const std::optional<Spot>& spot) {
  ObjectReader object(spot);
  Step step;
  step.id = {readInteger(object.need("id"), 1, kHighestStepId)};
  const RestPolicy rest{true, placeOfStep(step.id)};
  step.movement = readId<MovementId>(object.need("movement"));
  step.option = readId<OptionId>(object.find("option"));
  step.dose = readDose(object.need("dose"), rest.below("dose"));
  step.tempo = readTempo(object.need("tempo"), rest.below("tempo"));
  step.onlySide = findWord<Side>(object.find("onlySide"));
  step.note = readText(object.find("note"), 0, kLongestNote);
  step.variants = readVariants(object.find("variants"), rest.below("variants"));
  rest.applyTo(object);
  return step;
}

Pace readPace(const std::optional<Spot>& spot) {
  ObjectReader object(spot);
  Pace pace;
  pace.mobility = readNumber(object.need("mobility"), Pace::kLowestMobility, Pace::kHighestMobility);
  pace.wordsPerMinute = readNumber(object.need("wordsPerMinute"), Pace::kSlowestSpeech, Pace::kFastestSpeech);
  pace.settle = Seconds(readNumber(object.need("settleSeconds"), 0, Pace::kLongestSettle));
  object.keepRest("/pace");
  return pace;
}

Json doseJson(const Dose& dose, const SourceTree* kept, const std::string& place) {
  Json object = {{"amount", dose.amount}, {"unit", word(dose.unit)}};
  putBack(kept, place, object);
  return object;
}

Json tempoJson(const Tempo& tempo, const SourceTree* kept, const std::string& place) {
  Json phases = Json::array();
  for (const Phase& phase : tempo.phases) {
    Json object = {{"breath", word(phase.breath)}, {"counts", phase.counts}};
    putBack(kept, place + "/phases/" + std::to_string(phases.size()), object);
    phases.push_back(std::move(object));
  }
  Json object = {{"secondsPerCount", tempo.secondsPerCount.value()}, {"phases", std::move(phases)}};
  putBack(kept, place, object);
  return object;
}

Json stepJson(const Step& step, const SourceTree* kept) {
  const std::string place = placeOfStep(step.id);
  Json object = {{"id", step.id.value},
                 {"movement", step.movement.value},
                 {"dose", doseJson(step.dose, kept, place + "/dose")},
                 {"tempo", tempoJson(step.tempo, kept, place + "/tempo")}};
  if (!step.option.empty())
    object["option"] = step.option.value;
  if (step.onlySide)
    object["onlySide"] = word(*step.onlySide);
  if (!step.note.empty())
    object["note"] = step.note;
  if (!step.variants.empty())
    object["variants"] = variantsJson(step.variants, kept, place + "/variants");
  putBack(kept, place, object);
  return object;
}

Json paceJson(const Pace& pace, const SourceTree* kept) {
  Json object = {
      {"mobility", pace.mobility}, {"wordsPerMinute", pace.wordsPerMinute}, {"settleSeconds", pace.settle.value()}};
  putBack(kept, "/pace", object);
  return object;
}

} // namespace matwright
