#include "ui/outline/OutlineModel.h"

#include "ui/text/CautionText.h"
#include "ui/text/VocabularyText.h"

#include <algorithm>

namespace matwright {
namespace {

bool sameShape(const ClassPlan& one, const ClassPlan& other) {
  return std::equal(one.sections.begin(), one.sections.end(), other.sections.begin(), other.sections.end(),
                    [](const Section& a, const Section& b) {
                      return std::equal(a.steps.begin(), a.steps.end(), b.steps.begin(), b.steps.end(),
                                        [](const Step& x, const Step& y) { return x.id == y.id; });
                    });
}

// Headings carry 0, steps the number of their section plus one.
constexpr quintptr kHeading = 0;

Seconds lengthOf(const TimedStep& timed) { return timed.work.whole + timed.turning; }

} // namespace

OutlineModel::OutlineModel(PlanDocument& document, ClassCommands& commands, QObject* parent)
    : QAbstractItemModel(parent), document_(document), commands_(commands), snapshot_(document.snapshot()) {}

void OutlineModel::refresh() {
  if (snapshot_.revision == document_.snapshot().revision)
    return;
  if (!sameShape(*snapshot_.plan, document_.plan())) {
    beginResetModel();
    snapshot_ = document_.snapshot();
    endResetModel();
    return;
  }
  snapshot_ = document_.snapshot();
  for (int section = 0; section < rowCount(); ++section) {
    const QModelIndex heading = index(section, 0);
    Q_EMIT dataChanged(heading, heading.siblingAtColumn(kOutlineColumns - 1));
    if (const int steps = rowCount(heading); steps > 0)
      Q_EMIT dataChanged(index(0, 0, heading), index(steps - 1, kOutlineColumns - 1, heading));
  }
}

std::optional<std::size_t> OutlineModel::sectionAt(const QModelIndex& index) const {
  if (!index.isValid())
    return std::nullopt;
  return index.internalId() == kHeading ? static_cast<std::size_t>(index.row())
                                        : static_cast<std::size_t>(index.internalId() - 1);
}

std::optional<StepId> OutlineModel::stepAt(const QModelIndex& index) const {
  if (!index.isValid() || index.internalId() == kHeading)
    return std::nullopt;
  return snapshot_.plan->sections[index.internalId() - 1].steps[static_cast<std::size_t>(index.row())].id;
}

QModelIndex OutlineModel::indexOf(StepId step, OutlineColumn column) const {
  const auto place = placeOf(*snapshot_.plan, step);
  if (!place)
    return {};
  return index(static_cast<int>(place->index), static_cast<int>(column), indexOfSection(place->section));
}

QModelIndex OutlineModel::indexOfSection(std::size_t section) const { return index(static_cast<int>(section), 0); }

QModelIndex OutlineModel::index(int row, int column, const QModelIndex& parent) const {
  if (!hasIndex(row, column, parent))
    return {};
  return createIndex(row, column, parent.isValid() ? static_cast<quintptr>(parent.row()) + 1 : kHeading);
}

QModelIndex OutlineModel::parent(const QModelIndex& index) const {
  if (!index.isValid() || index.internalId() == kHeading)
    return {};
  return createIndex(static_cast<int>(index.internalId() - 1), 0, kHeading);
}

int OutlineModel::rowCount(const QModelIndex& parent) const {
  if (!parent.isValid())
    return static_cast<int>(snapshot_.plan->sections.size());
  if (parent.internalId() != kHeading || parent.column() != 0)
    return 0;
  return static_cast<int>(snapshot_.plan->sections[static_cast<std::size_t>(parent.row())].steps.size());
}

int OutlineModel::columnCount(const QModelIndex&) const { return kOutlineColumns; }

QVariant OutlineModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid())
    return {};
  if (index.internalId() == kHeading)
    return index.column() == 0 ? sectionData(static_cast<std::size_t>(index.row()), role) : QVariant();
  const Section& section = snapshot_.plan->sections[index.internalId() - 1];
  return stepData(section.steps[static_cast<std::size_t>(index.row())], static_cast<OutlineColumn>(index.column()),
                  role);
}

QVariant OutlineModel::sectionData(std::size_t section, int role) const {
  const Section& found = snapshot_.plan->sections[section];
  const Schedule& schedule = snapshot_.evaluation->schedule;
  Seconds length;
  for (const TimedStep& timed : schedule.steps)
    if (timed.section == section)
      length += timed.gap + lengthOf(timed);
  const QString facts = found.steps.empty()
                            ? tr("empty")
                            : tr("%1 \u00b7 from %2").arg(clock(length), clock(schedule.sectionBegin[section]));
  switch (role) {
  case Qt::DisplayRole:
  case Qt::EditRole:
    return QString::fromStdString(found.name);
  case kFactsRole:
    return facts;
  case Qt::AccessibleTextRole:
    return tr("Section %1, %2").arg(QString::fromStdString(found.name), facts);
  default:
    return {};
  }
}

QString OutlineModel::textOf(const Step& step, OutlineColumn column) const {
  const TimedStep* timed = snapshot_.evaluation->timed(step.id);
  const Movement* movement = timed ? timed->movement : nullptr;
  switch (column) {
  case OutlineColumn::name:
    return movementName(document_.knowledge(), step.movement);
  case OutlineColumn::begins:
    return timed ? clock(timed->begin) : QString();
  case OutlineColumn::dose:
    return doseText(step.dose, movement ? movement->sides : Sides::together, step.onlySide);
  case OutlineColumn::length:
    return timed ? clock(lengthOf(*timed)) : QString();
  case OutlineColumn::change:
    if (!timed || (timed->reachable && timed->changes == 0))
      return {};
    return timed->reachable ? clock(timed->moving + timed->turning) : tr("no way");
  case OutlineColumn::caution:
    break;
  }
  return {};
}

