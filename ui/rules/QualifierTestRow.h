#pragma once

#include "core/screening/Rule.h"

#include <QWidget>
#include <optional>
#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;
class QSpinBox;
class QToolButton;
class QVBoxLayout;

namespace matwright {

// One test on a qualifier: weeks, choices, or yes or no, and what it means while nobody has answered.
class QualifierTestRow : public QWidget {
  Q_OBJECT

public:
  // `spec`: nothing for a question that the condition does not have; then the test can only be taken away.
  QualifierTestRow(const std::optional<QualifierSpec>& spec, const QString& id, QWidget* parent = nullptr);

  bool isFor(const std::optional<QualifierSpec>& spec, const QString& id) const { return spec_ == spec && id_ == id; }
  void show(const QualifierTest& test); // emits nothing
  void focusAnswer();

Q_SIGNALS:
  void edited(const matwright::QualifierTest& test, const QString& gesture);
  void removeWanted();

private:
  void addWeeks(QVBoxLayout& column, const QString& name);
  void addChoices(QVBoxLayout& column);
  void addFlag(QVBoxLayout& column, const QString& name);
  void addOpen(QVBoxLayout& column, const QString& name);
  void addChoice(const std::string& id, const QString& name);
  void change(const QualifierTest& test, const QString& gesture = {});

  std::optional<QualifierSpec> spec_;
  QString id_;
  QualifierTest test_;
  QCheckBox *hasFrom_ = nullptr, *hasBelow_ = nullptr;
  QSpinBox *from_ = nullptr, *below_ = nullptr;
  QWidget* choices_ = nullptr;
  std::vector<std::pair<std::string, QCheckBox*>> choice_;
  QComboBox *flag_ = nullptr, *open_ = nullptr;
  QToolButton* remove_;
};

} // namespace matwright
