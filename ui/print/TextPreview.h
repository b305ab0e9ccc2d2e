#pragma once

#include "ui/paper/TextPages.h"
#include "ui/settings/Settings.h"

#include <QDialog>

class QLabel;
class QTextBrowser;

namespace matwright {

class PaperBar;

// A text to be read, printed and saved as PDF. What is read follows the theme, what is printed is black on white.
class TextPreview : public QDialog {
  Q_OBJECT

public:
  explicit TextPreview(Settings& settings, QWidget* parent = nullptr);

  const TextSheet& sheet() const { return sheet_; }
  // Shows another text, or the same one as it is now: what is being read stays in sight.
  void setSheet(const TextSheet& sheet);
  bool savePdf(const QString& file);

protected:
  void changeEvent(QEvent* event) override;

private:
  void refill();

  TextSheet sheet_;
  PaperBar* bar_;
  QLabel* note_;
  QTextBrowser* browser_;
};

} // namespace matwright
