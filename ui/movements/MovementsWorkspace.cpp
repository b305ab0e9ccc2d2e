#include "ui/movements/MovementsWorkspace.h"

#include "ui/controls/Fields.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/movements/MovementEditor.h"
#include "ui/movements/MovementFiles.h"
#include "ui/movements/MovementReading.h"
#include "ui/movements/MovementRows.h"
#include "ui/text/ErrorText.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QKeyEvent>
#include <QListView>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace matwright {
namespace {

enum Stage { kNothing, kEditor, kReading };
constexpr qsizetype kMostErrors = 4; // said at once

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
    : QWidget(parent), document_(document), rows_(new MovementRows(document, this)),
      search_(searchField(tr("Search the movements"), tr("Search the movements"))), list_(new QListView),
      none_(softLabel(tr("No movement is found by these words."))), said_(plainLabel({})), empty_(softLabel({})),
      new_(new QPushButton(tr("New movement"))), copy_(new QPushButton(tr("Copy to my own"))),
      remove_(new QPushButton(tr("Remove"))), import_(new QPushButton(tr("Import \u2026"))),
      export_(new QPushButton(tr("Export \u2026"))), stack_(new QStackedWidget), editor_(new MovementEditor(document)),
      reading_(new MovementReading) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  auto* splitter = new QSplitter;
  splitter->setChildrenCollapsible(false);
  splitter->addWidget(makeList());
  splitter->addWidget(makeStage());
  splitter->setStretchFactor(0, 0);
  splitter->setStretchFactor(1, 1);
  splitter->setSizes({290, 990});
  column->addWidget(splitter, 1);

  connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] {
    say({});
    refresh();
  });
  connect(rows_, &QAbstractItemModel::modelReset, this, &MovementsWorkspace::refresh);
  connect(&document, &KnowledgeDocument::changed, this, &MovementsWorkspace::refresh);
  connect(search_, &QLineEdit::textChanged, rows_, &MovementRows::setWords);
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
  search_->installEventFilter(this);
  refresh();
}

QWidget* MovementsWorkspace::makeList() {
  auto* side = new QWidget;
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(12, 10, 8, 8);
  column->setSpacing(6);
  column->addWidget(titleLabel(tr("Movements")));
  column->addWidget(search_);
  list_->setModel(rows_);
  list_->setItemDelegate(new MovementRowDelegate(*list_));
  list_->setResizeMode(QListView::Adjust);
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setMouseTracking(true);
  list_->setAccessibleName(tr("All movements"));
  column->addWidget(none_);
  column->addWidget(list_, 1);
  column->addWidget(said_);
  auto* buttons = new FlowLayout(nullptr, 6);
  new_->setProperty("primary", true);
  for (QPushButton* button : {new_, copy_, remove_, import_, export_})
    buttons->addWidget(button);
  column->addLayout(buttons);
  side->setMinimumWidth(250);
  return side;
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

bool MovementsWorkspace::eventFilter(QObject* watched, QEvent* event) {
  if (watched == search_ && event->type() == QEvent::KeyPress &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Down) {
    list_->setFocus();
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

MovementId MovementsWorkspace::current() const {
  const Movement* movement = rows_->movementAt(list_->currentIndex());
  return movement ? movement->id : MovementId{};
}

void MovementsWorkspace::showMovement(const MovementId& movement) {
  if (!rows_->indexOf(movement).isValid())
    search_->clear();
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
  none_->setVisible(rows_->rowCount() == 0);
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
  auto* dialog = new QFileDialog(this, tr("Import movements"), {}, tr("Movements (*.json)"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setFileMode(QFileDialog::ExistingFile);
  connect(dialog, &QFileDialog::fileSelected, this, &MovementsWorkspace::importFrom);
  dialog->open();
}

void MovementsWorkspace::askExport() {
  auto* dialog = new QFileDialog(this, tr("Export the movement"), {}, tr("Movements (*.json)"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setDefaultSuffix(QStringLiteral("json"));
  dialog->selectFile(QString::fromStdString(current().value) + QStringLiteral(".json"));
  connect(dialog, &QFileDialog::fileSelected, this, &MovementsWorkspace::exportTo);
  dialog->open();
}

void MovementsWorkspace::importFrom(const QString& file) {
  document_.sealGesture();
  const auto imported = importMovements(document_, file);
  if (!imported) {
    QStringList lines;
    for (const Error& error : imported.error())
      lines << text(error);
    if (lines.size() > kMostErrors)
      lines = lines.first(kMostErrors) << tr("and %n more", nullptr, static_cast<int>(lines.size() - kMostErrors));
    return say(tr("Nothing was imported. %1").arg(lines.join(QLatin1Char('\n'))), true);
  }
  if (!imported->movements.empty())
    showMovement(imported->movements.front());
  QStringList words{tr("%n movements imported.", nullptr, static_cast<int>(imported->movements.size()))};
  if (imported->alreadyHere > 0)
    words << tr("%n were here already.", nullptr, imported->alreadyHere);
  if (imported->notTaken > 0)
    words << tr("The file also holds %n conditions, rules or sources, which are left alone here.", nullptr,
                imported->notTaken);
  say(words.join(QLatin1Char(' ')));
}

void MovementsWorkspace::exportTo(const QString& file) {
  const auto done = exportMovement(document_, current(), file);
  say(done ? tr("Saved %1").arg(file) : text(done.error()), !done);
}

void MovementsWorkspace::say(const QString& words, bool wrong) {
  showText(said_, wrong && !words.isEmpty() ? QStringLiteral("\u25b2 ") + words : words);
}

} // namespace matwright
