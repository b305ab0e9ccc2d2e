// How the lists of faults are made; for the files of this room alone.
#pragma once

#include "core/base/Text.h"
#include "core/knowledge/Faults.h"

#include <algorithm>
#include <string_view>

namespace matwright {

class FaultNotes {
public:
  // What is added next is about this option of a movement.
  void about(std::optional<std::size_t> option) { option_ = option; }

  Fault& add(FaultKind kind, Field field) {
    Fault& fault = faults_.emplace_back();
    fault.kind = kind;
    fault.field = field;
    fault.option = option_;
    return fault;
  }
  Fault& hint(FaultKind kind, Field field) {
    Fault& fault = add(kind, field);
    fault.hint = true;
    return fault;
  }
  void addFeatures(FaultKind kind, Field field, FeatureSet features, bool hint = false) {
    if (features.empty())
      return;
    Fault& fault = add(kind, field);
    fault.features = features;
    fault.hint = hint;
  }

  // A text of 1 to `most` bytes. True when it is.
  bool text(Field field, const std::string& text, std::size_t most, std::optional<std::size_t> place = {}) {
    if (text.empty())
      add(FaultKind::empty, field).place = place;
    else if (text.size() > most)
      compare(add(FaultKind::tooLong, field), text.size(), most).place = place;
    return !text.empty() && text.size() <= most;
  }
  // A text of some words.
  void words(Field field, const std::string& text, int least, int most) {
    const int words = countWords(text);
    if (words == 0)
      add(FaultKind::empty, field);
    else if (words < least)
      compare(add(FaultKind::tooFewWords, field), words, least);
    else if (words > most)
      compare(add(FaultKind::tooManyWords, field), words, most);
    if (text.size() > kLongestNote)
      compare(add(FaultKind::tooLong, field), static_cast<double>(text.size()), kLongestNote);
  }
  void entries(Field field, std::size_t count, std::size_t most) {
    if (count > most)
      compare(add(FaultKind::tooLong, field), static_cast<double>(count), static_cast<double>(most));
  }
  // Each entry that stood before.
  template <class Value> void once(Field field, const std::vector<Value>& values) {
    for (auto at = values.begin(); at != values.end(); ++at)
      if (std::find(values.begin(), at, *at) != at)
        add(FaultKind::twice, field).place = static_cast<std::size_t>(at - values.begin());
  }

  static Fault& compare(Fault& fault, double found, double bound) {
    fault.found = found;
    fault.bound = bound;
    return fault;
  }

  std::vector<Fault> take() { return std::move(faults_); }

private:
  std::vector<Fault> faults_;
  std::optional<std::size_t> option_;
};

} // namespace matwright
