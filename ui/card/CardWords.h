// The card in words, before anything is measured: what each line says, with nothing about where it stands.
#pragma once

#include "core/handout/Card.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace matwright {

struct CautionLine {
  Level level{};
  QString text; // "R.A. head down, feet on the mat"
};

struct RowWords {
  QString time;
  QString name;
  QString option; // empty as written
  QString cue;    // way and action
  QString note;
  QString dose;
  QString breath;
  std::vector<CautionLine> cautions;
  QStringList variants;         // "R.A. does: Head nod"
  const CardRow* row = nullptr; // of the card, which must outlive this
};

struct SectionWords {
  QString name;
  std::vector<RowWords> rows;
};

struct CardWords {
  QString title;
  QString subtitle; // date, length, likely range, changes of position
  QString people;   // initials, or that nobody was chosen
  QString note;
  std::vector<CautionLine> wholeClass;
  std::vector<SectionWords> sections;
  QStringList notices; // screening, stop signs, what no mark means
};

// How much a row says when space is short.
enum class Density { full, withoutBreath, namesAndDoses };

CardWords wordsOf(const Card& card, Density density);

} // namespace matwright
