#include "core/order/SopText.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

const std::string kHeader = "NAME: three.sop\nTYPE: SOP\nCOMMENT: three nodes\nDIMENSION: 3\n"
                            "EDGE_WEIGHT_TYPE: EXPLICIT\nEDGE_WEIGHT_FORMAT: FULL_MATRIX\nEDGE_WEIGHT_SECTION\n";
const std::string kMatrix = "0 4 9\n-1 0 2\n-1 -1 0\n";

Error errorOf(const std::string& text) {
  const auto read = readSop(text, "three.sop");
  EXPECT_FALSE(read.has_value()) << text;
  return read ? Error{} : read.error();
}

TEST(SopText, ReadsBothForms) {
  const auto withHeader = readSop(kHeader + "3\n" + kMatrix + "EOF\n", "three.sop");
  ASSERT_TRUE(withHeader);
  EXPECT_EQ(withHeader->name, "three.sop");
  const auto bare = readSop("3\r\n0\t4\t9\r\n-1\t0\t2\r\n-1\t-1\t0\r\n", "three.sop");
  ASSERT_TRUE(bare);
  EXPECT_EQ(bare->name, "");
  EXPECT_EQ(bare->problem, withHeader->problem);
  EXPECT_EQ(bare->problem.items.size(), 3U);
  EXPECT_EQ(bare->problem.ways[1], 4);
  EXPECT_EQ(bare->problem.first, 0);
  EXPECT_EQ(bare->problem.last, 2);
}

TEST(SopText, NamesTheLineThatItDoesNotUnderstand) {
  EXPECT_EQ(errorOf("3\n0 4 9\n-1 x 2\n-1 -1 0\n"),
            (Error{ErrorCode::wrongType, "three.sop", "/line/3", "whole number from -1 to 1000000000", "x"}));
  EXPECT_EQ(errorOf("3\n0 4 9\n-1 0.5 2\n-1 -1 0\n").code, ErrorCode::wrongType);
  EXPECT_EQ(errorOf("3\n0 4 9\n-1 -7 2\n-1 -1 0\n").code, ErrorCode::outOfRange);
  EXPECT_EQ(errorOf("3\n0 4 99999999999999999999\n-1 0 2\n-1 -1 0\n").code, ErrorCode::outOfRange);
  EXPECT_EQ(errorOf("3\n0 4 9\n-1 0 2\n-1 -1\n").code, ErrorCode::missingKey);
  EXPECT_EQ(errorOf("3\n" + kMatrix + "7\n").path, "/line/5");
  EXPECT_EQ(errorOf("").code, ErrorCode::wrongFormat);
  EXPECT_EQ(errorOf("1\n0\n").code, ErrorCode::outOfRange);
}

TEST(SopText, RefusesAHeaderOfSomethingElse) {
  EXPECT_EQ(errorOf("TYPE: TSP\n").code, ErrorCode::unknownWord);
  EXPECT_EQ(errorOf("SPEED: 3\n").code, ErrorCode::unknownKey);
  EXPECT_EQ(errorOf("hello\n").code, ErrorCode::wrongFormat);
  EXPECT_EQ(errorOf("NAME: three\n").code, ErrorCode::missingKey);
  EXPECT_EQ(errorOf(kHeader + "4\n" + kMatrix).code, ErrorCode::outOfRange);
  EXPECT_EQ(errorOf("DIMENSION: many\n").code, ErrorCode::wrongType);
}

TEST(SopText, RefusesPrecedencesThatContradictEachOther) {
  EXPECT_EQ(errorOf("4\n0 1 1 1\n-1 0 -1 1\n-1 -1 0 1\n-1 -1 -1 0\n").code, ErrorCode::wrongFormat);
}

} // namespace
} // namespace matwright
