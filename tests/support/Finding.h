// What somebody sees of a widget: its controls by the names that are read out, its buttons and words by what they say.
// Whatever has just been made is shown first. What is asked for must be there: else the test fails and ends.
#pragma once

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <cstdlib>
#include <gtest/gtest.h>

namespace matwright::testing {

template <class Widget, class Fits> Widget& visibleIn(const QWidget& root, const QString& words, Fits fits) {
  QApplication::processEvents();
  for (Widget* widget : root.findChildren<Widget*>())
    if (widget->isVisibleTo(&root) && fits(*widget))
      return *widget;
  ADD_FAILURE() << "nothing is called " << words.toStdString();
  std::abort();
}

template <class Widget> Widget& namedIn(const QWidget& root, const QString& name) {
  return visibleIn<Widget>(root, name, [&](const Widget& widget) { return widget.accessibleName() == name; });
}

inline QPushButton& buttonIn(const QWidget& root, const QString& words) {
  return visibleIn<QPushButton>(root, words, [&](const QPushButton& button) { return button.text() == words; });
}

inline bool saysIn(const QWidget& root, const QString& words) {
  QApplication::processEvents();
  for (const QLabel* label : root.findChildren<QLabel*>())
    if (label->isVisibleTo(&root) && label->text().contains(words))
      return true;
  return false;
}

} // namespace matwright::testing
