#pragma once

#include "core/store/Store.h"
#include "ui/document/KnowledgeDocument.h"

namespace matwright {

// The file behind what a studio knows of its own: <studio>/knowledge.json. Not there when there is nothing to know.
class KnowledgeFile {
public:
  explicit KnowledgeFile(KnowledgeDocument& document) : document_(document) {}

  // Into the document. A file that cannot be read is left as it is and locks the document.
  void load(const QString& studio);
  const std::vector<Error>& errors() const { return errors_; }

  // What the document holds, when it has changed. When `guarded`, a file that somebody else wrote is not replaced.
  Result<void> save(const QString& studio, bool guarded);

  // The same into and out of a folder of unsaved work; false when it cannot be written.
  bool keepIn(const QString& folder) const;
  void recoverFrom(const QString& folder); // after load()

private:
  KnowledgeDocument& document_;
  KeptTree kept_;
  std::optional<Fingerprint> fingerprint_; // of the file as it was read or written; none for no file
  std::vector<Error> errors_;
};

} // namespace matwright
