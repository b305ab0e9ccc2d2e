#include "ui/inspector/ReplacePage.h"

#include "ui/controls/Labels.h"
#include "ui/inspector/ReplaceRows.h"
#include "ui/inspector/RowList.h"
#include "ui/text/CautionText.h"
#include "ui/text/VocabularyText.h"

#include <QKeyEvent>
#include <QToolButton>
#include <QVBoxLayout>

namespace matwright {

ReplacePage::ReplacePage(PlanDocument& document, ClassCommands& commands, QWidget* parent)
    : QWidget(parent), document_(document), commands_(commands), back_(new QToolButton), title_(titleLabel({})),
      about_(softLabel({})), lost_(plainLabel({})), none_(plainLabel({})), rows_(new ReplaceRows(this)),
      list_(new RowList(tr("What else could stand here"),
                        [this](int row, int width) { return rows_->height(row, list_->font(), width); })) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 10);
  column->setSpacing(6);
  back_->setText(tr("Back to the step"));
  back_->setToolTip(tr("Leave the step as it is (Escape)"));
  column->addWidget(back_, 0, Qt::AlignLeft);
  for (QLabel* label : {title_, about_, lost_, none_})
    column->addWidget(label);
  column->addWidget(list_);
  column->addWidget(softLabel(standingNotice()));
  column->addStretch(1);
  list_->setObjectName(QStringLiteral("replacements"));
  list_->setItemDelegate(rows_);
  list_->setMouseTracking(true);
  setFocusProxy(list_);
  connect(back_, &QToolButton::clicked, this, &ReplacePage::left);
  connect(list_, &RowList::chosen, this, &ReplacePage::choose);
  connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
    if (row >= 0)
      Q_EMIT rowReached(QRect(list_->mapTo(this, list_->visualItemRect(list_->item(row)).topLeft()),
                              list_->visualItemRect(list_->item(row)).size()));
  });
}

void ReplacePage::show(StepId id) {
  id_ = id;
  const Step* step = findStep(document_.plan(), id);
  if (!step)
    return;
  knowledge_ = document_.snapshot().knowledge;
  swaps_ = replacementsFor(*knowledge_, document_.plan(), document_.roster(), document_.day(), id);
  title_->setText(tr("In place of %1").arg(movementName(*knowledge_, step->movement)));
  showText(about_, swaps_.empty() ? QString()
                                  : tr("Not in the class yet, best first, each with its usual dose. A click or Enter "
                                       "puts one in."));
  showText(lost_, lostText(*step).join(QLatin1Char('\n')));
  showText(none_, swaps_.empty() ? tr("Nothing found that could stand here without a stronger caution.") : QString());
  rows_->setRows(replaceRows(document_, *step, swaps_));
  list_->clear();
  for (const ReplaceRow& row : rows_->rows()) {
    auto* item = new QListWidgetItem(row.name, list_);
    item->setData(Qt::AccessibleTextRole, row.spoken());
    item->setToolTip(row.details);
  }
  if (list_->count() > 0)
    list_->setCurrentRow(0);
  list_->setVisible(list_->count() > 0);
  list_->updateGeometry();
}

// What goes whatever is put in.
QStringList ReplacePage::lostText(const Step& step) const {
  QStringList lines;
  for (const QString& words : unpreparedText(unpreparedByAll(swaps_)))
    lines << tr("Whatever is put in: %1.").arg(words);
  if (!step.variants.empty() && !swaps_.empty())
    lines << tr("What single people do in place of this step goes with it.");
  return lines;
}

void ReplacePage::choose(int row) {
  const Swap swap = swaps_[static_cast<std::size_t>(row)];
  const StepId id = id_;
  const auto kept = knowledge_; // while the page is left
  Q_EMIT left();
  commands_.replaceStep(id, swap);
}

void ReplacePage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape)
    Q_EMIT left();
  else
    QWidget::keyPressEvent(event);
}

} // namespace matwright
