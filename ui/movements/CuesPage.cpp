#include "ui/movements/CuesPage.h"

#include "core/base/Text.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/controls/SaveFigure.h"
#include "ui/controls/TempoEditor.h"
#include "ui/figure/FigureView.h"
#include "ui/text/VocabularyText.h"

#include <QGridLayout>

namespace matwright {

CuesPage::CuesPage(QWidget* parent)
    : MovementPage(parent), setUp_(new NoteField(tr("Set-up cue"), kLongestNote, 3)), setUpWords_(softLabel({})),
      action_(lineField(tr("Action cue"), kLongestNote)), actionWords_(softLabel({})), tempo_(new TempoEditor),
      length_(softLabel({})), figure_(new FigureView) {
  auto* grid = fieldGrid(this);
  grid->setContentsMargins(16, 12, 16, 16);
  setUp_->setMaximumWidth(620);
  action_->setMaximumWidth(620);
  tempo_->setMaximumWidth(420);
  figure_->setFixedSize(300, 180);
  std::array<QString, kWordCount<Breath>> breaths;
  for (std::size_t i = 0; i < breaths.size(); ++i)
    breaths[i] = text(static_cast<Breath>(i));
  figure_->setBreathWords(breaths);
  figure_->start();
  offerSaving(*figure_);
  addField(*grid, MovementField::setUp, tr("Set-up cue"), setUp_, setUpWords_);
  addField(*grid, MovementField::action, tr("Action cue"), action_, actionWords_);
  addField(*grid, MovementField::tempo, tr("Tempo and breath"), tempo_, length_);
  grid->addWidget(figure_, grid->rowCount(), 1, Qt::AlignLeft);
  grid->setRowStretch(grid->rowCount(), 1);
  connect(setUp_, &NoteField::edited, this, [this](const QString& words) {
    change([&](Movement& movement) { movement.setUp = words.toStdString(); }, tr("Change the set-up cue"),
           QStringLiteral("setUp"));
    refresh();
  });
  connect(action_, &QLineEdit::textEdited, this, [this](const QString& words) {
    change([&](Movement& movement) { movement.action = words.toStdString(); }, tr("Change the action cue"),
           QStringLiteral("action"));
    refresh();
  });
  connect(tempo_, &TempoEditor::edited, this, [this](const Tempo& tempo, const QString& field) {
    change([&](Movement& movement) { movement.tempo = tempo; }, tr("Change the tempo"),
           field.isEmpty() ? QString() : QStringLiteral("tempo/") + field);
    refresh();
  });
  connect(tempo_, &TempoEditor::left, this, &CuesPage::left);
  whenFocusLeaves(this, this, [this] { Q_EMIT left(); });
}

void CuesPage::setReducedMotion(bool reduced) { figure_->setReducedMotion(reduced); }

void CuesPage::refresh() {
  const Movement& now = movement();
  setUp_->showNote(QString::fromStdString(now.setUp));
  showText(action_, QString::fromStdString(now.action));
  tempo_->show(now.tempo);
  if (now.poses != shownPoses_ || now.tempo != shownTempo_) {
    shownPoses_ = now.poses;
    shownTempo_ = now.tempo;
    figure_->showMovement(now.poses, now.tempo, tr("%1, one repetition").arg(QString::fromStdString(now.name)));
  }
  setUpWords_->setText(tr("%n words; 8 to 25, spoken while people get ready.", nullptr, countWords(now.setUp)));
  actionWords_->setText(tr("%n words; at most 9, breath first where it matters: \"out: curl, in: wait\".", nullptr,
                           countWords(now.action)));
  const Work work = workOf(now.dose, now.tempo, now.sides, {});
  length_->setText(tr("The usual dose (%1) takes %2.").arg(doseText(now.dose, now.sides, {}), clock(work.whole)));
}

} // namespace matwright
