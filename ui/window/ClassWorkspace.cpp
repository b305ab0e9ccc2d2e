#include "ui/window/ClassWorkspace.h"

#include "ui/catalogue/CataloguePanel.h"
#include "ui/cautions/CautionList.h"
#include "ui/group/GroupView.h"
#include "ui/inspector/InspectorPanel.h"
#include "ui/outline/OutlineView.h"
#include "ui/timeline/TerrainView.h"
#include "ui/totals/TotalsLine.h"

#include <QDataStream>
#include <QIODevice>
#include <QToolButton>
#include <QVBoxLayout>

namespace matwright {

ClassWorkspace::ClassWorkspace(PlanDocument& document, StepSelection& selection, ClassCommands& commands,
                               QWidget* parent)
    : QWidget(parent), catalogue_(new CataloguePanel(document, selection, commands)), totals_(new TotalsLine(document)),
      terrain_(new TerrainView(document, selection, commands)), group_(new GroupView(document, selection)),
      outline_(new OutlineView(document, selection, commands)), cautions_(new CautionList(document, selection)),
      inspector_(new InspectorPanel(document, selection, commands)), above_(new QStackedWidget),
      views_(new QActionGroup(this)), across_(new QSplitter(Qt::Horizontal)), down_(new QSplitter(Qt::Vertical)),
      below_(new QSplitter(Qt::Horizontal)) {
  below_->addWidget(outline_);
  below_->addWidget(cautions_);
  below_->setStretchFactor(0, 3);
  below_->setStretchFactor(1, 2);
  above_->addWidget(terrain_);
  above_->addWidget(group_);
  down_->addWidget(above_);
  down_->addWidget(below_);
  down_->setStretchFactor(0, 3);
  down_->setStretchFactor(1, 2);
  auto* centre = new QWidget;
  auto* layout = new QVBoxLayout(centre);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  addSwitch();
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
  connect(inspector_, &InspectorPanel::aboutLoadWanted, this, &ClassWorkspace::aboutLoadWanted);
  connect(inspector_, &InspectorPanel::composeWanted, this, &ClassWorkspace::composeWanted);
  connect(cautions_, &CautionList::stepWanted, terrain_, &TerrainView::showStep);
  connect(group_, &GroupView::cautionWanted, cautions_, &CautionList::showCaution);
  connect(group_, &GroupView::insteadWanted, cautions_, &CautionList::offerSwaps);
}

// The switch between the two pictures of the class, beside its figures.
void ClassWorkspace::addSwitch() {
  struct Picture {
    QString name, about;
    QKeySequence key;
    QWidget* widget;
  };
  const Picture entries[] = {
      {tr("Timeline"), tr("The class in time (Ctrl+T)"), QKeySequence(Qt::CTRL | Qt::Key_T), terrain_},
      {tr("Group"), tr("Its steps against its people (Ctrl+G)"), QKeySequence(Qt::CTRL | Qt::Key_G), group_}};
  for (const Picture& view : entries) {
    auto* action = new QAction(view.name, views_);
    action->setCheckable(true);
    action->setChecked(view.widget == terrain_);
    action->setShortcut(view.key);
    action->setToolTip(view.about);
    connect(action, &QAction::triggered, this, [this, shown = view.widget] {
      above_->setCurrentWidget(shown);
      shown->setFocus();
    });
    auto* button = new QToolButton;
    button->setDefaultAction(action);
    button->setToolButtonStyle(Qt::ToolButtonTextOnly);
    totals_->addBeside(button);
  }
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
