#include "core/base/Text.h"

#include <gtest/gtest.h>
#include <set>

namespace matwright {
namespace {

TEST(CountWords, CountsWhatIsSpoken) {
  EXPECT_EQ(countWords(""), 0);
  EXPECT_EQ(countWords("  \t\n "), 0);
  EXPECT_EQ(countWords("curl"), 1);
  EXPECT_EQ(countWords("  out:  curl,\n in: wait "), 4);
  EXPECT_EQ(countWords("hip-bone distance apart"), 3);
  EXPECT_EQ(countWords("don't"), 1);
  EXPECT_EQ(countWords("(both) \"knees\""), 2);
  EXPECT_EQ(countWords("count 4 of 10"), 4);
}

TEST(CountWords, LeavesSignsAlone) {
  EXPECT_EQ(countWords("in - out"), 2);
  EXPECT_EQ(countWords("a & b"), 2);
  EXPECT_EQ(countWords("..."), 0);
  EXPECT_EQ(countWords("in \u2013 out"), 2);
  EXPECT_EQ(countWords("in \u2014 out"), 2);
  EXPECT_EQ(countWords("wait \u2026 now"), 2);
  EXPECT_EQ(countWords("\u201cwait\u201d"), 1);
}

TEST(CountWords, KnowsLettersBeyondAscii) {
  EXPECT_EQ(countWords("\u00e9tire \u00fcber \u0105"), 3);
  EXPECT_EQ(countWords("\u043f\u043b\u0435\u0447\u0438 \u4e0b"), 2);
}

TEST(IsIdText, TakesWordsJoinedByHyphens) {
  for (const char* text : {"a", "hundred", "single-leg-stretch", "flex-hip90", "a1-2b"})
    EXPECT_TRUE(isIdText(text)) << text;
}

TEST(IsIdText, RefusesEverythingElse) {
  for (const char* text : {"", "-", "a-", "-a", "a--b", "A", "aB", "1a", "9", "a b", "a_b", "a.b", "\u00e9", "a\n"})
    EXPECT_FALSE(isIdText(text)) << text;
}

TEST(IdTextFrom, MakesNamesIntoIds) {
  EXPECT_EQ(idTextFrom("Single leg stretch"), "single-leg-stretch");
  EXPECT_EQ(idTextFrom("  Roll -- over!  "), "roll-over");
  EXPECT_EQ(idTextFrom("Class 12"), "class-12");
  EXPECT_EQ(idTextFrom("12 Monday"), "monday");
  EXPECT_EQ(idTextFrom("\u00c9tude"), "tude");
  EXPECT_EQ(idTextFrom("!?"), "");
  EXPECT_EQ(idTextFrom(""), "");
}

TEST(IdTextFrom, GivesAnIdOrNothing) {
  for (int code = 1; code < 256; ++code)
    for (const char* rest : {"", "a", "-", "Z9", " x "}) {
      const std::string id = idTextFrom(static_cast<char>(code) + std::string(rest));
      EXPECT_TRUE(id.empty() || isIdText(id)) << code << rest << " gave " << id;
    }
}

TEST(UntakenId, CountsFromTwoOn) {
  const std::set<std::string> ids = {"roll", "roll-2", "curl"};
  const auto taken = [&](const std::string& id) { return ids.contains(id); };
  EXPECT_EQ(untakenId("roll", taken), "roll-3");
  EXPECT_EQ(untakenId("curl", taken), "curl-2");
  EXPECT_EQ(untakenId("roll-2", taken), "roll-2-2");
  EXPECT_EQ(untakenId("swim", taken), "swim");
}

} // namespace
} // namespace matwright
