#include "ui/text/MovementText.h"

#include <QCoreApplication>
#include <QStringList>

namespace matwright {
namespace {

QString tr(const char* text, int n = -1) { return QCoreApplication::translate("MovementText", text, nullptr, n); }

template <std::size_t Count> QString listed(std::size_t place, const char* const (&texts)[Count]) {
  return place < Count ? tr(texts[place]) : QString();
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

} // namespace matwright
