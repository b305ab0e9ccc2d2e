#include "ui/controls/Fields.h"

#include <QEvent>
#include <QSignalBlocker>
#include <QTextCursor>
#include <QToolButton>
#include <QValidator>
#include <algorithm>

namespace matwright {
namespace {

class ByteLimit : public QValidator {
public:
  ByteLimit(std::size_t most, QObject* parent) : QValidator(parent), most_(most) {}
  State validate(QString& input, int&) const override {
    return static_cast<std::size_t>(input.toUtf8().size()) <= most_ ? Acceptable : Invalid;
  }

private:
  std::size_t most_;
};

class WheelGate : public QObject {
public:
  using QObject::QObject;
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() != QEvent::Wheel || static_cast<QWidget*>(watched)->hasFocus())
      return false;
    event->ignore();
    return true;
  }
};

} // namespace

QLineEdit* lineField(const QString& name, std::size_t mostBytes, QWidget* parent) {
  auto* field = new QLineEdit(parent);
  field->setAccessibleName(name);
  field->setValidator(new ByteLimit(mostBytes, field));
  return field;
}

QLineEdit* searchField(const QString& name, const QString& hint, QWidget* parent) {
  auto* field = new QLineEdit(parent);
  field->setAccessibleName(name);
  field->setPlaceholderText(hint);
  field->setClearButtonEnabled(true);
  for (QToolButton* button : field->findChildren<QToolButton*>())
    button->setAccessibleName(QLineEdit::tr("Clear: %1").arg(name));
  return field;
}

void showText(QLineEdit* field, const QString& text) {
  if (field->text() == text)
    return;
  const QSignalBlocker quiet(field);
  field->setText(text);
}

void keepWheelForFocus(QWidget* field) {
  field->setFocusPolicy(Qt::StrongFocus);
  field->installEventFilter(new WheelGate(field));
}

NoteField::NoteField(const QString& name, std::size_t mostBytes, int lines, QWidget* parent)
    : QPlainTextEdit(parent), mostBytes_(mostBytes), lines_(lines) {
  setAccessibleName(name);
  setTabChangesFocus(true);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  connect(this, &QPlainTextEdit::textChanged, this, &NoteField::takeChange);
}

void NoteField::showNote(const QString& note) {
  last_ = note;
  if (toPlainText() == note)
    return;
  const QSignalBlocker quiet(this);
  setPlainText(note);
}

QSize NoteField::sizeHint() const {
  const int frame = 2 * frameWidth() + static_cast<int>(2 * document()->documentMargin()) + 10;
  return {200, fontMetrics().lineSpacing() * lines_ + frame};
}

void NoteField::takeChange() {
  const QString note = toPlainText();
  if (note == last_)
    return;
  if (static_cast<std::size_t>(note.toUtf8().size()) > mostBytes_) {
    const QSignalBlocker quiet(this);
    const int at = textCursor().position() - static_cast<int>(note.size() - last_.size());
    setPlainText(last_);
    QTextCursor cursor = textCursor();
    cursor.setPosition(std::clamp(at, 0, static_cast<int>(last_.size())));
    setTextCursor(cursor);
    return;
  }
  last_ = note;
  Q_EMIT edited(note);
}

} // namespace matwright
