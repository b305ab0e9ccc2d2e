#include "ui/movements/MovementsWorkspace.h"

#include "core/knowledge/Exchange.h"
#include "ui/controls/FileQuestion.h"
#include "ui/controls/Labels.h"
#include "ui/controls/ListSide.h"
#include "ui/controls/Scrolled.h"
#include "ui/document/KnowledgeExchange.h"
#include "ui/movements/MovementEditor.h"
#include "ui/movements/MovementReading.h"
#include "ui/movements/MovementRows.h"
#include "ui/text/ErrorText.h"
#include "ui/text/ExchangeText.h"

#include <QCoreApplication>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace matwright {
namespace {

enum Stage { kNothing, kEditor, kReading };

} // namespace

Movement blankMovement(const Knowledge& knowledge) {
  const auto tr = [](const char* text) {
    return QCoreApplication::translate("matwright::MovementsWorkspace", text).toStdString();
  };
  const auto& positions = knowledge.transitions.positions();
  Movement movement;
  movement.name = tr("New movement");
  movement.repertoire = Repertoire::fundamental;
  movement.about = tr("Say what it is for.");
  movement.setUp = tr("Say here, in eight to twenty-five words, what people do to get ready.");
  movement.action = tr("out: move, in: return");
  movement.dose = {5, DoseUnit::repetitions};
  movement.tempo.phases = {{Breath::in, 3}, {Breath::out, 3}};
  movement.regions = {Region::abdominals};
  movement.spine = {SpineAction::neutral};
  movement.effort = Effort(3);
  if (!positions.empty()) {
    movement.start = movement.end = positions.front().id;
    movement.poses = {positions.front().pose, positions.front().pose};
  }
  return movement;
}

MovementsWorkspace::MovementsWorkspace(KnowledgeDocument& document, QWidget* parent)
    : QWidget(parent), document_(document), rows_(new MovementRows(document, this)), list_(new QListView),
      side_(
          new ListSide(tr("Movements"), tr("Search the movements"), tr("No movement is found by these words."), list_)),
      empty_(softLabel({})), new_(new QPushButton(tr("New movement"))), copy_(new QPushButton(tr("Copy to my own"))),
      remove_(new QPushButton(tr("Remove"))), import_(new QPushButton(tr("Import \u2026"))),
      export_(new QPushButton(tr("Export \u2026"))), stack_(new QStackedWidget), editor_(new MovementEditor(document)),
      reading_(new MovementReading) {
  addListAndStage(*this, makeList(), makeStage(), {290, 990});

  connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] {
    say({});
    refresh();
  });
  connect(rows_, &QAbstractItemModel::modelReset, this, &MovementsWorkspace::refresh);
  connect(&document, &KnowledgeDocument::changed, this, &MovementsWorkspace::refresh);
  connect(side_->search(), &QLineEdit::textChanged, rows_, &MovementRows::setWords);
  connect(new_, &QPushButton::clicked, this, &MovementsWorkspace::addNew);
  connect(copy_, &QPushButton::clicked, this, &MovementsWorkspace::copyCurrent);
  connect(reading_, &MovementReading::copyWanted, this, &MovementsWorkspace::copyCurrent);
  connect(remove_, &QPushButton::clicked, this, &MovementsWorkspace::removeCurrent);
  connect(import_, &QPushButton::clicked, this, &MovementsWorkspace::askImport);
  connect(export_, &QPushButton::clicked, this, &MovementsWorkspace::askExport);
  connect(editor_, &MovementEditor::keptChanged, this, [this] {
    std::set<MovementId> unkept;
    for (const Movement& movement : document_.own().movements)
      if (editor_->hasUnkept(movement.id))
        unkept.insert(movement.id);
    rows_->setUnkept(unkept);
  });
  refresh();
}

QWidget* MovementsWorkspace::makeList() {
  list_->setModel(rows_);
  list_->setItemDelegate(new MovementRowDelegate(*list_));
  list_->setResizeMode(QListView::Adjust);
  list_->setAccessibleName(tr("All movements"));
  new_->setProperty("primary", true);
  for (QPushButton* button : {new_, copy_, remove_, import_, export_})
    side_->addButton(button);
  side_->setMinimumWidth(250);
  return side_;
}

QWidget* MovementsWorkspace::makeStage() {
  empty_->setAlignment(Qt::AlignCenter);
  empty_->setContentsMargins(40, 40, 40, 40);
  empty_->setText(tr("Choose a movement to see it here, or make one of your own."));
  stack_->addWidget(empty_);
  stack_->addWidget(editor_);
  stack_->addWidget(scrolled(reading_));
  stack_->setMinimumWidth(520);
  return stack_;
}

