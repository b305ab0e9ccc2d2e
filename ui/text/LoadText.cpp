#include "ui/text/LoadText.h"

#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <cmath>
#include <iterator>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("LoadText", text); }
QString number(double value, int decimals = 0) { return QLocale().toString(value, 'f', decimals); }
QString html(const QString& text) { return text.toHtmlEscaped(); }

template <class Enum, std::size_t count> QString chosen(Enum value, const char* const (&texts)[count]) {
  static_assert(count == kWordCount<Enum>);
  return tr(texts[static_cast<std::size_t>(value)]);
}

QString valueText(const MeasuredValue& value) {
  const QString digits = number(value.value);
  return value.about ? tr("about %1").arg(digits) : digits;
}

QString citesOf(const MeasuredTask& task, const Knowledge& knowledge) {
  QStringList cites;
  for (const SourceId& id : task.sources) {
    const Source* source = knowledge.rules.findSource(id);
    cites << QString::fromStdString(source ? source->cite : id.value);
  }
  return cites.join(QStringLiteral("; "));
}

// "as remembered, not checked against the paper" and its like, for a number.
QString standing(Verification check) {
  static constexpr const char* texts[] = {
      QT_TRANSLATE_NOOP("LoadText", "seen in the paper or its abstract"),
      QT_TRANSLATE_NOOP("LoadText", "seen quoted elsewhere, not checked against the paper"),
      QT_TRANSLATE_NOOP("LoadText", "paper known to be there, the detail as remembered"),
      QT_TRANSLATE_NOOP("LoadText", "as remembered, not checked against the paper")};
  return chosen(check, texts);
}

QString cell(const std::optional<MeasuredValue>& value) {
  if (!value)
    return QStringLiteral("\u2013");
  return QStringLiteral("%1<br><span class='soft'>%2</span>")
      .arg(html(valueText(*value)), html(standing(value->check)));
}

QString listOf(const QStringList& points) {
  QString list;
  for (const QString& point : points)
    list += QStringLiteral("<li>%1</li>").arg(html(point));
  return QStringLiteral("<ul>%1</ul>").arg(list);
}

QString heading(const QString& words) { return QStringLiteral("<h2>%1</h2>").arg(html(words)); }
QString paragraph(const QString& words) { return QStringLiteral("<p>%1</p>").arg(html(words)); }

QString tableAbout(BodyTable table) {
  return table == BodyTable::winter
             ? tr("D. A. Winter, Biomechanics and Motor Control of Human Movement, table 4.1, with the lengths of "
                  "Drillis and Contini 1966; one table for men and women.")
             : tr("P. de Leva 1996, J Biomech 29:1223, table 4; its lengths and the centres of head and trunk were "
                  "written down from memory.");
}

QString measuredTable(const MeasuredLoads& measured, const Knowledge& knowledge) {
  const auto head = [](const QString& words) { return QStringLiteral("<th align='left'>%1</th>").arg(html(words)); };
  QString rows =
      QStringLiteral("<tr>%1%2%3%4</tr>")
          .arg(head(tr("Task")), head(tr("Moment, N\u00b7m")), head(tr("Compression, N")), head(tr("Source")));
  for (const MeasuredTask& task : measured.tasks) {
    QString name = html(QString::fromStdString(task.task));
    if (!task.finding.empty())
      name += QStringLiteral(": %1<br><span class='soft'>%2</span>")
                  .arg(html(QString::fromStdString(task.finding)), html(standing(task.check)));
    rows += QStringLiteral("<tr><td class='ruled'>%1</td><td class='ruled'>%2</td><td class='ruled'>%3</td>"
                           "<td class='ruled'>%4</td></tr>")
                .arg(name, cell(task.moment), cell(task.compression), html(citesOf(task, knowledge)));
  }
  return QStringLiteral("<table width='100%' cellspacing='0' cellpadding='3'>%1</table>").arg(rows);
}

} // namespace

QString text(BodyTable table) {
  static constexpr const char* texts[] = {QT_TRANSLATE_NOOP("LoadText", "Winter (men and women alike)"),
                                          QT_TRANSLATE_NOOP("LoadText", "de Leva, women"),
                                          QT_TRANSLATE_NOOP("LoadText", "de Leva, men")};
  return chosen(table, texts);
}

QString text(LoadedJoint joint) {
  static constexpr const char* texts[] = {QT_TRANSLATE_NOOP("LoadText", "low back"),
                                          QT_TRANSLATE_NOOP("LoadText", "hip"),
                                          QT_TRANSLATE_NOOP("LoadText", "shoulder")};
  return chosen(joint, texts);
}

QString shortText(Breath breath) {
  static constexpr const char* texts[] = {QT_TRANSLATE_NOOP("LoadText", "in"), QT_TRANSLATE_NOOP("LoadText", "out"),
                                          QT_TRANSLATE_NOOP("LoadText", "free"), QT_TRANSLATE_NOOP("LoadText", "hold")};
  return chosen(breath, texts);
}

QString momentNumber(double newtonMetres) {
  const bool tenths = newtonMetres >= 0.05 && newtonMetres < 9.95;
  return number(newtonMetres, tenths ? 1 : 0);
}

