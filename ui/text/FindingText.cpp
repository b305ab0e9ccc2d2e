#include "ui/text/FindingText.h"

#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <cmath>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("FindingText", text); }

QStringList names(FeatureSet features) {
  QStringList all;
  features.forEach([&](Feature feature) { all << text(feature); });
  return all;
}

QStringList names(EnumSet<Elevation> heights) {
  QStringList all;
  heights.forEach([&](Elevation height) { all << text(height).toLower(); });
  return all;
}

QString either(const QStringList& all) { return all.join(tr(" or ")); }

QString number(double value) { return QLocale().toString(value, 'g', 6); }

// Less than the mark, and shown so: 4:59.8 is not 5:00.
QString lessText(double measured, MeasureUnit unit) { return amountText(std::floor(measured), unit); }

QString earlierText(const Caution& caution, const Knowledge& knowledge, const ClassPlan& plan) {
  const Step* step = caution.earlier ? findStep(plan, *caution.earlier) : nullptr;
  return step ? movementName(knowledge, step->movement) : QString();
}

QString orderText(const Caution& caution, const Threshold& between, const QString& earlier) {
  const QString mark = amountText(between.amount, between.unit);
  if (between.unit == MeasureUnit::seconds)
    return tr("%1 after %2, the mark is %3").arg(lessText(caution.measured, between.unit), earlier, mark);
  if (caution.measured < 1)
    return tr("right after %1, the mark is %2 between").arg(earlier, mark);
  return tr("%1 between it and %2, the mark is %3").arg(lessText(caution.measured, between.unit), earlier, mark);
}

} // namespace

QString amountText(double amount, MeasureUnit unit) {
  const bool one = amount == 1;
  switch (unit) {
  case MeasureUnit::seconds:
    return clock(Seconds(amount));
  case MeasureUnit::repetitions:
    return one ? tr("1 repetition") : tr("%1 repetitions").arg(number(amount));
  case MeasureUnit::steps:
    return one ? tr("1 step") : tr("%1 steps").arg(number(amount));
  case MeasureUnit::changes:
    return one ? tr("1 change of position") : tr("%1 changes of position").arg(number(amount));
  case MeasureUnit::percent:
    return tr("%1 %").arg(number(amount));
  }
  return {};
}

QString demandText(const Demand& demand) {
  QStringList parts;
  if (!demand.any.empty())
    parts << either(names(demand.any));
  if (!demand.all.empty())
    parts << names(demand.all).join(tr(" and "));
  if (!demand.at.empty())
    parts << either(names(demand.at));
  if (demand.effortFrom > 0)
    parts << tr("effort %1 or more").arg(demand.effortFrom);
  if (demand.leverFrom > 0)
    parts << tr("a long lever: %1 % of two straight legs or more").arg(demand.leverFrom);
  return parts.join(QStringLiteral(", "));
}

QString foundText(const Caution& caution) {
  QStringList parts;
  if (!caution.because.empty())
    parts << featureList(caution.because);
  if (caution.step) {
    const Demand& asks = caution.rule->asks;
    if (const auto heights = caution.asked.at & asks.at; !heights.empty())
      parts << names(heights).join(QStringLiteral(", "));
    if (asks.effortFrom > 0)
      parts << tr("effort %1").arg(caution.asked.effort.value());
    if (asks.leverFrom > 0)
      parts << tr("a lever of %1 % of two straight legs").arg(caution.asked.lever);
  }
  return parts.join(QStringLiteral(", "));
}

QString measuredText(const Caution& caution, const Knowledge& knowledge, const ClassPlan& plan) {
  const Rule& rule = *caution.rule;
  if (!rule.threshold)
    return {};
  const MeasureUnit unit = rule.threshold->unit;
  const QString mark = amountText(rule.threshold->amount, unit);
  switch (rule.scope) {
  case Scope::step:
    return tr("%1 in one go, the mark is %2").arg(amountText(caution.measured, unit), mark);
  case Scope::total:
  case Scope::stretch:
    return tr("%1 reached, the mark is %2").arg(amountText(caution.measured, unit), mark);
  case Scope::early:
    return unit == MeasureUnit::percent
               ? tr("begins when %1 of the class has passed, the mark is %2")
                     .arg(lessText(caution.measured, unit), mark)
               : tr("begins %1 into the class, the mark is %2").arg(lessText(caution.measured, unit), mark);
  case Scope::late:
    return unit == MeasureUnit::percent
               ? tr("ends with %1 of the class left, the mark is %2").arg(lessText(caution.measured, unit), mark)
               : tr("ends %1 before the end of the class, the mark is %2").arg(lessText(caution.measured, unit), mark);
  case Scope::order:
    return orderText(caution, *rule.threshold, earlierText(caution, knowledge, plan));
  case Scope::way:
  case Scope::missing:
  case Scope::wholeClass:
    break;
  }
  return {};
}

QString markText(const Rule& rule) {
  if (!rule.threshold)
    return {};
  const Threshold& threshold = *rule.threshold;
  const bool ours = threshold.origin == ThresholdOrigin::ours;
  if (threshold.amount != threshold.usual) {
    const QString usual = amountText(threshold.usual, threshold.unit);
    return ours ? tr("The mark is set by you; the program's own is %1, and no published threshold is known.").arg(usual)
                : tr("The mark is set by you; the published one is %1.").arg(usual);
  }
  return ours ? tr("The mark is this program's own: no published threshold is known.")
              : tr("The mark is a published one.");
}

QString scopeText(const Rule& rule) {
  switch (rule.scope) {
  case Scope::step:
    return tr("in this step");
  case Scope::way:
    return tr("on the way into this step, where no gentler way is charted");
  case Scope::total:
    return rule.threshold && rule.threshold->unit == MeasureUnit::changes
               ? tr("on the ways into steps, added up over the class")
               : tr("added up over the class");
  case Scope::stretch:
    return tr("in a row without a break");
  case Scope::early:
    return tr("early in the class");
  case Scope::late:
    return tr("late in the class");
  case Scope::order:
    return tr("soon after another step");
  case Scope::missing:
    return tr("nowhere in the class");
  case Scope::wholeClass:
    return tr("for the class as a whole");
  }
  return {};
}

} // namespace matwright
