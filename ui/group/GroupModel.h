#pragma once

#include "core/evaluate/GroupTable.h"
#include "ui/document/PlanDocument.h"

#include <QAbstractTableModel>

namespace matwright {

// The table of steps against people as rows and columns on screen: all in all, the class as a whole, then each
// section with its steps. The first column is for what concerns everybody. Shows the whole group, for whomever the
// class is seen; the cells of others cannot be chosen then.
class GroupModel : public QAbstractTableModel {
  Q_OBJECT

public:
  enum Role {
    kLevelRole = Qt::UserRole + 1, // the strongest caution of a cell, as a number
    kCountRole,                    // how many there are
    kVariedRole,                   // whether the person does the step in her own way
    kSectionRole,                  // whether the row is a section, which has no cells
    kOutsideRole,                  // whether the class is seen for others just now
  };

  explicit GroupModel(PlanDocument& document, QObject* parent = nullptr);

  std::optional<StepId> stepAt(int row) const;
  std::optional<PersonId> personAt(int column) const; // nobody: the column for everybody
  bool isSums(int row) const { return row == 0; }
  bool isSection(int row) const;
  int rowOf(StepId step) const; // -1 for none

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
  struct Row {
    const GroupRow* cells = nullptr; // null: a section
    std::size_t section = 0;
    QString name;
  };

  void refresh();
  const GroupCell* cellAt(const QModelIndex& index) const; // null in a section
  QString nameAt(int column) const;
  QString spoken(const QModelIndex& index, const GroupCell& cell) const;
  QString cautionLines(const QModelIndex& index) const;
  bool isOutside(int column) const;

  PlanDocument& document_;
  Snapshot snapshot_; // that the rows are of
  GroupTable table_;
  std::vector<Row> rows_;
};

} // namespace matwright
