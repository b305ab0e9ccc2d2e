#include "ui/text/ErrorText.h"

#include <gtest/gtest.h>
#include <set>

namespace matwright {
namespace {

TEST(ErrorText, NamesFilePlaceWhatWasExpectedAndWhatWasFound) {
  const Error error{ErrorCode::outOfRange, "monday.json", "/sections/0/steps/4/dose/amount",
                    "whole number from 1 to 600", "0"};
  EXPECT_EQ(
      text(error),
      QStringLiteral("monday.json: /sections/0/steps/4/dose/amount: expected whole number from 1 to 600, found 0"));
}

TEST(ErrorText, EveryCodeHasASentenceOfItsOwn) {
  std::set<QString> said;
  for (int code = 0; code <= static_cast<int>(ErrorCode::changedOnDisk); ++code)
    said.insert(text(Error{static_cast<ErrorCode>(code), {}, {}, "e", "f"}));
  EXPECT_FALSE(said.contains(QString()));
  EXPECT_GE(said.size(), 12U); // wrong types, ranges and words share "expected ..., found ..."
}

TEST(ErrorText, EveryRefusalHasASentenceOfItsOwn) {
  std::set<QString> said;
  for (int code = 0; code <= static_cast<int>(Refusal::tooManyVariants); ++code)
    EXPECT_TRUE(said.insert(text(static_cast<Refusal>(code))).second);
  EXPECT_FALSE(said.contains(QString()));
}

} // namespace
} // namespace matwright
