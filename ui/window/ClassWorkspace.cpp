#include "ui/window/ClassWorkspace.h"

#include "ui/catalogue/CataloguePanel.h"
#include "ui/cautions/CautionList.h"
#include "ui/inspector/InspectorPanel.h"
#include "ui/outline/OutlineView.h"
#include "ui/timeline/TerrainView.h"
#include "ui/totals/TotalsLine.h"

#include <QDataStream>
#include <QIODevice>
#include <QVBoxLayout>

namespace matwright {

ClassWorkspace::ClassWorkspace(PlanDocument& document, StepSelection& selection, ClassCommands& commands,
                               QWidget* parent)
    : QWidget(parent), catalogue_(new CataloguePanel(document, selection, commands)), totals_(new TotalsLine(document)),
      terrain_(new TerrainView(document, selection, commands)),
      outline_(new OutlineView(document, selection, commands)), cautions_(new CautionList(document, selection)),
      inspector_(new InspectorPanel(document, selection, commands)), across_(new QSplitter(Qt::Horizontal)),
      down_(new QSplitter(Qt::Vertical)), below_(new QSplitter(Qt::Horizontal)) {
  below_->addWidget(outline_);
  below_->addWidget(cautions_);
  below_->setStretchFactor(0, 3);
  below_->setStretchFactor(1, 2);
  down_->addWidget(terrain_);
  down_->addWidget(below_);
  down_->setStretchFactor(0, 3);
  down_->setStretchFactor(1, 2);
  auto* centre = new QWidget;
  auto* layout = new QVBoxLayout(centre);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(totals_);
  layout->addWidget(down_, 1);
  across_->addWidget(catalogue_);
  across_->addWidget(centre);
  across_->addWidget(inspector_);
  across_->setStretchFactor(1, 1);
  for (QSplitter* splitter : {across_, down_, below_})
    splitter->setChildrenCollapsible(false);
  across_->setSizes({270, 760, 300});
  down_->setSizes({460, 240});
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->addWidget(across_);

  connect(terrain_, &TerrainView::previewChanged, totals_, &TotalsLine::showPreview);
  connect(terrain_, &TerrainView::stepActivated, inspector_, qOverload<>(&QWidget::setFocus));
  connect(cautions_, &CautionList::stepWanted, terrain_, &TerrainView::showStep);
}

QByteArray ClassWorkspace::layoutState() const {
  QByteArray state;
  QDataStream stream(&state, QIODevice::WriteOnly);
  stream << across_->saveState() << down_->saveState() << below_->saveState();
  return state;
}

void ClassWorkspace::restoreLayout(const QByteArray& state) {
  QDataStream stream(state);
  for (QSplitter* splitter : {across_, down_, below_}) {
    QByteArray part;
    stream >> part;
    if (!part.isEmpty())
      splitter->restoreState(part);
  }
}

} // namespace matwright
