#include "core/base/Text.h"

namespace matwright {
namespace {

bool isSpace(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }
bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isLower(char c) { return c >= 'a' && c <= 'z'; }
bool isUpper(char c) { return c >= 'A' && c <= 'Z'; }
// Letters beyond ASCII carry words; the signs of Latin-1 (lead byte C2) and the dashes, quotes and arrows from U+2000
// to U+2FFF (lead byte E2) do not.
bool carriesWord(char c) {
  const auto lead = static_cast<unsigned char>(c);
  return isDigit(c) || isLower(c) || isUpper(c) || (lead >= 0xC3 && lead != 0xE2);
}

} // namespace

int countWords(std::string_view text) {
  int words = 0;
  bool counted = false;
  for (char c : text) {
    if (isSpace(c)) {
      counted = false;
    } else if (!counted && carriesWord(c)) {
      counted = true;
      ++words;
    }
  }
  return words;
}

bool isIdText(std::string_view text) {
  if (text.empty() || !isLower(text.front()) || text.back() == '-')
    return false;
  char before = ' ';
  for (char c : text) {
    if (!isLower(c) && !isDigit(c) && c != '-')
      return false;
    if (c == '-' && before == '-')
      return false;
    before = c;
  }
  return true;
}

std::string idTextFrom(std::string_view text) {
  std::string id;
  for (char c : text) {
    if (isUpper(c))
      id += static_cast<char>(c - 'A' + 'a');
    else if (isLower(c) || (isDigit(c) && !id.empty()))
      id += c;
    else if (!id.empty() && id.back() != '-')
      id += '-';
  }
  while (!id.empty() && id.back() == '-')
    id.pop_back();
  return id;
}

std::string untakenId(const std::string& stem, const std::function<bool(const std::string&)>& taken) {
  std::string id = stem;
  for (int number = 2; taken(id); ++number)
    id = stem + "-" + std::to_string(number);
  return id;
}

} // namespace matwright
