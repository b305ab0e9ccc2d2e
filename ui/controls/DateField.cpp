#include "ui/controls/DateField.h"

#include "ui/controls/Fields.h"

#include <QDateEdit>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSignalBlocker>
#include <QToolButton>

namespace matwright {

QDate toQDate(Date date) {
  return {int{date.year()}, static_cast<int>(unsigned{date.month()}), static_cast<int>(unsigned{date.day()})};
}

Date fromQDate(QDate date) {
  return {std::chrono::year{date.year()}, std::chrono::month{static_cast<unsigned>(date.month())},
          std::chrono::day{static_cast<unsigned>(date.day())}};
}

DateField::DateField(const QString& name, const QString& openText, QWidget* parent)
    : QWidget(parent), open_(new QPushButton(openText)), edit_(new QDateEdit), clear_(new QToolButton) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(4);
  row->addWidget(open_);
  row->addWidget(edit_, 1);
  row->addWidget(clear_);

  open_->setAccessibleName(QStringLiteral("%1: %2").arg(name, openText));
  edit_->setAccessibleName(name);
  edit_->setCalendarPopup(true);
  edit_->setDisplayFormat(QStringLiteral("yyyy-MM-dd"));
  edit_->setDateRange(QDate(1900, 1, 1), QDate(2199, 12, 31));
  edit_->setKeyboardTracking(false);
  keepWheelForFocus(edit_);
  clear_->setText(QStringLiteral("\u00d7"));
  clear_->setToolTip(tr("Take the date away"));
  clear_->setAccessibleName(tr("Take away: %1").arg(name));
  setFocusProxy(open_);

  connect(open_, &QPushButton::clicked, this, [this] {
    choose(proposal_ ? *proposal_ : fromQDate(QDate::currentDate()));
    edit_->setFocus();
  });
  connect(edit_, &QDateEdit::dateChanged, this, [this](QDate chosen) { choose(fromQDate(chosen)); });
  connect(clear_, &QToolButton::clicked, this, [this] {
    choose(std::nullopt);
    open_->setFocus();
  });
  show(std::nullopt);
}

void DateField::setDate(std::optional<Date> date) { show(date); }

void DateField::setRequired(bool required) {
  required_ = required;
  show(date_);
}

void DateField::choose(std::optional<Date> date) {
  if (date == date_)
    return;
  show(date);
  Q_EMIT edited(date);
}

void DateField::show(std::optional<Date> date) {
  date_ = date;
  open_->setVisible(!date);
  edit_->setVisible(date.has_value());
  clear_->setVisible(date.has_value() && !required_);
  setFocusProxy(date ? static_cast<QWidget*>(edit_) : open_);
  if (!date)
    return;
  const QSignalBlocker quiet(edit_);
  if (edit_->date() != toQDate(*date))
    edit_->setDate(toQDate(*date));
}

} // namespace matwright
