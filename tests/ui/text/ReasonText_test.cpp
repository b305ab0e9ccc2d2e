#include "tests/support/RealKnowledge.h"
#include "ui/text/ReasonText.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

Reasons againstSwimming() {
  Reasons reasons;
  reasons.others = 12;
  reasons.instead = test::realKnowledge().catalogue.find(MovementId{"swimming"});
  reasons.shares = {{ComposePart::moving, Seconds(9)}, {ComposePart::focus, Seconds(-2.4)}};
  reasons.worse = Seconds(6.6);
  return reasons;
}

// Seconds are parted from their numbers by a space that does not break.
std::string comparison(const Reasons& reasons) {
  return comparisonText(reasons, test::realKnowledge()).replace(QChar::Nbsp, QLatin1Char(' ')).toStdString();
}

TEST(ReasonText, SaysWhatTheBestOtherOneWouldCost) {
  EXPECT_EQ(comparison(againstSwimming()),
            "The best of 12 others in its place: Swimming. The class would cost 6.6 s more "
            "with it. More: moving about 9 s. Less: short of the focus 2.4 s.");
}

TEST(ReasonText, AnotherOneMayBeBetterOrAsGood) {
  Reasons reasons = againstSwimming();
  reasons.worse = Seconds(-3);
  EXPECT_NE(comparison(reasons).find("3 s less with it"), std::string::npos);
  reasons.worse = Seconds(0.2);
  EXPECT_NE(comparison(reasons).find("as good with it"), std::string::npos);
}

TEST(ReasonText, ThereMayBeNoOtherOrNothingChosen) {
  EXPECT_NE(comparison(Reasons{}).find("No other movement"), std::string::npos);
  Reasons kept;
  kept.kept = true;
  EXPECT_NE(comparison(kept).find("kept"), std::string::npos);
}

} // namespace
} // namespace matwright
