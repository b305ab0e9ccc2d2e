// People as they are named in a few words.
#pragma once

#include "core/people/Person.h"
#include "core/screening/Rule.h"

#include <QString>
#include <span>

namespace matwright {

// As on the card: the initials, or the name where there are none; the id of somebody who is not on file.
QString shortName(const PersonId& person, std::span<const Person> roster);
// "R.A. and I.K."; above three only how many they are. Empty for nobody.
QString shortNames(std::span<const PersonId> people, std::span<const Person> roster);

// "Glaucoma; High blood pressure", each once; what it says when there is none.
QString conditionNames(const Person& person, const RuleBook& book);

} // namespace matwright
