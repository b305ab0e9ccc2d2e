#include "ui/compose/SectionWishes.h"

#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/text/VocabularyText.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QToolButton>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr Seconds kNewSection = minutes(5);

Seconds lengthOf(const std::vector<WishedSection>& sections) {
  Seconds sum;
  for (const WishedSection& section : sections)
    sum += section.length;
  return sum;
}

QString nameOf(const WishedSection& section, std::size_t place) {
  return section.name.empty() ? SectionWishes::tr("Section %1").arg(place + 1) : QString::fromStdString(section.name);
}

} // namespace

std::vector<WishedSection> fitted(std::vector<WishedSection> sections, Seconds length) {
  const Seconds sum = lengthOf(sections);
  const auto count = static_cast<double>(sections.size());
  std::vector<Seconds> parts;
  Seconds left = length;
  for (const WishedSection& section : sections) {
    const double share = sum > Seconds{} ? section.length / sum : 1 / count;
    parts.push_back(minutes(std::max(1.0, std::round(length.minutes() * share))));
    left = left - parts.back();
  }
  const auto longest = std::max_element(parts.begin(), parts.end());
  *longest += left;
  if (!(*longest >= minutes(1)))
    std::fill(parts.begin(), parts.end(), length * (1 / count)); // not a minute for each
  for (std::size_t i = 0; i < sections.size(); ++i)
    sections[i].length = parts[i];
  return sections;
}

SectionWishes::SectionWishes(QWidget* parent)
    : QWidget(parent), column_(new QVBoxLayout), add_(new QPushButton(tr("Add a Section"))),
      fit_(new QPushButton(tr("Make Them Fit"))), open_(new QCheckBox(tr("As long as they come out"))),
      left_(plainLabel({})) {
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->setSpacing(5);
  column_->setSpacing(4);
  whole->addLayout(column_);
  auto* line = new QHBoxLayout;
  line->addWidget(add_);
  line->addStretch(1);
  whole->addLayout(line);
  auto* sum = new QHBoxLayout;
  sum->addWidget(left_, 1);
  sum->addWidget(fit_);
  whole->addLayout(sum);
  whole->addWidget(open_);
  open_->setToolTip(tr("The class has its length; where one section ends and the next begins is left to the search"));
  fit_->setToolTip(tr("Shares the length of the class among the sections as they stand to one another"));
  connect(add_, &QPushButton::clicked, this, [this] {
    auto sections = sections_;
    sections.push_back({tr("New section").toStdString(), haveLengths() ? kNewSection : Seconds{}});
    take(std::move(sections));
    rows_.back().name->setFocus();
    rows_.back().name->selectAll();
  });
  connect(fit_, &QPushButton::clicked, this, [this] { take(fitted(sections_, length_)); });
  connect(open_, &QCheckBox::clicked, this, [this](bool open) {
    auto sections = sections_;
    if (open) {
      before_ = sections_;
      for (WishedSection& section : sections)
        section.length = {};
    } else {
      if (before_.size() == sections.size())
        for (std::size_t i = 0; i < sections.size(); ++i)
          sections[i].length = before_[i].length;
      sections = fitted(std::move(sections), length_);
    }
    take(std::move(sections));
  });
  refresh();
}

void SectionWishes::show(std::vector<WishedSection> sections, Seconds length) {
  sections_ = std::move(sections);
  length_ = length;
  refresh();
}

void SectionWishes::setLength(Seconds length) {
  const bool fitted = fit() && haveLengths();
  length_ = length;
  if (fitted)
    sections_ = matwright::fitted(std::move(sections_), length);
  refresh();
}

void SectionWishes::setFixed(bool fixed) {
  fixed_ = fixed;
  refresh();
}

bool SectionWishes::fit() const {
  const bool each = std::all_of(sections_.begin(), sections_.end(),
                                [](const WishedSection& section) { return section.length > Seconds{}; });
  return !haveLengths() || (each && std::abs((lengthOf(sections_) - length_).value()) <= 1);
}

