#include "ui/text/RedFlagText.h"

#include "ui/text/CautionText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <algorithm>
#include <iterator>
#include <vector>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("RedFlagText", text); }
QString html(const std::string& text) { return QString::fromStdString(text).toHtmlEscaped(); }

bool concerns(const RedFlagGroup& group, std::span<const Person> people) {
  return group.condition && std::any_of(people.begin(), people.end(), [&](const Person& person) {
           return std::any_of(person.conditions.begin(), person.conditions.end(),
                              [&](const PersonCondition& held) { return held.condition == *group.condition; });
         });
}

// "For Pregnancy, which somebody in this class has"; empty for what is for everybody.
QString forWhom(const RedFlagGroup& group, const Knowledge& knowledge, std::span<const Person> inClass) {
  if (!group.condition)
    return {};
  const Condition* condition = knowledge.rules.findCondition(*group.condition);
  const QString name = html(condition ? condition->name : group.condition->value);
  return concerns(group, inClass) ? tr("For: %1. Somebody in this class has it.").arg(name) : tr("For: %1.").arg(name);
}

// What is read first: what cannot wait, then what ends somebody's class, then what decides about the next one.
constexpr Urgency kOrder[] = {Urgency::emergency, Urgency::stop, Urgency::urgent, Urgency::routine, Urgency::ask};
static_assert(std::size(kOrder) == kWordCount<Urgency>);

// The sources of a page by their numbers, in the order in which they are first named.
class Numbered {
public:
  explicit Numbered(const RuleBook& book) : book_(book) {}

  QString numbersOf(const std::vector<SourceId>& sources) {
    QStringList numbers;
    for (const SourceId& id : sources) {
      if (!book_.findSource(id))
        continue;
      auto at = std::find(named_.begin(), named_.end(), id);
      if (at == named_.end())
        at = named_.insert(at, id);
      numbers << QString::number(at - named_.begin() + 1);
    }
    return numbers.join(QStringLiteral(", "));
  }
  QString list() const {
    QStringList cites;
    for (std::size_t i = 0; i < named_.size(); ++i)
      cites << QStringLiteral("[%1] %2").arg(i + 1).arg(html(book_.findSource(named_[i])->cite));
    return cites.join(QStringLiteral("; "));
  }

private:
  const RuleBook& book_;
  std::vector<SourceId> named_;
};

// What is limited about a group, where it comes from and how far that was verified.
QString standing(const RedFlagGroup& group, Numbered& sources) {
  QStringList parts;
  if (!group.note.empty())
    parts << html(group.note);
  const QString numbers = sources.numbersOf(group.sources);
  parts << (numbers.isEmpty() ? tr("No source is on file.")
                              : tr("[%1] %2.").arg(numbers, text(group.check).toHtmlEscaped()));
  return parts.join(QLatin1Char(' '));
}

// The signs at the left, what to do at the right.
QString groupHtml(const RedFlagGroup& group, const QString& whom, Numbered& sources) {
  QString signs;
  for (const std::string& sign : group.signs)
    signs += QStringLiteral("<li>%1</li>").arg(html(sign));
  QString page =
      QStringLiteral("<table width='100%' cellspacing='0'><tr><td width='55%'><p><span class='level'>%1</span></p>"
                     "<ul>%2</ul></td><td width='45%'><p><span class='level'>%3</span></p>")
          .arg(html(group.title), signs, html(group.act));
  if (!whom.isEmpty())
    page += QStringLiteral("<p>%1</p>").arg(whom);
  return page + QStringLiteral("<p class='soft'>%1</p></td></tr></table>").arg(standing(group, sources));
}

} // namespace

QString redFlagTitle() { return tr("Red flags and stop signs"); }

QString redFlagHtml(const Knowledge& knowledge, std::span<const Person> inClass) {
  QString page =
      QStringLiteral("<h1>%1</h1><p>%2</p>").arg(redFlagTitle().toHtmlEscaped(), standingNotice().toHtmlEscaped());
  Numbered sources(knowledge.rules);
  for (const Urgency urgency : kOrder) {
    std::vector<const RedFlagGroup*> groups;
    for (const RedFlagGroup& group : knowledge.redFlags.groups)
      if (group.urgency == urgency)
        groups.push_back(&group);
    if (groups.empty())
      continue;
    std::stable_partition(groups.begin(), groups.end(),
                          [&](const RedFlagGroup* group) { return concerns(*group, inClass); });
    page += QStringLiteral("<h2>%1</h2>").arg(text(urgency).toHtmlEscaped());
    for (const RedFlagGroup* group : groups)
      page += groupHtml(*group, forWhom(*group, knowledge, inClass), sources);
  }
  QStringList closing;
  for (const std::string& sentence : knowledge.redFlags.closing)
    closing << html(sentence);
  return page + QStringLiteral("<h2>%1</h2><p>%2</p><p class='soft'>%3</p>")
                    .arg(tr("Bear in mind"), closing.join(QLatin1Char(' ')), tr("Sources: %1.").arg(sources.list()));
}

} // namespace matwright