QString momentText(double newtonMetres) { return tr("%1\u00a0N\u00b7m").arg(momentNumber(newtonMetres)); }

QString leverText(double lever) { return tr("%1\u00a0% of two straight legs").arg(number(lever * 100)); }

QString bodyText(BodyTable table, const BodySize& size) {
  return tr("%1, %2\u00a0cm, %3\u00a0kg").arg(text(table), number(size.stature * 100), number(size.mass));
}

QString momentMinutesText(double newtonMetreSeconds) {
  return tr("%1\u00a0N\u00b7m\u00a0\u00d7\u00a0min").arg(number(newtonMetreSeconds / 60));
}

QString jointLoadText(LoadedJoint joint, const ByLoadedJoint& peak, const ByLoadedJoint& mean, const BodySize& size) {
  const auto at = static_cast<std::size_t>(joint);
  const double unit = newtonMetres(size);
  return tr("%1: peak %2, mean %3").arg(text(joint), momentText(peak[at] * unit), momentText(mean[at] * unit));
}

QString swingText(const ByLoadedJoint& swing, const BodySize& size) {
  QStringList parts;
  for (std::size_t i = 0; i < kLoadedJoints; ++i)
    if (const double moment = swingNewtonMetres(swing[i], size); moment >= 1)
      parts << tr("%1 about the %2").arg(momentText(moment), text(static_cast<LoadedJoint>(i)));
  return parts.isEmpty()
             ? QString()
             : tr("Left out: setting free limbs in motion at this tempo adds up to %1.").arg(parts.join(tr(" and ")));
}

QString loadNotice() {
  return tr("Moments of the body's own weight for one body of the settings: an estimate, no measure of muscles or "
            "discs, and a limit for nobody.");
}

QString measuredText(const MeasuredTask& task, const Knowledge& knowledge) {
  QStringList parts;
  if (!task.finding.empty())
    parts << tr("%1 (%2)").arg(QString::fromStdString(task.finding), standing(task.check));
  if (task.moment)
    parts << tr("moment %1\u00a0N\u00b7m (%2)").arg(valueText(*task.moment), standing(task.moment->check));
  if (task.compression)
    parts << tr("compression %1\u00a0N (%2)").arg(valueText(*task.compression), standing(task.compression->check));
  return tr("%1: %2. %3.")
      .arg(QString::fromStdString(task.task), parts.join(QStringLiteral("; ")), citesOf(task, knowledge));
}

QString loadPageTitle() { return tr("About load figures"); }

QString loadPageHtml(const Knowledge& knowledge, const BodySize& size) {
  const BodyTable table = knowledge.loads->table();
  QString page = QStringLiteral("<h1>%1</h1>").arg(html(loadPageTitle()));
  page += paragraph(tr("A load figure is a moment of weight: how strongly the weight of a part of the body, and what "
                       "the floor or a wall pushes back, would turn it about the low back, a hip or a shoulder. It is "
                       "worked out from the drawn poses alone, and makes \"easier\" and \"harder\" comparable between "
                       "the options of a movement."));
  page += heading(tr("The body that is counted with"));
  page += paragraph(tr("%1. It is chosen in the settings, one for the whole class; nobody in it was measured.")
                        .arg(bodyText(table, size)));
  page += paragraph(tableAbout(table));
  page += heading(tr("What it is not"));
  page +=
      listOf({tr("No compression of a disc or a joint is worked out from it."),
              tr("Muscles are not in it: they share the work, pull against each other, and can make one moment a "
                 "very different "
                 "strain in two people."),
              tr("What hands hold, and what a ring, a band or a ball adds, is not counted."),
              tr("It is held still at each moment; what setting limbs in motion adds is told apart, where it counts."),
              tr("Segments are rigid and taken from tables; two tables differ by about 5 %, and people by more."),
              tr("Hips and shoulders are told by the side that carries more."),
              tr("A body that lies is carried by the floor: a moment of nothing does not mean that nothing works."),
              tr("It is a limit for nobody. What a person may do is decided by her and her own clinician.")});
  page += heading(tr("How the figures are told"));
  page += listOf(
      {tr("Newton metres, N\u00b7m: 10 N\u00b7m is about one kilogram held one metre away."),
       tr("Peak and mean are of one repetition at the tempo of the step."),
       tr("The low back is also told as a share of two straight legs: what both legs weigh about it when a body that "
          "lies on its back holds them level."),
       tr("Over a class, means are multiplied by the time of work: 100 N\u00b7m \u00d7 min is 100 N\u00b7m for one "
          "minute, or 10 N\u00b7m for ten.")});
  if (!knowledge.measured.tasks.empty()) {
    page += heading(tr("Measured by others"));
    page +=
        paragraph(tr("A few tasks were studied with instruments. None of these numbers is the program's, and none of "
                     "the program's was set by them: the two do not measure the same thing. Most are told as "
                     "remembered, not checked against the paper; each says so."));
    page += measuredTable(knowledge.measured, knowledge);
    QStringList closing;
    for (const std::string& sentence : knowledge.measured.closing)
      closing << QString::fromStdString(sentence);
    page += listOf(closing);
  }
  return page;
}

} // namespace matwright
