// What can be done to the terrain with a pointer, from press to release: each a state of its own.
#pragma once

#include "ui/document/ClassCommands.h"
#include "ui/timeline/EditEffect.h"
#include "ui/timeline/TerrainGeometry.h"

#include <functional>

namespace matwright {

// The class as it would be, were the gesture to end now.
struct Ghost {
  Snapshot snapshot;
  std::vector<StepId> steps;  // those that the gesture is about
  QString chip;               // what would change, in words
  std::optional<Level> level; // of the strongest new caution
};

// What gestures act on. The view owns it all.
struct TerrainStage {
  PlanDocument& document;
  StepSelection& selection;
  ClassCommands& commands;
  std::function<const TerrainGeometry&()> settled; // the geometry of the class as it is, not as it would be
  std::function<const TerrainScene&()> scene;      // likewise
  std::function<void(std::optional<Ghost>)> showGhost;
  std::function<void(const QRectF&)> showRubberBand;
};

class TerrainGesture {
public:
  explicit TerrainGesture(TerrainStage& stage) : stage_(stage) {}
  virtual ~TerrainGesture() = default;
  TerrainGesture(const TerrainGesture&) = delete;
  TerrainGesture& operator=(const TerrainGesture&) = delete;

  // The pointer is at `at`, in the coordinates of the geometry.
  virtual void moveTo(QPointF at, Qt::KeyboardModifiers modifiers) = 0;
  virtual void finish() = 0; // does it: one entry of the undo list, or none when nothing changes
  virtual void cancel() = 0; // as if it had never begun
  virtual Qt::CursorShape cursor() const { return Qt::ArrowCursor; }

protected:
  // Shows what the edit would do, or nothing when it would be refused. Returns whether it is shown.
  bool showPreview(const Edit& edit, std::vector<StepId> steps, const QString& about = {});

  TerrainStage& stage_;
};

// A movement out of the catalogue.
class InsertGesture : public TerrainGesture {
public:
  InsertGesture(TerrainStage& stage, MovementId movement);
  void moveTo(QPointF at, Qt::KeyboardModifiers modifiers) override;
  void finish() override;
  void cancel() override;

private:
  MovementId movement_;
  std::optional<Place> place_;
  bool possible_ = false;
};

// Steps of the class, to another place; with Ctrl copies of them.
class MoveGesture : public TerrainGesture {
public:
  MoveGesture(TerrainStage& stage, std::vector<StepId> steps);
  void moveTo(QPointF at, Qt::KeyboardModifiers modifiers) override;
  void finish() override;
  void cancel() override;
  Qt::CursorShape cursor() const override { return copies_ ? Qt::DragCopyCursor : Qt::ClosedHandCursor; }

private:
  std::vector<Step> copiesFrom(StepId firstId) const;

  std::vector<StepId> steps_;
  std::optional<Place> place_;
  bool copies_ = false;
  bool possible_ = false;
};

// The right edge of a block: its dose, in whole repetitions and breaths, or in steps of five seconds.
class StretchGesture : public TerrainGesture {
public:
  StretchGesture(TerrainStage& stage, std::size_t step, QPointF pressed);
  void moveTo(QPointF at, Qt::KeyboardModifiers modifiers) override;
  void finish() override;
  void cancel() override;
  Qt::CursorShape cursor() const override { return Qt::SizeHorCursor; }

private:
  StepId step_;
  qreal grip_ = 0; // from the edge to where it was pressed
  std::optional<Dose> dose_;
};

// A frame drawn on free ground selects the blocks it touches; with Ctrl or Shift, besides those selected already.
class RubberBandGesture : public TerrainGesture {
public:
  RubberBandGesture(TerrainStage& stage, QPointF pressed);
  void moveTo(QPointF at, Qt::KeyboardModifiers modifiers) override;
  void finish() override;
  void cancel() override;

private:
  QPointF pressed_;
  std::vector<StepId> before_;
  std::optional<StepId> currentBefore_;
};

} // namespace matwright
