#include "ui/people/QualifierField.h"

#include "ui/controls/DateField.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/text/VocabularyText.h"

#include <QComboBox>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {

QualifierField::QualifierField(const QualifierSpec& spec, QWidget* parent) : QWidget(parent), spec_(spec) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  const QString name = QString::fromStdString(spec.name);
  if (dated()) {
    date_ = new DateField(name, tr("Not known: set the date"));
    week_ = softLabel({});
    column->addWidget(date_);
    column->addWidget(week_);
    connect(date_, &DateField::edited, this, [this](std::optional<Date> date) {
      Q_EMIT edited(date ? std::optional<QualifierValue>(*date) : std::nullopt);
    });
    setFocusProxy(date_);
    return;
  }
  choice_ = new QComboBox;
  choice_->setAccessibleName(name);
  keepWheelForFocus(choice_);
  addChoice(tr("not known"), std::nullopt);
  if (spec.kind == QualifierKind::flag) {
    addChoice(tr("yes"), QualifierValue(true));
    addChoice(tr("no"), QualifierValue(false));
  } else {
    for (const Choice& choice : spec.choices)
      addChoice(QString::fromStdString(choice.name), QualifierValue(choice.id));
  }
  column->addWidget(choice_);
  connect(choice_, &QComboBox::currentIndexChanged, this, [this](int index) {
    if (index >= 0)
      Q_EMIT edited(values_[static_cast<std::size_t>(index)]);
  });
  setFocusProxy(choice_);
}

void QualifierField::addChoice(const QString& text, std::optional<QualifierValue> value) {
  values_.push_back(std::move(value));
  choice_->addItem(text);
}

void QualifierField::show(std::optional<QualifierValue> value, Date day) {
  if (dated()) {
    const Date* date = value ? std::get_if<Date>(&*value) : nullptr;
    date_->setDate(date ? std::optional{*date} : std::nullopt);
    showWeek(date ? std::optional{*date} : std::nullopt, day);
    return;
  }
  const QSignalBlocker quiet(choice_);
  auto at = std::find(values_.begin(), values_.end(), value);
  if (at == values_.end()) {
    // A choice that the condition does not have any more is shown as it stands on file.
    const std::string* word = std::get_if<std::string>(&*value);
    addChoice(word ? QString::fromStdString(*word) : tr("something else"), value);
    at = values_.end() - 1;
  }
  choice_->setCurrentIndex(static_cast<int>(at - values_.begin()));
}

void QualifierField::showWeek(std::optional<Date> date, Date day) {
  if (!date) {
    showText(week_, {});
    return;
  }
  const int week = weekOn(spec_.kind, *date, day);
  if (week < 0)
    showText(week_, tr("after %1, the day of this class").arg(dateText(day)));
  else if (spec_.kind == QualifierKind::weeksSince)
    showText(week_, tr("%n week(s) on %1", nullptr, week).arg(dateText(day)));
  else
    showText(week_, tr("week %1 on %2").arg(week).arg(dateText(day)));
}

} // namespace matwright
