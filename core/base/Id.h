#pragma once

#include <algorithm>
#include <compare>
#include <functional>
#include <string>

namespace matwright {

// The name by which one thing is known in files: lower-case words joined by hyphens. Ids of different
// kinds of thing do not mix. An empty id names nothing.
template <class Tag> struct Id {
  std::string value;

  bool empty() const { return value.empty(); }
  friend bool operator==(const Id&, const Id&) = default;
  friend auto operator<=>(const Id&, const Id&) = default;
};

// The first of `values` that has the id; null when there is none.
template <class Values, class AnyId> auto findById(Values& values, const AnyId& id) -> decltype(&*values.begin()) {
  const auto at = std::find_if(values.begin(), values.end(), [&](const auto& value) { return value.id == id; });
  return at == values.end() ? nullptr : &*at;
}

} // namespace matwright

template <class Tag> struct std::hash<matwright::Id<Tag>> {
  std::size_t operator()(const matwright::Id<Tag>& id) const noexcept { return std::hash<std::string>{}(id.value); }
};
