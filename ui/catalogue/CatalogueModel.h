#pragma once

#include "ui/catalogue/CatalogueFilter.h"

#include <QAbstractListModel>
#include <memory>
#include <optional>

namespace matwright {

// The movements that pass the filter, ranked for a gap or by name.
class CatalogueModel : public QAbstractListModel {
  Q_OBJECT

public:
  enum Role { kFactsRole = Qt::UserRole + 1, kAddedRole, kLevelRole };

  explicit CatalogueModel(QObject* parent = nullptr);

  // What fits best first, as candidatesFor() gives them for `knowledge`, which is kept as long as they are shown.
  void setCandidates(std::shared_ptr<const Knowledge> knowledge, std::vector<Candidate> candidates);
  void setFilter(const CatalogueFilter& filter);
  void setAlphabetical(bool alphabetical);

  const Movement* movementAt(const QModelIndex& index) const; // null for no row
  QModelIndex indexOf(const MovementId& movement) const;

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  QStringList mimeTypes() const override;
  QMimeData* mimeData(const QModelIndexList& indexes) const override;

private:
  void arrange();
  void choose();

  std::shared_ptr<const Knowledge> knowledge_; // null before the first candidates
  std::optional<CatalogueIndex> index_;        // of it
  std::vector<Candidate> candidates_;
  CatalogueFilter filter_;
  bool alphabetical_ = false;
  std::vector<std::size_t> rows_; // places in candidates_
};

// "8 alternating · 1:04".
QString factsText(const Movement& movement);
// "+1:16 · 2 changes".
QString addedText(const Candidate& candidate);
// "Adds: 1 leave out, 2 watch"; what no caution means when there is none.
QString addedCautionsText(const Candidate& candidate);

} // namespace matwright
