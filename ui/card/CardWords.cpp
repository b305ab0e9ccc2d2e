#include "ui/card/CardWords.h"

#include "ui/text/CautionText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>
#include <iterator>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Card", text); }

QString joined(const QStringList& parts) {
  QStringList filled;
  for (const QString& part : parts)
    if (!part.isEmpty())
      filled << part;
  return filled.join(QStringLiteral(" \u00b7 "));
}

// Everybody, where none is named.
QString whoText(const std::vector<std::string>& initials, const QString& between) {
  QStringList who;
  for (const std::string& each : initials)
    who << QString::fromStdString(each);
  return who.isEmpty() ? tr("all") : who.join(between);
}

// One line a level: the mark and whom it concerns. Words that stand there already are not said again.
std::vector<CautionLine> linesByLevel(const std::vector<CardCaution>& cautions) {
  std::vector<CautionLine> lines;
  bool all = false;
  for (const CardCaution& caution : cautions) {
    const QString who = whoText(caution.initials, QStringLiteral(" "));
    if (lines.empty() || lines.back().level != caution.level) {
      lines.push_back({caution.level, who});
      all = caution.initials.empty();
    } else if (!all || !caution.initials.empty()) {
      lines.back().text += QLatin1Char(' ') + who;
      all |= caution.initials.empty();
    }
  }
  return lines;
}

CautionLine lineOf(const CardCaution& caution) {
  QString text = caution.initials.empty() ? tr("all:") : whoText(caution.initials, QStringLiteral(", "));
  const QString instead = QString::fromStdString(caution.instead);
  text += QLatin1Char(' ') + (instead.isEmpty() ? matwright::text(caution.level) : instead);
  return {caution.level, text};
}

QString variantLine(const CardVariant& variant) {
  const QString option = QString::fromStdString(variant.option);
  QString what = QString::fromStdString(variant.name);
  if (what.isEmpty())
    what = option.isEmpty() ? tr("as written") : option;
  else if (!option.isEmpty())
    what = tr("%1 (%2)").arg(what, option);
  const QString who = whoText(variant.initials, QStringLiteral(", "));
  return variant.initials.size() == 1 ? tr("%1 does: %2").arg(who, what) : tr("%1 do: %2").arg(who, what);
}

RowWords rowOf(const CardRow& row, Density density) {
  RowWords words;
  words.row = &row;
  words.time = clock(row.at);
  words.name = QString::fromStdString(row.name);
  words.option = QString::fromStdString(row.option);
  words.dose = doseText(row.dose, row.sides, row.onlySide);
  words.note = QString::fromStdString(row.note).simplified();
  if (density != Density::namesAndDoses)
    words.cue =
        joined({row.wayTo.empty() ? QString() : tr("\u2192 %1").arg(QString::fromStdString(row.wayTo).toLower()),
                QString::fromStdString(row.action)});
  if (density == Density::full)
    words.breath = breathText(row.tempo).replace(QRegularExpression(QStringLiteral(" (?=\\d)")), QString(QChar::Nbsp));
  if (density == Density::namesAndDoses)
    words.cautions = linesByLevel(row.cautions);
  else
    for (const CardCaution& caution : row.cautions)
      words.cautions.push_back(lineOf(caution));
  for (const CardVariant& variant : row.variants)
    words.variants << variantLine(variant);
  return words;
}

} // namespace

CardWords wordsOf(const Card& card, Density density) {
  CardWords words;
  words.title = QString::fromStdString(card.title);
  if (words.title.isEmpty())
    words.title = tr("Untitled class");
  const int from = static_cast<int>(std::lround(card.likelyFrom.minutes()));
  const int to = static_cast<int>(std::lround(card.likelyTo.minutes()));
  words.subtitle =
      joined({card.date ? dateText(*card.date) : QString(),
              from == to ? wholeMinutes(card.length)
                         : tr("%1, likely %2 to %3").arg(wholeMinutes(card.length)).arg(from).arg(to),
              card.changes == 1 ? tr("1 change of position") : tr("%1 changes of position").arg(card.changes)});
  QStringList people;
  for (const std::string& person : card.people)
    people << QString::fromStdString(person);
  words.people = people.join(QStringLiteral("  "));
  words.note = QString::fromStdString(card.note).simplified();
  // What is only worth watching in general is for the screen; paper is short.
  std::vector<CardCaution> general;
  std::copy_if(card.wholeClass.begin(), card.wholeClass.end(), std::back_inserter(general),
               [](const CardCaution& caution) { return caution.level != Level::watch; });
  if (density == Density::namesAndDoses)
    words.wholeClass = linesByLevel(general);
  else
    std::transform(general.begin(), general.end(), std::back_inserter(words.wholeClass), lineOf);
  for (const CardSection& section : card.sections) {
    SectionWords& into = words.sections.emplace_back();
    into.name = QString::fromStdString(section.name);
    for (const CardRow& row : section.rows)
      into.rows.push_back(rowOf(row, density));
  }
  if (!card.screened)
    words.notices << tr("Not screened for anybody: nobody was chosen for this class.");
  words.notices << tr("Stop and ask: %1.").arg(stopSigns().join(QStringLiteral(", "))) + QLatin1Char(' ') +
                       standingNotice();
  return words;
}

} // namespace matwright
