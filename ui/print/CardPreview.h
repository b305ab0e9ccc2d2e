#pragma once

#include "core/handout/Card.h"
#include "ui/card/CardLayout.h"
#include "ui/document/PlanDocument.h"
#include "ui/settings/Settings.h"

#include <QDialog>
#include <QTimer>

class QCheckBox;
class QComboBox;
class QLabel;

namespace matwright {

class PaperBar;

// Shows laid-out pages one under the other, as wide as there is room.
class CardSheet : public QWidget {
  Q_OBJECT

public:
  explicit CardSheet(QWidget* parent = nullptr);
  void setCard(const Card& card, const CardLayout& layout);
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  Card card_;
  CardLayout layout_;
};

// The card of the open class as it will be on paper, following every change; prints it and saves it as PDF.
class CardPreview : public QDialog {
  Q_OBJECT

public:
  CardPreview(PlanDocument& document, Settings& settings, QWidget* parent = nullptr);

  // Writes the PDF without asking; false, and says so in the window, when it cannot be written.
  bool savePdf(const QString& file);

protected:
  void showEvent(QShowEvent* event) override;

private:
  Card card() const;
  int pages() const;
  void refresh();

  PlanDocument& document_;
  Settings& settings_;
  CardSheet* sheet_;
  PaperBar* bar_;
  QComboBox* pages_;
  QCheckBox* names_;
  QLabel* note_;
  QTimer refreshTimer_;
};

} // namespace matwright
