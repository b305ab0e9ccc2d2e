// What must hold of any text that is given to the readers of documents, JSON or not.
#pragma once

#include "core/store/Store.h"

#include <string_view>

namespace matwright {

// A text that is read is written in one form, which reads as the same value and is written as the same bytes, with what
// was kept and without. A text that is not read has an error that says so. Null when all that holds, else what does
// not.
template <class Value>
const char* brokenInvariant(std::string_view text, Result<Stored<Value>> (*parse)(std::string_view, const std::string&),
                            std::string (*write)(const Value&, const KeptTree&)) {
  const auto first = parse(text, "f");
  if (!first)
    return first.error().file == "f" && !first.error().expected.empty() ? nullptr : "an error without words";
  for (const KeptTree& kept : {first->kept, KeptTree()}) {
    const std::string written = write(first->value, kept);
    const auto second = parse(written, "f");
    if (!second)
      return "what was written cannot be read";
    if (!(second->value == first->value))
      return "what was written reads as another value";
    if (write(second->value, second->kept) != written)
      return "the same value was written as other bytes";
  }
  return nullptr;
}

// The same for what a studio knows of its own, over nothing that comes with the program. All its errors are given, and
// none of them may be without words.
inline const char* brokenInvariantOfKnowledge(std::string_view text) {
  static const Knowledge none;
  const auto first = parseOwnKnowledge(text, "f", none);
  if (!first) {
    for (const Error& error : first.error())
      if (error.file != "f" || error.expected.empty())
        return "an error without words";
    return first.error().empty() ? "refused without an error" : nullptr;
  }
  for (const KeptTree& kept : {first->kept, KeptTree()}) {
    const std::string written = ownKnowledgeText(first->value, kept);
    const auto second = parseOwnKnowledge(written, "f", none);
    if (!second)
      return "what was written cannot be read";
    if (!(second->value == first->value))
      return "what was written reads as another value";
    if (ownKnowledgeText(second->value, second->kept) != written)
      return "the same value was written as other bytes";
  }
  return nullptr;
}

inline const char* brokenInvariantOfClass(std::string_view text) {
  return brokenInvariant<ClassPlan>(text, parseClass, classText);
}
inline const char* brokenInvariantOfPerson(std::string_view text) {
  return brokenInvariant<Person>(text, parsePerson, personText);
}
// Wishes that were read have no fault either.
inline const char* brokenInvariantOfWishes(std::string_view text) {
  if (const auto wishes = parseWishes(text, "f"); wishes && faultIn(wishes->value))
    return "wishes with a fault were read";
  return brokenInvariant<ClassWishes>(text, parseWishes, wishesText);
}

} // namespace matwright
