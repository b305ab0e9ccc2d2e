#include "ui/rules/QualifierTestRow.h"

#include "ui/controls/Fields.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {
namespace {

constexpr int kMostWeeks = 52 * 100; // what the file holds
constexpr int kFirstFrom = 0, kFirstBelow = 12;

void tick(QCheckBox* box, bool on) {
  const QSignalBlocker quiet(box);
  box->setChecked(on);
}

} // namespace

QualifierTestRow::QualifierTestRow(const std::optional<QualifierSpec>& spec, const QString& id, QWidget* parent)
    : QWidget(parent), spec_(spec), id_(id), remove_(new QToolButton) {
  const QString name = spec ? QString::fromStdString(spec->name) : id;
  setAccessibleName(name);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 6);
  column->setSpacing(4);
  auto* line = new QHBoxLayout;
  remove_->setText(QStringLiteral("\u00d7"));
  remove_->setToolTip(tr("Take this test away"));
  remove_->setAccessibleName(tr("Take away the test: %1").arg(name));
  line->addWidget(headingLabel(spec ? name : tr("\"%1\", which the condition does not ask").arg(id)), 1);
  line->addWidget(remove_, 0, Qt::AlignTop);
  column->addLayout(line);
  connect(remove_, &QToolButton::clicked, this, &QualifierTestRow::removeWanted);
  if (!spec)
    return;
  switch (spec->kind) {
  case QualifierKind::weeksSince:
  case QualifierKind::pregnancyWeek:
    addWeeks(*column, name);
    break;
  case QualifierKind::choice:
    addChoices(*column);
    break;
  case QualifierKind::flag:
    addFlag(*column, name);
    break;
  }
  addOpen(*column, name);
}

void QualifierTestRow::addWeeks(QVBoxLayout& column, const QString& name) {
  hasFrom_ = new QCheckBox(tr("from week"));
  hasBelow_ = new QCheckBox(tr("before week"));
  from_ = new QSpinBox;
  below_ = new QSpinBox;
  hasFrom_->setAccessibleName(tr("%1: has a first week").arg(name));
  hasBelow_->setAccessibleName(tr("%1: has a last week").arg(name));
  from_->setAccessibleName(tr("%1: from week").arg(name));
  below_->setAccessibleName(tr("%1: before week").arg(name));
  auto* whole = new QWidget;
  auto* flow = new FlowLayout(whole, 8);
  for (QWidget* part : {static_cast<QWidget*>(hasFrom_), static_cast<QWidget*>(from_), static_cast<QWidget*>(hasBelow_),
                        static_cast<QWidget*>(below_)})
    flow->addWidget(part);
  column.addWidget(whole);
  for (QSpinBox* box : {from_, below_}) {
    box->setRange(-kMostWeeks, kMostWeeks);
    keepWheelForFocus(box);
  }
  const auto takeWeeks = [this](const QString& gesture) {
    QualifierTest after = test_;
    after.from = hasFrom_->isChecked() ? std::optional(from_->value()) : std::nullopt;
    after.below = hasBelow_->isChecked() ? std::optional(below_->value()) : std::nullopt;
    from_->setVisible(after.from.has_value());
    below_->setVisible(after.below.has_value());
    change(after, gesture);
  };
  const auto offer = [](QSpinBox* box, int week) {
    const QSignalBlocker quiet(box);
    box->setValue(week);
  };
  connect(hasFrom_, &QCheckBox::toggled, this, [this, takeWeeks, offer](bool on) {
    if (on)
      offer(from_, test_.below ? std::min(*test_.below - 1, kFirstFrom) : kFirstFrom);
    takeWeeks({});
  });
  connect(hasBelow_, &QCheckBox::toggled, this, [this, takeWeeks, offer](bool on) {
    if (on)
      offer(below_, test_.from ? std::max(*test_.from + 1, kFirstBelow) : kFirstBelow);
    takeWeeks({});
  });
  connect(from_, &QSpinBox::valueChanged, this, [takeWeeks] { takeWeeks(QStringLiteral("from")); });
  connect(below_, &QSpinBox::valueChanged, this, [takeWeeks] { takeWeeks(QStringLiteral("below")); });
}

