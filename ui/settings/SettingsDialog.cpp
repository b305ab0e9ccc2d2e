#include "ui/settings/SettingsDialog.h"

#include "ui/text/LoadText.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QSpinBox>
#include <QVBoxLayout>
#include <cmath>

namespace matwright {
namespace {

int inCentimetres(double metres) { return static_cast<int>(std::lround(metres * 100)); }

// The body in which load figures are told.
QGroupBox* bodyPart(Settings& settings) {
  auto* part = new QGroupBox(SettingsDialog::tr("Body for load figures"));
  auto* table = new QComboBox;
  for (std::size_t i = 0; i < kWordCount<BodyTable>; ++i)
    table->addItem(text(static_cast<BodyTable>(i)));
  table->setCurrentIndex(static_cast<int>(settings.bodyTable()));
  QObject::connect(table, &QComboBox::activated, &settings,
                   [&settings](int index) { settings.setBodyTable(static_cast<BodyTable>(index)); });

  const BodySize now = settings.bodySize();
  auto* stature = new QSpinBox;
  stature->setRange(inCentimetres(BodySize::kLeastStature), inCentimetres(BodySize::kMostStature));
  stature->setSuffix(SettingsDialog::tr(" cm"));
  stature->setValue(inCentimetres(now.stature));
  auto* mass = new QSpinBox;
  mass->setRange(static_cast<int>(BodySize::kLeastMass), static_cast<int>(BodySize::kMostMass));
  mass->setSuffix(SettingsDialog::tr(" kg"));
  mass->setValue(static_cast<int>(std::lround(now.mass)));
  const auto take = [&settings, stature, mass] {
    settings.setBodySize({.mass = static_cast<double>(mass->value()), .stature = stature->value() / 100.0});
  };
  QObject::connect(stature, &QSpinBox::valueChanged, &settings, take);
  QObject::connect(mass, &QSpinBox::valueChanged, &settings, take);

  auto* about = new QLabel(SettingsDialog::tr(
      "One body for the whole class; nobody in it is measured. Stature and mass change newton metres "
      "alone; the table also the shares by which rules tell a long lever."));
  about->setWordWrap(true);
  auto* form = new QFormLayout(part);
  form->addRow(SettingsDialog::tr("&Table of segments"), table);
  form->addRow(SettingsDialog::tr("&Stature"), stature);
  form->addRow(SettingsDialog::tr("&Mass"), mass);
  form->addRow(about);
  return part;
}

} // namespace

SettingsDialog::SettingsDialog(Settings& settings, QWidget* parent) : QDialog(parent) {
  setWindowTitle(tr("Settings"));
  auto* appearance = new QComboBox;
  appearance->addItems({tr("As the system"), tr("Light"), tr("Dark")});
  appearance->setCurrentIndex(static_cast<int>(settings.appearance()));
  connect(appearance, &QComboBox::activated, &settings,
          [&settings](int index) { settings.setAppearance(static_cast<Appearance>(index)); });

  auto* paper = new QComboBox;
  paper->addItems({tr("A4"), tr("Letter")});
  paper->setCurrentIndex(static_cast<int>(settings.paper()));
  connect(paper, &QComboBox::activated, &settings,
          [&settings](int index) { settings.setPaper(static_cast<Paper>(index)); });

  auto* names = new QCheckBox(tr("Full names on the card instead of initials"));
  names->setChecked(settings.namesOnCard());
  connect(names, &QCheckBox::toggled, &settings, &Settings::setNamesOnCard);

  auto* motion = new QCheckBox(tr("Figures keep still"));
  motion->setChecked(settings.reducedMotion());
  connect(motion, &QCheckBox::toggled, &settings, &Settings::setReducedMotion);

  auto* form = new QFormLayout;
  form->addRow(tr("&Appearance"), appearance);
  form->addRow(tr("&Paper"), paper);
  form->addRow(names);
  form->addRow(motion);

  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);

  auto* layout = new QVBoxLayout(this);
  layout->addLayout(form);
  layout->addWidget(bodyPart(settings));
  layout->addWidget(buttons);
}

} // namespace matwright
