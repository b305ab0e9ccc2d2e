#include "ui/rules/RuleReport.h"

#include "core/evaluate/Facts.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("RuleReport", text); }

QString nameOf(const Caution& caution, const PlanDocument& document) {
  const auto whom = document.evaluation().whom(caution);
  const Person* person = whom ? findPerson(document.roster(), *whom) : nullptr;
  return person ? QString::fromStdString(person->name) : tr("everybody");
}

} // namespace

std::optional<QStringList> ConcernedMovements::of(const Rule& rule, std::shared_ptr<const Knowledge> knowledge) {
  const bool ofWays = rule.scope == Scope::way || (rule.threshold && rule.threshold->unit == MeasureUnit::changes);
  if (ofWays || namesNothing(rule.asks))
    return std::nullopt;
  if (knowledge_ != knowledge) {
    facts_ = factsOfCatalogue(*knowledge);
    knowledge_ = std::move(knowledge);
  }
  QStringList names;
  const auto& movements = knowledge_->catalogue.movements();
  for (std::size_t at = 0; at < movements.size() && at < facts_.size(); ++at)
    if (met(rule.asks, askedBy(facts_[at])))
      names << QString::fromStdString(movements[at].name);
  return names;
}

QStringList peopleConcerned(const Rule& rule, const PlanDocument& document) {
  RuleBook alone;
  alone.conditions = document.knowledge().rules.conditions;
  alone.rules = {rule};
  QStringList names;
  for (const ActiveRule& active : activeRules(alone, document.roster(), document.day()))
    if (active.person < document.roster().size()) {
      const QString name = QString::fromStdString(document.roster()[active.person].name);
      names << (active.assumed ? tr("%1 (something is not filled in yet)").arg(name) : name);
    }
  names.removeDuplicates();
  return names;
}

QStringList peopleWith(const ConditionId& condition, const PlanDocument& document) {
  QStringList names;
  for (const Person& person : document.roster())
    for (const PersonCondition& held : person.conditions)
      if (held.condition == condition)
        names << QString::fromStdString(person.name);
  names.removeDuplicates();
  return names;
}

QStringList spokenIn(const Rule& rule, const PlanDocument& document) {
  struct Spoken {
    QString name;
    QStringList people;
  };
  std::vector<std::pair<std::optional<StepId>, Spoken>> places;
  for (const Caution& caution : document.evaluation().cautions) {
    if (!caution.rule || caution.rule->id != rule.id)
      continue;
    if (places.empty() || places.back().first != caution.step) {
      const Step* step = caution.step ? findStep(document.plan(), *caution.step) : nullptr;
      places.push_back(
          {caution.step, {step ? movementName(document.knowledge(), step->movement) : tr("The class as a whole"), {}}});
    }
    const QString name = nameOf(caution, document);
    places.back().second.people << (caution.level == rule.level
                                        ? name
                                        : QStringLiteral("%1 (%2)").arg(name, text(caution.level)));
  }
  QStringList lines;
  for (const auto& [step, place] : places)
    lines << QStringLiteral("%1: %2").arg(place.name, place.people.join(QStringLiteral(", ")));
  return lines;
}

} // namespace matwright
