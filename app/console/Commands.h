// The commands of matwright-cli. Each prints to the standard output and returns the program's exit code.
#pragma once

#include "app/console/Arguments.h"

namespace matwright {

inline constexpr int kFine = 0;
inline constexpr int kLeaveOut = 1; // check: at least one caution at the level `leave out`
inline constexpr int kBadInput = 2; // files or arguments
inline constexpr int kNoClass = 3;  // compose: none that meets the wishes

int checkCommand(const Arguments& arguments);
int cardCommand(const Arguments& arguments);
int sheetCommand(const Arguments& arguments);
int composeCommand(const Arguments& arguments);
int exportCommand(const Arguments& arguments);
int figureCommand(const Arguments& arguments);
int redFlagsCommand(const Arguments& arguments);
int loadCommand(const Arguments& arguments);
int listCommand(const Arguments& arguments);
int replaceCommand(const Arguments& arguments);
int sopCommand(const Arguments& arguments);
int tidyCommand(const Arguments& arguments);
int validateCommand(const Arguments& arguments);

} // namespace matwright
