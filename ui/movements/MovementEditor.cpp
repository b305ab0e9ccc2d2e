#include "ui/movements/MovementEditor.h"

#include "ui/controls/FaultMarks.h"
#include "ui/controls/FaultRows.h"
#include "ui/controls/Labels.h"
#include "ui/controls/Scrolled.h"
#include "ui/movements/CuesPage.h"
#include "ui/movements/FactsPage.h"
#include "ui/movements/FeaturesPage.h"
#include "ui/movements/MovementFaults.h"
#include "ui/movements/OptionsPage.h"
#include "ui/movements/PosesPage.h"

#include <QScrollArea>
#include <QTabWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {

MovementEditor::MovementEditor(KnowledgeDocument& document, QWidget* parent)
    : QWidget(parent), document_(document), drafts_(document, &OwnKnowledge::movements), title_(titleLabel({})),
      tabs_(new QTabWidget), state_(plainLabel({})), list_(new FaultRows), facts_(new FactsPage), cues_(new CuesPage),
      poses_(new PosesPage), options_(new OptionsPage) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 8);
  column->setSpacing(6);
  column->addWidget(title_);
  column->addWidget(tabs_, 1);
  column->addWidget(state_);
  column->addWidget(list_);
  tabs_->setDocumentMode(true);
  addPage(facts_, tr("What it is"), true);
  addPage(cues_, tr("Cues and tempo"), true);
  addPage(poses_, tr("Poses"), true);
  addPage(new FeaturesPage, tr("Asks of the body"), true);
  addPage(options_, tr("Options"), false);
  connect(list_, &FaultRows::chosen, this, &MovementEditor::goTo);
  connect(tabs_, &QTabWidget::currentChanged, this, [this] { document_.sealGesture(); });
  connect(&document, &KnowledgeDocument::changed, this, &MovementEditor::refresh);
}

void MovementEditor::addPage(MovementPage* page, const QString& name, bool scrolls) {
  pages_.push_back(page);
  names_ << name;
  tabs_->addTab(scrolls ? static_cast<QWidget*>(scrolled(page)) : page, name);
  connect(page, &MovementPage::edited, this, &MovementEditor::take);
  connect(page, &MovementPage::left, this, [this] { document_.sealGesture(); });
}

void MovementEditor::setMovement(const MovementId& movement) {
  document_.sealGesture();
  id_ = movement;
  refresh();
}

void MovementEditor::dropUnkept() {
  drafts_.clear();
  refresh();
  Q_EMIT keptChanged();
}

void MovementEditor::focusName() {
  tabs_->setCurrentIndex(0);
  facts_->focusName();
}

void MovementEditor::setReducedMotion(bool reduced) {
  cues_->setReducedMotion(reduced);
  poses_->setReducedMotion(reduced);
  options_->setReducedMotion(reduced);
}

void MovementEditor::take(const Movement& movement, const QString& what, const QString& gesture) {
  if (!findById(document_.own().movements, id_) || movement.id != id_)
    return;
  const QString key =
      gesture.isEmpty() ? QString() : QStringLiteral("%1/%2").arg(QString::fromStdString(id_.value), gesture);
  const bool was = hasUnkept(id_);
  if (!drafts_.put(movement, what, key)) {
    for (MovementPage* page : pages_)
      page->show(movement, document_.knowledge());
    judge(movement);
  } else if (was || !faults_.empty()) {
    refresh();
  }
  if (was != hasUnkept(id_))
    Q_EMIT keptChanged();
}

void MovementEditor::refresh() {
  drafts_.followDocument();
  const Movement* kept = findById(document_.own().movements, id_);
  if (!kept)
    return;
  const Movement* draft = drafts_.find(id_);
  const Movement movement = draft ? *draft : *kept;
  for (MovementPage* page : pages_)
    page->show(movement, document_.knowledge());
  judge(movement);
}

void MovementEditor::judge(const Movement& movement) {
  title_->setText(QString::fromStdString(movement.name));
  faults_ = faultsOf(movement, document_.own(), document_.builtIn());
  showFaults();
}

void MovementEditor::showFaults() {
  for (std::size_t i = 0; i < pages_.size(); ++i) {
    pages_[i]->showFaults(faults_);
    const auto here = std::count_if(faults_.begin(), faults_.end(), [&](const FieldFault& fault) {
      return !fault.hint && pages_[i]->has(fault.field);
    });
    tabs_->setTabText(static_cast<int>(i),
                      here > 0 ? QStringLiteral("\u25b2 %1 (%2)").arg(names_[i]).arg(here) : names_[i]);
  }
  std::vector<FaultLine> lines;
  for (const FieldFault& fault : faults_)
    lines.push_back({QStringLiteral("%1: %2").arg(text(fault.field), fault.words), fault.hint});
  list_->show(lines);
  state_->setText(keptText(!hasUnkept(id_), lines,
                           tr("What you change is kept with the studio when the class is saved. Nothing is missing to "
                              "keep it; whether it is true and complete, only you can say.")));
}

void MovementEditor::goTo(int row) {
  if (row < 0 || static_cast<std::size_t>(row) >= faults_.size())
    return;
  const FieldFault fault = faults_[static_cast<std::size_t>(row)];
  for (std::size_t i = 0; i < pages_.size(); ++i)
    if (pages_[i]->has(fault.field)) {
      tabs_->setCurrentIndex(static_cast<int>(i));
      pages_[i]->goTo(fault);
      return;
    }
}

} // namespace matwright
