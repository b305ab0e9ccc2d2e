// Terrains to test with: drawn at random without any catalogue, and an open class in a view.
#pragma once

#include "tests/support/Documents.h"
#include "tests/support/RandomClass.h"
#include "ui/text/VocabularyText.h"
#include "ui/timeline/TerrainView.h"

#include <QApplication>
#include <QTest>
#include <cmath>
#include <gmock/gmock.h>

namespace matwright {

// Every sign is 6 wide and a line 14 high: nothing depends on an installed font.
inline TextMeasure plainMeasure(qreal sign = 6, qreal line = 14) {
  return {[sign](const QString& text) { return sign * static_cast<qreal>(text.size()); }, line};
}
inline TerrainFonts plainFonts() { return {plainMeasure(), plainMeasure(7, 15), plainMeasure(5.5, 13)}; }

inline QString randomName(test::Draw& draw) {
  const std::vector<QString> words{QStringLiteral("single"), QStringLiteral("leg"),        QStringLiteral("stretch"),
                                   QStringLiteral("roll"),   QStringLiteral("shoulder"),   QStringLiteral("bridge"),
                                   QStringLiteral("with"),   QStringLiteral("breathing"),  QStringLiteral("side-lying"),
                                   QStringLiteral("saw"),    QStringLiteral("preparation")};
  QString name = draw.oneOf(words);
  for (int more = draw.from(0, 3); more > 0; --more)
    name += QLatin1Char(' ') + draw.oneOf(words);
  return name;
}

// Steps in four sections, in runs at one height as classes have them.
inline TerrainScene randomScene(test::Draw& draw, int steps, Seconds target = minutes(50)) {
  TerrainScene scene;
  scene.target = target;
  Seconds now;
  auto elevation = Elevation::faceUp;
  Elevation before = elevation;
  int next = 0;
  for (std::size_t section = 0; section < 4; ++section) {
    TerrainSection band{QStringLiteral("Section %1").arg(section), now, now, 0};
    const int until = steps * static_cast<int>(section + 1) / 4;
    for (; next < until; ++next) {
      TerrainStep step;
      step.id = StepId{next + 1};
      step.place = {section, band.steps++};
      step.name = randomName(draw);
      step.dose = QStringLiteral("%1\u00a0breaths").arg(draw.from(3, 12));
      step.shortDose = QStringLiteral("8");
      if (draw.chance(0.35))
        elevation = static_cast<Elevation>(draw.below(kWordCount<Elevation>));
      step.elevation = step.ending = elevation;
      step.begin = now;
      step.workBegin = now + Seconds(draw.from(3, 25));
      step.finish = step.workBegin + Seconds(draw.from(12, 150));
      if (next > 0) {
        step.moving = (step.workBegin - step.begin) * 0.7;
        step.changes = before == elevation ? draw.from(0, 1) : draw.from(1, 3);
        step.way = {{0.0, before}, {1.0, elevation}};
        if (draw.chance(0.15))
          step.wayCaution = static_cast<Level>(draw.below(kWordCount<Level>));
      }
      if (draw.chance(0.4))
        step.caution = static_cast<Level>(draw.below(kWordCount<Level>));
      step.effort = draw.from(0, 10);
      now = step.finish;
      before = elevation;
      scene.steps.push_back(step);
    }
    band.end = now;
    scene.sections.push_back(band);
  }
  scene.length = now;
  return scene;
}

// A class of known movements, open in a view of its own.
struct OpenTerrain : OpenClass {
  std::unique_ptr<TerrainView> view;

  explicit OpenTerrain(QSize size = {1200, 560}) { open(size); }
  void open(QSize size) {
    view = std::make_unique<TerrainView>(document, selection, commands);
    view->resize(size);
    view->show();
    QApplication::processEvents();
  }

  // Two sections with steps, two without.
  void fill() {
    ClassPlan plan = emptyClass("Test");
    plan.target = minutes(20);
    std::int64_t id = 0;
    const auto put = [&](std::size_t section, const char* movement) {
      plan.sections[section].steps.push_back(
          stepOf(StepId{++id}, *document.knowledge().catalogue.find(MovementId{movement})));
    };
    put(1, "hundred");
    put(1, "roll-up");
    put(1, "saw");
    put(2, "clam");
    put(2, "hundred");
    document.load(plan);
    QApplication::processEvents();
  }

  QPoint middleOf(StepId step) const { return view->toViewport(view->geometry().block(step)->rect).center().toPoint(); }
  QPoint edgeOf(StepId step) const {
    const QRectF rect = view->toViewport(view->geometry().block(step)->rect);
    return {static_cast<int>(std::floor(rect.right())) - 1, static_cast<int>(rect.center().y())};
  }
  // Of the class as it is, even while something is dragged.
  QPoint inBand(std::size_t section) const {
    const SectionBand& band = view->settledGeometry().sections()[section];
    const qreal bottom = view->settledGeometry().terrain().bottom();
    return view->toViewport(QRectF(band.left, 0, band.right - band.left, bottom)).center().toPoint();
  }

  void press(QPoint at, Qt::KeyboardModifiers modifiers = {}) {
    QTest::mousePress(view->viewport(), Qt::LeftButton, modifiers, at);
  }
  void release(QPoint at, Qt::KeyboardModifiers modifiers = {}) {
    QTest::mouseRelease(view->viewport(), Qt::LeftButton, modifiers, at);
  }
  void moveTo(QPoint at, Qt::KeyboardModifiers modifiers = {}) {
    QMouseEvent event(QEvent::MouseMove, at, view->viewport()->mapToGlobal(QPointF(at)), Qt::NoButton, Qt::LeftButton,
                      modifiers);
    QApplication::sendEvent(view->viewport(), &event);
  }
  void drag(QPoint from, QPoint to, Qt::KeyboardModifiers modifiers = {}) {
    press(from, modifiers);
    moveTo(from + (to - from) / 3, modifiers);
    moveTo(to, modifiers);
  }
  int entries() { return document.undoStack()->count(); }
  std::vector<std::int64_t> order(std::size_t section) const {
    std::vector<std::int64_t> ids;
    for (const Step& step : document.plan().sections[section].steps)
      ids.push_back(step.id.value);
    return ids;
  }
};

} // namespace matwright
