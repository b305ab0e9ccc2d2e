#include "app/console/Commands.h"
#include "app/console/Loading.h"
#include "app/console/SearchLimits.h"
#include "core/store/Files.h"
#include "core/store/Tree.h"
#include "core/tidy/Tidy.h"
#include "ui/text/CautionText.h"
#include "ui/text/TidyText.h"
#include "ui/text/VocabularyText.h"

#include <charconv>
#include <cmath>
#include <iostream>

namespace matwright {
namespace {

double rounded(Seconds seconds) { return std::round(seconds.value() * 10) / 10; }

const char* word(TidyStatus status) {
  constexpr const char* words[] = {"shortest", "nothing-to-do", "bounded", "cancelled"};
  return words[static_cast<std::size_t>(status)];
}

const char* word(TidyReason reason) {
  constexpr const char* words[] = {"shorter-way", "prerequisite", "counter-movement", "other-region",
                                   "wished-arc",  "fewer-rises",  "with-others"};
  return words[static_cast<std::size_t>(reason)];
}

// Nothing, and it was complained of, when --section or --pin names none. Sections are counted from 1, as people do.
std::optional<TidyRequest> requestOf(const Arguments& arguments) {
  TidyRequest request;
  const auto number = [](const std::string& text) {
    std::int64_t value = 0;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), value);
    return fault == std::errc() && end == text.data() + text.size() ? value : 0;
  };
  if (const auto section = arguments.value("--section")) {
    const std::int64_t counted = number(*section);
    if (counted < 1) {
      std::cerr << "matwright-cli: --section: number from 1 expected, found " << *section << '\n';
      return std::nullopt;
    }
    request.section = static_cast<std::size_t>(counted - 1);
  }
  if (const auto pins = arguments.values.find("--pin"); pins != arguments.values.end())
    for (const std::string& pin : pins->second)
      request.pinned.push_back(StepId{number(pin)});
  request.wishes = {arguments.has("--counter-movement"), arguments.has("--other-region"), arguments.has("--wished-arc"),
                    arguments.has("--fewer-rises")};
  return request;
}

Tree costTree(const TidyCost& cost) {
  return Tree::object()
      .set("moving", rounded(cost.moving))
      .set("changes", cost.changes)
      .set("wished", rounded(cost.wished))
      .set("total", rounded(cost.total()));
}

Tree placeTree(const Place& place) {
  return Tree::object().set("section", static_cast<int>(place.section)).set("index", static_cast<int>(place.index));
}

Tree levelTree(const LevelCounts& counts) {
  Tree tree = Tree::object();
  for (std::size_t i = 0; i < counts.size(); ++i)
    tree.set(word(static_cast<Level>(i)), counts[i]);
  return tree;
}

Tree treeOf(const TidyResult& result) {
  Tree moves = Tree::list(), order = Tree::list();
  for (const TidyMove& move : result.moves) {
    Tree gains = Tree::list();
    for (const TidyGain& gain : move.gains)
      gains.add(Tree::object().set("reason", word(gain.reason)).set("seconds", rounded(gain.seconds)));
    moves.add(Tree::object()
                  .set("step", static_cast<double>(move.step.value))
                  .set("from", placeTree(move.from))
                  .set("to", placeTree(move.to))
                  .set("gains", std::move(gains)));
  }
  forEachStep(result.plan, [&](const Step& step) { order.add(static_cast<double>(step.id.value)); });
  return Tree::object()
      .set("format", "matwright-tidy")
      .set("version", 1)
      .set("class", result.plan.name)
      .set("status", word(result.status))
      .set("before", costTree(result.before))
      .set("after", costTree(result.after))
      .set("lower", rounded(result.lower))
      .set("nodes", static_cast<double>(result.nodes))
      .set("order", std::move(order))
      .set("moves", std::move(moves))
      .set("cautionsGone", levelTree(result.gone))
      .set("cautionsCome", levelTree(result.come))
      .set("notice", standingNotice().toStdString());
}

std::string textOf(const Knowledge& knowledge, const TidyResult& result, const TidyWishes& wishes) {
  QString out = result.plan.name.empty() ? QStringLiteral("Untitled class") : QString::fromStdString(result.plan.name);
  out += QStringLiteral(": %1\n").arg(outcomeText(result, wishes));
  out += QStringLiteral("  before %1\n").arg(costText(result.before));
  out += QStringLiteral("  after  %1\n").arg(costText(result.after));
  for (const TidyMove& move : result.moves)
    out += QStringLiteral("  %1: %2: %3\n")
               .arg(movementName(knowledge, findStep(result.plan, move.step)->movement),
                    moveText(knowledge, result, move), gainsText(move));
  out += QStringLiteral("  %1\n").arg(broughtText(result));
  if (const QString taken = takenText(result); !taken.isEmpty())
    out += QStringLiteral("  %1\n").arg(taken);
  out += QStringLiteral("\n%1\n").arg(standingNotice());
  return out.replace(QChar::Nbsp, QLatin1Char(' ')).toStdString();
}

} // namespace

int tidyCommand(const Arguments& arguments) {
  const std::string& file = arguments.free.front();
  const auto request = requestOf(arguments);
  const auto limits = searchLimits(arguments, "--nodes", TidyLimits{}.nodes);
  const auto knowledge = request && limits ? loadKnowledgeFor(file) : std::nullopt;
  if (!knowledge)
    return kBadInput;
  const auto people = arguments.values.find("--people");
  const auto loaded = loadClass(file, people == arguments.values.end() ? std::vector<std::string>{} : people->second);
  if (!loaded)
    return kBadInput;
  const auto result =
      tidied(*knowledge, loaded->plan, loaded->roster, loaded->day, *request, {limits->count, limits->stop(), {}});
  if (!result) {
    std::cerr << "matwright-cli: "
              << (result.error() == Refusal::noSuchSection ? "--section: the class has no such section\n"
                                                           : "--pin: the class has no such step\n");
    return kBadInput;
  }
  if (const auto out = arguments.value("-o")) {
    auto stored = readClass(file); // with the people it has, whoever came on the command line
    if (!stored) {
      complain(stored.error());
      return kBadInput;
    }
    stored->value.sections = result->plan.sections;
    if (const auto written = writeFile(*out, classText(stored->value, stored->kept)); !written) {
      complain(written.error());
      return kBadInput;
    }
  }
  std::cout << (arguments.has("--json") ? treeOf(*result).text() : textOf(*knowledge, *result, request->wishes));
  return kFine;
}

} // namespace matwright
