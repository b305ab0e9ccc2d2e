// A studio on disk with one class and one person, opened.
#pragma once

#include "tests/support/Documents.h"
#include "ui/document/StudioFiles.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

namespace matwright {

struct StudioFolder : testing::Test {
  QTemporaryDir folder;
  QString classFile = folder.filePath(QStringLiteral("studio/classes/one.json"));
  QString recovery = folder.filePath(QStringLiteral("recovery"));
  OpenClass open;
  PeopleDocument people;
  KnowledgeDocument knowledge{sharedKnowledge()};
  std::unique_ptr<StudioFiles> files;

  void SetUp() override {
    QDir().mkpath(folder.filePath(QStringLiteral("studio/classes")));
    QDir().mkpath(folder.filePath(QStringLiteral("studio/people")));
    put(QStringLiteral("studio/classes/one.json"), classText(emptyClass("One")));
    Person ada;
    ada.id.value = "ada";
    ada.name = "Ada";
    ada.initials = "A.";
    put(QStringLiteral("studio/people/ada.json"), personText(ada));
    files = std::make_unique<StudioFiles>(open.document, people, knowledge, recovery);
    ASSERT_TRUE(files->open(classFile));
  }
  void put(const QString& name, const std::string& text) {
    QFile file(folder.filePath(name));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
    file.write(QByteArray::fromStdString(text));
  }
  std::string on(const QString& file) const {
    QFile read(file);
    return read.open(QIODevice::ReadOnly) ? read.readAll().toStdString() : std::string();
  }
  void addStep() { open.add("hundred", {0, 0}); }
};

} // namespace matwright
