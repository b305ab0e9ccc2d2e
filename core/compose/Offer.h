// What may be chosen for a class by its wishes, and what may not, and why not.
#pragma once

#include "core/compose/Compose.h"
#include "core/compose/FillProblem.h"
#include "core/evaluate/Group.h"

#include <unordered_map>

namespace matwright {

// A movement in an option and dose.
struct Offered {
  const Movement* movement = nullptr;
  const Option* option = nullptr; // null: as written
  Dose dose;
  friend bool operator==(const Offered&, const Offered&) = default;
};

// The usual dose and, where there is room, a little less and a little more.
std::vector<Dose> dosesNear(const Dose& usual);

// Why a movement may not be chosen in any option.
struct OfferBlock {
  ObstacleKind kind{}; // bothWays to noWayTo
  std::optional<Prop> prop;
  std::optional<PersonId> person;
  const Rule* rule = nullptr;
};

// A choice that turned out, in a whole class, to be one that somebody is to leave out.
struct Ban {
  Offered choice;
  const Rule* rule = nullptr;
  std::optional<PersonId> person;
};

struct Offer {
  FillProblem problem;
  std::vector<Offered> choices;                  // by item; of a kept one the movement may be null
  std::vector<const Movement*> movements;        // by family: first those of the catalogue in its order
  std::vector<std::optional<OfferBlock>> blocks; // by family: nothing of it is offered
  std::unordered_map<MovementId, int> family;    // of movements in the catalogue
};

// Of each movement as written and its best options a few, in the usual dose and near it. Banned choices are left out.
// Everything given must outlive the offer.
Offer offerFor(const Knowledge& knowledge, const ClassWishes& wishes, const Group& group, const ClassPlan& kept,
               std::span<const MovementId> unlike, std::span<const Ban> bans);

bool needsWall(const Movement& movement, const Option* option);

} // namespace matwright
