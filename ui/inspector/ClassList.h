#pragma once

#include "ui/document/PlanDocument.h"

#include <QWidget>

class QLabel;

namespace matwright {

// Who comes to the class: names, conditions, what they wish for, and how many cautions of which level are theirs.
class ClassList : public QWidget {
  Q_OBJECT

public:
  explicit ClassList(const PlanDocument& document, QWidget* parent = nullptr);
  void refresh();

protected:
  void changeEvent(QEvent* event) override;

private:
  const PlanDocument& document_;
  QLabel* heading_;
  QLabel* people_;
};

// The same as text, a paragraph a person, in HTML.
QString classListHtml(const PlanDocument& document, const QColor& soft);

} // namespace matwright
