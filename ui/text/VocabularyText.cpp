#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QStringList>
#include <cmath>

namespace matwright {
namespace {

QString tr(const char* text, int n = -1) { return QCoreApplication::translate("VocabularyText", text, nullptr, n); }

template <class Enum, std::size_t Count> QString listed(Enum value, const char* const (&texts)[Count]) {
  static_assert(Count == kWordCount<Enum>);
  return tr(texts[static_cast<std::size_t>(value)]);
}

struct FeatureWords {
  const char* name;
  const char* definition;
};

// In the order of Feature; the definitions are those of resources/FORMAT.md.
constexpr FeatureWords kFeatures[] = {
    {QT_TRANSLATE_NOOP("VocabularyText", "loaded forward bend"),
     QT_TRANSLATE_NOOP("VocabularyText", "The trunk bends forward while the trunk or legs are lifted or lowered.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "forward bend at end range"),
     QT_TRANSLATE_NOOP("VocabularyText", "The trunk bends forward into the last fifth of its range, with any load.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "active arch"),
     QT_TRANSLATE_NOOP("VocabularyText", "The trunk arches actively against gravity.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "arch at end range"),
     QT_TRANSLATE_NOOP("VocabularyText", "The low back arches into the last fifth of its range.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "twist beyond mid range"),
     QT_TRANSLATE_NOOP("VocabularyText", "Shoulders turn more than about 30 degrees against the pelvis.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "bend with twist"),
     QT_TRANSLATE_NOOP("VocabularyText", "The trunk bends forward and turns at the same time.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "arch with twist"),
     QT_TRANSLATE_NOOP("VocabularyText", "The trunk arches and turns at the same time.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "side bend"),
     QT_TRANSLATE_NOOP("VocabularyText",
                       "The trunk bends sideways beyond mid range, or is lifted while lying on the side.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "fast spine"),
     QT_TRANSLATE_NOOP("VocabularyText", "The spine moves rapidly, bounces or is carried by momentum.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "rolling on the spine"),
     QT_TRANSLATE_NOOP("VocabularyText", "Body weight rolls along the spine.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "head held up"),
     QT_TRANSLATE_NOOP("VocabularyText", "The head is held off the mat against gravity without support.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "neck at end range"),
     QT_TRANSLATE_NOOP("VocabularyText", "The neck bends, arches or turns into the last fifth of its range.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "weight on the neck"),
     QT_TRANSLATE_NOOP("VocabularyText", "Body weight passes through the neck or the top of the back.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "flat on the back"),
     QT_TRANSLATE_NOOP("VocabularyText", "Lying on the back, the trunk inclined less than about 15 degrees.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "face down"),
     QT_TRANSLATE_NOOP("VocabularyText", "Lying face down, weight on abdomen or chest.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "lying on the side"),
     QT_TRANSLATE_NOOP("VocabularyText", "Lying on the side.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "head below the heart"),
     QT_TRANSLATE_NOOP("VocabularyText", "The head is below the heart, as in a shoulder bridge or a standing fold.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "chest lying low"),
     QT_TRANSLATE_NOOP("VocabularyText", "The chest is at or below the level of the stomach.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "weight on the wrists"),
     QT_TRANSLATE_NOOP("VocabularyText", "Body weight passes through a wrist bent back near 90 degrees.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "kneeling"),
     QT_TRANSLATE_NOOP("VocabularyText", "Body weight rests on the front of the knee.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "hip bent past 90 degrees"),
     QT_TRANSLATE_NOOP("VocabularyText", "Thigh and trunk close beyond a right angle.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "thigh across the midline"),
     QT_TRANSLATE_NOOP("VocabularyText", "The thigh crosses the midline of the body.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "thigh turned in to the end"),
     QT_TRANSLATE_NOOP("VocabularyText", "The thigh turns in to the end of its range.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "hip back and turned out"),
     QT_TRANSLATE_NOOP("VocabularyText", "The hip extends past neutral while it is turned out.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "legs wide or split"),
     QT_TRANSLATE_NOOP("VocabularyText", "The legs open wide or stand in an uneven split.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "load on one side"),
     QT_TRANSLATE_NOOP("VocabularyText", "Body weight or pelvic load goes through one side.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "deep knee bend under load"),
     QT_TRANSLATE_NOOP("VocabularyText", "The knee bends beyond about 90 degrees while it bears load.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "twist at the knee"),
     QT_TRANSLATE_NOOP("VocabularyText", "The knee turns on a fixed foot under load.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "weight on the toes"),
     QT_TRANSLATE_NOOP("VocabularyText", "Weight on the forefoot with the toes bent back.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "nerve on stretch"),
     QT_TRANSLATE_NOOP("VocabularyText", "Low back bent, knee straight and foot pulled up together.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "both legs long in the air"),
     QT_TRANSLATE_NOOP("VocabularyText", "Both legs straight and unsupported: a long lever.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "pressure on the belly wall"),
     QT_TRANSLATE_NOOP("VocabularyText", "Likely to dome the midline or to make one bear down.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "arms above shoulder height"),
     QT_TRANSLATE_NOOP("VocabularyText", "The arms go beyond about 90 degrees of elevation.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "arm out and turned out"),
     QT_TRANSLATE_NOOP("VocabularyText", "Load or stretch with the arm out to the side and turned out.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "load on an arm behind"),
     QT_TRANSLATE_NOOP("VocabularyText", "Load goes through an arm behind the body.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "breath held"),
     QT_TRANSLATE_NOOP("VocabularyText", "A strain with the throat closed, or a cued hold of the breath.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "long near-maximal hold"),
     QT_TRANSLATE_NOOP("VocabularyText", "A near-maximal static effort of more than about 20 seconds.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "up from or down to the floor"),
     QT_TRANSLATE_NOOP("VocabularyText", "A change between floor and standing without a pause.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "balance"),
     QT_TRANSLATE_NOOP("VocabularyText", "A reduced base, standing on one leg, or eyes closed.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "impact"), QT_TRANSLATE_NOOP("VocabularyText", "A jump, hop or jar.")},
    {QT_TRANSLATE_NOOP("VocabularyText", "long stretch at end range"),
     QT_TRANSLATE_NOOP("VocabularyText", "A stretch held at end range for more than 30 seconds.")},
};
static_assert(std::size(kFeatures) == kWordCount<Feature>);

QString number(double value) {
  if (std::abs(value - 0.5) < 1e-9)
    return QStringLiteral("\u00bd");
  return QLocale().toString(value, 'g', 3);
}

} // namespace

QString text(Side side) { return side == Side::left ? tr("left") : tr("right"); }

QString text(Elevation elevation) {
  return listed(elevation,
                {QT_TRANSLATE_NOOP("VocabularyText", "Face down"), QT_TRANSLATE_NOOP("VocabularyText", "Face up"),
                 QT_TRANSLATE_NOOP("VocabularyText", "Side lying"), QT_TRANSLATE_NOOP("VocabularyText", "Sitting"),
                 QT_TRANSLATE_NOOP("VocabularyText", "Hands and knees"),
                 QT_TRANSLATE_NOOP("VocabularyText", "Kneeling"), QT_TRANSLATE_NOOP("VocabularyText", "Standing")});
}

QString text(Region region) {
  return listed(region,
                {QT_TRANSLATE_NOOP("VocabularyText", "neck"), QT_TRANSLATE_NOOP("VocabularyText", "shoulders"),
                 QT_TRANSLATE_NOOP("VocabularyText", "arms"), QT_TRANSLATE_NOOP("VocabularyText", "wrists"),
                 QT_TRANSLATE_NOOP("VocabularyText", "upper back"), QT_TRANSLATE_NOOP("VocabularyText", "lower back"),
                 QT_TRANSLATE_NOOP("VocabularyText", "abdominals"), QT_TRANSLATE_NOOP("VocabularyText", "waist"),
                 QT_TRANSLATE_NOOP("VocabularyText", "pelvic floor"), QT_TRANSLATE_NOOP("VocabularyText", "hips"),
                 QT_TRANSLATE_NOOP("VocabularyText", "front of the thigh"),
                 QT_TRANSLATE_NOOP("VocabularyText", "back of the thigh"),
                 QT_TRANSLATE_NOOP("VocabularyText", "inner thigh"), QT_TRANSLATE_NOOP("VocabularyText", "lower leg"),
                 QT_TRANSLATE_NOOP("VocabularyText", "breathing")});
}

QString text(SpineAction action) {
  return listed(action,
                {QT_TRANSLATE_NOOP("VocabularyText", "neutral spine"),
                 QT_TRANSLATE_NOOP("VocabularyText", "forward bend"), QT_TRANSLATE_NOOP("VocabularyText", "arch"),
                 QT_TRANSLATE_NOOP("VocabularyText", "side bend"), QT_TRANSLATE_NOOP("VocabularyText", "rotation")});
}

QString shortText(SpineAction action) {
  return listed(action, {QT_TRANSLATE_NOOP("VocabularyText", "neutral"), QT_TRANSLATE_NOOP("VocabularyText", "bend"),
                         QT_TRANSLATE_NOOP("VocabularyText", "arch"), QT_TRANSLATE_NOOP("VocabularyText", "side"),
                         QT_TRANSLATE_NOOP("VocabularyText", "turn")});
}

QString text(Breath breath) {
  return listed(breath,
                {QT_TRANSLATE_NOOP("VocabularyText", "breathe in"), QT_TRANSLATE_NOOP("VocabularyText", "breathe out"),
                 QT_TRANSLATE_NOOP("VocabularyText", "breathe freely"),
                 QT_TRANSLATE_NOOP("VocabularyText", "hold the breath")});
}

QString text(Level level) {
  return listed(level,
                {QT_TRANSLATE_NOOP("VocabularyText", "watch"), QT_TRANSLATE_NOOP("VocabularyText", "adapt"),
                 QT_TRANSLATE_NOOP("VocabularyText", "ask first"), QT_TRANSLATE_NOOP("VocabularyText", "leave out")});
}

QString text(Strength strength) {
  return listed(strength, {QT_TRANSLATE_NOOP("VocabularyText", "a guideline"),
                           QT_TRANSLATE_NOOP("VocabularyText", "the agreement of experts"),
                           QT_TRANSLATE_NOOP("VocabularyText", "trials or measurements"),
                           QT_TRANSLATE_NOOP("VocabularyText", "common practice; no published source found")});
}

QString text(Verification verification) {
  return listed(verification, {QT_TRANSLATE_NOOP("VocabularyText",
                                                 "the fact was seen in the source, its abstract or an official page"),
                               QT_TRANSLATE_NOOP("VocabularyText", "the fact was seen on a secondary page only"),
                               QT_TRANSLATE_NOOP("VocabularyText", "the citation was seen, the detail is from memory"),
                               QT_TRANSLATE_NOOP("VocabularyText", "from memory, not yet checked against the source")});
}

QString text(Urgency urgency) {
  return listed(urgency, {QT_TRANSLATE_NOOP("VocabularyText",
                                            "Emergency: call the emergency number, or go to emergency care today"),
                          QT_TRANSLATE_NOOP("VocabularyText", "Urgent: no class until a clinician has decided"),
                          QT_TRANSLATE_NOOP("VocabularyText", "Soon: class can go on, and a doctor should hear of it"),
                          QT_TRANSLATE_NOOP("VocabularyText", "During class: stop at once"),
                          QT_TRANSLATE_NOOP("VocabularyText", "Before the first class: ask")});
}

QString text(AgeBand band) {
  return listed(band, {QT_TRANSLATE_NOOP("VocabularyText", "under 18"), QT_TRANSLATE_NOOP("VocabularyText", "18 to 39"),
                       QT_TRANSLATE_NOOP("VocabularyText", "40 to 64"), QT_TRANSLATE_NOOP("VocabularyText", "65 to 79"),
                       QT_TRANSLATE_NOOP("VocabularyText", "80 and over")});
}

QString text(OptionKind kind) {
  return listed(kind, {QT_TRANSLATE_NOOP("VocabularyText", "easier"), QT_TRANSLATE_NOOP("VocabularyText", "harder"),
                       QT_TRANSLATE_NOOP("VocabularyText", "adapted")});
}

QString text(Repertoire repertoire) {
  return listed(repertoire,
                {QT_TRANSLATE_NOOP("VocabularyText", "fundamental"), QT_TRANSLATE_NOOP("VocabularyText", "classical"),
                 QT_TRANSLATE_NOOP("VocabularyText", "side lying"), QT_TRANSLATE_NOOP("VocabularyText", "kneeling"),
                 QT_TRANSLATE_NOOP("VocabularyText", "standing"), QT_TRANSLATE_NOOP("VocabularyText", "wall"),
                 QT_TRANSLATE_NOOP("VocabularyText", "stretch"), QT_TRANSLATE_NOOP("VocabularyText", "breath")});
}

QString text(Sides sides) {
  return listed(sides,
                {QT_TRANSLATE_NOOP("VocabularyText", "both together"),
                 QT_TRANSLATE_NOOP("VocabularyText", "alternating"), QT_TRANSLATE_NOOP("VocabularyText", "each side")});
}

QString text(Feature feature) { return tr(kFeatures[static_cast<std::size_t>(feature)].name); }
QString definition(Feature feature) { return tr(kFeatures[static_cast<std::size_t>(feature)].definition); }

QString clock(Seconds seconds) {
  const long long whole = std::llround(std::abs(seconds.value()));
  const long long hours = whole / 3600;
  const QString sign = seconds.value() < 0 && whole > 0 ? QStringLiteral("-") : QString();
  if (hours > 0)
    return sign + QStringLiteral("%1:%2:%3")
                      .arg(hours)
                      .arg(whole / 60 % 60, 2, 10, QLatin1Char('0'))
                      .arg(whole % 60, 2, 10, QLatin1Char('0'));
  return sign + QStringLiteral("%1:%2").arg(whole / 60).arg(whole % 60, 2, 10, QLatin1Char('0'));
}

QString signedClock(Seconds seconds) {
  const QString plain = clock(seconds);
  return seconds.value() >= 0.5 ? QStringLiteral("+") + plain : plain;
}

QString wholeMinutes(Seconds seconds) { return tr("%1 min").arg(std::lround(seconds.minutes())); }

QString doseText(const Dose& dose, Sides sides, std::optional<Side> onlySide) {
  QString amount = QString::number(dose.amount);
  if (dose.unit == DoseUnit::seconds)
    amount = dose.amount % 60 == 0 ? tr("%1 min").arg(dose.amount / 60) : tr("%1 s").arg(dose.amount);
  else if (dose.unit == DoseUnit::breaths)
    amount = dose.amount == 1 ? tr("1 breath") : tr("%1 breaths").arg(dose.amount);
  if (sides == Sides::alternating)
    return tr("%1 alternating").arg(amount);
  if (sides == Sides::each)
    return onlySide ? QStringLiteral("%1 %2").arg(amount, text(*onlySide)) : tr("%1 each side").arg(amount);
  return amount;
}

QString breathText(const Tempo& tempo) {
  QStringList phases;
  for (const Phase& phase : tempo.phases) {
    const QString words[] = {tr("in %1"), tr("out %1"), tr("free %1"), tr("hold %1")};
    phases << words[static_cast<std::size_t>(phase.breath)].arg(phase.counts);
  }
  return phases.join(QStringLiteral(", "));
}

QString tempoText(const Tempo& tempo) {
  return tr("%1 at %2 s a count").arg(breathText(tempo), number(tempo.secondsPerCount.value()));
}

QString dateText(Date date) {
  return QLocale().toString(
      QDate(int{date.year()}, static_cast<int>(unsigned{date.month()}), static_cast<int>(unsigned{date.day()})),
      QLocale().dateFormat(QLocale::LongFormat));
}

QString withCapital(QString text) {
  if (!text.isEmpty())
    text.replace(0, 1, QLocale().toUpper(text.left(1)));
  return text;
}

QString movementName(const Knowledge& knowledge, const MovementId& id) {
  const Movement* movement = knowledge.catalogue.find(id);
  return QString::fromStdString(movement ? movement->name : id.value);
}

QString optionName(const Knowledge& knowledge, const MovementId& movement, const OptionId& option) {
  if (option.empty())
    return tr("as written");
  const Movement* found = knowledge.catalogue.find(movement);
  const Option* chosen = found ? findOption(*found, option) : nullptr;
  return QString::fromStdString(chosen ? chosen->name : option.value);
}

QString positionName(const Knowledge& knowledge, const PositionId& id) {
  const Position* position = knowledge.transitions.find(id);
  return QString::fromStdString(position ? position->name : id.value);
}

QString featureList(FeatureSet features) {
  QStringList names;
  features.forEach([&](Feature feature) { names << text(feature); });
  return names.join(QStringLiteral(", "));
}

} // namespace matwright
