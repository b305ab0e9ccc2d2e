#include "ui/text/SwapText.h"

#include "ui/text/CautionText.h"
#include "ui/text/MovementText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

QString tr(const char* text, int n = -1) { return QCoreApplication::translate("SwapText", text, nullptr, n); }

bool tells(Seconds seconds) { return std::abs(seconds.value()) >= 0.5; } // in whole seconds

void addChanges(int changes, QStringList& parts) {
  if (changes > 0)
    parts << tr("%n change(s) of position more", changes);
  else if (changes < 0)
    parts << tr("%n change(s) of position fewer", -changes);
}

void addFetched(PropSet props, QStringList& parts) {
  if (!props.empty())
    parts << tr("needs: %1").arg(listText(props));
}

QString nameOf(const Caution& caution, const Evaluation& evaluation, std::span<const Person> roster) {
  const auto whom = evaluation.whom(caution);
  const Person* person = whom ? findPerson(roster, *whom) : nullptr;
  return whom ? QString::fromStdString(person ? person->name : whom->value) : tr("everybody");
}

// "Rosa, Imre (2)", in the order in which they are named first.
QString whose(const std::vector<Caution>& cautions, Level level, const Evaluation& evaluation,
              std::span<const Person> roster) {
  std::vector<std::pair<QString, int>> counted;
  for (const Caution& each : cautions) {
    if (each.level != level)
      continue;
    const QString name = nameOf(each, evaluation, roster);
    const auto at = std::find_if(counted.begin(), counted.end(), [&](const auto& one) { return one.first == name; });
    if (at == counted.end())
      counted.emplace_back(name, 1);
    else
      ++at->second;
  }
  QStringList names;
  for (const auto& [name, times] : counted)
    names << (times == 1 ? name : QStringLiteral("%1 (%2)").arg(name).arg(times));
  return names.join(QStringLiteral(", "));
}

} // namespace

QString swapName(const Swap& swap) {
  const QString option = swap.option ? QString::fromStdString(swap.option->name) : QString();
  if (swap.sameMovement)
    return option.isEmpty() ? tr("As written") : option;
  const QString movement = QString::fromStdString(swap.movement->name);
  return option.isEmpty() ? movement : QStringLiteral("%1 (%2)").arg(movement, option);
}

QString swapText(const Swap& swap) {
  QStringList effects;
  effects << tr("%n caution(s) gone", static_cast<int>(swap.gone.size()));
  if (!swap.come.empty())
    effects << tr("%n new", static_cast<int>(swap.come.size()));
  if (swap.left)
    effects << tr("left: %1").arg(text(*swap.left));
  if (std::abs(swap.added.value()) >= 1)
    effects << signedClock(swap.added);
  addChanges(swap.addedChanges, effects);
  addFetched(swap.fetched, effects);
  return QStringLiteral("%1 \u2013 %2").arg(swapName(swap), effects.join(QStringLiteral(", ")));
}

QString disturbanceText(const Swap& swap) {
  QStringList parts{tells(swap.added) ? tr("Length %1").arg(signedClock(swap.added)) : tr("Length as it is")};
  addChanges(swap.addedChanges, parts);
  if (tells(swap.addedMoving))
    parts << tr("moving %1").arg(signedClock(swap.addedMoving));
  addFetched(swap.fetched, parts);
  return parts.join(QStringLiteral(", "));
}

QString likenessText(const Movement* own, const Swap& swap) {
  const Movement& other = *swap.movement;
  QStringList shared;
  if (own) {
    for (const Region region : own->regions)
      if (std::find(other.regions.begin(), other.regions.end(), region) != other.regions.end())
        shared << text(region);
    if (!shared.isEmpty() && own->spine.front() == other.spine.front())
      shared << shortText(own->spine.front());
  }
  if (shared.isEmpty())
    return tr("Works elsewhere: %1").arg(listText(other.regions));
  return (swap.likeness >= kLike ? tr("Like it: %1") : tr("A little like it: %1"))
      .arg(shared.join(QStringLiteral(", ")));
}

QStringList unpreparedText(std::span<const Unprepared> unprepared) {
  QStringList lines;
  for (std::size_t i = 0; i < unprepared.size(); ++i) {
    const auto same = [&](const Unprepared& each) { return each.prerequisite == unprepared[i].prerequisite; };
    if (std::any_of(unprepared.begin(), unprepared.begin() + static_cast<std::ptrdiff_t>(i), same))
      continue; // said already
    QStringList names;
    for (const Unprepared& each : unprepared)
      if (same(each))
        names << QString::fromStdString(each.movement->name);
    lines << tr("%1 would not come before %2, which it prepares")
                 .arg(QString::fromStdString(unprepared[i].prerequisite->name), names.join(QStringLiteral(", ")));
  }
  return lines;
}

std::vector<Unprepared> unpreparedByAll(std::span<const Swap> swaps) {
  std::vector<Unprepared> all = swaps.empty() ? std::vector<Unprepared>{} : swaps.front().unprepared;
  for (const Swap& swap : swaps)
    all = without(all, without(all, swap.unprepared));
  return all;
}

std::vector<Unprepared> without(std::vector<Unprepared> all, std::span<const Unprepared> others) {
  std::erase_if(all,
                [&](const Unprepared& each) { return std::find(others.begin(), others.end(), each) != others.end(); });
  return all;
}

std::vector<SwapLine> cautionLines(const Swap& swap, StepId step, const Evaluation& evaluation,
                                   std::span<const Person> roster) {
  std::vector<SwapLine> lines;
  const auto add = [&](const std::vector<Caution>& cautions, const char* sentence) {
    for (std::size_t i = kWordCount<Level>; i-- > 0;) {
      const auto level = static_cast<Level>(i);
      if (const QString names = whose(cautions, level, evaluation, roster); !names.isEmpty())
        lines.push_back({tr(sentence).arg(text(level), names), level});
    }
  };
  add(swap.gone, QT_TRANSLATE_NOOP("SwapText", "Takes away %1: %2"));
  add(swap.come, QT_TRANSLATE_NOOP("SwapText", "Brings %1: %2"));
  if (lines.empty())
    lines.push_back({tr("Leaves the cautions as they are"), {}});
  const bool said = std::any_of(swap.come.begin(), swap.come.end(),
                                [&](const Caution& each) { return each.step == step && each.level == swap.left; });
  if (swap.left && !said)
    lines.push_back({tr("Left here: %1").arg(text(*swap.left)), swap.left});
  return lines;
}

QStringList cautionDetails(const Swap& swap, const Knowledge& knowledge, const ClassPlan& before,
                           const ClassPlan& after, const Evaluation& evaluation, std::span<const Person> roster) {
  QStringList lines;
  const auto add = [&](const std::vector<Caution>& cautions, const ClassPlan& plan, const char* sentence) {
    for (const Caution& each : cautions) {
      const CautionWords words = wordsFor(each, knowledge, plan, evaluation, roster);
      lines << tr(sentence).arg(words.headline, words.what);
    }
  };
  add(swap.gone, before, QT_TRANSLATE_NOOP("SwapText", "Gone: %1: %2"));
  add(swap.come, after, QT_TRANSLATE_NOOP("SwapText", "New: %1: %2"));
  return lines;
}

} // namespace matwright
