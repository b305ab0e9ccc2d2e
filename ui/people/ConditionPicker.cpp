#include "ui/people/ConditionPicker.h"

#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {
namespace {

constexpr int kPlaceRole = Qt::UserRole + 1;

bool matches(const Condition& condition, const QStringList& terms) {
  QString all = QString::fromStdString(condition.name + ' ' + condition.about);
  for (const std::string& code : condition.icd10)
    all += QLatin1Char(' ') + QString::fromStdString(code);
  return std::all_of(terms.begin(), terms.end(),
                     [&](const QString& term) { return all.contains(term, Qt::CaseInsensitive); });
}

} // namespace

ConditionPicker::ConditionPicker(std::vector<Condition> conditions, QWidget* parent)
    : QWidget(parent), conditions_(std::move(conditions)), button_(new QPushButton(tr("Add a condition"))),
      panel_(new QWidget), search_(searchField(tr("Find a condition"), tr("Find a condition by name or code"))),
      list_(new QListWidget), about_(softLabel({})) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(button_, 0, Qt::AlignLeft);
  column->addWidget(panel_);

  auto* inside = new QVBoxLayout(panel_);
  inside->setContentsMargins(0, 0, 0, 0);
  inside->addWidget(search_);
  inside->addWidget(list_);
  inside->addWidget(about_);
  auto* buttons = new QHBoxLayout;
  auto* add = new QPushButton(tr("Add"));
  auto* close = new QPushButton(tr("Cancel"));
  add->setProperty("primary", true);
  buttons->addWidget(add);
  buttons->addWidget(close);
  buttons->addStretch();
  inside->addLayout(buttons);

  list_->setAccessibleName(tr("Conditions"));
  list_->setFixedHeight(fontMetrics().height() * 11);
  list_->setWordWrap(true);
  search_->installEventFilter(this);
  list_->installEventFilter(this);
  connect(button_, &QPushButton::clicked, this, [this] { setOpen(true); });
  connect(search_, &QLineEdit::textChanged, this, &ConditionPicker::search);
  connect(list_, &QListWidget::itemDoubleClicked, this, &ConditionPicker::pick);
  connect(list_, &QListWidget::currentItemChanged, this, [this](const QListWidgetItem* item) {
    showText(about_, item ? QString::fromStdString(conditions_[item->data(kPlaceRole).toUInt()].about) : QString());
  });
  connect(add, &QPushButton::clicked, this, &ConditionPicker::pick);
  connect(close, &QPushButton::clicked, this, [this] { setOpen(false); });
  setOpen(false);
}

void ConditionPicker::setConditions(std::vector<Condition> conditions) {
  list_->clear(); // its entries are places in the list before
  conditions_ = std::move(conditions);
  search(search_->text());
}

void ConditionPicker::setOpen(bool open) {
  panel_->setVisible(open);
  button_->setVisible(!open);
  if (!open)
    return;
  search_->clear();
  search({});
  search_->setFocus();
}

void ConditionPicker::search(const QString& words) {
  const QStringList terms = words.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
  list_->clear();
  for (std::size_t i = 0; i < conditions_.size(); ++i) {
    if (!matches(conditions_[i], terms))
      continue;
    auto* item = new QListWidgetItem(QString::fromStdString(conditions_[i].name), list_);
    item->setData(kPlaceRole, static_cast<uint>(i));
  }
  list_->setCurrentRow(0);
  if (list_->count() == 0)
    showText(about_, tr("No condition on the list matches. Write what you know into the person's note: nothing is "
                        "screened for it."));
}

void ConditionPicker::pick() {
  const QListWidgetItem* item = list_->currentItem();
  if (!item)
    return;
  const ConditionId condition = conditions_[item->data(kPlaceRole).toUInt()].id;
  setOpen(false);
  button_->setFocus();
  Q_EMIT picked(condition);
}

bool ConditionPicker::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter) {
      pick();
      return true;
    }
    if (key == Qt::Key_Escape) {
      setOpen(false);
      button_->setFocus();
      return true;
    }
    if (watched == search_ && (key == Qt::Key_Down || key == Qt::Key_Up)) {
      const int row = list_->currentRow() + (key == Qt::Key_Down ? 1 : -1);
      list_->setCurrentRow(std::clamp(row, 0, std::max(0, list_->count() - 1)));
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

} // namespace matwright
