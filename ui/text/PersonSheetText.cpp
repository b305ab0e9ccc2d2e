#include "ui/text/PersonSheetText.h"

#include "ui/text/CautionText.h"
#include "ui/text/RuleText.h"
#include "ui/text/SheetParts.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <algorithm>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("PersonSheetText", text); }

QString from(const std::string& words) { return QString::fromStdString(words); }

// Escaped pieces put together into HTML.
class Page {
public:
  static QString bold(const QString& words) {
    return QStringLiteral("<span class=\"level\">%1</span>").arg(words.toHtmlEscaped());
  }
  void title(const QString& words) { html_ += QStringLiteral("<h1>%1</h1>").arg(words.toHtmlEscaped()); }
  void heading(const QString& words) { html_ += QStringLiteral("<h2>%1</h2>").arg(words.toHtmlEscaped()); }
  void paragraph(const QString& html) { html_ += QStringLiteral("<p>%1</p>").arg(html); }
  void soft(const QString& words) {
    if (!words.isEmpty())
      html_ += QStringLiteral("<p class=\"soft\">%1</p>").arg(words.toHtmlEscaped());
  }
  // A little apart from what is above it.
  void row(const QString& html, const QString& small) {
    html_ += QStringLiteral("<p style=\"margin-top: 3px; margin-bottom: 0\">%1</p>").arg(html);
    soft(small);
  }
  void list(const QStringList& items) {
    html_ += QStringLiteral("<ol>");
    for (const QString& item : items)
      html_ += QStringLiteral("<li>%1</li>").arg(item);
    html_ += QStringLiteral("</ol>");
  }
  QString take() { return QStringLiteral("<body>%1</body>").arg(html_); }

private:
  QString html_;
};

class Writer {
public:
  explicit Writer(const PersonSheet& sheet) : sheet_(sheet) {}

  QString whole() {
    page_.title(personSheetTitle(sheet_));
    addPerson();
    addConditions();
    addQuestions();
    addLevels();
    addNotes();
    addSources();
    return page_.take();
  }

private:
  void addPerson() {
    QStringList facts{dateText(sheet_.day)};
    if (sheet_.ageBand)
      facts << tr("aged %1").arg(text(*sheet_.ageBand));
    if (sheet_.stature)
      facts << tr("%1 m").arg(QLocale().toString(*sheet_.stature, 'f', 2));
    if (sheet_.mass)
      facts << tr("%1 kg").arg(QLocale().toString(*sheet_.mass, 'g', 4));
    if (sheet_.className)
      facts << tr("with the class \u201c%1\u201d").arg(from(*sheet_.className));
    page_.soft(facts.join(QStringLiteral(" \u00b7 ")));
    if (!sheet_.wishes.empty())
      page_.paragraph(tr("Comes for: %1").arg(from(sheet_.wishes)).toHtmlEscaped());
    page_.paragraph(tr("What a teacher of mat-based movement classes takes into account for %1, and what the teacher "
                       "would like to know. The clinician decides; please correct what is wrong.")
                        .arg(from(sheet_.who))
                        .toHtmlEscaped());
    page_.paragraph(standingNotice().toHtmlEscaped());
  }

  void addConditions() {
    page_.heading(tr("What is noted"));
    if (sheet_.conditions.empty())
      page_.paragraph(tr("No condition is noted.").toHtmlEscaped());
    for (const SheetCondition& condition : sheet_.conditions) {
      QString line = Page::bold(from(condition.name));
      QStringList codes;
      for (const std::string& code : condition.icd10)
        codes << from(code);
      if (!codes.isEmpty())
        line += tr(" (ICD-10 %1)").arg(codes.join(QStringLiteral(", "))).toHtmlEscaped();
      QStringList known;
      int open = 0;
      for (const SheetQualifier& qualifier : condition.qualifiers)
        if (qualifier.answer)
          known << answerText(qualifier);
        else
          ++open;
      QStringList sentences;
      if (!known.isEmpty())
        sentences << known.join(QStringLiteral("; ")) + QLatin1Char('.');
      if (open > 0)
        sentences << tr("Not noted, and asked below: %1.").arg(open);
      if (!condition.note.empty())
        sentences << tr("The teacher\u2019s note: %1").arg(sentence(condition.note));
      if (!condition.screened)
        sentences << tr("No rule knows this condition, so nothing was screened for it.");
      for (const SheetPaper& paper : condition.papers)
        sentences << paperText(paper);
      if (!sentences.isEmpty())
        line += QStringLiteral(". ") + sentences.join(QLatin1Char(' ')).toHtmlEscaped();
      page_.paragraph(line);
    }
  }

  void addQuestions() {
    if (sheet_.questions.empty())
      return;
    page_.heading(tr("Open questions"));
    QStringList items;
    for (const SheetQuestion& question : sheet_.questions)
      items << questionText(question, sheet_).toHtmlEscaped();
    page_.list(items);
    page_.paragraph(
        tr("Answered by ______________________  on ______________  holds until ______________").toHtmlEscaped());
  }

  void addLevels() {
    if (sheet_.rows.empty())
      page_.paragraph(tr("No rule speaks for %1 in particular today. That is not a clearance: the rules do not know "
                         "everything.")
                          .arg(from(sheet_.who))
                          .toHtmlEscaped());
    std::optional<Level> level;
    for (const SheetRow& row : sheet_.rows) {
      if (row.level != level)
        page_.heading(withCapital(text(row.level)));
      level = row.level;
      addRow(row);
    }
    if (sheet_.className && !sheet_.rows.empty())
      page_.soft(tr("Where no step of the class is named, none raises it. That is not a clearance."));
    if (sheet_.forEverybody > 0)
      page_.soft(tr("Rules that hold for everybody in any class are not listed here (%1).").arg(sheet_.forEverybody));
  }

