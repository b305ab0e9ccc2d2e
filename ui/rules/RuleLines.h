#pragma once

#include "ui/controls/RowText.h"
#include "ui/rules/RuleRows.h"

#include <QWidget>

namespace matwright {

// What a rule says, in short, to be read among many: painted, since many labels that wrap take long to lay out.
class RuleLines : public QWidget {
  Q_OBJECT

public:
  RuleLines(const RuleRow& row, const QString& why, QWidget* parent = nullptr);

  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }

protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  std::vector<RowText> lines() const;
  int textLeft() const;

  Level level_;
  QString title_, body_, why_;
  mutable int width_ = -1, height_ = 0; // as computed last
};

} // namespace matwright
