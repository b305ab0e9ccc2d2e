#include "ui/controls/PickList.h"

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

bool matches(const PickEntry& entry, const QStringList& terms) {
  const QString all = QStringList{entry.name, entry.about, entry.more}.join(QLatin1Char(' '));
  return std::all_of(terms.begin(), terms.end(),
                     [&](const QString& term) { return all.contains(term, Qt::CaseInsensitive); });
}

} // namespace

PickList::PickList(Words words, QWidget* parent)
    : QWidget(parent), words_(std::move(words)), button_(new QPushButton(words_.open)), panel_(new QWidget),
      search_(searchField(words_.find, words_.hint)), list_(new QListWidget), about_(softLabel({})) {
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
  auto* cancel = new QPushButton(tr("Cancel"));
  add->setProperty("primary", true);
  buttons->addWidget(add);
  buttons->addWidget(cancel);
  buttons->addStretch();
  inside->addLayout(buttons);

  list_->setAccessibleName(words_.list);
  list_->setFixedHeight(fontMetrics().height() * 11);
  list_->setWordWrap(true);
  search_->installEventFilter(this);
  list_->installEventFilter(this);
  connect(button_, &QPushButton::clicked, this, [this] { setOpen(true); });
  connect(search_, &QLineEdit::textChanged, this, &PickList::search);
  connect(list_, &QListWidget::itemDoubleClicked, this, &PickList::pick);
  connect(list_, &QListWidget::currentItemChanged, this, [this](const QListWidgetItem* item) {
    showText(about_, item ? entries_[item->data(kPlaceRole).toUInt()].about : QString());
  });
  connect(add, &QPushButton::clicked, this, &PickList::pick);
  connect(cancel, &QPushButton::clicked, this, &PickList::close);
  setOpen(false);
}

void PickList::setEntries(std::vector<PickEntry> entries) {
  list_->clear(); // its entries are places in the list before
  entries_ = std::move(entries);
  search(search_->text());
}

void PickList::setOpen(bool open) {
  panel_->setVisible(open);
  button_->setVisible(!open);
  setFocusProxy(open ? static_cast<QWidget*>(search_) : button_);
  if (!open)
    return;
  search_->clear();
  search({});
  search_->setFocus();
}

void PickList::close() {
  setOpen(false);
  button_->setFocus();
}

void PickList::search(const QString& words) {
  const QStringList terms = words.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
  list_->clear();
  for (std::size_t i = 0; i < entries_.size(); ++i) {
    if (!matches(entries_[i], terms))
      continue;
    auto* item = new QListWidgetItem(entries_[i].name, list_);
    item->setData(kPlaceRole, static_cast<uint>(i));
  }
  list_->setCurrentRow(0);
  if (list_->count() == 0)
    showText(about_, words_.none);
}

void PickList::pick() {
  const QListWidgetItem* item = list_->currentItem();
  if (!item)
    return;
  const QString key = entries_[item->data(kPlaceRole).toUInt()].key;
  close();
  Q_EMIT picked(key);
}

bool PickList::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter) {
      pick();
      return true;
    }
    if (key == Qt::Key_Escape) {
      close();
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
