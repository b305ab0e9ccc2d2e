#pragma once

#include "ui/movements/MovementPage.h"

class QListWidget;
class QPushButton;
class QStackedWidget;

namespace matwright {

class OptionForm;

// The ways to do a movement: a list of them, and the one that is chosen beside it.
class OptionsPage : public MovementPage {
  Q_OBJECT

public:
  explicit OptionsPage(QWidget* parent = nullptr);

  void showFaults(const std::vector<FieldFault>& faults) override;
  void goTo(const FieldFault& fault) override;
  void setReducedMotion(bool reduced);

protected:
  void refresh() override;

private:
  std::optional<std::size_t> current() const;
  void add(Option option, const QString& what);
  void showCurrent();
  void showNames();

  QListWidget* list_;
  QPushButton *add_, *copy_, *remove_, *up_;
  QStackedWidget* stack_;
  QLabel* fault_;
  OptionForm* form_;
  std::vector<FieldFault> faults_;
};

} // namespace matwright
