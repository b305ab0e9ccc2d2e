#pragma once

#include "core/knowledge/Knowledge.h"
#include "core/plan/ClassWishes.h"
#include "ui/compose/RecentClasses.h"
#include "ui/compose/TickFlow.h"

#include <QWidget>
#include <map>

class QCheckBox;
class QDoubleSpinBox;
class QLabel;
class QLineEdit;
class QSpinBox;
class QButtonGroup;

namespace matwright {

class ArcChoice;
class DateField;
class FormPart;
class OrderedList;
class SectionWishes;
class TickList;

// What a teacher wishes of a class, as a form.
class WishesForm : public QWidget {
  Q_OBJECT

public:
  explicit WishesForm(QWidget* parent = nullptr);

  // What can be chosen from. What is wished for and not among it keeps a line of its own.
  void setKnowledge(const Knowledge& knowledge);
  void setPeople(const Knowledge& knowledge, const std::vector<Person>& people);
  void setClasses(std::vector<ClassOnFile> classes);
  void setCompleting(bool completing); // the class is there already: no name, no date, and its sections stay

  ClassWishes wishes() const;
  void show(const ClassWishes& wishes); // emits nothing

  // What is easily put right.
  void giveUpMovement(const MovementId& movement);        // neither included nor left out
  void letLengthsBe();                                    // of the sections
  void setSeed(std::uint64_t seed) { base_.seed = seed; } // emits nothing
  std::uint64_t seed() const { return base_.seed; }

Q_SIGNALS:
  void changed(); // by the user

private:
  QWidget* makeClass();
  QWidget* makeChallenge();
  QWidget* makeFocus();
  QWidget* makePeople();
  QWidget* makeProps();
  QWidget* makeMovements();
  QWidget* makeRecent();
  QWidget* makeEffort();
  QWidget* makePace();
  void connectFields();
  void tell();      // changed by the user
  void summarise(); // beside the titles of what is folded
  void showChallenge();
  void showPeople();
  void showClasses();

  ClassWishes base_; // as shown last: what no field shows is kept
  std::vector<TickWord> stockOfPeople_;
  std::vector<ClassOnFile> classes_;
  std::map<QString, RecentClass> recents_; // by key of the list
  bool showing_ = false;

  QWidget* named_; // fields that a class has already
  QLineEdit* name_;
  DateField* date_;
  QSpinBox* length_;
  QButtonGroup* challenge_;
  QLabel* aboutChallenge_;
  SectionWishes* sections_;
  TickFlow *regions_, *spine_, *skills_, *props_;
  TickList *people_, *recent_;
  QLabel *noPeople_, *noRecent_;
  QCheckBox *wall_, *recentIsKnown_, *fewerRises_;
  OrderedList *include_, *leaveOut_, *known_;
  ArcChoice* arc_;
  QDoubleSpinBox* mobility_;
  QSpinBox *words_, *settle_;
  FormPart *sectionsPart_, *focusPart_, *peoplePart_, *propsPart_, *movementsPart_, *recentPart_, *effortPart_,
      *pacePart_;
};

} // namespace matwright
