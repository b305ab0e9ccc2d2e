#include "app/console/CheckReport.h"
#include "app/console/Commands.h"
#include "core/evaluate/Swaps.h"
#include "ui/text/CautionText.h"
#include "ui/text/SwapText.h"
#include "ui/text/Translations.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QLocale>
#include <charconv>
#include <cmath>
#include <iostream>
#include <sstream>

namespace matwright {
namespace {

double rounded(Seconds seconds) { return std::round(seconds.value() * 10) / 10; }

// The plural forms of English are a translation, which needs an application.
class English {
public:
  English() { loadTranslations(QLocale(QLocale::English)); }

private:
  int count_ = 1;
  char name_[14] = "matwright-cli";
  char* words_[2] = {name_, nullptr};
  QCoreApplication application_{count_, words_};
};

// Nothing, and it was complained of, when --step names none of the class.
const Step* stepWanted(const Arguments& arguments, const ClassPlan& plan) {
  const std::string words = arguments.value("--step").value_or("");
  std::int64_t id = 0;
  const auto [end, fault] = std::from_chars(words.data(), words.data() + words.size(), id);
  const bool number = fault == std::errc() && end == words.data() + words.size();
  const Step* step = number ? findStep(plan, StepId{id}) : nullptr;
  if (!step)
    std::cerr << "matwright-cli: --step: id of a step of the class expected"
              << (words.empty() ? "" : ", found " + words) << '\n';
  return step;
}

// One way to replace the step, with the class as it would be.
struct Replacement {
  const Swap* swap;
  Step step;
  LoadedClass loaded;
};

Replacement replacementOf(const LoadedClass& loaded, const Step& step, const Swap& swap) {
  Replacement replacement{&swap, swapped(step, swap), loaded};
  const Place place = *placeOf(loaded.plan, step.id);
  replacement.loaded.plan.sections[place.section].steps[place.index] = replacement.step;
  return replacement;
}

Tree treeOf(const Replacement& replacement, const Knowledge& knowledge, const LoadedClass& loaded,
            const Evaluation& evaluation) {
  const Swap& swap = *replacement.swap;
  Tree gone = Tree::list(), come = Tree::list(), props = Tree::list(), unprepared = Tree::list();
  for (const Caution& caution : swap.gone)
    gone.add(cautionTree(caution, knowledge, loaded, evaluation));
  for (const Caution& caution : swap.come)
    come.add(cautionTree(caution, knowledge, replacement.loaded, evaluation));
  swap.fetched.forEach([&](Prop prop) { props.add(std::string(word(prop))); });
  for (const Unprepared& each : swap.unprepared)
    unprepared.add(
        Tree::object().set("movement", each.movement->id.value).set("prerequisite", each.prerequisite->id.value));
  const Dose& dose = replacement.step.dose;
  Tree tree = Tree::object();
  tree.set("movement", swap.movement->id.value)
      .set("dose", Tree::object().set("amount", dose.amount).set("unit", std::string(word(dose.unit))))
      .set("likeness", std::round(swap.likeness * 100) / 100)
      .set("added", rounded(swap.added))
      .set("addedMoving", rounded(swap.addedMoving))
      .set("addedChanges", swap.addedChanges)
      .set("shifted", rounded(swap.shifted))
      .set("fetched", std::move(props))
      .set("unprepared", std::move(unprepared))
      .set("gone", std::move(gone))
      .set("come", std::move(come));
  if (swap.option)
    tree.set("option", swap.option->id.value);
  if (swap.left)
    tree.set("left", std::string(word(*swap.left)));
  return tree;
}

void print(std::ostream& out, const Replacement& replacement, const Movement* own, std::span<const Unprepared> byAll,
           const LoadedClass& loaded, const Evaluation& evaluation) {
  const Swap& swap = *replacement.swap;
  const auto line = [&](const QString& words) { out << "      " << words.toStdString() << '\n'; };
  out << swapName(swap).toStdString() << ", "
      << doseText(replacement.step.dose, swap.movement->sides, replacement.step.onlySide).toStdString() << '\n';
  line(likenessText(own, swap));
  line(disturbanceText(swap));
  for (const QString& words : unpreparedText(without(swap.unprepared, byAll)))
    line(words);
  for (const SwapLine& words : cautionLines(swap, replacement.step.id, evaluation, loaded.roster))
    line(words.words);
}

} // namespace

int replaceCommand(const Arguments& arguments) {
  const std::string& file = arguments.free.front();
  const auto knowledge = loadKnowledgeFor(file);
  if (!knowledge)
    return kBadInput;
  const auto people = arguments.values.find("--people");
  const auto loaded = loadClass(file, people == arguments.values.end() ? std::vector<std::string>{} : people->second);
  const Step* step = loaded ? stepWanted(arguments, loaded->plan) : nullptr;
  if (!step)
    return kBadInput;
  const English english;
  const Evaluation evaluation = evaluate(*knowledge, loaded->plan, loaded->roster, loaded->day);
  const std::vector<Swap> swaps = replacementsFor(*knowledge, loaded->plan, loaded->roster, loaded->day, step->id);
  Tree list = Tree::list();
  std::ostringstream words;
  words << "In place of " << movementName(*knowledge, step->movement).toStdString() << ", step " << step->id.value
        << (swaps.empty() ? ": nothing found that could stand here without a stronger caution.\n" : ", best first:\n");
  const Movement* own = knowledge->catalogue.find(step->movement);
  const std::vector<Unprepared> byAll = unpreparedByAll(swaps);
  for (const QString& lost : unpreparedText(byAll))
    words << "Whatever is put in: " << lost.toStdString() << ".\n";
  for (std::size_t i = 0; i < swaps.size(); ++i) {
    const Replacement replacement = replacementOf(*loaded, *step, swaps[i]);
    list.add(treeOf(replacement, *knowledge, *loaded, evaluation));
    words << (i < 9 ? "\n   " : "\n  ") << i + 1 << ". ";
    print(words, replacement, own, byAll, *loaded, evaluation);
  }
  words << '\n' << standingNotice().toStdString() << '\n';
  const Tree tree = Tree::object()
                        .set("format", "matwright-replace")
                        .set("version", 1)
                        .set("class", loaded->plan.name)
                        .set("day", isoDate(loaded->day))
                        .set("step", static_cast<double>(step->id.value))
                        .set("replacements", std::move(list))
                        .set("notice", standingNotice().toStdString());
  std::cout << (arguments.has("--json") ? tree.text() : words.str());
  return kFine;
}

} // namespace matwright
