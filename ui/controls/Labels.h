// Labels in the few voices that panels speak in. All wrap, so that no text is cut in a narrow dock.
#pragma once

#include <QLabel>
#include <functional>

namespace matwright {

QLabel* plainLabel(const QString& text, QWidget* parent = nullptr);
QLabel* softLabel(const QString& text, QWidget* parent = nullptr);    // secondary text
QLabel* headingLabel(const QString& text, QWidget* parent = nullptr); // of a part of a panel
QLabel* titleLabel(const QString& text, QWidget* parent = nullptr);   // of a whole panel
// Heavy text, `factor` times as large as the application's, also when that changes. Does not wrap.
QLabel* largeLabel(const QString& text, double factor, QWidget* parent = nullptr);

// The font of headings for a widget in `base`.
QFont headingFont(const QFont& base);

// Names a control by a label beside it: its accessible name when it has none, and the buddy that takes the label's
// mnemonic.
QLabel* fieldLabel(const QString& text, QWidget* field, QWidget* parent = nullptr);
// The same in one line, level with the text of a field to its right.
QLabel* besideLabel(const QString& text, QWidget* field, QWidget* parent = nullptr);

// A line between parts.
QWidget* hairline(QWidget* parent = nullptr);

// Sets the text, and hides the label when there is none.
void showText(QLabel* label, const QString& text);

// Calls `then` whenever `widget` or a widget inside it loses the focus to something outside, as long as `owner` lives,
// and not while it is being destroyed.
void whenFocusLeaves(QWidget* widget, QWidget* owner, std::function<void()> then);

} // namespace matwright
