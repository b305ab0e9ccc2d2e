#include "ui/group/GroupModel.h"

#include "ui/text/CautionText.h"
#include "ui/text/PeopleText.h"
#include "ui/text/VocabularyText.h"

#include <algorithm>

namespace matwright {
namespace {

constexpr int kMostLines = 8;

} // namespace

GroupModel::GroupModel(PlanDocument& document, QObject* parent) : QAbstractTableModel(parent), document_(document) {
  connect(&document, &PlanDocument::changed, this, &GroupModel::refresh);
  refresh();
}

void GroupModel::refresh() {
  beginResetModel();
  snapshot_ = document_.snapshot();
  const ClassPlan& plan = *snapshot_.plan;
  table_ = groupTableOf(plan, *snapshot_.evaluation);
  rows_ = {{&table_.sums, 0, tr("In all")}, {&table_.rows.front(), 0, tr("The class as a whole")}};
  std::size_t next = 1;
  for (std::size_t section = 0; section < plan.sections.size(); ++section) {
    if (plan.sections[section].steps.empty())
      continue;
    rows_.push_back({nullptr, section, QString::fromStdString(plan.sections[section].name)});
    for (const Step& step : plan.sections[section].steps)
      rows_.push_back({&table_.rows[next++], section, movementName(*snapshot_.knowledge, step.movement)});
  }
  endResetModel();
}

std::optional<StepId> GroupModel::stepAt(int row) const {
  const auto at = static_cast<std::size_t>(row);
  return at < rows_.size() && rows_[at].cells ? rows_[at].cells->step : std::nullopt;
}

std::optional<PersonId> GroupModel::personAt(int column) const {
  const auto person = static_cast<std::size_t>(column - 1);
  return column > 0 && person < table_.people.size() ? std::optional{table_.people[person]} : std::nullopt;
}

bool GroupModel::isSection(int row) const {
  const auto at = static_cast<std::size_t>(row);
  return at < rows_.size() && !rows_[at].cells;
}

int GroupModel::rowOf(StepId step) const {
  const auto at =
      std::find_if(rows_.begin(), rows_.end(), [step](const Row& row) { return row.cells && row.cells->step == step; });
  return at == rows_.end() ? -1 : static_cast<int>(at - rows_.begin());
}

int GroupModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int GroupModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : 1 + static_cast<int>(table_.people.size());
}

const GroupCell* GroupModel::cellAt(const QModelIndex& index) const {
  const GroupRow* row = index.isValid() ? rows_[static_cast<std::size_t>(index.row())].cells : nullptr;
  if (!row)
    return nullptr;
  return index.column() == 0 ? &row->everybody : &row->of[static_cast<std::size_t>(index.column() - 1)];
}

bool GroupModel::isOutside(int column) const {
  const auto person = personAt(column);
  const auto& seen = snapshot_.seenPeople;
  return person && !seen.empty() && std::find(seen.begin(), seen.end(), *person) == seen.end();
}

QString GroupModel::nameAt(int column) const {
  const auto id = personAt(column);
  if (!id)
    return tr("Everybody");
  const Person* person = findPerson(document_.roster(), *id);
  return QString::fromStdString(person ? person->name : id->value);
}

QString GroupModel::spoken(const QModelIndex& index, const GroupCell& cell) const {
  QStringList parts{nameAt(index.column()), rows_[static_cast<std::size_t>(index.row())].name};
  parts << (cell.strongest ? tr("%1, %n caution(s)", nullptr, cell.cautions).arg(text(*cell.strongest))
                           : tr("none raised"));
  if (cell.varied)
    parts << tr("has a variant of their own");
  return parts.join(QStringLiteral(", "));
}

// What was found in a cell, a line each.
QString GroupModel::cautionLines(const QModelIndex& index) const {
  const Evaluation& evaluation = *snapshot_.evaluation;
  const auto step = stepAt(index.row());
  const auto person = personAt(index.column());
  QStringList lines;
  int more = 0;
  for (const Caution& caution : evaluation.cautions) {
    if (evaluation.whom(caution) != person || caution.step != step)
      continue;
    if (lines.size() == kMostLines) {
      ++more;
      continue;
    }
    const CautionWords words = wordsFor(caution, *snapshot_.knowledge, *snapshot_.plan, evaluation, document_.roster());
    QString line = QStringLiteral("%1: %2").arg(text(caution.level), words.what);
    if (!words.instead.isEmpty())
      line += tr("; instead: %1").arg(words.instead);
    lines << line;
  }
  if (more > 0)
    lines << tr("and %n more", nullptr, more);
  return lines.join(QLatin1Char('\n'));
}

QVariant GroupModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid())
    return {};
  const GroupCell* cell = cellAt(index);
  if (role == kSectionRole)
    return cell == nullptr;
  if (role == kOutsideRole)
    return isOutside(index.column());
  if (!cell)
    return {};
  switch (role) {
  case kLevelRole:
    return cell->strongest ? QVariant(static_cast<int>(*cell->strongest)) : QVariant();
  case kCountRole:
    return cell->cautions;
  case kVariedRole:
    return cell->varied && !isSums(index.row());
  case Qt::AccessibleTextRole:
    return spoken(index, *cell);
  case Qt::ToolTipRole: {
    QStringList lines{spoken(index, *cell)};
    if (!isSums(index.row()))
      lines << cautionLines(index);
    lines.removeAll(QString());
    return lines.join(QLatin1Char('\n'));
  }
  default:
    return {};
  }
}

QVariant GroupModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation == Qt::Vertical) {
    const auto at = static_cast<std::size_t>(section);
    if (at >= rows_.size())
      return {};
    if (role == kSectionRole)
      return !rows_[at].cells;
    return role == Qt::DisplayRole || role == Qt::ToolTipRole || role == Qt::AccessibleTextRole
               ? QVariant(rows_[at].name)
               : QVariant();
  }
  const auto person = personAt(section);
  switch (role) {
  case Qt::DisplayRole:
    return person ? shortName(*person, document_.roster()) : tr("All");
  case Qt::AccessibleTextRole:
    return nameAt(section);
  case Qt::ToolTipRole:
    return person ? tr("%1: click to see the class for them alone, and again for everybody").arg(nameAt(section))
                  : tr("What concerns everybody");
  case kOutsideRole:
    return isOutside(section);
  default:
    return {};
  }
}

Qt::ItemFlags GroupModel::flags(const QModelIndex& index) const {
  if (!cellAt(index) || isOutside(index.column()))
    return Qt::NoItemFlags;
  return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

} // namespace matwright
