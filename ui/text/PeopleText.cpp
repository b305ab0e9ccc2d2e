#include "ui/text/PeopleText.h"

#include <QCoreApplication>
#include <QLocale>

namespace matwright {
namespace {

constexpr std::size_t kMostNamed = 3;

} // namespace

QString shortName(const PersonId& person, std::span<const Person> roster) {
  const Person* found = findPerson(roster, person);
  if (!found)
    return QString::fromStdString(person.value);
  return QString::fromStdString(found->initials.empty() ? found->name : found->initials);
}

QString shortNames(std::span<const PersonId> people, std::span<const Person> roster) {
  if (people.size() > kMostNamed)
    return QCoreApplication::translate("PeopleText", "%1 people").arg(people.size());
  QStringList names;
  for (const PersonId& person : people)
    names << shortName(person, roster);
  return QLocale().createSeparatedList(names);
}

} // namespace matwright
