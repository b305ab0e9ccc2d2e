#include "ui/rules/QualifierTests.h"

#include "ui/controls/Labels.h"
#include "ui/rules/QualifierTestRow.h"

#include <QMenu>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {
namespace {

std::optional<QualifierSpec> specOf(const QualifierTest& test, const std::optional<Condition>& condition) {
  const QualifierSpec* spec = condition ? findQualifier(*condition, test.qualifier) : nullptr;
  return spec ? std::optional(*spec) : std::nullopt;
}

bool asksTheSame(const QualifierSpec& a, const QualifierSpec& b) {
  return a.kind == b.kind && std::equal(a.choices.begin(), a.choices.end(), b.choices.begin(), b.choices.end(),
                                        [](const Choice& x, const Choice& y) { return x.id == y.id; });
}

} // namespace

QualifierTests::QualifierTests(QWidget* parent)
    : QWidget(parent), none_(softLabel({})), rows_(new QVBoxLayout),
      add_(new QPushButton(tr("Only for some of them \u25be"))), menu_(new QMenu(add_)) {
  setAccessibleName(tr("Only when"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  rows_->setSpacing(6);
  column->addWidget(none_);
  column->addLayout(rows_);
  column->addWidget(add_, 0, Qt::AlignLeft);
  add_->setMenu(menu_);
  add_->setStyleSheet(QStringLiteral("QPushButton::menu-indicator { image: none; width: 0; }"));
  add_->setAccessibleName(tr("Add a test on what is known about the condition"));
  setFocusProxy(add_);
}

void QualifierTests::show(const std::vector<QualifierTest>& tests, const Condition* condition) {
  const bool other =
      condition_.has_value() != (condition != nullptr) || (condition && condition_ && *condition != *condition_);
  tests_ = tests;
  condition_ = condition ? std::optional(*condition) : std::nullopt;
  bool fits = shown_.size() == tests.size();
  for (std::size_t i = 0; fits && i < tests.size(); ++i)
    fits = shown_[i]->isFor(specOf(tests[i], condition_), QString::fromStdString(tests[i].qualifier));
  if (!fits)
    build();
  for (std::size_t i = 0; i < tests.size(); ++i)
    shown_[i]->show(tests[i]);
  if (other || menu_->isEmpty())
    fillMenu();
  const bool askable = condition && !condition->qualifiers.empty();
  add_->setVisible(askable);
  showText(none_, !condition       ? tr("Choose a condition first, to tell people apart by what is known about it.")
                  : !askable       ? tr("Nothing is asked about this condition, so all who have it are alike.")
                  : tests_.empty() ? tr("All who have it.")
                                   : QString());
}

void QualifierTests::build() {
  for (QualifierTestRow* row : shown_) {
    row->hide();
    row->deleteLater();
  }
  shown_.clear();
  for (std::size_t i = 0; i < tests_.size(); ++i) {
    auto* row = new QualifierTestRow(specOf(tests_[i], condition_), QString::fromStdString(tests_[i].qualifier));
    connect(row, &QualifierTestRow::edited, this,
            [this, i](const QualifierTest& test, const QString& gesture) { take(i, test, gesture); });
    connect(row, &QualifierTestRow::removeWanted, this, [this, i] { remove(i); });
    rows_->addWidget(row);
    shown_.push_back(row);
  }
  updateGeometry();
}

void QualifierTests::fillMenu() {
  menu_->clear();
  if (!condition_)
    return;
  for (const QualifierSpec& spec : condition_->qualifiers)
    menu_->addAction(QString::fromStdString(spec.name).replace(QLatin1Char('&'), QLatin1String("&&")), this,
                     [this, spec] { add(spec); });
}

void QualifierTests::take(std::size_t at, const QualifierTest& test, const QString& gesture) {
  tests_[at] = test;
  Q_EMIT edited(tests_, gesture.isEmpty() ? QString() : QStringLiteral("%1/%2").arg(at).arg(gesture));
}

void QualifierTests::add(const QualifierSpec& spec) {
  QualifierTest test;
  test.qualifier = spec.id;
  if (spec.kind == QualifierKind::flag)
    test.flag = true;
  else if (spec.kind != QualifierKind::choice)
    test.from = 0;
  std::vector<QualifierTest> after = tests_;
  after.push_back(test);
  const Condition of = *condition_;
  show(after, &of);
  shown_.back()->focusAnswer();
  Q_EMIT edited(after, {});
}

void QualifierTests::remove(std::size_t at) {
  std::vector<QualifierTest> after = tests_;
  after.erase(after.begin() + static_cast<std::ptrdiff_t>(at));
  add_->setFocus();
  Q_EMIT edited(after, {});
}

std::vector<QualifierTest> testsThatFit(const std::vector<QualifierTest>& tests, const Condition* from,
                                        const Condition* to) {
  std::vector<QualifierTest> kept;
  for (const QualifierTest& test : tests) {
    const QualifierSpec* before = from ? findQualifier(*from, test.qualifier) : nullptr;
    const QualifierSpec* after = to ? findQualifier(*to, test.qualifier) : nullptr;
    if (before && after && asksTheSame(*before, *after))
      kept.push_back(test);
  }
  return kept;
}

} // namespace matwright