void QualifierTestRow::addChoices(QVBoxLayout& column) {
  choices_ = new QWidget;
  auto* inside = new QVBoxLayout(choices_);
  inside->setContentsMargins(0, 0, 0, 0);
  inside->setSpacing(2);
  for (const Choice& choice : spec_->choices)
    addChoice(choice.id, QString::fromStdString(choice.name));
  column.addWidget(choices_);
}

void QualifierTestRow::addChoice(const std::string& id, const QString& name) {
  auto* box = new QCheckBox(name);
  box->setAccessibleName(tr("%1: %2").arg(QString::fromStdString(spec_->name), name));
  connect(box, &QCheckBox::toggled, this, [this, id](bool on) {
    QualifierTest after = test_;
    std::erase(after.choices, id);
    if (on)
      after.choices.push_back(id);
    // In the order of the question, whichever was ticked first.
    const auto place = [this](const std::string& each) {
      return std::find_if(choice_.begin(), choice_.end(), [&](const auto& entry) { return entry.first == each; });
    };
    std::stable_sort(after.choices.begin(), after.choices.end(),
                     [&](const auto& a, const auto& b) { return place(a) < place(b); });
    change(after);
  });
  choices_->layout()->addWidget(box);
  choice_.emplace_back(id, box);
}

void QualifierTestRow::addFlag(QVBoxLayout& column, const QString& name) {
  flag_ = new QComboBox;
  flag_->addItems({tr("Yes"), tr("No")});
  flag_->setAccessibleName(tr("%1: the answer").arg(name));
  flag_->setMaximumWidth(160);
  keepWheelForFocus(flag_);
  column.addWidget(flag_);
  connect(flag_, &QComboBox::currentIndexChanged, this, [this](int index) {
    QualifierTest after = test_;
    after.flag = index == 0;
    change(after);
  });
}

void QualifierTestRow::addOpen(QVBoxLayout& column, const QString& name) {
  open_ = new QComboBox;
  open_->addItem(tr("The rule speaks, and says that it took this for granted"));
  open_->addItem(tr("The rule is silent until somebody has said so"));
  open_->setAccessibleName(tr("%1: while nobody has filled it in").arg(name));
  open_->setMaximumWidth(460);
  keepWheelForFocus(open_);
  column.addWidget(softLabel(tr("While nobody has filled it in:")));
  column.addWidget(open_);
  connect(open_, &QComboBox::currentIndexChanged, this, [this](int index) {
    QualifierTest after = test_;
    after.openHolds = index == 0;
    change(after);
  });
}

void QualifierTestRow::change(const QualifierTest& test, const QString& gesture) {
  if (test == test_)
    return;
  test_ = test;
  Q_EMIT edited(test, gesture);
}

void QualifierTestRow::focusAnswer() {
  QWidget* answer = hasFrom_           ? static_cast<QWidget*>(hasFrom_)
                    : flag_            ? flag_
                    : !choice_.empty() ? choice_.front().second
                                       : static_cast<QWidget*>(remove_);
  answer->setFocus();
}

void QualifierTestRow::show(const QualifierTest& test) {
  test_ = test;
  if (from_) {
    const auto put = [](QCheckBox* has, QSpinBox* box, const std::optional<int>& week) {
      tick(has, week.has_value());
      const QSignalBlocker quiet(box);
      if (week && box->value() != *week)
        box->setValue(*week);
      box->setVisible(week.has_value());
    };
    put(hasFrom_, from_, test.from);
    put(hasBelow_, below_, test.below);
  }
  if (choices_) {
    for (const std::string& id : test.choices)
      if (std::none_of(choice_.begin(), choice_.end(), [&](const auto& entry) { return entry.first == id; }))
        addChoice(id, tr("%1 (no longer an answer)").arg(QString::fromStdString(id)));
    for (const auto& [id, box] : choice_)
      tick(box, std::find(test.choices.begin(), test.choices.end(), id) != test.choices.end());
  }
  if (flag_) {
    const QSignalBlocker quiet(flag_);
    flag_->setCurrentIndex(test.flag ? (*test.flag ? 0 : 1) : -1);
  }
  if (open_) {
    const QSignalBlocker quiet(open_);
    open_->setCurrentIndex(test.openHolds ? 0 : 1);
  }
}

} // namespace matwright
