#pragma once

#include "core/base/Id.h"
#include "core/body/Body.h"
#include "core/body/Feature.h"
#include "core/figure/Pose.h"
#include "core/movement/Dose.h"
#include "core/movement/Tempo.h"

#include <optional>
#include <string>
#include <vector>

namespace matwright {

struct MovementTag;
using MovementId = Id<MovementTag>;
struct OptionTag;
using OptionId = Id<OptionTag>;

enum class Repertoire { fundamental, classical, sideLying, kneeling, standing, wall, stretch, breath };
template <> struct Words<Repertoire> {
  static constexpr auto list =
      wordList("fundamental", "classical", "side-lying", "kneeling", "standing", "wall", "stretch", "breath");
};

enum class OptionKind { easier, harder, adapted };
template <> struct Words<OptionKind> { static constexpr auto list = wordList("easier", "harder", "adapted"); };

// What is to hand beside the mat. The wall is no prop but a place: positions and contacts say so.
enum class Prop { ring, band, ball, roller, weights, chair, cushion };
template <> struct Words<Prop> {
  static constexpr auto list = wordList("ring", "band", "ball", "roller", "weights", "chair", "cushion");
};
using PropSet = EnumSet<Prop>;

// The two ends of one repetition.
struct KeyPoses {
  Pose start, end;
  friend bool operator==(const KeyPoses&, const KeyPoses&) = default;
};

// One way to do a movement. What it leaves unset is as in the movement.
struct Option {
  OptionId id;
  std::string name;
  OptionKind kind{};
  std::string how; // a cue sentence
  FeatureSet removes, adds;
  std::optional<PropSet> props;
  std::optional<Effort> effort;
  std::optional<Dose> dose;
  std::optional<Tempo> tempo;
  std::optional<KeyPoses> poses;
  friend bool operator==(const Option&, const Option&) = default;
};

struct Movement {
  static constexpr int kShortestSetUp = 8, kLongestSetUp = 25; // words
  static constexpr int kLongestAction = 9;                     // words
  static constexpr std::size_t kMostOptions = 20;
  static constexpr std::size_t kMostNamed = 20; // other movements, as prerequisites or as counter-movements

  MovementId id;
  std::string name;
  Repertoire repertoire{};
  std::string about;
  PositionId start, end; // in a position with sides: for the left limb working
  Sides sides{};
  Dose dose;
  Tempo tempo;
  std::string setUp;              // spoken while people get ready
  std::string action;             // the short cue
  std::vector<Region> regions;    // the main one first, never empty
  std::vector<SpineAction> spine; // the main one first, never empty
  FeatureSet features;            // without those of the start and end positions
  Effort effort;
  PropSet props; // that it cannot be done without
  std::vector<MovementId> prerequisites;
  std::vector<MovementId> counters; // what undoes it: done after it, or not long after
  KeyPoses poses;
  std::vector<Option> options;
  friend bool operator==(const Movement&, const Movement&) = default;
};

// Nothing for an id that the movement does not have, and for the empty id (the movement as written).
const Option* findOption(const Movement& movement, const OptionId& option);

// The movement as written, or in one of its options (which may be null).
const Dose& doseOf(const Movement& movement, const Option* option);
const Tempo& tempoOf(const Movement& movement, const Option* option);
Effort effortOf(const Movement& movement, const Option* option);
PropSet propsOf(const Movement& movement, const Option* option);
const KeyPoses& posesOf(const Movement& movement, const Option* option);

} // namespace matwright
