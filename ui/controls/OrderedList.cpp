#include "ui/controls/OrderedList.h"

#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/text/VocabularyText.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QHBoxLayout>
#include <QStringListModel>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {
namespace {

QToolButton* smallButton(const QString& sign, const QString& name) {
  auto* button = new QToolButton;
  button->setText(sign);
  button->setStyleSheet(QStringLiteral("QToolButton { padding: 2px 6px; }"));
  button->setToolTip(name);
  button->setAccessibleName(name);
  return button;
}

} // namespace

OrderedList::OrderedList(const QString& name, const QString& add, QWidget* parent)
    : QWidget(parent), name_(name), rows_(new QVBoxLayout), find_(searchField(add, add)),
      found_(new QStringListModel(this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  rows_->setSpacing(3);
  column->addLayout(rows_);
  column->addWidget(find_);
  find_->setMaximumWidth(380);
  setFocusProxy(find_);
  setAccessibleName(name);
  auto* completer = new QCompleter(found_, this);
  completer->setFilterMode(Qt::MatchContains);
  completer->setCaseSensitivity(Qt::CaseInsensitive);
  completer->setMaxVisibleItems(12);
  find_->setCompleter(completer);
  connect(completer, qOverload<const QString&>(&QCompleter::activated), this, [this](const QString& chosen) {
    // The completer writes what was chosen into the field afterwards.
    QTimer::singleShot(0, this, [this, chosen] { addTyped(chosen); });
  });
  connect(find_, &QLineEdit::returnPressed, this, [this] {
    const QAbstractItemView* popup = find_->completer()->popup();
    const bool chosen = popup->isVisible() && popup->currentIndex().isValid(); // then the completer says so itself
    if (!chosen && !find_->text().isEmpty())
      addTyped(find_->completer()->currentCompletion());
  });
}

void OrderedList::setStock(const std::vector<NamedKey>& stock) {
  if (stock_ == stock)
    return;
  stock_ = stock;
  refresh();
}

void OrderedList::setFirstIsMain(bool main) {
  main_ = main;
  refresh();
}

void OrderedList::setOrdered(bool ordered) {
  ordered_ = ordered;
  refresh();
}

void OrderedList::show(const QStringList& keys) {
  if (keys_ == keys)
    return;
  keys_ = keys;
  refresh();
}

QString OrderedList::nameOf(const QString& key) const {
  for (const NamedKey& entry : stock_)
    if (entry.key == key)
      return entry.name;
  return key;
}

void OrderedList::addTyped(const QString& name) {
  const auto at = std::find_if(stock_.begin(), stock_.end(), [&](const NamedKey& entry) {
    return entry.name.compare(name, Qt::CaseInsensitive) == 0;
  });
  find_->clear();
  if (at == stock_.end() || keys_.contains(at->key))
    return;
  keys_ << at->key;
  refresh();
  Q_EMIT edited(keys_);
}

void OrderedList::refresh() {
  for (QWidget* row : shown_) {
    row->hide();
    row->deleteLater();
  }
  shown_.clear();
  for (qsizetype i = 0; i < keys_.size(); ++i) {
    const QString name = withCapital(nameOf(keys_[i]));
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(4);
    auto* up = smallButton(QStringLiteral("\u2191"), tr("Move up: %1").arg(name));
    auto* remove = smallButton(QStringLiteral("\u00d7"), tr("Take away: %1").arg(name));
    up->setEnabled(i > 0);
    if (!ordered_)
      up->hide();
    line->addWidget(plainLabel(main_ && i == 0 ? tr("%1 (the main one)").arg(name) : name), 1);
    line->addWidget(up);
    line->addWidget(remove);
    row->setMaximumWidth(380);
    connect(up, &QToolButton::clicked, this, [this, i] {
      keys_.swapItemsAt(i, i - 1);
      refresh();
      Q_EMIT edited(keys_);
    });
    connect(remove, &QToolButton::clicked, this, [this, i] {
      keys_.removeAt(i);
      refresh();
      find_->setFocus();
      Q_EMIT edited(keys_);
    });
    rows_->addWidget(row);
    shown_.push_back(row);
  }
  QStringList rest;
  for (const NamedKey& entry : stock_)
    if (!keys_.contains(entry.key))
      rest << entry.name;
  found_->setStringList(rest);
  find_->setEnabled(!rest.isEmpty());
  updateGeometry();
}

} // namespace matwright
