#include "ui/controls/FeatureList.h"

#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/text/VocabularyText.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {
namespace {

struct Group {
  const char* name;
  Feature first; // up to the first of the next group
};

constexpr Group kGroups[] = {
    {QT_TRANSLATE_NOOP("matwright::FeatureList", "Spine"), Feature::flexLoad},
    {QT_TRANSLATE_NOOP("matwright::FeatureList", "Neck"), Feature::neckLift},
    {QT_TRANSLATE_NOOP("matwright::FeatureList", "How the body lies"), Feature::supine},
    {QT_TRANSLATE_NOOP("matwright::FeatureList", "Wrists and kneeling"), Feature::wristLoad},
    {QT_TRANSLATE_NOOP("matwright::FeatureList", "Hips"), Feature::hipFlex90},
    {QT_TRANSLATE_NOOP("matwright::FeatureList", "Knees, feet and nerves"), Feature::kneeDeep},
    {QT_TRANSLATE_NOOP("matwright::FeatureList", "Levers and pressure"), Feature::legsLong},
    {QT_TRANSLATE_NOOP("matwright::FeatureList", "Shoulders"), Feature::armOver},
    {QT_TRANSLATE_NOOP("matwright::FeatureList", "Breath and effort"), Feature::breathHold},
    {QT_TRANSLATE_NOOP("matwright::FeatureList", "Rising, balance and impact"), Feature::rise}};

FeatureSet allFeatures() {
  FeatureSet all;
  for (std::size_t i = 0; i < kWordCount<Feature>; ++i)
    all.insert(static_cast<Feature>(i));
  return all;
}

} // namespace

FeatureList::FeatureList(QWidget* parent)
    : QWidget(parent), offered_(allFeatures()), find_(searchField(tr("Find a feature"), tr("Find by name or meaning"))),
      onlyTicked_(new QCheckBox(tr("Only what is ticked"))), none_(softLabel({})) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  auto* line = new QHBoxLayout;
  find_->setMaximumWidth(320);
  line->addWidget(find_, 1);
  line->addWidget(onlyTicked_);
  line->addStretch(1);
  column->addLayout(line);
  column->addWidget(none_);
  auto* grid = new QGridLayout;
  grid->setColumnStretch(1, 1);
  grid->setHorizontalSpacing(16);
  grid->setVerticalSpacing(5);
  QLabel* heading = nullptr;
  std::size_t group = 0;
  for (std::size_t i = 0; i < kWordCount<Feature>; ++i) {
    const auto feature = static_cast<Feature>(i);
    if (group < std::size(kGroups) && kGroups[group].first == feature) {
      heading = headingLabel(tr(kGroups[group++].name));
      heading->setContentsMargins(0, 8, 0, 0);
      grid->addWidget(heading, grid->rowCount(), 0, 1, 2);
    }
    Row row{new QCheckBox(withCapital(text(feature))), softLabel(definition(feature)), heading};
    row.box->setAccessibleDescription(definition(feature));
    connect(row.box, &QCheckBox::toggled, this, [this, feature](bool on) {
      if (on)
        ticked_.insert(feature);
      else
        ticked_.erase(feature);
      Q_EMIT edited(ticked_, feature);
    });
    const int at = grid->rowCount();
    grid->addWidget(row.box, at, 0, Qt::AlignTop);
    grid->addWidget(row.definition, at, 1, Qt::AlignTop);
    row.definition->setContentsMargins(0, 2, 0, 2);
    rows_[feature] = row;
  }
  column->addLayout(grid);
  column->addStretch(1);
  setFocusProxy(find_);
  connect(find_, &QLineEdit::textChanged, this, &FeatureList::filter);
  connect(onlyTicked_, &QCheckBox::toggled, this, &FeatureList::filter);
  filter();
}

void FeatureList::show(FeatureSet ticked, const std::map<Feature, QString>& locked) {
  ticked_ = ticked;
  locked_ = locked;
  for (auto& [feature, row] : rows_) {
    const auto why = locked.find(feature);
    const bool held = why != locked.end();
    const QSignalBlocker quiet(row.box);
    row.box->setChecked(held || ticked.contains(feature));
    row.box->setEnabled(!held);
    row.definition->setText(held ? QStringLiteral("%1 (%2)").arg(definition(feature), why->second)
                                 : definition(feature));
    row.box->setAccessibleDescription(row.definition->text());
  }
  if (brief_ || onlyTicked_->isChecked())
    filter();
}

void FeatureList::setBrief(const QString& name) {
  brief_ = true;
  setAccessibleName(name);
  find_->setAccessibleName(tr("Find a feature: %1").arg(name));
  onlyTicked_->setText(tr("Show all"));
  onlyTicked_->setAccessibleName(tr("Show all features: %1").arg(name));
  filter();
}

void FeatureList::setOffered(FeatureSet offered) {
  if (offered_ == offered)
    return;
  offered_ = offered;
  filter();
}

void FeatureList::filter() {
  const QStringList words = find_->text().split(QLatin1Char(' '), Qt::SkipEmptyParts);
  std::map<QLabel*, bool> headings;
  bool any = false;
  const bool onlyTicked = brief_ ? words.isEmpty() && !onlyTicked_->isChecked() : onlyTicked_->isChecked();
  for (auto& [feature, row] : rows_) {
    const QString all = text(feature) + QLatin1Char(' ') + definition(feature);
    const bool shown = offered_.contains(feature) && (!onlyTicked || row.box->isChecked()) &&
                       std::all_of(words.begin(), words.end(),
                                   [&](const QString& word) { return all.contains(word, Qt::CaseInsensitive); });
    row.box->setVisible(shown);
    row.definition->setVisible(shown);
    headings[row.heading] = headings[row.heading] || shown;
    any = any || shown;
  }
  for (const auto& [heading, shown] : headings)
    heading->setVisible(shown);
  const bool noneTicked = brief_ && onlyTicked;
  showText(none_, any          ? QString()
                  : noneTicked ? tr("None is chosen. Search for one by name or meaning, or show them all.")
                               : tr("No feature is shown by this."));
}

} // namespace matwright
