#pragma once

#include "core/people/Person.h"

#include <QWidget>
#include <optional>

class QComboBox;
class QLabel;

namespace matwright {

class DateField;

// One thing that may be known about a condition. It can always be set back to "not known".
class QualifierField : public QWidget {
  Q_OBJECT

public:
  explicit QualifierField(const QualifierSpec& spec, QWidget* parent = nullptr);

  const QualifierSpec& spec() const { return spec_; }
  // `day`: the day of the class, for which weeks are counted.
  void show(std::optional<QualifierValue> value, Date day);

Q_SIGNALS:
  void edited(const std::optional<matwright::QualifierValue>& value);

private:
  bool dated() const { return spec_.kind == QualifierKind::weeksSince || spec_.kind == QualifierKind::pregnancyWeek; }
  void addChoice(const QString& text, std::optional<QualifierValue> value);
  void showWeek(std::optional<Date> date, Date day);

  QualifierSpec spec_;
  DateField* date_ = nullptr;
  QLabel* week_ = nullptr;
  QComboBox* choice_ = nullptr;
  std::vector<std::optional<QualifierValue>> values_; // of the choices
};

} // namespace matwright
