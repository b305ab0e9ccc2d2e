#include "ui/rules/RulePage.h"

#include "ui/controls/FactGrid.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/controls/LevelMark.h"
#include "ui/rules/ThresholdEditor.h"
#include "ui/text/RuleMeaning.h"
#include "ui/text/RuleText.h"
#include "ui/text/VocabularyText.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>

namespace matwright {
namespace {

constexpr qsizetype kMostNames = 24; // of movements, said at once

QString lines(const QStringList& all) { return all.join(QLatin1Char('\n')); }

} // namespace

RulePage::RulePage(KnowledgeDocument& document, const PlanDocument& plan, QWidget* parent)
    : QWidget(parent), document_(document), plan_(plan), mark_(new LevelMark(Level::watch)), level_(headingLabel({})),
      title_(titleLabel({})), whose_(softLabel({})), look_(plainLabel({})),
      copy_(new QPushButton(tr("Copy to my own"))), edit_(new QPushButton(tr("Edit"))),
      remove_(new QPushButton(tr("Remove \u2026"))), threshold_(new ThresholdEditor(document)),
      column_(readingColumn(*this)) {
  auto* head = new QHBoxLayout;
  head->setSpacing(8);
  head->addWidget(mark_, 0, Qt::AlignVCenter);
  head->addWidget(level_, 1);
  column_->addLayout(head);
  column_->addWidget(title_);
  column_->addWidget(whose_);
  column_->addWidget(makeActions());
  column_->addWidget(look_);
  column_->addWidget(threshold_);
  column_->addStretch(1);
  look_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  connect(threshold_, &ThresholdEditor::refused, this, &RulePage::refused);
}

QWidget* RulePage::makeActions() {
  auto* actions = new QWidget;
  auto* line = new FlowLayout(actions, 6);
  copy_->setProperty("primary", true);
  edit_->setProperty("primary", true);
  for (QPushButton* button : {edit_, copy_, remove_})
    line->addWidget(button);
  connect(copy_, &QPushButton::clicked, this, &RulePage::copyWanted);
  connect(edit_, &QPushButton::clicked, this, &RulePage::editWanted);
  connect(remove_, &QPushButton::clicked, this, &RulePage::removeWanted);
  return actions;
}

void RulePage::show(const Rule& rule) {
  const bool own = isOwn(rule.id), locked = !document_.lockedBy().empty();
  mark_->setLevel(rule.level);
  level_->setText(withCapital(text(rule.level)));
  title_->setText(titleText(rule));
  whose_->setText(own ? tr("A rule of your own.")
                      : tr("This rule comes with the program and stays as it is. A copy of your own can be changed "
                           "freely, and speaks beside it."));
  copy_->setText(own ? tr("Copy") : tr("Copy to my own"));
  if (copy_->property("primary").toBool() == own) {
    copy_->setProperty("primary", !own);
    copy_->style()->unpolish(copy_);
    copy_->style()->polish(copy_);
  }
  copy_->setEnabled(!locked);
  edit_->setVisible(own);
  edit_->setEnabled(!locked);
  remove_->setVisible(own);
  remove_->setEnabled(!locked);
  look_->setText(meaningText(rule, document_.knowledge()->rules));
  threshold_->show(rule);
  fillFacts(rule);
  fillToday(rule);
}

void RulePage::fillFacts(const Rule& rule) {
  const RuleBook& book = document_.knowledge()->rules;
  FactGrid* facts = freshFacts(*column_, facts_, {});
  facts->add(tr("For whom"), audienceText(rule, book));
  facts->add(tr("When"), lines(testLines(rule, book)));
  QStringList definitions;
  (rule.asks.any | rule.asks.all).forEach([&](Feature feature) {
    definitions << QStringLiteral("%1: %2").arg(withCapital(text(feature)), definition(feature));
  });
  facts->add(tr("In plain words"), lines(definitions));
  facts->add(tr("Why"), QString::fromStdString(rule.why));
  facts->add(tr("Instead"), withCapital(QString::fromStdString(rule.instead)));
  facts->add(tr("Rests on"), withCapital(text(rule.strength)));
  facts->add(tr("How far checked"), withCapital(text(rule.check)));
  facts->add(tr("Disputed"), QString::fromStdString(rule.contested));
  QStringList sources;
  for (const SourceId& id : rule.sources)
    if (const Source* source = book.findSource(id))
      sources << QStringLiteral("%1 (%2)").arg(QString::fromStdString(source->cite), text(source->kind));
  facts->add(tr("Sources"), sources.isEmpty() ? tr("none named") : lines(sources));
  facts->add(tr("Reviewed"), dateText(rule.reviewed));
}

void RulePage::fillToday(const Rule& rule) {
  FactGrid* facts = freshFacts(*column_, today_, tr("What it concerns now"));
  if (const auto names = concerned_.of(rule, document_.knowledge())) {
    const auto count = static_cast<int>(names->size());
    const auto all = static_cast<int>(document_.knowledge()->catalogue.movements().size());
    QString words = tr("%1 of %n movement(s), as written", nullptr, all).arg(count);
    if (count > 0)
      words += QStringLiteral(": ") + names->mid(0, kMostNames).join(QStringLiteral(", "));
    if (count > kMostNames)
      words += QLatin1Char(' ') + tr("and %n more", nullptr, count - static_cast<int>(kMostNames));
    facts->add(tr("Movements"), words);
  }
  if (isForSome(rule)) {
    const QStringList people = peopleConcerned(rule, plan_);
    facts->add(tr("People on file"),
               people.isEmpty() ? tr("nobody, as far as is noted") : people.join(QStringLiteral(", ")));
  }
  const QStringList spoken = spokenIn(rule, plan_);
  facts->add(tr("In the open class"),
             spoken.isEmpty() ? tr("It does not speak. That is no clearance for anybody.") : lines(spoken));
}

QVBoxLayout* readingColumn(QWidget& page) {
  constexpr int kWidest = 860;
  auto* across = new QHBoxLayout(&page);
  across->setContentsMargins(24, 16, 24, 20);
  auto* inside = new QWidget;
  inside->setMaximumWidth(kWidest);
  across->addWidget(inside, 100);
  across->addStretch(1);
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(10);
  return column;
}

FactGrid* freshFacts(QVBoxLayout& column, QWidget*& place, const QString& heading) {
  if (place) {
    column.removeWidget(place);
    place->hide();
    place->deleteLater();
  }
  place = new QWidget;
  column.insertWidget(column.count() - 1, place);
  auto* inside = new QVBoxLayout(place);
  inside->setContentsMargins(0, 0, 0, 0);
  inside->setSpacing(8);
  if (!heading.isEmpty()) {
    inside->addWidget(hairline());
    inside->addWidget(headingLabel(heading));
  }
  auto* facts = new FactGrid(14);
  facts->setVerticalSpacing(6);
  inside->addLayout(facts);
  return facts;
}

} // namespace matwright
