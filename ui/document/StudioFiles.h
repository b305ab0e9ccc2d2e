// The files behind the open documents: one class, and the people and the own knowledge of its studio.
#pragma once

#include "core/store/Store.h"
#include "ui/document/KnowledgeFile.h"
#include "ui/document/PeopleDocument.h"
#include "ui/document/PlanDocument.h"

#include <QDateTime>
#include <QFileSystemWatcher>
#include <QLockFile>
#include <QTimer>
#include <map>
#include <memory>

namespace matwright {

// What an instance of the program that did not end well left behind.
struct Recovery {
  QString folder; // of the recovery
  QString origin; // the class file it belongs to; empty for a class that was never saved
  QDateTime when;
};

// Opens, saves, watches and autosaves. A class lies in <studio>/classes, its people in <studio>/people, and what the
// studio knows of its own in <studio>/knowledge.json; a class that lies elsewhere has them beside it. The documents
// follow one another: people and knowledge as they change are handed to the class. Nothing is overwritten that changed
// on disk since it was read, unless asked for.
class StudioFiles : public QObject {
  Q_OBJECT

public:
  static constexpr int kAutosaveDelay = 1500; // milliseconds after a change

  // `recoveryRoot`: where unsaved work is kept until it is saved or let go; created when needed.
  StudioFiles(PlanDocument& plan, PeopleDocument& people, KnowledgeDocument& knowledge, QString recoveryRoot,
              QObject* parent = nullptr);
  ~StudioFiles() override; // lets the recovery go: whoever closes has asked before

  QString classFile() const { return classFile_; } // empty for a class that was never saved
  QString studioFolder() const { return studioFolder_; }
  bool isModified() const;

  // On an error the open documents stay as they are. People files that cannot be read are listed by peopleErrors().
  // When the own knowledge cannot be read, knowledgeErrors() says why, and the class is opened without it.
  Result<void> open(const QString& file);
  const std::vector<Error>& peopleErrors() const { return peopleErrors_; }
  const std::vector<Error>& knowledgeErrors() const { return knowledgeFile_.errors(); }
  // Unsaved, in the studio that is open. One with steps counts as changed: it would be lost.
  void startNew(ClassPlan plan);

  enum class Conflict { refuse, overwrite };
  // Writes the class, every changed person and changed knowledge. Without a class file: a programmer's error.
  Result<void> save(Conflict conflict = Conflict::refuse);
  Result<void> saveAs(const QString& file);
  Result<void> reload() { return open(classFile_); }

  static std::vector<Recovery> findRecoveries(const QString& recoveryRoot); // not those of running instances
  Result<void> recover(const Recovery& recovery); // loads it as unsaved work and takes it over
  static void discard(const Recovery& recovery);
  void autosaveNow();

Q_SIGNALS:
  void classFileChanged();
  void modifiedChanged(bool modified);
  void changedOnDisk();                        // somebody else wrote the open class
  void autosaveFailed(const QString& message); // shown, not fatal

private:
  struct PersonOnDisk {
    Stored<Person> stored;
    QString file;
  };

  QString peopleFolder() const;
  void loadPeople();
  Result<void> saveStudio(Conflict conflict);
  Result<void> savePeople(Conflict conflict);
  Result<void> writeClass(const QString& file, const Fingerprint* expected);
  void setClassFile(const QString& file);
  void watch();
  void onDiskSignal();
  void noteModified();
  void dropRecovery();

  PlanDocument& plan_;
  PeopleDocument& people_;
  KnowledgeDocument& knowledge_;
  KnowledgeFile knowledgeFile_;
  QString recoveryRoot_;
  QString recoveryFolder_;
  std::unique_ptr<QLockFile> recoveryLock_;
  QString classFile_;
  QString studioFolder_;
  KeptTree kept_;
  std::optional<Fingerprint> fingerprint_;
  std::map<PersonId, PersonOnDisk> peopleOnDisk_;
  std::vector<Error> peopleErrors_;
  QFileSystemWatcher watcher_;
  QTimer watchTimer_;
  QTimer autosaveTimer_;
  bool modified_ = false;
};

} // namespace matwright
