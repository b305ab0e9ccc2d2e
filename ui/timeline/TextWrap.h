#pragma once

#include <QString>
#include <QStringList>
#include <functional>
#include <optional>

namespace matwright {

// How wide a line of text is, and how high lines are, in one font. Kept apart from fonts so that everything that is
// laid out can be tested without a window.
struct TextMeasure {
  std::function<qreal(const QString&)> width;
  qreal line = 14; // from one line to the next
};

// Lines of whole words.
struct Wrap {
  QStringList lines;
  qreal width = 0; // of the widest line
};

// `text` on as few lines as `width` allows; nothing when a word alone is wider or more than `most` lines are needed.
// Words are parted at spaces (not at no-break spaces), after hyphens and after slashes, and never within.
std::optional<Wrap> wrapWithin(const QString& text, qreal width, int most, const TextMeasure& measure);

// The narrowest wrap on exactly `lines` lines; nothing when there are fewer words than lines.
std::optional<Wrap> wrapOnto(const QString& text, int lines, const TextMeasure& measure);

} // namespace matwright
