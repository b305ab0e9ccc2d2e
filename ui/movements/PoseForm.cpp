#include "ui/movements/PoseForm.h"

#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/movements/SupportForm.h"
#include "ui/text/FigureText.h"
#include "ui/text/VocabularyText.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

// Whole degrees without a decimal.
class AngleBox : public QDoubleSpinBox {
public:
  QString textFromValue(double value) const override {
    return locale().toString(value, 'f', value == std::round(value) ? 0 : decimals());
  }
};

} // namespace

PoseForm::PoseForm(QWidget* parent)
    : QWidget(parent), supports_(new SupportForm), view_(new QComboBox), flip_(new QCheckBox(tr("Facing left"))) {
  using enum Joint;
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(10, 6, 12, 10);
  column->setSpacing(8);
  auto* seen = new QGridLayout;
  seen->setColumnStretch(1, 1);
  for (std::size_t i = 0; i < kWordCount<View>; ++i)
    view_->addItem(withCapital(text(static_cast<View>(i))));
  keepWheelForFocus(view_);
  seen->addWidget(besideLabel(tr("Seen"), view_), 0, 0);
  seen->addWidget(view_, 0, 1);
  flip_->setToolTip(tr("Mirrors the drawing, so that the body faces left or lies with its head to the right"));
  seen->addWidget(flip_, 1, 1);
  column->addLayout(seen);
  addContacts(*column);
  addTable(*column, tr("Body, in degrees"), {}, {{tr("Lean"), {lean}}, {tr("Roll"), {roll}}});
  addTable(*column, tr("Spine"), {tr("bend"), tr("to the side"), tr("turn")},
           {{tr("Low back"), {lumbarBend, lumbarSide, lumbarTurn}},
            {tr("Chest"), {thoraxBend, thoraxSide, thoraxTurn}},
            {tr("Neck"), {neckBend, neckSide, neckTurn}}});
  addTable(*column, tr("Arms"), {tr("near"), tr("far")},
           {{tr("Shoulder"), {shoulderNear, shoulderFar}},
            {tr("Out to the side"), {armOutNear, armOutFar}},
            {tr("Elbow"), {elbowNear, elbowFar}}});
  addTable(*column, tr("Legs"), {tr("near"), tr("far")},
           {{tr("Hip"), {hipNear, hipFar}},
            {tr("Out to the side"), {legOutNear, legOutFar}},
            {tr("Turned out"), {legTurnNear, legTurnFar}},
            {tr("Knee"), {kneeNear, kneeFar}},
            {tr("Ankle"), {ankleNear, ankleFar}}});
  column->addStretch(1);
  connect(view_, &QComboBox::currentIndexChanged, this, [this](int index) {
    pose_.view = static_cast<View>(index);
    edit({});
  });
  connect(flip_, &QCheckBox::toggled, this, [this](bool on) {
    pose_.flip = on;
    edit({});
  });
  whenFocusLeaves(this, this, [this] { Q_EMIT left(); });
}

QDoubleSpinBox* PoseForm::addAngle(Joint joint) {
  auto* box = new AngleBox;
  box->setDecimals(1);
  box->setSingleStep(1);
  box->setRange(rangeOf(joint).least, rangeOf(joint).most);
  box->setAccessibleName(withCapital(text(joint)));
  box->setToolTip(QStringLiteral("%1: %2").arg(withCapital(text(joint)), directions(joint)));
  box->setButtonSymbols(QAbstractSpinBox::NoButtons);
  box->setCorrectionMode(QAbstractSpinBox::CorrectToNearestValue);
  box->setMinimumWidth(64);
  keepWheelForFocus(box);
  connect(box, &QDoubleSpinBox::valueChanged, this, [this, joint](double degrees) {
    angleOf(pose_, joint) = degrees;
    edit(QString::fromLatin1(word(joint).data(), static_cast<qsizetype>(word(joint).size())));
  });
  angles_[static_cast<std::size_t>(joint)] = box;
  return box;
}

