#include "core/handout/PersonSheet.h"

#include "core/handout/SheetRows.h"

#include <algorithm>

namespace matwright {
namespace {

// None where nobody answered, or with what the condition does not have: then rules take it as open.
std::optional<QualifierValue> answerTo(const QualifierSpec& spec, const PersonCondition& held) {
  const auto known = held.qualifiers.find(spec.id);
  if (known == held.qualifiers.end())
    return std::nullopt;
  switch (spec.kind) {
  case QualifierKind::flag:
    return std::holds_alternative<bool>(known->second) ? std::optional(known->second) : std::nullopt;
  case QualifierKind::choice: {
    const std::string* id = std::get_if<std::string>(&known->second);
    for (const Choice& choice : spec.choices)
      if (id && choice.id == *id)
        return QualifierValue{choice.name};
    return std::nullopt;
  }
  case QualifierKind::weeksSince:
  case QualifierKind::pregnancyWeek: {
    const Date* date = std::get_if<Date>(&known->second);
    return date && date->ok() ? std::optional(known->second) : std::nullopt;
  }
  }
  return std::nullopt;
}

PaperState stateOf(const Clearance& clearance, Date day) {
  if (holdsOn(clearance, day))
    return PaperState::holds;
  return std::chrono::sys_days{day} < std::chrono::sys_days{clearance.given} ? PaperState::toCome : PaperState::expired;
}

SheetCondition conditionOf(const RuleBook& book, const PersonCondition& held, Date day) {
  SheetCondition shown;
  shown.name = conditionName(book, held.condition);
  shown.screened = std::any_of(book.rules.begin(), book.rules.end(),
                               [&](const Rule& rule) { return rule.condition == held.condition; });
  shown.note = held.note;
  if (const Condition* condition = book.findCondition(held.condition)) {
    shown.icd10 = condition->icd10;
    for (const QualifierSpec& spec : condition->qualifiers) {
      SheetQualifier qualifier{spec, answerTo(spec, held), 0};
      if (const Date* date = qualifier.answer ? std::get_if<Date>(&*qualifier.answer) : nullptr)
        qualifier.week = weekOn(spec.kind, *date, day);
      shown.qualifiers.push_back(std::move(qualifier));
    }
  }
  for (const Clearance& clearance : held.clearances)
    shown.papers.push_back({clearance, stateOf(clearance, day)});
  return shown;
}

void count(Hanging& hanging, Level level) {
  hanging.strongest = hanging.count == 0 ? level : std::max(hanging.strongest, level);
  ++hanging.count;
}

// The rules with every open qualifier taken as holding, and rules with ages for whoever has none.
std::vector<ActiveRule> activeIfAllHeld(const RuleBook& book, const Person& person, Date day) {
  RuleBook careful{book.conditions, {}, book.rules};
  for (Rule& rule : careful.rules)
    for (QualifierTest& test : rule.when)
      test.openHolds = true;
  return activeRules(careful, std::span(&person, 1), day);
}

class Questions {
public:
  Questions(const RuleBook& book, const Person& person, Date day, std::span<const ActiveRule> active)
      : book_(book), person_(person), active_(active), possible_(activeIfAllHeld(book, person, day)) {}

