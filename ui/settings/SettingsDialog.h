#pragma once

#include "ui/settings/Settings.h"

#include <QDialog>

namespace matwright {

// Every choice takes effect at once; closing is all there is to confirm.
class SettingsDialog : public QDialog {
  Q_OBJECT

public:
  explicit SettingsDialog(Settings& settings, QWidget* parent = nullptr);
};

} // namespace matwright
