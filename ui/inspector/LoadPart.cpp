#include "ui/inspector/LoadPart.h"

#include "ui/controls/Labels.h"
#include "ui/inspector/LoadBar.h"
#include "ui/inspector/LoadChart.h"
#include "ui/inspector/LoadOptions.h"
#include "ui/text/LoadText.h"
#include "ui/text/VocabularyText.h"

#include <QHBoxLayout>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {
namespace {

OptionLoad rowOf(const Loads& loads, double unit, const Movement& movement, const Option* option, QString name) {
  OptionLoad row;
  row.id = option ? option->id : OptionId{};
  row.name = std::move(name);
  row.values[0] = effortOf(movement, option).value();
  const ByLoadedJoint& peak = loads.of(movement, option)->peak;
  for (std::size_t i = 0; i < kLoadedJoints; ++i)
    row.values[i + 1] = peak[i] * unit;
  return row;
}

} // namespace

QToolButton* aboutLoadButton(QWidget* parent) {
  auto* button = new QToolButton(parent);
  button->setText(LoadPart::tr("About load figures"));
  button->setToolTip(loadNotice());
  button->setStyleSheet(
      QStringLiteral("QToolButton { border: 0; padding: 1px 0; background: transparent; color: palette(link); }"
                     "QToolButton:focus, QToolButton:hover { text-decoration: underline; }"));
  button->setFocusPolicy(Qt::StrongFocus);
  return button;
}

LoadPart::LoadPart(QWidget* parent)
    : QWidget(parent), fold_(new QToolButton), summary_(softLabel({})), body_(new QWidget), whom_(softLabel({})),
      lever_(softLabel({})), chart_(new LoadChart), optionsTitle_(headingLabel(tr("Options side by side"))),
      options_(new LoadOptions), marks_(softLabel(tr("Peaks in N\u00b7m. \u25b2 greatest, \u25bd least of these."))),
      swing_(softLabel({})), measured_(plainLabel({})) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  fold_->setText(tr("Load"));
  fold_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  fold_->setCheckable(true);
  fold_->setArrowType(Qt::RightArrow);
  fold_->setFont(headingFont(font()));
  fold_->setStyleSheet(QStringLiteral("QToolButton { border: 0; padding: 1px 0; background: transparent; }"
                                      "QToolButton:focus, QToolButton:hover { text-decoration: underline; }"));
  fold_->setToolTip(tr("Show or hide the load figures"));
  QToolButton* about = aboutLoadButton();
  auto* head = new QHBoxLayout;
  head->setContentsMargins(0, 0, 0, 0);
  head->addWidget(fold_);
  head->addStretch(1);
  head->addWidget(about);
  column->addLayout(head);
  column->addWidget(summary_);
  column->addWidget(body_);
  body_->hide();
  makeBody();
  connect(fold_, &QToolButton::toggled, this, [this](bool open) {
    fold_->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
    body_->setVisible(open);
    summary_->setVisible(!open);
    fill();
  });
  connect(about, &QToolButton::clicked, this, &LoadPart::aboutWanted);
  connect(options_, &LoadOptions::chosen, this, &LoadPart::chosen);
}

void LoadPart::makeBody() {
  auto* column = new QVBoxLayout(body_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  column->addWidget(whom_);
  column->addSpacing(2);
  for (std::size_t i = 0; i < kLoadedJoints; ++i) {
    joints_[i] = {plainLabel({}), new LoadBar};
    column->addWidget(joints_[i].numbers);
    column->addWidget(joints_[i].bar);
    if (i == index(LoadedJoint::lowBack))
      column->addWidget(lever_);
  }
  column->addSpacing(6);
  column->addWidget(chart_);
  column->addSpacing(6);
  column->addWidget(swing_);
  column->addWidget(optionsTitle_);
  column->addWidget(options_);
  column->addWidget(marks_);
  column->addWidget(measured_);
  measured_->setTextInteractionFlags(Qt::TextSelectableByMouse);
}

void LoadPart::show(const Snapshot& snapshot, const Movement& movement, const Step& step) {
  shown_ = snapshot;
  movement_ = &movement;
  step_ = step;
  const auto load = snapshot.knowledge->loads->of(posesOf(movement, findOption(movement, step.option)), step.tempo);
  QStringList all;
  for (std::size_t i = 0; i < kLoadedJoints; ++i) {
    const QString words = jointLoadText(static_cast<LoadedJoint>(i), load->peak, load->mean, snapshot.body);
    joints_[i].numbers->setText(withCapital(words));
    all << words;
  }
  summary_->setText(withCapital(all.join(QStringLiteral("; "))));
  fill();
}

// Options are worked out only once somebody looks at them.
void LoadPart::fill() {
  if (!movement_ || !fold_->isChecked())
    return;
  const Movement& movement = *movement_;
  const Loads& loads = *shown_.knowledge->loads;
  const double unit = newtonMetres(shown_.body);
  const std::shared_ptr<const MovementLoad> load =
      loads.of(posesOf(movement, findOption(movement, step_.option)), step_.tempo);
  std::vector<OptionLoad> rows{rowOf(loads, unit, movement, nullptr, tr("as written"))};
  for (const Option& each : movement.options)
    rows.push_back(rowOf(loads, unit, movement, &each, QString::fromStdString(each.name)));
  const double legs = straightLegMoment(loads.table()) * unit;
  double full = legs;
  for (const OptionLoad& row : rows)
    full = std::max(full, *std::max_element(row.values.begin() + 1, row.values.end()));

  constexpr std::size_t kLowBack = index(LoadedJoint::lowBack);
  whom_->setText(tr("For a body of the settings: %1. Its weight alone, and a limit for nobody.")
                     .arg(bodyText(loads.table(), shown_.body)));
  for (std::size_t i = 0; i < kLoadedJoints; ++i)
    joints_[i].bar->show(load->peak[i] * unit, load->mean[i] * unit, i == kLowBack ? legs : 0, full);
  lever_->setText(tr("Peak is %1").arg(leverText(loads.lever(load->peak[kLowBack]))));
  lever_->setToolTip(tr("The upright mark: what two straight legs weigh about the low back, held level"));
  chart_->show(load, step_.tempo, shown_.body);
  showText(swing_, swingText(load->swing, shown_.body));

  const bool several = rows.size() > 1;
  for (QWidget* part :
       {static_cast<QWidget*>(optionsTitle_), static_cast<QWidget*>(options_), static_cast<QWidget*>(marks_)})
    part->setVisible(several);
  options_->show(std::move(rows), step_.option, full);

  QStringList measured;
  for (const MeasuredTask* task : shown_.knowledge->measured.of(movement.id))
    measured << tr("Measured by others, in a task like this one: %1").arg(measuredText(*task, *shown_.knowledge));
  showText(measured_, measured.join(QLatin1Char('\n')));
}

} // namespace matwright
