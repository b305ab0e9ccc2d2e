// Saves figures as drawings that other programs can use at any size.
#pragma once

#include "core/base/Result.h"
#include "core/movement/Movement.h"

#include <QString>

class QAction;
class QWidget;

namespace matwright {

class FigureView;

struct FigureToSave {
  KeyPoses poses; // both ends are drawn, the start faintly; a pose alone when they are one
  EnumSet<Region> regions;
  QString name; // such as the movement with its option
};

Result<void> saveFigure(const FigureToSave& figure, const QString& file);

// Asks for a file and saves there; says what went wrong.
void askToSaveFigure(QWidget* parent, const FigureToSave& figure);

// Puts that into the menu of a figure, which can then be reached by keyboard. Returns the entry.
QAction* offerSaving(FigureView& figure);

QString saveFigureWords(); // of the entry

} // namespace matwright
