#include "app/console/Commands.h"
#include "app/console/Loading.h"
#include "app/console/Measuring.h"
#include "core/handout/PersonSheet.h"
#include "core/store/Files.h"
#include "ui/card/CardPdf.h"
#include "ui/card/CardText.h"
#include "ui/paper/TextPages.h"
#include "ui/text/CautionText.h"
#include "ui/text/PersonSheetText.h"
#include "ui/text/RedFlagText.h"

#include <algorithm>
#include <functional>
#include <iostream>
#include <optional>

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

// The day of `--date`, else `otherwise`.
std::optional<Date> dayOf(const Arguments& arguments, Date otherwise) {
  const auto word = arguments.value("--date");
  const auto day = word ? dateFromIso(*word) : otherwise;
  if (!day)
    std::cerr << "matwright-cli: --date is a day such as 2026-11-26, not " << *word << '\n';
  return day;
}

// The sheet of a person, with the class where one is given.
std::optional<PersonSheet> loadSheet(const Arguments& arguments) {
  const std::string& file = arguments.free.front();
  const auto knowledge = loadKnowledgeFor(file);
  if (!knowledge)
    return std::nullopt;
  const auto person = readPerson(file);
  if (!person) {
    complain(person.error());
    return std::nullopt;
  }
  const auto classFile = arguments.value("--class");
  if (!classFile) {
    const auto day = dayOf(arguments, today());
    return day ? std::optional(personSheetOf(*knowledge, person->value, *day, nameStyle(arguments))) : std::nullopt;
  }
  auto loaded = loadClass(*classFile, {});
  const auto day = loaded ? dayOf(arguments, loaded->day) : std::nullopt;
  if (!day)
    return std::nullopt;
  const std::vector<PersonId>& coming = loaded->plan.people;
  if (std::find(coming.begin(), coming.end(), person->value.id) == coming.end()) {
    std::cerr << "matwright-cli: " << person->value.id.value << " does not come to " << *classFile << '\n';
    return std::nullopt;
  }
  // Whoever lies in the studio of the class under her id is she, as she is in the file given.
  std::erase_if(loaded->roster, [&](const Person& known) { return known.id == person->value.id; });
  loaded->roster.push_back(person->value);
  const Evaluation evaluation = evaluate(*knowledge, loaded->plan, loaded->roster, *day);
  return personSheetOf(*knowledge, person->value, *day, nameStyle(arguments), loaded->plan, evaluation);
}

// Writes what `make` gives for the paper asked for.
int writePdf(const Arguments& arguments, const std::function<QByteArray(QSizeF)>& make) {
  const std::string out = *arguments.value("-o");
  const std::string paper = arguments.value("--paper").value_or("a4");
  if (paper != "a4" && paper != "letter") {
    std::cerr << "matwright-cli: --paper is a4 or letter\n";
    return kBadInput;
  }
  const Measuring measuring;
  const QByteArray bytes = make(paper == "a4" ? kA4Millimetres : kLetterMillimetres);
  const auto written = writeFile(out, {bytes.constData(), static_cast<std::size_t>(bytes.size())});
  if (!written) {
    complain(written.error());
    return kBadInput;
  }
  std::cout << out << '\n';
  return kFine;
}

// Writes the text where `-o` says, else prints it.
int giveText(const Arguments& arguments, const TextSheet& sheet) {
  if (arguments.value("-o"))
    return writePdf(arguments, [&](QSizeF paper) { return textPdf(sheet, paper); });
  const Measuring measuring;
  std::cout << plainText(sheet).toStdString() << '\n';
  return kFine;
}

} // namespace

int cardCommand(const Arguments& arguments) {
  if (!arguments.value("-o")) {
    std::cerr << "matwright-cli: card needs -o FILE\n";
    return kBadInput;
  }
  const auto card = loadCard(arguments);
  if (!card)
    return kBadInput;
  return writePdf(arguments, [&](QSizeF paper) { return cardPdf(*card, paper); });
}

int sheetCommand(const Arguments& arguments) {
  const auto sheet = loadSheet(arguments);
  return sheet ? giveText(arguments, {personSheetTitle(*sheet), personSheetHtml(*sheet), personSheetFoot(*sheet)})
               : kBadInput;
}

int redFlagsCommand(const Arguments& arguments) {
  const auto knowledge = loadKnowledge();
  return knowledge ? giveText(arguments, {redFlagTitle(), redFlagHtml(*knowledge, {}), standingNotice()}) : kBadInput;
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
