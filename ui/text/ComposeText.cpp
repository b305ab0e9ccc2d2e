#include "ui/text/ComposeText.h"

#include "ui/text/MovementText.h"
#include "ui/text/PeopleText.h"
#include "ui/text/TidyText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("ComposeText", text); }

template <class Enum, std::size_t Count> QString listed(Enum value, const char* const (&texts)[Count]) {
  static_assert(Count == kWordCount<Enum>);
  return tr(texts[static_cast<std::size_t>(value)]);
}

QString nameOf(const MovementId& id, const ComposeNames& names) { return movementName(names.knowledge, id); }

// "Roll-up", or "Roll-up (needed before Teaser)".
QString subject(const Obstacle& obstacle, const ComposeNames& names) {
  const QString name = nameOf(obstacle.movement, names);
  return obstacle.neededFor.empty() ? name : tr("%1 (needed before %2)").arg(name, nameOf(obstacle.neededFor, names));
}

QString whyText(const Rule* rule) { return rule ? QString::fromStdString(rule->why) : QString(); }

QString cautionedText(const Obstacle& obstacle, const ComposeNames& names) {
  const QString what = subject(obstacle, names);
  return (obstacle.person ? tr("%1 is to leave out %2, in every option that is left. %3")
                                .arg(shortName(*obstacle.person, names.roster), what)
                          : tr("Everybody is to leave out %1, in every option that is left. %2").arg(what))
      .arg(whyText(obstacle.rule))
      .trimmed();
}

QString keptOutText(const Obstacle& obstacle, const ComposeNames& names) {
  return (obstacle.person ? tr("%1 is to leave out the whole class. %2").arg(shortName(*obstacle.person, names.roster))
                          : tr("Everybody is to leave out the whole class. %1"))
      .arg(whyText(obstacle.rule))
      .trimmed();
}

QString propText(const Obstacle& obstacle, const ComposeNames& names) {
  const QString what = subject(obstacle, names);
  return obstacle.prop ? tr("%1 needs what is not at hand: %2.").arg(what, text(*obstacle.prop))
                       : tr("%1 needs a free wall.").arg(what);
}

QString keptText(const Obstacle& obstacle, const ComposeNames& names) {
  const std::size_t section = obstacle.section.value_or(0);
  const std::string name = section < names.wishes.sections.size() ? names.wishes.sections[section].name : "";
  return tr("What stays in the section %1 takes %2 at the least; %3 are wished for.")
      .arg(name.empty() ? QString::number(section + 1) : QString::fromStdString(name), clock(obstacle.least),
           clock(obstacle.wished));
}

QString onlyWithoutText(const Obstacle& obstacle, const ComposeNames& names) {
  switch (obstacle.wish) {
  case Wish::length:
    return tr("No class was found of this length; one of another length was.");
  case Wish::sectionLengths:
    return tr("No class was found with these lengths of sections; one was that lets them come out as they will.");
  case Wish::challenge:
    return tr("No class was found that is %1; a strong one was.").arg(text(names.wishes.challenge));
  case Wish::include:
    return tr("No class was found with %1 in it; one without it was.").arg(nameOf(obstacle.movement, names));
  case Wish::leaveOut:
    return tr("No class was found without all that is to be left out; one that may have it was.");
  case Wish::props:
    return tr("No class was found with what is at hand; one with all props was.");
  case Wish::wall:
    return tr("No class was found without a free wall; one with a wall was.");
  case Wish::people:
    return tr("No class was found for the people who come; one for nobody in particular was, which may be wrong for "
              "them.");
  case Wish::prerequisites:
    return tr("No class was found with all that its movements need before them; one for people who know all of that "
              "was.");
  case Wish::kept:
    return tr("No class was found with what stays in it; one without that was.");
  }
  return {};
}

QString needOf(const Shortfall& shortfall) {
  return shortfall.region  ? text(*shortfall.region)
         : shortfall.spine ? text(*shortfall.spine)
         : shortfall.skill ? text(*shortfall.skill)
                           : QString();
}

// The parts in which the other one is worse, or better, by half a second or more.
QString sharesText(const Reasons& reasons, bool worse) {
  QStringList words;
  for (const ReasonShare& share : reasons.shares) {
    const Seconds by = worse ? share.seconds : -share.seconds;
    if (by.value() >= 0.5)
      words << text(share.part) + QLatin1Char(' ') + secondsText(by);
  }
  return words.join(QStringLiteral(", "));
}

} // namespace

