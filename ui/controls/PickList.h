#pragma once

#include <QWidget>
#include <vector>

class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace matwright {

struct PickEntry {
  QString key, name, about; // `about` is said of the one that is looked at
  QString more;             // words by which it is found, too
};

// Picks one of many: closed it is one button, open a field to search in and the list.
class PickList : public QWidget {
  Q_OBJECT

public:
  struct Words {
    QString open;       // on the button
    QString find, hint; // of the field to search in, and within it
    QString list;       // what the entries are
    QString none;       // said when nothing is found
  };

  explicit PickList(Words words, QWidget* parent = nullptr);

  void setEntries(std::vector<PickEntry> entries);
  void setOpen(bool open);

Q_SIGNALS:
  void picked(const QString& key);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void search(const QString& words);
  void pick();
  void close();

  Words words_;
  std::vector<PickEntry> entries_;
  QPushButton* button_;
  QWidget* panel_;
  QLineEdit* search_;
  QListWidget* list_;
  QLabel* about_;
};

} // namespace matwright
