#include "core/transition/MirroredText.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

TEST(MirroredText, ExchangesLeftAndRight) {
  EXPECT_EQ(mirroredText("left hand over the right knee"), "right hand over the left knee");
}

TEST(MirroredText, KeepsTheCaseOfEachWord) {
  EXPECT_EQ(mirroredText("Left foot, then RIGHT foot."), "Right foot, then LEFT foot.");
  EXPECT_EQ(mirroredText("LEFT"), "RIGHT");
  EXPECT_EQ(mirroredText("Right"), "Left");
}

TEST(MirroredText, LeavesPartsOfLongerWordsAlone) {
  EXPECT_EQ(mirroredText("leftover upright rightly"), "leftover upright rightly");
  EXPECT_EQ(mirroredText("\xC3\xA9left"), "\xC3\xA9left");
}

TEST(MirroredText, TakesWordsBesideHyphensAndMarks) {
  EXPECT_EQ(mirroredText("(left)-hand; right."), "(right)-hand; left.");
  EXPECT_EQ(mirroredText("left-side"), "right-side");
}

TEST(MirroredText, TwiceIsTheTextAgain) {
  for (const char* text : {"", "left", "Left and RIGHT, no more", "a b c", "Roll to your left, right arm long."})
    EXPECT_EQ(mirroredText(mirroredText(text)), text);
}

} // namespace
} // namespace matwright
