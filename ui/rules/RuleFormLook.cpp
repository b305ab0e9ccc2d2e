#include "ui/rules/RuleFormLook.h"

#include "core/screening/ScopeForm.h"
#include "ui/controls/Fields.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/rules/DemandForm.h"
#include "ui/text/FindingText.h"
#include "ui/text/RuleMeaning.h"
#include "ui/text/RuleText.h"
#include "ui/text/VocabularyText.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <cmath>

namespace matwright {
namespace {

// Where an amount begins that nobody has written yet; a place to begin at, no recommendation.
double firstAmount(MeasureUnit unit) {
  switch (unit) {
  case MeasureUnit::seconds:
    return 60;
  case MeasureUnit::repetitions:
    return 10;
  case MeasureUnit::percent:
    return 20;
  case MeasureUnit::steps:
  case MeasureUnit::changes:
    break;
  }
  return 3;
}

MeasureUnit firstUnit(EnumSet<MeasureUnit> units) {
  MeasureUnit first{};
  bool found = false;
  units.forEach([&](MeasureUnit unit) {
    if (!found)
      first = unit;
    found = true;
  });
  return first;
}

void put(QDoubleSpinBox* box, double value) {
  const QSignalBlocker quiet(box);
  box->setDecimals(value == std::floor(value) ? 0 : 2);
  if (box->value() != value)
    box->setValue(value);
}

void tick(QCheckBox* box, bool on) {
  const QSignalBlocker quiet(box);
  box->setChecked(on);
}

QWidget* lineOfFields(const std::vector<QWidget*>& fields) {
  auto* whole = new QWidget;
  auto* flow = new FlowLayout(whole, 8);
  for (QWidget* field : fields)
    flow->addWidget(field);
  return whole;
}

// What stands before the amount.
QString amountName(Scope scope) {
  switch (scope) {
  case Scope::early:
    return RuleFormLook::tr("Within the first");
  case Scope::late:
    return RuleFormLook::tr("Within the last");
  case Scope::order:
    return RuleFormLook::tr("With less between");
  default:
    return RuleFormLook::tr("More than");
  }
}

} // namespace

RuleFormLook::RuleFormLook(QWidget* parent)
    : RuleFormPart(parent), scope_(new QComboBox), explained_(softLabel({})),
      asks_(new DemandForm(tr("What it looks for"))), hasAmount_(new QCheckBox(tr("Only when it lasts longer than"))),
      published_(new QCheckBox(tr("This amount stands in the sources named below"))),
      hasLasting_(new QCheckBox(tr("Only when that went on for longer than"))), amount_(new QDoubleSpinBox),
      lasting_(new QDoubleSpinBox), unit_(new QComboBox), earlier_(new DemandForm(tr("What came before"))) {
  QGridLayout* grid = makeGrid(tr("What it looks for, and where"));
  for (std::size_t i = 0; i < kWordCount<Scope>; ++i)
    scope_->addItem(withCapital(shortText(static_cast<Scope>(i))));
  scope_->setAccessibleName(tr("Where it looks"));
  scope_->setMaximumWidth(300);
  keepWheelForFocus(scope_);
  addPlain(*grid, tr("Where it looks"), scope_, explained_);
  addAmount(*grid);
  addField(*grid, Field::asks, tr("Asks for"), asks_);
  asksName_ = qobject_cast<QLabel*>(grid->itemAtPosition(grid->rowCount() - 1, 0)->widget());
  addEarlier(*grid);
  connectFields();
}

void RuleFormLook::addAmount(QGridLayout& grid) {
  amount_->setRange(0, Threshold::kMost);
  amount_->setDecimals(0);
  amount_->setAccessibleName(tr("Amount"));
  amount_->setMinimumWidth(90);
  unit_->setAccessibleName(tr("Unit of the amount"));
  unit_->setMinimumWidth(150);
  amountWords_ = softLabel({});
  amountWords_->setWordWrap(false);
  keepWheelForFocus(amount_);
  keepWheelForFocus(unit_);
  amountField_ = new QWidget;
  auto* column = new QVBoxLayout(amountField_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(hasAmount_);
  column->addWidget(lineOfFields({amount_, unit_, amountWords_}));
  column->addWidget(published_);
  amountField_->setFocusProxy(amount_);
  addField(grid, Field::threshold, tr("Amount"), amountField_);
  amountName_ = qobject_cast<QLabel*>(grid.itemAtPosition(grid.rowCount() - 1, 0)->widget());
}

void RuleFormLook::addEarlier(QGridLayout& grid) {
  lasting_->setRange(1, Threshold::kMost);
  lasting_->setDecimals(0);
  lasting_->setSuffix(tr(" s"));
  lasting_->setAccessibleName(tr("What came before: longer than"));
  keepWheelForFocus(lasting_);
  afterField_ = new QWidget;
  auto* column = new QVBoxLayout(afterField_);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(softLabel(tr("The step before, which this one comes too soon after.")));
  column->addWidget(earlier_);
  column->addWidget(lineOfFields({hasLasting_, lasting_}));
  afterField_->setFocusProxy(earlier_);
  addField(grid, Field::after, tr("What came before"), afterField_);
  afterName_ = qobject_cast<QLabel*>(grid.itemAtPosition(grid.rowCount() - 1, 0)->widget());
}

void RuleFormLook::connectFields() {
  const QString amountChanged = tr("Change the amount of a rule");
  connect(scope_, &QComboBox::currentIndexChanged, this, [this](int index) {
    change(
        [&](Rule& rule) {
          rule.scope = static_cast<Scope>(index);
          fit(rule);
        },
        tr("Change where a rule looks"));
  });
  connect(asks_, &DemandForm::edited, this, [this](const Demand& demand, const QString& gesture) {
    change([&](Rule& rule) { rule.asks = demand; }, tr("Change what a rule looks for"),
           gesture.isEmpty() ? gesture : QStringLiteral("asks/") + gesture);
  });
  connect(earlier_, &DemandForm::edited, this, [this](const Demand& demand, const QString& gesture) {
    change(
        [&](Rule& rule) {
          rule.after = Earlier{demand, rule.after ? rule.after->lasting : Seconds{}};
        },
        tr("Change what came before"), gesture.isEmpty() ? gesture : QStringLiteral("after/") + gesture);
  });
  connect(hasAmount_, &QCheckBox::toggled, this, [this, amountChanged](bool on) {
    change(
        [&](Rule& rule) {
          if (on && !rule.threshold)
            rule.threshold =
                aside_.threshold ? *aside_.threshold : Threshold{firstAmount({}), {}, ThresholdOrigin::ours, 0};
          if (!on)
            rule.threshold.reset();
          fit(rule);
        },
        amountChanged);
  });
  connect(amount_, &QDoubleSpinBox::valueChanged, this, [this, amountChanged](double amount) {
    change(
        [&](Rule& rule) {
          if (rule.threshold)
            rule.threshold->amount = rule.threshold->usual = amount;
        },
        amountChanged, QStringLiteral("amount"));
  });
  connect(unit_, &QComboBox::currentIndexChanged, this, [this, amountChanged](int index) {
    const auto unit = static_cast<MeasureUnit>(unit_->itemData(index).toInt());
    change(
        [&](Rule& rule) {
          if (!rule.threshold || rule.threshold->unit == unit)
            return;
          rule.threshold->unit = unit;
          rule.threshold->amount = firstAmount(unit);
          fit(rule);
        },
        amountChanged);
  });
  connect(published_, &QCheckBox::toggled, this, [this](bool on) {
    change(
        [&](Rule& rule) {
          if (rule.threshold)
            rule.threshold->origin = on ? ThresholdOrigin::published : ThresholdOrigin::ours;
        },
        tr("Change where an amount comes from"));
  });
  const auto takeLasting = [this](double seconds, const QString& gesture) {
    change(
        [&](Rule& rule) {
          if (rule.after)
            rule.after->lasting = Seconds(seconds);
        },
        tr("Change what came before"), gesture);
  };
  connect(hasLasting_, &QCheckBox::toggled, this, [this, takeLasting](bool on) {
    takeLasting(on ? firstAmount(MeasureUnit::seconds) : 0, {});
    lasting_->setVisible(on);
  });
  connect(lasting_, &QDoubleSpinBox::valueChanged, this,
          [takeLasting](double seconds) { takeLasting(seconds, QStringLiteral("lasting")); });
}

void RuleFormLook::setAside() {
  if (aside_.id != rule().id) {
    aside_ = Rule{};
    aside_.id = rule().id;
  }
  // What a scope has no use for is not shown, so what is empty here has not been emptied by hand.
  const ScopeForm form = formOf(rule().scope, rule().threshold ? std::optional(rule().threshold->unit) : std::nullopt);
  if (form.asks) {
    aside_.asks.any = rule().asks.any;
    aside_.asks.all = rule().asks.all;
  }
  if (form.asks && form.onSteps) {
    aside_.asks.at = rule().asks.at;
    aside_.asks.effortFrom = rule().asks.effortFrom;
    aside_.asks.leverFrom = rule().asks.leverFrom;
  }
  if (rule().threshold)
    aside_.threshold = rule().threshold;
  if (rule().after)
    aside_.after = rule().after;
}

void RuleFormLook::fit(Rule& rule) {
  using enum ScopeForm::Amount;
  const ScopeForm loose = formOf(rule.scope);
  if (loose.amount == none)
    rule.threshold.reset();
  else if (loose.amount == needed && !rule.threshold)
    rule.threshold = aside_.threshold ? aside_.threshold : Threshold{};
  if (rule.threshold) {
    Threshold& threshold = *rule.threshold;
    const bool fresh = threshold.amount == 0 && !aside_.threshold;
    if (fresh || !loose.units.contains(threshold.unit)) {
      threshold.unit = loose.units.contains(threshold.unit) ? threshold.unit : firstUnit(loose.units);
      threshold.amount = firstAmount(threshold.unit);
      threshold.origin = ThresholdOrigin::ours;
    }
    threshold.amount = std::max(threshold.amount, loose.least);
    threshold.usual = threshold.amount;
  }
  const ScopeForm form = formOf(rule.scope, rule.threshold ? std::optional(rule.threshold->unit) : std::nullopt);
  rule.asks.any = form.asks ? aside_.asks.any : FeatureSet{};
  rule.asks.all = form.asks ? aside_.asks.all : FeatureSet{};
  rule.asks.at = form.asks && form.onSteps ? aside_.asks.at : EnumSet<Elevation>{};
  rule.asks.effortFrom = form.asks && form.onSteps ? aside_.asks.effortFrom : 0;
  rule.asks.leverFrom = form.asks && form.onSteps ? aside_.asks.leverFrom : 0;
  rule.after = rule.scope == Scope::order ? std::optional(aside_.after.value_or(Earlier{})) : std::nullopt;
}

void RuleFormLook::fillUnits() {
  const QSignalBlocker quiet(unit_);
  unit_->clear();
  const ScopeForm form = formOf(rule().scope);
  form.units.forEach([&](MeasureUnit unit) { unit_->addItem(unitText(0, unit), static_cast<int>(unit)); });
  unit_->setCurrentIndex(rule().threshold ? unit_->findData(static_cast<int>(rule().threshold->unit)) : -1);
}

void RuleFormLook::refresh() {
  setAside();
  const auto measured = rule().threshold ? std::optional(rule().threshold->unit) : std::nullopt;
  const ScopeForm form = formOf(rule().scope, measured);
  {
    const QSignalBlocker quiet(scope_);
    scope_->setCurrentIndex(static_cast<int>(rule().scope));
  }
  explained_->setText(explanationOf(rule().scope));
  asks_->show(rule().asks, form);
  asks_->setVisible(form.asks);
  asksName_->setVisible(form.asks);

  const bool maybe = form.amount == ScopeForm::Amount::maybe;
  const bool measures = form.amount != ScopeForm::Amount::none;
  amountField_->setVisible(measures);
  amountName_->setVisible(measures);
  amountName_->setText(maybe ? tr("Lasting") : amountName(rule().scope));
  hasAmount_->setVisible(maybe);
  tick(hasAmount_, rule().threshold.has_value());
  fillUnits();
  for (QWidget* each : {static_cast<QWidget*>(amount_), static_cast<QWidget*>(unit_),
                        static_cast<QWidget*>(amountWords_), static_cast<QWidget*>(published_)})
    each->setVisible(rule().threshold.has_value());
  if (rule().threshold) {
    const QSignalBlocker quiet(amount_);
    amount_->setRange(form.least, mostOf(rule().threshold->unit));
    put(amount_, rule().threshold->amount);
    const bool clocked = rule().threshold->unit == MeasureUnit::seconds && rule().threshold->amount >= 60;
    amountWords_->setText(clocked ? amountText(rule().threshold->amount, MeasureUnit::seconds) : QString());
    tick(published_, rule().threshold->origin == ThresholdOrigin::published);
  }

  const bool ordered = rule().scope == Scope::order;
  afterField_->setVisible(ordered);
  afterName_->setVisible(ordered);
  if (ordered) {
    const Earlier earlier = rule().after.value_or(Earlier{});
    earlier_->show(earlier.demand, formOf(Scope::order));
    tick(hasLasting_, earlier.lasting > Seconds{});
    lasting_->setVisible(earlier.lasting > Seconds{});
    if (earlier.lasting > Seconds{})
      put(lasting_, earlier.lasting.value());
  }
}

} // namespace matwright
