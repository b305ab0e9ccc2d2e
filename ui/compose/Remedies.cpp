#include "ui/compose/Remedies.h"

#include "ui/text/MovementText.h"
#include "ui/text/PeopleText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Remedies", text); }

class Remedying {
public:
  Remedying(const Obstacle& obstacle, const Knowledge& knowledge, std::span<const Person> roster,
            const ClassWishes& wishes)
      : obstacle_(obstacle), knowledge_(knowledge), roster_(roster), wishes_(wishes) {}

  std::vector<Remedy> run() {
    switch (obstacle_.kind) {
    case ObstacleKind::unknownMovement:
    case ObstacleKind::cautioned:
    case ObstacleKind::noWayTo:
    case ObstacleKind::circular:
      giveUp();
      break;
    case ObstacleKind::bothWays:
    case ObstacleKind::leftOut:
      doNotLeaveOut();
      giveUp();
      break;
    case ObstacleKind::tooHard:
      makeHarder();
      giveUp();
      break;
    case ObstacleKind::propMissing:
      bring();
      giveUp();
      break;
    case ObstacleKind::personKeptOut:
      withoutPerson();
      break;
    case ObstacleKind::tooMuch:
      setLength(std::ceil(obstacle_.least.minutes()));
      break;
    case ObstacleKind::tooLittle:
      setLength(std::floor(obstacle_.most.minutes()));
      break;
    case ObstacleKind::keptTooLong:
      letLengthsBe();
      break;
    case ObstacleKind::onlyWithout:
      without();
      break;
    }
    return std::move(remedies_);
  }

private:
  void add(const QString& words, std::function<void(ClassWishes&)> apply) {
    remedies_.push_back({words, std::move(apply)});
  }

  // Of what is only needed, the one that it is needed for.
  void giveUp() {
    const MovementId wished = obstacle_.neededFor.empty() ? obstacle_.movement : obstacle_.neededFor;
    if (std::find(wishes_.include.begin(), wishes_.include.end(), wished) != wishes_.include.end())
      add(tr("Do without %1").arg(movementName(knowledge_, wished)),
          [wished](ClassWishes& wishes) { std::erase(wishes.include, wished); });
  }

  void doNotLeaveOut() {
    add(tr("Do not leave out %1").arg(movementName(knowledge_, obstacle_.movement)),
        [movement = obstacle_.movement](ClassWishes& wishes) { std::erase(wishes.leaveOut, movement); });
  }

  void makeHarder() {
    if (wishes_.challenge == Challenge::strong)
      return;
    const bool gentle = wishes_.challenge == Challenge::gentle;
    add(gentle ? tr("Make the class a middle one") : tr("Make the class a strong one"),
        [gentle](ClassWishes& wishes) { wishes.challenge = gentle ? Challenge::middle : Challenge::strong; });
  }

  void bring() {
    if (!obstacle_.prop)
      return add(tr("There is a free wall"), [](ClassWishes& wishes) { wishes.wall = true; });
    add(tr("It is at hand: %1").arg(text(*obstacle_.prop)),
        [prop = *obstacle_.prop](ClassWishes& wishes) { wishes.props.insert(prop); });
  }

  void withoutPerson() {
    if (obstacle_.person)
      add(tr("Compose for the others, without %1").arg(shortName(*obstacle_.person, roster_)),
          [person = *obstacle_.person](ClassWishes& wishes) { std::erase(wishes.people, person); });
  }

  // Sections with lengths stand to one another as before.
  void setLength(double length) {
    const Seconds wanted = minutes(length);
    if (wanted < ClassPlan::kShortestTarget || wanted > ClassPlan::kLongestTarget)
      return;
    add(tr("Make the class %1 long").arg(wholeMinutes(wanted)), [wanted](ClassWishes& wishes) {
      for (WishedSection& section : wishes.sections)
        section.length = section.length * (wanted / wishes.length);
      wishes.length = wanted;
    });
  }

  void letLengthsBe() {
    add(tr("Let the sections be as long as they come out"), [](ClassWishes& wishes) {
      for (WishedSection& section : wishes.sections)
        section.length = {};
    });
  }

  void without() {
    switch (obstacle_.wish) {
    case Wish::sectionLengths:
      return letLengthsBe();
    case Wish::challenge:
      return makeHarder();
    case Wish::include:
      return giveUp();
    case Wish::leaveOut:
      return add(tr("Leave nothing out"), [](ClassWishes& wishes) { wishes.leaveOut.clear(); });
    case Wish::wall:
      return add(tr("There is a free wall"), [](ClassWishes& wishes) { wishes.wall = true; });
    case Wish::length:
    case Wish::props:
    case Wish::people:
    case Wish::prerequisites:
    case Wish::kept:
      return;
    }
  }

  const Obstacle& obstacle_;
  const Knowledge& knowledge_;
  std::span<const Person> roster_;
  const ClassWishes& wishes_;
  std::vector<Remedy> remedies_;
};

} // namespace

std::vector<Remedy> remediesFor(const Obstacle& obstacle, const Knowledge& knowledge, std::span<const Person> roster,
                                const ClassWishes& wishes) {
  return Remedying(obstacle, knowledge, roster, wishes).run();
}

} // namespace matwright
