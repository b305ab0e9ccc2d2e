#include "ui/rules/RuleFormGrounds.h"

#include "core/base/Text.h"
#include "ui/controls/DateField.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/rules/SourcePicker.h"
#include "ui/text/VocabularyText.h"

#include <QComboBox>
#include <QGridLayout>
#include <QSignalBlocker>

namespace matwright {
namespace {

template <class Enum> QComboBox* choiceOf(const QString& name) {
  auto* box = new QComboBox;
  for (std::size_t i = 0; i < kWordCount<Enum>; ++i)
    box->addItem(withCapital(text(static_cast<Enum>(i))));
  box->setAccessibleName(name);
  box->setMaximumWidth(560);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(30);
  keepWheelForFocus(box);
  return box;
}

} // namespace

RuleFormGrounds::RuleFormGrounds(QWidget* parent)
    : RuleFormPart(parent), strength_(choiceOf<Strength>(tr("It rests on"))),
      check_(choiceOf<Verification>(tr("How far it was checked"))),
      contested_(new NoteField(tr("Disputed"), kLongestNote, 2)), sources_(new SourcePicker),
      reviewed_(new DateField(tr("Reviewed on"), tr("Set the date"))) {
  QGridLayout* grid = makeGrid(tr("What stands behind it"));
  contested_->setMaximumWidth(620);
  reviewed_->setRequired(true);
  reviewed_->setMaximumWidth(200);
  addPlain(*grid, tr("It rests on"), strength_);
  addField(*grid, Field::sources, tr("Sources"), sources_);
  addPlain(*grid, tr("Checked"), check_);
  addField(*grid, Field::contested, tr("Disputed"), contested_,
           softLabel(tr("What is argued about, said fairly. Empty: nothing that you know of.")));
  addField(*grid, Field::reviewed, tr("Reviewed on"), reviewed_, softLabel(tr("When you last looked at it again.")));
  connect(strength_, &QComboBox::currentIndexChanged, this, [this](int index) {
    change([&](Rule& rule) { rule.strength = static_cast<Strength>(index); }, tr("Change what a rule rests on"));
  });
  connect(check_, &QComboBox::currentIndexChanged, this, [this](int index) {
    change([&](Rule& rule) { rule.check = static_cast<Verification>(index); }, tr("Change how far a rule was checked"));
  });
  connect(contested_, &NoteField::edited, this, [this](const QString& words) {
    change([&](Rule& rule) { rule.contested = words.toStdString(); }, tr("Change what is disputed"),
           QStringLiteral("contested"));
  });
  connect(sources_, &SourcePicker::edited, this, [this](const std::vector<SourceId>& sources) {
    change([&](Rule& rule) { rule.sources = sources; }, tr("Change the sources of a rule"));
  });
  connect(reviewed_, &DateField::edited, this, [this](std::optional<Date> date) {
    if (date)
      change([&](Rule& rule) { rule.reviewed = *date; }, tr("Change when a rule was reviewed"));
  });
}

void RuleFormGrounds::refresh() {
  const QSignalBlocker quietStrength(strength_), quietCheck(check_);
  strength_->setCurrentIndex(static_cast<int>(rule().strength));
  check_->setCurrentIndex(static_cast<int>(rule().check));
  contested_->showNote(QString::fromStdString(rule().contested));
  sources_->show(rule().sources, sharedKnowledge());
  reviewed_->setDate(rule().reviewed.ok() ? std::optional(rule().reviewed) : std::nullopt);
}

} // namespace matwright
