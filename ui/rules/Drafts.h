#pragma once

#include <algorithm>
#include <map>
#include <vector>

namespace matwright {

// Things of one's own that cannot be kept yet, by their ids, each with what the document had of it then.
template <class Thing> class Drafts {
public:
  using Id = decltype(Thing::id);

  bool has(const Id& id) const { return drafts_.contains(id); }
  Id first() const { return drafts_.empty() ? Id{} : drafts_.begin()->first; } // or empty
  // Null when there is none.
  const Thing* find(const Id& id) const {
    const auto at = drafts_.find(id);
    return at == drafts_.end() ? nullptr : &at->second.draft;
  }
  void put(const Thing& draft, const Thing& kept) { drafts_.insert_or_assign(draft.id, Entry{draft, kept}); }
  void drop(const Id& id) { drafts_.erase(id); }
  void clear() { drafts_.clear(); }
  // What was changed elsewhere, as by undo, takes the place of what could not be kept.
  void dropOvertaken(const std::vector<Thing>& kept) {
    std::erase_if(drafts_, [&](const auto& entry) {
      return std::find(kept.begin(), kept.end(), entry.second.kept) == kept.end();
    });
  }

private:
  struct Entry {
    Thing draft, kept;
  };
  std::map<Id, Entry> drafts_;
};

// One of them, or null.
template <class Thing> const Thing* withId(const std::vector<Thing>& things, const decltype(Thing::id)& id) {
  const auto at = std::find_if(things.begin(), things.end(), [&](const Thing& each) { return each.id == id; });
  return at == things.end() ? nullptr : &*at;
}

} // namespace matwright