void PoseForm::addTable(QVBoxLayout& column, const QString& heading, const QStringList& columns,
                        const std::vector<std::pair<QString, std::vector<Joint>>>& rows) {
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(4);
  grid->addWidget(headingLabel(heading), 0, 0);
  for (int i = 0; i < columns.size(); ++i)
    grid->addWidget(softLabel(columns[i]), 0, i + 1, Qt::AlignBottom);
  for (std::size_t row = 0; row < rows.size(); ++row) {
    QLabel* label = softLabel(rows[row].first);
    label->setWordWrap(false);
    grid->addWidget(label, static_cast<int>(row) + 1, 0);
    for (std::size_t i = 0; i < rows[row].second.size(); ++i)
      grid->addWidget(addAngle(rows[row].second[i]), static_cast<int>(row) + 1, static_cast<int>(i) + 1);
  }
  grid->setColumnStretch(std::max(2, static_cast<int>(columns.size()) + 1), 1);
  column.addLayout(grid);
}

void PoseForm::addContacts(QVBoxLayout& column) {
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(12);
  grid->setVerticalSpacing(2);
  column.addWidget(headingLabel(tr("On the floor")));
  constexpr int kPairs = static_cast<int>(Contact::handNear);
  for (std::size_t i = 0; i < on_.size(); ++i) {
    const auto contact = static_cast<Contact>(i);
    on_[i] = new QCheckBox(withCapital(text(contact)));
    on_[i]->setAccessibleName(tr("%1 on the floor").arg(withCapital(text(contact))));
    connect(on_[i], &QCheckBox::toggled, this, [this, contact](bool on) {
      for (EnumSet<Contact>& each : pose_.supports)
        each.erase(contact);
      if (on)
        pose_.on.insert(contact);
      else
        pose_.on.erase(contact);
      edit({});
    });
    grid->addWidget(on_[i], static_cast<int>(i) / 2, static_cast<int>(i) % 2);
  }
  static_assert(kPairs % 2 == 0);
  grid->setColumnStretch(1, 1);
  column.addLayout(grid);
  column.addWidget(headingLabel(tr("Against the wall")));
  auto* line = new QGridLayout;
  line->setHorizontalSpacing(12);
  line->setVerticalSpacing(2);
  for (std::size_t i = 0; i < wall_.size(); ++i) {
    const auto contact = static_cast<WallContact>(i);
    wall_[i] = new QCheckBox(withCapital(text(contact)));
    wall_[i]->setAccessibleName(tr("%1 against the wall").arg(withCapital(text(contact))));
    connect(wall_[i], &QCheckBox::toggled, this, [this, contact](bool on) {
      if (on)
        pose_.wall.insert(contact);
      else
        pose_.wall.erase(contact);
      edit({});
    });
    line->addWidget(wall_[i], i == 0 ? 0 : static_cast<int>(i + 1) / 2, i == 0 ? 0 : static_cast<int>(i + 1) % 2);
  }
  line->setColumnStretch(1, 1);
  column.addLayout(line);
  column.addWidget(supports_);
  connect(supports_, &SupportForm::edited, this, [this](const Pose& pose) {
    pose_.on = pose.on;
    pose_.supports = pose.supports;
    pose_.holds = pose.holds;
    edit({});
  });
}

void PoseForm::edit(const QString& gesture) { Q_EMIT edited(pose_, gesture); }

void PoseForm::show(const Pose& pose) {
  pose_ = pose;
  for (std::size_t i = 0; i < angles_.size(); ++i) {
    const QSignalBlocker quiet(angles_[i]);
    const double angle = angleOf(pose, static_cast<Joint>(i));
    const AngleRange range = rangeOf(static_cast<Joint>(i));
    angles_[i]->setRange(std::min(range.least, angle), std::max(range.most, angle));
    if (angles_[i]->value() != angle)
      angles_[i]->setValue(angle);
  }
  const auto tick = [](QCheckBox* box, bool on) {
    const QSignalBlocker quiet(box);
    box->setChecked(on);
  };
  for (std::size_t i = 0; i < on_.size(); ++i)
    tick(on_[i], pose.on.contains(static_cast<Contact>(i)));
  for (std::size_t i = 0; i < wall_.size(); ++i)
    tick(wall_[i], pose.wall.contains(static_cast<WallContact>(i)));
  supports_->show(pose);
  tick(flip_, pose.flip);
  const QSignalBlocker quiet(view_);
  view_->setCurrentIndex(static_cast<int>(pose.view));
}

} // namespace matwright
