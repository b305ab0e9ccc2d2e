// The movements of one's own, then those that come with the program, as a list that is searched.
#pragma once

#include "ui/document/KnowledgeDocument.h"

#include <QAbstractListModel>
#include <QStyledItemDelegate>
#include <set>
#include <vector>

class QAbstractItemView;

namespace matwright {

class MovementRows : public QAbstractListModel {
  Q_OBJECT

public:
  enum Role { kFactsRole = Qt::UserRole + 1, kOwnRole, kUnkeptRole };

  explicit MovementRows(const KnowledgeDocument& document, QObject* parent = nullptr);

  void setWords(const QString& words); // all of them must be found in name, position, region or kind
  void setUnkept(const std::set<MovementId>& unkept);

  const Movement* movementAt(const QModelIndex& index) const; // valid until the document changes
  QModelIndex indexOf(const MovementId& movement) const;

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;

private:
  void refresh();

  const KnowledgeDocument& document_;
  QStringList words_;
  std::set<MovementId> unkept_;
  std::shared_ptr<const Knowledge> knowledge_; // that the rows point into
  std::vector<const Movement*> rows_;
};

// Paints a movement: its figure, its name, whose it is and where it starts.
class MovementRowDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  explicit MovementRowDelegate(QAbstractItemView& view);

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
  QAbstractItemView& view_;
};

} // namespace matwright
