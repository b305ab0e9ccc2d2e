#pragma once

#include <QWidget>

class QLabel;
class QToolButton;

namespace matwright {

// A part of a long form that folds away under its title; folded, it says beside the title what is in it.
class FormPart : public QWidget {
  Q_OBJECT

public:
  FormPart(const QString& title, QWidget* body, bool open, QWidget* parent = nullptr);

  void setSummary(const QString& summary); // "2 people"
  bool isOpen() const;
  void setOpen(bool open);

private:
  void show();

  QString title_;
  QToolButton* button_;
  QLabel* summary_;
  QWidget* body_;
};

} // namespace matwright
