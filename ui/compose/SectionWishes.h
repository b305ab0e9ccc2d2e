#pragma once

#include "core/plan/ClassWishes.h"

#include <QWidget>

class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QToolButton;
class QVBoxLayout;

namespace matwright {

// The same sections, together as long as this: each takes its share in whole minutes, the longest what is left over.
// Those without a length share alike.
std::vector<WishedSection> fitted(std::vector<WishedSection> sections, Seconds length);

// The sections of a class with their minutes, and what of the class is left over.
class SectionWishes : public QWidget {
  Q_OBJECT

public:
  explicit SectionWishes(QWidget* parent = nullptr);

  const std::vector<WishedSection>& sections() const { return sections_; }
  void show(std::vector<WishedSection> sections, Seconds length); // emits nothing
  void setLength(Seconds length); // of the class: sections that fitted before are fitted again. Emits nothing
  void setFixed(bool fixed);      // a class has them already: names and number stay
  bool fit() const;               // without lengths, too
  QString summary() const;

Q_SIGNALS:
  void changed(); // by the user

private:
  struct Row {
    QWidget* row;
    QLineEdit* name;
    QSpinBox* minutes;
    QToolButton* remove;
  };

  bool haveLengths() const { return sections_.front().length > Seconds{}; }
  Row addRow(std::size_t at);
  void refresh();
  void take(std::vector<WishedSection> sections);

  std::vector<WishedSection> sections_{{"", {}}}, before_; // `before_`: as they were when they had lengths
  Seconds length_;
  bool fixed_ = false;
  QVBoxLayout* column_;
  std::vector<Row> rows_;
  QPushButton *add_, *fit_;
  QCheckBox* open_;
  QLabel* left_;
};

} // namespace matwright
