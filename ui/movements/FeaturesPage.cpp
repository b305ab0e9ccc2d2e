#include "ui/movements/FeaturesPage.h"

#include "ui/controls/FeatureList.h"
#include "ui/controls/Labels.h"
#include "ui/text/VocabularyText.h"

#include <QVBoxLayout>

namespace matwright {

FeaturesPage::FeaturesPage(QWidget* parent) : MovementPage(parent), list_(new FeatureList) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(16, 12, 16, 16);
  column->setSpacing(8);
  column->addWidget(plainLabel(
      tr("Tick all that is true of the movement done as written. Cautions are found by these alone: what is not ticked "
         "here is not looked for, and a missing caution says nothing.")));
  QLabel* note = faultLabel();
  column->addWidget(note);
  column->addWidget(list_);
  column->addStretch(1);
  mark(MovementField::features, list_, note);
  connect(list_, &FeatureList::edited, this, [this](FeatureSet ticked, Feature feature) {
    change([&](Movement& movement) { movement.features = ticked; },
           ticked.contains(feature) ? tr("Add a feature") : tr("Take a feature away"));
  });
}

void FeaturesPage::refresh() {
  std::map<Feature, QString> locked;
  for (const PositionId& id : {movement().start, movement().end})
    if (const Position* position = knowledge().transitions.find(id))
      position->features.forEach([&](Feature feature) {
        locked.emplace(feature, tr("from the position \"%1\"").arg(QString::fromStdString(position->name)));
      });
  list_->show(movement().features, locked);
}

} // namespace matwright
