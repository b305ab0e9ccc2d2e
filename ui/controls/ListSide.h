#pragma once

#include <QWidget>
#include <utility>

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

// Fills a workspace with a list at the left and what is chosen in it at the right, which share `sizes` at first and
// what is left over by `stretch`. Gives back the column, for what stands below.
QVBoxLayout* addListAndStage(QWidget& workspace, QWidget* list, QWidget* stage, std::pair<int, int> sizes,
                             std::pair<int, int> stretch = {0, 1});

} // namespace matwright
