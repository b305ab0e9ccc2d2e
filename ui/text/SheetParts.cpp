#include "ui/text/SheetParts.h"

#include "ui/text/CautionText.h"
#include "ui/text/FindingText.h"
#include "ui/text/RuleText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("PersonSheetText", text); }

QString from(const std::string& words) { return QString::fromStdString(words); }

// Where and from when on it matters; empty where it looks at each movement.
QString whenText(const Rule& rule) {
  if (rule.scope == Scope::step && !rule.threshold)
    return {};
  if (rule.scope != Scope::order || !rule.after || !rule.threshold)
    return placeText(rule);
  const QString before = demandText(rule.after->demand),
                mark = amountText(rule.threshold->amount, rule.threshold->unit);
  return rule.after->lasting > Seconds{}
             ? tr("less than %1 after more than %2 of this: %3").arg(mark, clock(rule.after->lasting), before)
             : tr("less than %1 after this: %2").arg(mark, before);
}

QString concernText(const SheetRule& said) {
  if (said.rule.scope == Scope::wholeClass)
    return titleText(said.rule);
  QString what = demandText(said.asks);
  if (!said.asks.any.empty() && !said.asks.all.empty()) {
    Demand some = said.asks;
    some.all = {};
    what = tr("%1 together with %2").arg(demandText(some), featureList(said.asks.all));
  }
  if (said.rule.scope == Scope::missing)
    return QStringLiteral("%1: %2").arg(placeText(said.rule), what);
  const QString when = whenText(said.rule);
  return when.isEmpty() ? what : QStringLiteral("%1, %2").arg(what, when);
}

QString coverText(const Clearance& paper) {
  return paper.features.empty() ? tr("all that belongs to the condition") : featureList(paper.features);
}

QString hangingText(const SheetQuestion& question) {
  QStringList words;
  if (question.speaking.count > 0)
    words << tr("Until it is known it is taken as holding: cautions up to \u201c%1\u201d.")
                 .arg(text(question.speaking.strongest));
  if (question.silent.count > 0)
    words << tr("The answer may raise a caution, up to \u201c%1\u201d.").arg(text(question.silent.strongest));
  return words.join(QLatin1Char(' '));
}

} // namespace

void addOnce(QStringList& list, const QString& words) {
  if (!words.isEmpty() && !list.contains(words))
    list << words;
}

QString sentence(const std::string& note) {
  const QString words = from(note).trimmed();
  return words.isEmpty() || QStringLiteral(".!?").contains(words.back()) ? words : words + QLatin1Char('.');
}

QString shortText(Verification verification) {
  switch (verification) {
  case Verification::seen:
    return tr("seen");
  case Verification::secondary:
    return tr("second hand");
  case Verification::cited:
    return tr("cited");
  case Verification::memory:
    return tr("from memory");
  }
  return {};
}

QString thresholdOnSheet(const Rule& rule) {
  if (!rule.threshold || rule.threshold->amount == rule.threshold->usual)
    return markText(rule);
  return tr("The mark is set by the teacher; the usual one is %1.")
      .arg(amountText(rule.threshold->usual, rule.threshold->unit));
}

QString concernsText(const SheetRow& row) {
  QStringList all;
  for (const SheetRule& said : row.rules)
    addOnce(all, concernText(said));
  return all.join(QStringLiteral("; "));
}

bool onWholeClass(const SheetRow& row) {
  return std::all_of(row.rules.begin(), row.rules.end(),
                     [](const SheetRule& said) { return said.rule.scope == Scope::wholeClass; });
}

QString paperText(const SheetPaper& paper) {
  const Clearance& clearance = paper.clearance;
  QString words = clearance.sets ? tr("Written instruction %1, about %2: \u201c%3\u201d")
                                       .arg(giverText(clearance), coverText(clearance), text(*clearance.sets))
                                 : tr("Clearance %1, about %2").arg(giverText(clearance), coverText(clearance));
  if (paper.state == PaperState::expired)
    words += tr("; expired on %1").arg(dateText(*clearance.until));
  else if (clearance.until)
    words += tr("; holds until %1").arg(dateText(*clearance.until));
  if (paper.state == PaperState::toCome)
    words += tr("; does not hold yet");
  words += QLatin1Char('.');
  if (!clearance.note.empty())
    words += QLatin1Char(' ') + tr("Noted there: %1").arg(sentence(clearance.note));
  return words;
}

QString answerText(const SheetQualifier& qualifier) {
  const QString name = from(qualifier.spec.name);
  if (const bool* flag = std::get_if<bool>(&*qualifier.answer))
    return *flag ? tr("%1: yes").arg(name) : tr("%1: no").arg(name);
  if (const Date* date = std::get_if<Date>(&*qualifier.answer)) {
    if (qualifier.spec.kind == QualifierKind::pregnancyWeek)
      return tr("%1: %2 (due %3)").arg(name).arg(qualifier.week).arg(dateText(*date));
    return qualifier.week < 0 ? tr("%1: %2, still to come").arg(name, dateText(*date))
                              : tr("%1: %2 (weeks since: %3)").arg(name, dateText(*date)).arg(qualifier.week);
  }
  return QStringLiteral("%1: %2").arg(name, from(std::get<std::string>(*qualifier.answer)));
}

QString questionText(const SheetQuestion& question, const PersonSheet& sheet) {
  QString words;
  switch (question.kind) {
  case QuestionKind::permission: {
    const SheetRow& row = sheet.rows[question.row];
    return onWholeClass(row)
               ? tr("May %1 take part as things are? %2").arg(from(sheet.who), from(row.why))
               : tr("May %1 do this, and within which limits: %2?").arg(from(sheet.who), concernsText(row));
  }
  case QuestionKind::renewal: {
    const Clearance& paper = question.paper->clearance;
    return (paper.sets ? tr("%1: does the written instruction %2 about %3 still hold? It expired on %4.")
                       : tr("%1: is the clearance %2 about %3 renewed? It expired on %4."))
        .arg(from(question.condition), giverText(paper), coverText(paper), dateText(*paper.until));
  }
  case QuestionKind::qualifier:
    words = QStringLiteral("%1: %2?").arg(from(question.condition), question.asked->spec.kind == QualifierKind::choice
                                                                        ? qualifierText(question.asked->spec)
                                                                        : from(question.asked->spec.name));
    break;
  case QuestionKind::unscreened:
    return tr("%1: what should be left out, asked first, adapted or watched?").arg(from(question.condition));
  case QuestionKind::age:
    words = tr("The age of %1 is not noted: under 18, or 65 and over?").arg(from(sheet.who));
    break;
  }
  const QString hanging = hangingText(question);
  return hanging.isEmpty() ? words : words + QLatin1Char(' ') + hanging;
}

} // namespace matwright
