#include "ui/movements/OptionsPage.h"

#include "core/knowledge/OwnKnowledge.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/controls/Scrolled.h"
#include "ui/movements/OptionForm.h"
#include "ui/text/VocabularyText.h"

#include <QHBoxLayout>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <algorithm>

namespace matwright {

OptionsPage::OptionsPage(QWidget* parent)
    : MovementPage(parent), list_(new QListWidget), add_(new QPushButton(tr("Add an option"))),
      copy_(new QPushButton(tr("Copy"))), remove_(new QPushButton(tr("Remove"))), up_(new QPushButton(tr("Move up"))),
      stack_(new QStackedWidget), fault_(faultLabel()), form_(new OptionForm) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(16, 12, 0, 0);
  row->setSpacing(8);
  auto* side = new QVBoxLayout;
  list_->setAccessibleName(tr("Options"));
  list_->setWordWrap(true);
  list_->setStyleSheet(QStringLiteral("QListWidget::item { padding: 6px; }"));
  list_->setFixedWidth(210);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  side->addWidget(list_, 1);
  auto* buttons = new QWidget;
  buttons->setFixedWidth(210);
  auto* flow = new FlowLayout(buttons, 6);
  for (QPushButton* button : {add_, copy_, remove_, up_})
    flow->addWidget(button);
  side->addWidget(buttons);
  side->addSpacing(8);
  row->addLayout(side);
  auto* none = softLabel(tr("The movement has no option yet. An option is one way to do it: easier, harder, or adapted "
                            "for somebody. When a caution speaks, an option that takes its feature away is what to "
                            "offer instead."));
  none->setContentsMargins(24, 8, 24, 8);
  none->setAlignment(Qt::AlignTop);
  auto* inside = new QWidget;
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(0, 0, 0, 0);
  fault_->setContentsMargins(16, 4, 16, 0);
  column->addWidget(fault_);
  column->addWidget(scrolled(form_), 1);
  stack_->addWidget(none);
  stack_->addWidget(inside);
  row->addWidget(stack_, 1);
  mark(MovementField::options, list_, fault_);

  connect(list_, &QListWidget::currentRowChanged, this, [this] {
    Q_EMIT left();
    showCurrent();
  });
  connect(add_, &QPushButton::clicked, this, [this] {
    Option option;
    option.name = tr("New option").toStdString();
    option.how = tr("Say how it is done.").toStdString();
    add(option, tr("Add an option"));
    form_->focusName();
  });
  connect(copy_, &QPushButton::clicked, this, [this] {
    if (const auto at = current()) {
      Option option = movement().options[*at];
      option.name = tr("%1, copy").arg(QString::fromStdString(option.name)).toStdString();
      add(option, tr("Copy an option"));
    }
  });
  connect(remove_, &QPushButton::clicked, this, [this] {
    if (const auto at = current()) {
      change(
          [&](Movement& movement) {
            movement.options.erase(movement.options.begin() + static_cast<std::ptrdiff_t>(*at));
          },
          tr("Remove an option"));
      refresh();
    }
  });
  connect(up_, &QPushButton::clicked, this, [this] {
    if (const auto at = current(); at && *at > 0) {
      change([&](Movement& movement) { std::swap(movement.options[*at], movement.options[*at - 1]); },
             tr("Move an option"));
      showNames();
      list_->setCurrentRow(static_cast<int>(*at) - 1);
    }
  });
  connect(form_, &OptionForm::edited, this, [this](const Option& option, const QString& what, const QString& gesture) {
    const auto at = current();
    if (!at)
      return;
    change([&](Movement& movement) { movement.options[*at] = option; }, what,
           gesture.isEmpty() ? QString() : QStringLiteral("option%1/%2").arg(*at).arg(gesture));
    showNames();
  });
  connect(form_, &OptionForm::left, this, &OptionsPage::left);
}

std::optional<std::size_t> OptionsPage::current() const {
  const int row = list_->currentRow();
  if (row < 0 || static_cast<std::size_t>(row) >= movement().options.size())
    return std::nullopt;
  return static_cast<std::size_t>(row);
}

void OptionsPage::add(Option option, const QString& what) {
  option.id = mintOptionId(movement(), option.name);
  change([&](Movement& movement) { movement.options.push_back(option); }, what);
  showNames();
  list_->setCurrentRow(list_->count() - 1);
}

void OptionsPage::showNames() {
  const QSignalBlocker quiet(list_);
  while (list_->count() > static_cast<int>(movement().options.size()))
    delete list_->takeItem(list_->count() - 1);
  while (list_->count() < static_cast<int>(movement().options.size()))
    list_->addItem(QString());
  for (std::size_t i = 0; i < movement().options.size(); ++i) {
    const Option& option = movement().options[i];
    const bool faulty = std::any_of(faults_.begin(), faults_.end(), [&](const FieldFault& fault) {
      return !fault.hint && fault.field == MovementField::options && fault.option == i;
    });
    list_->item(static_cast<int>(i))
        ->setText(QStringLiteral("%1%2 \u00b7 %3")
                      .arg(faulty ? QStringLiteral("\u25b2 ") : QString(), QString::fromStdString(option.name),
                           text(option.kind)));
  }
  add_->setEnabled(movement().options.size() < Movement::kMostOptions);
}

void OptionsPage::refresh() {
  showNames();
  if (list_->currentRow() < 0 && list_->count() > 0)
    list_->setCurrentRow(0);
  showCurrent();
}

void OptionsPage::showCurrent() {
  const auto at = current();
  copy_->setEnabled(at.has_value());
  remove_->setEnabled(at.has_value());
  up_->setEnabled(at && *at > 0);
  stack_->setCurrentIndex(at ? 1 : 0);
  std::vector<FaultLine> here;
  for (const FieldFault& fault : faults_)
    if (at && fault.field == MovementField::options && fault.option == *at)
      here.push_back(fault);
  matwright::showFaults(fault_, here);
  if (at)
    form_->show(movement(), movement().options[*at], knowledge());
}

void OptionsPage::showFaults(const std::vector<FieldFault>& faults) {
  faults_ = faults;
  showNames();
  showCurrent();
}

void OptionsPage::goTo(const FieldFault& fault) {
  list_->setCurrentRow(static_cast<int>(fault.option));
  form_->focusName();
}

void OptionsPage::setReducedMotion(bool reduced) { form_->setReducedMotion(reduced); }

} // namespace matwright
