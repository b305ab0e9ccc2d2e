#include "ui/text/MovementText.h"

#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QStringList>

namespace matwright {
namespace {

QString tr(const char* text, int n = -1) { return QCoreApplication::translate("MovementText", text, nullptr, n); }

template <std::size_t Count> QString listed(std::size_t place, const char* const (&texts)[Count]) {
  return place < Count ? tr(texts[place]) : QString();
}

template <class Value> QString joined(const std::vector<Value>& values) {
  QStringList words;
  for (const Value value : values)
    words << text(value);
  return words.join(QStringLiteral(", "));
}

} // namespace

QString text(Prop prop) {
  return listed(static_cast<std::size_t>(prop),
                {QT_TRANSLATE_NOOP("MovementText", "ring"), QT_TRANSLATE_NOOP("MovementText", "band"),
                 QT_TRANSLATE_NOOP("MovementText", "soft ball"), QT_TRANSLATE_NOOP("MovementText", "roller"),
                 QT_TRANSLATE_NOOP("MovementText", "light weights"), QT_TRANSLATE_NOOP("MovementText", "chair"),
                 QT_TRANSLATE_NOOP("MovementText", "cushion")});
}

QString text(DoseUnit unit) {
  return listed(static_cast<std::size_t>(unit),
                {QT_TRANSLATE_NOOP("MovementText", "repetitions"), QT_TRANSLATE_NOOP("MovementText", "breaths"),
                 QT_TRANSLATE_NOOP("MovementText", "seconds")});
}

QString text(Effort effort) {
  return listed(static_cast<std::size_t>(effort.value()),
                {QT_TRANSLATE_NOOP("MovementText", "rest"), QT_TRANSLATE_NOOP("MovementText", "very easy"),
                 QT_TRANSLATE_NOOP("MovementText", "easy"), QT_TRANSLATE_NOOP("MovementText", "light"),
                 QT_TRANSLATE_NOOP("MovementText", "moderate"), QT_TRANSLATE_NOOP("MovementText", "somewhat hard"),
                 QT_TRANSLATE_NOOP("MovementText", "hard"), QT_TRANSLATE_NOOP("MovementText", "harder still"),
                 QT_TRANSLATE_NOOP("MovementText", "very hard"), QT_TRANSLATE_NOOP("MovementText", "extremely hard"),
                 QT_TRANSLATE_NOOP("MovementText", "the most one can do")});
}

QString listText(PropSet props) {
  QStringList names;
  props.forEach([&names](Prop prop) { names << text(prop); });
  return names.join(QStringLiteral(", "));
}

QString listText(const std::vector<Region>& regions) { return joined(regions); }
QString listText(const std::vector<SpineAction>& actions) { return joined(actions); }

QString listText(const Knowledge& knowledge, const std::vector<MovementId>& movements) {
  QStringList names;
  for (const MovementId& id : movements)
    names << movementName(knowledge, id);
  return names.join(QStringLiteral(", "));
}

QString optionText(const Option& option) {
  QString words = QStringLiteral("%1 (%2): %3")
                      .arg(QString::fromStdString(option.name), text(option.kind), QString::fromStdString(option.how));
  if (!option.removes.empty())
    words += tr(" Takes away: %1.").arg(featureList(option.removes));
  if (!option.adds.empty())
    words += tr(" Adds: %1.").arg(featureList(option.adds));
  return words;
}

} // namespace matwright
