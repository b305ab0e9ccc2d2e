#include "ui/card/CardText.h"

#include "ui/card/CardWords.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QStringList>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Card", text); }

QString csvField(QString text) {
  if (!text.contains(QLatin1Char(',')) && !text.contains(QLatin1Char('"')) && !text.contains(QLatin1Char('\n')) &&
      !text.contains(QLatin1Char('\r')))
    return text;
  return QLatin1Char('"') + text.replace(QLatin1Char('"'), QStringLiteral("\"\"")) + QLatin1Char('"');
}

QString csvLine(const QStringList& fields) {
  QStringList line;
  for (const QString& field : fields)
    line << csvField(field);
  return line.join(QLatin1Char(',')) + QStringLiteral("\r\n");
}

QString cautionsOf(const RowWords& row) {
  QStringList lines = row.variants;
  for (const CautionLine& line : row.cautions)
    lines << QStringLiteral("%1: %2").arg(text(line.level), line.text);
  return lines.join(QStringLiteral("; "));
}

// Characters that would end a cell or start markup.
QString markdownField(QString text) {
  for (const char* sign : {"\\", "|", "*", "_", "`", "[", "]", "<", ">", "#"})
    text.replace(QLatin1String(sign), QLatin1Char('\\') + QLatin1String(sign));
  return text.simplified();
}

} // namespace

QString cardCsv(const Card& card) {
  const CardWords words = wordsOf(card, Density::full);
  QString table = csvLine({tr("section"), tr("at"), tr("movement"), tr("option"), tr("dose"), tr("breath and counts"),
                           tr("position"), tr("change of position"), tr("cue"), tr("cautions"), tr("note")});
  for (const SectionWords& section : words.sections)
    for (const RowWords& row : section.rows)
      table += csvLine({section.name, row.time, row.name, row.option, row.dose, row.breath, text(row.row->elevation),
                        QString::fromStdString(row.row->wayCue), QString::fromStdString(row.row->action),
                        cautionsOf(row), row.note});
  return table;
}

QString cardMarkdown(const Card& card) {
  const CardWords words = wordsOf(card, Density::full);
  QString page = QStringLiteral("# %1\n\n%2\n").arg(markdownField(words.title), words.subtitle);
  if (!words.people.isEmpty())
    page += QStringLiteral("\n%1\n").arg(markdownField(words.people));
  if (!words.note.isEmpty())
    page += QStringLiteral("\n%1\n").arg(markdownField(words.note));
  for (const CautionLine& line : words.wholeClass)
    page += QStringLiteral("\n- %1: %2\n").arg(text(line.level), markdownField(line.text));
  for (const SectionWords& section : words.sections) {
    page += QStringLiteral("\n## %1\n\n").arg(markdownField(section.name));
    page += QStringLiteral("| %1 | %2 | %3 | %4 | %5 |\n|---|---|---|---|---|\n")
                .arg(tr("at"), tr("movement"), tr("dose"), tr("cue"), tr("cautions"));
    for (const RowWords& row : section.rows) {
      QString name = markdownField(row.name);
      if (!row.option.isEmpty())
        name += QStringLiteral(" (%1)").arg(markdownField(row.option));
      QString cue = row.note.isEmpty() ? row.cue : row.cue + QStringLiteral(" \u00b7 ") + row.note;
      page += QStringLiteral("| %1 | %2 | %3, %4 | %5 | %6 |\n")
                  .arg(row.time, name, markdownField(row.dose), markdownField(row.breath), markdownField(cue),
                       markdownField(cautionsOf(row)));
    }
  }
  return page + QStringLiteral("\n%1\n").arg(words.notices.join(QStringLiteral("\n\n")));
}

} // namespace matwright