QString SectionWishes::summary() const {
  QStringList names;
  for (std::size_t i = 0; i < sections_.size(); ++i)
    names << (haveLengths() ? QStringLiteral("%1 %2").arg(nameOf(sections_[i], i), clock(sections_[i].length))
                            : nameOf(sections_[i], i));
  return names.join(QStringLiteral(", "));
}

void SectionWishes::take(std::vector<WishedSection> sections) {
  sections_ = std::move(sections);
  refresh();
  Q_EMIT changed();
}

SectionWishes::Row SectionWishes::addRow(std::size_t at) {
  Row row{new QWidget, lineField({}, kLongestName), new QSpinBox, new QToolButton};
  row.minutes->setRange(1, static_cast<int>(ClassPlan::kLongestTarget.minutes()));
  row.minutes->setSuffix(tr(" min"));
  keepWheelForFocus(row.minutes);
  row.remove->setText(QStringLiteral("\u00d7"));
  row.remove->setStyleSheet(QStringLiteral("QToolButton { padding: 2px 6px; }"));
  auto* line = new QHBoxLayout(row.row);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(4);
  line->addWidget(row.name, 1);
  line->addWidget(row.minutes);
  line->addWidget(row.remove);
  column_->addWidget(row.row);
  connect(row.name, &QLineEdit::textEdited, this, [this, at](const QString& name) {
    sections_[at].name = name.trimmed().toStdString();
    Q_EMIT changed();
  });
  connect(row.minutes, &QSpinBox::valueChanged, this, [this, at](int value) {
    sections_[at].length = minutes(value);
    refresh();
    Q_EMIT changed();
  });
  connect(row.remove, &QToolButton::clicked, this, [this, at] {
    auto sections = sections_;
    sections.erase(sections.begin() + static_cast<std::ptrdiff_t>(at));
    add_->setFocus(); // the button goes
    take(std::move(sections));
  });
  return row;
}

void SectionWishes::refresh() {
  while (rows_.size() > sections_.size()) {
    rows_.back().row->hide();
    rows_.back().row->deleteLater();
    rows_.pop_back();
  }
  while (rows_.size() < sections_.size())
    rows_.push_back(addRow(rows_.size()));
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const Row& row = rows_[i];
    const QString name = nameOf(sections_[i], i);
    if (row.name->text().trimmed() != QString::fromStdString(sections_[i].name))
      row.name->setText(QString::fromStdString(sections_[i].name));
    row.name->setPlaceholderText(tr("Section %1").arg(i + 1));
    row.name->setAccessibleName(tr("Name of section %1").arg(i + 1));
    row.name->setReadOnly(fixed_);
    const QSignalBlocker quiet(row.minutes);
    if (haveLengths())
      row.minutes->setValue(static_cast<int>(std::lround(sections_[i].length.minutes())));
    row.minutes->setAccessibleName(tr("Minutes of %1").arg(name));
    row.minutes->setVisible(haveLengths());
    row.remove->setVisible(!fixed_);
    row.remove->setEnabled(sections_.size() > 1);
    row.remove->setToolTip(tr("Take away: %1").arg(name));
    row.remove->setAccessibleName(row.remove->toolTip());
  }
  add_->setVisible(!fixed_);
  add_->setEnabled(sections_.size() < ClassPlan::kMostSections);
  open_->setChecked(!haveLengths());
  const Seconds left = length_ - lengthOf(sections_);
  fit_->setVisible(!fit());
  left_->setVisible(haveLengths());
  left_->setFont(fit() ? font() : headingFont(font()));
  left_->setText(fit()              ? tr("Together %1, nothing left over").arg(clock(lengthOf(sections_)))
                 : left > Seconds{} ? tr("%1 of %2 left over").arg(clock(left), clock(length_))
                                    : tr("%1 more than the %2 of the class").arg(clock(-left), clock(length_)));
}

} // namespace matwright
