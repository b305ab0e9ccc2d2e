#include "core/store/Resources.h"
#include "core/store/Store.h"
#include "ui/settings/Settings.h"
#include "ui/text/ErrorText.h"
#include "ui/text/Translations.h"
#include "ui/theme/Theme.h"
#include "ui/window/MainWindow.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QIcon>
#include <QLocale>
#include <QMessageBox>
#include <QStandardPaths>
#include <QStyleFactory>
#include <QThreadPool>
#include <csignal>
#include <spdlog/spdlog.h>

namespace {

using namespace matwright;

Date today() { return Date{std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now())}; }

int complain(const QString& text) {
  spdlog::critical("{}", text.toStdString());
  QMessageBox::critical(nullptr, QStringLiteral("Matwright"), text);
  return 2;
}

// Loads take a while the first time. They are asked for as soon as movements are ranked, so they are begun with while
// the window opens.
void workOutLoads(std::shared_ptr<const Knowledge> knowledge) {
  QThreadPool::globalInstance()->start([knowledge = std::move(knowledge)] {
    for (const Movement& movement : knowledge->catalogue.movements())
      knowledge->loads->of(movement, nullptr);
  });
}

} // namespace

int main(int argc, char** argv) {
  std::signal(SIGXFSZ, SIG_IGN); // a file over the limit is a failed write, not the end of the program
  QApplication application(argc, argv);
  QApplication::setApplicationName(QStringLiteral("Matwright"));
  QApplication::setOrganizationName(QStringLiteral("Matwright"));
  QApplication::setApplicationVersion(QStringLiteral(MATWRIGHT_VERSION));
  QApplication::setDesktopFileName(QStringLiteral("matwright"));
  QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/matwright.svg")));
  QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  loadTranslations(QLocale::system());
  loadFonts();
  QFont font(textFamily());
  font.setPixelSize(13);
  QApplication::setFont(font);

  QCommandLineParser parser;
  parser.setApplicationDescription(QApplication::translate("main", "Composes, screens and prints classes on the mat."));
  parser.addHelpOption();
  parser.addVersionOption();
  parser.addPositionalArgument(QStringLiteral("class"), QApplication::translate("main", "The class file to open."));
  parser.process(application);

  const auto folder = findResources(thisExecutable());
  if (!folder)
    return complain(QApplication::translate("main", "The catalogue that belongs to the program was not found."));
  auto knowledge = readKnowledge(*folder);
  if (!knowledge)
    return complain(text(knowledge.error().front()));

  const QDir data(QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation));
  WindowPlaces places{QString::fromStdString((*folder / "demo").string()),
                      data.filePath(QStringLiteral("Matwright/Demo studio")),
                      data.filePath(QStringLiteral("Matwright/recovery"))};
  Settings settings;
  knowledge->loads = std::make_shared<const Loads>(settings.bodyTable());
  const auto shared = std::make_shared<const Knowledge>(std::move(*knowledge));
  workOutLoads(shared);
  MainWindow window(shared, settings, std::move(places), today);
  window.show();
  window.start(parser.positionalArguments().value(0));
  return QApplication::exec();
}
