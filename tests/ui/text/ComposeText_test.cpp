// What is said of composing, word by word.
#include "tests/support/SmallKnowledge.h"
#include "ui/text/ComposeText.h"

#include <gtest/gtest.h>
#include <set>

namespace matwright::test {
namespace {

struct ComposeWords : testing::Test {
  Knowledge knowledge = smallKnowledge();
  std::vector<Person> roster{person("ida")};
  ClassWishes wishes;
  Rule spoken = rule("r", Scope::step, Level::leaveOut, {}, "ache");

  ComposeWords() {
    roster[0].initials = "I.D.";
    spoken.why = "It hurts.";
    knowledge.rules.conditions = {condition("ache")};
    wishes.sections = {{"Warm", {}}, {"", {}}};
    wishes.challenge = Challenge::gentle;
  }
  ComposeNames names() const { return {knowledge, roster, wishes}; }
  std::string said(const Obstacle& obstacle) const { return text(obstacle, names()).toStdString(); }
  // Seconds stay with their number: the space between is one that does not break.
  std::string said(const Reasons& reasons) const {
    return text(reasons, names()).replace(QChar::Nbsp, QLatin1Char(' ')).toStdString();
  }
  static Obstacle about(ObstacleKind kind, const char* movement = "", const char* neededFor = "") {
    Obstacle obstacle;
    obstacle.kind = kind;
    obstacle.movement = MovementId{movement};
    obstacle.neededFor = MovementId{neededFor};
    return obstacle;
  }
};

TEST_F(ComposeWords, AnObstacleNamesTheMovementAndWhatNeedsIt) {
  EXPECT_EQ(said(about(ObstacleKind::unknownMovement, "moonwalk")),
            "moonwalk is to be included, and is not in the catalogue.");
  EXPECT_EQ(said(about(ObstacleKind::bothWays, "curl")), "curl is to be included and to be left out.");
  EXPECT_EQ(said(about(ObstacleKind::leftOut, "curl", "roll")), "curl is to be left out, and is needed before roll.");
  EXPECT_EQ(said(about(ObstacleKind::tooHard, "curl")), "curl is too hard in every option for a class that is gentle.");
  EXPECT_EQ(said(about(ObstacleKind::tooHard, "curl", "roll")),
            "curl (needed before roll) is too hard in every option for a class that is gentle.");
  EXPECT_EQ(said(about(ObstacleKind::noWayTo, "swing")), "There is no way to swing that these people may go.");
  EXPECT_EQ(said(about(ObstacleKind::circular, "curl")), "curl is needed before itself.");
}

TEST_F(ComposeWords, AMissingPropIsNamedAndSoIsTheWall) {
  Obstacle obstacle = about(ObstacleKind::propMissing, "curl");
  EXPECT_EQ(said(obstacle), "curl needs a free wall.");
  obstacle.prop = Prop::ball;
  EXPECT_EQ(said(obstacle), "curl needs what is not at hand: soft ball.");
}

TEST_F(ComposeWords, WhoIsToLeaveOutWhatAndWhy) {
  Obstacle obstacle = about(ObstacleKind::cautioned, "curl", "roll");
  obstacle.rule = &spoken;
  EXPECT_EQ(said(obstacle),
            "Everybody is to leave out curl (needed before roll), in every option that is left. It hurts.");
  obstacle.person = PersonId{"ida"};
  EXPECT_EQ(said(obstacle), "I.D. is to leave out curl (needed before roll), in every option that is left. It hurts.");
  obstacle = about(ObstacleKind::personKeptOut);
  obstacle.rule = &spoken;
  EXPECT_EQ(said(obstacle), "Everybody is to leave out the whole class. It hurts.");
  obstacle.person = PersonId{"ida"};
  EXPECT_EQ(said(obstacle), "I.D. is to leave out the whole class. It hurts.");
}

TEST_F(ComposeWords, TimesThatDoNotFitAreSaid) {
  Obstacle obstacle = about(ObstacleKind::tooMuch);
  obstacle.least = Seconds(3125);
  obstacle.most = Seconds(1200);
  obstacle.wished = minutes(50);
  obstacle.section = 1;
  EXPECT_EQ(said(obstacle), "What has to be in the class takes 52:05 at the least; 50:00 are wished for.");
  obstacle.kind = ObstacleKind::tooLittle;
  EXPECT_EQ(said(obstacle), "All that may be chosen takes 20:00 together; 50:00 are wished for.");
  obstacle.kind = ObstacleKind::keptTooLong;
  EXPECT_EQ(said(obstacle), "What stays in the section 2 takes 52:05 at the least; 50:00 are wished for.");
  obstacle.section = 0;
  EXPECT_EQ(said(obstacle), "What stays in the section Warm takes 52:05 at the least; 50:00 are wished for.");
}

TEST_F(ComposeWords, WhatIsFoundOnlyWithoutAWishIsSaidOfEachWish) {
  std::set<std::string> sentences;
  for (std::size_t i = 0; i < kWordCount<Wish>; ++i) {
    Obstacle obstacle = about(ObstacleKind::onlyWithout, "curl");
    obstacle.wish = static_cast<Wish>(i);
    const std::string sentence = said(obstacle);
    EXPECT_TRUE(sentence.starts_with("No class was found ")) << sentence;
    EXPECT_EQ(sentence.find('%'), std::string::npos) << sentence;
    sentences.insert(sentence);
    EXPECT_FALSE(text(obstacle.wish).isEmpty());
  }
  EXPECT_EQ(sentences.size(), kWordCount<Wish>);
  Obstacle obstacle = about(ObstacleKind::onlyWithout, "curl");
  obstacle.wish = Wish::include;
  EXPECT_EQ(said(obstacle), "No class was found with curl in it; one without it was.");
}

TEST_F(ComposeWords, EveryKindHasItsOwnWords) {
  std::set<QString> words;
  for (std::size_t i = 0; i < kWordCount<ComposePart>; ++i)
    words.insert(text(static_cast<ComposePart>(i)));
  EXPECT_EQ(words.size(), kWordCount<ComposePart>);
  words.clear();
  for (const auto fault : {WishesFault::lengthOutOfRange, WishesFault::noSection, WishesFault::sectionLengths,
                           WishesFault::nameTooLong, WishesFault::paceOutOfRange, WishesFault::arcMisshapen,
                           WishesFault::tooManyNamed, WishesFault::otherSections}) {
    EXPECT_FALSE(text(fault).contains(QLatin1Char('%')));
    words.insert(text(fault));
  }
  EXPECT_EQ(words.size(), 8U);
  words.clear();
  for (const auto status :
       {ComposeStatus::composed, ComposeStatus::impossible, ComposeStatus::notFound, ComposeStatus::cancelled})
    words.insert(text(status));
  EXPECT_EQ(words.size(), 4U);
}

TEST_F(ComposeWords, ReasonsNameWhatIsAskedAndTheBestOtherOne) {
  Reasons reasons;
  EXPECT_EQ(said(reasons), "nothing else could be in its place");
  reasons.included = true;
  reasons.neededBy = {MovementId{"roll"}, MovementId{"fold"}};
  reasons.instead = knowledge.catalogue.find(MovementId{"curl"});
  reasons.others = 2;
  EXPECT_EQ(said(reasons), "wished for; needed before roll, fold; curl in its place would be as good");
  reasons.included = false;
  reasons.neededBy.clear();
  reasons.shares = {{ComposePart::effortArc, Seconds(12)},
                    {ComposePart::moving, Seconds(4.4)},
                    {ComposePart::focus, Seconds(0.3)},
                    {ComposePart::screening, Seconds(-3)}};
  reasons.worse = Seconds(13.7);
  EXPECT_EQ(said(reasons), "curl in its place would be worse by 14 s (effort off the arc 12 s, moving about 4.4 s; "
                           "better: cautions 3 s)");
  reasons.option = findOption(*reasons.instead, OptionId{"low"});
  reasons.shares.resize(1);
  reasons.worse = Seconds(12);
  EXPECT_EQ(said(reasons), "curl (Head down) in its place would be worse by 12 s (effort off the arc 12 s)");
  reasons.shares = {{ComposePart::screening, Seconds(-3)}};
  reasons.worse = Seconds(-3);
  EXPECT_EQ(said(reasons), "curl (Head down) in its place would be better by 3 s (better: cautions 3 s)");
  reasons.kept = true;
  EXPECT_EQ(said(reasons), "it was there");
}

TEST_F(ComposeWords, CostsAreToldFromTheDearest) {
  ComposeCost cost;
  EXPECT_EQ(text(cost).toStdString(), "");
  cost.of(ComposePart::moving) = Seconds(75);
  cost.of(ComposePart::screening) = Seconds(200);
  cost.of(ComposePart::focus) = Seconds(0.2);
  EXPECT_EQ(text(cost).toStdString(), "Cautions 3:20, moving about 1:15");
}

TEST_F(ComposeWords, AShortfallTellsHowMuchOfWhat) {
  Shortfall shortfall;
  shortfall.skill = Feature::balance;
  shortfall.wished = Seconds(400);
  shortfall.given = Seconds(250);
  EXPECT_TRUE(text(shortfall).endsWith(QStringLiteral(": 4:10 of 6:40"))) << text(shortfall).toStdString();
  shortfall.region = Region::hips;
  EXPECT_EQ(text(shortfall).toStdString(), "Hips: 4:10 of 6:40");
}

TEST_F(ComposeWords, NamesAreGivenOnlyWhereThereAreNone) {
  ClassPlan plan = blankClass(wishes);
  nameWhatHasNone(plan);
  EXPECT_EQ(plan.name, "Composed class");
  EXPECT_EQ(plan.sections[0].name, "Warm");
  EXPECT_EQ(plan.sections[1].name, "Section 2");
  plan.name = "Tuesday";
  nameWhatHasNone(plan);
  EXPECT_EQ(plan.name, "Tuesday");
}

} // namespace
} // namespace matwright::test
