#include "core/tidy/NearOrder.h"

#include <algorithm>

namespace matwright {
namespace {

// Takes an item from one place to another.
void shift(std::vector<int>& order, std::size_t from, std::size_t to) {
  const auto at = [&](std::size_t place) { return order.begin() + static_cast<std::ptrdiff_t>(place); };
  if (from < to)
    std::rotate(at(from), at(from) + 1, at(to) + 1);
  else
    std::rotate(at(to), at(from), at(from) + 1);
}

// Where, from `from` on, an item turns the most pairs back, and no worse order comes of it.
bool shiftOne(std::vector<int>& order, std::size_t from, const std::function<bool(const std::vector<int>&)>& isAsGood) {
  const int item = order[from];
  std::vector<std::pair<int, std::size_t>> places; // pairs turned round, place
  int turned = 0;
  for (std::size_t to = from; to-- > 0;)
    if ((turned += order[to] > item ? -1 : 1) < 0)
      places.emplace_back(turned, to);
  turned = 0;
  for (std::size_t to = from + 1; to < order.size(); ++to)
    if ((turned += order[to] < item ? -1 : 1) < 0)
      places.emplace_back(turned, to);
  std::sort(places.begin(), places.end());
  for (const auto& [gain, to] : places) {
    shift(order, from, to);
    if (isAsGood(order))
      return true;
    shift(order, to, from);
  }
  return false;
}

} // namespace

std::vector<char> stayingIn(const std::vector<int>& order, const std::vector<char>& fixed) {
  const std::size_t count = order.size();
  std::vector<std::size_t> placeOf(count);
  for (std::size_t place = 0; place < count; ++place)
    placeOf[order[place]] = place;
  const auto agree = [&](int a, int b) { return (a < b) == (placeOf[a] < placeOf[b]); };
  const auto fits = [&](int item) {
    for (std::size_t other = 0; other < count; ++other)
      if (fixed[other] && static_cast<int>(other) != item && !agree(item, static_cast<int>(other)))
        return false;
    return true;
  };
  std::vector<int> length(count, 0), before(count, -1); // of the longest run of those that stay, up to this place
  int last = -1;
  for (std::size_t place = 0; place < count; ++place) {
    if (!fits(order[place]))
      continue;
    length[place] = 1;
    for (std::size_t earlier = 0; earlier < place; ++earlier)
      if (length[earlier] >= length[place] && order[earlier] < order[place]) {
        length[place] = length[earlier] + 1;
        before[place] = static_cast<int>(earlier);
      }
    if (last < 0 || length[place] > length[last])
      last = static_cast<int>(place);
  }
  std::vector<char> staying(count, 0);
  for (; last >= 0; last = before[last])
    staying[order[last]] = 1;
  return staying;
}

std::vector<int> nearer(std::vector<int> order, const std::function<bool(const std::vector<int>&)>& isAsGood) {
  for (bool again = true; again;) {
    again = false;
    for (std::size_t from = 0; from < order.size(); ++from)
      again |= shiftOne(order, from, isAsGood);
  }
  return order;
}

} // namespace matwright
