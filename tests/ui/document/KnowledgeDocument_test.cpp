#include "tests/support/Documents.h"
#include "ui/document/KnowledgeDocument.h"

#include <QSignalSpy>
#include <gmock/gmock.h>

namespace matwright {
namespace {

const QString kWhat = QStringLiteral("what");

// A rule of the program whose threshold is open to change, and one whose is not.
const Rule& ruleWith(ThresholdOrigin origin) {
  for (const Rule& rule : test::realKnowledge().rules.rules)
    if (rule.threshold && rule.threshold->origin == origin)
      return rule;
  throw std::logic_error("no such rule");
}

struct KnowledgeDocumentTest : testing::Test {
  KnowledgeDocument document{sharedKnowledge()};

  Movement hundred() const { return *document.copyOf(MovementId{"hundred"}); }
  const Movement* find(const MovementId& id) const { return document.knowledge()->catalogue.find(id); }
  static Condition tired() {
    Condition condition;
    condition.name = "Tired today";
    condition.about = "Somebody who says so.";
    return condition;
  }
  static Rule slow(const ConditionId& condition) {
    Rule rule;
    rule.condition = condition;
    rule.asks.any = {Feature::rise};
    rule.why = "Rising tires.";
    rule.instead = "stay down";
    rule.strength = Strength::practice;
    rule.check = Verification::memory;
    rule.reviewed = testDay();
    return rule;
  }
};

TEST_F(KnowledgeDocumentTest, BeginsWithWhatComesWithTheProgram) {
  EXPECT_TRUE(document.own().empty());
  EXPECT_EQ(document.knowledge().get(), &document.builtIn());
}

TEST_F(KnowledgeDocumentTest, GivesKnowledgeWithLoadsByAnotherTable) {
  QSignalSpy changed(&document, &KnowledgeDocument::changed);
  document.setBodyTable(BodyTable::winter);
  EXPECT_EQ(changed.count(), 0); // what comes with the program goes by it
  const auto before = document.knowledge();
  document.setBodyTable(BodyTable::deLevaWomen);
  EXPECT_EQ(changed.count(), 1);
  EXPECT_EQ(document.knowledge()->loads->table(), BodyTable::deLevaWomen);
  EXPECT_EQ(before->loads->table(), BodyTable::winter); // what was shared stays
  EXPECT_EQ(document.undoStack()->count(), 0);
  const auto loads = document.knowledge()->loads;
  ASSERT_TRUE(document.add(hundred(), kWhat));
  EXPECT_EQ(document.knowledge()->loads, loads); // and what is known of poses is not forgotten
}

TEST_F(KnowledgeDocumentTest, AddsACopyOfAMovement) {
  QSignalSpy changed(&document, &KnowledgeDocument::changed);
  const auto before = document.knowledge();
  const Movement copy = hundred();
  EXPECT_EQ(copy.id.value, "own-hundred");
  EXPECT_NE(copy.name, find({"hundred"})->name);
  EXPECT_EQ(copy.poses, find({"hundred"})->poses);
  const auto id = document.add(copy, kWhat);
  ASSERT_TRUE(id);
  EXPECT_EQ(*find(*id), copy);
  EXPECT_EQ(document.own().movements, std::vector{copy});
  EXPECT_EQ(changed.count(), 1);
  EXPECT_EQ(before->catalogue.find(*id), nullptr); // what was shared stays
  EXPECT_EQ(document.copyOf(MovementId{"hundred"})->id.value, "own-hundred-2");
  EXPECT_EQ(document.copyOf(MovementId{"flying"}), std::nullopt);
}

TEST_F(KnowledgeDocumentTest, EverythingCanBeUndone) {
  const MovementId id = *document.add(hundred(), kWhat);
  Movement changed = *find(id);
  changed.name = "Long hundred";
  ASSERT_TRUE(document.replace(changed, kWhat));
  ASSERT_TRUE(document.remove(id, kWhat));
  EXPECT_EQ(find(id), nullptr);
  document.undoStack()->undo();
  EXPECT_EQ(find(id)->name, "Long hundred");
  document.undoStack()->undo();
  EXPECT_EQ(find(id)->name, hundred().name);
  document.undoStack()->undo();
  EXPECT_TRUE(document.own().empty());
}

TEST_F(KnowledgeDocumentTest, AChangeToNothingLeavesNoEntry) {
  const MovementId id = *document.add(hundred(), kWhat);
  EXPECT_TRUE(document.replace(*find(id), kWhat));
  EXPECT_TRUE(document.remove(MovementId{"own-flying"}, kWhat));
  EXPECT_EQ(document.undoStack()->count(), 1);
}

TEST_F(KnowledgeDocumentTest, TypingInOneFieldIsOneEntry) {
  const MovementId id = *document.add(hundred(), kWhat);
  for (const char* name : {"L", "Lo", "Lon"}) {
    Movement movement = *find(id);
    movement.name = name;
    ASSERT_TRUE(document.replace(movement, kWhat, QStringLiteral("name")));
  }
  EXPECT_EQ(document.undoStack()->count(), 2);
  document.sealGesture();
  Movement movement = *find(id);
  movement.name = "Long";
  ASSERT_TRUE(document.replace(movement, kWhat, QStringLiteral("name")));
  EXPECT_EQ(document.undoStack()->count(), 3);
}

TEST_F(KnowledgeDocumentTest, RefusesWhatItsFileCouldNotHold) {
  Movement movement = hundred();
  movement.setUp = "Lie down.";
  const auto refused = document.add(movement, kWhat);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().front().code, ErrorCode::outOfRange);
  EXPECT_EQ(refused.error().front().path, "/movements/0/setUp");
  movement = hundred();
  movement.id = {"hundred"};
  EXPECT_FALSE(document.add(movement, kWhat));
  EXPECT_FALSE(document.add(slow({"own-nobody"}), kWhat));
  EXPECT_TRUE(document.own().empty());
  EXPECT_EQ(document.undoStack()->count(), 0);
}

TEST_F(KnowledgeDocumentTest, HoldsConditionsRulesAndSources) {
  const ConditionId condition = *document.add(tired(), kWhat);
  EXPECT_EQ(condition.value, "own-tired-today");
  const SourceId source = *document.add(Source{{}, "A talk, 2026", SourceKind::practice}, kWhat);
  Rule rule = slow(condition);
  rule.sources = {source};
  const RuleId id = *document.add(rule, kWhat);
  EXPECT_EQ(id.value, "own-stay-down");
  EXPECT_EQ(document.knowledge()->rules.findCondition(condition)->name, "Tired today");
  EXPECT_EQ(document.knowledge()->rules.rules.back().id, id);
  ASSERT_TRUE(document.remove(condition, kWhat));
  EXPECT_TRUE(document.own().rules.empty()); // it went with what it was for
  document.undoStack()->undo();
  EXPECT_EQ(document.own().rules.size(), 1U);
}

TEST_F(KnowledgeDocumentTest, CopiesARuleWithTheAmountThatHolds) {
  const Rule& open = ruleWith(ThresholdOrigin::ours);
  ASSERT_TRUE(document.setThreshold(open.id, 1.0, kWhat));
  const auto copy = document.copyOf(open.id);
  ASSERT_TRUE(copy);
  EXPECT_EQ(copy->id.value, "own-" + open.id.value);
  EXPECT_EQ(copy->threshold->amount, 1);
  EXPECT_TRUE(document.add(*copy, kWhat));
  EXPECT_EQ(document.own().rules, std::vector{*copy});
}

TEST_F(KnowledgeDocumentTest, SetsThresholdsThatAreOursAndNoOthers) {
  const Rule& open = ruleWith(ThresholdOrigin::ours);
  const double usual = open.threshold->amount;
  const auto amount = [&] {
    for (const Rule& rule : document.knowledge()->rules.rules)
      if (rule.id == open.id)
        return rule.threshold->amount;
    return 0.0;
  };
  ASSERT_TRUE(document.setThreshold(open.id, usual + 5, kWhat));
  EXPECT_EQ(amount(), usual + 5);
  ASSERT_TRUE(document.setThreshold(open.id, usual, kWhat));
  EXPECT_TRUE(document.own().thresholds.empty());
  document.undoStack()->undo();
  ASSERT_TRUE(document.setThreshold(open.id, std::nullopt, kWhat));
  EXPECT_EQ(amount(), usual);
  EXPECT_FALSE(document.setThreshold(ruleWith(ThresholdOrigin::published).id, 5, kWhat));
  EXPECT_FALSE(document.setThreshold({"no-such-rule"}, 5, kWhat));
  EXPECT_FALSE(document.setThreshold(open.id, -1, kWhat));
}

TEST_F(KnowledgeDocumentTest, IsNotChangedWhileItsFileCannotBeRead) {
  document.lock({{ErrorCode::newerVersion, "knowledge.json", "/version", "version 1 or older", "2"}});
  const auto refused = document.add(hundred(), kWhat);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error(), document.lockedBy());
  EXPECT_EQ(refused.error().front().code, ErrorCode::newerVersion);
  document.load({});
  EXPECT_TRUE(document.lockedBy().empty());
  EXPECT_TRUE(document.add(hundred(), kWhat));
}

} // namespace
} // namespace matwright
