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

QString conditionNames(const Person& person, const RuleBook& book) {
  QStringList names;
  for (const PersonCondition& held : person.conditions) {
    const Condition* condition = book.findCondition(held.condition);
    const QString name = QString::fromStdString(condition ? condition->name : held.condition.value);
    if (!names.contains(name))
      names << name;
  }
  return names.isEmpty() ? QCoreApplication::translate("PeopleText", "no condition noted")
                         : names.join(QStringLiteral("; "));
}

} // namespace matwright
