#include "core/store/JsonText.h"

#include <cmath>
#include <cstring>
#include <gtest/gtest.h>
#include <locale>
#include <random>

namespace matwright {
namespace {

Error errorOf(std::string_view text) {
  const auto tree = parseJson(text, "f.json");
  return tree ? Error{} : tree.error();
}

void expectSyntaxError(std::string_view text, const char* place) {
  const Error error = errorOf(text);
  EXPECT_EQ(error.code, ErrorCode::notJson) << text;
  EXPECT_EQ(error.path, place) << text;
  EXPECT_EQ(error.file, "f.json");
}

TEST(ParseJson, ReadsWhatJsonIs) {
  const auto tree = parseJson(R"( {"a": [1, -2, 2.5, "t\u00e9\n", true, false, null, {}, []]} )", "");
  ASSERT_TRUE(tree);
  EXPECT_EQ(*tree, (Json{{"a", {1, -2, 2.5, "t\u00e9\n", true, false, nullptr, Json::object(), Json::array()}}}));
  EXPECT_EQ(parseJson("7", ""), Json(7));
}

TEST(ParseJson, GivesLineAndColumnOfWhatIsNoJson) {
  expectSyntaxError("", "line 1, column 1");
  expectSyntaxError("{", "line 1, column 2");
  expectSyntaxError("{\"a\": 1,}", "line 1, column 9");
  expectSyntaxError("{\n  \"a\": 1\n  \"b\": 2\n}", "line 3, column 5");
  expectSyntaxError("[1] x", "line 1, column 5");
  expectSyntaxError("// no comments\n1", "line 1, column 1");
  expectSyntaxError("[01]", "line 1, column 3");
  expectSyntaxError("['a']", "line 1, column 2");
}

TEST(ParseJson, CountsColumnsInCharacters) { expectSyntaxError("[\"\u00e9\u4e0b\", x]", "line 1, column 8"); }

TEST(ParseJson, RefusesNumbersThatAreNotFinite) {
  for (const char* text : {"[NaN]", "[Infinity]", "[-Infinity]", "[nan]", "[1e999]", "[-1e999]"})
    EXPECT_EQ(errorOf(text).code, ErrorCode::notJson) << text;
}

TEST(ParseJson, RefusesTextThatIsNoUtf8) {
  for (const char* text : {"[\"\xff\"]", "[\"\xc3\"]", "[\"\xc0\xaf\"]", "[\"\xed\xa0\x80\"]", "[\"\xf5\x80\x80\x80\"]",
                           "[\"\\ud800\"]", "\xff"})
    EXPECT_EQ(errorOf(text).code, ErrorCode::notJson) << text;
}

TEST(ParseJson, RefusesControlCharactersInText) {
  EXPECT_EQ(errorOf("[\"a\nb\"]").code, ErrorCode::notJson);
  EXPECT_EQ(errorOf(std::string_view("[\"a\0b\"]", 7)).code, ErrorCode::notJson);
}

TEST(ParseJson, RefusesKeysThatStandTwice) {
  const auto place = [](std::string_view text) {
    const Error error = errorOf(text);
    EXPECT_EQ(error.code, ErrorCode::duplicateId) << text;
    return error.path;
  };
  EXPECT_EQ(place(R"({"a": 1, "a": 1})"), "/a");
  EXPECT_EQ(place(R"({"a": 1, "b": 2, "\u0061": 3})"), "/a");
  EXPECT_EQ(place(R"({"s": [{}, {"x": {"k": 1, "l": [], "k": {}}}]})"), "/s/1/x/k");
  EXPECT_EQ(place(R"([[0, 1, {"a/b~c": 1, "a/b~c": 2}]])"), "/0/2/a~1b~0c");
  EXPECT_EQ(place(R"({"": 1, "": 2})"), "/");
  EXPECT_TRUE(parseJson(R"({"a": {"a": 1}, "b": [{"a": 1}, {"a": 1}]})", ""));
}

TEST(ParseJson, StopsAtItsDeepestNesting) {
  const auto nested = [](std::size_t depth, char open, char close) {
    return std::string(depth, open) + std::string(depth, close);
  };
  EXPECT_TRUE(parseJson(nested(kDeepestNesting, '[', ']'), ""));
  expectSyntaxError(nested(kDeepestNesting + 1, '[', ']'), "line 1, column 65");
  expectSyntaxError("\n" + std::string(kDeepestNesting, '[') + "{}", "line 2, column 65");
}

TEST(ParseJson, SurvivesAHundredThousandBrackets) {
  expectSyntaxError(std::string(100'000, '['), "line 1, column 65");
  std::string objects;
  for (int i = 0; i < 100'000; ++i)
    objects += "{\"a\":";
  expectSyntaxError(objects, "line 1, column 321");
}

TEST(ParseJson, DoesNotCountBracketsInText) {
  const std::string brackets(1000, '[');
  EXPECT_TRUE(parseJson("[\"" + brackets + "\", \"\\\"" + brackets + "\", \"\\\\\", []]", ""));
}

TEST(ParseJson, RefusesWhatIsTooLarge) { EXPECT_EQ(errorOf(std::string(17 << 20, ' ')).code, ErrorCode::tooLarge); }

TEST(CanonicalText, IsSortedAndIndented) {
  const Json tree = {
      {"b", {1, 2.5, "x"}}, {"a", {{"z", nullptr}, {"y", true}}}, {"c", Json::array()}, {"d", Json::object()}};
  EXPECT_EQ(canonicalText(tree), "{\n"
                                 "  \"a\": {\n"
                                 "    \"y\": true,\n"
                                 "    \"z\": null\n"
                                 "  },\n"
                                 "  \"b\": [\n"
                                 "    1,\n"
                                 "    2.5,\n"
                                 "    \"x\"\n"
                                 "  ],\n"
                                 "  \"c\": [],\n"
                                 "  \"d\": {}\n"
                                 "}\n");
}

TEST(CanonicalText, KeepsLettersAndEscapesSigns) {
  EXPECT_EQ(canonicalText("t\u00e9 \"\\\n\t\x01"), "\"t\u00e9 \\\"\\\\\\n\\t\\u0001\"\n");
}

TEST(CanonicalText, PutsAMarkWhereTextIsNoUtf8) { EXPECT_EQ(canonicalText("a\xff"), "\"a\uFFFD\"\n"); }

TEST(CanonicalText, DoesNotListenToTheLocale) {
  // A locale with a decimal comma need not be installed; the global C++ one can be made here.
  struct Comma : std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
  };
  const std::locale before = std::locale::global(std::locale(std::locale::classic(), new Comma));
  const std::string text = canonicalText({1234567, 1234.5});
  const auto tree = parseJson("[1234.5]", "");
  std::locale::global(before);
  EXPECT_EQ(text, "[\n  1234567,\n  1234.5\n]\n");
  EXPECT_EQ(tree, (Json{1234.5}));
}

TEST(NumberText, IsTheShortestThatReadsBack) {
  EXPECT_EQ(numberText(0.1), "0.1");
  EXPECT_EQ(numberText(1.0 / 3), "0.3333333333333333");
  EXPECT_EQ(numberText(3000), "3000");
  EXPECT_EQ(numberText(5e-324), "5e-324");
  EXPECT_EQ(numberText(-0.0), "0");
  EXPECT_EQ(numberText(NAN), "null");
}

TEST(NumberText, ReadsBackAsTheSameNumberAndText) {
  std::mt19937_64 random(7);
  for (int i = 0; i < 20'000; ++i) {
    const std::uint64_t bits = random();
    double value = 0;
    static_assert(sizeof bits == sizeof value);
    std::memcpy(&value, &bits, sizeof value);
    if (!std::isfinite(value))
      continue;
    const auto back = parseJson(numberText(value), "");
    ASSERT_TRUE(back) << numberText(value);
    ASSERT_EQ(back->get<double>(), value);
    ASSERT_EQ(canonicalText(*back), numberText(value) + "\n");
  }
}

TEST(PointerTo, EscapesAsRfc6901Says) { // RFC 6901, section 3: ~ is ~0 and / is ~1
  EXPECT_EQ(pointerTo("", "a"), "/a");
  EXPECT_EQ(pointerTo("/a", std::size_t{12}), "/a/12");
  EXPECT_EQ(pointerTo("", "a/b~"), "/a~1b~0");
}

TEST(ExtractOf, IsShortAndClean) {
  EXPECT_EQ(extractOf("short"), "short");
  EXPECT_EQ(extractOf("a\nb\x7f"), "a b ");
  EXPECT_EQ(extractOf("\xff"), "\uFFFD");
  const std::string long1 = extractOf(std::string(1000, 'x'));
  EXPECT_EQ(long1, std::string(76, 'x') + "...");
  std::string letters;
  for (int i = 0; i < 100; ++i)
    letters += "\u4e0b";
  const std::string cut = extractOf(letters); // 25 letters of three bytes fit into 76
  EXPECT_EQ(cut, letters.substr(0, 75) + "...");
}

TEST(ExtractOf, NamesWhatIsLarge) {
  EXPECT_EQ(extractOfValue(Json::object()), "an object");
  EXPECT_EQ(extractOfValue(Json{1, 2, 3}), "a list of 3");
  EXPECT_EQ(extractOfValue("text"), "text");
  EXPECT_EQ(extractOfValue(2.5), "2.5");
  EXPECT_EQ(extractOfValue(nullptr), "null");
}

} // namespace
} // namespace matwright
