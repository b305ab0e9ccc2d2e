#include "ui/controls/SaveFigure.h"
#include "ui/figure/FigureView.h"

#include <QAction>
#include <QFile>
#include <QFileDialog>
#include <QTemporaryDir>
#include <QTest>
#include <gmock/gmock.h>

namespace matwright {
namespace {

FigureToSave bow() {
  FigureToSave figure{{}, {Region::abdominals}, QStringLiteral("Bow & rise")};
  figure.poses.start.on = figure.poses.end.on = {Contact::footNear, Contact::footFar};
  figure.poses.end.lumbar.bend = 40;
  return figure;
}

QByteArray contents(const QString& name) {
  QFile file(name);
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

TEST(SaveFigure, WritesADrawingThatSaysWhatItShows) {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("bow.svg"));
  ASSERT_TRUE(saveFigure(bow(), file));
  const QByteArray svg = contents(file);
  EXPECT_TRUE(svg.contains("<title>Bow &amp; rise</title>"));
  EXPECT_TRUE(svg.contains("seen from the side. The start pose stands faintly behind"));
}

TEST(SaveFigure, SaysWhatCannotBeWritten) {
  const QTemporaryDir folder;
  EXPECT_FALSE(saveFigure(bow(), folder.filePath(QStringLiteral("no/such/bow.svg"))));
}

TEST(SaveFigure, AFigureThatOffersItIsReachedByKeyboardAndAsksForAFile) {
  FigureView view;
  QAction* action = offerSaving(view);
  EXPECT_EQ(view.focusPolicy(), Qt::TabFocus);
  EXPECT_THAT(view.actions(), testing::Contains(action));
  EXPECT_EQ(view.contextMenuPolicy(), Qt::ActionsContextMenu);
  action->trigger(); // nothing is shown, nothing is asked
  EXPECT_EQ(view.findChild<QFileDialog*>(), nullptr);
  const QTemporaryDir folder;
  view.showMovement(bow().poses, {Seconds(1), {{Breath::in, 2}, {Breath::out, 2}}}, QStringLiteral("Bow, left/right"));
  action->trigger();
  auto* dialog = view.findChild<QFileDialog*>();
  ASSERT_NE(dialog, nullptr);
  EXPECT_TRUE(dialog->selectedFiles().value(0).endsWith(QStringLiteral("Bow, left-right.svg")));
  const QString file = folder.filePath(QStringLiteral("chosen.svg"));
  Q_EMIT dialog->fileSelected(file);
  EXPECT_TRUE(contents(file).contains("<title>Bow, left/right</title>"));
}

} // namespace
} // namespace matwright
