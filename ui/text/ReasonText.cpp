#include "ui/text/ReasonText.h"

#include "ui/text/ComposeText.h"
#include "ui/text/TidyText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QStringList>
#include <cmath>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("ReasonText", text); }

QString seconds(Seconds amount) { return secondsText(Seconds(std::abs(amount.value()))); }

// The parts that make half a second or more, on one side.
QString partsText(const Reasons& reasons, bool gains) {
  QStringList parts;
  for (const ReasonShare& share : reasons.shares)
    if (std::abs(share.seconds.value()) >= 0.5 && (share.seconds > Seconds{}) == gains)
      parts << tr("%1 %2").arg(text(share.part), seconds(share.seconds));
  return parts.join(QStringLiteral(", "));
}

} // namespace

QString comparisonText(const Reasons& reasons, const Knowledge& knowledge) {
  if (reasons.kept)
    return tr("It was there, or was kept: it was not chosen anew.");
  if (!reasons.instead)
    return tr("No other movement could stand in its place so that the class keeps all it must.");
  QString other = movementName(knowledge, reasons.instead->id);
  if (reasons.option)
    other = tr("%1 (%2)").arg(other, optionName(knowledge, reasons.instead->id, reasons.option->id));
  const QString lead = reasons.others == 1
                           ? tr("One other could stand in its place: %1.").arg(other)
                           : tr("The best of %1 others in its place: %2.").arg(reasons.others).arg(other);
  if (std::abs(reasons.worse.value()) < 0.5)
    return lead + QLatin1Char(' ') + tr("The class would be as good with it.");
  QStringList sentences{lead};
  const bool worse = reasons.worse > Seconds{};
  sentences << (worse ? tr("The class would cost %1 more with it.") : tr("The class would cost %1 less with it."))
                   .arg(seconds(reasons.worse));
  if (const QString gains = partsText(reasons, true); !gains.isEmpty())
    sentences << tr("More: %1.").arg(gains);
  if (const QString losses = partsText(reasons, false); !losses.isEmpty())
    sentences << tr("Less: %1.").arg(losses);
  return sentences.join(QLatin1Char(' '));
}

} // namespace matwright
