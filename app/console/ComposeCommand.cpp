#include "app/console/Commands.h"
#include "app/console/ComposeReport.h"
#include "app/console/Loading.h"
#include "app/console/SearchLimits.h"
#include "core/store/Files.h"
#include "ui/text/ComposeText.h"

#include <algorithm>
#include <charconv>
#include <iostream>

namespace matwright {
namespace {

std::nullopt_t complainOf(const std::string& what) {
  std::cerr << "matwright-cli: " << what << '\n';
  return std::nullopt;
}

// Whether what is to be left out, and who is to come, is there: under a wrong id movements would be chosen, and nobody
// would be looked out for.
bool spareWhatTheyMean(const Knowledge& knowledge, const ClassWishes& wishes, std::span<const Person> roster,
                       const std::string& file) {
  bool all = true;
  const auto miss = [&](const char* list, std::size_t at, const char* expected, const std::string& id) {
    complain(Error{ErrorCode::unknownReference, file, list + std::to_string(at), expected, id});
    all = false;
  };
  for (std::size_t i = 0; i < wishes.leaveOut.size(); ++i)
    if (!knowledge.catalogue.find(wishes.leaveOut[i]))
      miss("/leaveOut/", i, "a movement of the catalogue", wishes.leaveOut[i].value);
  for (std::size_t i = 0; i < wishes.people.size(); ++i)
    if (!findPerson(roster, wishes.people[i]))
      miss("/people/", i, "a person of the studio", wishes.people[i].value);
  return all;
}

// What there is before anything is chosen.
struct Beginning {
  ClassWishes wishes;
  Stored<ClassPlan> kept;         // a blank class, or the one to be filled up
  std::vector<MovementId> unlike; // what the section had that is to be filled anew
  std::vector<Person> roster;
  Date day;
};

// The wishes of the file with what the command line says instead.
std::optional<ClassWishes> wishesOf(const Arguments& arguments) {
  auto read = readWishes(arguments.free.front());
  if (!read) {
    complain(read.error());
    return std::nullopt;
  }
  ClassWishes wishes = std::move(read->value);
  const auto seed = wholeNumber(arguments, "--seed", static_cast<std::int64_t>(wishes.seed), 0, kHighestSeed);
  if (!seed)
    return std::nullopt;
  wishes.seed = static_cast<std::uint64_t>(*seed);
  if (const auto day = arguments.value("--date")) {
    wishes.date = dateFromIso(*day);
    if (!wishes.date)
      return complainOf("--date: date like 2026-11-26 expected, found " + *day);
  }
  std::vector<RecentClass> recent;
  for (const std::string& file : arguments.all("--recent")) {
    const auto plan = readClass(file);
    if (!plan) {
      complain(plan.error());
      return std::nullopt;
    }
    recent.push_back(recentClass(plan->value));
  }
  wishes.recent.insert(wishes.recent.begin(), recent.begin(), recent.end());
  return wishes;
}

// By its name, or counted from 1 as people do.
std::optional<std::size_t> sectionOf(const ClassPlan& plan, const std::string& said) {
  const auto named = std::find_if(plan.sections.begin(), plan.sections.end(),
                                  [&](const Section& section) { return section.name == said; });
  if (named != plan.sections.end())
    return static_cast<std::size_t>(named - plan.sections.begin());
  std::size_t counted = 0;
  const auto [end, fault] = std::from_chars(said.data(), said.data() + said.size(), counted);
  if (fault == std::errc() && end == said.data() + said.size() && counted >= 1 && counted <= plan.sections.size())
    return counted - 1;
  return complainOf("--section: the class has no section " + said);
}

// Takes the steps out of one section. The others are wished for as long as they are, and this one for what is left of
// the class; where nothing is, all may come out as they will.
void emptySection(const Knowledge& knowledge, std::size_t section, Beginning& beginning) {
  constexpr Seconds asGoodAsNone{0.001}; // every section has a length, or none
  ClassPlan& plan = beginning.kept.value;
  ClassWishes& wishes = beginning.wishes;
  plan.people = wishes.people;
  plan.pace = wishes.pace;
  const Schedule schedule = evaluate(knowledge, plan, beginning.roster, beginning.day).schedule;
  Seconds left = wishes.length;
  for (std::size_t i = 0; i < plan.sections.size(); ++i) {
    const Seconds end = i + 1 < plan.sections.size() ? schedule.sectionBegin[i + 1] : schedule.length;
    wishes.sections[i].length = std::max(asGoodAsNone, end - schedule.sectionBegin[i]);
    if (i != section)
      left = left - wishes.sections[i].length;
  }
  wishes.sections[section].length = left;
  if (left <= Seconds{})
    for (WishedSection& each : wishes.sections)
      each.length = {};
  for (const Step& step : plan.sections[section].steps)
    beginning.unlike.push_back(step.movement);
  plan.sections[section].steps.clear();
}

std::optional<Beginning> beginningOf(const Arguments& arguments, const Knowledge& knowledge) {
  const auto complete = arguments.value("--complete"), section = arguments.value("--section");
  if (section && !complete)
    return complainOf("--section: only with --complete");
  auto wishes = wishesOf(arguments);
  if (!wishes)
    return std::nullopt;
  Beginning beginning{std::move(*wishes), {}, {}, {}, {}};
  auto roster = loadRoster(arguments.free.front(), arguments.all("--people"), beginning.wishes.people);
  if (!roster || !spareWhatTheyMean(knowledge, beginning.wishes, *roster, arguments.free.front()))
    return std::nullopt;
  beginning.roster = std::move(*roster);
  ClassPlan& plan = beginning.kept.value;
  if (complete) {
    auto read = readClass(*complete);
    if (!read) {
      complain(read.error());
      return std::nullopt;
    }
    beginning.kept = std::move(*read);
    if (beginning.wishes.date)
      plan.date = beginning.wishes.date;
    if (plan.sections.size() != beginning.wishes.sections.size())
      beginning.wishes.sections = wishesFor(plan).sections; // as long as they come out
  } else {
    plan = blankClass(beginning.wishes);
  }
  beginning.day = plan.date.value_or(today());
  nameWhatHasNone(plan);
  if (section) {
    const auto at = sectionOf(plan, *section);
    if (!at)
      return std::nullopt;
    emptySection(knowledge, *at, beginning);
  }
  return beginning;
}

} // namespace

int composeCommand(const Arguments& arguments) {
  const auto limits =
      searchLimits(arguments, "--evaluations", ComposeLimits{}.evaluations, ComposeLimits{}.evaluations);
  const auto knowledge = limits ? loadKnowledgeFor(arguments.free.front()) : std::nullopt;
  const auto beginning = knowledge ? beginningOf(arguments, *knowledge) : std::nullopt;
  if (!beginning)
    return kBadInput;
  const auto result = composed(*knowledge, beginning->wishes, beginning->roster, beginning->day, beginning->kept.value,
                               {limits->count, limits->stop(), {}}, beginning->unlike);
  if (!result) {
    complainOf(text(result.error()).toStdString());
    return kBadInput;
  }
  const bool isComposed = result->status == ComposeStatus::composed;
  if (const auto out = arguments.value("-o"); out && isComposed)
    if (const auto written = writeFile(*out, classText(result->plan, beginning->kept.kept)); !written) {
      complain(written.error());
      return kBadInput;
    }
  const ComposeReport report{*knowledge, beginning->wishes, beginning->roster,         beginning->day,
                             *result,    beginning->unlike, arguments.has("--explain")};
  for (const std::string& obstacle : obstacleTexts(report))
    complainOf(obstacle);
  std::cout << (arguments.has("--json") ? composeTree(report).text() : composeText(report));
  return isComposed ? kFine : kNoClass;
}

} // namespace matwright
