#pragma once

#include "core/evaluate/Evaluation.h"

#include <QString>
#include <QWidget>
#include <span>

class QLabel;
class QToolButton;

namespace matwright {

// One caution as it is read beside a step.
struct CautionLines {
  Level level{};
  QString who;      // "Rosa", "Everybody"
  QString headline; // who, where and which level
  QString about;    // what was found, and under which condition
  QString instead;  // what to do; may be empty
  QString whole;    // the whole reason
  friend bool operator==(const CautionLines&, const CautionLines&) = default;
};

CautionLines linesOf(const Caution& caution, const Knowledge& knowledge, const ClassPlan& plan,
                     const Evaluation& evaluation, std::span<const Person> roster);

// Shows a caution with its mark and word; a button opens the whole reason, to be read, selected and copied.
class CautionCard : public QWidget {
  Q_OBJECT

public:
  explicit CautionCard(const CautionLines& lines, QWidget* parent = nullptr);

  const CautionLines& lines() const { return lines_; }
  bool isOpen() const;
  void setOpen(bool open);

private:
  CautionLines lines_;
  QToolButton* more_;
  QLabel* whole_;
};

} // namespace matwright
