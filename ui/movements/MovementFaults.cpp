#include "ui/movements/MovementFaults.h"

#include "core/knowledge/Faults.h"
#include "core/store/Store.h"
#include "ui/text/FaultText.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("MovementFaults", text); }

struct FieldWords {
  const char* key; // in the file
  const char* name;
};

// In the order of MovementField.
constexpr FieldWords kFields[] = {{"name", QT_TRANSLATE_NOOP("MovementFaults", "Name")},
                                  {"repertoire", QT_TRANSLATE_NOOP("MovementFaults", "Kind")},
                                  {"about", QT_TRANSLATE_NOOP("MovementFaults", "About")},
                                  {"start", QT_TRANSLATE_NOOP("MovementFaults", "Starts in")},
                                  {"end", QT_TRANSLATE_NOOP("MovementFaults", "Ends in")},
                                  {"sides", QT_TRANSLATE_NOOP("MovementFaults", "Sides")},
                                  {"dose", QT_TRANSLATE_NOOP("MovementFaults", "Usual dose")},
                                  {"effort", QT_TRANSLATE_NOOP("MovementFaults", "Effort")},
                                  {"regions", QT_TRANSLATE_NOOP("MovementFaults", "Regions")},
                                  {"spine", QT_TRANSLATE_NOOP("MovementFaults", "Spine")},
                                  {"props", QT_TRANSLATE_NOOP("MovementFaults", "Props")},
                                  {"prerequisites", QT_TRANSLATE_NOOP("MovementFaults", "Teach before")},
                                  {"counters", QT_TRANSLATE_NOOP("MovementFaults", "Counters")},
                                  {"setUp", QT_TRANSLATE_NOOP("MovementFaults", "Set-up cue")},
                                  {"action", QT_TRANSLATE_NOOP("MovementFaults", "Action cue")},
                                  {"tempo", QT_TRANSLATE_NOOP("MovementFaults", "Tempo and breath")},
                                  {"poses", QT_TRANSLATE_NOOP("MovementFaults", "Poses")},
                                  {"features", QT_TRANSLATE_NOOP("MovementFaults", "Asks of the body")},
                                  {"options", QT_TRANSLATE_NOOP("MovementFaults", "Options")}};

MovementField fieldOf(const Fault& fault) {
  if (fault.option)
    return MovementField::options;
  if (fault.field == Field::startPose || fault.field == Field::endPose)
    return MovementField::poses;
  const auto found = std::find_if(std::begin(kFields), std::end(kFields),
                                  [&](const FieldWords& field) { return word(fault.field) == field.key; });
  return found == std::end(kFields) ? MovementField::name : static_cast<MovementField>(found - std::begin(kFields));
}

std::vector<FieldFault> judged(const Movement& movement, const Knowledge& all) {
  std::vector<FieldFault> faults;
  for (const Fault& fault : faultsIn(movement, all)) {
    FieldFault told;
    told.field = fieldOf(fault);
    told.hint = fault.hint;
    told.words = text(fault, all);
    if (fault.option && *fault.option < movement.options.size()) {
      told.option = *fault.option;
      told.words = QStringLiteral("%1: %2").arg(QString::fromStdString(movement.options[told.option].name), told.words);
    }
    if (std::find(faults.begin(), faults.end(), told) == faults.end())
      faults.push_back(told);
  }
  return faults;
}

// What the file refuses; only this movement is looked at.
std::vector<FieldFault> refused(const Movement& movement, const OwnKnowledge& own, std::size_t at,
                                const Knowledge& builtIn) {
  std::vector<FieldFault> faults;
  const auto read = parseOwnKnowledge(ownKnowledgeText(own), {}, builtIn);
  if (read)
    return faults;
  for (const Error& error : read.error()) {
    // "/movements/3/options/0/name"
    const QStringList steps = QString::fromStdString(error.path).split(QLatin1Char('/'), Qt::SkipEmptyParts);
    if (steps.size() < 3 || steps[0] != QLatin1String("movements") || steps[1].toULongLong() != at)
      continue;
    const auto found = std::find_if(std::begin(kFields), std::end(kFields),
                                    [&](const FieldWords& field) { return steps[2] == QLatin1String(field.key); });
    FieldFault fault;
    if (found != std::end(kFields))
      fault.field = static_cast<MovementField>(found - std::begin(kFields));
    QString below;
    if (fault.field == MovementField::options && steps.size() > 3) {
      fault.option = static_cast<std::size_t>(steps[3].toULongLong());
      if (fault.option < movement.options.size())
        below = QString::fromStdString(movement.options[fault.option].name);
    }
    fault.words = below.isEmpty() ? needText(error) : QStringLiteral("%1: %2").arg(below, needText(error));
    faults.push_back(fault);
  }
  return faults;
}

} // namespace

QString text(MovementField field) { return tr(kFields[static_cast<std::size_t>(field)].name); }

std::vector<FieldFault> faultsOf(const Movement& movement, const OwnKnowledge& own, const Knowledge& builtIn) {
  OwnKnowledge trial = own;
  std::size_t at = 0;
  while (at < trial.movements.size() && trial.movements[at].id != movement.id)
    ++at;
  if (at == trial.movements.size())
    trial.movements.push_back(movement);
  trial.movements[at] = movement;
  std::vector<FieldFault> faults = judged(movement, layered(builtIn, trial));
  for (const FieldFault& more : refused(movement, trial, at, builtIn)) {
    const bool said = std::any_of(faults.begin(), faults.end(), [&](const FieldFault& fault) {
      return !fault.hint && fault.field == more.field && fault.option == more.option;
    });
    if (!said)
      faults.push_back(more);
  }
  std::stable_sort(faults.begin(), faults.end(),
                   [](const FieldFault& a, const FieldFault& b) { return !a.hint && b.hint; });
  return faults;
}

} // namespace matwright
