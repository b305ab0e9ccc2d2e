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

QString strong(const QString& html) { return QStringLiteral("<span class='level'>%1</span>").arg(html); }

// "For: Pregnancy."; empty for what is for everybody.
QString forWhom(const RedFlagGroup& group, const Knowledge& knowledge) {
  if (!group.condition)
    return {};
  const Condition* condition = knowledge.rules.findCondition(*group.condition);
  return QStringLiteral("<p>%1</p>")
      .arg(tr("For: %1.").arg(html(condition ? condition->name : group.condition->value)));
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
    return numbers.join(QStringLiteral(",\u00a0"));
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
                              : tr("[%1]: %2.").arg(numbers, text(group.check).toHtmlEscaped()));
  return parts.join(QLatin1Char(' '));
}

// The signs from one place on, before another.
QString listOf(const std::vector<std::string>& signs, std::size_t from, std::size_t to) {
  QString list;
  for (std::size_t i = from; i < to; ++i)
    list += QStringLiteral("<li>%1</li>").arg(html(signs[i]));
  return QStringLiteral("<ul>%1</ul>").arg(list);
}

// The signs at the left, a long list of them in two columns; what to do at the right.
QString groupHtml(const RedFlagGroup& group, const Knowledge& knowledge, bool concerning, Numbered& sources) {
  constexpr std::size_t kLongList = 6;
  const std::size_t count = group.signs.size(), half = (count + 1) / 2;
  const QString signs = count < kLongList ? QStringLiteral("<td colspan='2'>%1</td>").arg(listOf(group.signs, 0, count))
                                          : QStringLiteral("<td>%1</td><td>%2</td>")
                                                .arg(listOf(group.signs, 0, half), listOf(group.signs, half, count));
  QString title = strong(html(group.title));
  if (concerning)
    title += QLatin1Char(' ') + strong(tr("(concerns somebody in this class)"));
  return QStringLiteral("<table width='100%' cellspacing='0'><tr><td class='ruled' width='60%' colspan='2'>%1</td>"
                        "<td class='ruled' rowspan='2'><p>%2</p>%3<p class='soft'>%4</p></td></tr>"
                        "<tr>%5</tr></table>")
      .arg(title, strong(html(group.act)), forWhom(group, knowledge), standing(group, sources), signs);
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
    page += QStringLiteral("<h2 class='band'>%1</h2>").arg(text(urgency).toHtmlEscaped());
    for (const RedFlagGroup* group : groups)
      page += groupHtml(*group, knowledge, concerns(*group, inClass), sources);
  }
  const std::vector<std::string>& closing = knowledge.redFlags.closing;
  if (!closing.empty())
    page += QStringLiteral("<h2>%1</h2>").arg(tr("Bear in mind")) + listOf(closing, 0, closing.size());
  const QString cites = sources.list();
  return cites.isEmpty() ? page : page + QStringLiteral("<p class='soft'>%1</p>").arg(tr("Sources: %1.").arg(cites));
}

} // namespace matwright
