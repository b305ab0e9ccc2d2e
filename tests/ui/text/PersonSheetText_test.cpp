#include "tests/support/RealKnowledge.h"
#include "ui/text/CautionText.h"
#include "ui/text/FindingText.h"
#include "ui/text/PersonSheetText.h"
#include "ui/text/VocabularyText.h"

#include <QRegularExpression>
#include <gtest/gtest.h>
#include <set>

namespace matwright {
namespace {

Date on(const char* iso) { return *dateFromIso(iso); }
const Date kDay = on("2026-12-02");

// The words without the tags.
QString plain(QString html) {
  html.replace(QRegularExpression(QStringLiteral("<[^>]*>")), QStringLiteral(" "));
  return html.replace(QStringLiteral("&quot;"), QStringLiteral("\""))
      .replace(QStringLiteral("&lt;"), QStringLiteral("<"))
      .replace(QStringLiteral("&gt;"), QStringLiteral(">"))
      .replace(QStringLiteral("&amp;"), QStringLiteral("&"));
}

struct SheetWords : testing::Test {
  const Knowledge& knowledge = test::realKnowledge();
  Person person;

  void SetUp() override {
    person.id.value = "ida";
    person.name = "Ida";
    person.initials = "I.";
  }
  PersonCondition& with(const char* condition) {
    return person.conditions.emplace_back(PersonCondition{ConditionId{condition}, {}, {}, {}});
  }
  PersonSheet sheet() const { return personSheetOf(knowledge, person, kDay, NameStyle::initials); }
  QString html() const { return personSheetHtml(sheet()); }
  bool says(const char* words) const { return plain(html()).contains(QString::fromUtf8(words)); }
  static QString heading(Level level) {
    QString words = text(level);
    return QStringLiteral("<h2>%1</h2>").arg(words.replace(0, 1, words.left(1).toUpper()));
  }
};

TEST_F(SheetWords, ALevelHasAHeadingOnlyWhereItHasRowsAndStrongerOnesComeFirst) {
  for (const Condition& condition : knowledge.rules.conditions) {
    person.conditions.clear();
    with(condition.id.value.c_str());
    const PersonSheet made = sheet();
    const QString page = personSheetHtml(made);
    qsizetype last = page.size();
    for (const Level level : {Level::watch, Level::adapt, Level::askFirst, Level::leaveOut}) {
      const bool any =
          std::any_of(made.rows.begin(), made.rows.end(), [&](const SheetRow& row) { return row.level == level; });
      EXPECT_EQ(page.count(heading(level)), any ? 1 : 0) << condition.id.value;
      if (!any)
        continue;
      EXPECT_LT(page.indexOf(heading(level)), last) << condition.id.value;
      last = page.indexOf(heading(level));
    }
  }
}

TEST_F(SheetWords, SafeIsSaidInTheNoticeAlone) {
  for (const Condition& condition : knowledge.rules.conditions)
    with(condition.id.value.c_str());
  const QString page = plain(html()).toLower();
  EXPECT_EQ(page.count(standingNotice().toLower()), 1);
  EXPECT_EQ(page.count(QStringLiteral("safe")), standingNotice().toLower().count(QStringLiteral("safe")));
  person.conditions.clear();
  EXPECT_EQ(plain(html()).toLower().count(QStringLiteral("safe")), 1);
  EXPECT_TRUE(says("That is not a clearance"));
}

TEST_F(SheetWords, EveryNumberCitedIsListedAndEverySourceListedIsCited) {
  for (const char* condition : {"pregnancy", "disc", "hip-replacement", "osteoporosis"})
    with(condition);
  const PersonSheet made = sheet();
  const QString page = plain(personSheetHtml(made));
  const qsizetype listBegin = page.lastIndexOf(QStringLiteral("Sources"));
  std::set<int> cited;
  const QRegularExpression brackets(QStringLiteral("\\[([0-9, ]+)\\]"));
  for (auto match = brackets.globalMatch(page.left(listBegin)); match.hasNext();)
    for (const QString& number : match.next().captured(1).split(QStringLiteral(", ")))
      cited.insert(number.toInt());
  EXPECT_EQ(cited.size(), made.sources.size());
  EXPECT_EQ(*cited.rbegin(), static_cast<int>(made.sources.size()));
  for (std::size_t i = 0; i < made.sources.size(); ++i)
    EXPECT_TRUE(page.mid(listBegin).contains(
        QStringLiteral("[%1] %2").arg(i + 1).arg(QString::fromStdString(made.sources[i].cite))));
}

TEST_F(SheetWords, WordsForHowFarThingsWereVerifiedAreExplainedWhereTheyOccur) {
  with("glaucoma").qualifiers["unsettled"] = false;
  EXPECT_TRUE(says("(from memory)"));
  EXPECT_TRUE(says("Seen: the fact was seen in the source, its abstract or an official page; from memory, not yet"));
  EXPECT_FALSE(says("second hand"));
}

TEST_F(SheetWords, AMarkOfTheTeachersIsToldToSomebodyElse) {
  for (const Rule& rule : knowledge.rules.rules) {
    PersonSheet made;
    made.rows = {{rule.level, rule.instead, rule.why, {}, {}, {{rule, rule.asks, false, false, {}, {}, false}}}};
    if (!rule.threshold)
      continue;
    EXPECT_TRUE(plain(personSheetHtml(made)).contains(markText(rule))) << rule.id.value;
    made.rows[0].rules[0].rule.threshold->amount += 1;
    EXPECT_TRUE(
        plain(personSheetHtml(made)).contains(QStringLiteral("The mark is set by the teacher; the usual one is ")));
    EXPECT_FALSE(plain(personSheetHtml(made)).contains(QStringLiteral(" you")));
  }
}

TEST_F(SheetWords, EveryDisputeIsWrittenOutOnce) {
  with("pregnancy").qualifiers["week"] = on("2027-04-07");
  const PersonSheet made = sheet();
  const QString page = plain(personSheetHtml(made));
  int disputed = 0;
  for (const SheetRow& row : made.rows)
    for (const SheetRule& said : row.rules)
      if (!said.rule.contested.empty()) {
        ++disputed;
        EXPECT_EQ(page.count(QString::fromStdString(said.rule.contested)), 1) << said.rule.id.value;
      }
  EXPECT_GT(disputed, 2);
  EXPECT_EQ(page.count(QStringLiteral("disputed (")), disputed);
}

TEST_F(SheetWords, AConditionSaysWhatIsKnownTodayAndHowMuchIsNot) {
  PersonCondition& hip = with("hip-replacement");
  hip.qualifiers = {{"weeks", on("2026-10-21")}, {"approach", std::string("posterior")}};
  hip.note = "Walks <well>";
  hip.clearances = {{on("2026-11-02"), {}, "the ward", {Feature::rise}, {}, {}}};
  EXPECT_TRUE(says("Hip replacement  (ICD-10 Z96.6). Date of the operation: "));
  EXPECT_TRUE(says("(weeks since: 6); Surgical approach: From the back. Not noted, and asked below: 1."));
  EXPECT_TRUE(says("Walks <well>. Clearance of the ward")) << "what people write is no markup";
  EXPECT_TRUE(says("Speaks because something is not noted and was taken as holding."));
  EXPECT_TRUE(says("Until it is known it is taken as holding: cautions up to \u201cask first\u201d."));
  EXPECT_TRUE(says("May I. do this, and within which limits: hip bent past 90 degrees or"));
  hip.qualifiers["surgeonLimits"] = false;
  EXPECT_FALSE(says("taken as holding"));
  EXPECT_FALSE(says("May I. do"));
  with("gout");
  EXPECT_TRUE(says("No rule knows this condition"));
  EXPECT_TRUE(says("gout: what should be left out, asked first, adapted or watched?"));
}

TEST_F(SheetWords, PapersAreNamedWithWhatTheyDo) {
  PersonCondition& eyes = with("glaucoma");
  eyes.qualifiers["unsettled"] = false;
  EXPECT_TRUE(plain(html()).contains(text(Feature::inverted)));
  eyes.clearances = {{on("2026-10-05"), {}, "the clinic", {Feature::inverted}, {}, "Short ones."}};
  EXPECT_TRUE(says("Clearance of the clinic, "));
  EXPECT_TRUE(says("Noted there: Short ones."));
  EXPECT_TRUE(says("Would be \u201cask first\u201d; cleared of the clinic, "));
  EXPECT_TRUE(says("This holds for it alone, not together with what the paper does not name."));
  eyes.clearances[0].until = on("2026-11-30");
  EXPECT_FALSE(says("Would be"));
  EXPECT_TRUE(says("; expired on "));
  EXPECT_TRUE(says("renewed? It expired on "));
  eyes.clearances[0] = {on("2026-10-05"), {}, "the clinic", {}, Level::leaveOut, {}};
  EXPECT_TRUE(says("By written instruction of the clinic, "));
  EXPECT_TRUE(says(": leave out. The rule itself says ask first."));
  EXPECT_FALSE(says("This holds for it alone"));
}

TEST_F(SheetWords, ThePersonIsDescribedAsFarAsNoted) {
  EXPECT_TRUE(says("No condition is noted."));
  EXPECT_FALSE(says("Comes for"));
  EXPECT_TRUE(says("The age of I. is not noted"));
  person.ageBand = AgeBand::from65;
  person.stature = 1.7;
  person.wishes = "to walk far";
  EXPECT_TRUE(says("aged 65 to 79"));
  EXPECT_TRUE(says("1.70 m"));
  EXPECT_TRUE(says("Comes for: to walk far"));
  EXPECT_TRUE(says("Because of age."));
  EXPECT_FALSE(says("The age of I."));
}

TEST_F(SheetWords, AClassNamesItsStepsByNumberAndName) {
  with("osteoporosis");
  ClassPlan plan = emptyClass("Monday");
  plan.sections[1].steps = {stepOf(StepId{4}, *knowledge.catalogue.find(MovementId{"pelvic-tilt"})),
                            stepOf(StepId{9}, *knowledge.catalogue.find(MovementId{"roll-up"}))};
  plan.people = {person.id};
  const std::vector<Person> roster{person};
  const QString page = plain(personSheetHtml(
      personSheetOf(knowledge, person, kDay, NameStyle::initials, plan, evaluate(knowledge, plan, roster, kDay))));
  EXPECT_TRUE(page.contains(QStringLiteral("with the class \u201cMonday\u201d")));
  EXPECT_TRUE(page.contains(QRegularExpression(QStringLiteral("In the class: [^.]*2 Roll.up"))));
  EXPECT_FALSE(says("In the class"));
}

TEST_F(SheetWords, ARuleOfEachScopeSaysWhereItLooks) {
  for (const Rule& rule : knowledge.rules.rules) {
    PersonSheet made;
    made.rows = {{rule.level, rule.instead, rule.why, {}, {}, {{rule, rule.asks, false, false, {}, {}, false}}}};
    const QString page = plain(personSheetHtml(made));
    EXPECT_TRUE(page.contains(QString::fromStdString(rule.why))) << rule.id.value;
    EXPECT_TRUE(page.contains(QString::fromStdString(rule.instead), Qt::CaseInsensitive)) << rule.id.value;
    if (rule.after) {
      EXPECT_TRUE(page.contains(QStringLiteral("less than "))) << rule.id.value;
    }
    rule.asks.all.forEach(
        [&](Feature feature) { EXPECT_TRUE(page.contains(text(feature), Qt::CaseInsensitive)) << rule.id.value; });
    EXPECT_EQ(page.toLower().count(QStringLiteral("safe")), 1) << rule.id.value;
  }
}

} // namespace
} // namespace matwright
