// The checks themselves, on small made-up projects: that they find what is wrong, and keep quiet about what is right.
#include "tests/architecture/Checks.h"

#include <gmock/gmock.h>

namespace matwright::architecture {
namespace {

using testing::AllOf;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

RoomTable tableOf(std::string_view text) {
  Faults faults;
  const auto rows = readRows(text, faults);
  EXPECT_THAT(faults, IsEmpty());
  return RoomTable(rows);
}

const char* const kHouse = "core/low:\n"
                           "core/middle: core/low\n"
                           "core/high: core/middle\n"
                           "ui/left: core/*\n"
                           "ui/right: core/*\n"
                           "tests/support: core/*\n"
                           "tests/fuzz: core/low\n";

std::string including(const std::string& target) { return "#pragma once\n#include \"" + target + "\"\n"; }
std::string includingSystem(const std::string& target) { return "#include <" + target + ">\n"; }

TEST(Rows, SkipCommentsAndReportLinesWithoutAName) {
  Faults faults;
  const auto rows = readRows("# all\n\na: b c # and so on\n  : d\nno colon\n", faults);
  ASSERT_THAT(rows, SizeIs(1));
  EXPECT_EQ(rows[0].name, "a");
  EXPECT_THAT(rows[0].words, ElementsAre("b", "c"));
  EXPECT_THAT(faults, SizeIs(2));
}

TEST(Patterns, FitWholeNames) {
  EXPECT_TRUE(fits("core/*", "core/plan"));
  EXPECT_TRUE(fits("Q*", "QtCore/QString"));
  EXPECT_TRUE(fits("*", ""));
  EXPECT_FALSE(fits("core/*", "score/plan"));
  EXPECT_FALSE(fits("core/plan", "core/planning"));
  EXPECT_FALSE(fits("", "core"));
}

TEST(Table, RefusesCirclesUnknownRoomsAndSecondRows) {
  EXPECT_THAT(tableOf("core/a: core/b\ncore/b: core/a\n").faults(),
              ElementsAre("core/a comes back to itself", "core/b comes back to itself"));
  EXPECT_THAT(tableOf("core/a: core/c\n").faults(), ElementsAre("core/a -> core/c: no such room"));
  EXPECT_THAT(tableOf("core/a:\ncore/a:\n").faults(), ElementsAre("core/a has two rows"));
  EXPECT_THAT(tableOf(kHouse).faults(), IsEmpty());
}

TEST(Arrows, LeadDownwardsThroughSeveralRooms) {
  const std::vector<SourceFile> files{{"core/high/A.h", including("core/low/B.h")},
                                      {"core/high/deeper/A.h", including("core/high/A.h")},
                                      {"ui/left/A.cpp", including("core/high/A.h") + "#include \"A.moc\"\n"}};
  EXPECT_THAT(brokenArrows(tableOf(kHouse), files), IsEmpty());
}

TEST(Arrows, ThatBreakAreNamedWithFileLineAndRooms) {
  const RoomTable table = tableOf(kHouse);
  EXPECT_THAT(brokenArrows(table, {{"core/low/B.h", including("core/high/A.h")}}),
              ElementsAre(AllOf(HasSubstr("core/low/B.h:2:"), HasSubstr("core/low -> core/high"))));
  EXPECT_THAT(brokenArrows(table, {{"ui/left/A.h", including("ui/right/B.h")}}),
              ElementsAre(HasSubstr("ui/left -> ui/right")));
  EXPECT_THAT(brokenArrows(table, {{"core/low/B.cpp", "#  include \"core/middle/A.h\"\n"}}),
              ElementsAre(HasSubstr("core/low -> core/middle")));
}

TEST(Arrows, NeedPathsFromTheSourceRootAndFilesInRooms) {
  const RoomTable table = tableOf(kHouse);
  EXPECT_THAT(brokenArrows(table, {{"core/low/B.cpp", including("B.h")}}),
              ElementsAre(HasSubstr("B.h is not in a room")));
  EXPECT_THAT(brokenArrows(table, {{"core/low/B.cpp", including("../low/B.h")}}), SizeIs(1));
  EXPECT_THAT(brokenArrows(table, {{"core/B.cpp", ""}}), ElementsAre("core/B.cpp: stands in no room"));
  EXPECT_THAT(brokenArrows(table, {{"core/attic/B.cpp", ""}}), ElementsAre("core/attic/B.cpp: stands in no room"));
}

TEST(Arrows, OfTestsAreThoseOfTheRoomTheyMirrorAndTheSupport) {
  const RoomTable table = tableOf(kHouse);
  const std::vector<SourceFile> fine{{"tests/core/middle/A_test.cpp", including("core/middle/A.h")},
                                     {"tests/core/middle/A_test.cpp", including("core/low/A.h")},
                                     {"tests/core/middle/A_test.cpp", including("tests/core/middle/Sample.h")},
                                     {"tests/core/middle/A_test.cpp", including("tests/support/Sample.h")},
                                     {"tests/support/Sample.h", including("core/high/A.h")},
                                     {"tests/fuzz/low.cpp", including("core/low/A.h")}};
  EXPECT_THAT(brokenArrows(table, fine), IsEmpty());
  EXPECT_THAT(brokenArrows(table, {{"tests/core/middle/A_test.cpp", including("core/high/A.h")}}),
              ElementsAre(HasSubstr("tests/core/middle -> core/high")));
  EXPECT_THAT(brokenArrows(table, {{"tests/core/middle/A_test.cpp", including("tests/core/low/Sample.h")}}),
              ElementsAre(HasSubstr("tests/core/middle -> tests/core/low")));
  EXPECT_THAT(brokenArrows(table, {{"tests/fuzz/low.cpp", including("core/high/A.h")}}), SizeIs(1));
  EXPECT_THAT(brokenArrows(table, {{"core/high/A.cpp", including("tests/support/Sample.h")}}), SizeIs(1));
}

TEST(Arrows, OfAMirrorGrowByARowOfItsOwn) {
  const RoomTable table = tableOf(std::string(kHouse) + "tests/core/middle: core/high\n");
  EXPECT_THAT(brokenArrows(table, {{"tests/core/middle/A_test.cpp", including("core/high/A.h")}}), IsEmpty());
  EXPECT_THAT(brokenArrows(table, {{"tests/core/middle/A_test.cpp", including("ui/left/A.h")}}), SizeIs(1));
}

TEST(Headers, AreForTheRoomsOfTheRowThatFitsMostExactly) {
  Faults faults;
  const auto headers = readRows("Q*: ui/*\njson/*: core/low tests/*\nQtWidgets:\n", faults);
  const RoomTable table = tableOf(kHouse);
  const std::vector<SourceFile> fine{{"ui/left/A.h", includingSystem("QString")},
                                     {"core/low/A.h", includingSystem("json/json.hpp")},
                                     {"tests/core/high/A_test.cpp", includingSystem("json/json.hpp")},
                                     {"core/high/A.h", includingSystem("vector")}};
  EXPECT_THAT(strangeHeaders(headers, table, fine), IsEmpty());
  EXPECT_THAT(strangeHeaders(headers, table, {{"core/low/A.h", includingSystem("QString")}}),
              ElementsAre("core/low/A.h:1: <QString> is not for core/low"));
  EXPECT_THAT(strangeHeaders(headers, table, {{"core/high/A.h", includingSystem("json/json.hpp")}}), SizeIs(1));
  EXPECT_THAT(strangeHeaders(headers, table, {{"ui/left/A.h", includingSystem("QtWidgets")}}), SizeIs(1));
}

TEST(Links, StayWithinTheArrowsAndTheFolder) {
  const RoomTable table = tableOf(kHouse);
  EXPECT_THAT(
      brokenLinks(table, {{"core/middle/CMakeLists.txt",
                           "matwright_room(core_middle SOURCES A.cpp\n  DEPENDS core_low LINKS json::json)\n"}}),
      IsEmpty());
  EXPECT_THAT(brokenLinks(table, {{"core/low/CMakeLists.txt", "matwright_room(core_low DEPENDS core_high)\n"}}),
              ElementsAre(HasSubstr("core/low -> core/high")));
  EXPECT_THAT(brokenLinks(table, {{"core/low/CMakeLists.txt", "matwright_room(core_high)\n"}}),
              ElementsAre("core/low/CMakeLists.txt: declares core/high"));
}

TEST(Links, AreThereForAllThatIsIncluded) {
  const RoomTable table = tableOf(kHouse);
  const SourceFile low{"core/low/CMakeLists.txt", "matwright_room(core_low)\n"};
  const SourceFile middle{"core/middle/CMakeLists.txt", "matwright_room(core_middle DEPENDS core_low)\n"};
  const SourceFile source{"core/high/A.h", including("core/low/B.h")};
  EXPECT_THAT(
      missingLinks(
          table,
          {low, middle, source, {"core/high/CMakeLists.txt", "matwright_room(core_high DEPENDS core_middle)\n"}}),
      IsEmpty());
  EXPECT_THAT(missingLinks(table, {low, middle, source, {"core/high/CMakeLists.txt", "matwright_room(core_high)\n"}}),
              ElementsAre(AllOf(HasSubstr("core/high"), HasSubstr("does not link core/low"))));
}

TEST(Rooms, AndFoldersMatchBothWays) {
  const RoomTable table = tableOf("core/low:\nui/left: core/low\ntests/support:\n");
  EXPECT_THAT(unmatchedRooms(table, {"core/low", "ui/left", "tests/data"}), IsEmpty());
  EXPECT_THAT(unmatchedRooms(table, {"core/low", "core/attic"}),
              ElementsAre("core/attic has no row in the table", "ui/left has a row in the table and no folder"));
}

TEST(Length, IsCountedInLinesAndExceptedWithAReason) {
  const std::string long_(static_cast<std::size_t>(kLongestFile) + 1, '\n');
  const std::string just(static_cast<std::size_t>(kLongestFile), '\n');
  EXPECT_EQ(countLines("one\ntwo"), 2);
  EXPECT_THAT(longFiles({}, {{"core/low/A.cpp", just}, {"tests/core/low/A_test.cpp", long_}}), IsEmpty());
  EXPECT_THAT(longFiles({}, {{"core/low/A.cpp", long_}}), ElementsAre("core/low/A.cpp: 451 lines"));
  EXPECT_THAT(longFiles({{"core/low/A.cpp", {"a", "table"}}}, {{"core/low/A.cpp", long_}}), IsEmpty());
  EXPECT_THAT(longFiles({{"core/low/A.cpp", {}}}, {{"core/low/A.cpp", long_}}),
              ElementsAre("core/low/A.cpp: excepted without a reason"));
  EXPECT_THAT(longFiles({{"core/low/A.cpp", {"a", "table"}}}, {{"core/low/A.cpp", just}}),
              ElementsAre("core/low/A.cpp: excepted, and not too long"));
}

TEST(StopWords, AreFoundWithTheirLine) {
  EXPECT_THAT(stopWords({"brimstone"}, {{"a.txt", "one\ntwo brimstone\n"}, {"b.txt", "one\n"}}),
              ElementsAre("a.txt:2: brimstone"));
}

TEST(Top, HasExactlyItsNamesBesideHiddenFilesAndBuilds) {
  EXPECT_THAT(strayNames({"core", "ui"}, {"core", "ui", ".gitignore", "build-test"}), IsEmpty());
  EXPECT_THAT(strayNames({"core", "ui"}, {"core", "notes.txt"}),
              ElementsAre("notes.txt does not belong there", "ui is missing"));
}

} // namespace
} // namespace matwright::architecture
