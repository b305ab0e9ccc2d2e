#include "ui/controls/ListSide.h"

#include "ui/controls/Fields.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"

#include <QAbstractItemView>
#include <QKeyEvent>
#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>

namespace matwright {

ListSide::ListSide(const QString& title, const QString& search, const QString& none, QAbstractItemView* list,
                   QWidget* parent)
    : QWidget(parent), search_(searchField(search, search)), list_(list), none_(softLabel(none)), said_(plainLabel({})),
      column_(new QVBoxLayout(this)), buttons_(new FlowLayout(nullptr, 6)) {
  column_->setContentsMargins(12, 10, 8, 8);
  column_->setSpacing(6);
  column_->addWidget(titleLabel(title));
  column_->addWidget(search_);
  column_->addWidget(none_);
  column_->addWidget(list_, 1);
  column_->addWidget(said_);
  column_->addLayout(buttons_);
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setMouseTracking(true);
  search_->installEventFilter(this);
  none_->hide();
  said_->hide();
}

void ListSide::addBelowSearch(QWidget* widget) { column_->insertWidget(column_->indexOf(search_) + 1, widget); }

void ListSide::addButton(QPushButton* button) { buttons_->addWidget(button); }

void ListSide::showNone(bool none) { none_->setVisible(none); }

void ListSide::say(const QString& words, bool wrong) {
  showText(said_, wrong && !words.isEmpty() ? QStringLiteral("\u25b2 ") + words : words);
}

bool ListSide::eventFilter(QObject* watched, QEvent* event) {
  if (watched == search_ && event->type() == QEvent::KeyPress &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Down) {
    list_->setFocus();
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

QVBoxLayout* addListAndStage(QWidget& workspace, QWidget* list, QWidget* stage, std::pair<int, int> sizes,
                             std::pair<int, int> stretch) {
  auto* column = new QVBoxLayout(&workspace);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  auto* splitter = new QSplitter;
  splitter->setChildrenCollapsible(false);
  splitter->addWidget(list);
  splitter->addWidget(stage);
  splitter->setStretchFactor(0, stretch.first);
  splitter->setStretchFactor(1, stretch.second);
  splitter->setSizes({sizes.first, sizes.second});
  column->addWidget(splitter, 1);
  return column;
}

} // namespace matwright
