#include "ui/compose/FormPart.h"

#include "ui/controls/Labels.h"

#include <QHBoxLayout>
#include <QToolButton>

namespace matwright {

FormPart::FormPart(const QString& title, QWidget* body, bool open, QWidget* parent)
    : QWidget(parent), title_(title), button_(new QToolButton), summary_(softLabel({})), body_(body) {
  button_->setCheckable(true);
  button_->setChecked(open);
  button_->setStyleSheet(
      QStringLiteral("QToolButton, QToolButton:checked { border: 1px solid transparent; padding: 2px 0; "
                     "background: transparent; font-weight: 600; }"
                     "QToolButton:focus { border: 1px solid palette(link); }"));
  auto* head = new QHBoxLayout;
  head->setSpacing(8);
  head->addWidget(button_);
  head->addWidget(summary_, 1);
  head->addStretch();
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(hairline());
  column->addLayout(head);
  column->addWidget(body_);
  body_->setContentsMargins(0, 0, 0, 6);
  connect(button_, &QToolButton::toggled, this, [this] { show(); });
  show();
}

void FormPart::show() {
  const bool open = button_->isChecked();
  button_->setText((open ? QStringLiteral("\u25be %1") : QStringLiteral("\u25b8 %1")).arg(title_));
  button_->setAccessibleName(title_);
  button_->setAccessibleDescription(summary_->text());
  body_->setVisible(open);
  summary_->setVisible(!open);
}

void FormPart::setSummary(const QString& summary) {
  summary_->setText(summary);
  button_->setAccessibleDescription(summary);
}

bool FormPart::isOpen() const { return button_->isChecked(); }
void FormPart::setOpen(bool open) { button_->setChecked(open); }

} // namespace matwright
