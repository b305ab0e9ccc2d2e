#include "ui/rules/ConditionForm.h"

#include "core/base/Text.h"
#include "ui/controls/FaultRows.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/controls/Scrolled.h"
#include "ui/rules/ConditionQuestion.h"

#include <QGridLayout>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {
namespace {

constexpr std::size_t kLongestCodes = 400; // of a line of codes

QString lineOfCodes(const std::vector<std::string>& codes) {
  QStringList all;
  for (const std::string& code : codes)
    all << QString::fromStdString(code);
  return all.join(QStringLiteral(", "));
}

} // namespace

std::vector<std::string> codesIn(const QString& words) {
  static const QRegularExpression apart(QStringLiteral("[,;\\s]+"));
  std::vector<std::string> codes;
  for (const QString& code : words.toUpper().split(apart, Qt::SkipEmptyParts))
    codes.push_back(code.toStdString());
  return codes;
}

bool isCodeShaped(const std::string& code) {
  static const QRegularExpression shape(QStringLiteral("^[A-Z][0-9][0-9A-Z](\\.[0-9A-Z]{1,4})?$"));
  return shape.match(QString::fromStdString(code)).hasMatch();
}

ConditionForm::ConditionForm(KnowledgeDocument& document, QWidget* parent)
    : QWidget(parent), document_(document), drafts_(document, &OwnKnowledge::conditions), title_(titleLabel({})),
      state_(plainLabel({})), codesNote_(faultLabel()),
      none_(softLabel(tr("Nothing: then rules for it speak for all who have it."))),
      name_(lineField(tr("Name of the condition"), kLongestName)), codes_(lineField(tr("ICD-10 codes"), kLongestCodes)),
      about_(new NoteField(tr("About the condition"), kLongestNote, 3)), questions_(new QWidget),
      rows_(new QVBoxLayout), add_(new QPushButton(tr("Add a question"))), list_(new FaultRows) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 8);
  column->setSpacing(6);
  column->addWidget(title_);
  auto* page = new QWidget;
  auto* grid = fieldGrid(page);
  grid->setContentsMargins(2, 6, 14, 12);
  area_ = scrolled(page);
  column->addWidget(area_, 1);
  column->addWidget(state_);
  column->addWidget(list_);
  name_->setMaximumWidth(460);
  codes_->setMaximumWidth(460);
  about_->setMaximumWidth(620);
  questions_->setMaximumWidth(620);
  auto* inside = new QVBoxLayout(questions_);
  inside->setContentsMargins(0, 0, 0, 0);
  inside->setSpacing(6);
  inside->addWidget(none_);
  inside->addLayout(rows_);
  inside->addWidget(add_, 0, Qt::AlignLeft);
  questions_->setFocusProxy(add_);
  auto* codes = new QWidget;
  auto* codesColumn = new QVBoxLayout(codes);
  codesColumn->setContentsMargins(0, 0, 0, 0);
  codesColumn->setSpacing(2);
  codesColumn->addWidget(codes_);
  codesColumn->addWidget(codesNote_);
  codes->setFocusProxy(codes_);
  marks_.addField(*grid, static_cast<int>(Field::name), tr("Name"), name_);
  marks_.addField(*grid, static_cast<int>(Field::icd10), tr("ICD-10 codes"), codes,
                  softLabel(tr("Such as M54.5, apart by commas. May be left empty; nothing is found by them but the "
                               "condition.")));
  marks_.addField(*grid, static_cast<int>(Field::about), tr("About"), about_,
                  softLabel(tr("What it is, in plain words that alarm nobody.")));
  marks_.addField(*grid, static_cast<int>(Field::qualifiers), tr("What is asked"), questions_);
  grid->setRowStretch(grid->rowCount(), 1);
  whenFocusLeaves(page, this, [this] { document_.sealGesture(); });
  connectFields();
  connect(list_, &FaultRows::chosen, this, &ConditionForm::goTo);
  connect(&document, &KnowledgeDocument::changed, this, &ConditionForm::refresh);
}

ConditionForm::~ConditionForm() {
  // A field that has the focus loses it when it goes, which is after the members here.
  for (ConditionQuestion* row : row_)
    row->disconnect(this);
}

void ConditionForm::connectFields() {
  connect(name_, &QLineEdit::textEdited, this, [this](const QString& words) {
    Condition after = draft_;
    after.name = words.toStdString();
    change(std::move(after), tr("Rename a condition"), QStringLiteral("name"));
  });
  connect(codes_, &QLineEdit::textEdited, this, &ConditionForm::takeCodes);
  const auto written = [this] { showText(codes_, lineOfCodes(draft_.icd10)); };
  connect(codes_, &QLineEdit::returnPressed, this, written);
  whenFocusLeaves(codes_, this, written);
  connect(about_, &NoteField::edited, this, [this](const QString& words) {
    Condition after = draft_;
    after.about = words.toStdString();
    change(std::move(after), tr("Change what a condition is"), QStringLiteral("about"));
  });
  connect(add_, &QPushButton::clicked, this, &ConditionForm::addQuestion);
}

void ConditionForm::takeCodes(const QString& words) {
  Condition after = draft_;
  after.icd10 = codesIn(words);
  change(std::move(after), tr("Change the codes of a condition"), QStringLiteral("codes"));
}

void ConditionForm::setCondition(const ConditionId& condition) {
  document_.sealGesture();
  if (id_ != condition) {
    fresh_.clear();
    area_->verticalScrollBar()->setValue(0);
  }
  id_ = condition;
  refresh();
}

void ConditionForm::focusName() {
  name_->setFocus();
  name_->selectAll();
}

