#include "tests/ui/document/StudioFolder.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QSignalSpy>

namespace matwright {
namespace {

TEST_F(StudioFolder, OpensTheClassWithThePeopleBesideIt) {
  EXPECT_EQ(open.document.plan().name, "One");
  ASSERT_EQ(open.document.roster().size(), 1U);
  EXPECT_EQ(open.document.roster().front().name, "Ada");
  EXPECT_FALSE(files->isModified());
}

TEST_F(StudioFolder, SavesWhatIsOpenAndIsUnmodifiedThen) {
  addStep();
  EXPECT_TRUE(files->isModified());
  ASSERT_TRUE(files->save());
  EXPECT_FALSE(files->isModified());
  const auto again = readClass(classFile.toStdString());
  ASSERT_TRUE(again);
  EXPECT_EQ(again->value, open.document.plan());
  open.document.undoStack()->undo();
  EXPECT_TRUE(files->isModified());
}

TEST_F(StudioFolder, SavesOnlyPeopleThatChangedForTheirOwnersEyesAlone) {
  const PersonId bea = people.add(QStringLiteral("Bea"), QStringLiteral("add"));
  ASSERT_TRUE(files->save());
  const QString file = folder.filePath(QStringLiteral("studio/people/bea.json"));
  ASSERT_TRUE(QFile::exists(file));
  EXPECT_EQ(QFile::permissions(file) & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions());
  people.remove(bea, QStringLiteral("remove"));
  ASSERT_TRUE(files->save());
  EXPECT_FALSE(QFile::exists(file));
  EXPECT_TRUE(QFile::exists(folder.filePath(QStringLiteral("studio/people/ada.json"))));
}

TEST_F(StudioFolder, RefusesToReplaceWhatSomebodyElseWrote) {
  addStep();
  const std::string foreign = classText(emptyClass("Foreign"));
  put(QStringLiteral("studio/classes/one.json"), foreign);
  const auto saved = files->save();
  ASSERT_FALSE(saved);
  EXPECT_EQ(saved.error().code, ErrorCode::changedOnDisk);
  EXPECT_EQ(on(classFile), foreign);
  EXPECT_TRUE(files->isModified());
  ASSERT_TRUE(files->save(StudioFiles::Conflict::overwrite));
  EXPECT_NE(on(classFile), foreign);
}

TEST_F(StudioFolder, NoticesAForeignWriteButNotItsOwn) {
  QSignalSpy changed(files.get(), &StudioFiles::changedOnDisk);
  addStep();
  ASSERT_TRUE(files->save());
  EXPECT_FALSE(changed.wait(900));
  put(QStringLiteral("studio/classes/one.json"), classText(emptyClass("Foreign")));
  EXPECT_TRUE(changed.wait(5000));
}

TEST_F(StudioFolder, ABrokenFileLeavesTheOpenClassAsItIs) {
  put(QStringLiteral("studio/classes/broken.json"), "{");
  const auto opened = files->open(folder.filePath(QStringLiteral("studio/classes/broken.json")));
  ASSERT_FALSE(opened);
  EXPECT_EQ(opened.error().code, ErrorCode::notJson);
  EXPECT_EQ(open.document.plan().name, "One");
  EXPECT_EQ(files->classFile(), classFile);
}

TEST_F(StudioFolder, KeepsKeysOfOthersThroughASave) {
  std::string text = classText(emptyClass("One"));
  text.insert(text.find('{') + 1, "\"colourOfTheRoom\": \"green\",");
  put(QStringLiteral("studio/classes/one.json"), text);
  ASSERT_TRUE(files->open(classFile));
  addStep();
  ASSERT_TRUE(files->save());
  EXPECT_NE(on(classFile).find("colourOfTheRoom"), std::string::npos);
}

TEST_F(StudioFolder, UnsavedWorkSurvivesACrash) {
  addStep();
  people.add(QStringLiteral("Bea"), QStringLiteral("add"));
  files->autosaveNow();
  const ClassPlan lost = open.document.plan();
  EXPECT_TRUE(StudioFiles::findRecoveries(recovery).empty()); // its owner still runs

  // A crash leaves the folder with a lock that nobody holds: copy it as it stands.
  const QString kept = folder.filePath(QStringLiteral("after/one"));
  QDir().mkpath(kept + QStringLiteral("/people"));
  const QDir own(recovery);
  const QString name = own.entryList(QDir::Dirs | QDir::NoDotAndDotDot).value(0);
  for (const char* part : {"class.json", "origin.txt", "people/ada.json", "people/bea.json"})
    ASSERT_TRUE(QFile::copy(own.filePath(name + QLatin1Char('/') + QLatin1String(part)),
                            kept + QLatin1Char('/') + QLatin1String(part)));
  const auto found = StudioFiles::findRecoveries(folder.filePath(QStringLiteral("after")));
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found.front().origin, classFile);

