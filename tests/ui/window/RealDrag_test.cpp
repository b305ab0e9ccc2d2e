// A movement is dragged out of the catalogue with a real drag of the window system.
#include "tests/ui/window/Windows.h"
#include "ui/catalogue/CataloguePanel.h"
#include "ui/timeline/TerrainView.h"

#include <QDrag>
#include <QGuiApplication>
#include <QListView>
#include <QTimer>
#include <QWindow>
#include <functional>

namespace matwright {
namespace {

struct RealDrag : WindowTest {};

TEST_F(RealDrag, AMovementDroppedOnTheTerrainJoinsTheClassWhereTheGhostStood) {
  ASSERT_NE(QGuiApplication::platformName(), QStringLiteral("offscreen")) << "a drag needs a display";
  auto* list = window->findChild<CataloguePanel*>()->findChild<QListView*>();
  auto* terrain = window->findChild<TerrainView*>();
  ASSERT_TRUE(QTest::qWaitFor([&] { return list->model()->rowCount() > 0; }));
  const std::size_t before = steps();
  const QModelIndex first = list->model()->index(0, 0);
  list->scrollTo(first);
  QWindow* handle = window->windowHandle();
  const QPoint from = list->viewport()->mapTo(window.get(), list->visualRect(first).center());
  const QPoint to = terrain->viewport()->mapTo(window.get(), terrain->viewport()->rect().center());
  std::optional<Snapshot> ghost;
  QObject::connect(terrain, &TerrainView::previewChanged, [&](const std::optional<Snapshot>& snapshot) {
    if (snapshot)
      ghost = snapshot;
  });

  // The drag runs a loop of its own inside one of these moves, and a timer does not fire inside its own call: each move
  // sets the next one in motion before it is made.
  constexpr int kMoves = 12;
  std::function<void(int)> hand = [&](int move) {
    if (move <= kMoves)
      QTimer::singleShot(40, [&hand, move] { hand(move + 1); });
    if (move <= kMoves)
      QTest::mouseMove(handle, from + (to - from) * move / kMoves);
    else
      QTest::mouseRelease(handle, Qt::LeftButton, {}, to);
  };
  QTimer watchdog;
  watchdog.setSingleShot(true);
  QObject::connect(&watchdog, &QTimer::timeout, [] { QDrag::cancel(); });
  watchdog.start(15000);
  QTest::mousePress(handle, Qt::LeftButton, {}, from);
  QTimer::singleShot(40, [&hand] { hand(1); });
  EXPECT_TRUE(QTest::qWaitFor([&] { return steps() > before; }, 12000));

  EXPECT_EQ(steps(), before + 1);
  EXPECT_EQ(document().undoStack()->count(), 1);
  ASSERT_TRUE(ghost) << "the terrain showed no preview while dragging";
  EXPECT_EQ(document().evaluation().schedule.length, ghost->evaluation->schedule.length);
  EXPECT_EQ(document().evaluation().schedule.changes, ghost->evaluation->schedule.changes);
}

} // namespace
} // namespace matwright
