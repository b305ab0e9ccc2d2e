#include "core/transition/MirroredText.h"

namespace matwright {
namespace {

bool isUpper(char c) { return c >= 'A' && c <= 'Z'; }
// Bytes beyond ASCII belong to letters.
bool isLetter(char c) { return isUpper(c) || (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80; }
char lower(char c) { return isUpper(c) ? static_cast<char>(c - 'A' + 'a') : c; }
char upper(char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; }

bool sameWord(std::string_view word, std::string_view inLowerCase) {
  if (word.size() != inLowerCase.size())
    return false;
  for (std::size_t i = 0; i < word.size(); ++i)
    if (lower(word[i]) != inLowerCase[i])
      return false;
  return true;
}

void appendInCaseOf(std::string& text, std::string_view written, std::string_view word) {
  const bool allUpper = isUpper(written[0]) && isUpper(written[1]);
  for (std::size_t i = 0; i < word.size(); ++i)
    text += allUpper || (i == 0 && isUpper(written[0])) ? upper(word[i]) : word[i];
}

} // namespace

std::string mirroredText(std::string_view text) {
  std::string result;
  result.reserve(text.size() + 8);
  for (std::size_t at = 0; at < text.size();) {
    if (!isLetter(text[at])) {
      result += text[at++];
      continue;
    }
    std::size_t end = at;
    while (end < text.size() && isLetter(text[end]))
      ++end;
    const std::string_view written = text.substr(at, end - at);
    if (sameWord(written, "left"))
      appendInCaseOf(result, written, "right");
    else if (sameWord(written, "right"))
      appendInCaseOf(result, written, "left");
    else
      result += written;
    at = end;
  }
  return result;
}

} // namespace matwright