QString OutlineModel::spokenText(const Step& step) const {
  QStringList parts{textOf(step, OutlineColumn::name), textOf(step, OutlineColumn::dose)};
  if (!step.option.empty())
    parts << optionName(document_.knowledge(), step.movement, step.option);
  parts << tr("begins %1").arg(textOf(step, OutlineColumn::begins));
  parts << tr("takes %1").arg(textOf(step, OutlineColumn::length));
  if (const QString change = textOf(step, OutlineColumn::change); !change.isEmpty())
    parts << tr("change of position %1").arg(change);
  if (const auto level = snapshot_.seen->strongestAt(step.id))
    parts << text(*level);
  return parts.join(QStringLiteral(", "));
}

QVariant OutlineModel::stepData(const Step& step, OutlineColumn column, int role) const {
  if (column == OutlineColumn::caution)
    return cautionData(step, role);
  const TimedStep* timed = snapshot_.evaluation->timed(step.id);
  switch (role) {
  case Qt::DisplayRole:
    return textOf(step, column);
  case Qt::EditRole:
    return column == OutlineColumn::dose ? QVariant(step.dose.amount) : QVariant(textOf(step, column));
  case Qt::TextAlignmentRole:
    return static_cast<int>(column == OutlineColumn::name || column == OutlineColumn::dose
                                ? Qt::AlignLeft | Qt::AlignTop
                                : Qt::AlignRight | Qt::AlignTop);
  case kSecondLineRole:
    if (column == OutlineColumn::name && !step.option.empty())
      return optionName(document_.knowledge(), step.movement, step.option);
    return {};
  case kFactsRole: {
    QStringList parts{textOf(step, OutlineColumn::begins), tr("%1 long").arg(textOf(step, OutlineColumn::length))};
    if (const QString change = textOf(step, OutlineColumn::change); !change.isEmpty())
      parts << tr("change %1").arg(change);
    return parts.join(QStringLiteral(" \u00b7 "));
  }
  case kUnknownRole:
    return timed && !timed->movement;
  case Qt::ToolTipRole:
    if (timed && !timed->movement)
      return tr("This movement is not in the catalogue");
    if (timed && column == OutlineColumn::change)
      return tr("Moving %1, cue %2, %3 in all before the first count")
          .arg(clock(timed->moving), clock(timed->cue), clock(timed->gap));
    return {};
  case Qt::AccessibleTextRole:
    return column == OutlineColumn::name ? spokenText(step) : textOf(step, column);
  default:
    return {};
  }
}

QVariant OutlineModel::cautionData(const Step& step, int role) const {
  const auto level = snapshot_.seen->strongestAt(step.id);
  switch (role) {
  case kLevelRole:
    return level ? QVariant(static_cast<int>(*level)) : QVariant();
  case Qt::AccessibleTextRole:
    return level ? text(*level) : tr("none raised");
  case Qt::ToolTipRole: {
    QStringList lines;
    for (const Caution& caution : snapshot_.seen->cautions) {
      if (caution.step != step.id)
        continue;
      const CautionWords words =
          wordsFor(caution, document_.knowledge(), *snapshot_.plan, *snapshot_.seen, document_.roster());
      lines << tr("%1: %2, %3").arg(text(caution.level), words.who, words.what);
    }
    return lines.join(QLatin1Char('\n'));
  }
  default:
    return {};
  }
}

bool OutlineModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || role != Qt::EditRole)
    return false;
  if (const auto id = stepAt(index)) {
    const Step* step = findStep(*snapshot_.plan, *id);
    if (static_cast<OutlineColumn>(index.column()) != OutlineColumn::dose || !step)
      return false;
    commands_.setDose(*id, Dose{value.toInt(), step->dose.unit});
    return true;
  }
  return document_
      .perform(RenameSection{static_cast<std::size_t>(index.row()), value.toString().trimmed().toStdString()},
               tr("Rename the section"))
      .has_value();
}

QVariant OutlineModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal)
    return {};
  const auto column = static_cast<OutlineColumn>(section);
  if (role == Qt::DisplayRole)
    switch (column) {
    case OutlineColumn::name:
      return tr("Movement");
    case OutlineColumn::begins:
      return tr("Begins");
    case OutlineColumn::dose:
      return tr("Dose");
    case OutlineColumn::length:
      return tr("Length");
    case OutlineColumn::change:
      return tr("Change");
    case OutlineColumn::caution:
      return {};
    }
  if (role == Qt::ToolTipRole && column == OutlineColumn::change)
    return tr("Seconds of changing position, into the step and between its sides");
  if (role == Qt::AccessibleTextRole && column == OutlineColumn::caution)
    return tr("Strongest caution");
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>(column == OutlineColumn::name || column == OutlineColumn::dose
                                ? Qt::AlignLeft | Qt::AlignVCenter
                                : Qt::AlignRight | Qt::AlignVCenter);
  return {};
}

Qt::ItemFlags OutlineModel::flags(const QModelIndex& index) const {
  if (!index.isValid())
    return Qt::ItemIsDropEnabled;
  Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsDropEnabled;
  if (index.internalId() == kHeading)
    return index.column() == 0 ? flags | Qt::ItemIsEditable : flags;
  flags |= Qt::ItemIsDragEnabled | Qt::ItemNeverHasChildren;
  if (static_cast<OutlineColumn>(index.column()) == OutlineColumn::dose)
    flags |= Qt::ItemIsEditable;
  return flags;
}

} // namespace matwright
