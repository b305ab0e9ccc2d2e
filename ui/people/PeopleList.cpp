#include "ui/people/PeopleList.h"

#include "ui/controls/Labels.h"
#include "ui/controls/RowText.h"
#include "ui/text/PeopleText.h"
#include "ui/theme/Theme.h"

#include <QAbstractItemView>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

namespace matwright {
namespace {

constexpr int kEdge = 8;

QString tr(const char* text) { return QCoreApplication::translate("PeopleList", text); }

QRect boxIn(const QStyleOptionViewItem& option) {
  const int side = QFontMetrics(option.font).height() - 2;
  return {option.rect.left() + kEdge, option.rect.top() + kEdge, side, side};
}

void paintBox(QPainter& painter, const QRect& box, bool checked) {
  const Theme& theme = rowTheme();
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(checked ? theme.accent : theme.inkSoft, 1.2));
  painter.setBrush(checked ? theme.accent : theme.panel);
  const QRectF square = QRectF(box).adjusted(0.5, 0.5, -0.5, -0.5);
  painter.drawRoundedRect(square, 3, 3);
  if (checked) {
    const double side = square.width();
    painter.setPen(QPen(theme.onAccent, side * 0.14, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(QPolygonF({square.topLeft() + QPointF(side * 0.25, side * 0.52),
                                    square.topLeft() + QPointF(side * 0.43, side * 0.70),
                                    square.topLeft() + QPointF(side * 0.76, side * 0.30)}));
  }
  painter.restore();
}

std::vector<RowText> linesOf(const QStyleOptionViewItem& option, const QModelIndex& index) {
  const Theme& theme = rowTheme();
  return {{index.data().toString(), headingFont(option.font), theme.ink},
          {index.data(PeopleList::kConditionsRole).toString(), option.font, theme.inkSoft}};
}

} // namespace

void setInClass(PlanDocument& plan, const PersonId& person, bool in) {
  std::vector<PersonId> people = plan.plan().people;
  std::erase(people, person);
  if (in)
    people.push_back(person);
  if (in != isInClass(plan.plan(), person))
    plan.perform(SetPeople{people}, in ? tr("Add a person to the class") : tr("Take a person out of the class"));
}

bool isInClass(const ClassPlan& plan, const PersonId& person) {
  return std::find(plan.people.begin(), plan.people.end(), person) != plan.people.end();
}

std::vector<PersonId> everybody(const PlanDocument& plan, const PeopleDocument& people) {
  std::vector<PersonId> all;
  for (const Person& person : people.people())
    all.push_back(person.id);
  for (const PersonId& id : plan.plan().people)
    if (!people.find(id))
      all.push_back(id);
  return all;
}

QString nameOf(const PersonId& id, const PeopleDocument& people) {
  const Person* person = people.find(id);
  return person ? QString::fromStdString(person->name) : tr("%1 (not on file)").arg(QString::fromStdString(id.value));
}

PeopleList::PeopleList(PlanDocument& plan, PeopleDocument& people, QObject* parent)
    : QAbstractListModel(parent), plan_(plan), people_(people), rows_(everybody(plan, people)) {
  connect(&plan, &PlanDocument::changed, this, &PeopleList::refresh);
  connect(&people, &PeopleDocument::changed, this, &PeopleList::refresh);
}

void PeopleList::refresh() {
  std::vector<PersonId> rows = everybody(plan_, people_);
  if (rows != rows_) {
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
  } else if (!rows_.empty()) {
    Q_EMIT dataChanged(index(0), index(rowCount() - 1));
  }
}

PersonId PeopleList::personAt(const QModelIndex& index) const {
  return index.isValid() ? rows_[static_cast<std::size_t>(index.row())] : PersonId{};
}

QModelIndex PeopleList::indexOf(const PersonId& person) const {
  const auto at = std::find(rows_.begin(), rows_.end(), person);
  return at == rows_.end() ? QModelIndex() : index(static_cast<int>(at - rows_.begin()));
}

int PeopleList::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QString PeopleList::conditionsOf(const PersonId& id) const {
  const Person* person = people_.find(id);
  if (!person)
    return tr("nothing is known, so nothing can be screened");
  return conditionNames(*person, plan_.knowledge().rules);
}

QVariant PeopleList::data(const QModelIndex& index, int role) const {
  if (!index.isValid())
    return {};
  const PersonId& id = rows_[static_cast<std::size_t>(index.row())];
  const Person* person = people_.find(id);
  const QString initials = person ? QString::fromStdString(person->initials) : QString();
  const QString name = nameOf(id, people_);
  switch (role) {
  case Qt::DisplayRole:
    return initials.isEmpty() ? name : QStringLiteral("%1 \u00b7 %2").arg(name, initials);
  case kConditionsRole:
    return conditionsOf(id);
  case Qt::CheckStateRole:
    return static_cast<int>(isInClass(plan_.plan(), id) ? Qt::Checked : Qt::Unchecked);
  case Qt::ToolTipRole:
    return tr("Tick: in this class");
  case Qt::AccessibleTextRole:
    return QStringLiteral("%1, %2, %3")
        .arg(name, isInClass(plan_.plan(), id) ? tr("in this class") : tr("not in this class"), conditionsOf(id));
  default:
    return {};
  }
}

bool PeopleList::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || role != Qt::CheckStateRole)
    return false;
  setInClass(plan_, PersonId(personAt(index)), value.toInt() == Qt::Checked);
  return true;
}

Qt::ItemFlags PeopleList::flags(const QModelIndex& index) const {
  return QAbstractListModel::flags(index) | Qt::ItemIsUserCheckable;
}

PeopleDelegate::PeopleDelegate(QAbstractItemView& view) : QStyledItemDelegate(&view), view_(view) {}

void PeopleDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  paintRowGround(*painter, option);
  paintBox(*painter, boxIn(option), index.data(Qt::CheckStateRole).toInt() == Qt::Checked);
  matwright::paint(*painter, option.rect.adjusted(boxIn(option).width() + 2 * kEdge, kEdge - 1, -kEdge, 0),
                   linesOf(option, index));
}

QSize PeopleDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const int width = view_.viewport()->width();
  const int room = std::max(80, width - boxIn(option).width() - 3 * kEdge);
  return {width, heightOf(linesOf(option, index), room) + 2 * kEdge - 2};
}

bool PeopleDelegate::editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                                 const QModelIndex& index) {
  bool toggles = false;
  if (event->type() == QEvent::MouseButtonRelease) {
    const auto* mouse = static_cast<QMouseEvent*>(event);
    toggles = mouse->button() == Qt::LeftButton &&
              boxIn(option).adjusted(-kEdge, -kEdge, kEdge / 2, kEdge).contains(mouse->position().toPoint());
  } else if (event->type() == QEvent::KeyPress) {
    toggles = static_cast<QKeyEvent*>(event)->key() == Qt::Key_Space;
  }
  if (!toggles)
    return false;
  const bool checked = index.data(Qt::CheckStateRole).toInt() == Qt::Checked;
  return model->setData(index, static_cast<int>(checked ? Qt::Unchecked : Qt::Checked), Qt::CheckStateRole);
}

} // namespace matwright
