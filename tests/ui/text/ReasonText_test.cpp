// What is said of why a step of a composed class is there, word by word.
#include "tests/support/SmallKnowledge.h"
#include "ui/text/ReasonText.h"

#include <gtest/gtest.h>
#include <set>

namespace matwright::test {
namespace {

struct ReasonWords : testing::Test {
  Knowledge knowledge = smallKnowledge();
  std::vector<Person> roster{person("ida")};
  ClassWishes wishes;
  Rule spoken = rule("r", Scope::step, Level::leaveOut, {}, "ache");

  ReasonWords() {
    roster[0].initials = "I.D.";
    knowledge.rules.conditions = {condition("ache")};
  }
  QString said(const ComposeReason& reason) const { return text(reason, ComposeNames{knowledge, roster, wishes}); }
};

TEST_F(ReasonWords, EveryKindHasItsOwn) {
  std::set<QString> words;
  for (std::size_t i = 0; i < kWordCount<ComposeReasonKind>; ++i) {
    ComposeReason reason;
    reason.kind = static_cast<ComposeReasonKind>(i);
    reason.movement = MovementId{"curl"};
    reason.region = Region::hips;
    reason.prop = Prop::ring;
    EXPECT_FALSE(said(reason).contains(QLatin1Char('%'))) << said(reason).toStdString();
    words.insert(said(reason));
  }
  EXPECT_EQ(words.size(), kWordCount<ComposeReasonKind>);
}

TEST_F(ReasonWords, NameWhatTheyAreAbout) {
  ComposeReason reason;
  reason.kind = ComposeReasonKind::neededFor;
  reason.movement = MovementId{"roll"};
  EXPECT_EQ(said(reason), QStringLiteral("needed before roll"));
  reason.kind = ComposeReasonKind::focus;
  reason.spine = SpineAction::extension;
  EXPECT_EQ(said(reason), QStringLiteral("gives time to the focus (arch)"));
  reason.kind = ComposeReasonKind::cautioned;
  reason.rule = &spoken;
  EXPECT_EQ(said(reason), QStringLiteral("in this option, as written it brings a caution for everybody (ache)"));
  reason.person = PersonId{"ida"};
  EXPECT_EQ(said(reason), QStringLiteral("in this option, as written it brings a caution for I.D. (ache)"));
}

} // namespace
} // namespace matwright::test
