#include "ui/catalogue/MovementAbout.h"

#include "ui/catalogue/CatalogueModel.h"
#include "ui/controls/FactGrid.h"
#include "ui/controls/Labels.h"
#include "ui/controls/SaveFigure.h"
#include "ui/figure/FigureView.h"
#include "ui/text/MovementText.h"
#include "ui/text/VocabularyText.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QScrollArea>

namespace matwright {
MovementAbout::MovementAbout(const Knowledge& knowledge, const Movement& movement, QWidget* parent) : QDialog(parent) {
  setAttribute(Qt::WA_DeleteOnClose);
  const QString name = QString::fromStdString(movement.name);
  setWindowTitle(name);
  auto* inside = new QWidget;
  auto* column = new QVBoxLayout(inside);
  auto* figure = new FigureView;
  figure->setFixedHeight(190);
  figure->setRegions({movement.regions.front()});
  figure->showMovement(movement.poses, movement.tempo, name);
  offerSaving(*figure);
  column->addWidget(titleLabel(name));
  column->addWidget(figure);
  column->addWidget(plainLabel(QString::fromStdString(movement.about)));
  column->addSpacing(6);

  auto* facts = new FactGrid(12);
  column->addLayout(facts);
  const QString start = positionName(knowledge, movement.start);
  const QString end = positionName(knowledge, movement.end);
  facts->add(tr("Position"), start == end ? start : tr("%1, ends %2").arg(start, end));
  facts->add(tr("Kind"), withCapital(text(movement.repertoire)));
  facts->add(tr("Dose"), factsText(movement));
  facts->add(tr("Tempo"), tempoText(movement.tempo));
  facts->add(tr("Effort"), tr("%1 of %2").arg(movement.effort.value()).arg(Effort::kHighest));
  facts->add(tr("Regions"), listText(movement.regions));
  facts->add(tr("Spine"), listText(movement.spine));
  facts->add(tr("Asks of the body"),
             movement.features.empty() ? tr("nothing beyond its position") : featureList(movement.features));
  facts->add(tr("Teach before"), listText(knowledge, movement.prerequisites));
  facts->add(tr("Set-up"), QString::fromStdString(movement.setUp));
  facts->add(tr("Cue"), QString::fromStdString(movement.action));
  if (!movement.options.empty()) {
    column->addSpacing(6);
    column->addWidget(headingLabel(tr("Options")));
  }
  for (const Option& option : movement.options)
    column->addWidget(plainLabel(optionText(option)));
  column->addStretch(1);

  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setWidget(inside);
  auto* outer = new QVBoxLayout(this);
  outer->addWidget(scroll, 1);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
  outer->addWidget(buttons);
  resize(460, 620);
}

} // namespace matwright
