#pragma once

#include "core/people/Person.h"

#include <QObject>
#include <QUndoStack>
#include <memory>
#include <vector>

namespace matwright {

// The one owner of the people on file, with an undo list of its own.
class PeopleDocument : public QObject {
  Q_OBJECT

public:
  explicit PeopleDocument(QObject* parent = nullptr);

  const std::vector<Person>& people() const { return *people_; }
  const Person* find(const PersonId& id) const; // null when there is none

  // Another list altogether; the undo list starts anew.
  void load(std::vector<Person> people);

  // A new person gets an id of its own, made from the name. Returns it.
  PersonId add(const QString& name, const QString& what);
  void remove(const PersonId& id, const QString& what);
  // Puts `person` in the place of the one with the same id; a change to nothing leaves no entry. For `mergeKey` see
  // PlanDocument::perform.
  void change(const Person& person, const QString& what, const QString& mergeKey = {});
  void sealGesture() { ++gesture_; }

  QUndoStack* undoStack() { return &undoStack_; }
  const QUndoStack* undoStack() const { return &undoStack_; }

Q_SIGNALS:
  void changed();

private:
  using List = std::shared_ptr<const std::vector<Person>>;
  void push(std::vector<Person> after, const QString& what, const QString& mergeKey = {});
  void show(List people);

  List people_ = std::make_shared<const std::vector<Person>>();
  QUndoStack undoStack_;
  quint64 gesture_ = 0;
};

} // namespace matwright
