#pragma once

#include <QFile>
#include <QString>
#include <filesystem>

namespace matwright {

inline std::filesystem::path nativePath(const QString& file) {
  return std::filesystem::path(QFile::encodeName(file).toStdString());
}

} // namespace matwright
