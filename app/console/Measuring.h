#pragma once

#include "ui/theme/Theme.h"

#include <QGuiApplication>
#include <optional>

namespace matwright {

// Measuring text and painting need an application; they need no display.
class Measuring {
public:
  Measuring() {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    application_.emplace(count_, words_);
    loadFonts();
  }

private:
  int count_ = 1;
  char name_[14] = "matwright-cli";
  char* words_[2] = {name_, nullptr};
  std::optional<QGuiApplication> application_;
};

} // namespace matwright
