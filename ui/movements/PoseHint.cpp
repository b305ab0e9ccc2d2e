#include "ui/movements/PoseHint.h"

#include "ui/text/FigureText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QStringList>
#include <iterator>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("PoseHint", text); }

constexpr const char* kKeys[] = {QT_TRANSLATE_NOOP("PoseHint", "up and down keys: %1, %2"),
                                 QT_TRANSLATE_NOOP("PoseHint", "left and right keys: %1, %2"),
                                 QT_TRANSLATE_NOOP("PoseHint", "page keys: %1, %2")};

EnumSet<Contact> contactsOf(Handle handle) {
  switch (handle) {
  case Handle::head:
    return {Contact::head};
  case Handle::elbowNear:
  case Handle::handNear:
    return {Contact::handNear, Contact::forearmNear};
  case Handle::elbowFar:
  case Handle::handFar:
    return {Contact::handFar, Contact::forearmFar};
  case Handle::kneeNear:
  case Handle::footNear:
  case Handle::toesNear:
    return {Contact::kneeNear, Contact::shinNear, Contact::footNear, Contact::toesNear, Contact::heelNear};
  case Handle::kneeFar:
  case Handle::footFar:
  case Handle::toesFar:
    return {Contact::kneeFar, Contact::shinFar, Contact::footFar, Contact::toesFar, Contact::heelFar};
  default:
    return {};
  }
}

} // namespace

bool isFar(Handle handle) { return word(handle).ends_with(".far"); }

QString handleHint(Handle handle, const Pose& pose) {
  QStringList parts;
  const auto joints = jointsOf(handle);
  for (std::size_t i = 0; i < joints.size() && i < std::size(kKeys); ++i)
    parts << tr(kKeys[i]).arg(text(joints[i]), degreesText(angleOf(pose, joints[i])));
  if (joints.empty())
    parts << tr("arrow keys move it over what rests on the floor");
  return QStringLiteral("%1: %2").arg(withCapital(text(handle)), parts.join(QStringLiteral("; ")));
}

QString limitHint(EnumSet<Joint> atLimit, const Pose& pose) {
  QStringList stops;
  atLimit.forEach([&](Joint joint) {
    stops << tr("%1 goes no further than %2").arg(text(joint), degreesText(angleOf(pose, joint)));
  });
  return tr("At its limit: %1.").arg(stops.join(QStringLiteral("; ")));
}

QString heldHint(Handle handle, const Pose& pose) {
  if (handle == Handle::seat)
    return tr("The trunk rests on the floor, or nothing does: take away or add what rests to move the seat.");
  QStringList names;
  (contactsOf(handle) & pose.on).forEach([&names](Contact contact) { names << text(contact); });
  return names.isEmpty() ? QString()
                         : tr("It rests on the floor by what is ticked there: %1. Take that away to lift it.")
                               .arg(names.join(QStringLiteral(", ")));
}

} // namespace matwright
