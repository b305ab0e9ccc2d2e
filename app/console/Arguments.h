#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace matwright {

// What may follow a command's name: options that take a value, and switches.
struct ArgumentRules {
  std::vector<std::string> values;   // e.g. "--people", "-o"
  std::vector<std::string> switches; // e.g. "--json"
  std::size_t fewest = 0, most = 0;  // free arguments
};

struct Arguments {
  std::vector<std::string> free;
  std::map<std::string, std::vector<std::string>> values;
  std::vector<std::string> switches;

  bool has(const std::string& name) const;
  std::optional<std::string> value(const std::string& option) const; // the last one given
  std::vector<std::string> all(const std::string& option) const;     // in the order given
};

// Nothing, and `fault` says why, when the words do not fit the rules. "--" ends the options.
std::optional<Arguments> parseArguments(const std::vector<std::string>& words, const ArgumentRules& rules,
                                        std::string& fault);

} // namespace matwright
