#include "app/console/Arguments.h"

#include <algorithm>

namespace matwright {
namespace {

bool contains(const std::vector<std::string>& list, const std::string& word) {
  return std::find(list.begin(), list.end(), word) != list.end();
}

} // namespace

bool Arguments::has(const std::string& name) const { return contains(switches, name); }

std::optional<std::string> Arguments::value(const std::string& option) const {
  const auto at = values.find(option);
  return at == values.end() ? std::nullopt : std::optional{at->second.back()};
}

std::vector<std::string> Arguments::all(const std::string& option) const {
  const auto at = values.find(option);
  return at == values.end() ? std::vector<std::string>{} : at->second;
}

std::optional<Arguments> parseArguments(const std::vector<std::string>& words, const ArgumentRules& rules,
                                        std::string& fault) {
  Arguments arguments;
  bool options = true;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const std::string& word = words[i];
    if (options && word == "--") {
      options = false;
    } else if (options && word.size() > 1 && word.front() == '-') {
      const std::size_t equals = word.find('=');
      const std::string name = word.substr(0, equals);
      if (contains(rules.switches, word)) {
        arguments.switches.push_back(word);
      } else if (!contains(rules.values, name)) {
        fault = "unknown option " + word;
        return std::nullopt;
      } else if (equals != std::string::npos) {
        arguments.values[name].push_back(word.substr(equals + 1));
      } else if (i + 1 == words.size()) {
        fault = "option " + word + " needs a value";
        return std::nullopt;
      } else {
        arguments.values[name].push_back(words[++i]);
      }
    } else {
      arguments.free.push_back(word);
    }
  }
  if (arguments.free.size() < rules.fewest) {
    fault = "something is missing";
    return std::nullopt;
  }
  if (arguments.free.size() > rules.most) {
    fault = "too many arguments: " + arguments.free[rules.most];
    return std::nullopt;
  }
  return arguments;
}

} // namespace matwright
