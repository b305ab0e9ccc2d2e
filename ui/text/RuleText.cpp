#include "ui/text/RuleText.h"

#include "core/knowledge/OwnKnowledge.h"
#include "ui/text/FindingText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("RuleText", text); }

template <class Enum, std::size_t Count> QString listed(Enum value, const char* const (&texts)[Count]) {
  static_assert(Count == kWordCount<Enum>);
  return tr(texts[static_cast<std::size_t>(value)]);
}

// "a, b or c".
QString orList(const QStringList& all) {
  if (all.size() < 2)
    return all.join(QString());
  return all.mid(0, all.size() - 1).join(QStringLiteral(", ")) + tr(" or ") + all.last();
}

// "acute" of "Acute: new or just flared": what stands before the colon names the choice.
QString shortName(const std::string& name) { return QString::fromStdString(name).section(QLatin1Char(':'), 0, 0); }

const QualifierSpec* specOf(const QualifierTest& test, const Condition* condition) {
  return condition ? findQualifier(*condition, test.qualifier) : nullptr;
}

QString weeksText(const QualifierTest& test) {
  if (test.from && test.below)
    return *test.from + 1 == *test.below ? tr("week %1").arg(*test.from)
                                         : tr("weeks %1 to %2").arg(*test.from).arg(*test.below - 1);
  return test.below ? tr("before week %1").arg(*test.below) : tr("from week %1 on").arg(test.from.value_or(0));
}

QString choicesText(const QualifierTest& test, const QualifierSpec* spec) {
  QStringList names;
  for (const std::string& id : test.choices) {
    QString name = QString::fromStdString(id);
    if (spec)
      for (const Choice& choice : spec->choices)
        if (choice.id == id)
          name = shortName(choice.name);
    names << name.toLower();
  }
  return orList(names);
}

QString answerText(const QualifierTest& test, const QualifierSpec* spec) {
  if (test.flag)
    return *test.flag ? tr("yes") : tr("no");
  return test.choices.empty() ? weeksText(test) : choicesText(test, spec);
}

QString nameOf(const QualifierTest& test, const QualifierSpec* spec) {
  return QString::fromStdString(spec ? spec->name : test.qualifier);
}

QString agesText(EnumSet<AgeBand> ages) {
  QStringList names;
  ages.forEach([&](AgeBand band) { names << text(band); });
  return orList(names);
}

QString amountOf(const Rule& rule) {
  return rule.threshold ? amountText(rule.threshold->amount, rule.threshold->unit) : QString();
}

} // namespace

QString text(SourceKind kind) {
  return listed(kind, {QT_TRANSLATE_NOOP("RuleText", "guideline"), QT_TRANSLATE_NOOP("RuleText", "consensus"),
                       QT_TRANSLATE_NOOP("RuleText", "study"), QT_TRANSLATE_NOOP("RuleText", "review"),
                       QT_TRANSLATE_NOOP("RuleText", "public body"), QT_TRANSLATE_NOOP("RuleText", "practice")});
}

QString unitText(double amount, MeasureUnit unit) {
  const bool one = amount == 1;
  switch (unit) {
  case MeasureUnit::seconds:
    return one ? tr("second") : tr("seconds");
  case MeasureUnit::repetitions:
    return one ? tr("repetition") : tr("repetitions");
  case MeasureUnit::steps:
    return one ? tr("step") : tr("steps");
  case MeasureUnit::changes:
    return one ? tr("change of position") : tr("changes of position");
  case MeasureUnit::percent:
    return tr("% of the class");
  }
  return {};
}

QString text(QualifierKind kind) {
  return listed(kind, {QT_TRANSLATE_NOOP("RuleText", "a date, from which weeks are counted"),
                       QT_TRANSLATE_NOOP("RuleText", "the due date, by which weeks are counted"),
                       QT_TRANSLATE_NOOP("RuleText", "one of a list"), QT_TRANSLATE_NOOP("RuleText", "yes or no")});
}

QString shortText(Strength strength) {
  return listed(strength, {QT_TRANSLATE_NOOP("RuleText", "guideline"), QT_TRANSLATE_NOOP("RuleText", "experts agree"),
                           QT_TRANSLATE_NOOP("RuleText", "trials or measurements"),
                           QT_TRANSLATE_NOOP("RuleText", "common practice")});
}

QString shortText(Scope scope) {
  return listed(scope, {QT_TRANSLATE_NOOP("RuleText", "in a step"), QT_TRANSLATE_NOOP("RuleText", "on the way in"),
                        QT_TRANSLATE_NOOP("RuleText", "added up"), QT_TRANSLATE_NOOP("RuleText", "in a row"),
                        QT_TRANSLATE_NOOP("RuleText", "early"), QT_TRANSLATE_NOOP("RuleText", "late"),
                        QT_TRANSLATE_NOOP("RuleText", "order of steps"), QT_TRANSLATE_NOOP("RuleText", "missing"),
                        QT_TRANSLATE_NOOP("RuleText", "the class as a whole")});
}

