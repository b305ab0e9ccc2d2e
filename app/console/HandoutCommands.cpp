#include "app/console/Commands.h"
#include "app/console/Loading.h"
#include "core/handout/Card.h"
#include "core/store/Files.h"
#include "ui/card/CardPdf.h"
#include "ui/card/CardText.h"
#include "ui/theme/Theme.h"

#include <QGuiApplication>
#include <iostream>

namespace matwright {
namespace {

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
  return cardOf(*knowledge, loaded->plan, evaluation, loaded->roster,
                arguments.has("--names") ? NameStyle::names : NameStyle::initials);
}

} // namespace

int cardCommand(const Arguments& arguments) {
  const std::string paper = arguments.value("--paper").value_or("a4");
  const auto out = arguments.value("-o");
  if (!out || (paper != "a4" && paper != "letter")) {
    std::cerr << "matwright-cli: card needs -o FILE, and --paper is a4 or letter\n";
    return kBadInput;
  }
  const auto card = loadCard(arguments);
  if (!card)
    return kBadInput;
  // Measuring text needs an application; it needs no display.
  qputenv("QT_QPA_PLATFORM", "offscreen");
  int count = 1;
  char name[] = "matwright-cli";
  char* words[] = {name, nullptr};
  const QGuiApplication application(count, words);
  loadFonts();
  const QByteArray bytes = cardPdf(*card, paper == "a4" ? kA4Millimetres : kLetterMillimetres);
  const auto written = writeFile(*out, {bytes.constData(), static_cast<std::size_t>(bytes.size())});
  if (!written) {
    complain(written.error());
    return kBadInput;
  }
  std::cout << *out << '\n';
  return kFine;
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
