#include "ui/settings/SettingsDialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QVBoxLayout>

namespace matwright {

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
  layout->addWidget(buttons);
}

} // namespace matwright