void ConditionForm::begin(const Condition& condition) {
  document_.sealGesture();
  drafts_.put(condition, tr("Add a condition"));
  setCondition(condition.id);
  Q_EMIT keptChanged();
}

void ConditionForm::drop(const ConditionId& condition) {
  drafts_.drop(condition);
  refresh();
  Q_EMIT keptChanged();
}

void ConditionForm::dropUnkept() {
  drafts_.clear();
  refresh();
  Q_EMIT keptChanged();
}

void ConditionForm::takeQuestion(std::size_t at, QualifierSpec spec, const QString& gesture) {
  Condition after = draft_;
  if (fresh_.contains(spec.id) && spec.name != after.qualifiers[at].name) {
    fresh_.erase(spec.id);
    std::set<std::string> taken;
    for (std::size_t i = 0; i < after.qualifiers.size(); ++i)
      if (i != at)
        taken.insert(after.qualifiers[i].id);
    spec.id = idFromName(spec.name, "question", taken);
    fresh_.insert(spec.id);
  }
  after.qualifiers[at] = std::move(spec);
  change(std::move(after), tr("Change a question"),
         gesture.isEmpty() ? gesture : QStringLiteral("question/%1/%2").arg(at).arg(gesture));
}

void ConditionForm::settle() {
  for (const QualifierSpec& spec : draft_.qualifiers)
    if (!spec.name.empty())
      fresh_.erase(spec.id);
}

void ConditionForm::addQuestion() {
  settle();
  Condition after = draft_;
  std::set<std::string> taken;
  for (const QualifierSpec& spec : after.qualifiers)
    taken.insert(spec.id);
  QualifierSpec spec;
  spec.id = idFromName({}, "question", taken);
  spec.kind = QualifierKind::flag;
  fresh_.insert(spec.id);
  after.qualifiers.push_back(std::move(spec));
  change(std::move(after), tr("Add a question"));
  row_[draft_.qualifiers.size() - 1]->focusName();
}

void ConditionForm::addRow() {
  const std::size_t at = row_.size();
  auto* row = new ConditionQuestion;
  connect(row, &ConditionQuestion::edited, this,
          [this, at](const QualifierSpec& spec, const QString& gesture) { takeQuestion(at, spec, gesture); });
  connect(row, &ConditionQuestion::nameLeft, this, &ConditionForm::settle);
  connect(row, &ConditionQuestion::upWanted, this, [this, at] {
    settle();
    Condition after = draft_;
    std::swap(after.qualifiers[at], after.qualifiers[at - 1]);
    change(std::move(after), tr("Move a question"));
  });
  connect(row, &ConditionQuestion::removeWanted, this, [this, at] {
    settle();
    Condition after = draft_;
    after.qualifiers.erase(after.qualifiers.begin() + static_cast<std::ptrdiff_t>(at));
    add_->setFocus();
    change(std::move(after), tr("Take a question away"));
  });
  rows_->addWidget(row);
  row_.push_back(row);
}

void ConditionForm::change(Condition after, const QString& what, const QString& gesture) {
  if (after == draft_ || (!findById(document_.own().conditions, id_) && !hasUnkept(id_)))
    return;
  const bool was = hasUnkept(id_);
  const QString key =
      gesture.isEmpty() ? QString() : QStringLiteral("%1/%2").arg(QString::fromStdString(id_.value), gesture);
  drafts_.put(after, what, key);
  if (draft_ != after)
    refresh();
  if (was != hasUnkept(id_))
    Q_EMIT keptChanged();
  Q_EMIT edited();
}

void ConditionForm::refresh() {
  drafts_.followDocument();
  const Condition* draft = drafts_.find(id_);
  if (const Condition* shown = draft ? draft : findById(document_.own().conditions, id_))
    fill(*shown);
}

void ConditionForm::fill(const Condition& condition) {
  draft_ = condition;
  title_->setText(QString::fromStdString(condition.name));
  showText(name_, QString::fromStdString(condition.name));
  // While codes are typed, the line stays as it is typed.
  if (codesIn(codes_->text()) != condition.icd10)
    showText(codes_, lineOfCodes(condition.icd10));
  about_->showNote(QString::fromStdString(condition.about));
  showQuestions();
  std::vector<FaultLine> oddCodes;
  for (const std::string& code : condition.icd10)
    if (!isCodeShaped(code))
      oddCodes.push_back({tr("\"%1\" is not written as a code of the ICD-10 is: a letter and two figures, such as "
                             "M54, and more behind a point.")
                              .arg(QString::fromStdString(code)),
                          true});
  showFaults(codesNote_, oddCodes);
  faults_ = placedFaults(condition, document_.own(), document_.builtIn());
  marks_.show(byField(faults_));
  const std::vector<FaultLine> told = withFieldNames(faults_);
  list_->show(told);
  state_->setText(keptText(!hasUnkept(id_), told,
                           tr("What you change is kept with the studio when the class is saved. A condition says "
                              "nothing by itself: rules do.")));
}

void ConditionForm::showQuestions() {
  none_->setVisible(draft_.qualifiers.empty());
  while (row_.size() < draft_.qualifiers.size())
    addRow();
  for (std::size_t i = 0; i < row_.size(); ++i) {
    const bool there = i < draft_.qualifiers.size();
    row_[i]->setVisible(there);
    if (there)
      row_[i]->show(draft_.qualifiers[i], i == 0);
  }
}

void ConditionForm::goTo(int place) {
  if (place < 0 || static_cast<std::size_t>(place) >= faults_.size())
    return;
  const Field field = faults_[static_cast<std::size_t>(place)].field;
  marks_.goTo(static_cast<int>(field == Field::choices ? Field::qualifiers : field));
}

} // namespace matwright
