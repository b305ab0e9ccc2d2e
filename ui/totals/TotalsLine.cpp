#include "ui/totals/TotalsLine.h"

#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/controls/LevelMark.h"
#include "ui/text/CautionText.h"
#include "ui/text/VocabularyText.h"
#include "ui/totals/LengthBar.h"

#include <QHBoxLayout>
#include <QLabel>

namespace matwright {
namespace {

constexpr double kValueSize = 1.4;

QLabel* oneLine() {
  auto* label = new QLabel;
  label->setTextFormat(Qt::PlainText);
  return label;
}

QLabel* differenceLabel() {
  QLabel* label = oneLine();
  label->setForegroundRole(QPalette::Link);
  label->setFont(headingFont(label->font()));
  return label;
}

QLabel* underLabel() {
  QLabel* label = oneLine();
  label->setForegroundRole(QPalette::PlaceholderText);
  label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  return label;
}

} // namespace

TotalsLine::TotalsLine(PlanDocument& document, QWidget* parent)
    : QWidget(parent), document_(document), foot_(new QHBoxLayout), bar_(new LengthBar) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(10, 6, 10, 6);
  column->setSpacing(6);
  auto* line = new FlowLayout(nullptr, 14);
  column->addLayout(line);
  length_ = addFigure(line);
  changes_ = addFigure(line);
  moving_ = addFigure(line);
  sides_ = addFigure(line);
  addCautions(line);
  foot_->setSpacing(6);
  foot_->addWidget(bar_, 1);
  column->addLayout(foot_);
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);

  connect(&document, &PlanDocument::changed, this, [this] {
    preview_.reset();
    refresh();
  });
  refresh();
}

TotalsLine::Figure TotalsLine::addFigure(QLayout* line) {
  auto* group = new QWidget;
  auto* column = new QVBoxLayout(group);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  auto* row = new QHBoxLayout;
  row->setSpacing(5);
  const Figure figure{largeLabel({}, kValueSize), underLabel(), differenceLabel(), underLabel()};
  figure.beside->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  row->addWidget(figure.value);
  row->addWidget(figure.beside);
  row->addWidget(figure.difference);
  row->addStretch();
  column->addLayout(row);
  column->addWidget(figure.under);
  line->addWidget(group);
  return figure;
}

void TotalsLine::addCautions(QLayout* line) {
  auto* group = new QWidget;
  auto* column = new QVBoxLayout(group);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  auto* row = new QHBoxLayout;
  row->setSpacing(7);
  for (std::size_t i = kWordCount<Level>; i-- > 0;) {
    Count& count = counts_[i];
    count.group = new QWidget;
    auto* inside = new QHBoxLayout(count.group);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(3);
    auto* mark = new LevelMark(static_cast<Level>(i));
    count.value = largeLabel({}, kValueSize);
    count.difference = differenceLabel();
    inside->addWidget(mark);
    inside->addWidget(count.value);
    inside->addWidget(count.difference);
    row->addWidget(count.group);
  }
  noneRaised_ = largeLabel(tr("none raised"), kValueSize);
  row->addWidget(noneRaised_);
  row->addStretch();
  people_ = underLabel();
  column->addLayout(row);
  column->addWidget(people_);
  line->addWidget(group);
}

void TotalsLine::addBeside(QWidget* widget) { foot_->addWidget(widget); }

void TotalsLine::showPreview(std::optional<Snapshot> preview) {
  preview_ = std::move(preview);
  refresh();
}

void TotalsLine::show(const Figure& figure, const Total& total) {
  figure.value->setText(total.value);
  showText(figure.beside, total.beside);
  showText(figure.difference, total.difference);
  // Two lines always, so that nothing moves when a text becomes shorter.
  figure.under->setText(total.under.contains(QLatin1Char('\n')) ? total.under : total.under + QLatin1Char('\n'));
}

void TotalsLine::refresh() {
  const Snapshot& standing = document_.snapshot();
  const Snapshot& shown = preview_ ? *preview_ : standing;
  const Totals totals = preview_ ? totalsOf(shown, standing) : totalsOf(shown);
  show(length_, totals.length);
  show(changes_, totals.changes);
  show(moving_, totals.moving);
  show(sides_, totals.sides);

  bool any = false;
  for (std::size_t i = 0; i < counts_.size(); ++i) {
    const Count& count = counts_[i];
    const int more = totals.moreCautions[i];
    const bool visible = totals.cautions[i] > 0 || more != 0;
    any |= visible;
    count.value->setText(QString::number(totals.cautions[i]));
    showText(count.difference, more == 0  ? QString()
                               : more > 0 ? QStringLiteral("+%1").arg(more)
                                          : QString::number(more));
    count.group->setVisible(visible);
    count.group->setToolTip(tr("%1: %2").arg(text(static_cast<Level>(i))).arg(totals.cautions[i]));
  }
  noneRaised_->setVisible(!any);
  noneRaised_->setToolTip(noCautionText(!shown.plan->people.empty()));
  people_->setText(any ? tr("cautions\n%1").arg(totals.people) : tr("no clearance\n%1").arg(totals.people));

  const Schedule& schedule = shown.evaluation->schedule;
  bar_->show({schedule.length, schedule.likelyFrom, schedule.likelyTo, shown.plan->target});
}

} // namespace matwright
