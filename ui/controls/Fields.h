// Fields for texts of a document, which are limited in bytes of UTF-8 rather than in letters.
#pragma once

#include <QLineEdit>
#include <QPlainTextEdit>

namespace matwright {

// A line of text that cannot grow past `mostBytes`.
QLineEdit* lineField(const QString& name, std::size_t mostBytes, QWidget* parent = nullptr);

// A field to search in, with a button that empties it.
QLineEdit* searchField(const QString& name, const QString& hint, QWidget* parent = nullptr);

// Sets the text unless it is there already: the cursor of who is typing stays where it is.
void showText(QLineEdit* field, const QString& text);

// The wheel turns the panel that a field lies in, and changes the field only while it has the focus.
void keepWheelForFocus(QWidget* field);

// A few lines of text. Tab goes on to the next field.
class NoteField : public QPlainTextEdit {
  Q_OBJECT

public:
  NoteField(const QString& name, std::size_t mostBytes, int lines, QWidget* parent = nullptr);

  void showNote(const QString& note); // emits nothing
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return {80, sizeHint().height()}; }

Q_SIGNALS:
  void edited(const QString& note); // by the user

private:
  void takeChange();

  std::size_t mostBytes_;
  int lines_;
  QString last_;
};

} // namespace matwright
