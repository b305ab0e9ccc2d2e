#pragma once

#include <string>
#include <tl/expected.hpp>

namespace matwright {

enum class ErrorCode {
  cannotRead,       // the file is missing, unreadable or not a plain file
  tooLarge,         // larger than any true file of its kind
  notJson,          // the text is not JSON; `path` holds line and column
  wrongFormat,      // the root's `format` names something else
  newerVersion,     // written by a newer Matwright
  missingKey,       // a key that must be there is not
  unknownKey,       // a key that the format does not know (knowledge files only)
  wrongType,        // a text where a number belongs, and the like
  outOfRange,       // a number or length outside its bounds
  unknownWord,      // a word outside a closed list
  duplicateId,      // two things with one id
  unknownReference, // an id that names nothing
  cannotWrite,      // the file could not be written; what was there before is untouched
  changedOnDisk,    // somebody else wrote the file since it was read
};

// What went wrong with outside input, as data; sentences are made of it where it is shown.
struct Error {
  ErrorCode code{};
  std::string file;     // as the user named it; empty when there is no file
  std::string path;     // inside the file, as a JSON pointer: /sections/0/steps/4/tempo
  std::string expected; // in the words of the format, e.g. "number from 0 to 10"
  std::string found;    // a short extract, at most about 80 characters

  friend bool operator==(const Error&, const Error&) = default;
};

template <class T, class E = Error> using Result = tl::expected<T, E>;

template <class E> tl::unexpected<std::decay_t<E>> failure(E&& error) {
  return tl::unexpected<std::decay_t<E>>(std::forward<E>(error));
}

} // namespace matwright
