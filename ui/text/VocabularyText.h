// The words of the core as people read them. The one place where they are translated.
#pragma once

#include "core/evaluate/Evaluation.h"

#include <QString>

namespace matwright {

QString text(Side side);
QString text(Elevation elevation);
QString text(Region region);
QString text(SpineAction action);
QString text(Breath breath); // "breathe in", "hold" ...
QString text(Level level);   // "leave out", "ask first", "adapt", "watch"
QString text(Strength strength);
QString text(Verification verification);
QString text(Urgency urgency); // a heading: "During class: stop at once"
QString text(AgeBand band);    // "65 to 79"
QString text(OptionKind kind);
QString text(Repertoire repertoire);
QString text(Sides sides);
QString text(Feature feature);         // a short name: "loaded bend of the spine"
QString definition(Feature feature);   // when it is true, one sentence
QString shortText(SpineAction action); // one word: "bend", "arch" ...

// "0:50", "12:05", "1:02:10"; whole seconds, rounded. Negative lengths carry a minus sign.
QString clock(Seconds seconds);
QString signedClock(Seconds seconds);  // "+0:50", "-0:10", "0:00"
QString wholeMinutes(Seconds seconds); // "47 min"

// "10 breaths", "8 alternating", "5 each side", "5 left", "30 s each side".
QString doseText(const Dose& dose, Sides sides, std::optional<Side> onlySide);
// "in 5, out 5 at ½ s a count"; `counts` alone: "in 5, out 5".
QString tempoText(const Tempo& tempo);
QString breathText(const Tempo& tempo);

QString withCapital(QString text); // "leave out" -> "Leave out"

QString dateText(Date date); // in the user's locale, long form

// Names by id; the id itself for what is not on file.
QString movementName(const Knowledge& knowledge, const MovementId& id);
QString optionName(const Knowledge& knowledge, const MovementId& movement,
                   const OptionId& option); // "as written" when empty
QString positionName(const Knowledge& knowledge, const PositionId& id);
QString featureList(FeatureSet features); // "loaded bend of the spine, head held off the mat"

} // namespace matwright
