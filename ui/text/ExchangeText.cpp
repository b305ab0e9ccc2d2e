#include "ui/text/ExchangeText.h"

#include "ui/text/ErrorText.h"

#include <QCoreApplication>
#include <QStringList>

namespace matwright {
namespace {

constexpr std::size_t kMostErrors = 4; // said at once

QString tr(const char* text, std::size_t n = 0) {
  return QCoreApplication::translate("ExchangeText", text, nullptr, static_cast<int>(n));
}

} // namespace

QString countedText(const OwnKnowledge& own) {
  QStringList parts;
  if (const std::size_t n = own.movements.size())
    parts << tr("%n movement(s)", n);
  if (const std::size_t n = own.conditions.size())
    parts << tr("%n condition(s)", n);
  if (const std::size_t n = own.rules.size())
    parts << tr("%n rule(s)", n);
  if (const std::size_t n = own.sources.size())
    parts << tr("%n source(s)", n);
  if (const std::size_t n = own.thresholds.size())
    parts << tr("%n threshold(s)", n);
  return parts.join(QStringLiteral(", "));
}

QString importedText(const Merged& merged) {
  const QString taken = countedText(merged.taken);
  QStringList words{taken.isEmpty() ? tr("Nothing in the file is new.") : tr("Imported: %1.").arg(taken)};
  if (merged.alreadyHere > 0)
    words << tr("%n was (were) here already.", static_cast<std::size_t>(merged.alreadyHere));
  if (merged.renamed > 0)
    words << tr("%n has (have) the id of something else of yours, and was (were) taken beside it.",
                static_cast<std::size_t>(merged.renamed));
  if (const std::size_t n = merged.keptThresholds.size())
    words << tr("%n threshold(s) in the file is (are) another than yours; yours stay(s).", n);
  if (const std::size_t n = merged.idleThresholds.size())
    words << tr("%n threshold(s) is (are) for rules where none can be set, and was (were) left out.", n);
  return words.join(QLatin1Char(' '));
}

QString notImportedText(const std::vector<Error>& errors) {
  QStringList lines;
  for (const Error& error : errors) {
    if (static_cast<std::size_t>(lines.size()) == kMostErrors) {
      lines << tr("and %n more", errors.size() - kMostErrors);
      break;
    }
    lines << text(error);
  }
  return tr("Nothing was imported. %1").arg(lines.join(QLatin1Char('\n')));
}

} // namespace matwright
