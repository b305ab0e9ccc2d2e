#pragma once

#include <cstddef>
#include <vector>

namespace matwright {

// A list that grows at its end without moving more than a few thousand of its members, however many there are.
template <class T> class Blocks {
public:
  std::size_t size() const { return blocks_.empty() ? 0 : (blocks_.size() - 1) * kInBlock + blocks_.back().size(); }
  T& operator[](std::size_t at) { return blocks_[at / kInBlock][at % kInBlock]; }
  const T& operator[](std::size_t at) const { return blocks_[at / kInBlock][at % kInBlock]; }
  void push_back(const T& member) {
    if (blocks_.empty() || blocks_.back().size() == kInBlock) {
      blocks_.emplace_back();
      if (blocks_.size() > 1)
        blocks_.back().reserve(kInBlock);
    }
    blocks_.back().push_back(member);
  }
  // Leaves the first so many, at most as many as there are.
  void shrink(std::size_t size) {
    blocks_.resize((size + kInBlock - 1) / kInBlock);
    if (size % kInBlock != 0)
      blocks_.back().resize(size % kInBlock);
  }

private:
  static constexpr std::size_t kInBlock = 4096;
  std::vector<std::vector<T>> blocks_; // all but the last are full
};

} // namespace matwright
