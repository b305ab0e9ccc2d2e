// What sends a person to a clinician before, or stops them during, any class. It prompts; the teacher does not
// diagnose.
#pragma once

#include "core/screening/Rule.h"

namespace matwright {

// How soon somebody must be seen. `stop`: stop the class for this person, then act as the group says. `ask`: asked
// before the first class.
enum class Urgency { emergency, urgent, routine, stop, ask };
template <> struct Words<Urgency> {
  static constexpr auto list = wordList("emergency", "urgent", "routine", "stop", "ask");
};

struct RedFlagGroup {
  std::string id;
  std::string title;
  Urgency urgency{};
  std::optional<ConditionId> condition; // none: for everybody
  std::string act;                      // what to do
  std::vector<std::string> signs;       // never empty
  std::vector<SourceId> sources;
  Verification check{};
  std::string note; // what is limited or disputed; may be empty
  friend bool operator==(const RedFlagGroup&, const RedFlagGroup&) = default;
};

struct RedFlags {
  std::vector<RedFlagGroup> groups;
  std::vector<std::string> closing; // sentences that belong under any list of them
  friend bool operator==(const RedFlags&, const RedFlags&) = default;
};

} // namespace matwright
