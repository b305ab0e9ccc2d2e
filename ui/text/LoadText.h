// Moments of weight as people read them. An estimate of weight alone: every place that shows a number also leads to
// loadPageHtml(), which says what it is not.
#pragma once

#include "core/evaluate/ClassLoad.h"
#include "core/knowledge/Knowledge.h"

#include <QString>

namespace matwright {

QString text(BodyTable table);    // "de Leva, women"
QString text(LoadedJoint joint);  // "low back"
QString shortText(Breath breath); // for narrow places: "in", "out", "free", "hold"

QString momentText(double newtonMetres);                 // "62 N·m"; tenths below ten
QString momentNumber(double newtonMetres);               // the same without the unit
QString leverText(double lever);                         // "62 % of two straight legs"
QString bodyText(BodyTable table, const BodySize& size); // "Winter (men and women alike), 175 cm, 70 kg"
// Moment-seconds of a class, in newton metres times minutes: "320 N·m × min".
QString momentMinutesText(double newtonMetreSeconds);

// "low back: peak 62 N·m, mean 31 N·m".
QString jointLoadText(LoadedJoint joint, const ByLoadedJoint& peak, const ByLoadedJoint& mean, const BodySize& size);

// What the moments leave out: "Left out: setting free limbs in motion at this tempo adds up to 4 N·m about the hip."
// Empty where that is less than a newton metre.
QString swingText(const ByLoadedJoint& swing, const BodySize& size);

QString loadNotice(); // one sentence for wherever there is no room for the page

// "Curl-up, feet free: moment 81 N·m, compression 1,991 N (…)" with source and how far it was verified.
QString measuredText(const MeasuredTask& task, const Knowledge& knowledge);

QString loadPageTitle();
// In the classes of textStyleOf(), in ui/paper.
QString loadPageHtml(const Knowledge& knowledge, const BodySize& size);

} // namespace matwright
