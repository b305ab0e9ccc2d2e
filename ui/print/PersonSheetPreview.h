#pragma once

#include "ui/document/PlanDocument.h"
#include "ui/print/TextPreview.h"

#include <QTimer>

namespace matwright {

// One person's sheet for her clinician, following every change of the class, the people and the knowledge. It closes
// when she is no longer on file.
class PersonSheetPreview : public TextPreview {
  Q_OBJECT

public:
  PersonSheetPreview(PlanDocument& document, Settings& settings, QWidget* parent = nullptr);

  void showPerson(const PersonId& person);

private:
  void refresh();

  PlanDocument& document_;
  Settings& settings_;
  PersonId person_;
  QTimer refreshTimer_;
};

} // namespace matwright
