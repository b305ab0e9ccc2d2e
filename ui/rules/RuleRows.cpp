#include "ui/rules/RuleRows.h"

#include "core/knowledge/OwnKnowledge.h"
#include "ui/text/FindingText.h"
#include "ui/text/RuleText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <algorithm>
#include <map>

namespace matwright {
namespace {

QString tr(const char* text, int n = -1) { return QCoreApplication::translate("RuleRows", text, nullptr, n); }

QString searched(const Condition* condition) {
  if (!condition)
    return tr("For everybody, and by age");
  QStringList words{QString::fromStdString(condition->name), QString::fromStdString(condition->about)};
  for (const std::string& code : condition->icd10)
    words << QString::fromStdString(code);
  return words.join(QLatin1Char(' '));
}

QString searched(const Rule& rule, const RuleBook& book) {
  QStringList words{demandText(rule.asks), QString::fromStdString(rule.why), QString::fromStdString(rule.instead),
                    QString::fromStdString(rule.contested)};
  for (const SourceId& id : rule.sources)
    if (const Source* source = book.findSource(id))
      words << QString::fromStdString(source->cite);
  return words.join(QLatin1Char(' '));
}

bool hasAll(const QStringList& words, const QString& text) {
  return std::all_of(words.begin(), words.end(),
                     [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

bool fits(const Rule& rule, const RuleFilter& filter, const std::set<RuleId>& onFile) {
  const bool program = !isOwn(rule.id);
  return (filter.levels.empty() || filter.levels.contains(rule.level)) &&
         (filter.scopes.empty() || filter.scopes.contains(rule.scope)) &&
         (filter.strengths.empty() || filter.strengths.contains(rule.strength)) &&
         (!filter.contested || !rule.contested.empty()) && (!filter.own || !program) &&
         (!filter.open || (program && thresholdIsOpen(rule))) && (!filter.changed || thresholdIsChanged(rule)) &&
         (!filter.onFile || onFile.contains(rule.id));
}

// A condition for which there is no rule.
bool fits(const Condition& condition, const RuleFilter& filter) {
  RuleFilter whose = filter;
  whose.own = false;
  return !whose.asksForMoreThanWords() && (!filter.own || isOwn(condition.id));
}

QString markOf(bool own, bool unkept) {
  return unkept ? tr("your own, not kept yet") : own ? tr("your own") : QString();
}

RuleRow rowOf(const Rule& rule, const RuleBook& book, bool unkept) {
  RuleRow row;
  row.rule = rule.id;
  row.level = rule.level;
  const QString title = titleText(rule);
  row.title =
      QStringLiteral("%1: %2").arg(withCapital(text(rule.level)), title.isEmpty() ? tr("(not written yet)") : title);
  QStringList facts;
  if (const QString tests = testsText(rule, book); !tests.isEmpty())
    facts << tests;
  facts << placeText(rule) << shortText(rule.strength);
  row.body = facts.join(QStringLiteral(" \u00b7 "));
  row.mark = markOf(isOwn(rule.id), unkept);
  if (thresholdIsChanged(rule))
    row.mark = tr("your threshold; usually %1").arg(amountText(rule.threshold->usual, rule.threshold->unit));
  row.spoken = QStringList{row.title, row.body}.join(QStringLiteral(". "));
  if (!row.mark.isEmpty())
    row.spoken += QStringLiteral(". ") + row.mark;
  return row;
}

} // namespace

bool RuleFilter::asksForMoreThanWords() const {
  RuleFilter wordless = *this;
  wordless.words.clear();
  return wordless != RuleFilter{};
}

bool thresholdIsChanged(const Rule& rule) {
  return !isOwn(rule.id) && rule.threshold && rule.threshold->amount != rule.threshold->usual;
}

std::set<RuleId> rulesConcerning(const RuleBook& book, std::span<const Person> people, Date day) {
  std::set<RuleId> all;
  for (const ActiveRule& active : activeRules(book, people, day))
    if (active.person != Finding::kNone)
      all.insert(book.rules[active.rule].id);
  return all;
}

std::vector<RuleGroup> ruleGroups(const RuleBook& book, const RuleFilter& filter, const std::set<RuleId>& onFile,
                                  const Unkept& unkept) {
  const QStringList words = filter.words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  std::map<ConditionId, std::vector<const Rule*>> rules; // an empty id for none
  for (const Rule& rule : book.rules)
    rules[rule.condition.value_or(ConditionId{})].push_back(&rule);

  std::vector<const Condition*> conditions;
  for (const Condition& condition : book.conditions)
    conditions.push_back(&condition);
  std::stable_sort(conditions.begin(), conditions.end(), [](const Condition* a, const Condition* b) {
    return QString::fromStdString(a->name).compare(QString::fromStdString(b->name), Qt::CaseInsensitive) < 0;
  });
  conditions.insert(conditions.begin(), nullptr);

  std::vector<RuleGroup> groups;
  for (const Condition* condition : conditions) {
    const QString about = searched(condition);
    const auto& all = rules[condition ? condition->id : ConditionId{}];
    RuleGroup group;
    for (const Rule* rule : all)
      if (const bool draft = unkept.rules.contains(rule->id);
          draft || (fits(*rule, filter, onFile) &&
                    (words.empty() || hasAll(words, about + QLatin1Char(' ') + searched(*rule, book)))))
        group.rows.push_back(rowOf(*rule, book, draft));
    const bool draft = condition && unkept.conditions.contains(condition->id);
    if (group.rows.empty() && !draft && !(all.empty() && condition && fits(*condition, filter) && hasAll(words, about)))
      continue;
    std::stable_sort(group.rows.begin(), group.rows.end(),
                     [](const RuleRow& a, const RuleRow& b) { return a.level > b.level; });
    if (condition) {
      group.condition = condition->id;
      group.title = condition->name.empty() ? tr("(no name yet)") : QString::fromStdString(condition->name);
      group.mark = markOf(isOwn(condition->id), draft);
    } else {
      group.title = about;
    }
    group.body = all.empty() ? tr("no rule yet") : tr("%n rule(s)", static_cast<int>(group.rows.size()));
    groups.push_back(std::move(group));
  }
  return groups;
}

} // namespace matwright
