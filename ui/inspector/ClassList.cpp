#include "ui/inspector/ClassList.h"

#include "ui/controls/Labels.h"
#include "ui/text/PeopleText.h"
#include "ui/text/VocabularyText.h"
#include "ui/theme/Theme.h"

#include <QEvent>
#include <QVBoxLayout>

namespace matwright {
namespace {

// "1 ask first, 4 adapt"; what it means that there is none.
QString cautionsText(const Evaluation& evaluation, std::size_t person) {
  std::array<int, kWordCount<Level>> counts{};
  for (const Caution& caution : evaluation.cautions)
    if (caution.person == person)
      ++counts[static_cast<std::size_t>(caution.level)];
  QStringList parts;
  for (std::size_t level = counts.size(); level-- > 0;)
    if (counts[level] > 0)
      parts << QStringLiteral("%1 %2").arg(counts[level]).arg(text(static_cast<Level>(level)));
  return parts.isEmpty() ? ClassList::tr("no caution of their own, which is no clearance")
                         : parts.join(QStringLiteral(", "));
}

} // namespace

QString classListHtml(const PlanDocument& document, const QColor& soft) {
  const Evaluation& evaluation = document.evaluation();
  QString html;
  for (std::size_t i = 0; i < evaluation.people.size(); ++i) {
    const Person* person = findPerson(document.roster(), evaluation.people[i]);
    if (!person)
      continue;
    QStringList lines{conditionNames(*person, document.knowledge().rules)};
    if (!person->wishes.empty())
      lines << ClassList::tr("Wishes: %1").arg(QString::fromStdString(person->wishes));
    lines << cautionsText(evaluation, i);
    for (QString& line : lines)
      line = line.toHtmlEscaped();
    html +=
        QStringLiteral("<p style='margin-top:0;margin-bottom:5px'>%1<br><span style='color:%2'>%3</span></p>")
            .arg(QString::fromStdString(person->name).toHtmlEscaped(), soft.name(), lines.join(QStringLiteral("<br>")));
  }
  return html;
}

ClassList::ClassList(const PlanDocument& document, QWidget* parent)
    : QWidget(parent), document_(document), heading_(headingLabel(tr("Who comes"))), people_(plainLabel({})) {
  people_->setTextFormat(Qt::RichText);
  people_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 4, 0, 0);
  column->setSpacing(4);
  column->addWidget(heading_);
  column->addWidget(people_);
}

void ClassList::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange)
    refresh();
}

void ClassList::refresh() {
  const QString html = classListHtml(document_, themeFor(palette()).inkSoft);
  setVisible(!html.isEmpty());
  if (people_->text() != html)
    people_->setText(html);
}

} // namespace matwright
