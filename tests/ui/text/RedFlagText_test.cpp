#include "tests/support/RealKnowledge.h"
#include "ui/text/CautionText.h"
#include "ui/text/RedFlagText.h"
#include "ui/text/VocabularyText.h"

#include <QString>
#include <algorithm>
#include <gtest/gtest.h>

namespace matwright {
namespace {

QString html(const std::string& text) { return QString::fromStdString(text).toHtmlEscaped(); }
const Knowledge& knowledge() { return test::realKnowledge(); }

Person with(const char* condition) {
  Person person;
  person.id = {"somebody"};
  person.name = "Somebody Withaname";
  person.conditions.push_back({{condition}, {}, {}, {}});
  return person;
}

// What is said of one group, and the number under which a source is listed at the end of the page.
QString partOf(const QString& page, const RedFlagGroup& group) {
  const qsizetype at = page.indexOf(QStringLiteral("'level'>%1</span>").arg(html(group.title)));
  EXPECT_GE(at, 0) << group.id;
  return page.mid(at).section(QStringLiteral("</table>"), 0, 0);
}
QString numberOf(const QString& page, const std::string& cite) {
  const QString list = page.mid(page.lastIndexOf(QStringLiteral("Sources: ")) + 9);
  const qsizetype at = list.indexOf(html(cite));
  EXPECT_GE(at, 2) << cite;
  return list.left(at).trimmed().section(QLatin1Char('['), -1).section(QLatin1Char(']'), 0, 0);
}

TEST(RedFlagText, NamesEverySignWithWhatToDoAndWhereItComesFrom) {
  const QString page = redFlagHtml(knowledge(), {});
  ASSERT_GT(knowledge().redFlags.groups.size(), 10u);
  for (const RedFlagGroup& group : knowledge().redFlags.groups) {
    const QString own = partOf(page, group);
    const QStringList numbers = own.section(QLatin1Char('['), -1)
                                    .section(QStringLiteral("]: ") + text(group.check).toHtmlEscaped(), 0, 0)
                                    .split(QStringLiteral(",\u00a0"));
    EXPECT_EQ(numbers.size(), std::max<qsizetype>(1, static_cast<qsizetype>(group.sources.size()))) << group.id;
    EXPECT_TRUE(own.contains(html(group.act))) << group.id;
    for (const std::string& sign : group.signs)
      EXPECT_TRUE(own.contains(QStringLiteral("<li>%1</li>").arg(html(sign)))) << sign;
    for (const SourceId& source : group.sources)
      EXPECT_TRUE(numbers.contains(numberOf(page, knowledge().rules.findSource(source)->cite))) << source.value;
    EXPECT_EQ(own.contains(QStringLiteral("No source is on file")), group.sources.empty()) << group.id;
    EXPECT_TRUE(own.contains(html(group.note))) << group.id;
  }
  for (const std::string& sentence : knowledge().redFlags.closing)
    EXPECT_TRUE(page.contains(html(sentence)));
  EXPECT_TRUE(page.contains(standingNotice().toHtmlEscaped()));
}

TEST(RedFlagText, WhatIsMostUrgentComesFirst) {
  const QString page = redFlagHtml(knowledge(), {});
  qsizetype last = -1;
  for (const Urgency urgency : {Urgency::emergency, Urgency::stop, Urgency::urgent, Urgency::routine, Urgency::ask}) {
    const qsizetype at = page.indexOf(QStringLiteral("<h2 class='band'>%1</h2>").arg(text(urgency)));
    EXPECT_GT(at, last) << word(urgency);
    last = at;
  }
}

TEST(RedFlagText, WhatConcernsSomebodyInTheClassComesFirstAndSaysSoWithoutAName) {
  const auto places = [](const QString& page) {
    return std::pair(page.indexOf(QStringLiteral("Signs to stop on in pregnancy")),
                     page.indexOf(QStringLiteral("Signs to stop on during class")));
  };
  const QString alone = redFlagHtml(knowledge(), {});
  EXPECT_GT(places(alone).first, places(alone).second);
  EXPECT_FALSE(alone.contains(QStringLiteral("concerns somebody in this class")));
  const std::vector<Person> people{with("pregnancy")};
  const QString page = redFlagHtml(knowledge(), people);
  EXPECT_LT(places(page).first, places(page).second);
  EXPECT_EQ(page.count(QStringLiteral("concerns somebody in this class")), 2) << "two groups are for a pregnancy";
  EXPECT_FALSE(page.contains(QStringLiteral("Withaname")));
}

TEST(RedFlagText, SaysForWhomOnlyWhereItIsNotForEverybody) {
  const QString page = redFlagHtml(knowledge(), {});
  for (const RedFlagGroup& group : knowledge().redFlags.groups) {
    const Condition* condition = group.condition ? knowledge().rules.findCondition(*group.condition) : nullptr;
    EXPECT_EQ(partOf(page, group).contains(QStringLiteral("For: ")), condition != nullptr) << group.id;
    if (condition) {
      EXPECT_TRUE(partOf(page, group).contains(QStringLiteral("For: %1.").arg(html(condition->name)))) << group.id;
    }
  }
}

TEST(RedFlagText, SaysNothingEmpty) {
  const QString page = redFlagHtml(knowledge(), {});
  for (const char* empty :
       {"<li></li>", "<p></p>", "<ul></ul>", "<p class='soft'></p>", "<span class='level'></span>", "[]"})
    EXPECT_FALSE(page.contains(QLatin1String(empty))) << empty;
  Knowledge few = knowledge();
  std::erase_if(few.redFlags.groups, [](const RedFlagGroup& group) { return group.urgency == Urgency::ask; });
  EXPECT_FALSE(redFlagHtml(few, {}).contains(text(Urgency::ask)));
  few.redFlags = {};
  const QString none = redFlagHtml(few, {});
  EXPECT_TRUE(none.contains(standingNotice().toHtmlEscaped()));
  EXPECT_FALSE(none.contains(QStringLiteral("Sources")));
  EXPECT_FALSE(none.contains(QStringLiteral("<h2")));
}

} // namespace
} // namespace matwright