QString text(Challenge challenge) {
  return listed(challenge, {QT_TRANSLATE_NOOP("ComposeText", "gentle"), QT_TRANSLATE_NOOP("ComposeText", "middle"),
                            QT_TRANSLATE_NOOP("ComposeText", "strong")});
}

QString text(ComposePart part) {
  return listed(part, {QT_TRANSLATE_NOOP("ComposeText", "moving about"),
                       QT_TRANSLATE_NOOP("ComposeText", "bending without a counter-movement"),
                       QT_TRANSLATE_NOOP("ComposeText", "the same region twice in a row"),
                       QT_TRANSLATE_NOOP("ComposeText", "rises from the floor"),
                       QT_TRANSLATE_NOOP("ComposeText", "effort off the arc"),
                       QT_TRANSLATE_NOOP("ComposeText", "end range before it is warm"),
                       QT_TRANSLATE_NOOP("ComposeText", "short of the focus"),
                       QT_TRANSLATE_NOOP("ComposeText", "short of a round class"),
                       QT_TRANSLATE_NOOP("ComposeText", "the same as in recent classes"),
                       QT_TRANSLATE_NOOP("ComposeText", "cautions"),
                       QT_TRANSLATE_NOOP("ComposeText", "other options and doses than usual"),
                       QT_TRANSLATE_NOOP("ComposeText", "fetching props")});
}

QString text(ComposeStatus status) {
  switch (status) {
  case ComposeStatus::composed:
    return tr("Composed");
  case ComposeStatus::impossible:
    return tr("No class can meet these wishes");
  case ComposeStatus::notFound:
    return tr("No class was found that meets these wishes");
  case ComposeStatus::cancelled:
    return tr("Stopped before a class was found");
  }
  return {};
}

QString text(WishesFault fault) {
  switch (fault) {
  case WishesFault::lengthOutOfRange:
    return tr("A class takes from %1 to %2.")
        .arg(wholeMinutes(ClassPlan::kShortestTarget), wholeMinutes(ClassPlan::kLongestTarget));
  case WishesFault::noSection:
    return tr("A class has from 1 to %1 sections.").arg(ClassPlan::kMostSections);
  case WishesFault::sectionLengths:
    return tr("Either all sections have a length and take as long as the class together, or none has one.");
  case WishesFault::nameTooLong:
    return tr("A name is too long.");
  case WishesFault::paceOutOfRange:
    return tr("The pace is out of its bounds.");
  case WishesFault::arcMisshapen:
    return tr("The arc of effort needs from 1 to %1 points in their order.").arg(ClassWishes::kMostArcPoints);
  case WishesFault::tooManyNamed:
    return tr("Too many are named: at most %1 people, %2 movements in a list, and %3 recent classes.")
        .arg(ClassPlan::kMostPeople)
        .arg(ClassWishes::kMostNamed)
        .arg(ClassWishes::kMostRecent);
  case WishesFault::otherSections:
    return tr("The class that is to be filled up has not as many sections as are wished for.");
  }
  return {};
}

QString text(Wish wish) {
  return listed(wish,
                {QT_TRANSLATE_NOOP("ComposeText", "the length"),
                 QT_TRANSLATE_NOOP("ComposeText", "the lengths of the sections"),
                 QT_TRANSLATE_NOOP("ComposeText", "how hard it may be"),
                 QT_TRANSLATE_NOOP("ComposeText", "what is to be included"),
                 QT_TRANSLATE_NOOP("ComposeText", "what is to be left out"),
                 QT_TRANSLATE_NOOP("ComposeText", "the props at hand"), QT_TRANSLATE_NOOP("ComposeText", "the wall"),
                 QT_TRANSLATE_NOOP("ComposeText", "the people who come"),
                 QT_TRANSLATE_NOOP("ComposeText", "what movements need before them"),
                 QT_TRANSLATE_NOOP("ComposeText", "what stays in the class")});
}

