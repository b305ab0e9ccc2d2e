#include "ui/inspector/ClassPage.h"

#include "ui/controls/DateField.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/inspector/ClassList.h"
#include "ui/inspector/ClassLoadPart.h"

#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QPushButton>
#include <QSignalBlocker>
#include <cmath>

namespace matwright {
namespace {

template <class Box, class Value> void showValue(Box* box, Value value) {
  const QSignalBlocker quiet(box);
  if (box->value() != value)
    box->setValue(value);
}

} // namespace

ClassPage::ClassPage(PlanDocument& document, QWidget* parent)
    : QWidget(parent), document_(document), name_(lineField(tr("Name of the class"), kLongestName)),
      date_(new DateField(tr("Date of the class"), tr("No date: set one"))), target_(new QSpinBox),
      note_(new NoteField(tr("Note on the class"), kLongestNote, 4)), mobility_(new QDoubleSpinBox),
      words_(new QSpinBox), settle_(new QSpinBox), choose_(softLabel(tr("Choose a step to see and change it here."))),
      compose_(new QPushButton(tr("Compose a Class from Wishes\u2026"))), people_(new ClassList(document)),
      load_(new ClassLoadPart) {
  target_->setRange(static_cast<int>(ClassPlan::kShortestTarget.minutes()),
                    static_cast<int>(ClassPlan::kLongestTarget.minutes()));
  target_->setSuffix(tr(" min"));
  mobility_->setRange(Pace::kLowestMobility, Pace::kHighestMobility);
  mobility_->setSingleStep(0.1);
  mobility_->setDecimals(2);
  mobility_->setPrefix(QStringLiteral("\u00d7 "));
  words_->setRange(static_cast<int>(Pace::kSlowestSpeech), static_cast<int>(Pace::kFastestSpeech));
  words_->setSingleStep(5);
  words_->setSuffix(tr(" a minute"));
  settle_->setRange(0, static_cast<int>(Pace::kLongestSettle));
  settle_->setSuffix(tr(" s"));

  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 10);
  column->setSpacing(6);
  auto* grid = new QGridLayout;
  grid->setColumnStretch(1, 1);
  grid->setHorizontalSpacing(10);
  grid->setVerticalSpacing(6);
  int row = 0;
  const auto add = [&](const QString& label, QWidget* field, const QString& hint) {
    field->setToolTip(hint);
    grid->addWidget(besideLabel(label, field), row, 0, Qt::AlignTop);
    grid->addWidget(field, row++, 1);
    if (!hint.isEmpty())
      grid->addWidget(softLabel(hint), row++, 1);
  };
  const auto heading = [&](const QString& words) { grid->addWidget(headingLabel(words), row++, 0, 1, 2); };
  column->addWidget(titleLabel(tr("This class")));
  column->addLayout(grid);
  add(tr("Name"), name_, {});
  add(tr("Date"), date_, tr("Weeks and clearances are counted for this day, or for today"));
  add(tr("Length"), target_, {});
  add(tr("Note"), note_, {});
  heading(tr("Pace of the group"));
  add(tr("Moving"), mobility_, tr("1 as charted for healthy adults, 2 twice as long"));
  add(tr("Words"), words_, tr("Of the set-up cues, spoken while people move"));
  add(tr("Settling"), settle_, tr("From being there to the first count"));
  column->addWidget(choose_);
  column->addWidget(compose_);
  column->addWidget(people_);
  column->addWidget(load_);
  column->addStretch(1);
  for (QWidget* field : {static_cast<QWidget*>(target_), static_cast<QWidget*>(mobility_),
                         static_cast<QWidget*>(words_), static_cast<QWidget*>(settle_)})
    keepWheelForFocus(field);
  connectFields();
  setFocusProxy(name_);
  refresh();
}

void ClassPage::connectFields() {
  connect(load_, &ClassLoadPart::aboutWanted, this, &ClassPage::aboutLoadWanted);
  connect(compose_, &QPushButton::clicked, this, &ClassPage::composeWanted);
  connect(name_, &QLineEdit::textEdited, this, [this](const QString& name) {
    // A class is never without a name; while the field is empty, the last one stands.
    if (!name.trimmed().isEmpty())
      document_.perform(RenameClass{name.trimmed().toStdString()}, tr("Rename the class"),
                        QStringLiteral("class/name"));
  });
  connect(date_, &DateField::edited, this, [this](std::optional<Date> date) {
    document_.perform(SetDate{date}, tr("Change the date"), QStringLiteral("class/date"));
  });
  connect(target_, &QSpinBox::valueChanged, this, [this](int length) {
    document_.perform(SetTarget{minutes(length)}, tr("Change the length aimed at"), QStringLiteral("class/target"));
  });
  connect(note_, &NoteField::edited, this, [this](const QString& note) {
    document_.perform(SetClassNote{note.toStdString()}, tr("Change the note of the class"),
                      QStringLiteral("class/note"));
  });
  connect(mobility_, &QDoubleSpinBox::valueChanged, this, [this] { changePace(QStringLiteral("mobility")); });
  connect(words_, &QSpinBox::valueChanged, this, [this] { changePace(QStringLiteral("words")); });
  connect(settle_, &QSpinBox::valueChanged, this, [this] { changePace(QStringLiteral("settle")); });
  for (QWidget* field : {static_cast<QWidget*>(name_), static_cast<QWidget*>(date_), static_cast<QWidget*>(target_),
                         static_cast<QWidget*>(note_), static_cast<QWidget*>(mobility_), static_cast<QWidget*>(words_),
                         static_cast<QWidget*>(settle_)})
    whenFocusLeaves(field, this, [this] { seal(); });
}

void ClassPage::changePace(const QString& field) {
  Pace pace = document_.plan().pace;
  if (field == QLatin1String("mobility"))
    pace.mobility = mobility_->value();
  else if (field == QLatin1String("words"))
    pace.wordsPerMinute = words_->value();
  else
    pace.settle = Seconds(settle_->value());
  document_.perform(SetPace{pace}, tr("Change the pace"), QStringLiteral("class/") + field);
}

void ClassPage::seal() {
  document_.sealGesture();
  refresh();
}

void ClassPage::refresh() {
  const ClassPlan& plan = document_.plan();
  const QString name = QString::fromStdString(plan.name);
  // A space at the end of what is being typed stays, and so does a field that has just been emptied.
  const QString typed = name_->text().trimmed();
  if (!name_->hasFocus() || (typed != name && !typed.isEmpty()))
    showText(name_, name);
  date_->setProposal(document_.day());
  date_->setDate(plan.date);
  showValue(target_, static_cast<int>(std::lround(plan.target.minutes())));
  note_->showNote(QString::fromStdString(plan.note));
  showValue(mobility_, plan.pace.mobility);
  showValue(words_, static_cast<int>(std::lround(plan.pace.wordsPerMinute)));
  showValue(settle_, static_cast<int>(std::lround(plan.pace.settle.value())));
  const bool empty = countSteps(plan) == 0;
  choose_->setVisible(!empty);
  compose_->setVisible(empty);
  people_->refresh();
  load_->show(document_.snapshot());
}

} // namespace matwright
