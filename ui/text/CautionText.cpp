#include "ui/text/CautionText.h"

#include "ui/text/FindingText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("CautionText", text); }

const Person* personOf(const Caution& caution, const Evaluation& evaluation, std::span<const Person> roster) {
  const auto whom = evaluation.whom(caution);
  return whom ? findPerson(roster, *whom) : nullptr;
}

const PersonCondition* conditionOf(const Caution& caution, const Person* person) {
  return person && caution.condition < person->conditions.size() ? &person->conditions[caution.condition] : nullptr;
}

QString placeText(const Caution& caution, const Knowledge& knowledge, const ClassPlan& plan) {
  if (!caution.step)
    return tr("the whole class");
  const Step* step = findStep(plan, *caution.step);
  return step ? movementName(knowledge, step->movement) : QString();
}

QString qualifiersText(const Condition& condition, const PersonCondition& held) {
  QStringList parts;
  for (const QualifierSpec& spec : condition.qualifiers) {
    const auto known = held.qualifiers.find(spec.id);
    const QString name = QString::fromStdString(spec.name);
    if (known == held.qualifiers.end())
      continue;
    if (const bool* flag = std::get_if<bool>(&known->second)) {
      parts << (*flag ? name : tr("%1: no").arg(name));
    } else if (const std::string* choice = std::get_if<std::string>(&known->second)) {
      QString chosen = QString::fromStdString(*choice);
      for (const Choice& candidate : spec.choices)
        if (candidate.id == *choice)
          chosen = QString::fromStdString(candidate.name);
      parts << QStringLiteral("%1: %2").arg(name, chosen);
    } else {
      parts << QStringLiteral("%1: %2").arg(name, dateText(std::get<Date>(known->second)));
    }
  }
  return parts.join(QStringLiteral("; "));
}

// What a rule says, from what it found to by whose word it says it.
QString saidBy(const Caution& caution, const Clearance* paper, const Knowledge& knowledge, const ClassPlan& plan) {
  const Rule& rule = *caution.rule;
  QString said =
      rule.scope == Scope::missing ? tr("nowhere in the class: %1").arg(demandText(rule.asks)) : foundText(caution);
  if (said.isEmpty())
    said = QString::fromStdString(rule.why);
  if (rule.threshold)
    said += QStringLiteral(": ") + measuredText(caution, knowledge, plan);
  return caution.instructed && paper ? tr("by written instruction %1: %2").arg(giverText(*paper), said) : said;
}

void addFound(QStringList& whole, const Caution& caution, const Knowledge& knowledge, const ClassPlan& plan) {
  const Rule& rule = *caution.rule;
  if (const QString found = foundText(caution); !found.isEmpty())
    whole << tr("Found: %1 (%2).").arg(found, scopeText(rule));
  if (rule.scope == Scope::missing)
    whole << tr("Found %1: %2.").arg(scopeText(rule), demandText(rule.asks));
  QStringList definitions;
  caution.because.forEach([&](Feature feature) { definitions << definition(feature); });
  if (!definitions.isEmpty())
    whole << definitions.join(QLatin1Char(' '));
  if (rule.after) {
    const QString before = demandText(rule.after->demand);
    whole << (rule.after->lasting > Seconds{}
                  ? tr("Before it: %1, for more than %2 without a break.").arg(before, clock(rule.after->lasting))
                  : tr("Before it: %1.").arg(before));
  }
  if (rule.threshold)
    whole << QStringLiteral("%1. %2").arg(measuredText(caution, knowledge, plan), markText(rule));
}

void addRule(QStringList& whole, const Rule& rule, const RuleBook& book) {
  if (!rule.ages.empty()) {
    QStringList ages;
    rule.ages.forEach([&](AgeBand band) { ages << text(band); });
    whole << tr("For people aged %1.").arg(ages.join(QStringLiteral(", ")));
  }
  whole << tr("Why: %1").arg(QString::fromStdString(rule.why));
  if (!rule.instead.empty())
    whole << tr("Instead: %1.").arg(QString::fromStdString(rule.instead));
  whole << tr("Rests on %1; %2.").arg(text(rule.strength), text(rule.check));
  if (!rule.contested.empty())
    whole << tr("Disputed: %1").arg(QString::fromStdString(rule.contested));
  QStringList sources;
  for (const SourceId& id : rule.sources)
    if (const Source* source = book.findSource(id))
      sources << QString::fromStdString(source->cite);
  if (!sources.isEmpty())
    whole << tr("Sources: %1.").arg(sources.join(QStringLiteral("; ")));
  whole << tr("Rule %1, reviewed %2.").arg(QString::fromStdString(rule.id.value), dateText(rule.reviewed));
}

// What somebody's clinician wrote, and what that does.
void addPaper(QStringList& whole, const Caution& caution, const Clearance& paper) {
  if (caution.instructed)
    whole << tr("By written instruction %1: %2. The rule itself says %3.")
                 .arg(giverText(paper), text(caution.level), text(caution.rule->level));
  else
    whole << tr("A clearance on file, %1, lowers \"ask first\" to \"watch\".").arg(giverText(paper));
  if (!paper.note.empty())
    whole << tr("Noted there: %1").arg(QString::fromStdString(paper.note));
}

} // namespace

