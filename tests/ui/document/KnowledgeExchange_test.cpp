#include "tests/support/Documents.h"
#include "ui/document/KnowledgeExchange.h"
#include "ui/text/ExchangeText.h"

#include <QFile>
#include <QTemporaryDir>
#include <gmock/gmock.h>

namespace matwright {
namespace {

struct Exchanged : ::testing::Test {
  MovementId add(KnowledgeDocument& document, const char* name, std::vector<MovementId> before = {}) {
    Movement movement = *document.copyOf(MovementId{"hundred"});
    movement.id = {};
    movement.name = name;
    movement.prerequisites = std::move(before);
    return document.add(movement, QStringLiteral("Add")).value();
  }
  RuleId addRule(KnowledgeDocument& document, const char* about) {
    Condition condition;
    condition.name = "Tired";
    condition.about = about;
    Rule rule = *document.copyOf(RuleId{"everyone-neck-stretch"});
    rule.id = {};
    rule.condition = document.add(condition, QStringLiteral("Add")).value();
    return document.add(rule, QStringLiteral("Add")).value();
  }
  Result<void> give(const OwnKnowledge& given) { return exportKnowledge(given, file); }

  QTemporaryDir folder;
  QString file = folder.filePath(QStringLiteral("given.json"));
  KnowledgeDocument here{sharedKnowledge()}, there{sharedKnowledge()};
};

TEST_F(Exchanged, AMovementComesThereAsItWasHereInOneEntryOfTheUndoList) {
  const MovementId id = add(here, "Ribbon", {{"roll-up"}});
  ASSERT_TRUE(give(withWhatItNames(here.own(), id)));
  const auto done = importKnowledge(there, file);
  ASSERT_TRUE(done);
  ASSERT_EQ(done->taken.movements.size(), 1U);
  EXPECT_EQ(there.own(), here.own());
  EXPECT_EQ(there.undoStack()->count(), 1);
  there.undoStack()->undo();
  EXPECT_TRUE(there.own().empty());
}

TEST_F(Exchanged, ConditionsRulesAndThresholdsComeToo) {
  addRule(here, "Slept badly");
  ASSERT_TRUE(here.setThreshold({"everyone-kneel-stretch"}, 60, QStringLiteral("Set")));
  ASSERT_TRUE(give(here.own()));
  const auto done = importKnowledge(there, file);
  ASSERT_TRUE(done);
  EXPECT_EQ(there.own(), here.own());
  EXPECT_EQ(importedText(*done).toStdString(), "Imported: 1 condition(s), 1 rule(s), 1 threshold(s).");
}

TEST_F(Exchanged, TheSameTwiceIsTakenOnce) {
  addRule(here, "Slept badly");
  add(here, "Ribbon");
  ASSERT_TRUE(give(here.own()));
  const OwnKnowledge before = here.own();
  const int entries = here.undoStack()->count();
  const auto again = importKnowledge(here, file);
  ASSERT_TRUE(again);
  EXPECT_EQ(again->alreadyHere, 3);
  EXPECT_EQ(here.own(), before);
  EXPECT_EQ(here.undoStack()->count(), entries);
  EXPECT_TRUE(importedText(*again).startsWith(QStringLiteral("Nothing in the file is new.")));
}

TEST_F(Exchanged, WhatIsOnesOwnUnderTheSameIdStays) {
  const RuleId rule = addRule(here, "Slept badly");
  ASSERT_EQ(addRule(there, "Jet lag"), rule);
  const OwnKnowledge before = there.own();
  ASSERT_TRUE(give(withWhatItNames(here.own(), rule)));
  const auto done = importKnowledge(there, file);
  ASSERT_TRUE(done);
  EXPECT_EQ(done->renamed, 2);
  ASSERT_EQ(there.own().rules.size(), 2U);
  EXPECT_EQ(there.own().rules[0], before.rules[0]);
  EXPECT_EQ(there.own().conditions[0], before.conditions[0]);
  EXPECT_EQ(there.own().rules[1].condition, there.own().conditions[1].id);
  EXPECT_EQ(there.own().conditions[1].about, "Slept badly");
}

TEST_F(Exchanged, OfABrokenFileNothingIsTaken) {
  QFile broken(file);
  ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
  broken.write("{\"format\": \"matwright-own-knowledge\"");
  broken.close();
  const auto done = importKnowledge(there, file);
  ASSERT_FALSE(done);
  EXPECT_TRUE(notImportedText(done.error()).startsWith(QStringLiteral("Nothing was imported.")));
  EXPECT_TRUE(there.own().empty());
}

} // namespace
} // namespace matwright
