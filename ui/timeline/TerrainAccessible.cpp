#include "ui/timeline/TerrainAccessible.h"

#include "ui/timeline/TerrainView.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <algorithm>
#include <map>

namespace matwright {
namespace {

class StepItem : public QAccessibleInterface, public QAccessibleActionInterface {
public:
  StepItem(TerrainView& view, StepId step) : view_(&view), step_(step) {}

  StepId step() const { return step_; }
  bool isValid() const override { return index().has_value(); }
  QObject* object() const override { return nullptr; }
  QWindow* window() const override { return view_->window()->windowHandle(); }
  QAccessibleInterface* parent() const override { return QAccessible::queryAccessibleInterface(view_); }
  QAccessibleInterface* child(int) const override { return nullptr; }
  QAccessibleInterface* childAt(int, int) const override { return nullptr; }
  int childCount() const override { return 0; }
  int indexOfChild(const QAccessibleInterface*) const override { return -1; }
  QAccessible::Role role() const override { return QAccessible::ListItem; }

  QString text(QAccessible::Text kind) const override {
    const auto at = index();
    return at && kind == QAccessible::Name ? spokenStep(view_->settledSubject(), *at) : QString();
  }
  void setText(QAccessible::Text, const QString&) override {}

  QRect rect() const override {
    const Block* block = view_->settledGeometry().block(step_);
    if (!block)
      return {};
    const QRect within = view_->toViewport(block->rect).toAlignedRect();
    return {view_->viewport()->mapToGlobal(within.topLeft()), within.size()};
  }

  QAccessible::State state() const override {
    QAccessible::State state;
    state.selectable = state.focusable = state.multiSelectable = state.extSelectable = true;
    state.selected = view_->selection().contains(step_);
    state.focused = view_->hasFocus() && view_->selection().current() == step_;
    const Block* block = view_->settledGeometry().block(step_);
    state.invalid = !block;
    state.invisible = !view_->isVisible();
    state.offscreen = block && !view_->toViewport(block->rect).intersects(QRectF(view_->viewport()->rect()));
    return state;
  }

  void* interface_cast(QAccessible::InterfaceType type) override {
    return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
  }
  QStringList actionNames() const override { return {pressAction(), setFocusAction(), showMenuAction()}; }
  void doAction(const QString& action) override {
    if (!isValid())
      return;
    view_->selectStep(step_);
    if (action == setFocusAction())
      view_->setFocus(Qt::OtherFocusReason);
    else if (action == showMenuAction())
      Q_EMIT view_->stepContextMenu(rect().bottomLeft(), step_);
  }
  QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
  std::optional<std::size_t> index() const {
    const auto& steps = view_->settledSubject().scene.steps;
    const auto at = std::find_if(steps.begin(), steps.end(), [&](const TerrainStep& step) { return step.id == step_; });
    return at == steps.end() ? std::nullopt : std::optional{static_cast<std::size_t>(at - steps.begin())};
  }

  TerrainView* view_;
  StepId step_;
};

class TerrainList;
std::map<const TerrainView*, TerrainList*>& lists() {
  static std::map<const TerrainView*, TerrainList*> all;
  return all;
}

class TerrainList : public QAccessibleWidget {
public:
  explicit TerrainList(TerrainView& view) : QAccessibleWidget(&view, QAccessible::List), view_(view) {
    lists()[&view] = this;
  }

  int childCount() const override { return static_cast<int>(steps().size()); }
  QAccessibleInterface* child(int index) const override {
    if (index < 0 || index >= childCount())
      return nullptr;
    return item(steps()[static_cast<std::size_t>(index)].id);
  }
  int indexOfChild(const QAccessibleInterface* child) const override {
    for (std::size_t i = 0; i < steps().size(); ++i) {
      const auto known = items_.find(steps()[i].id);
      if (known != items_.end() && QAccessible::accessibleInterface(known->second.id) == child)
        return static_cast<int>(i);
    }
    return -1;
  }
  QAccessibleInterface* childAt(int x, int y) const override {
    const QPointF at = view_.toTerrain(view_.viewport()->mapFromGlobal(QPoint(x, y)));
    const TerrainHit hit = view_.settledGeometry().hit(at);
    const bool block = hit.kind == TerrainHit::Kind::block || hit.kind == TerrainHit::Kind::blockEdge;
    return block ? item(steps()[*hit.step].id) : nullptr;
  }
  QAccessibleInterface* focusChild() const override {
    const auto current = view_.selection().current();
    return view_.hasFocus() && current ? item(*current) : nullptr;
  }
  QAccessible::State state() const override {
    QAccessible::State state = QAccessibleWidget::state();
    state.multiSelectable = state.extSelectable = true;
    return state;
  }

