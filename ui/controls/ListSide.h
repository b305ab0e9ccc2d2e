#pragma once

#include <QWidget>

class QAbstractItemView;
class QLabel;
class QLayout;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace matwright {

// The side of a workspace where its things are listed: a title, a field to search in, the list, what is said of the
// last thing done, and the buttons for what can be done. The arrow down leads from the field to the list.
class ListSide : public QWidget {
  Q_OBJECT

public:
  // `search` names the field; `none` is said where nothing is found.
  ListSide(const QString& title, const QString& search, const QString& none, QAbstractItemView* list,
           QWidget* parent = nullptr);

  QLineEdit* search() { return search_; }
  void addBelowSearch(QWidget* widget);
  void addButton(QPushButton* button);
  void showNone(bool none);
  void say(const QString& words, bool wrong = false);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  QLineEdit* search_;
  QAbstractItemView* list_;
  QLabel *none_, *said_;
  QVBoxLayout* column_;
  QLayout* buttons_;
};

} // namespace matwright
