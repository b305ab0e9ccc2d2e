#include "ui/controls/SaveFigure.h"

#include "core/store/Files.h"
#include "ui/controls/FileQuestion.h"
#include "ui/figure/FigureSvg.h"
#include "ui/figure/FigureView.h"
#include "ui/text/ErrorText.h"
#include "ui/text/FigureText.h"

#include <QAction>
#include <QCoreApplication>
#include <QFile>
#include <QMessageBox>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("SaveFigure", text); }

// A name that every file system takes.
QString fileName(QString name) {
  for (QChar& letter : name)
    if (QStringLiteral("/\\:*?\"<>|").contains(letter))
      letter = u'-';
  return name.simplified();
}

} // namespace

QString saveFigureWords() { return tr("Save figure as SVG\u2026"); }

Result<void> saveFigure(const FigureToSave& figure, const QString& file) {
  const QByteArray svg = figureSvg(figure.poses, FigureEnds::both,
                                   {figure.name, figureDescription(figure.poses, movesInOnePicture(figure.poses))},
                                   svgStyle(figure.regions));
  return writeFile(QFile::encodeName(file).toStdString(), {svg.constData(), static_cast<std::size_t>(svg.size())})
      .map([](const Fingerprint&) {});
}

void askToSaveFigure(QWidget* parent, const FigureToSave& figure) {
  askFileToSave(
      parent, tr("Save figure as SVG"), tr("Scalable drawing"), fileName(figure.name),
      [parent, figure](const QString& file) {
        const Result<void> saved = saveFigure(figure, file);
        if (saved)
          return;
        auto* box =
            new QMessageBox(QMessageBox::Warning, tr("Matwright"), text(saved.error()), QMessageBox::Ok, parent);
        box->setAttribute(Qt::WA_DeleteOnClose);
        box->open();
      },
      QStringLiteral("svg"));
}

QAction* offerSaving(FigureView& figure) {
  auto* action = new QAction(saveFigureWords(), &figure);
  QObject::connect(action, &QAction::triggered, &figure, [&figure] {
    if (!figure.isEmpty())
      askToSaveFigure(&figure, {figure.poses(), figure.regions(), figure.accessibleName()});
  });
  figure.addAction(action);
  figure.setContextMenuPolicy(Qt::ActionsContextMenu);
  figure.setFocusPolicy(Qt::TabFocus);
  figure.setToolTip(QCoreApplication::translate("SaveFigure", "Its menu saves it as a drawing"));
  return action;
}

} // namespace matwright