CautionWords wordsFor(const Caution& caution, const Knowledge& knowledge, const ClassPlan& plan,
                      const Evaluation& evaluation, std::span<const Person> roster) {
  CautionWords words;
  const Person* person = personOf(caution, evaluation, roster);
  words.who = person ? QString::fromStdString(person->name) : tr("Everybody");
  const QString place = placeText(caution, knowledge, plan);
  const QString name = QString::fromStdString(caution.name);
  const PersonCondition* held = conditionOf(caution, person);
  const Clearance* paper =
      held && caution.clearance < held->clearances.size() ? &held->clearances[caution.clearance] : nullptr;
  QStringList whole;
  switch (caution.kind) {
  case CautionKind::rule:
    words.what = saidBy(caution, paper, knowledge, plan);
    words.instead = QString::fromStdString(caution.rule->instead);
    break;
  case CautionKind::unknownMovement:
    words.what = tr("%1 is not in the catalogue, so it cannot be screened").arg(name);
    break;
  case CautionKind::unknownOption:
    words.what = tr("the option %1 is not in the catalogue; screened as written").arg(name);
    break;
  case CautionKind::unknownCondition:
    words.what = tr("no rule knows the condition %1, so it cannot be screened").arg(name);
    break;
  case CautionKind::unknownPerson:
    words.what = tr("%1 is not on file, so nothing can be screened for them").arg(name);
    break;
  case CautionKind::noWay:
    words.what = tr("no change of position leads here from the step before");
    break;
  }
  words.headline = QStringLiteral("%1 \u00b7 %2 \u00b7 %3").arg(words.who, place, text(caution.level));
  whole << words.headline;
  if (held) {
    const Condition* condition = knowledge.rules.findCondition(held->condition);
    QString line = condition ? QString::fromStdString(condition->name) : QString::fromStdString(held->condition.value);
    if (condition) {
      const QString known = qualifiersText(*condition, *held);
      if (!known.isEmpty())
        line += QStringLiteral(" (%1)").arg(known);
    }
    whole << tr("Condition: %1.").arg(line);
  }
  if (caution.kind == CautionKind::rule) {
    addFound(whole, caution, knowledge, plan);
    addRule(whole, *caution.rule, knowledge.rules);
  } else {
    whole << words.what + QLatin1Char('.');
  }
  if (caution.assumed)
    whole << tr(
        "Something about this condition has not been filled in; it was taken as holding, to be on the careful side.");
  if (paper)
    addPaper(whole, caution, *paper);
  whole << standingNotice();
  words.whole = whole.join(QLatin1Char('\n'));
  return words;
}

QString giverText(const Clearance& paper) {
  const QString date = dateText(paper.given);
  return paper.by.empty() ? tr("of %1").arg(date) : tr("of %1, %2").arg(QString::fromStdString(paper.by), date);
}

QString remarkText(const Remark& remark, const Knowledge& knowledge, const ClassPlan& plan) {
  const Step* step = remark.step ? findStep(plan, *remark.step) : nullptr;
  const QString name = step ? movementName(knowledge, step->movement) : QString();
  switch (remark.kind) {
  case RemarkKind::beforePrerequisite:
    return tr("%1 comes before %2, which prepares it").arg(name, movementName(knowledge, remark.other));
  case RemarkKind::sidesUneven:
    return tr("%1: left %2, right %3")
        .arg(movementName(knowledge, remark.other), clock(remark.first), clock(remark.second));
  case RemarkKind::overTarget:
    return tr("The class runs %1 over its %2").arg(clock(remark.first - remark.second), wholeMinutes(remark.second));
  case RemarkKind::underTarget:
    return tr("%1 of the %2 are still free").arg(clock(remark.second - remark.first), wholeMinutes(remark.second));
  case RemarkKind::bendWithoutArch:
    return tr("Forward bend %1 against arch %2").arg(clock(remark.first), clock(remark.second));
  case RemarkKind::emptySection:
    return tr("The section %1 is empty")
        .arg(remark.section < plan.sections.size() ? QString::fromStdString(plan.sections[remark.section].name)
                                                   : QString());
  }
  return {};
}

QString standingNotice() {
  return tr(
      "General guidance, not medical advice. A written instruction from the person's clinician comes first. No mark "
      "does not mean safe.");
}

QString noCautionText(bool anybodyChosen) {
  return anybodyChosen
             ? tr("No caution raised for the people chosen. That is not a clearance: the rules do not know everything.")
             : tr("Nobody is chosen for this class, so nothing has been screened for anybody.");
}

QStringList stopSigns() {
  return {tr("chest pain"), tr("faintness"), tr("unusual breathlessness"), tr("pain that spreads down a leg"),
          tr("new numbness or weakness")};
}

} // namespace matwright