QString text(const Obstacle& obstacle, const ComposeNames& names) {
  switch (obstacle.kind) {
  case ObstacleKind::unknownMovement:
    return tr("%1 is to be included, and is not in the catalogue.").arg(nameOf(obstacle.movement, names));
  case ObstacleKind::bothWays:
    return tr("%1 is to be included and to be left out.").arg(nameOf(obstacle.movement, names));
  case ObstacleKind::leftOut:
    return tr("%1 is to be left out, and is needed before %2.")
        .arg(nameOf(obstacle.movement, names), nameOf(obstacle.neededFor, names));
  case ObstacleKind::tooHard:
    return tr("%1 is too hard in every option for a class that is %2.")
        .arg(subject(obstacle, names), text(names.wishes.challenge));
  case ObstacleKind::propMissing:
    return propText(obstacle, names);
  case ObstacleKind::cautioned:
    return cautionedText(obstacle, names);
  case ObstacleKind::noWayTo:
    return tr("There is no way to %1 that these people may go.").arg(subject(obstacle, names));
  case ObstacleKind::circular:
    return tr("%1 is needed before itself.").arg(subject(obstacle, names));
  case ObstacleKind::personKeptOut:
    return keptOutText(obstacle, names);
  case ObstacleKind::tooMuch:
    return tr("What has to be in the class takes %1 at the least; %2 are wished for.")
        .arg(clock(obstacle.least), clock(obstacle.wished));
  case ObstacleKind::tooLittle:
    return tr("All that may be chosen takes %1 together; %2 are wished for.")
        .arg(clock(obstacle.most), clock(obstacle.wished));
  case ObstacleKind::keptTooLong:
    return keptText(obstacle, names);
  case ObstacleKind::onlyWithout:
    return onlyWithoutText(obstacle, names);
  }
  return {};
}

QString text(const Shortfall& shortfall) {
  return tr("%1: %2 of %3").arg(withCapital(needOf(shortfall)), clock(shortfall.given), clock(shortfall.wished));
}

QString text(const ComposeCost& cost) {
  std::vector<ComposePart> parts;
  for (std::size_t i = 0; i < kWordCount<ComposePart>; ++i)
    if (cost.parts[i].value() >= 0.5)
      parts.push_back(static_cast<ComposePart>(i));
  std::stable_sort(parts.begin(), parts.end(),
                   [&](ComposePart one, ComposePart other) { return cost.of(one) > cost.of(other); });
  QStringList words;
  for (const ComposePart part : parts)
    words << text(part) + QLatin1Char(' ') + clock(cost.of(part));
  return withCapital(words.join(QStringLiteral(", ")));
}

QString comparedText(const Reasons& reasons, const ComposeNames& names) {
  if (!reasons.instead)
    return tr("nothing else could be in its place");
  QString other = nameOf(reasons.instead->id, names);
  if (reasons.option)
    other = QStringLiteral("%1 (%2)").arg(other, QString::fromStdString(reasons.option->name));
  const QString worse = sharesText(reasons, true), better = sharesText(reasons, false);
  const QString parts = better.isEmpty()  ? worse
                        : worse.isEmpty() ? tr("better: %1").arg(better)
                                          : tr("%1; better: %2").arg(worse, better);
  const QString how = std::abs(reasons.worse.value()) < 0.5 ? tr("%1 in its place would be as good").arg(other)
                      : reasons.worse > Seconds{}
                          ? tr("%1 in its place would be worse by %2").arg(other, secondsText(reasons.worse))
                          : tr("%1 in its place would be better by %2").arg(other, secondsText(-reasons.worse));
  return parts.isEmpty() ? how : QStringLiteral("%1 (%2)").arg(how, parts);
}

QString text(const Reasons& reasons, const ComposeNames& names) {
  if (reasons.kept)
    return tr("it was there");
  QStringList words;
  if (reasons.included)
    words << tr("wished for");
  if (!reasons.neededBy.empty())
    words << tr("needed before %1").arg(listText(names.knowledge, reasons.neededBy));
  words << comparedText(reasons, names);
  return words.join(QStringLiteral("; "));
}

void nameWhatHasNone(ClassPlan& plan) {
  if (plan.name.empty())
    plan.name = tr("Composed class").toStdString();
  for (std::size_t i = 0; i < plan.sections.size(); ++i)
    if (plan.sections[i].name.empty())
      plan.sections[i].name = tr("Section %1").arg(i + 1).toStdString();
}

} // namespace matwright
