#pragma once

#include "ui/movements/MovementPage.h"

namespace matwright {

class FeatureList;

// What a movement asks of the body, as far as cautions can ask for it. What its positions bring is shown, and locked.
class FeaturesPage : public MovementPage {
  Q_OBJECT

public:
  explicit FeaturesPage(QWidget* parent = nullptr);

protected:
  void refresh() override;

private:
  FeatureList* list_;
};

} // namespace matwright
