// What the printed card says, row by row, as data: no fonts, no sentences that would be translated.
#pragma once

#include "core/evaluate/Evaluation.h"

namespace matwright {

struct CardCaution {
  Level level{};
  std::vector<std::string> initials; // whom it concerns; empty: everybody
  std::string instead;               // may be empty
  friend bool operator==(const CardCaution&, const CardCaution&) = default;
};

// What somebody does in the place of the row's movement.
struct CardVariant {
  std::vector<std::string> initials; // of all who do the same, never empty
  std::string name;                  // of the movement; empty when it is the row's own, in another option
  std::string option;                // empty as written
  friend bool operator==(const CardVariant&, const CardVariant&) = default;
};

struct CardRow {
  StepId step;
  Seconds at; // when the work begins
  std::string name;
  std::string option; // its name; empty as written
  std::string action; // the short cue
  std::string note;
  std::string wayTo;  // the position to change to; empty when nobody changes position
  std::string wayCue; // what is said on the way there
  Dose dose;
  Sides sides{};
  std::optional<Side> onlySide;
  Tempo tempo;
  std::optional<KeyPoses> poses; // none for a movement that is not in the catalogue
  Elevation elevation{};
  std::vector<CardCaution> cautions; // strongest first, same words put together
  std::vector<CardVariant> variants; // of those who were screened, in the order of the class
  friend bool operator==(const CardRow&, const CardRow&) = default;
};

struct CardSection {
  std::string name;
  Seconds begin;
  std::vector<CardRow> rows;
  friend bool operator==(const CardSection&, const CardSection&) = default;
};

struct TerrainPoint {
  Seconds at;
  Elevation elevation{};
  friend bool operator==(const TerrainPoint&, const TerrainPoint&) = default;
};

enum class NameStyle { initials, names };

struct Card {
  std::string title;
  std::optional<Date> date;
  std::string note;
  Seconds length, likelyFrom, likelyTo;
  int changes = 0;
  std::vector<std::string> people;   // initials, or names when the teacher says so
  bool screened = false;             // false when nobody was chosen: the card says so
  std::vector<CardSection> sections; // without empty ones
  std::vector<CardCaution> wholeClass;
  std::vector<TerrainPoint> terrain;
  friend bool operator==(const Card&, const Card&) = default;
};

Card cardOf(const Knowledge& knowledge, const ClassPlan& plan, const Evaluation& evaluation,
            std::span<const Person> roster, NameStyle style);

} // namespace matwright
