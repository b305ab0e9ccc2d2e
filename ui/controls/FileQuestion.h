// Asks for a file, and gives its name to `then` when one was chosen. Files are JSON where no other suffix is named.
// `folder` is where it begins, where that is there.
#pragma once

#include <QString>
#include <functional>

class QWidget;

namespace matwright {

void askFileToOpen(QWidget* parent, const QString& title, const QString& kind, std::function<void(const QString&)> then,
                   const QString& folder = {});
void askFileToSave(QWidget* parent, const QString& title, const QString& kind, const QString& name,
                   std::function<void(const QString&)> then, const QString& suffix = QStringLiteral("json"),
                   const QString& folder = {});

} // namespace matwright
