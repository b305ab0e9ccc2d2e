#include "ui/catalogue/CataloguePreview.h"

#include "ui/controls/Labels.h"
#include "ui/controls/SaveFigure.h"
#include "ui/figure/FigureView.h"
#include "ui/text/VocabularyText.h"

#include <QEnterEvent>
#include <QVBoxLayout>

namespace matwright {

CataloguePreview::CataloguePreview(QWidget* parent) : QWidget(parent), name_(softLabel({})), figure_(new FigureView) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 2, 0, 0);
  column->setSpacing(2);
  column->addWidget(hairline());
  column->addWidget(name_);
  column->addWidget(figure_);
  figure_->setFixedHeight(fontMetrics().height() * 6);
  figure_->setBreathWords({text(Breath::in), text(Breath::out), text(Breath::free), text(Breath::hold)});
  offerSaving(*figure_);
}

void CataloguePreview::show(const Movement* movement) {
  if (!movement) {
    shown_ = {};
    name_->clear();
    figure_->showNothing();
    return;
  }
  if (movement->id == shown_ && movement->poses == poses_ && movement->tempo == tempo_)
    return;
  shown_ = movement->id;
  poses_ = movement->poses;
  tempo_ = movement->tempo;
  const QString name = QString::fromStdString(movement->name);
  name_->setText(name);
  figure_->setRegions({movement->regions.front()});
  figure_->showMovement(poses_, tempo_, name);
}

void CataloguePreview::setWatched(bool watched) {
  watched_ = watched;
  updateMotion();
}

void CataloguePreview::enterEvent(QEnterEvent* event) {
  QWidget::enterEvent(event);
  pointed_ = true;
  updateMotion();
}

void CataloguePreview::leaveEvent(QEvent* event) {
  QWidget::leaveEvent(event);
  pointed_ = false;
  updateMotion();
}

void CataloguePreview::updateMotion() {
  const bool moves = watched_ || pointed_;
  if (moves == moves_)
    return;
  moves_ = moves;
  if (moves)
    figure_->start();
  else
    figure_->stop();
}

void CataloguePreview::setReducedMotion(bool reduced) { figure_->setReducedMotion(reduced); }

} // namespace matwright
