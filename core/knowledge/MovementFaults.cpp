#include "core/figure/JointLimits.h"
#include "core/figure/Settle.h"
#include "core/knowledge/FaultList.h"
#include "core/knowledge/Shape.h"

#include <cctype>
#include <unordered_set>

namespace matwright {
namespace {

constexpr double kTouches = 0.001 / 1.75;           // statures: a millimetre
constexpr double kStretchedFor = 30, kHeldFor = 20; // seconds of work on one side

FeatureSet positionFeatures(const Movement& movement, const Knowledge& knowledge) {
  FeatureSet features;
  for (const PositionId& id : {movement.start, movement.end})
    if (const Position* position = knowledge.transitions.find(id))
      features |= position->features;
  return features;
}

// The movement as written, or in one of its options, with what both ask of the body.
struct Variant {
  const Movement& movement;
  const Option* option; // null: as written
  FeatureSet own;       // that the movement says itself
  FeatureSet all;       // with those of its positions
};

Variant variantOf(const Movement& movement, const Option* option, FeatureSet places) {
  if (!option)
    return {movement, option, movement.features, movement.features | places};
  return {movement, option, movement.features.without(option->removes) | option->adds,
          (movement.features | places).without(option->removes) | option->adds};
}

void checkDose(FaultList& faults, const Dose& dose) {
  if (!isWellFormed(dose))
    FaultList::compare(faults.add(FaultKind::outOfRange, Field::dose), dose.amount, Dose::kMost);
}

void checkTempo(FaultList& faults, const Tempo& tempo) {
  const double count = tempo.secondsPerCount.value();
  if (!(count >= Tempo::kFastestCount && count <= Tempo::kSlowestCount))
    FaultList::compare(faults.add(FaultKind::outOfRange, Field::tempo), count,
                       count > Tempo::kSlowestCount ? Tempo::kSlowestCount : Tempo::kFastestCount);
  if (tempo.phases.empty())
    faults.add(FaultKind::empty, Field::tempo);
  faults.entries(Field::tempo, tempo.phases.size(), Tempo::kMostPhases);
  for (std::size_t i = 0; i < tempo.phases.size(); ++i)
    if (const int counts = tempo.phases[i].counts; counts < 1 || counts > Tempo::kMostCounts)
      FaultList::compare(faults.add(FaultKind::outOfRange, Field::tempo), counts, counts < 1 ? 1 : Tempo::kMostCounts)
          .place = i;
}

void checkPose(FaultList& faults, Field field, const Pose& pose) {
  const Settled shape = settled(pose);
  std::vector<Overturned> found = overturned(pose);
  const auto said = [&](const Overturned& turn) {
    return std::any_of(found.begin(), found.end(),
                       [&](const Overturned& other) { return other.joint == turn.joint && other.with == turn.with; });
  };
  for (const Overturned& turn : overturned(shape.articulation.pose)) // what is drawn has to be possible too
    if (!said(turn))
      found.push_back(turn);
  for (const Overturned& turn : found) {
    Fault& fault = FaultList::compare(faults.add(FaultKind::jointTooFar, field), turn.angle, turn.limit);
    fault.joint = turn.joint;
    fault.with = turn.with;
  }
  if (const double gap = std::max(shape.largestGap, shape.deepestSink); gap >= kTouches)
    FaultList::compare(faults.add(FaultKind::doesNotRest, field), gap, kTouches);
}

// Whether a movement is reached again by going from it to what should be taught before.
bool leadsBack(const Movement& movement, const Knowledge& knowledge) {
  std::vector<MovementId> open = movement.prerequisites;
  std::unordered_set<MovementId> seen;
  while (!open.empty()) {
    const MovementId id = open.back();
    open.pop_back();
    if (id == movement.id)
      return true;
    const Movement* next = seen.insert(id).second ? knowledge.catalogue.find(id) : nullptr;
    if (next)
      open.insert(open.end(), next->prerequisites.begin(), next->prerequisites.end());
  }
  return false;
}

void checkNamed(FaultList& faults, Field field, const std::vector<MovementId>& named, const Movement& movement,
                const Knowledge& knowledge) {
  faults.entries(field, named.size(), Movement::kMostNamed);
  faults.once(field, named);
  for (std::size_t i = 0; i < named.size(); ++i) {
    const bool itself = named[i] == movement.id;
    if (!itself && knowledge.catalogue.find(named[i]))
      continue;
    Fault& fault = faults.add(itself ? FaultKind::itself : FaultKind::unknown, field);
    fault.place = i;
    fault.what = named[i].value;
  }
}

// The ways in which the spine is asked to go far or to bear: a counter-movement goes none of them.
FeatureSet strainsOf(const Movement& movement, const Knowledge& knowledge) {
  static constexpr std::pair<Feature, FeatureSet> kGroups[] = {
      {Feature::flexLoad, {Feature::flexLoad, Feature::flexEnd, Feature::spineRoll}},
      {Feature::extLoad, {Feature::extLoad, Feature::extEnd}},
      {Feature::rot, {Feature::rot, Feature::flexRot, Feature::extRot}},
      {Feature::latflex, {Feature::latflex}}};
  const FeatureSet all = movement.features | positionFeatures(movement, knowledge);
  FeatureSet strains;
  for (const auto& [name, group] : kGroups)
    if (all.intersects(group))
      strains.insert(name);
  return strains;
}

void checkCounters(FaultList& faults, const Movement& movement, const Knowledge& knowledge) {
  const FeatureSet strains = strainsOf(movement, knowledge);
  for (std::size_t i = 0; i < movement.counters.size(); ++i) {
    const Movement* counter = knowledge.catalogue.find(movement.counters[i]);
    if (!counter || counter->effort < movement.effort)
      continue;
    if (counter->effort > movement.effort) {
      Fault& harder = FaultList::compare(faults.hint(FaultKind::harderCounter, Field::counters),
                                         counter->effort.value(), movement.effort.value());
      harder.place = i;
      harder.what = counter->id.value;
    }
    const FeatureSet same = strainsOf(*counter, knowledge) & strains;
    if (same.empty())
      continue;
    Fault& fault = faults.add(FaultKind::sameStrain, Field::counters);
    fault.place = i;
    fault.what = counter->id.value;
    fault.features = same;
  }
}

// A feature that is never there without another.
void checkBeside(FaultList& faults, FeatureSet all, Feature feature, FeatureSet also, bool hint) {
  if (!all.contains(feature) || all.intersects(also))
    return;
  Fault& fault = faults.add(FaultKind::needsFeature, Field::features);
  fault.features = {feature};
  fault.also = also;
  fault.hint = hint;
}

// What features, tempo and dose say of one another.
void checkWords(FaultList& faults, const Variant& variant, const Knowledge& knowledge) {
  const Tempo& tempo = tempoOf(variant.movement, variant.option);
  const Dose& dose = doseOf(variant.movement, variant.option);
  const FeatureSet all = variant.all;
  const bool holds = std::any_of(tempo.phases.begin(), tempo.phases.end(),
                                 [](const Phase& phase) { return phase.breath == Breath::hold; });
  if (all.contains(Feature::breathHold) != holds)
    faults.addFeatures(holds ? FaultKind::holdUnnamed : FaultKind::needsHold, Field::features, {Feature::breathHold});
  checkBeside(faults, all, Feature::neckLoad, {Feature::inverted}, false);
  checkBeside(faults, all, Feature::spineRoll, {Feature::flexLoad}, false);
  const Position* start = knowledge.transitions.find(variant.movement.start);
  if (start && start->elevation != Elevation::faceDown)
    checkBeside(faults, all, Feature::legsLong, {Feature::abdPressure}, false);
  checkBeside(faults, all, Feature::flexRot, {Feature::flexLoad, Feature::flexEnd}, true);
  checkBeside(faults, all, Feature::extRot, {Feature::extLoad, Feature::extEnd}, true);
  if (start && start->elevation == Elevation::standing)
    checkBeside(faults, all, Feature::oneLeg, {Feature::balance}, true);

  const double oneSide = workOf(dose, tempo, Sides::together, {}).whole.value();
  for (const auto& [feature, least] : {std::pair(Feature::stretchEnd, kStretchedFor), {Feature::isoHold, kHeldFor}})
    if (all.contains(feature) && oneSide <= least)
      FaultList::compare(faults.add(FaultKind::tooShortFor, Field::features), oneSide, least).features = {feature};
  if (variant.movement.repertoire == Repertoire::stretch && dose.unit != DoseUnit::repetitions &&
      oneSide > kStretchedFor)
    faults.addFeatures(FaultKind::shownOnly, Field::features, FeatureSet{Feature::stretchEnd}.without(all), true);
}

// What a drawing does not tell where something carries the body that is not drawn.
FeatureSet untoldWith(PropSet props) {
  if (!props.intersects({Prop::chair, Prop::roller}))
    return {};
  return {Feature::wristLoad, Feature::oneLeg, Feature::kneeDeep, Feature::inverted};
}

void checkShapes(FaultList& faults, const Variant& variant, const KeyPoses& poses, const Knowledge& knowledge) {
  const Shape shapes[] = {Shape(poses.start), Shape(poses.end)};
  const FeatureSet untold = untoldWith(propsOf(variant.movement, variant.option));
  const FeatureSet absent = unshown(variant.own, shapes);
  faults.addFeatures(FaultKind::notShown, Field::features, absent.without(untold));
  faults.addFeatures(FaultKind::notShown, Field::features, (absent & untold) | hardlyShown(variant.own, shapes), true);
  FeatureSet plain = shownBy(shapes).without(variant.all);
  // Legs that a position spreads are its own matter.
  for (const PositionId& id : {variant.movement.start, variant.movement.end})
    if (const Position* position = knowledge.transitions.find(id)) {
      const Shape place[] = {Shape(position->pose)};
      plain = plain.without(shownBy(place) & FeatureSet{Feature::hipWide});
    }
  faults.addFeatures(FaultKind::shownOnly, Field::features, plain.without(untold));
  const FeatureSet faint = faintlyShownBy(shapes).without(variant.all | plain);
  faults.addFeatures(FaultKind::shownOnly, Field::features, (plain & untold) | faint, true);
}

void checkPoses(FaultList& faults, const Variant& variant, const KeyPoses& poses, const Knowledge& knowledge) {
  checkPose(faults, Field::startPose, poses.start);
  checkPose(faults, Field::endPose, poses.end);
  checkShapes(faults, variant, poses, knowledge);
}

std::vector<std::string> wordsOf(const std::string& text) {
  std::vector<std::string> words(1);
  for (const char letter : text)
    if (std::isalpha(static_cast<unsigned char>(letter)))
      words.back() += static_cast<char>(std::tolower(static_cast<unsigned char>(letter)));
    else if (!words.back().empty())
      words.emplace_back();
  return words;
}

// Words of cues that stand for props.
void checkProps(FaultList& faults, const std::string& how, PropSet props) {
  static constexpr std::pair<std::string_view, PropSet> kWords[] = {
      {"ring", {Prop::ring}},       {"band", {Prop::band}},     {"strap", {Prop::band}},
      {"ball", {Prop::ball}},       {"roller", {Prop::roller}}, {"weight", {Prop::weights}},
      {"weights", {Prop::weights}}, {"chair", {Prop::chair}},   {"cushion", {Prop::cushion}},
      {"pillow", {Prop::cushion}},  {"block", {Prop::cushion}}, {"bolster", {Prop::cushion}},
      {"blanket", {Prop::cushion}}};
  const std::vector<std::string> words = wordsOf(how);
  for (const auto& [name, prop] : kWords)
    if (!props.intersects(prop) && std::find(words.begin(), words.end(), name) != words.end())
      faults.hint(FaultKind::propUnnamed, Field::how).what = name;
}

void checkOption(FaultList& faults, const Movement& movement, const Option& option, FeatureSet places,
                 const Knowledge& knowledge) {
  const FeatureSet before = movement.features | places;
  faults.text(Field::name, option.name, kLongestName);
  faults.text(Field::how, option.how, kLongestNote);
  faults.addFeatures(FaultKind::removesAbsent, Field::removes, option.removes.without(before));
  faults.addFeatures(FaultKind::addsPresent, Field::adds, option.adds & before);
  const Effort effort = effortOf(movement, &option);
  if (option.kind == OptionKind::harder ? effort < movement.effort : effort > movement.effort)
    FaultList::compare(faults.add(FaultKind::againstKind, Field::effort), effort.value(), movement.effort.value());
  if (option.kind == OptionKind::easier)
    faults.addFeatures(FaultKind::againstKind, Field::adds, option.adds, true);
  if (option.kind == OptionKind::harder)
    faults.addFeatures(FaultKind::againstKind, Field::removes, option.removes, true);
  if (option.dose)
    checkDose(faults, *option.dose);
  if (option.tempo)
    checkTempo(faults, *option.tempo);
  checkProps(faults, option.how, propsOf(movement, &option));
  const Variant variant = variantOf(movement, &option, places);
  checkWords(faults, variant, knowledge);
  if (option.poses)
    checkPoses(faults, variant, *option.poses, knowledge);
}

void checkName(FaultList& faults, const Movement& movement, const Knowledge& knowledge) {
  if (!faults.text(Field::name, movement.name, kLongestName))
    return;
  for (const Movement& other : knowledge.catalogue.movements())
    if (other.id != movement.id && other.name == movement.name) {
      faults.hint(FaultKind::twice, Field::name).what = other.id.value;
      return;
    }
}

} // namespace

std::vector<Fault> faultsIn(const Movement& movement, const Knowledge& knowledge) {
  FaultList faults;
  const FeatureSet places = positionFeatures(movement, knowledge);
  checkName(faults, movement, knowledge);
  faults.text(Field::about, movement.about, kLongestNote);
  for (const auto& [id, field] : {std::pair(movement.start, Field::start), {movement.end, Field::end}})
    if (!knowledge.transitions.find(id))
      faults.add(id.empty() ? FaultKind::empty : FaultKind::unknown, field).what = id.value;
  checkDose(faults, movement.dose);
  checkTempo(faults, movement.tempo);
  faults.words(Field::setUp, movement.setUp, Movement::kShortestSetUp, Movement::kLongestSetUp);
  faults.words(Field::action, movement.action, 1, Movement::kLongestAction);
  if (movement.regions.empty())
    faults.add(FaultKind::empty, Field::regions);
  faults.once(Field::regions, movement.regions);
  if (movement.spine.empty())
    faults.add(FaultKind::empty, Field::spine);
  faults.once(Field::spine, movement.spine);
  faults.addFeatures(FaultKind::ofThePosition, Field::features, movement.features & places);
  checkNamed(faults, Field::prerequisites, movement.prerequisites, movement, knowledge);
  const bool namesItself = std::find(movement.prerequisites.begin(), movement.prerequisites.end(), movement.id) !=
                           movement.prerequisites.end();
  if (!movement.id.empty() && !namesItself && leadsBack(movement, knowledge))
    faults.add(FaultKind::itself, Field::prerequisites);
  checkNamed(faults, Field::counters, movement.counters, movement, knowledge);
  checkCounters(faults, movement, knowledge);
  const Variant written = variantOf(movement, nullptr, places);
  checkWords(faults, written, knowledge);
  checkPoses(faults, written, movement.poses, knowledge);

  faults.entries(Field::options, movement.options.size(), Movement::kMostOptions);
  for (std::size_t i = 0; i < movement.options.size(); ++i) {
    const Option& option = movement.options[i];
    faults.about(i);
    if (option.id.empty())
      faults.add(FaultKind::empty, Field::options);
    else if (findOption(movement, option.id) != &option)
      faults.add(FaultKind::twice, Field::options).what = option.id.value;
    checkOption(faults, movement, option, places, knowledge);
  }
  return faults.take();
}

std::vector<Fault> withoutHints(std::vector<Fault> faults) {
  std::erase_if(faults, [](const Fault& fault) { return fault.hint; });
  return faults;
}

} // namespace matwright
