#include "ui/movements/PosesPage.h"

#include "ui/movements/PoseEditor.h"

#include <QLabel>
#include <QVBoxLayout>

namespace matwright {

PosesPage::PosesPage(QWidget* parent) : MovementPage(parent), editor_(new PoseEditor(PoseEditor::Arrangement::wide)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 4, 4);
  QLabel* note = faultLabel();
  column->addWidget(note);
  column->addWidget(editor_, 1);
  mark(MovementField::poses, editor_, note);
  connect(editor_, &PoseEditor::edited, this,
          [this](const KeyPoses& poses, const QString& what, const QString& gesture) {
            change([&](Movement& movement) { movement.poses = poses; }, what,
                   gesture.isEmpty() ? QString() : QStringLiteral("poses/") + gesture);
            refresh();
          });
  connect(editor_, &PoseEditor::left, this, &PosesPage::left);
}

void PosesPage::setReducedMotion(bool reduced) { editor_->setReducedMotion(reduced); }

void PosesPage::refresh() {
  editor_->setPositions(knowledge().transitions.positions());
  editor_->show(movement().poses, movement().tempo, QString::fromStdString(movement().name));
}

} // namespace matwright