  void aboutRows(const std::vector<SheetRow>& rows) {
    for (std::size_t i = 0; i < rows.size(); ++i)
      if (rows[i].level == Level::askFirst) {
        SheetQuestion question;
        question.kind = QuestionKind::permission;
        question.row = i;
        all_.push_back(std::move(question));
      }
  }
  void aboutPapers(const SheetCondition& condition) {
    for (const SheetPaper& paper : condition.papers) {
      const bool standsIn = std::any_of(condition.papers.begin(), condition.papers.end(), [&](const SheetPaper& other) {
        const FeatureSet wanted = paper.clearance.features, held = other.clearance.features;
        return other.state == PaperState::holds && (held.empty() || (!wanted.empty() && held.containsAll(wanted)));
      });
      if (paper.state == PaperState::expired && !standsIn)
        ask(QuestionKind::renewal, condition).paper = paper;
    }
  }
  void aboutQualifiers(const SheetCondition& condition, std::size_t place) {
    for (const SheetQualifier& qualifier : condition.qualifiers) {
      if (qualifier.answer)
        continue;
      SheetQuestion& question = ask(QuestionKind::qualifier, condition);
      question.asked = qualifier;
      for (const ActiveRule& each : possible_)
        if (each.condition == place)
          countOn(book_.rules[each.rule], qualifier.spec.id, speaks(each), question);
    }
    if (!condition.screened)
      ask(QuestionKind::unscreened, condition);
  }
  void aboutAge() {
    if (person_.ageBand)
      return;
    SheetQuestion question;
    question.kind = QuestionKind::age;
    for (const Rule& rule : book_.rules)
      if (!rule.ages.empty())
        count(question.silent, rule.level);
    if (question.silent.count > 0)
      all_.push_back(std::move(question));
  }
  std::vector<SheetQuestion> take() { return std::move(all_); }

private:
  SheetQuestion& ask(QuestionKind kind, const SheetCondition& about) {
    SheetQuestion& question = all_.emplace_back();
    question.kind = kind;
    question.condition = about.name;
    return question;
  }
  bool speaks(const ActiveRule& possible) const {
    return std::any_of(active_.begin(), active_.end(), [&](const ActiveRule& each) {
      return each.rule == possible.rule && each.condition == possible.condition;
    });
  }
  static void countOn(const Rule& rule, const std::string& qualifier, bool speaks, SheetQuestion& question) {
    for (const QualifierTest& test : rule.when)
      if (test.qualifier == qualifier && test.openHolds == speaks)
        return count(speaks ? question.speaking : question.silent, rule.level);
  }

  const RuleBook& book_;
  const Person& person_;
  std::span<const ActiveRule> active_;
  std::vector<ActiveRule> possible_;
  std::vector<SheetQuestion> all_;
};

std::vector<Source> sourcesOf(const RuleBook& book, const std::vector<SheetRow>& rows) {
  std::vector<Source> cited;
  for (const SheetRow& row : rows)
    for (const SheetRule& said : row.rules)
      for (const SourceId& id : said.rule.sources)
        if (std::none_of(cited.begin(), cited.end(), [&](const Source& each) { return each.id == id; }))
          if (const Source* source = book.findSource(id))
            cited.push_back(*source);
  return cited;
}

PersonSheet sheetOf(const Knowledge& knowledge, const Person& person, Date day, NameStyle style, const ClassPlan& plan,
                    const std::vector<const Caution*>& cautions) {
  const RuleBook& book = knowledge.rules;
  std::vector<ActiveRule> active = activeRules(book, std::span(&person, 1), day);
  PersonSheet sheet;
  sheet.forEverybody =
      static_cast<int>(std::erase_if(active, [](const ActiveRule& each) { return each.person == Finding::kNone; }));
  sheet.who = style == NameStyle::names ? person.name
              : person.initials.empty() ? initialsFrom(person.name)
                                        : person.initials;
  sheet.ageBand = person.ageBand;
  sheet.stature = person.stature;
  sheet.mass = person.mass;
  sheet.wishes = person.wishes;
  sheet.day = day;
  sheet.movements = static_cast<int>(knowledge.catalogue.movements().size());
  sheet.rows = sheetRows(knowledge, person, active, day, plan, cautions);
  sheet.sources = sourcesOf(book, sheet.rows);
  Questions questions(book, person, day, active);
  questions.aboutRows(sheet.rows);
  for (const PersonCondition& held : person.conditions)
    sheet.conditions.push_back(conditionOf(book, held, day));
  for (const SheetCondition& condition : sheet.conditions)
    questions.aboutPapers(condition);
  for (std::size_t i = 0; i < sheet.conditions.size(); ++i)
    questions.aboutQualifiers(sheet.conditions[i], i);
  questions.aboutAge();
  sheet.questions = questions.take();
  return sheet;
}

} // namespace

PersonSheet personSheetOf(const Knowledge& knowledge, const Person& person, Date day, NameStyle style) {
  return sheetOf(knowledge, person, day, style, {}, {});
}

PersonSheet personSheetOf(const Knowledge& knowledge, const Person& person, Date day, NameStyle style,
                          const ClassPlan& plan, const Evaluation& evaluation) {
  const std::vector<PersonId>& people = evaluation.people;
  if (std::find(people.begin(), people.end(), person.id) == people.end())
    return personSheetOf(knowledge, person, day, style);
  std::vector<const Caution*> hers;
  for (const Caution& caution : evaluation.cautions)
    if (caution.rule && evaluation.whom(caution) == person.id)
      hers.push_back(&caution);
  PersonSheet sheet = sheetOf(knowledge, person, day, style, plan, hers);
  sheet.className = plan.name;
  return sheet;
}

} // namespace matwright
