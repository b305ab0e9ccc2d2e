#include "ui/compose/RecentClasses.h"

#include "core/store/Store.h"
#include "ui/controls/DateField.h"
#include "ui/document/NativePath.h"

#include <QDateTime>
#include <QDir>
#include <algorithm>

namespace matwright {
namespace {

constexpr int kMostRead = 200;

} // namespace

std::vector<ClassOnFile> classesOnFile(const QString& studio, const QString& but) {
  std::vector<ClassOnFile> classes;
  if (studio.isEmpty())
    return classes;
  const QString own = QDir(studio).filePath(QStringLiteral("classes"));
  const QFileInfoList files =
      QDir(QFileInfo::exists(own) ? own : studio).entryInfoList({QStringLiteral("*.json")}, QDir::Files, QDir::Time);
  for (const QFileInfo& file : files.mid(0, kMostRead)) {
    if (file.absoluteFilePath() == QFileInfo(but).absoluteFilePath())
      continue;
    const auto read = readClass(nativePath(file.absoluteFilePath()));
    if (read && countSteps(read->value) > 0)
      classes.push_back({file.absoluteFilePath(), recentClass(read->value),
                         read->value.date.value_or(fromQDate(file.lastModified().date()))});
  }
  std::stable_sort(classes.begin(), classes.end(),
                   [](const ClassOnFile& a, const ClassOnFile& b) { return a.date > b.date; });
  if (classes.size() > ClassWishes::kMostRecent)
    classes.erase(classes.begin() + ClassWishes::kMostRecent, classes.end());
  return classes;
}

} // namespace matwright
