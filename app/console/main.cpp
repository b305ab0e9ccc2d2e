#include "app/console/Commands.h"

#include <csignal>
#include <exception>
#include <iostream>
#include <span>

namespace {

using namespace matwright;

struct Command {
  const char* name;
  const char* usage;
  ArgumentRules rules;
  int (*run)(const Arguments&);
};

const std::vector<Command>& commands() {
  static const std::vector<Command> all{
      {"check", "check CLASS [--people FILE]... [--json]", {{"--people"}, {"--json"}, 1, 1}, checkCommand},
      {"card",
       "card CLASS -o OUT.pdf [--paper a4|letter] [--names] [--people FILE]...",
       {{"-o", "--paper", "--people"}, {"--names"}, 1, 1},
       cardCommand},
      {"sheet",
       "sheet PERSON [--class CLASS] [--date DAY] [--names] [-o OUT.pdf [--paper a4|letter]]",
       {{"-o", "--class", "--date", "--paper"}, {"--names"}, 1, 1},
       sheetCommand},
      {"compose",
       "compose WISHES [-o OUT] [--people FILE]... [--date DAY] [--seed N] [--recent CLASS]... [--complete CLASS "
       "[--section N|NAME]] [--evaluations N] [--seconds S] [--explain] [--json]",
       {{"-o", "--people", "--date", "--seed", "--recent", "--complete", "--section", "--evaluations", "--seconds"},
        {"--explain", "--json"},
        1,
        1},
       composeCommand},
      {"export",
       "export CLASS --csv|--markdown [--names] [--people FILE]...",
       {{"--people"}, {"--csv", "--markdown", "--names"}, 1, 1},
       exportCommand},
      {"figure",
       "figure MOVEMENT[/OPTION] [--pose start|end|both] [-o OUT.svg]",
       {{"-o", "--pose"}, {}, 1, 1},
       figureCommand},
      {"red-flags", "red-flags [-o OUT.pdf [--paper a4|letter]]", {{"-o", "--paper"}, {}, 0, 0}, redFlagsCommand},
      {"load",
       "load CLASS [--mass KG] [--stature CM] [--table winter|de-leva-women|de-leva-men] [--json]",
       {{"--mass", "--stature", "--table"}, {"--json"}, 1, 1},
       loadCommand},
      {"list", "list movements|positions|conditions [--json]", {{}, {"--json"}, 1, 1}, listCommand},
      {"replace",
       "replace CLASS --step STEP [--people FILE]... [--json]",
       {{"--step", "--people"}, {"--json"}, 1, 1},
       replaceCommand},
      {"sop",
       "sop FILE... [--nodes N] [--seconds S] [--json]",
       {{"--nodes", "--seconds"}, {"--json"}, 1, 10000},
       sopCommand},
      {"tidy",
       "tidy CLASS [-o OUT] [--section N] [--pin STEP]... [--counter-movement] [--other-region] [--wished-arc] "
       "[--fewer-rises] [--nodes N] [--seconds S] [--people FILE]... [--json]",
       {{"-o", "--section", "--pin", "--nodes", "--seconds", "--people"},
        {"--counter-movement", "--other-region", "--wished-arc", "--fewer-rises", "--json"},
        1,
        1},
       tidyCommand},
      {"validate", "validate FILE...", {{}, {}, 1, 10000}, validateCommand},
  };
  return all;
}

void printUsage(std::ostream& out) {
  out << "Matwright without a window. General guidance, not medical advice.\n\n";
  for (const Command& command : commands())
    out << "  matwright-cli " << command.usage << '\n';
  out << "\nExit code: 0 fine, 1 a caution at the level \"leave out\" (check), 2 bad input,\n"
         "3 no class that meets the wishes (compose).\n"
         "An exit code of 0 does not mean that a class is safe for anybody.\n";
}

int run(const std::vector<std::string>& words) {
  if (words.empty() || words.front() == "--help" || words.front() == "-h") {
    printUsage(words.empty() ? std::cerr : std::cout);
    return words.empty() ? kBadInput : kFine;
  }
  if (words.front() == "--version") {
    std::cout << "matwright-cli " MATWRIGHT_VERSION "\n";
    return kFine;
  }
  for (const Command& command : commands()) {
    if (words.front() != command.name)
      continue;
    std::string fault;
    const auto arguments = parseArguments({words.begin() + 1, words.end()}, command.rules, fault);
    if (!arguments) {
      std::cerr << "matwright-cli: " << fault << "\nusage: matwright-cli " << command.usage << '\n';
      return kBadInput;
    }
    const int code = command.run(*arguments);
    std::cout.flush();
    return std::cout ? code : kBadInput;
  }
  std::cerr << "matwright-cli: unknown command " << words.front() << '\n';
  printUsage(std::cerr);
  return kBadInput;
}

} // namespace

int main(int argc, char** argv) {
  std::signal(SIGXFSZ, SIG_IGN); // a file over the limit is a failed write, not the end of the program
  try {
    return run({argv + 1, argv + argc});
  } catch (const std::exception& fault) {
    std::cerr << "matwright-cli: " << fault.what() << '\n';
    return kBadInput;
  }
}
