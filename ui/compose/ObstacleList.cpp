#include "ui/compose/ObstacleList.h"

#include "ui/compose/Remedies.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/text/ComposeText.h"

#include <QPushButton>
#include <QVBoxLayout>

namespace matwright {
namespace {

QString leadText(const ComposeResult& result) {
  switch (result.status) {
  case ComposeStatus::impossible:
    return ObstacleList::tr("This is in the way. Change one of the wishes at the left, or here.");
  case ComposeStatus::notFound:
    return result.obstacles.empty()
               ? ObstacleList::tr("That there is none is not proven: another seed may find one, and so may fewer "
                                  "wishes or other lengths.")
               : ObstacleList::tr("That there is none is not proven. With one of these wishes fewer one was found:");
  case ComposeStatus::cancelled:
    return ObstacleList::tr("Change the wishes, or look again with \u201cAnother Class\u201d.");
  case ComposeStatus::composed:
    break;
  }
  return {};
}

} // namespace

ObstacleList::ObstacleList(QWidget* parent) : QScrollArea(parent), column_(nullptr) {
  setWidgetResizable(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* page = new QWidget;
  column_ = new QVBoxLayout(page);
  column_->setContentsMargins(12, 4, 16, 14);
  setWidget(page);
  setAccessibleName(tr("What is in the way"));
}

void ObstacleList::show(const Composed& composed, std::span<const Person> roster) {
  delete shown_;
  shown_ = new QWidget;
  auto* column = new QVBoxLayout(shown_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  column->addWidget(softLabel(leadText(composed.result)));
  const ComposeNames names{*composed.knowledge, roster, composed.wishes};
  for (const Obstacle& obstacle : composed.result.obstacles) {
    column->addWidget(hairline());
    column->addWidget(plainLabel(text(obstacle, names)));
    auto* buttons = new QWidget;
    auto* flow = new FlowLayout(buttons, 6);
    flow->setContentsMargins(0, 0, 0, 0);
    for (const Remedy& remedy : remediesFor(obstacle, *composed.knowledge, roster, composed.wishes)) {
      auto* button = new QPushButton(remedy.words);
      button->setAutoDefault(false);
      connect(
          button, &QPushButton::clicked, this,
          [this, wishes = composed.wishes, apply = remedy.apply] {
            ClassWishes changed = wishes;
            apply(changed);
            Q_EMIT wishesWanted(changed);
          },
          Qt::QueuedConnection); // the button goes
      flow->addWidget(button);
    }
    column->addWidget(buttons);
  }
  column->addStretch(1);
  column_->addWidget(shown_);
}

} // namespace matwright
