#include "app/console/Commands.h"
#include "app/console/Loading.h"
#include "core/handout/PersonSheet.h"
#include "core/store/Files.h"
#include "ui/card/CardPdf.h"
#include "ui/card/CardText.h"
#include "ui/paper/TextPages.h"
#include "ui/text/PersonSheetText.h"
#include "ui/theme/Theme.h"

#include <QGuiApplication>
#include <algorithm>
#include <iostream>

namespace matwright {
namespace {

NameStyle nameStyle(const Arguments& arguments) {
  return arguments.has("--names") ? NameStyle::names : NameStyle::initials;
}

std::optional<Card> loadCard(const Arguments& arguments) {
  const auto knowledge = loadKnowledgeFor(arguments.free.front());
  if (!knowledge)
    return std::nullopt;
  const auto people = arguments.values.find("--people");
  const auto loaded =
      loadClass(arguments.free.front(), people == arguments.values.end() ? std::vector<std::string>{} : people->second);
  if (!loaded)
    return std::nullopt;
  const Evaluation evaluation = evaluate(*knowledge, loaded->plan, loaded->roster, loaded->day);
  return cardOf(*knowledge, loaded->plan, evaluation, loaded->roster, nameStyle(arguments));
}

// What `-o` and `--paper` name.
struct Target {
  std::string file;
  QSizeF paper; // millimetres
};

std::optional<Target> targetOf(const Arguments& arguments, const char* command) {
  const std::string paper = arguments.value("--paper").value_or("a4");
  const auto out = arguments.value("-o");
  if (!out || (paper != "a4" && paper != "letter")) {
    std::cerr << "matwright-cli: " << command << " needs -o FILE, and --paper is a4 or letter\n";
    return std::nullopt;
  }
  return Target{*out, paper == "a4" ? kA4Millimetres : kLetterMillimetres};
}

// `pdf` gives the bytes, once there is an application: measuring text needs one, though no display.
template <class Pdf> int writePdf(const Target& target, Pdf pdf) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  int count = 1;
  char name[] = "matwright-cli";
  char* words[] = {name, nullptr};
  const QGuiApplication application(count, words);
  loadFonts();
  const QByteArray bytes = pdf();
  const auto written = writeFile(target.file, {bytes.constData(), static_cast<std::size_t>(bytes.size())});
  if (!written) {
    complain(written.error());
    return kBadInput;
  }
  std::cout << target.file << '\n';
  return kFine;
}

bool names(const ClassPlan& plan, const PersonId& person) {
  return std::find(plan.people.begin(), plan.people.end(), person) != plan.people.end();
}

// The sheet of a person, with the class where one is given.
std::optional<PersonSheet> loadSheet(const Arguments& arguments) {
  const std::string& file = arguments.free.front();
  std::optional<Date> day;
  if (const auto word = arguments.value("--date")) {
    day = dateFromIso(*word);
    if (!day) {
      std::cerr << "matwright-cli: --date is a day such as 2026-11-26, not " << *word << '\n';
      return std::nullopt;
    }
  }
  const auto knowledge = loadKnowledgeFor(file);
  if (!knowledge)
    return std::nullopt;
  const auto person = readPerson(file);
  if (!person) {
    complain(person.error());
    return std::nullopt;
  }
  const auto classFile = arguments.value("--class");
  if (!classFile)
    return personSheetOf(*knowledge, person->value, day.value_or(today()), nameStyle(arguments));
  auto loaded = loadClass(*classFile, {});
  if (!loaded)
    return std::nullopt;
  // Of the class's studio may be the same person, as she was.
  std::erase_if(loaded->roster, [&](const Person& known) { return known.id == person->value.id; });
  loaded->roster.push_back(person->value);
  if (!names(loaded->plan, person->value.id)) {
    std::cerr << "matwright-cli: " << person->value.id.value << " does not come to " << *classFile << '\n';
    return std::nullopt;
  }
  return personSheetOf(*knowledge, person->value, day.value_or(loaded->day), nameStyle(arguments), loaded->plan,
                       loaded->roster);
}

} // namespace

int cardCommand(const Arguments& arguments) {
  const auto target = targetOf(arguments, "card");
  const auto card = target ? loadCard(arguments) : std::nullopt;
  if (!card)
    return kBadInput;
  return writePdf(*target, [&] { return cardPdf(*card, target->paper); });
}

int sheetCommand(const Arguments& arguments) {
  const auto target = targetOf(arguments, "sheet");
  const auto sheet = target ? loadSheet(arguments) : std::nullopt;
  if (!sheet)
    return kBadInput;
  return writePdf(*target, [&] {
    return textPdf({personSheetTitle(*sheet), personSheetHtml(*sheet), personSheetFoot(*sheet)}, target->paper);
  });
}

int exportCommand(const Arguments& arguments) {
  const bool csv = arguments.has("--csv");
  if (csv == arguments.has("--markdown")) {
    std::cerr << "matwright-cli: export needs either --csv or --markdown\n";
    return kBadInput;
  }
  const auto card = loadCard(arguments);
  if (!card)
    return kBadInput;
  std::cout << (csv ? cardCsv(*card) : cardMarkdown(*card)).toStdString();
  return kFine;
}

} // namespace matwright
