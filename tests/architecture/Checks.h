// What is held against the files. Each check returns one sentence a fault, naming the file; none when all is well.
#pragma once

#include "tests/architecture/RoomTable.h"
#include "tests/architecture/SourceFiles.h"

namespace matwright::architecture {

inline constexpr int kLongestFile = 450; // lines

using Faults = std::vector<std::string>;

// Includes in quotes follow the arrows and are written from the source root.
Faults brokenArrows(const RoomTable& table, const std::vector<SourceFile>& files);

// Includes in angle brackets, against rows "header: rooms that may include it"; the row that fits most exactly counts.
Faults strangeHeaders(const std::vector<Row>& headers, const RoomTable& table, const std::vector<SourceFile>& files);

// Rooms link nothing that they may not include.
Faults brokenLinks(const RoomTable& table, const std::vector<SourceFile>& files);

// Rooms link, directly or through others, every room that they include from.
Faults missingLinks(const RoomTable& table, const std::vector<SourceFile>& files);

// Folders of core, ui and app without a row, and rows without a folder. `folders` from the source root.
Faults unmatchedRooms(const RoomTable& table, const std::set<std::string>& folders);

// Files of core, ui and app that are too long and not excepted; exceptions that nothing needs any more.
Faults longFiles(const std::vector<Row>& exceptions, const std::vector<SourceFile>& files);

Faults stopWords(const std::vector<std::string>& words, const std::vector<SourceFile>& files);

// Names at the top of the project that do not belong there, or are missing.
Faults strayNames(const std::set<std::string>& expected, const std::set<std::string>& found);

} // namespace matwright::architecture