  OpenClass next;
  PeopleDocument nextPeople;
  KnowledgeDocument nextKnowledge(sharedKnowledge());
  StudioFiles nextFiles(next.document, nextPeople, nextKnowledge, folder.filePath(QStringLiteral("after")));
  ASSERT_TRUE(nextFiles.recover(found.front()));
  EXPECT_EQ(next.document.plan(), lost);
  EXPECT_EQ(nextPeople.people().size(), 2U);
  EXPECT_TRUE(nextFiles.isModified());
  EXPECT_EQ(nextFiles.classFile(), classFile);
  ASSERT_TRUE(nextFiles.save());
  EXPECT_FALSE(nextFiles.isModified());
  EXPECT_TRUE(QFile::exists(folder.filePath(QStringLiteral("studio/people/bea.json"))));
  EXPECT_TRUE(StudioFiles::findRecoveries(folder.filePath(QStringLiteral("after"))).empty());
}

TEST_F(StudioFolder, SavingLetsTheRecoveryGo) {
  addStep();
  files->autosaveNow();
  EXPECT_EQ(QDir(recovery).entryList(QDir::Dirs | QDir::NoDotAndDotDot).size(), 1);
  ASSERT_TRUE(files->save());
  EXPECT_TRUE(QDir(recovery).entryList(QDir::Dirs | QDir::NoDotAndDotDot).isEmpty());
}

TEST_F(StudioFolder, AutosavesByItselfAfterAChange) {
  addStep();
  QElapsedTimer timer;
  timer.start();
  while (QDir(recovery).entryList(QDir::Dirs | QDir::NoDotAndDotDot).isEmpty() && timer.elapsed() < 8000)
    QCoreApplication::processEvents(QEventLoop::AllEvents, 50);
  EXPECT_FALSE(QDir(recovery).entryList(QDir::Dirs | QDir::NoDotAndDotDot).isEmpty());
}

TEST_F(StudioFolder, ANewClassIsSavedUnderAName) {
  files->startNew(emptyClass("Two"));
  EXPECT_TRUE(files->classFile().isEmpty());
  addStep();
  const QString other = folder.filePath(QStringLiteral("studio/classes/two.json"));
  ASSERT_TRUE(files->saveAs(other));
  EXPECT_EQ(files->classFile(), other);
  EXPECT_EQ(readClass(other.toStdString())->value, open.document.plan());
}

TEST_F(StudioFolder, ANewClassWithStepsIsNotSavedYet) {
  ClassPlan plan = emptyClass("Composed");
  files->startNew(plan);
  EXPECT_FALSE(files->isModified()) << "nothing would be lost";
  plan.sections[0].steps.push_back(stepOf(StepId{1}, *sharedKnowledge()->catalogue.find(MovementId{"hundred"})));
  files->startNew(plan);
  EXPECT_TRUE(files->isModified());
  ASSERT_TRUE(files->saveAs(folder.filePath(QStringLiteral("studio/classes/two.json"))));
  EXPECT_FALSE(files->isModified());
}

} // namespace
} // namespace matwright
