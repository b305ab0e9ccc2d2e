// Runs the cases of a test with windows: one application, the bundled font, the light theme.
#include "ui/theme/Theme.h"

#include <QApplication>
#include <QStandardPaths>
#include <QStyleFactory>
#include <gmock/gmock.h>

int main(int argc, char** argv) {
  QStandardPaths::setTestModeEnabled(true);
  QApplication application(argc, argv);
  matwright::loadFonts();
  QFont font(matwright::textFamily());
  font.setPixelSize(13);
  QApplication::setFont(font);
  QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  QApplication::setPalette(matwright::paletteOf(matwright::lightTheme()));
  testing::InitGoogleMock(&argc, argv);
  return RUN_ALL_TESTS();
}
