#pragma once

#include "ui/document/KnowledgeDocument.h"

#include <algorithm>
#include <map>

namespace matwright {

// What was written of things of one's own and cannot be put into their document yet, because its file could not hold
// it. `list` is where they stand there.
template <class Value> class Drafts {
public:
  using AnyId = decltype(Value::id);

  Drafts(KnowledgeDocument& document, std::vector<Value> OwnKnowledge::*list) : document_(document), list_(list) {}

  bool empty() const { return drafts_.empty(); }
  AnyId first() const { return drafts_.empty() ? AnyId{} : drafts_.begin()->first; } // or empty
  bool has(const AnyId& id) const { return drafts_.contains(id); }
  const Value* find(const AnyId& id) const { // null for what is no draft
    const auto at = drafts_.find(id);
    return at == drafts_.end() ? nullptr : &at->second.value;
  }
  std::vector<Value> all() const {
    std::vector<Value> values;
    for (const auto& [id, draft] : drafts_)
      values.push_back(draft.value);
    return values;
  }

  // Into the document, in the place of the one with the same id or as a new one; stays here when that is refused. True
  // when the document has it. For `mergeKey` see KnowledgeDocument::change.
  bool put(const Value& value, const QString& what, const QString& mergeKey = {}) {
    const Value* there = findById(document_.own().*list_, value.id);
    const std::optional<Value> kept = there ? std::optional{*there} : std::nullopt;
    drafts_.erase(value.id);
    const bool done =
        kept ? document_.replace(value, what, mergeKey).has_value() : document_.add(value, what).has_value();
    if (!done)
      drafts_[value.id] = {value, kept};
    return done;
  }

  // What was changed elsewhere, as by undo, takes the place of what could not be kept.
  void followDocument() {
    std::erase_if(drafts_, [this](const auto& entry) {
      const Value* there = findById(document_.own().*list_, entry.first);
      return there ? entry.second.kept != *there : entry.second.kept.has_value();
    });
  }

  void drop(const AnyId& id) { drafts_.erase(id); }
  void clear() { drafts_.clear(); }

private:
  struct Draft {
    Value value;
    std::optional<Value> kept; // as the document had it then; none for a new thing
  };

  KnowledgeDocument& document_;
  std::vector<Value> OwnKnowledge::*list_;
  std::map<AnyId, Draft> drafts_;
};

} // namespace matwright
