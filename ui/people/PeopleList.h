// Who is on file, and who of them is in the class.
#pragma once

#include "ui/document/PeopleDocument.h"
#include "ui/document/PlanDocument.h"

#include <QAbstractListModel>
#include <QStyledItemDelegate>
#include <vector>

namespace matwright {

// Puts somebody into the class or takes them out: one entry of the undo list of the class.
void setInClass(PlanDocument& plan, const PersonId& person, bool in);
bool isInClass(const ClassPlan& plan, const PersonId& person);

// Everybody on file, then those whom the class names but nobody knows: they can be taken out of the class here.
std::vector<PersonId> everybody(const PlanDocument& plan, const PeopleDocument& people);
QString nameOf(const PersonId& id, const PeopleDocument& people); // "anna (not on file)" where that is so

// The people as a list with a box to tick for "in this class".
class PeopleList : public QAbstractListModel {
  Q_OBJECT

public:
  enum Role { kConditionsRole = Qt::UserRole + 1 }; // the conditions in words

  PeopleList(PlanDocument& plan, PeopleDocument& people, QObject* parent = nullptr);

  PersonId personAt(const QModelIndex& index) const; // empty for no row
  QModelIndex indexOf(const PersonId& person) const;

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
  void refresh();
  QString conditionsOf(const PersonId& person) const;

  PlanDocument& plan_;
  PeopleDocument& people_;
  std::vector<PersonId> rows_;
};

// Paints a person: box, name, and the conditions below it, wrapped.
class PeopleDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  explicit PeopleDelegate(QAbstractItemView& view);

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  bool editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                   const QModelIndex& index) override;

private:
  QAbstractItemView& view_;
};

} // namespace matwright
