// What the program remembers about how its owner likes it; nothing about classes or people. The table of keys is in
// Settings.cpp and nowhere else.
#pragma once

#include "core/load/BodyTable.h"

#include <QByteArray>
#include <QObject>
#include <QSettings>
#include <QStringList>

namespace matwright {

enum class Appearance { system, light, dark };
enum class Paper { a4, letter };

class Settings : public QObject {
  Q_OBJECT

public:
  static constexpr int kMostRecent = 8;

  explicit Settings(QObject* parent = nullptr);

  Appearance appearance() const;
  void setAppearance(Appearance appearance);
  Paper paper() const; // as chosen, else by the locale's measurement system
  void setPaper(Paper paper);
  bool namesOnCard() const; // full names instead of initials
  void setNamesOnCard(bool names);
  bool reducedMotion() const;
  void setReducedMotion(bool reduced);
  BodyTable bodyTable() const; // by which loads are worked out
  void setBodyTable(BodyTable table);
  BodySize bodySize() const; // in which they are told, in whole centimetres and kilograms
  void setBodySize(const BodySize& size);

  QStringList recentClasses() const; // most recent first, those that still exist
  void noteRecent(const QString& file);
  void clearRecent();
  QString lastClass() const;

  QByteArray layout(const QString& part) const; // of windows and splitters
  void setLayout(const QString& part, const QByteArray& state);

Q_SIGNALS:
  void changed();

private:
  template <class Value> void store(const char* key, const Value& value);
  mutable QSettings settings_;
};

} // namespace matwright
