#pragma once

#include "core/base/Words.h"

#include <bit>
#include <cstdint>
#include <initializer_list>

namespace matwright {

// A set of values of a closed enumeration with at most 64 values.
template <class Enum> class EnumSet {
public:
  static_assert(kWordCount<Enum> <= 64);

  constexpr EnumSet() = default;
  constexpr EnumSet(std::initializer_list<Enum> values) {
    for (Enum value : values)
      insert(value);
  }

  constexpr void insert(Enum value) { bits_ |= bit(value); }
  constexpr void erase(Enum value) { bits_ &= ~bit(value); }
  constexpr bool contains(Enum value) const { return (bits_ & bit(value)) != 0; }
  constexpr bool containsAll(EnumSet other) const { return (bits_ & other.bits_) == other.bits_; }
  constexpr bool intersects(EnumSet other) const { return (bits_ & other.bits_) != 0; }
  constexpr bool empty() const { return bits_ == 0; }
  constexpr int size() const { return std::popcount(bits_); }

  constexpr EnumSet operator|(EnumSet other) const { return EnumSet(bits_ | other.bits_); }
  constexpr EnumSet operator&(EnumSet other) const { return EnumSet(bits_ & other.bits_); }
  constexpr EnumSet without(EnumSet other) const { return EnumSet(bits_ & ~other.bits_); }
  constexpr EnumSet& operator|=(EnumSet other) {
    bits_ |= other.bits_;
    return *this;
  }
  friend constexpr bool operator==(EnumSet, EnumSet) = default;

  // Calls visit(value) for each member, in the order of the enumeration.
  template <class Visit> constexpr void forEach(Visit visit) const {
    for (std::uint64_t rest = bits_; rest != 0; rest &= rest - 1)
      visit(static_cast<Enum>(std::countr_zero(rest)));
  }

private:
  explicit constexpr EnumSet(std::uint64_t bits) : bits_(bits) {}
  static constexpr std::uint64_t bit(Enum value) { return std::uint64_t{1} << static_cast<unsigned>(value); }

  std::uint64_t bits_ = 0;
};

} // namespace matwright
