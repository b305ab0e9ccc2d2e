#include "tests/ui/document/StudioFolder.h"

#include <QSignalSpy>
#include <gmock/gmock.h>

namespace matwright {
namespace {

const QString kWhat = QStringLiteral("what");

struct StudioKnowledge : StudioFolder {
  QString file = folder.filePath(QStringLiteral("studio/knowledge.json"));

  MovementId addOwn() { return *knowledge.add(*knowledge.copyOf(MovementId{"hundred"}), kWhat); }
  OwnKnowledge onDisk() const { return readOwnKnowledge(file.toStdString(), test::realKnowledge())->value; }
};

TEST_F(StudioKnowledge, TheClassIsKnownByIt) {
  QSignalSpy changed(&open.document, &PlanDocument::knowledgeChanged);
  const MovementId id = addOwn();
  EXPECT_EQ(changed.count(), 1);
  ASSERT_NE(open.document.knowledge().catalogue.find(id), nullptr);
  open.add(id.value.c_str(), {0, 0});
  EXPECT_NE(open.document.evaluation().schedule.steps.front().movement, nullptr);
}

// The class keeps the place of a movement that is gone, and an older snapshot keeps what its evaluation points to.
TEST_F(StudioKnowledge, AMovementThatIsRemovedIsUnknownToTheClass) {
  const MovementId id = addOwn();
  open.add(id.value.c_str(), {0, 0});
  const Snapshot before = open.document.snapshot();
  ASSERT_TRUE(knowledge.remove(id, kWhat));
  EXPECT_EQ(open.movements(), std::vector{id.value});
  EXPECT_EQ(open.document.evaluation().schedule.steps.front().movement, nullptr);
  EXPECT_EQ(before.evaluation->schedule.steps.front().movement->id, id);
  EXPECT_EQ(before.knowledge->catalogue.find(id), before.evaluation->schedule.steps.front().movement);
}

TEST_F(StudioKnowledge, IsNoFileWhenThereIsNothingToKnow) {
  addStep();
  ASSERT_TRUE(files->save());
  EXPECT_FALSE(QFile::exists(file));
}

TEST_F(StudioKnowledge, IsSavedWithTheClass) {
  const MovementId id = addOwn();
  EXPECT_TRUE(files->isModified());
  ASSERT_TRUE(files->save());
  EXPECT_FALSE(files->isModified());
  EXPECT_EQ(onDisk(), knowledge.own());
  ASSERT_TRUE(knowledge.remove(id, kWhat));
  EXPECT_TRUE(files->isModified());
  ASSERT_TRUE(files->save());
  EXPECT_TRUE(onDisk().empty());
}

TEST_F(StudioKnowledge, IsOpenedWithTheClass) {
  addOwn();
  const OwnKnowledge saved = knowledge.own();
  ASSERT_TRUE(files->save());
  knowledge.load({});
  ASSERT_TRUE(files->open(classFile));
  EXPECT_EQ(knowledge.own(), saved);
  EXPECT_FALSE(files->isModified());
  EXPECT_TRUE(files->knowledgeErrors().empty());
  EXPECT_NE(open.document.knowledge().catalogue.find({"own-hundred"}), nullptr);
}

TEST_F(StudioKnowledge, OfAnotherStudioIsAnother) {
  addOwn();
  ASSERT_TRUE(files->save());
  QDir().mkpath(folder.filePath(QStringLiteral("other/classes")));
  put(QStringLiteral("other/classes/two.json"), classText(emptyClass("Two")));
  ASSERT_TRUE(files->open(folder.filePath(QStringLiteral("other/classes/two.json"))));
  EXPECT_TRUE(knowledge.own().empty());
  EXPECT_EQ(open.document.knowledge().catalogue.find({"own-hundred"}), nullptr);
}

TEST_F(StudioKnowledge, KeepsKeysOfOthersThroughASave) {
  put(QStringLiteral("studio/knowledge.json"),
      R"({"format": "matwright-knowledge", "version": 1, "colourOfTheRoom": "green"})");
  ASSERT_TRUE(files->open(classFile));
  addOwn();
  ASSERT_TRUE(files->save());
  EXPECT_THAT(on(file), testing::HasSubstr("colourOfTheRoom"));
}

TEST_F(StudioKnowledge, IsNotReplacedWhenSomebodyElseWroteIt) {
  addOwn();
  ASSERT_TRUE(files->save());
  const std::string foreign = ownKnowledgeText({});
  put(QStringLiteral("studio/knowledge.json"), foreign);
  ASSERT_TRUE(knowledge.remove(MovementId{"own-hundred"}, kWhat));
  const auto saved = files->save();
  ASSERT_FALSE(saved);
  EXPECT_EQ(saved.error().code, ErrorCode::changedOnDisk);
  EXPECT_EQ(on(file), foreign);
  EXPECT_TRUE(files->isModified());
  EXPECT_TRUE(files->save(StudioFiles::Conflict::overwrite));
  EXPECT_FALSE(files->isModified());
}

TEST_F(StudioKnowledge, IsNotReplacedWhenItAppearedMeanwhile) {
  const std::string foreign = ownKnowledgeText({{}, {}, {{{"own-a"}, "A", {}}}, {}, {}});
  put(QStringLiteral("studio/knowledge.json"), foreign);
  addOwn();
  EXPECT_EQ(files->save().error().code, ErrorCode::changedOnDisk);
  EXPECT_EQ(on(file), foreign);
}

TEST_F(StudioKnowledge, ThatCannotBeReadIsReportedAndLeftAsItIs) {
  const std::string broken = R"({"format": "matwright-knowledge", "version": 99})";
  put(QStringLiteral("studio/knowledge.json"), broken);
  ASSERT_TRUE(files->open(classFile));
  EXPECT_EQ(open.document.plan().name, "One");
  ASSERT_EQ(files->knowledgeErrors().size(), 1U);
  EXPECT_EQ(files->knowledgeErrors().front().code, ErrorCode::newerVersion);
  EXPECT_FALSE(knowledge.add(*knowledge.copyOf(MovementId{"hundred"}), kWhat));
  addStep();
  files->autosaveNow();
  EXPECT_TRUE(files->save());
  EXPECT_TRUE(files->save(StudioFiles::Conflict::overwrite));
  EXPECT_EQ(on(file), broken);
}

TEST_F(StudioKnowledge, UnsavedKnowledgeSurvivesACrash) {
  addOwn();
  files->autosaveNow();
  const QString kept = folder.filePath(QStringLiteral("after/one"));
  QDir().mkpath(kept + QStringLiteral("/people"));
  const QDir own(recovery);
  const QString name = own.entryList(QDir::Dirs | QDir::NoDotAndDotDot).value(0);
  for (const char* part : {"class.json", "origin.txt", "knowledge.json", "people/ada.json"})
    ASSERT_TRUE(QFile::copy(own.filePath(name + QLatin1Char('/') + QLatin1String(part)),
                            kept + QLatin1Char('/') + QLatin1String(part)));
  const auto found = StudioFiles::findRecoveries(folder.filePath(QStringLiteral("after")));
  ASSERT_EQ(found.size(), 1U);

  OpenClass next;
  PeopleDocument nextPeople;
  KnowledgeDocument nextKnowledge(sharedKnowledge());
  StudioFiles nextFiles(next.document, nextPeople, nextKnowledge, folder.filePath(QStringLiteral("after")));
  ASSERT_TRUE(nextFiles.recover(found.front()));
  EXPECT_EQ(nextKnowledge.own(), knowledge.own());
  EXPECT_TRUE(nextFiles.isModified());
  EXPECT_NE(next.document.knowledge().catalogue.find({"own-hundred"}), nullptr);
  ASSERT_TRUE(nextFiles.save());
  EXPECT_FALSE(nextFiles.isModified());
  EXPECT_EQ(onDisk(), knowledge.own());
}

TEST_F(StudioKnowledge, AFirstStudioTakesIt) {
  OpenClass fresh;
  PeopleDocument nobody;
  KnowledgeDocument own(sharedKnowledge());
  StudioFiles unsaved(fresh.document, nobody, own, folder.filePath(QStringLiteral("third")));
  unsaved.startNew(emptyClass("New"));
  ASSERT_TRUE(own.add(*own.copyOf(MovementId{"hundred"}), kWhat));
  QDir().mkpath(folder.filePath(QStringLiteral("new/classes")));
  ASSERT_TRUE(unsaved.saveAs(folder.filePath(QStringLiteral("new/classes/new.json"))));
  EXPECT_TRUE(QFile::exists(folder.filePath(QStringLiteral("new/knowledge.json"))));
}

} // namespace
} // namespace matwright
