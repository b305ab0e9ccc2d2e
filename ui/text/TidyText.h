// Putting a class in order, in words.
#pragma once

#include "core/tidy/Tidy.h"

#include <QString>

namespace matwright {

struct TidyWishWords {
  QString name;  // "Fewer rises from the floor"
  QString about; // what it weighs, to the second
};
TidyWishWords wordsFor(TidyReason wish); // of one that is wished for

// "192 s of moving, 24 changes of position, 40 s for wishes".
QString costText(const TidyCost& cost);
// "51 s less moving, 6 changes of position fewer"; also where one of them is more. Empty when both are the same.
QString savedText(const TidyCost& before, const TidyCost& after);
// What is known of the order: "Shortest possible (proven)".
QString outcomeText(const TidyResult& result, const TidyWishes& wishes);
QString progressText(const TidyProgress& progress);

// "Main, from 9 to 5, after Saw".
QString moveText(const Knowledge& knowledge, const TidyResult& result, const TidyMove& move);
QString gainText(const TidyGain& gain);  // "12 s less moving"
QString gainsText(const TidyMove& move); // why it moved

QString levelCountsText(const LevelCounts& counts); // "1 ask first, 2 watch"; empty for none
QString broughtText(const TidyResult& result);      // "Brings cautions: 1 ask first"; for none, that too
QString takenText(const TidyResult& result);        // empty for none

// "143 s"; below ten seconds with a tenth where there is one.
QString secondsText(Seconds seconds);

} // namespace matwright
