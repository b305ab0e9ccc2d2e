#include "ui/document/KnowledgeExchange.h"

#include "core/store/Store.h"
#include "ui/document/NativePath.h"

#include <QCoreApplication>

namespace matwright {

Result<void> exportKnowledge(const OwnKnowledge& given, const QString& file) {
  return writeFile(nativePath(file), ownKnowledgeText(given)).map([](const auto&) {});
}

Result<Merged, std::vector<Error>> importKnowledge(KnowledgeDocument& document, const QString& file) {
  auto read = readOwnKnowledge(nativePath(file), document.builtIn());
  if (!read)
    return failure(std::move(read.error()));
  Merged done = merged(document.builtIn(), document.own(), read->value);
  const QString what = QCoreApplication::translate("KnowledgeExchange", "Import a file");
  if (auto changed = document.change(done.own, what); !changed)
    return failure(std::move(changed.error()));
  return done;
}

} // namespace matwright
