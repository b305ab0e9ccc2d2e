#include "ui/rules/ConditionQuestion.h"

#include "core/base/Text.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/text/RuleMeaning.h"
#include "ui/text/RuleText.h"
#include "ui/text/VocabularyText.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSignalBlocker>
#include <QToolButton>
#include <QVBoxLayout>

namespace matwright {
namespace {

constexpr std::size_t kLongestStem = 40; // of an id

QToolButton* smallButton(const QString& sign) {
  auto* button = new QToolButton;
  button->setText(sign);
  button->setStyleSheet(QStringLiteral("QToolButton { padding: 2px 6px; }"));
  return button;
}

void say(QToolButton* button, const QString& name) {
  button->setToolTip(name);
  button->setAccessibleName(name);
}

} // namespace

std::string idFromName(const std::string& name, const char* otherwise, const std::set<std::string>& taken) {
  std::string stem = idTextFrom(name).substr(0, kLongestStem);
  while (!stem.empty() && stem.back() == '-')
    stem.pop_back();
  if (stem.empty())
    stem = otherwise;
  return untakenId(stem, [&](const std::string& id) { return taken.contains(id); });
}

ConditionQuestion::ConditionQuestion(QWidget* parent)
    : QWidget(parent), name_(lineField(tr("Question"), kLongestNote)), kind_(new QComboBox), explained_(softLabel({})),
      up_(smallButton(QStringLiteral("\u2191"))), remove_(smallButton(QStringLiteral("\u00d7"))), choices_(new QWidget),
      rows_(new QVBoxLayout), add_(new QPushButton(tr("Add a choice"))) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 10);
  column->setSpacing(4);
  auto* line = new QHBoxLayout;
  line->addWidget(name_, 1);
  line->addWidget(up_);
  line->addWidget(remove_);
  column->addLayout(line);
  for (std::size_t i = 0; i < kWordCount<QualifierKind>; ++i)
    kind_->addItem(withCapital(text(static_cast<QualifierKind>(i))));
  kind_->setMaximumWidth(380);
  keepWheelForFocus(kind_);
  column->addWidget(kind_);
  column->addWidget(explained_);
  column->addWidget(choices_);
  auto* inside = new QVBoxLayout(choices_);
  inside->setContentsMargins(20, 2, 0, 0);
  inside->setSpacing(4);
  rows_->setSpacing(4);
  inside->addLayout(rows_);
  inside->addWidget(add_, 0, Qt::AlignLeft);
  name_->setPlaceholderText(tr("What is asked, such as: how it is now"));
  connect(name_, &QLineEdit::textEdited, this, [this](const QString& words) {
    QualifierSpec after = spec_;
    after.name = words.toStdString();
    change(after, QStringLiteral("name"));
  });
  connect(name_, &QLineEdit::returnPressed, this, &ConditionQuestion::nameLeft);
  whenFocusLeaves(name_, this, [this] { Q_EMIT nameLeft(); });
  connect(kind_, &QComboBox::currentIndexChanged, this, [this](int index) {
    QualifierSpec after = spec_;
    after.kind = static_cast<QualifierKind>(index);
    if (after.kind != QualifierKind::choice)
      after.choices.clear();
    change(after);
  });
  connect(up_, &QToolButton::clicked, this, &ConditionQuestion::upWanted);
  connect(remove_, &QToolButton::clicked, this, &ConditionQuestion::removeWanted);
  connect(add_, &QPushButton::clicked, this, &ConditionQuestion::addChoice);
}

void ConditionQuestion::focusName() { name_->setFocus(); }

void ConditionQuestion::change(const QualifierSpec& spec, const QString& gesture) {
  if (spec == spec_)
    return;
  spec_ = spec;
  Q_EMIT edited(spec, gesture);
}

void ConditionQuestion::renameChoice(std::size_t at, const QString& name) {
  QualifierSpec after = spec_;
  Choice& choice = after.choices[at];
  choice.name = name.toStdString();
  if (fresh_.erase(choice.id) > 0) {
    std::set<std::string> taken;
    for (std::size_t i = 0; i < after.choices.size(); ++i)
      if (i != at)
        taken.insert(after.choices[i].id);
    choice.id = idFromName(choice.name, "choice", taken);
    fresh_.insert(choice.id);
  }
  change(after, QStringLiteral("choice/%1").arg(at));
}

void ConditionQuestion::settle() {
  for (const Choice& choice : spec_.choices)
    if (!choice.name.empty())
      fresh_.erase(choice.id);
}

void ConditionQuestion::addChoice() {
  settle();
  QualifierSpec after = spec_;
  std::set<std::string> taken;
  for (const Choice& choice : after.choices)
    taken.insert(choice.id);
  after.choices.push_back({idFromName({}, "choice", taken), {}});
  fresh_.insert(after.choices.back().id);
  change(after);
  if (!row_.empty())
    row_[spec_.choices.size() - 1].name->setFocus();
}

void ConditionQuestion::addRow() {
  const std::size_t at = row_.size();
  ChoiceRow row{new QWidget, lineField(tr("Choice %1").arg(at + 1), kLongestNote),
                smallButton(QStringLiteral("\u2191")), smallButton(QStringLiteral("\u00d7"))};
  auto* line = new QHBoxLayout(row.whole);
  line->setContentsMargins(0, 0, 0, 0);
  line->addWidget(row.name, 1);
  line->addWidget(row.up);
  line->addWidget(row.remove);
  row.up->setEnabled(at > 0);
  say(row.up, tr("Move up choice %1").arg(at + 1));
  say(row.remove, tr("Take away choice %1").arg(at + 1));
  connect(row.name, &QLineEdit::textEdited, this, [this, at](const QString& words) { renameChoice(at, words); });
  connect(row.name, &QLineEdit::returnPressed, this, &ConditionQuestion::settle);
  whenFocusLeaves(row.name, this, [this] { settle(); });
  connect(row.up, &QToolButton::clicked, this, [this, at] {
    settle();
    QualifierSpec after = spec_;
    std::swap(after.choices[at], after.choices[at - 1]);
    change(after);
  });
  connect(row.remove, &QToolButton::clicked, this, [this, at] {
    settle();
    QualifierSpec after = spec_;
    after.choices.erase(after.choices.begin() + static_cast<std::ptrdiff_t>(at));
    add_->setFocus();
    change(after);
  });
  rows_->addWidget(row.whole);
  row_.push_back(row);
}

void ConditionQuestion::show(const QualifierSpec& spec, bool first) {
  if (spec.id != spec_.id)
    fresh_.clear();
  spec_ = spec;
  const QString name = QString::fromStdString(spec.name);
  showText(name_, name);
  name_->setAccessibleName(tr("Question: what is asked"));
  kind_->setAccessibleName(tr("How it is answered: %1").arg(name));
  say(up_, tr("Move up the question: %1").arg(name));
  say(remove_, tr("Take away the question: %1").arg(name));
  add_->setAccessibleName(tr("Add a choice: %1").arg(name));
  up_->setEnabled(!first);
  {
    const QSignalBlocker quiet(kind_);
    kind_->setCurrentIndex(static_cast<int>(spec.kind));
  }
  explained_->setText(explanationOf(spec.kind));
  choices_->setVisible(spec.kind == QualifierKind::choice);
  while (row_.size() < spec.choices.size())
    addRow();
  for (std::size_t i = 0; i < row_.size(); ++i) {
    const bool there = i < spec.choices.size();
    row_[i].whole->setVisible(there);
    if (there)
      showText(row_[i].name, QString::fromStdString(spec.choices[i].name));
  }
}

} // namespace matwright
