#include "ui/rules/SourceForm.h"

#include "core/base/Text.h"
#include "core/knowledge/Faults.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/text/RuleText.h"
#include "ui/text/VocabularyText.h"

#include <QComboBox>
#include <QGridLayout>
#include <QSignalBlocker>

namespace matwright {

SourceForm::SourceForm(QWidget* parent)
    : QWidget(parent), cite_(new NoteField(tr("Cited as"), kLongestNote, 2)), kind_(new QComboBox) {
  auto* grid = fieldGrid(this);
  grid->setContentsMargins(0, 0, 0, 0);
  for (std::size_t i = 0; i < kWordCount<SourceKind>; ++i)
    kind_->addItem(withCapital(text(static_cast<SourceKind>(i))));
  kind_->setAccessibleName(tr("What kind of source it is"));
  kind_->setMaximumWidth(220);
  keepWheelForFocus(kind_);
  cite_->setMaximumWidth(620);
  marks_.addField(*grid, static_cast<int>(Field::cite), tr("Cited as"), cite_,
                  softLabel(tr("Authors, year, where it stands: as much as somebody needs to find it.")));
  grid->addWidget(besideLabel(tr("Kind"), kind_), 2, 0, Qt::AlignTop);
  grid->addWidget(kind_, 2, 1);
  connect(cite_, &NoteField::edited, this, [this](const QString& words) {
    source_.cite = words.toStdString();
    Q_EMIT edited(source_, tr("Change a source"), QStringLiteral("cite"));
  });
  connect(kind_, &QComboBox::currentIndexChanged, this, [this](int index) {
    source_.kind = static_cast<SourceKind>(index);
    Q_EMIT edited(source_, tr("Change the kind of a source"), {});
  });
  whenFocusLeaves(this, this, [this] { Q_EMIT left(); });
}

void SourceForm::show(const Source& source) {
  source_ = source;
  cite_->showNote(QString::fromStdString(source.cite));
  const QSignalBlocker quiet(kind_);
  kind_->setCurrentIndex(static_cast<int>(source.kind));
}

void SourceForm::focusCite() { cite_->setFocus(); }

} // namespace matwright
