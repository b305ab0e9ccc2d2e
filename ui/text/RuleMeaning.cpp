#include "ui/text/RuleMeaning.h"

#include "ui/text/FindingText.h"
#include "ui/text/RuleText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QStringList>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("RuleMeaning", text); }

QString asked(const Demand& demand) {
  const QString words = demandText(demand);
  return words.isEmpty() ? tr("(nothing chosen yet)") : words;
}

QString forWhom(const Rule& rule, const RuleBook& book) {
  QStringList ages;
  rule.ages.forEach([&](AgeBand band) { ages << text(band); });
  const QString aged = ages.join(tr(" or "));
  QString who = rule.ages.empty() ? tr("For everybody") : tr("For people aged %1").arg(aged);
  if (rule.condition) {
    const Condition* condition = book.findCondition(*rule.condition);
    const QString name = QString::fromStdString(condition ? condition->name : rule.condition->value);
    who = rule.ages.empty() ? tr("For people with \"%1\"").arg(name)
                            : tr("For people aged %1 with \"%2\"").arg(aged, name);
  }
  const QString tests = testsText(rule, book);
  return tests.isEmpty() ? who : tr("%1 (%2)").arg(who, tests);
}

QString when(const Rule& rule) {
  const QString asks = asked(rule.asks);
  const QString amount =
      rule.threshold ? amountText(rule.threshold->amount, rule.threshold->unit) : tr("(no amount yet)");
  const bool timed = !rule.threshold || rule.threshold->unit == MeasureUnit::seconds;
  switch (rule.scope) {
  case Scope::step:
    return rule.threshold ? tr("when a step asks for %1, for longer than %2 on one side").arg(asks, amount)
                          : tr("when a step asks for %1").arg(asks);
  case Scope::way:
    return tr("when getting into a step, or changing sides, asks for %1").arg(asks);
  case Scope::total:
    return timed ? tr("once %1 adds up to more than %2 over the class").arg(asks, amount)
                 : tr("once more than %2 of a class ask for %1").arg(asks, amount);
  case Scope::stretch:
    return tr("once %1 goes on for more than %2 in a row").arg(asks, amount);
  case Scope::early:
    return tr("when a step within the first %2 of a class asks for %1").arg(asks, amount);
  case Scope::late:
    return tr("when a step goes on into the last %2 of a class and asks for %1").arg(asks, amount);
  case Scope::order: {
    const QString before = asked(rule.after ? rule.after->demand : Demand{});
    const QString earlier = rule.after && rule.after->lasting > Seconds{}
                                ? tr("%1 (for more than %2)").arg(before, clock(rule.after->lasting))
                                : before;
    return !timed && rule.threshold->amount == 1
               ? tr("when a step that asks for %1 comes right after one that asks for %2").arg(asks, earlier)
               : tr("when a step that asks for %1 comes less than %2 after one that asks for %3")
                     .arg(asks, amount, earlier);
  }
  case Scope::missing:
    return tr("when no step of a class asks for %1").arg(asks);
  case Scope::wholeClass:
    return tr("whatever the class holds");
  }
  return {};
}

} // namespace

QString meaningText(const Rule& rule, const RuleBook& book) {
  const QString instead = QString::fromStdString(rule.instead).trimmed();
  const QString first = tr("%1, %2: %3").arg(forWhom(rule, book), when(rule), text(rule.level));
  return instead.isEmpty() ? first + QLatin1Char('.') : tr("%1, \"%2\".").arg(first, instead);
}

QString explanationOf(Scope scope) {
  switch (scope) {
  case Scope::step:
    return tr("Looks at every step by itself, and speaks at each that asks for this.");
  case Scope::way:
    return tr("Looks at how people get into a step, and from one side to the other, where no gentler way is charted.");
  case Scope::total:
    return tr("Adds up over the whole class, and speaks once, where the amount is passed.");
  case Scope::stretch:
    return tr("Adds up what comes in a row, and begins anew after a break.");
  case Scope::early:
    return tr("Looks at the first part of the class, while people are not warm yet.");
  case Scope::late:
    return tr("Looks at the last part of the class.");
  case Scope::order:
    return tr("Looks at what comes too soon after something else.");
  case Scope::missing:
    return tr("Speaks once when nothing in the class asks for this, such as a preparation that should be there.");
  case Scope::wholeClass:
    return tr("Speaks once for every class, whatever is in it, such as to ask somebody before.");
  }
  return {};
}

QString explanationOf(QualifierKind kind) {
  switch (kind) {
  case QualifierKind::weeksSince:
    return tr("The date of something that happened. Weeks are counted from it to the day of the class.");
  case QualifierKind::pregnancyWeek:
    return tr("The due date of a pregnancy. The week is counted back from it, forty being the last.");
  case QualifierKind::choice:
    return tr("One answer out of a list of yours.");
  case QualifierKind::flag:
    return tr("Yes or no.");
  }
  return {};
}

} // namespace matwright