  // One item a step, kept as long as the step is in the class, wherever it moves.
  QAccessibleInterface* item(StepId step) const {
    const auto known = items_.find(step);
    if (known != items_.end())
      return QAccessible::accessibleInterface(known->second.id);
    auto* made = new StepItem(view_, step);
    items_[step] = {QAccessible::registerAccessibleInterface(made), made->text(QAccessible::Name)};
    return made;
  }

  void takeSteps() {
    const auto& now = steps();
    std::vector<StepId> order;
    for (const TerrainStep& step : now)
      order.push_back(step.id);
    for (auto at = items_.begin(); at != items_.end();) {
      if (std::find(order.begin(), order.end(), at->first) != order.end()) {
        ++at;
        continue;
      }
      send(QAccessible::accessibleInterface(at->second.id), QAccessible::ObjectDestroyed);
      QAccessible::deleteAccessibleInterface(at->second.id);
      at = items_.erase(at);
    }
    for (const StepId step : order) {
      const auto known = items_.find(step);
      if (known == items_.end()) {
        send(item(step), QAccessible::ObjectCreated);
        continue;
      }
      QAccessibleInterface* child = QAccessible::accessibleInterface(known->second.id);
      if (const QString name = child->text(QAccessible::Name); name != known->second.name) {
        known->second.name = name;
        send(child, QAccessible::NameChanged);
      }
    }
    if (order != order_) {
      order_ = std::move(order);
      QAccessibleEvent event(&view_, QAccessible::ObjectReorder);
      QAccessible::updateAccessibility(&event);
    }
  }

  void takeSelection() {
    const std::vector<StepId> now = view_.selection().steps();
    for (const StepId step : now)
      if (std::find(selected_.begin(), selected_.end(), step) == selected_.end())
        send(item(step), QAccessible::SelectionAdd);
    for (const StepId step : selected_)
      if (std::find(now.begin(), now.end(), step) == now.end() && items_.contains(step))
        send(item(step), QAccessible::SelectionRemove);
    selected_ = now;
    if (QAccessibleInterface* focused = focusChild())
      send(focused, QAccessible::Focus);
  }

  void forget() {
    for (const auto& [step, item] : items_)
      QAccessible::deleteAccessibleInterface(item.id);
    items_.clear();
    lists().erase(&view_);
  }

protected:
  ~TerrainList() override { forget(); }

private:
  struct Item {
    QAccessible::Id id = 0;
    QString name; // as last told
  };

  const std::vector<TerrainStep>& steps() const { return view_.settledSubject().scene.steps; }
  static void send(QAccessibleInterface* about, QAccessible::Event what) {
    if (!about)
      return;
    QAccessibleEvent event(about, what);
    QAccessible::updateAccessibility(&event);
  }

  TerrainView& view_;
  mutable std::map<StepId, Item> items_;
  std::vector<StepId> order_, selected_;
};

QAccessibleInterface* terrainInterface(const QString& className, QObject* object) {
  auto* view = className == QLatin1String("matwright::TerrainView") ? qobject_cast<TerrainView*>(object) : nullptr;
  return view ? new TerrainList(*view) : nullptr;
}

// Nothing needs telling before somebody has asked for the list.
TerrainList* listOf(const TerrainView& view) {
  const auto known = lists().find(&view);
  return known == lists().end() ? nullptr : known->second;
}

} // namespace

void installTerrainAccessibility() {
  static const bool once = [] {
    QAccessible::installFactory(terrainInterface);
    return true;
  }();
  static_cast<void>(once);
}

void forgetTerrainAccessibility(TerrainView& view) {
  if (TerrainList* list = listOf(view))
    list->forget();
}

void announceSteps(TerrainView& view) {
  if (TerrainList* list = listOf(view))
    list->takeSteps();
}

void announceSelection(TerrainView& view) {
  if (TerrainList* list = listOf(view))
    list->takeSelection();
}

void announceGeometry(TerrainView& view) {
  if (!listOf(view))
    return;
  QAccessibleEvent event(&view, QAccessible::LocationChanged);
  QAccessible::updateAccessibility(&event);
}

} // namespace matwright
