#include "ui/rules/PlacedFaults.h"

#include "core/store/Store.h"
#include "ui/text/FaultText.h"
#include "ui/text/RuleText.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("PlacedFaults", text); }

// Keys of a file that are written in the field of another.
struct KeyOfField {
  const char* key;
  Field field;
};
constexpr KeyOfField kKeys[] = {
    {"any", Field::asks},       {"all", Field::asks},       {"at", Field::asks},          {"effortFrom", Field::asks},
    {"leverFrom", Field::asks}, {"over", Field::threshold}, {"within", Field::threshold}, {"between", Field::threshold},
};

Field fieldOf(const QString& key, Field otherwise) {
  for (const KeyOfField& each : kKeys)
    if (key == QLatin1String(each.key))
      return each.field;
  return fromWord<Field>(key.toStdString()).value_or(otherwise);
}

std::vector<Rule>& listOf(OwnKnowledge& own, const Rule&) { return own.rules; }
std::vector<Condition>& listOf(OwnKnowledge& own, const Condition&) { return own.conditions; }
std::vector<Source>& listOf(OwnKnowledge& own, const Source&) { return own.sources; }

const char* keyOf(const Rule&) { return "rules"; }
const char* keyOf(const Condition&) { return "conditions"; }
const char* keyOf(const Source&) { return "sources"; }

// Where what has no field of its own is told.
Field mainField(const Rule&) { return Field::asks; }
Field mainField(const Condition&) { return Field::qualifiers; }
Field mainField(const Source&) { return Field::cite; }

template <class Thing> bool isEmptyTest(const Thing&, const Fault&) { return false; }
bool isEmptyTest(const Rule& rule, const Fault& fault) {
  if (fault.kind != FaultKind::doesNotFit || fault.field != Field::when || !fault.place ||
      *fault.place >= rule.when.size())
    return false;
  const QualifierTest& test = rule.when[*fault.place];
  return !test.from && !test.below && !test.flag && test.choices.empty();
}

template <class Thing> std::vector<PlacedFault> judged(const Thing& thing, const Knowledge& all) {
  std::vector<PlacedFault> faults;
  for (const Fault& fault : faultsIn(thing, all)) {
    PlacedFault placed;
    placed.words = isEmptyTest(thing, fault)
                       ? tr("Test %1: choose for which answers the rule speaks.").arg(*fault.place + 1)
                       : text(fault, all);
    placed.hint = fault.hint;
    placed.field = fault.field;
    faults.push_back(placed);
  }
  return faults;
}

// What the file refuses with this in it. Of other things that is said with their name: they refer to this one.
template <class Thing>
std::vector<PlacedFault> refused(const Thing& thing, const OwnKnowledge& own, std::size_t at,
                                 const Knowledge& builtIn) {
  std::vector<PlacedFault> faults;
  const auto read = parseOwnKnowledge(ownKnowledgeText(own), {}, builtIn);
  if (read)
    return faults;
  for (const Error& error : read.error()) {
    // "/rules/3/when/0/qualifier"
    const QStringList steps = QString::fromStdString(error.path).split(QLatin1Char('/'), Qt::SkipEmptyParts);
    const bool here = steps.size() >= 2 && steps[0] == QLatin1String(keyOf(thing)) && steps[1].toULongLong() == at;
    PlacedFault fault;
    fault.field = mainField(thing);
    fault.words = needText(error);
    if (here && steps.size() > 2)
      fault.field = fieldOf(steps[2], fault.field);
    if (!here && steps.size() >= 2 && steps[0] == QLatin1String("rules") && steps[1].toULongLong() < own.rules.size())
      fault.words = tr("Your rule \"%1\" would not fit any more: %2")
                        .arg(titleText(own.rules[steps[1].toULongLong()]), fault.words);
    else if (!here)
      fault.words = QStringLiteral("%1: %2").arg(QString::fromStdString(error.path), fault.words);
    faults.push_back(fault);
  }
  return faults;
}

template <class Thing>
std::vector<PlacedFault> placed(const Thing& thing, const OwnKnowledge& own, const Knowledge& builtIn) {
  OwnKnowledge trial = own;
  auto& list = listOf(trial, thing);
  Thing* found = findById(list, thing.id);
  const auto at = found ? static_cast<std::size_t>(found - list.data()) : list.size();
  if (found)
    *found = thing;
  else
    list.push_back(thing);
  std::vector<PlacedFault> faults = judged(thing, layered(builtIn, trial));
  for (const PlacedFault& more : refused(thing, trial, at, builtIn)) {
    const bool said = std::any_of(faults.begin(), faults.end(), [&](const PlacedFault& fault) {
      return fault.words == more.words || (!fault.hint && fault.field == more.field);
    });
    if (!said)
      faults.push_back(more);
  }
  std::stable_sort(faults.begin(), faults.end(), [](const auto& a, const auto& b) { return !a.hint && b.hint; });
  return faults;
}

QString nameOf(Field field) {
  switch (field) {
  case Field::name:
    return tr("Name");
  case Field::about:
    return tr("About");
  case Field::icd10:
    return tr("ICD-10 codes");
  case Field::qualifiers:
  case Field::choices:
    return tr("Questions");
  case Field::condition:
    return tr("For whom");
  case Field::when:
    return tr("Only when");
  case Field::asks:
    return tr("What it looks for");
  case Field::threshold:
    return tr("Amount");
  case Field::after:
    return tr("What came before");
  case Field::why:
    return tr("Why");
  case Field::instead:
    return tr("Instead");
  case Field::contested:
    return tr("Disputed");
  case Field::sources:
    return tr("Sources");
  case Field::reviewed:
    return tr("Reviewed");
  case Field::cite:
    return tr("Cited as");
  default:
    return {};
  }
}

} // namespace

std::vector<PlacedFault> placedFaults(const Rule& rule, const OwnKnowledge& own, const Knowledge& builtIn) {
  return placed(rule, own, builtIn);
}

std::vector<PlacedFault> placedFaults(const Condition& condition, const OwnKnowledge& own, const Knowledge& builtIn) {
  return placed(condition, own, builtIn);
}

std::vector<PlacedFault> placedFaults(const Source& source, const OwnKnowledge& own, const Knowledge& builtIn) {
  return placed(source, own, builtIn);
}

std::multimap<int, FaultLine> byField(const std::vector<PlacedFault>& faults) {
  std::multimap<int, FaultLine> lines;
  for (const PlacedFault& fault : faults)
    // Choices are written with their question.
    lines.emplace(static_cast<int>(fault.field == Field::choices ? Field::qualifiers : fault.field),
                  static_cast<const FaultLine&>(fault));
  return lines;
}

std::vector<FaultLine> withFieldNames(const std::vector<PlacedFault>& faults) {
  std::vector<FaultLine> lines;
  for (const PlacedFault& fault : faults) {
    const QString name = nameOf(fault.field);
    lines.push_back({name.isEmpty() ? fault.words : QStringLiteral("%1: %2").arg(name, fault.words), fault.hint});
  }
  return lines;
}

} // namespace matwright
