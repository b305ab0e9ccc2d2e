#pragma once

#include <QString>
#include <QWidget>
#include <set>
#include <vector>

class QToolButton;

namespace matwright {

class FlowLayout;

struct TickWord {
  QString key, name, about; // `about` may be empty
  friend bool operator==(const TickWord&, const TickWord&) = default;
};

// Words to tick, side by side as buttons that stay down.
class TickFlow : public QWidget {
  Q_OBJECT

public:
  explicit TickFlow(const QString& name, std::vector<TickWord> words, QWidget* parent = nullptr);

  const std::set<QString>& ticked() const { return ticked_; }
  // Emits nothing. What is not among the words gets a button of its own, which stays.
  void setTicked(const std::set<QString>& ticked, const std::vector<TickWord>& others = {});
  QString summary() const; // the names of what is ticked

Q_SIGNALS:
  void changed(); // by the user

private:
  void add(const TickWord& word);

  FlowLayout* flow_;
  std::vector<TickWord> words_;
  std::vector<QToolButton*> buttons_; // by word
  std::set<QString> ticked_;
};

} // namespace matwright
