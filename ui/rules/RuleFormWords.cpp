#include "ui/rules/RuleFormWords.h"

#include "core/base/Text.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/text/VocabularyText.h"

#include <QComboBox>
#include <QGridLayout>
#include <QSignalBlocker>

namespace matwright {

RuleFormWords::RuleFormWords(QWidget* parent)
    : RuleFormPart(parent), level_(new QComboBox), instead_(lineField(tr("Instead"), kLongestNote)),
      count_(softLabel({})), why_(new NoteField(tr("Why"), kLongestNote, 3)) {
  QGridLayout* grid = makeGrid(tr("What it says"));
  for (std::size_t i = 0; i < kWordCount<Level>; ++i)
    level_->addItem(withCapital(text(static_cast<Level>(i))));
  level_->setAccessibleName(tr("Level"));
  level_->setMaximumWidth(200);
  keepWheelForFocus(level_);
  instead_->setMaximumWidth(460);
  why_->setMaximumWidth(620);
  addPlain(*grid, tr("Level"), level_,
           softLabel(tr("A clearance of somebody's clinician turns \"ask first\" into \"watch\"; a written instruction "
                        "takes the place of any level.")));
  addField(*grid, Field::instead, tr("Instead"), instead_, count_);
  addField(*grid, Field::why, tr("Why"), why_, softLabel(tr("One calm sentence with the reason.")));
  connect(level_, &QComboBox::currentIndexChanged, this, [this](int index) {
    change([&](Rule& rule) { rule.level = static_cast<Level>(index); }, tr("Change the level of a rule"));
  });
  connect(instead_, &QLineEdit::textEdited, this, [this](const QString& words) {
    change([&](Rule& rule) { rule.instead = words.toStdString(); }, tr("Change what to do instead"),
           QStringLiteral("instead"));
  });
  connect(why_, &NoteField::edited, this, [this](const QString& words) {
    change([&](Rule& rule) { rule.why = words.toStdString(); }, tr("Change why a rule speaks"), QStringLiteral("why"));
  });
}

void RuleFormWords::refresh() {
  const QSignalBlocker quiet(level_);
  level_->setCurrentIndex(static_cast<int>(rule().level));
  showText(instead_, QString::fromStdString(rule().instead));
  count_->setText(tr("What can be done, as it is printed on the card: %1 of %2 words.")
                      .arg(countWords(rule().instead))
                      .arg(Rule::kLongestInstead));
  why_->showNote(QString::fromStdString(rule().why));
}

} // namespace matwright
