#include "ui/document/StudioFiles.h"

#include "ui/document/NativePath.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QUuid>
#include <spdlog/spdlog.h>

namespace matwright {
namespace {

QString studioOf(const QString& classFile) {
  QDir folder = QFileInfo(classFile).absoluteDir();
  if (folder.dirName() == QLatin1String("classes"))
    folder.cdUp();
  return folder.absolutePath();
}

Error cannotWrite(const QString& file, const QString& found) {
  return {ErrorCode::cannotWrite, file.toStdString(), {}, {}, found.toStdString()};
}

} // namespace

StudioFiles::StudioFiles(PlanDocument& plan, PeopleDocument& people, KnowledgeDocument& knowledge, QString recoveryRoot,
                         QObject* parent)
    : QObject(parent), plan_(plan), people_(people), knowledge_(knowledge), knowledgeFile_(knowledge),
      recoveryRoot_(std::move(recoveryRoot)) {
  connect(&knowledge_, &KnowledgeDocument::changed, this, [this] { plan_.setKnowledge(knowledge_.knowledge()); });
  connect(&people_, &PeopleDocument::changed, this, [this] { plan_.setRoster(people_.people()); });
  const auto changed = [this] {
    noteModified();
    if (isModified())
      autosaveTimer_.start();
  };
  for (const QUndoStack* stack : {plan_.undoStack(), people_.undoStack(), knowledge_.undoStack()}) {
    connect(stack, &QUndoStack::indexChanged, this, changed);
    connect(stack, &QUndoStack::cleanChanged, this, &StudioFiles::noteModified);
  }
  autosaveTimer_.setSingleShot(true);
  autosaveTimer_.setInterval(kAutosaveDelay);
  connect(&autosaveTimer_, &QTimer::timeout, this, &StudioFiles::autosaveNow);
  // Editors and synchronisers replace a file in several steps: look once they are done.
  watchTimer_.setSingleShot(true);
  watchTimer_.setInterval(300);
  connect(&watchTimer_, &QTimer::timeout, this, &StudioFiles::onDiskSignal);
  connect(&watcher_, &QFileSystemWatcher::fileChanged, &watchTimer_, qOverload<>(&QTimer::start));
  connect(&watcher_, &QFileSystemWatcher::directoryChanged, &watchTimer_, qOverload<>(&QTimer::start));
}

StudioFiles::~StudioFiles() { dropRecovery(); }

bool StudioFiles::isModified() const {
  return !plan_.undoStack()->isClean() || !people_.undoStack()->isClean() || !knowledge_.undoStack()->isClean();
}

Result<void> StudioFiles::open(const QString& file) {
  auto read = readClass(nativePath(file));
  if (!read)
    return failure(read.error());
  dropRecovery();
  kept_ = read->kept;
  fingerprint_ = read->fingerprint;
  studioFolder_ = studioOf(file);
  setClassFile(QFileInfo(file).absoluteFilePath());
  knowledgeFile_.load(studioFolder_);
  plan_.load(std::move(read->value));
  loadPeople();
  noteModified();
  return {};
}

void StudioFiles::startNew(ClassPlan plan) {
  dropRecovery();
  kept_ = nullptr;
  fingerprint_.reset();
  setClassFile({});
  const bool any = countSteps(plan) > 0;
  plan_.load(std::move(plan));
  if (any)
    plan_.undoStack()->resetClean();
  noteModified();
}

Result<void> StudioFiles::save(Conflict conflict) {
  const Fingerprint* expected = conflict == Conflict::refuse && fingerprint_ ? &*fingerprint_ : nullptr;
  if (auto written = writeClass(classFile_, expected); !written)
    return written;
  if (auto written = saveStudio(conflict); !written)
    return written;
  dropRecovery();
  noteModified();
  return {};
}

Result<void> StudioFiles::saveAs(const QString& file) {
  const QString before = classFile_;
  if (auto written = writeClass(file, nullptr); !written)
    return written;
  if (before.isEmpty() && studioFolder_.isEmpty())
    studioFolder_ = studioOf(file);
  setClassFile(QFileInfo(file).absoluteFilePath());
  if (auto written = saveStudio(Conflict::refuse); !written)
    return written;
  dropRecovery();
  noteModified();
  return {};
}

Result<void> StudioFiles::writeClass(const QString& file, const Fingerprint* expected) {
  auto written = writeFile(nativePath(file), classText(plan_.plan(), kept_), Privacy::ordinary, expected);
  if (!written)
    return failure(written.error());
  fingerprint_ = *written;
  plan_.undoStack()->setClean();
  plan_.sealGesture();
  watch();
  return {};
}

Result<void> StudioFiles::saveStudio(Conflict conflict) {
  if (auto written = savePeople(conflict); !written)
    return written;
  return knowledgeFile_.save(studioFolder_, conflict == Conflict::refuse);
}

QString StudioFiles::peopleFolder() const { return QDir(studioFolder_).filePath(QStringLiteral("people")); }

void StudioFiles::loadPeople() {
  peopleOnDisk_.clear();
  peopleErrors_.clear();
  std::vector<Person> people;
  if (!studioFolder_.isEmpty() && QFileInfo::exists(peopleFolder())) {
    PeopleFolder folder = readPeople(nativePath(peopleFolder()));
    peopleErrors_ = std::move(folder.errors);
    for (Stored<Person>& stored : folder.people) {
      people.push_back(stored.value);
      const PersonId id = stored.value.id;
      const QString name = QString::fromStdString(id.value) + QStringLiteral(".json");
      peopleOnDisk_[id] = {std::move(stored), QDir(peopleFolder()).filePath(name)};
    }
  }
  people_.load(std::move(people));
}

Result<void> StudioFiles::savePeople(Conflict conflict) {
  if (people_.undoStack()->isClean())
    return {};
  if (!QDir().mkpath(peopleFolder()))
    return failure(cannotWrite(peopleFolder(), tr("the folder cannot be made")));
  for (const Person& person : people_.people()) {
    const auto known = peopleOnDisk_.find(person.id);
    const bool isNew = known == peopleOnDisk_.end();
    if (!isNew && known->second.stored.value == person)
      continue;
    const QString file =
        isNew ? QDir(peopleFolder()).filePath(QString::fromStdString(person.id.value) + QStringLiteral(".json"))
              : known->second.file;
    const KeptTree kept = isNew ? nullptr : known->second.stored.kept;
    const bool guarded = !isNew && conflict == Conflict::refuse;
    auto written = writeFile(nativePath(file), personText(person, kept), Privacy::personal,
                             guarded ? &known->second.stored.fingerprint : nullptr);
    if (!written)
      return failure(written.error());
    peopleOnDisk_[person.id] = {{person, kept, *written}, file};
  }
  for (auto known = peopleOnDisk_.begin(); known != peopleOnDisk_.end();) {
    if (people_.find(known->first)) {
      ++known;
      continue;
    }
    if (!QFile::remove(known->second.file) && QFile::exists(known->second.file))
      return failure(cannotWrite(known->second.file, tr("the file cannot be removed")));
    known = peopleOnDisk_.erase(known);
  }
  people_.undoStack()->setClean();
  people_.sealGesture();
  return {};
}

void StudioFiles::setClassFile(const QString& file) {
  classFile_ = file;
  watch();
  Q_EMIT classFileChanged();
}

void StudioFiles::watch() {
  if (const QStringList watched = watcher_.files() + watcher_.directories(); !watched.isEmpty())
    watcher_.removePaths(watched);
  if (classFile_.isEmpty())
    return;
  // An atomic replacement drops the file from the watch: the folder brings it back.
  watcher_.addPath(classFile_);
  watcher_.addPath(QFileInfo(classFile_).absolutePath());
}

void StudioFiles::onDiskSignal() {
  if (classFile_.isEmpty() || !fingerprint_)
    return;
  if (!watcher_.files().contains(classFile_))
    watcher_.addPath(classFile_);
  const auto bytes = readFile(nativePath(classFile_));
  if (!bytes)
    return; // gone or half written: the next save says so
  const Fingerprint now = fingerprintOf(*bytes);
  if (now == *fingerprint_)
    return;
  Q_EMIT changedOnDisk();
}

void StudioFiles::noteModified() {
  const bool now = isModified();
  if (!now)
    autosaveTimer_.stop();
  if (now == modified_)
    return;
  modified_ = now;
  Q_EMIT modifiedChanged(now);
}

// A recovery is a folder with the class, its origin, the people, the own knowledge, and a lock held as long as the
// program runs.
void StudioFiles::autosaveNow() {
  autosaveTimer_.stop();
  if (!isModified())
    return;
  if (recoveryFolder_.isEmpty()) {
    const QString folder = QDir(recoveryRoot_).filePath(QUuid::createUuid().toString(QUuid::WithoutBraces));
    if (!QDir().mkpath(folder + QStringLiteral("/people"))) {
      Q_EMIT autosaveFailed(tr("The folder %1 cannot be made.").arg(folder));
      return;
    }
    QFile::setPermissions(folder, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    recoveryFolder_ = folder;
    recoveryLock_ = std::make_unique<QLockFile>(folder + QStringLiteral("/lock"));
    recoveryLock_->setStaleLockTime(0);
    if (!recoveryLock_->tryLock(0))
      spdlog::warn("the recovery folder cannot be locked");
  }
  const QDir folder(recoveryFolder_);
  const auto put = [&](const QString& name, const std::string& text) {
    return writeFile(nativePath(folder.filePath(name)), text, Privacy::personal).has_value();
  };
  bool done = put(QStringLiteral("origin.txt"), (classFile_ + QLatin1Char('\n') + studioFolder_).toStdString()) &&
              put(QStringLiteral("class.json"), classText(plan_.plan(), kept_));
  QDir people(folder.filePath(QStringLiteral("people")));
  for (const QString& stale : people.entryList({QStringLiteral("*.json")}, QDir::Files))
    people.remove(stale);
  for (const Person& person : people_.people())
    done =
        put(QStringLiteral("people/%1.json").arg(QString::fromStdString(person.id.value)), personText(person)) && done;
  done = knowledgeFile_.keepIn(recoveryFolder_) && done;
  if (!done)
    Q_EMIT autosaveFailed(tr("Unsaved work could not be kept in %1.").arg(recoveryFolder_));
}

void StudioFiles::dropRecovery() {
  autosaveTimer_.stop();
  if (recoveryFolder_.isEmpty())
    return;
  recoveryLock_.reset();
  QDir(recoveryFolder_).removeRecursively();
  recoveryFolder_.clear();
}

std::vector<Recovery> StudioFiles::findRecoveries(const QString& recoveryRoot) {
  std::vector<Recovery> found;
  const QDir root(recoveryRoot);
  for (const QFileInfo& entry : root.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Time)) {
    const QDir folder(entry.absoluteFilePath());
    const QFileInfo saved(folder.filePath(QStringLiteral("class.json")));
    if (!saved.exists())
      continue;
    QLockFile lock(folder.filePath(QStringLiteral("lock")));
    lock.setStaleLockTime(0);
    if (!lock.tryLock(0))
      continue; // its program is still running
    lock.unlock();
    QFile origin(folder.filePath(QStringLiteral("origin.txt")));
    QString line;
    if (origin.open(QIODevice::ReadOnly))
      line = QString::fromUtf8(origin.readLine()).trimmed();
    found.push_back({folder.absolutePath(), line, saved.lastModified()});
  }
  return found;
}

Result<void> StudioFiles::recover(const Recovery& recovery) {
  const QDir folder(recovery.folder);
  auto kept = readClass(nativePath(folder.filePath(QStringLiteral("class.json"))));
  if (!kept)
    return failure(kept.error());
  PeopleFolder people = readPeople(nativePath(folder.filePath(QStringLiteral("people"))));
  QString origin, studio;
  if (QFile file(folder.filePath(QStringLiteral("origin.txt"))); file.open(QIODevice::ReadOnly)) {
    origin = QString::fromUtf8(file.readLine()).trimmed();
    studio = QString::fromUtf8(file.readLine()).trimmed();
  }
  dropRecovery();
  studioFolder_ = studio;
  loadPeople(); // what is on file, to be compared with what was kept
  knowledgeFile_.load(studio);
  knowledgeFile_.recoverFrom(recovery.folder);
  kept_ = kept->kept;
  fingerprint_.reset();
  // The file as it is now is what the next save replaces; a save that finds another one asks.
  if (!origin.isEmpty())
    if (const auto bytes = readFile(nativePath(origin)))
      fingerprint_ = fingerprintOf(*bytes);
  setClassFile(origin);
  plan_.load(std::move(kept->value));
  plan_.undoStack()->resetClean();
  std::vector<Person> values;
  for (Stored<Person>& stored : people.people)
    values.push_back(std::move(stored.value));
  if (values != people_.people()) {
    people_.load(std::move(values));
    people_.undoStack()->resetClean();
  }
  recoveryFolder_ = recovery.folder;
  recoveryLock_ = std::make_unique<QLockFile>(recoveryFolder_ + QStringLiteral("/lock"));
  recoveryLock_->setStaleLockTime(0);
  recoveryLock_->tryLock(0);
  noteModified();
  return {};
}

void StudioFiles::discard(const Recovery& recovery) { QDir(recovery.folder).removeRecursively(); }

} // namespace matwright
