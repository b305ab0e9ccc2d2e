// How long figures take, over all end poses of the catalogue in turn. A timeline or a list paints some sixty of them
// while a picture has 16 ms: posed() is to take at most 2 microseconds, a figure at list size at most 50. A figure that
// moves is posed and painted thirty times a second at 300 pixels: at most 1 ms of 33.
#include "core/figure/Passage.h"
#include "core/load/MovementLoad.h"
#include "tests/support/RealKnowledge.h"
#include "ui/figure/MovementPaint.h"

#include <QImage>
#include <QPainter>
#include <benchmark/benchmark.h>

namespace matwright::test {
namespace {

const std::vector<KeyPoses>& movements() {
  static const std::vector<KeyPoses> all = [] {
    std::vector<KeyPoses> poses;
    if (readRealKnowledge())
      for (const Movement& movement : realKnowledge().catalogue.movements())
        poses.push_back(movement.poses);
    return poses;
  }();
  return all;
}

template <class Item, class Make> std::vector<Item> each(Make make) {
  std::vector<Item> items;
  for (const KeyPoses& poses : movements())
    items.push_back(make(poses));
  return items;
}

// One after the other, over and over; skipped, with the reason, when the knowledge cannot be read.
template <class Item, class Work>
void inTurn(benchmark::State& state, const std::vector<Item>& items, const Work& work) {
  if (items.empty()) {
    state.SkipWithError(whatIsWrongWithRealKnowledge().c_str());
    return;
  }
  std::size_t at = 0;
  for (auto _ : state) {
    work(items[at]);
    at = at + 1 < items.size() ? at + 1 : 0;
  }
}

void poseBody(benchmark::State& state) {
  const auto poses = each<Articulation>([](const KeyPoses& movement) { return articulated(movement.end); });
  inTurn(state, poses, [](const Articulation& pose) { benchmark::DoNotOptimize(posed(pose)); });
}
BENCHMARK(poseBody)->Unit(benchmark::kMicrosecond);

void settleBody(benchmark::State& state) {
  inTurn(state, movements(), [](const KeyPoses& movement) { benchmark::DoNotOptimize(settled(movement.end)); });
}
BENCHMARK(settleBody)->Unit(benchmark::kMicrosecond);

// All moments of one settled pose; to be held against settling it.
void weighPose(benchmark::State& state) {
  const auto shapes = each<Settled>([](const KeyPoses& movement) { return settled(movement.end); });
  inTurn(state, shapes, [](const Settled& shape) { benchmark::DoNotOptimize(jointMoments(shape, BodyTable::winter)); });
}
BENCHMARK(weighPose)->Unit(benchmark::kMicrosecond);

// The load of a whole repetition; to be held against its passage, which is part of it.
void weighMovement(benchmark::State& state) {
  const Tempo tempo{Seconds(1), {{Breath::in, 3}, {Breath::out, 3}}};
  inTurn(state, movements(),
         [&](const KeyPoses& movement) { benchmark::DoNotOptimize(loadOf(movement, tempo, BodyTable::winter)); });
}
BENCHMARK(weighMovement)->Unit(benchmark::kMicrosecond);

using Ends = std::pair<Settled, Settled>;
std::vector<Ends> ends() {
  return each<Ends>([](const KeyPoses& movement) { return Ends{settled(movement.start), settled(movement.end)}; });
}

void makePassage(benchmark::State& state) {
  inTurn(state, ends(), [](const Ends& of) { benchmark::DoNotOptimize(Passage(of.first, of.second)); });
}
BENCHMARK(makePassage)->Unit(benchmark::kMicrosecond);

void findPaths(benchmark::State& state) {
  std::vector<Passage> passages;
  for (const auto& [start, end] : ends())
    passages.emplace_back(start, end);
  inTurn(state, passages, [](const Passage& passage) { benchmark::DoNotOptimize(pathsOfMotion(passage)); });
}
BENCHMARK(findPaths)->Unit(benchmark::kMicrosecond);

void makePicture(benchmark::State& state) {
  inTurn(state, ends(), [](const Ends& of) { benchmark::DoNotOptimize(pictureOf(of.second)); });
}
BENCHMARK(makePicture)->Unit(benchmark::kMicrosecond);

// The body alone, as lists show it.
void paintFigureAt(benchmark::State& state) {
  const int size = static_cast<int>(state.range(0));
  const auto pictures = each<Picture>([](const KeyPoses& movement) { return pictureOf(*settledOnce(movement.end)); });
  QImage image(size, size, QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::white);
  QPainter painter(&image);
  const QRectF box(1, 1, size - 2, size - 2);
  FigureStyle style;
  style.regions = {Region::abdominals};
  inTurn(state, pictures,
         [&](const Picture& picture) { paintFigure(painter, box, picture, nullptr, picture.extent, style); });
}
BENCHMARK(paintFigureAt)->Arg(24)->Arg(32)->Arg(66)->Arg(300)->Unit(benchmark::kMicrosecond);

// With its ghost and its arrows, as the inspector shows it.
void paintMovementAt(benchmark::State& state) {
  const int size = static_cast<int>(state.range(0));
  const auto pictures = each<MovementPicture>([](const KeyPoses& movement) { return pictureOf(movement); });
  QImage image(size, size, QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::white);
  QPainter painter(&image);
  const QRectF box(1, 1, size - 2, size - 2);
  inTurn(state, pictures, [&](const MovementPicture& picture) { paintMovement(painter, box, picture, FigureStyle{}); });
}
BENCHMARK(paintMovementAt)->Arg(300)->Unit(benchmark::kMicrosecond);

} // namespace
} // namespace matwright::test
