#pragma once

#include "ui/settings/Settings.h"

#include <QSizeF>
#include <QWidget>
#include <functional>

class QComboBox;
class QHBoxLayout;
class QPainter;
class QRectF;

namespace matwright {

// The size wanted for a window, or what of it the screen has room for.
QSize onScreen(QSize wanted, const QWidget& window);

// What is done with something laid out on paper: choosing the paper, printing, saving as PDF, closing.
class PaperBar : public QWidget {
  Q_OBJECT

public:
  explicit PaperBar(Settings& settings, QWidget* parent = nullptr);

  void addChoice(QWidget* widget); // after the paper
  QSizeF paper() const;            // millimetres
  // The name of the print job, and where asking for a file begins.
  void setDocumentName(const QString& name) { name_ = name; }

  // What is printed: asked for when a printer was chosen. `sheet`: the whole sheet in the painter's units.
  struct Job {
    int pages = 0;
    std::function<void(QPainter& painter, const QRectF& sheet, int page)> paint;
  };
  std::function<Job()> job;
  std::function<QByteArray()> pdf; // asked for when a file was chosen

  bool savePdf(const QString& file); // false, and failed(), when it cannot be written

Q_SIGNALS:
  void paperChanged();
  void failed(const QString& words);
  void closeWanted();

private:
  void askPdf();
  void askPrinter();

  Settings& settings_;
  QComboBox* paper_;
  QHBoxLayout* choices_;
  QString name_;
};

} // namespace matwright
