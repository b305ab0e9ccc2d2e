#include "ui/text/FigureText.h"

#include <QCoreApplication>
#include <QLocale>

namespace matwright {
namespace {

QString tr(const char* text, int n = -1) { return QCoreApplication::translate("FigureText", text, nullptr, n); }

template <class Enum, std::size_t Count> QString listed(Enum value, const char* const (&texts)[Count]) {
  static_assert(Count == kWordCount<Enum>);
  return tr(texts[static_cast<std::size_t>(value)]);
}

struct JointWords {
  const char* name;
  const char* directions;
};

constexpr const char* kShoulder =
    QT_TRANSLATE_NOOP("FigureText", "0 beside the trunk, 90 straight forward, 180 overhead, below 0 behind.");
constexpr const char* kArmOut = QT_TRANSLATE_NOOP("FigureText", "Above 0 out to the side, below 0 across the body.");
constexpr const char* kElbow = QT_TRANSLATE_NOOP("FigureText", "0 straight, more is bent.");
constexpr const char* kHip =
    QT_TRANSLATE_NOOP("FigureText", "0 in line with the trunk, 90 at a right angle in front, below 0 behind.");
constexpr const char* kLegOut = QT_TRANSLATE_NOOP("FigureText", "Above 0 out to the side, below 0 across the midline.");
constexpr const char* kLegTurn = QT_TRANSLATE_NOOP("FigureText", "Above 0 turned out, below 0 turned in.");
constexpr const char* kKnee = QT_TRANSLATE_NOOP("FigureText", "0 straight, more brings the heel towards the seat.");
constexpr const char* kAnkle =
    QT_TRANSLATE_NOOP("FigureText", "0 at a right angle to the shin, above 0 toes up, below 0 pointed.");
constexpr const char* kBend = QT_TRANSLATE_NOOP("FigureText", "Above 0 forward, below 0 back.");
constexpr const char* kSide =
    QT_TRANSLATE_NOOP("FigureText", "Above 0 towards the near side, below 0 to the far side.");
constexpr const char* kTurn =
    QT_TRANSLATE_NOOP("FigureText", "Above 0 turns the front to the near side, below 0 to the far side.");

// In the order of Joint.
constexpr JointWords kJoints[] = {
    {QT_TRANSLATE_NOOP("FigureText", "lean of the pelvis"),
     QT_TRANSLATE_NOOP("FigureText", "0 upright, 90 face down, -90 face up.")},
    {QT_TRANSLATE_NOOP("FigureText", "roll of the body"),
     QT_TRANSLATE_NOOP("FigureText", "About the long axis: lying face up, 90 is on the near side.")},
    {QT_TRANSLATE_NOOP("FigureText", "low back, bend"), kBend},
    {QT_TRANSLATE_NOOP("FigureText", "low back, side bend"), kSide},
    {QT_TRANSLATE_NOOP("FigureText", "low back, turn"), kTurn},
    {QT_TRANSLATE_NOOP("FigureText", "chest, bend"), kBend},
    {QT_TRANSLATE_NOOP("FigureText", "chest, side bend"), kSide},
    {QT_TRANSLATE_NOOP("FigureText", "chest, turn"), kTurn},
    {QT_TRANSLATE_NOOP("FigureText", "neck, bend"), kBend},
    {QT_TRANSLATE_NOOP("FigureText", "neck, side bend"), kSide},
    {QT_TRANSLATE_NOOP("FigureText", "neck, turn"), kTurn},
    {QT_TRANSLATE_NOOP("FigureText", "near shoulder, raise"), kShoulder},
    {QT_TRANSLATE_NOOP("FigureText", "far shoulder, raise"), kShoulder},
    {QT_TRANSLATE_NOOP("FigureText", "near arm, out to the side"), kArmOut},
    {QT_TRANSLATE_NOOP("FigureText", "far arm, out to the side"), kArmOut},
    {QT_TRANSLATE_NOOP("FigureText", "near elbow"), kElbow},
    {QT_TRANSLATE_NOOP("FigureText", "far elbow"), kElbow},
    {QT_TRANSLATE_NOOP("FigureText", "near hip, bend"), kHip},
    {QT_TRANSLATE_NOOP("FigureText", "far hip, bend"), kHip},
    {QT_TRANSLATE_NOOP("FigureText", "near leg, out to the side"), kLegOut},
    {QT_TRANSLATE_NOOP("FigureText", "far leg, out to the side"), kLegOut},
    {QT_TRANSLATE_NOOP("FigureText", "near leg, turned out"), kLegTurn},
    {QT_TRANSLATE_NOOP("FigureText", "far leg, turned out"), kLegTurn},
    {QT_TRANSLATE_NOOP("FigureText", "near knee"), kKnee},
    {QT_TRANSLATE_NOOP("FigureText", "far knee"), kKnee},
    {QT_TRANSLATE_NOOP("FigureText", "near ankle"), kAnkle},
    {QT_TRANSLATE_NOOP("FigureText", "far ankle"), kAnkle}};
static_assert(std::size(kJoints) == kWordCount<Joint>);

} // namespace

QString text(View view) {
  return listed(view,
                {QT_TRANSLATE_NOOP("FigureText", "from the side"), QT_TRANSLATE_NOOP("FigureText", "from the front"),
                 QT_TRANSLATE_NOOP("FigureText", "from above")});
}

QString text(Contact contact) {
  return listed(contact,
                {QT_TRANSLATE_NOOP("FigureText", "head"),         QT_TRANSLATE_NOOP("FigureText", "upper back"),
                 QT_TRANSLATE_NOOP("FigureText", "back"),         QT_TRANSLATE_NOOP("FigureText", "front"),
                 QT_TRANSLATE_NOOP("FigureText", "seat"),         QT_TRANSLATE_NOOP("FigureText", "side"),
                 QT_TRANSLATE_NOOP("FigureText", "near hand"),    QT_TRANSLATE_NOOP("FigureText", "far hand"),
                 QT_TRANSLATE_NOOP("FigureText", "near forearm"), QT_TRANSLATE_NOOP("FigureText", "far forearm"),
                 QT_TRANSLATE_NOOP("FigureText", "near knee"),    QT_TRANSLATE_NOOP("FigureText", "far knee"),
                 QT_TRANSLATE_NOOP("FigureText", "near shin"),    QT_TRANSLATE_NOOP("FigureText", "far shin"),
                 QT_TRANSLATE_NOOP("FigureText", "near foot"),    QT_TRANSLATE_NOOP("FigureText", "far foot"),
                 QT_TRANSLATE_NOOP("FigureText", "near toes"),    QT_TRANSLATE_NOOP("FigureText", "far toes"),
                 QT_TRANSLATE_NOOP("FigureText", "near heel"),    QT_TRANSLATE_NOOP("FigureText", "far heel")});
}

QString text(WallContact contact) {
  return listed(contact, {QT_TRANSLATE_NOOP("FigureText", "back"), QT_TRANSLATE_NOOP("FigureText", "near foot"),
                          QT_TRANSLATE_NOOP("FigureText", "far foot"), QT_TRANSLATE_NOOP("FigureText", "near hand"),
                          QT_TRANSLATE_NOOP("FigureText", "far hand")});
}

QString text(Support support) {
  return listed(support, {QT_TRANSLATE_NOOP("FigureText", "seat of a chair"),
                          QT_TRANSLATE_NOOP("FigureText", "top of a chair's back"),
                          QT_TRANSLATE_NOOP("FigureText", "back of a chair"),
                          QT_TRANSLATE_NOOP("FigureText", "roller along the spine"),
                          QT_TRANSLATE_NOOP("FigureText", "roller across"),
                          QT_TRANSLATE_NOOP("FigureText", "soft ball"), QT_TRANSLATE_NOOP("FigureText", "cushion"),
                          QT_TRANSLATE_NOOP("FigureText", "thick cushion"), QT_TRANSLATE_NOOP("FigureText", "wedge")});
}

QString text(Held held) {
  return listed(held, {QT_TRANSLATE_NOOP("FigureText", "ring"), QT_TRANSLATE_NOOP("FigureText", "ball"),
                       QT_TRANSLATE_NOOP("FigureText", "band"), QT_TRANSLATE_NOOP("FigureText", "weights"),
                       QT_TRANSLATE_NOOP("FigureText", "cushion")});
}

QString text(HeldAt at) {
  return listed(at,
                {QT_TRANSLATE_NOOP("FigureText", "in both hands"), QT_TRANSLATE_NOOP("FigureText", "in the near hand"),
                 QT_TRANSLATE_NOOP("FigureText", "in the far hand"), QT_TRANSLATE_NOOP("FigureText", "at the knees"),
                 QT_TRANSLATE_NOOP("FigureText", "at the ankles"),
                 QT_TRANSLATE_NOOP("FigureText", "from the hands to the feet"),
                 QT_TRANSLATE_NOOP("FigureText", "from the hands to the near foot"),
                 QT_TRANSLATE_NOOP("FigureText", "from the hands to the far foot"),
                 QT_TRANSLATE_NOOP("FigureText", "between near hand and far knee"),
                 QT_TRANSLATE_NOOP("FigureText", "behind the low back"), QT_TRANSLATE_NOOP("FigureText", "in the lap"),
                 QT_TRANSLATE_NOOP("FigureText", "under the seat")});
}

QString text(Handle handle) {
  return listed(handle, {QT_TRANSLATE_NOOP("FigureText", "seat"), QT_TRANSLATE_NOOP("FigureText", "pelvis"),
                         QT_TRANSLATE_NOOP("FigureText", "waist"), QT_TRANSLATE_NOOP("FigureText", "chest"),
                         QT_TRANSLATE_NOOP("FigureText", "head"), QT_TRANSLATE_NOOP("FigureText", "near shoulder"),
                         QT_TRANSLATE_NOOP("FigureText", "far shoulder"), QT_TRANSLATE_NOOP("FigureText", "near elbow"),
                         QT_TRANSLATE_NOOP("FigureText", "far elbow"), QT_TRANSLATE_NOOP("FigureText", "near hand"),
                         QT_TRANSLATE_NOOP("FigureText", "far hand"), QT_TRANSLATE_NOOP("FigureText", "near hip"),
                         QT_TRANSLATE_NOOP("FigureText", "far hip"), QT_TRANSLATE_NOOP("FigureText", "near knee"),
                         QT_TRANSLATE_NOOP("FigureText", "far knee"), QT_TRANSLATE_NOOP("FigureText", "near foot"),
                         QT_TRANSLATE_NOOP("FigureText", "far foot"), QT_TRANSLATE_NOOP("FigureText", "near toes"),
                         QT_TRANSLATE_NOOP("FigureText", "far toes")});
}

QString text(Joint joint) { return tr(kJoints[static_cast<std::size_t>(joint)].name); }

QString directions(Joint joint) { return tr(kJoints[static_cast<std::size_t>(joint)].directions); }

QString figureDescription(const KeyPoses& poses, bool both) {
  const QString end = tr("A body in joint angles, seen %1.").arg(text(poses.end.view));
  return both ? tr("%1 The start pose stands faintly behind the end pose; arrows show the way of what travels most.")
                    .arg(end)
              : end;
}

QString degreesText(double degrees) { return tr("%1 degrees").arg(QLocale().toString(degrees, 'g', 4)); }

} // namespace matwright
