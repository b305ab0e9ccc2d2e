#include "ui/document/PeopleDocument.h"

#include "core/base/Text.h"
#include "ui/document/ValueChange.h"

#include <algorithm>

namespace matwright {

PeopleDocument::PeopleDocument(QObject* parent) : QObject(parent) {}

const Person* PeopleDocument::find(const PersonId& id) const { return findPerson(*people_, id); }

void PeopleDocument::load(std::vector<Person> people) {
  undoStack_.clear();
  ++gesture_;
  show(std::make_shared<const std::vector<Person>>(std::move(people)));
}

PersonId PeopleDocument::add(const QString& name, const QString& what) {
  Person person;
  person.name = name.toStdString();
  person.initials = initialsFrom(person.name);
  std::string stem = idTextFrom(person.name);
  if (stem.empty())
    stem = "person";
  person.id.value = untakenId(stem, [this](const std::string& id) { return find({id}) != nullptr; });
  auto after = *people_;
  after.push_back(person);
  push(std::move(after), what);
  return person.id;
}

void PeopleDocument::remove(const PersonId& id, const QString& what) {
  auto after = *people_;
  std::erase_if(after, [&](const Person& person) { return person.id == id; });
  push(std::move(after), what);
}

void PeopleDocument::change(const Person& person, const QString& what, const QString& mergeKey) {
  auto after = *people_;
  for (Person& candidate : after)
    if (candidate.id == person.id)
      candidate = person;
  push(std::move(after), what, mergeKey);
}

void PeopleDocument::push(std::vector<Person> after, const QString& what, const QString& mergeKey) {
  if (after == *people_)
    return;
  undoStack_.push(new ValueChange<std::vector<Person>>([this](List people) { show(std::move(people)); }, people_,
                                                       std::make_shared<const std::vector<Person>>(std::move(after)),
                                                       what, mergeKey, gesture_));
}

void PeopleDocument::show(List people) {
  people_ = std::move(people);
  Q_EMIT changed();
}

} // namespace matwright
