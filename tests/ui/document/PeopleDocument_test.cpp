#include "ui/document/PeopleDocument.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

const QString kWhat = QStringLiteral("what");

TEST(PeopleDocument, IdsAreMadeFromNamesAndNeverShared) {
  PeopleDocument people;
  EXPECT_EQ(people.add(QStringLiteral("Ada Brook"), kWhat).value, "ada-brook");
  EXPECT_EQ(people.add(QStringLiteral("Ada Brook"), kWhat).value, "ada-brook-2");
  EXPECT_EQ(people.add(QStringLiteral("\u00c9\u00e9"), kWhat).value, "person");
  EXPECT_EQ(people.people().front().initials, "A.B.");
}

TEST(PeopleDocument, EverythingCanBeUndone) {
  PeopleDocument people;
  const PersonId id = people.add(QStringLiteral("Ada"), kWhat);
  Person changed = *people.find(id);
  changed.conditions.push_back({ConditionId{"disc"}, {{"legSigns", true}}, {}, {}});
  people.change(changed, kWhat);
  people.remove(id, kWhat);
  EXPECT_TRUE(people.people().empty());
  people.undoStack()->undo();
  EXPECT_EQ(*people.find(id), changed);
  people.undoStack()->undo();
  EXPECT_TRUE(people.find(id)->conditions.empty());
  people.undoStack()->undo();
  EXPECT_EQ(people.find(id), nullptr);
}

TEST(PeopleDocument, TypingInOneFieldIsOneEntry) {
  PeopleDocument people;
  const PersonId id = people.add(QStringLiteral("Ada"), kWhat);
  for (const char* note : {"S", "So", "Sof", "Soft"}) {
    Person person = *people.find(id);
    person.note = note;
    people.change(person, kWhat, QStringLiteral("note"));
  }
  EXPECT_EQ(people.undoStack()->count(), 2);
  people.undoStack()->undo();
  EXPECT_EQ(people.find(id)->note, "");
}

} // namespace
} // namespace matwright
