#include "core/people/Person.h"

#include <algorithm>

namespace matwright {

int weekOn(QualifierKind kind, Date date, Date day) {
  if (kind == QualifierKind::weeksSince)
    return wholeWeeksBetween(date, day);
  const bool past = std::chrono::sys_days{date} < std::chrono::sys_days{day};
  return past ? 40 + wholeWeeksBetween(date, day) : 40 - wholeWeeksBetween(day, date);
}

const QualifierSpec* findQualifier(const Condition& condition, const std::string& qualifier) {
  const auto at = std::find_if(condition.qualifiers.begin(), condition.qualifiers.end(),
                               [&](const QualifierSpec& spec) { return spec.id == qualifier; });
  return at == condition.qualifiers.end() ? nullptr : &*at;
}

bool holdsOn(const Clearance& clearance, Date day) {
  const std::chrono::sys_days on{day};
  return std::chrono::sys_days{clearance.given} <= on &&
         (!clearance.until || on <= std::chrono::sys_days{*clearance.until});
}

std::string initialsFrom(const std::string& name) {
  std::string initials;
  int letters = 0;
  bool atWordStart = true;
  for (std::size_t i = 0; i < name.size() && letters < 3;) {
    const auto lead = static_cast<unsigned char>(name[i]);
    const std::size_t length = lead < 0x80 ? 1 : lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
    if (lead == ' ' || lead == '-') {
      atWordStart = true;
    } else if (atWordStart) {
      std::string letter = name.substr(i, length);
      if (letter.size() == 1 && letter[0] >= 'a' && letter[0] <= 'z')
        letter[0] = static_cast<char>(letter[0] - 'a' + 'A');
      initials += letter + '.';
      ++letters;
      atWordStart = false;
    }
    i += length;
  }
  return initials;
}

const Person* findPerson(std::span<const Person> people, const PersonId& id) { return findById(people, id); }

} // namespace matwright
