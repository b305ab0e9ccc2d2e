#include "ui/catalogue/CatalogueModel.h"

#include "ui/document/ClassCommands.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <algorithm>
#include <numeric>

namespace matwright {
namespace {

QString tr(const char* text, int n = -1) { return QCoreApplication::translate("CatalogueModel", text, nullptr, n); }

} // namespace

QString factsText(const Movement& movement) {
  const Work work = workOf(movement.dose, movement.tempo, movement.sides, std::nullopt);
  return QStringLiteral("%1 \u00b7 %2").arg(doseText(movement.dose, movement.sides, std::nullopt), clock(work.whole));
}

QString addedText(const Candidate& candidate) {
  QString changes;
  if (candidate.addedChanges == 0)
    changes = tr("no change");
  else if (candidate.addedChanges > 0)
    changes = tr("%n change(s)", candidate.addedChanges);
  else
    changes = tr("%n change(s) fewer", -candidate.addedChanges);
  return QStringLiteral("%1 \u00b7 %2").arg(signedClock(candidate.added), changes);
}

QString addedCautionsText(const Candidate& candidate) {
  QStringList parts;
  for (std::size_t level = kWordCount<Level>; level-- > 0;)
    if (candidate.addedCautions[level] > 0)
      parts << QStringLiteral("%1 %2").arg(candidate.addedCautions[level]).arg(text(static_cast<Level>(level)));
  return parts.isEmpty() ? tr("Adds no caution; that is not a clearance")
                         : tr("Adds cautions: %1").arg(parts.join(QStringLiteral(", ")));
}

CatalogueModel::CatalogueModel(QObject* parent) : QAbstractListModel(parent) {}

void CatalogueModel::setCandidates(std::shared_ptr<const Knowledge> knowledge, std::vector<Candidate> candidates) {
  beginResetModel();
  if (knowledge != knowledge_) {
    index_.emplace(*knowledge);
    knowledge_ = std::move(knowledge);
  }
  candidates_ = std::move(candidates);
  choose();
  endResetModel();
}

void CatalogueModel::setFilter(const CatalogueFilter& filter) {
  filter_ = filter;
  arrange();
}

void CatalogueModel::setAlphabetical(bool alphabetical) {
  alphabetical_ = alphabetical;
  arrange();
}

void CatalogueModel::arrange() {
  beginResetModel();
  choose();
  endResetModel();
}

void CatalogueModel::choose() {
  rows_.clear();
  for (std::size_t i = 0; i < candidates_.size(); ++i)
    if (candidates_[i].movement && index_->passes(candidates_[i], filter_))
      rows_.push_back(i);
  if (alphabetical_)
    std::stable_sort(rows_.begin(), rows_.end(), [this](std::size_t one, std::size_t other) {
      return QString::localeAwareCompare(QString::fromStdString(candidates_[one].movement->name),
                                         QString::fromStdString(candidates_[other].movement->name)) < 0;
    });
}

const Movement* CatalogueModel::movementAt(const QModelIndex& index) const {
  return index.isValid() ? candidates_[rows_[static_cast<std::size_t>(index.row())]].movement : nullptr;
}

QModelIndex CatalogueModel::indexOf(const MovementId& movement) const {
  const auto at = std::find_if(rows_.begin(), rows_.end(),
                               [&](std::size_t row) { return candidates_[row].movement->id == movement; });
  return at == rows_.end() ? QModelIndex() : index(static_cast<int>(at - rows_.begin()));
}

int CatalogueModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant CatalogueModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid())
    return {};
  const Candidate& candidate = candidates_[rows_[static_cast<std::size_t>(index.row())]];
  const Movement& movement = *candidate.movement;
  switch (role) {
  case Qt::DisplayRole:
    return QString::fromStdString(movement.name);
  case kFactsRole:
    return factsText(movement);
  case kAddedRole:
    return addedText(candidate);
  case kLevelRole:
    return candidate.strongest ? QVariant(static_cast<int>(*candidate.strongest)) : QVariant();
  case Qt::ToolTipRole:
    return QStringLiteral("%1\n%2\n%3")
        .arg(QString::fromStdString(movement.name), QString::fromStdString(movement.about),
             addedCautionsText(candidate));
  case Qt::AccessibleTextRole:
    return QStringLiteral("%1, %2, %3, %4")
        .arg(QString::fromStdString(movement.name), factsText(movement), addedText(candidate),
             addedCautionsText(candidate));
  default:
    return {};
  }
}

Qt::ItemFlags CatalogueModel::flags(const QModelIndex& index) const {
  const Qt::ItemFlags flags = QAbstractListModel::flags(index);
  return index.isValid() ? flags | Qt::ItemIsDragEnabled | Qt::ItemNeverHasChildren : flags;
}

QStringList CatalogueModel::mimeTypes() const { return {kMovementMime}; }

QMimeData* CatalogueModel::mimeData(const QModelIndexList& indexes) const {
  const Movement* movement = indexes.isEmpty() ? nullptr : movementAt(indexes.front());
  if (!movement)
    return nullptr;
  auto* carried = new QMimeData;
  carried->setData(kMovementMime, QByteArray::fromStdString(movement->id.value));
  carried->setText(QString::fromStdString(movement->name));
  return carried;
}

} // namespace matwright