MovementId MovementsWorkspace::current() const {
  const Movement* movement = rows_->movementAt(list_->currentIndex());
  return movement ? movement->id : MovementId{};
}

void MovementsWorkspace::showMovement(const MovementId& movement) {
  if (!rows_->indexOf(movement).isValid())
    side_->search()->clear();
  if (const QModelIndex index = rows_->indexOf(movement); index.isValid()) {
    list_->setCurrentIndex(index);
    list_->scrollTo(index);
  }
}

void MovementsWorkspace::setReducedMotion(bool reduced) {
  editor_->setReducedMotion(reduced);
  reading_->setReducedMotion(reduced);
}

void MovementsWorkspace::refresh() {
  side_->showNone(rows_->rowCount() == 0);
  // After the list began anew the same movement is found again, else the first.
  if (!list_->currentIndex().isValid() && rows_->rowCount() > 0) {
    const QModelIndex again = rows_->indexOf(editor_->movement());
    list_->setCurrentIndex(again.isValid() ? again : rows_->index(0));
    return;
  }
  const Movement* movement = rows_->movementAt(list_->currentIndex());
  const bool locked = !document_.lockedBy().empty(), own = movement && isOwn(movement->id);
  if (own) {
    if (editor_->movement() != movement->id)
      editor_->setMovement(movement->id);
    stack_->setCurrentIndex(kEditor);
  } else if (movement) {
    reading_->show(*movement, *document_.knowledge());
    stack_->setCurrentIndex(kReading);
  } else {
    stack_->setCurrentIndex(kNothing);
  }
  copy_->setText(own ? tr("Copy") : tr("Copy to my own"));
  new_->setEnabled(!locked);
  import_->setEnabled(!locked);
  copy_->setEnabled(movement && !locked);
  reading_->setCopyAllowed(!locked);
  remove_->setEnabled(own && !locked);
  export_->setEnabled(own);
  if (locked)
    say(tr("The movements of this studio cannot be read, so nothing can be changed here: %1")
            .arg(text(document_.lockedBy().front())),
        true);
}

void MovementsWorkspace::add(Movement movement, const QString& what) {
  document_.sealGesture();
  const auto added = document_.add(std::move(movement), what);
  if (!added)
    return say(text(added.error().front()), true);
  showMovement(*added);
  editor_->focusName();
}

void MovementsWorkspace::addNew() { add(blankMovement(*document_.knowledge()), tr("Add a movement")); }

void MovementsWorkspace::copyCurrent() {
  if (auto copy = document_.copyOf(current()))
    add(std::move(*copy), tr("Copy a movement"));
}

void MovementsWorkspace::removeCurrent() {
  const QModelIndex index = list_->currentIndex();
  const MovementId movement = current();
  const Movement* next =
      rows_->movementAt(index.siblingAtRow(index.row() + 1 < rows_->rowCount() ? index.row() + 1 : index.row() - 1));
  const MovementId after = next ? next->id : MovementId{};
  const Uses uses = usesOf(document_.own(), movement);
  if (const auto done = document_.remove(movement, tr("Remove a movement")); !done)
    return say(text(done.error().front()), true);
  showMovement(after);
  say(uses.empty() ? tr("Removed. Classes that have it keep its name and say that it is missing.")
                   : tr("Removed, and no longer named by %n other movements of yours.", nullptr,
                        static_cast<int>(uses.movements.size())));
}

void MovementsWorkspace::askImport() {
  askFileToOpen(this, tr("Import movements and rules"), tr("Movements and rules"),
                [this](const QString& file) { importFrom(file); });
}

void MovementsWorkspace::askExport() {
  askFileToSave(this, tr("Export the movement"), tr("Movements and rules"), QString::fromStdString(current().value),
                [this](const QString& file) { exportTo(file); });
}

void MovementsWorkspace::importFrom(const QString& file) {
  document_.sealGesture();
  const auto done = importKnowledge(document_, file);
  if (!done)
    return say(notImportedText(done.error()), true);
  if (!done->taken.movements.empty())
    showMovement(done->taken.movements.front().id);
  say(importedText(*done));
}

void MovementsWorkspace::exportTo(const QString& file) {
  const auto done = exportKnowledge(withWhatItNames(document_.own(), current()), file);
  say(done ? tr("Saved %1").arg(file) : text(done.error()), !done);
}

void MovementsWorkspace::say(const QString& words, bool wrong) { side_->say(words, wrong); }

} // namespace matwright
