#include "core/order/Pattern.h"

#include <algorithm>
#include <array>
#include <bit>

namespace matwright {
namespace {

constexpr int kMostMembers = 128;
using Mask = std::array<std::uint64_t, kMostMembers / 64>;

bool contains(const Mask& mask, int bit) { return (mask[bit / 64] >> (bit % 64) & 1) != 0; }
void put(Mask& mask, int bit) { mask[bit / 64] |= std::uint64_t{1} << (bit % 64); }
bool within(const Mask& part, const Mask& whole) {
  for (std::size_t word = 0; word < part.size(); ++word)
    if (part[word] & ~whole[word])
      return false;
  return true;
}

std::size_t hashOf(const Mask& mask) {
  std::uint64_t hash = 0;
  for (std::uint64_t word : mask) {
    hash = (hash ^ word) * 0x9e3779b97f4a7c15U;
    hash ^= hash >> 29;
  }
  return static_cast<std::size_t>(hash);
}

// Masks by number, in the order they were put in.
class MaskIndex {
public:
  // The number of a mask, and whether it is new.
  std::pair<int, bool> put(const Mask& mask) {
    if (2 * (masks_.size() + 1) > slots_.size())
      grow();
    for (std::size_t at = hashOf(mask) & (slots_.size() - 1);; at = (at + 1) & (slots_.size() - 1)) {
      if (slots_[at] < 0) {
        slots_[at] = static_cast<int>(masks_.size());
        masks_.push_back(mask);
        return {slots_[at], true};
      }
      if (masks_[slots_[at]] == mask)
        return {slots_[at], false};
    }
  }
  const Mask& operator[](int at) const { return masks_[at]; }
  int size() const { return static_cast<int>(masks_.size()); }

private:
  void grow() {
    slots_.assign(std::max<std::size_t>(64, slots_.size() * 2), -1);
    for (std::size_t i = 0; i < masks_.size(); ++i) {
      std::size_t at = hashOf(masks_[i]) & (slots_.size() - 1);
      while (slots_[at] >= 0)
        at = (at + 1) & (slots_.size() - 1);
      slots_[at] = static_cast<int>(i);
    }
  }
  std::vector<Mask> masks_;
  std::vector<int> slots_;
};

int countBits(const std::vector<std::uint64_t>& words) {
  int bits = 0;
  for (std::uint64_t word : words)
    bits += std::popcount(word);
  return bits;
}

void add(std::vector<std::uint64_t>& words, const BitRows& rows, int item) {
  for (int word = 0; word < rows.words(); ++word)
    words[word] |= rows.row(item)[word];
  words[item / 64] |= std::uint64_t{1} << (item % 64);
}

} // namespace

std::optional<Pattern> Pattern::of(const Groundwork& ground, std::vector<int> members, std::int64_t mostWork,
                                   SearchEffort& effort) {
  if (members.size() > kMostMembers)
    return std::nullopt;
  Pattern pattern;
  pattern.members_ = std::move(members);
  const int count = static_cast<int>(pattern.members_.size());
  pattern.memberOf_.assign(ground.items, -1);
  for (int i = 0; i < count; ++i)
    pattern.memberOf_[pattern.members_[i]] = i;
  std::vector<Mask> earlier(count);
  for (int i = 0; i < count; ++i)
    for (int j = 0; j < count; ++j)
      if (ground.relation.before(pattern.members_[j], pattern.members_[i]))
        put(earlier[i], j);

  MaskIndex masks;
  masks.put(Mask{});
  std::vector<std::uint64_t> done, left;
  // In the order of their sizes, so that the last one has all members.
  for (int at = 0; at < masks.size(); ++at) {
    const Mask mask = masks[at];
    done.assign(ground.pred.words(), 0);
    left.assign(ground.pred.words(), 0);
    for (int i = 0; i < count; ++i) {
      if (contains(mask, i))
        add(done, ground.pred, pattern.members_[i]);
      else
        add(left, ground.succ, pattern.members_[i]);
    }
    Ideal ideal;
    ideal.fewest = countBits(done);
    ideal.most = ground.items - countBits(left);
    ideal.firstMove = static_cast<int>(pattern.moves_.size());
    for (int item = 0; item < ground.items; ++item) {
      ideal.shortest += (done[item / 64] >> (item % 64) & 1) ? ground.lengthOf(item) : 0;
      ideal.longest += (left[item / 64] >> (item % 64) & 1) ? 0 : ground.lengthOf(item);
    }
    pattern.next_.resize(pattern.next_.size() + count, -1);
    for (int i = 0; i < count; ++i)
      if (!contains(mask, i) && within(earlier[i], mask)) {
        Mask to = mask;
        put(to, i);
        const int ideal2 = masks.put(to).first;
        pattern.next_[static_cast<std::size_t>(at) * count + i] = ideal2;
        pattern.moves_.push_back({pattern.members_[i], ideal2});
      }
    for (int item = 0; item < ground.items; ++item)
      if (pattern.memberOf_[item] < 0 && ((done[item / 64] | left[item / 64]) >> (item % 64) & 1) == 0)
        pattern.moves_.push_back({item, at});
    const std::int64_t moves = static_cast<std::int64_t>(pattern.moves_.size()) - ideal.firstMove;
    pattern.work_ += std::int64_t{ideal.most - ideal.fewest + 1} * ground.states *
                     (std::int64_t{ground.places} * ground.places / 4 + moves + 8);
    if (pattern.work_ > mostWork || effort.spend())
      return std::nullopt;
    pattern.ideals_.push_back(ideal);
  }
  Ideal behind;
  behind.firstMove = static_cast<int>(pattern.moves_.size());
  pattern.ideals_.push_back(behind);
  return pattern;
}

} // namespace matwright
