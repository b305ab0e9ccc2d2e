#include "ui/settings/Settings.h"

#include <QFileInfo>
#include <QLocale>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr char kAppearance[] = "appearance"; // system, light, dark
constexpr char kPaper[] = "paper";           // a4, letter
constexpr char kNamesOnCard[] = "namesOnCard";
constexpr char kReducedMotion[] = "reducedMotion";
constexpr char kBodyTable[] = "loads/table";     // the words of BodyTable
constexpr char kStature[] = "loads/centimetres"; // of the body
constexpr char kMass[] = "loads/kilograms";
constexpr char kRecent[] = "recentClasses";
constexpr char kLayout[] = "layout/";

QString key(const char* name) { return QString::fromLatin1(name); }

} // namespace

Settings::Settings(QObject* parent) : QObject(parent) {}

template <class Value> void Settings::store(const char* name, const Value& value) {
  settings_.setValue(key(name), value);
  Q_EMIT changed();
}

Appearance Settings::appearance() const {
  const QString word = settings_.value(key(kAppearance)).toString();
  return word == QLatin1String("light")  ? Appearance::light
         : word == QLatin1String("dark") ? Appearance::dark
                                         : Appearance::system;
}

void Settings::setAppearance(Appearance appearance) {
  const char* words[] = {"system", "light", "dark"};
  store(kAppearance, QString::fromLatin1(words[static_cast<int>(appearance)]));
}

Paper Settings::paper() const {
  const QString word = settings_.value(key(kPaper)).toString();
  if (word == QLatin1String("letter"))
    return Paper::letter;
  if (word == QLatin1String("a4"))
    return Paper::a4;
  return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem ? Paper::letter : Paper::a4;
}

void Settings::setPaper(Paper paper) {
  store(kPaper, paper == Paper::a4 ? QStringLiteral("a4") : QStringLiteral("letter"));
}

bool Settings::namesOnCard() const { return settings_.value(key(kNamesOnCard), false).toBool(); }
void Settings::setNamesOnCard(bool names) { store(kNamesOnCard, names); }
bool Settings::reducedMotion() const { return settings_.value(key(kReducedMotion), false).toBool(); }
void Settings::setReducedMotion(bool reduced) { store(kReducedMotion, reduced); }

BodyTable Settings::bodyTable() const {
  return fromWord<BodyTable>(settings_.value(key(kBodyTable)).toString().toStdString()).value_or(BodyTable::winter);
}

void Settings::setBodyTable(BodyTable table) {
  const std::string_view name = word(table);
  store(kBodyTable, QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size())));
}

BodySize Settings::bodySize() const {
  const BodySize usual;
  const int centimetres = settings_.value(key(kStature), static_cast<int>(std::lround(usual.stature * 100))).toInt();
  const int kilograms = settings_.value(key(kMass), static_cast<int>(std::lround(usual.mass))).toInt();
  return {.mass = std::clamp<double>(kilograms, BodySize::kLeastMass, BodySize::kMostMass),
          .stature = std::clamp(centimetres / 100.0, BodySize::kLeastStature, BodySize::kMostStature)};
}

void Settings::setBodySize(const BodySize& size) {
  settings_.setValue(key(kStature), static_cast<int>(std::lround(size.stature * 100)));
  store(kMass, static_cast<int>(std::lround(size.mass)));
}

QStringList Settings::recentClasses() const {
  QStringList existing;
  for (const QString& file : settings_.value(key(kRecent)).toStringList())
    if (QFileInfo::exists(file))
      existing << file;
  return existing;
}

void Settings::noteRecent(const QString& file) {
  QStringList recent = settings_.value(key(kRecent)).toStringList();
  recent.removeAll(file);
  recent.prepend(file);
  store(kRecent, QStringList(recent.mid(0, kMostRecent)));
}

void Settings::clearRecent() { store(kRecent, QStringList()); }

QString Settings::lastClass() const { return recentClasses().value(0); }

QByteArray Settings::layout(const QString& part) const { return settings_.value(key(kLayout) + part).toByteArray(); }

void Settings::setLayout(const QString& part, const QByteArray& state) {
  settings_.setValue(key(kLayout) + part, state);
}

} // namespace matwright