QString titleText(const Rule& rule) {
  const QString asks = demandText(rule.asks);
  return withCapital(asks.isEmpty() ? QString::fromStdString(rule.instead.empty() ? rule.why : rule.instead) : asks);
}

QString speaksText(const Rule& rule) {
  switch (rule.scope) {
  case Scope::step:
    return tr("Speaks when one side takes longer than");
  case Scope::early:
    return tr("The first part of the class is");
  case Scope::late:
    return tr("The last part of the class is");
  case Scope::order:
    return tr("Speaks when there is less between than");
  default:
    return tr("Speaks when there is more than");
  }
}

QString placeText(const Rule& rule) {
  switch (rule.scope) {
  case Scope::step:
    return rule.threshold ? tr("in a step, longer than %1").arg(amountOf(rule)) : tr("in a step");
  case Scope::way:
    return tr("on the way into a step");
  case Scope::total:
    return tr("added up over the class, more than %1").arg(amountOf(rule));
  case Scope::stretch:
    return tr("in a row without a break, more than %1").arg(amountOf(rule));
  case Scope::early:
    return tr("in the first %1 of the class").arg(amountOf(rule));
  case Scope::late:
    return tr("in the last %1 of the class").arg(amountOf(rule));
  case Scope::order:
    return rule.threshold && rule.threshold->unit == MeasureUnit::steps && rule.threshold->amount == 1
               ? tr("right after another step")
               : tr("less than %1 after another step").arg(amountOf(rule));
  case Scope::missing:
    return tr("nowhere in the class");
  case Scope::wholeClass:
    return tr("for the class as a whole");
  }
  return {};
}

QString audienceText(const Rule& rule, const RuleBook& book) {
  const QString ages = agesText(rule.ages);
  if (!rule.condition)
    return rule.ages.empty() ? tr("For everybody") : tr("For people aged %1, whatever else is known of them").arg(ages);
  const Condition* condition = book.findCondition(*rule.condition);
  const QString name = QString::fromStdString(condition ? condition->name : rule.condition->value);
  return rule.ages.empty() ? tr("For people with this on file: %1").arg(name)
                           : tr("For people aged %1 with this on file: %2").arg(ages, name);
}

QStringList testLines(const Rule& rule, const RuleBook& book) {
  const Condition* condition = rule.condition ? book.findCondition(*rule.condition) : nullptr;
  QStringList lines;
  for (const QualifierTest& test : rule.when) {
    const QualifierSpec* spec = specOf(test, condition);
    const QString line = QStringLiteral("%1: %2").arg(nameOf(test, spec), answerText(test, spec));
    lines << (test.openHolds ? tr("%1. Counts while nobody has filled it in, too.").arg(line)
                             : tr("%1. Counts only once somebody has said so.").arg(line));
  }
  return lines;
}

QString testsText(const Rule& rule, const RuleBook& book) {
  const Condition* condition = rule.condition ? book.findCondition(*rule.condition) : nullptr;
  QStringList parts;
  for (const QualifierTest& test : rule.when) {
    const QualifierSpec* spec = specOf(test, condition);
    const QString name = nameOf(test, spec);
    if (test.flag)
      parts << (*test.flag ? name : tr("%1: no").arg(name));
    else
      parts << (test.choices.empty() ? answerText(test, spec)
                                     : QStringLiteral("%1: %2").arg(name, answerText(test, spec)));
  }
  return parts.join(QStringLiteral("; "));
}

QString qualifierText(const QualifierSpec& qualifier) {
  QString answer = text(qualifier.kind);
  if (qualifier.kind == QualifierKind::choice) {
    QStringList names;
    for (const Choice& choice : qualifier.choices)
      names << shortName(choice.name).toLower();
    answer = orList(names);
  }
  return QStringLiteral("%1: %2").arg(QString::fromStdString(qualifier.name), answer);
}

QString thresholdText(const Rule& rule) {
  if (!rule.threshold)
    return {};
  if (isOwn(rule.id))
    return tr("The threshold of a rule of your own is changed in the rule itself.");
  if (!thresholdIsOpen(rule))
    return tr(
        "This amount is published in the sources of the rule, so it stays as it is. In a copy of your own you may "
        "write another and say where it comes from.");
  const bool less = rule.scope == Scope::early || rule.scope == Scope::late || rule.scope == Scope::order;
  return tr("This amount is the program's own: no published threshold is known. You may set yours; the usual one is "
            "kept beside it.") +
         QLatin1Char(' ') +
         (less ? tr("The smaller it is, the less often the rule speaks.")
               : tr("The larger it is, the less often the rule speaks."));
}

} // namespace matwright
