#include "tests/support/PanelFixture.h"
#include "ui/movements/MovementFiles.h"
#include "ui/movements/MovementsWorkspace.h"

#include <QFile>
#include <QTemporaryDir>
#include <gmock/gmock.h>

namespace matwright {
namespace {

struct Files : ::testing::Test {
  MovementId add(KnowledgeDocument& document, const char* name, std::vector<MovementId> before = {}) {
    Movement movement = blankMovement(*document.knowledge());
    movement.name = name;
    movement.prerequisites = std::move(before);
    return document.add(movement, QStringLiteral("Add")).value();
  }
  const Movement& movement(const KnowledgeDocument& document, const MovementId& id) const {
    return *document.knowledge()->catalogue.find(id);
  }

  QTemporaryDir folder;
  QString file = folder.filePath(QStringLiteral("given.json"));
  KnowledgeDocument here{testing::knowledge()}, there{testing::knowledge()};
};

TEST_F(Files, AMovementComesThereAsItWasHere) {
  const MovementId id = add(here, "Ribbon", {{"hundred"}});
  ASSERT_TRUE(exportMovement(here, id, file));
  const auto imported = importMovements(there, file);
  ASSERT_TRUE(imported);
  EXPECT_EQ(imported->movements, std::vector<MovementId>{id});
  EXPECT_EQ(movement(there, id), movement(here, id));
  EXPECT_EQ(there.undoStack()->count(), 1);
}

TEST_F(Files, WhatItNamesOfOnesOwnGoesWithItAndNothingElse) {
  const MovementId first = add(here, "First"), second = add(here, "Second", {first});
  const MovementId third = add(here, "Third", {second});
  add(here, "Apart");
  const OwnKnowledge given = withWhatItNames(here.own(), third);
  ASSERT_EQ(given.movements.size(), 3U);
  EXPECT_EQ(given.movements[0].id, third);
  EXPECT_TRUE(withWhatItNames(here.own(), {"hundred"}).empty());
}

TEST_F(Files, TheSameTwiceIsTakenOnce) {
  const MovementId id = add(here, "Ribbon");
  ASSERT_TRUE(exportMovement(here, id, file));
  const auto again = importMovements(here, file);
  ASSERT_TRUE(again);
  EXPECT_TRUE(again->movements.empty());
  EXPECT_EQ(again->alreadyHere, 1);
  EXPECT_EQ(here.own().movements.size(), 1U);
}

TEST_F(Files, AnIdThatIsTakenIsMadeAnewWhereItIsNamedToo) {
  const MovementId ribbon = add(here, "Ribbon"), bow = add(here, "Bow", {ribbon});
  ASSERT_TRUE(exportMovement(here, bow, file));
  Movement other = blankMovement(*there.knowledge());
  other.name = "Ribbon";
  other.about = "Another one of that name.";
  ASSERT_EQ(there.add(other, QStringLiteral("Add")).value(), ribbon);
  const auto imported = importMovements(there, file);
  ASSERT_TRUE(imported);
  ASSERT_EQ(imported->movements.size(), 2U);
  EXPECT_EQ(movement(there, ribbon).about, other.about);
  const MovementId renamed = imported->movements[1];
  EXPECT_NE(renamed, ribbon);
  EXPECT_EQ(movement(there, renamed).about, movement(here, ribbon).about);
  EXPECT_EQ(movement(there, bow).prerequisites, std::vector<MovementId>{renamed});
}

TEST_F(Files, OfABrokenFileNothingIsTaken) {
  QFile broken(file);
  ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
  broken.write("{\"format\": \"matwright-own-knowledge\"");
  broken.close();
  const auto imported = importMovements(there, file);
  ASSERT_FALSE(imported);
  EXPECT_FALSE(imported.error().empty());
  EXPECT_TRUE(there.own().empty());
}

} // namespace
} // namespace matwright
