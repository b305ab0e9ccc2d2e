#include "ui/rules/SourcePicker.h"

#include "core/knowledge/Faults.h"
#include "core/knowledge/OwnKnowledge.h"
#include "ui/controls/FaultMarks.h"
#include "ui/controls/Labels.h"
#include "ui/controls/PickList.h"
#include "ui/rules/SourceForm.h"
#include "ui/text/FaultText.h"
#include "ui/text/RuleText.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {
namespace {

constexpr int kWidest = 680;

QString lineFor(const Source& source) {
  return SourcePicker::tr("%1 (%2)").arg(QString::fromStdString(source.cite), text(source.kind));
}

} // namespace

SourcePicker::SourcePicker(QWidget* parent)
    : QWidget(parent), none_(softLabel(tr("None. Then what stands behind the rule is practice."))),
      rows_(new QVBoxLayout),
      list_(new PickList({tr("Add a source"), tr("Find a source"), tr("Find a source by its words"), tr("All sources"),
                          tr("No source on file has these words. Add one of your own.")})),
      own_(new QPushButton(tr("Add a source of my own"))), panel_(new QWidget), form_(new SourceForm),
      refused_(faultLabel()), take_(new QPushButton(tr("Add this source"))), close_(new QPushButton(tr("Cancel"))) {
  setAccessibleName(tr("Sources"));
  setMaximumWidth(kWidest);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  rows_->setSpacing(4);
  column->addWidget(none_);
  column->addLayout(rows_);
  column->addWidget(list_);
  column->addWidget(own_, 0, Qt::AlignLeft);
  column->addWidget(panel_);
  auto* inside = new QVBoxLayout(panel_);
  inside->setContentsMargins(0, 4, 0, 0);
  inside->addWidget(form_);
  inside->addWidget(refused_);
  auto* buttons = new QHBoxLayout;
  take_->setProperty("primary", true);
  buttons->addWidget(take_);
  buttons->addWidget(close_);
  buttons->addStretch(1);
  inside->addLayout(buttons);
  panel_->hide();
  setFocusProxy(list_);
  connect(list_, &PickList::picked, this, [this](const QString& key) {
    std::vector<SourceId> after = sources_;
    after.push_back({key.toStdString()});
    Q_EMIT edited(after);
  });
  connect(own_, &QPushButton::clicked, this, [this] {
    Source fresh;
    fresh.kind = SourceKind::practice;
    openForm(fresh, true);
  });
  connect(form_, &SourceForm::edited, this, [this](const Source& source, const QString& what, const QString& gesture) {
    judge();
    if (!isNew_)
      Q_EMIT changed(source, what, gesture);
  });
  connect(take_, &QPushButton::clicked, this, &SourcePicker::takeNew);
  connect(close_, &QPushButton::clicked, this, [this] {
    closeForm();
    own_->setFocus();
  });
}

void SourcePicker::openForm(const Source& source, bool isNew) {
  isNew_ = isNew;
  form_->show(source);
  form_->showFaults({});
  showFaults(refused_, {});
  take_->setVisible(isNew);
  close_->setText(isNew ? tr("Cancel") : tr("Done"));
  own_->hide();
  panel_->show();
  form_->focusCite();
}

void SourcePicker::closeForm() {
  panel_->hide();
  own_->show();
}

void SourcePicker::refuse(const QString& words) { showFaults(refused_, {{words, false}}); }

void SourcePicker::judge() {
  std::multimap<int, FaultLine> lines;
  for (const Fault& fault : faultsIn(form_->source(), *knowledge_))
    lines.emplace(static_cast<int>(fault.field), FaultLine{text(fault, *knowledge_), fault.hint});
  form_->showFaults(lines);
  showFaults(refused_, {});
}

void SourcePicker::takeNew() {
  judge();
  if (withoutHints(faultsIn(form_->source(), *knowledge_)).empty())
    Q_EMIT added(form_->source());
  else
    form_->focusCite();
}

void SourcePicker::show(const std::vector<SourceId>& sources, std::shared_ptr<const Knowledge> knowledge) {
  if (sources == sources_ && knowledge == knowledge_)
    return;
  const bool others = knowledge != knowledge_;
  sources_ = sources;
  knowledge_ = std::move(knowledge);
  build();
  if (others && panel_->isVisibleTo(this) && !isNew_) {
    if (const Source* now = knowledge_->rules.findSource(form_->source().id))
      form_->show(*now); // as after undo
    else
      closeForm();
  }
}

void SourcePicker::build() {
  for (QWidget* row : shown_) {
    row->hide();
    row->deleteLater();
  }
  shown_.clear();
  none_->setVisible(sources_.empty());
  for (std::size_t i = 0; i < sources_.size(); ++i) {
    const Source* source = knowledge_->rules.findSource(sources_[i]);
    const QString cite = QString::fromStdString(source ? source->cite : sources_[i].value);
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(plainLabel(source ? lineFor(*source) : tr("\"%1\", which is not on file").arg(cite)), 1);
    if (source && isOwn(source->id)) {
      auto* change = new QToolButton;
      change->setText(tr("Change"));
      change->setAccessibleName(tr("Change the source: %1").arg(cite));
      connect(change, &QToolButton::clicked, this, [this, source = *source] { openForm(source, false); });
      line->addWidget(change, 0, Qt::AlignTop);
    }
    auto* remove = new QToolButton;
    remove->setText(QStringLiteral("\u00d7"));
    remove->setToolTip(tr("Take this source away"));
    remove->setAccessibleName(tr("Take away the source: %1").arg(cite));
    connect(remove, &QToolButton::clicked, this, [this, i] {
      std::vector<SourceId> after = sources_;
      after.erase(after.begin() + static_cast<std::ptrdiff_t>(i));
      list_->setFocus();
      Q_EMIT edited(after);
    });
    line->addWidget(remove, 0, Qt::AlignTop);
    rows_->addWidget(row);
    shown_.push_back(row);
  }
  std::vector<PickEntry> rest;
  for (const Source& source : knowledge_->rules.sources)
    if (std::find(sources_.begin(), sources_.end(), source.id) == sources_.end())
      rest.push_back({QString::fromStdString(source.id.value), QString::fromStdString(source.cite), text(source.kind),
                      isOwn(source.id) ? tr("own") : QString()});
  list_->setEntries(std::move(rest));
  updateGeometry();
}

} // namespace matwright
