#pragma once

#include "core/base/Date.h"

#include <QDate>
#include <QWidget>
#include <optional>

class QDateEdit;
class QPushButton;
class QToolButton;

namespace matwright {

QDate toQDate(Date date);
Date fromQDate(QDate date); // must be valid

// A date that may be open. While it is, one button offers to set it; once set, it can be typed, picked from a calendar
// or taken away again.
class DateField : public QWidget {
  Q_OBJECT

public:
  // `name` is what the date is of ("Date of the operation"), for assistive technology; `openText` stands on the button
  // while the date is open ("Set the date").
  DateField(const QString& name, const QString& openText, QWidget* parent = nullptr);

  std::optional<Date> date() const { return date_; }
  void setDate(std::optional<Date> date); // emits nothing
  // The date that the button sets; today when there is none.
  void setProposal(std::optional<Date> proposal) { proposal_ = proposal; }
  // A field that must hold a date cannot be emptied.
  void setRequired(bool required);

Q_SIGNALS:
  void edited(std::optional<matwright::Date> date); // by the user

private:
  void show(std::optional<Date> date);
  void choose(std::optional<Date> date);

  std::optional<Date> date_, proposal_;
  bool required_ = false;
  QPushButton* open_;
  QDateEdit* edit_;
  QToolButton* clear_;
};

} // namespace matwright
