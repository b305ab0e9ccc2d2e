#pragma once

#include <QStringList>
#include <QWidget>
#include <utility>
#include <vector>

class QLabel;
class QLineEdit;
class QStringListModel;
class QToolButton;
class QVBoxLayout;

namespace matwright {

struct NamedKey {
  QString key, name;
  friend bool operator==(const NamedKey&, const NamedKey&) = default;
};

// A list whose order counts, out of a stock of names: one line each with buttons to move it up and to take it away, and
// a field below that finds what can be added.
class OrderedList : public QWidget {
  Q_OBJECT

public:
  // `name` is what the entries are ("regions"), `add` stands in the field that finds them.
  OrderedList(const QString& name, const QString& add, QWidget* parent = nullptr);

  void setStock(const std::vector<NamedKey>& stock);
  void setFirstIsMain(bool main);     // the first one is said to be the main one
  void setOrdered(bool ordered);      // whether entries can be moved; they can unless said
  void show(const QStringList& keys); // emits nothing; a key that is not in the stock is shown as it is
  const QStringList& keys() const { return keys_; }

Q_SIGNALS:
  void edited(const QStringList& keys);

private:
  void refresh();
  void addTyped(const QString& name);
  QString nameOf(const QString& key) const;

  QString name_;
  std::vector<NamedKey> stock_;
  QStringList keys_;
  bool main_ = false, ordered_ = true;
  QVBoxLayout* rows_;
  QLineEdit* find_;
  QStringListModel* found_;
  std::vector<QWidget*> shown_;
};

} // namespace matwright