  void addRow(const SheetRow& row) {
    QString line = Page::bold(withCapital(concernsText(row)));
    QStringList words;
    if (onWholeClass(row))
      words << tr("Whatever is in the class.");
    else if (!row.instead.empty())
      words << tr("Instead: %1.").arg(from(row.instead));
    words << from(row.why);
    line += QStringLiteral(". ") + words.join(QLatin1Char(' ')).toHtmlEscaped();
    page_.row(line, behind(row));
  }

  // All that stands behind a row, in small print.
  QString behind(const SheetRow& row) {
    QStringList words;
    if (row.paper)
      words << onPaper(row);
    if (std::any_of(row.rules.begin(), row.rules.end(), [](const SheetRule& said) { return said.assumed; }))
      words << tr("Speaks because something is not noted and was taken as holding.");
    if (sheet_.conditions.size() > 1 && !row.conditions.empty()) {
      QStringList names;
      for (const std::string& name : row.conditions)
        names << from(name);
      words << tr("For: %1.").arg(names.join(QStringLiteral("; ")));
    } else if (row.conditions.empty()) {
      words << tr("Because of age.");
    }
    QStringList rests;
    for (const SheetRule& said : row.rules)
      addOnce(rests, restsOn(said.rule));
    words << tr("Support: %1.").arg(rests.join(QStringLiteral("; ")));
    for (const SheetRule& said : row.rules)
      addOnce(words, thresholdOnSheet(said.rule));
    addOnce(words, reach(row));
    return words.join(QLatin1Char(' '));
  }

  QString onPaper(const SheetRow& row) const {
    const Level own = row.rules.front().rule.level;
    QString words = row.paper->sets ? tr("By written instruction %1: %2. The rule itself says %3.")
                                          .arg(giverText(*row.paper), text(row.level), text(own))
                                    : tr("Would be \u201c%1\u201d; cleared %2.").arg(text(own), giverText(*row.paper));
    if (std::any_of(row.rules.begin(), row.rules.end(), [](const SheetRule& said) { return said.partly; }))
      words += QLatin1Char(' ') + tr("This holds for it alone, not together with what the paper does not name.");
    return words;
  }

  QString restsOn(const Rule& rule) {
    verified_ = verified_ | EnumSet<Verification>{rule.check};
    QString words = QStringLiteral("%1 (%2)").arg(shortText(rule.strength), shortText(rule.check));
    QStringList numbers;
    for (const SourceId& id : rule.sources) {
      const auto at = std::find_if(sheet_.sources.begin(), sheet_.sources.end(),
                                   [&](const Source& source) { return source.id == id; });
      if (at != sheet_.sources.end())
        numbers << QString::number(at - sheet_.sources.begin() + 1);
    }
    if (!numbers.isEmpty())
      words += QStringLiteral(" [%1]").arg(numbers.join(QStringLiteral(", ")));
    if (!rule.contested.empty()) {
      addOnce(disputes_, from(rule.contested));
      words += tr(", disputed (%1)").arg(letter(disputes_.indexOf(from(rule.contested))));
    }
    return words;
  }

  // How much of the catalogue and of the class a row reaches.
  QString reach(const SheetRow& row) const {
    QStringList words, steps;
    for (const SheetRule& said : row.rules)
      if (said.movements)
        addOnce(words, tr("Asked by %1 of %2 movements.").arg(*said.movements).arg(sheet_.movements));
    for (const SheetRule& said : row.rules) {
      for (const SheetStep& step : said.steps)
        addOnce(steps, step.option.empty()
                           ? QStringLiteral("%1 %2").arg(step.number).arg(from(step.name))
                           : QStringLiteral("%1 %2 (%3)").arg(step.number).arg(from(step.name), from(step.option)));
    }
    if (!steps.isEmpty())
      words << tr("In the class: %1.").arg(steps.join(QStringLiteral(", ")));
    return words.join(QLatin1Char(' '));
  }

  static QString letter(qsizetype place) {
    return place < 26 ? QString(QChar(static_cast<char16_t>(u'a' + place))) : QString::number(place + 1);
  }

  void addNotes() {
    if (disputes_.isEmpty())
      return;
    page_.heading(tr("What is disputed"));
    for (qsizetype i = 0; i < disputes_.size(); ++i)
      page_.soft(QStringLiteral("(%1) %2").arg(letter(i), disputes_.at(i)));
  }

  void addSources() {
    if (!sheet_.sources.empty()) {
      page_.heading(tr("Sources"));
      for (std::size_t i = 0; i < sheet_.sources.size(); ++i)
        page_.soft(QStringLiteral("[%1] %2").arg(i + 1).arg(from(sheet_.sources[i].cite)));
    }
    QStringList words;
    verified_.forEach([&](Verification check) {
      const QString shortly = shortText(check), fully = text(check);
      words << (fully.startsWith(shortly) ? fully : QStringLiteral("%1: %2").arg(shortly, fully));
    });
    if (!words.isEmpty())
      page_.soft(tr("How far this program\u2019s makers verified what they cite. %1.")
                     .arg(withCapital(words.join(QStringLiteral("; ")))));
  }

  const PersonSheet& sheet_;
  Page page_;
  QStringList disputes_;
  EnumSet<Verification> verified_;
};

} // namespace

QString personSheetTitle(const PersonSheet& sheet) {
  return tr("%1: for a talk with the clinician").arg(from(sheet.who));
}

QString personSheetHtml(const PersonSheet& sheet) { return Writer(sheet).whole(); }

QString personSheetFoot(const PersonSheet& sheet) {
  return tr("%1, %2. Health data: for the person and those who care for them.")
      .arg(from(sheet.who), dateText(sheet.day));
}

} // namespace matwright
