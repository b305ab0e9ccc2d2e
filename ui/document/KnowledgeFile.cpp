#include "ui/document/KnowledgeFile.h"

#include "ui/document/NativePath.h"

#include <QDir>
#include <QFileInfo>

namespace matwright {
namespace {

QString fileIn(const QString& folder) { return QDir(folder).filePath(QStringLiteral("knowledge.json")); }

} // namespace

void KnowledgeFile::load(const QString& studio) {
  kept_ = nullptr;
  fingerprint_.reset();
  errors_.clear();
  if (studio.isEmpty() || !QFileInfo::exists(fileIn(studio)))
    return document_.load({});
  auto read = readOwnKnowledge(nativePath(fileIn(studio)), document_.builtIn());
  if (!read) {
    errors_ = std::move(read.error());
    return document_.lock(errors_);
  }
  kept_ = read->kept;
  fingerprint_ = read->fingerprint;
  document_.load(std::move(read->value));
}

Result<void> KnowledgeFile::save(const QString& studio, bool guarded) {
  if (document_.undoStack()->isClean())
    return {};
  const QString file = fileIn(studio);
  if (!fingerprint_ && guarded && QFileInfo::exists(file))
    return failure(Error{ErrorCode::changedOnDisk, file.toStdString(), {}, {}, {}});
  if (fingerprint_ || !document_.own().empty()) {
    auto written = writeFile(nativePath(file), ownKnowledgeText(document_.own(), kept_), Privacy::ordinary,
                             fingerprint_ && guarded ? &*fingerprint_ : nullptr);
    if (!written)
      return failure(written.error());
    fingerprint_ = *written;
  }
  document_.undoStack()->setClean();
  document_.sealGesture();
  return {};
}

bool KnowledgeFile::keepIn(const QString& folder) const {
  if (!document_.lockedBy().empty())
    return true;
  return writeFile(nativePath(fileIn(folder)), ownKnowledgeText(document_.own(), kept_), Privacy::personal).has_value();
}

void KnowledgeFile::recoverFrom(const QString& folder) {
  if (!QFileInfo::exists(fileIn(folder)))
    return;
  auto read = readOwnKnowledge(nativePath(fileIn(folder)), document_.builtIn());
  if (!read) {
    errors_ = std::move(read.error());
    return;
  }
  if (read->value == document_.own())
    return;
  document_.load(std::move(read->value));
  document_.undoStack()->resetClean();
}

} // namespace matwright
