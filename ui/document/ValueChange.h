#pragma once

#include <QString>
#include <QUndoCommand>
#include <functional>
#include <memory>

namespace matwright {

// One entry of an undo list over a plain value: the value before and after, and how a document shows one. Entries with
// the same key, made within the same gesture, are continued into one; when that ends where it began, nothing is left.
template <class Value> class ValueChange : public QUndoCommand {
public:
  using Shared = std::shared_ptr<const Value>;

  // `show` must stay callable as long as the undo list lives. An empty key continues nothing.
  ValueChange(std::function<void(Shared)> show, Shared before, Shared after, const QString& what, QString mergeKey,
              quint64 gesture)
      : QUndoCommand(what), show_(std::move(show)), before_(std::move(before)), after_(std::move(after)),
        mergeKey_(std::move(mergeKey)), gesture_(gesture) {}

  void undo() override { show_(before_); }
  void redo() override { show_(after_); }
  int id() const override { return mergeKey_.isEmpty() ? -1 : 1; }

  // An undo list holds entries over one value alone, so what comes next is of this type.
  bool mergeWith(const QUndoCommand* next) override {
    const auto* change = static_cast<const ValueChange*>(next);
    if (change->mergeKey_ != mergeKey_ || change->gesture_ != gesture_)
      return false;
    after_ = change->after_;
    setObsolete(*before_ == *after_);
    return true;
  }

private:
  std::function<void(Shared)> show_;
  Shared before_, after_;
  QString mergeKey_;
  quint64 gesture_;
};

} // namespace matwright
