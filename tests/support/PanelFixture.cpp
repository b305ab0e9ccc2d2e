#include "tests/support/PanelFixture.h"

#include <cstdio>
#include <cstdlib>

namespace matwright::testing {
namespace {

constexpr Date kToday{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{26}};

Date weeksFromToday(int weeks) { return Date{std::chrono::sys_days{kToday} + std::chrono::days{7 * weeks}}; }

Person person(const char* id, const char* name) {
  Person made;
  made.id = {id};
  made.name = name;
  made.initials = initialsFrom(made.name);
  return made;
}

PersonCondition condition(const char* id, std::map<std::string, QualifierValue> known = {}) {
  PersonCondition held;
  held.condition = {id};
  held.qualifiers = std::move(known);
  return held;
}

} // namespace

Date today() { return kToday; }

std::shared_ptr<const Knowledge> knowledge() {
  static const std::shared_ptr<const Knowledge> read = [] {
    auto found = readKnowledge(MATWRIGHT_SOURCE_DIR "/resources");
    if (!found) {
      for (const Error& error : found.error())
        std::fprintf(stderr, "%s%s: expected %s, found %s\n", error.file.c_str(), error.path.c_str(),
                     error.expected.c_str(), error.found.c_str());
      std::abort();
    }
    return std::make_shared<const Knowledge>(std::move(*found));
  }();
  return read;
}

ClassPlan twentySteps() {
  const std::vector<std::pair<const char*, std::vector<const char*>>> sections = {
      {"Arrive", {"breathing-ribs", "pelvic-tilt", "rib-arms", "knee-folds"}},
      {"Warm", {"head-nod-curl", "shoulder-bridge", "four-point-cat", "four-point-opposite-reach", "swan-preparation"}},
      {"Main",
       {"hundred", "roll-up", "single-leg-stretch", "criss-cross", "spine-stretch-forward", "saw",
        "side-kick-front-back", "single-straight-leg-stretch"}},
      {"Settle", {"mermaid", "wall-roll-down", "standing-breathing"}}};
  ClassPlan plan = emptyClass("Thursday mixed level");
  plan.sections.clear();
  std::int64_t number = 0;
  for (const auto& [name, movements] : sections) {
    Section section{name, {}};
    for (const char* movement : movements) {
      const Movement* found = knowledge()->catalogue.find({movement});
      if (!found)
        std::abort();
      section.steps.push_back(matwright::stepOf({++number}, *found));
    }
    plan.sections.push_back(std::move(section));
  }
  for (const Person& one : sixPeople())
    plan.people.push_back(one.id);
  return plan;
}

std::vector<Person> sixPeople() {
  std::vector<Person> people{person("person-1", "Rosa Amberley"), person("person-2", "Imre Tolvaj"),
                             person("person-3", "Wanda Ostrow"),  person("person-4", "Kofi Larkspur"),
                             person("person-5", "Greta Finch"),   person("person-6", "Noor Hallam")};
  people[0].conditions = {condition("osteoporosis")};
  people[1].conditions = {condition("disc", {{"legSigns", false}})};
  people[2].conditions = {condition("pregnancy", {{"week", weeksFromToday(18)}})};
  people[3].conditions = {condition("hypertension"), condition("shoulder-pain")};
  people[4].conditions = {condition("hip-replacement", {{"weeks", weeksFromToday(-9)}})};
  return people;
}

Panels::Panels() : document(knowledge(), today), selection(document), commands(document, selection) {
  QObject::connect(&people, &PeopleDocument::changed, &document, [this] { document.setRoster(people.people()); });
  people.load(sixPeople());
  document.load(twentySteps());
}

StepId Panels::stepOf(const char* movement) const {
  StepId found;
  forEachStep(document.plan(), [&](const Step& step) {
    if (found.value == 0 && step.movement.value == movement)
      found = step.id;
  });
  return found;
}

} // namespace matwright::testing
