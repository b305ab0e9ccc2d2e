#include "ui/controls/TempoEditor.h"

#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/text/VocabularyText.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLocale>
#include <QPushButton>
#include <QSignalBlocker>
#include <QToolButton>
#include <utility>

namespace matwright {
namespace {

// As short as in a written tempo: "in 5, out 5".
QString breathWord(Breath breath) {
  const QString words[] = {TempoEditor::tr("in"), TempoEditor::tr("out"), TempoEditor::tr("free"),
                           TempoEditor::tr("hold")};
  return words[static_cast<std::size_t>(breath)];
}

} // namespace

TempoEditor::TempoEditor(QWidget* parent)
    : QWidget(parent), count_(new QDoubleSpinBox), column_(new QVBoxLayout), add_(new QPushButton(tr("Add a phase"))),
      length_(softLabel({})) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column_->setSpacing(4);
  column->addLayout(column_);
  auto* line = new QHBoxLayout;
  line->addWidget(add_);
  line->addWidget(length_, 1);
  column->addLayout(line);

  count_->setDecimals(2);
  count_->setSingleStep(0.1);
  count_->setRange(Tempo::kFastestCount, Tempo::kSlowestCount);
  count_->setSuffix(tr(" s a count"));
  count_->setAccessibleName(tr("Seconds a count"));
  keepWheelForFocus(count_);
  column->addWidget(count_);
  whenFocusLeaves(this, this, [this] { Q_EMIT left(); });

  connect(count_, &QDoubleSpinBox::valueChanged, this, [this](double seconds) {
    tempo_.secondsPerCount = Seconds(seconds);
    edit(QStringLiteral("count"));
  });
  connect(add_, &QPushButton::clicked, this, [this] {
    const Breath last = tempo_.phases.empty() ? Breath::out : tempo_.phases.back().breath;
    tempo_.phases.push_back({last == Breath::in ? Breath::out : Breath::in, 1});
    edit({});
  });
}

TempoEditor::PhaseRow TempoEditor::addRow(std::size_t at) {
  PhaseRow made{new QWidget, new QComboBox, new QSpinBox, new QToolButton, new QToolButton};
  auto* line = new QHBoxLayout(made.row);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(4);
  for (std::size_t i = 0; i < kWordCount<Breath>; ++i) {
    made.breath->addItem(breathWord(static_cast<Breath>(i)));
    made.breath->setItemData(static_cast<int>(i), withCapital(text(static_cast<Breath>(i))), Qt::ToolTipRole);
  }
  made.breath->setAccessibleName(tr("Breath in phase %1").arg(at + 1));
  made.counts->setRange(1, Tempo::kMostCounts);
  made.counts->setAccessibleName(tr("Counts of phase %1").arg(at + 1));
  made.counts->setToolTip(tr("Counts"));
  made.remove->setText(QStringLiteral("\u00d7"));
  made.remove->setStyleSheet(QStringLiteral("QToolButton { padding: 3px 6px; }"));
  made.remove->setToolTip(tr("Remove this phase"));
  made.remove->setAccessibleName(tr("Remove phase %1").arg(at + 1));
  made.up->setText(QStringLiteral("\u2191"));
  made.up->setStyleSheet(QStringLiteral("QToolButton { padding: 3px 6px; }"));
  made.up->setToolTip(tr("Move this phase up"));
  made.up->setAccessibleName(tr("Move phase %1 up").arg(at + 1));
  made.up->setEnabled(at > 0);
  for (QWidget* field : {static_cast<QWidget*>(made.breath), static_cast<QWidget*>(made.counts)})
    keepWheelForFocus(field);
  line->addWidget(made.breath, 1);
  line->addWidget(made.counts);
  line->addWidget(made.up);
  line->addWidget(made.remove);
  column_->addWidget(made.row);
  connect(made.breath, &QComboBox::currentIndexChanged, this, [this, at](int index) {
    tempo_.phases[at].breath = static_cast<Breath>(index);
    edit(QStringLiteral("breath%1").arg(at));
  });
  connect(made.counts, &QSpinBox::valueChanged, this, [this, at](int counts) {
    tempo_.phases[at].counts = counts;
    edit(QStringLiteral("counts%1").arg(at));
  });
  connect(made.remove, &QToolButton::clicked, this, [this, at] {
    tempo_.phases.erase(tempo_.phases.begin() + static_cast<std::ptrdiff_t>(at));
    edit({});
  });
  connect(made.up, &QToolButton::clicked, this, [this, at] {
    std::swap(tempo_.phases[at], tempo_.phases[at - 1]);
    edit({});
  });
  return made;
}

void TempoEditor::edit(const QString& field) { Q_EMIT edited(tempo_, field); }

void TempoEditor::show(const Tempo& tempo) {
  tempo_ = tempo;
  {
    const QSignalBlocker quiet(count_);
    if (count_->value() != tempo.secondsPerCount.value())
      count_->setValue(tempo.secondsPerCount.value());
  }
  while (rows_.size() > tempo.phases.size()) {
    rows_.back().row->hide();
    rows_.back().row->deleteLater();
    rows_.pop_back();
  }
  while (rows_.size() < tempo.phases.size())
    rows_.push_back(addRow(rows_.size()));
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const QSignalBlocker quietBreath(rows_[i].breath), quietCounts(rows_[i].counts);
    rows_[i].breath->setCurrentIndex(static_cast<int>(tempo.phases[i].breath));
    if (rows_[i].counts->value() != tempo.phases[i].counts)
      rows_[i].counts->setValue(tempo.phases[i].counts);
    rows_[i].remove->setEnabled(rows_.size() > 1);
  }
  add_->setEnabled(static_cast<int>(rows_.size()) < Tempo::kMostPhases);
  length_->setText(tr("one round %1 s").arg(QLocale().toString(lengthOf(tempo).value(), 'g', 3)));
}

} // namespace matwright
