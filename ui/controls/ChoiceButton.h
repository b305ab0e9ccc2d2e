#pragma once

#include "core/base/EnumSet.h"
#include "ui/text/VocabularyText.h"

#include <QStringList>
#include <QToolButton>
#include <set>

namespace matwright {

class CheckMenu;

// A small button that opens a list of words, of which several may be ticked, and says what is: "Level", "Adapt",
// "Level: 2". None ticked means any.
class ChoiceButton : public QToolButton {
  Q_OBJECT

public:
  ChoiceButton(const QString& title, const QStringList& words, QWidget* parent = nullptr);

  const std::set<int>& chosen() const { return chosen_; } // places in the list of words
  void setChosen(const std::set<int>& chosen);            // emits nothing

  // The same for words that name the values of an enumeration.
  template <class Enum> EnumSet<Enum> values() const {
    EnumSet<Enum> all;
    for (const int place : chosen_)
      all.insert(static_cast<Enum>(place));
    return all;
  }
  template <class Enum> void setValues(EnumSet<Enum> values) {
    std::set<int> places;
    values.forEach([&](Enum value) { places.insert(static_cast<int>(value)); });
    setChosen(places);
  }

Q_SIGNALS:
  void changed(); // by the user

private:
  void refresh();

  QString title_;
  QStringList words_;
  CheckMenu* menu_;
  std::set<int> chosen_;
};

// The words of all values of an enumeration, each with a capital.
template <class Enum, class Text> QStringList wordsOf(Text text) {
  QStringList words;
  for (std::size_t i = 0; i < kWordCount<Enum>; ++i)
    words << withCapital(text(static_cast<Enum>(i)));
  return words;
}

// Less room around the words of a button in a line of filters.
void keepCompact(QToolButton* button);

} // namespace matwright
