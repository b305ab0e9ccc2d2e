#include "ui/people/ClearanceEditor.h"

#include "core/plan/ClassPlan.h"
#include "ui/controls/CheckMenu.h"
#include "ui/controls/DateField.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/controls/RowText.h"
#include "ui/text/VocabularyText.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QToolButton>

namespace matwright {

ClearanceEditor::ClearanceEditor(FeatureSet offered, QWidget* parent)
    : QWidget(parent), offered_(offered), given_(new DateField(tr("Given on"), tr("Set the date"))),
      until_(new DateField(tr("Holds until"), tr("No end: set one"))), says_(new QComboBox),
      by_(lineField(tr("Given by"), kLongestName)), note_(lineField(tr("Note on the clearance"), kLongestNote)),
      features_(new QToolButton), menu_(new CheckMenu(this)), featureWords_(softLabel({})), state_(softLabel({})) {
  given_->setRequired(true);
  says_->setAccessibleName(tr("What it says"));
  keepWheelForFocus(says_);
  says_->addItem(tr("agreed (ask first becomes watch)"));
  for (std::size_t level = 0; level < kWordCount<Level>; ++level)
    says_->addItem(tr("written instruction: %1").arg(text(static_cast<Level>(level))));
  by_->setPlaceholderText(tr("surgeon, physiotherapist, midwife \u2026"));
  note_->setPlaceholderText(tr("what was said, in short"));
  features_->setText(tr("Choose"));
  features_->setPopupMode(QToolButton::InstantPopup);
  features_->setMenu(menu_);
  auto* remove = new QToolButton;
  remove->setText(tr("Remove"));
  remove->setAccessibleName(tr("Remove this clearance"));

  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(12, 4, 0, 4);
  grid->setColumnStretch(1, 1);
  grid->setVerticalSpacing(4);
  int row = 0;
  auto* head = new QHBoxLayout;
  head->addWidget(headingLabel(tr("Clearance")), 1);
  head->addWidget(remove);
  grid->addLayout(head, row++, 0, 1, 2);
  const auto add = [&](const QString& name, QWidget* field) {
    grid->addWidget(besideLabel(name, field), row, 0, Qt::AlignTop);
    grid->addWidget(field, row++, 1);
  };
  add(tr("Given on"), given_);
  add(tr("Holds until"), until_);
  add(tr("What it says"), says_);
  add(tr("Given by"), by_);
  add(tr("Note"), note_);
  grid->addWidget(besideLabel(tr("Speaks for"), features_), row, 0, Qt::AlignTop);
  auto* words = new QHBoxLayout;
  featureWords_->setForegroundRole(QPalette::WindowText);
  words->addWidget(featureWords_, 1);
  words->addWidget(features_, 0, Qt::AlignTop);
  grid->addLayout(words, row++, 1);
  grid->addWidget(state_, row, 0, 1, 2);

  connect(given_, &DateField::edited, this, [this](std::optional<Date> date) {
    if (!date)
      return;
    clearance_.given = *date;
    Q_EMIT edited(clearance_, QStringLiteral("given"));
  });
  connect(until_, &DateField::edited, this, [this](std::optional<Date> date) {
    clearance_.until = date;
    Q_EMIT edited(clearance_, QStringLiteral("until"));
  });
  connect(says_, &QComboBox::currentIndexChanged, this, [this](int index) {
    if (index < 0)
      return;
    clearance_.sets = index > 0 ? std::optional{static_cast<Level>(index - 1)} : std::nullopt;
    Q_EMIT edited(clearance_, QStringLiteral("sets"));
  });
  connect(by_, &QLineEdit::textEdited, this, [this](const QString& words_) {
    clearance_.by = words_.toStdString();
    Q_EMIT edited(clearance_, QStringLiteral("by"));
  });
  connect(note_, &QLineEdit::textEdited, this, [this](const QString& words_) {
    clearance_.note = words_.toStdString();
    Q_EMIT edited(clearance_, QStringLiteral("note"));
  });
  connect(menu_, &QMenu::aboutToShow, this, &ClearanceEditor::fillFeatures);
  connect(remove, &QToolButton::clicked, this, &ClearanceEditor::removeWanted);
}

void ClearanceEditor::fillFeatures() {
  menu_->clear();
  (offered_ | clearance_.features).forEach([this](Feature feature) {
    QAction* action = menu_->addAction(text(feature));
    action->setToolTip(definition(feature));
    action->setCheckable(true);
    action->setChecked(clearance_.features.contains(feature));
    connect(action, &QAction::triggered, this, [this, feature](bool chosen) {
      if (chosen)
        clearance_.features.insert(feature);
      else
        clearance_.features.erase(feature);
      Q_EMIT edited(clearance_, QStringLiteral("features"));
    });
  });
  if (menu_->isEmpty())
    menu_->addAction(tr("No rule asks for a feature here"))->setEnabled(false);
}

void ClearanceEditor::show(const Clearance& clearance, Date day) {
  clearance_ = clearance;
  given_->setDate(clearance.given);
  until_->setProposal(day);
  until_->setDate(clearance.until);
  {
    const QSignalBlocker quiet(says_);
    says_->setCurrentIndex(clearance.sets ? static_cast<int>(*clearance.sets) + 1 : 0);
  }
  showText(by_, QString::fromStdString(clearance.by));
  showText(note_, QString::fromStdString(clearance.note));
  featureWords_->setText(clearance.features.empty() ? tr("everything that belongs to this condition")
                                                    : featureList(clearance.features));
  features_->setAccessibleName(tr("Choose what the clearance speaks for: %1").arg(featureWords_->text()));
  showState(day);
}

void ClearanceEditor::showState(Date day) {
  const QString on = dateText(day);
  if (holdsOn(clearance_, day) && clearance_.sets)
    state_->setText(tr("Holds on %1, the day of this class: a written instruction comes before the rule, so what it "
                       "speaks for is \"%2\".")
                        .arg(on, text(*clearance_.sets)));
  else if (holdsOn(clearance_, day))
    state_->setText(
        tr("Holds on %1, the day of this class: lowers \"ask first\" to \"watch\", never \"leave out\".").arg(on));
  else if (std::chrono::sys_days{day} < std::chrono::sys_days{clearance_.given})
    state_->setText(tr("Does not hold yet on %1, the day of this class.").arg(on));
  else
    state_->setText(tr("Has ended by %1, the day of this class.").arg(on));
}

} // namespace matwright
