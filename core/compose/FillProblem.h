// Composing a class in plain numbers: which items to take and in which order. Times and costs are whole milliseconds.
#pragma once

#include "core/compose/ComposeCost.h"
#include "core/tidy/OrderWishes.h"

#include <cstdint>
#include <limits>
#include <vector>

namespace matwright {

inline constexpr std::int64_t kColdAfterWarmCost = 30'000; // without end range right after end range, at the beginning
inline constexpr std::int64_t kFetchingCost = 20'000;      // a prop

// A movement in one option and dose.
struct FillItem {
  int family = 0;              // the movement: one item of a family is chosen at the most
  int start = 0, end = 0;      // places; below 0: wherever people are
  std::int64_t work = 0;       // and turning between its sides
  std::int64_t cue = 0;        // halved right after another item of its family
  std::int64_t effort = 0;     // hundredths
  std::int64_t effortWork = 0; // of `work`, what has this effort; 0 where none is known
  int region = -1;             // the main one; below 0: none
  SpineTurn spine = SpineTurn::other;
  bool endRange = false;
  std::uint32_t props = 0;                                                        // a bit each
  std::int64_t turning = 0, rises = 0, variety = 0, screening = 0, asWritten = 0; // what it costs anywhere
  struct Gift {
    int need = 0;
    std::int64_t time = 0;
  };
  std::vector<Gift> gives;
};

struct FillSection {
  static constexpr std::int64_t kOpen = std::numeric_limits<std::int64_t>::max();
  std::int64_t least = 0, most = kOpen; // from where it begins to where the next one does
};

struct FillNeed {
  std::int64_t wished = 0;
  ComposePart part = ComposePart::focus;
};

struct FillProblem {
  std::vector<FillItem> items;
  int families = 0;
  int places = 0;
  std::vector<std::int64_t> moving;            // places x places
  std::vector<std::int64_t> rises, screenings; // the same: what the way costs besides
  std::vector<char> closed;                    // the same: no way, or one that is not to be gone
  std::int64_t settle = 0;
  std::vector<std::vector<int>> needed;    // by family: families that come before it
  std::vector<char> known;                 // by family: need not be there for others
  std::vector<std::vector<int>> counterOf; // by family: families after whose flexion it is named
  std::vector<int> included;               // families
  std::vector<FillSection> sections;
  std::vector<std::vector<int>> kept; // by section: items that are there in this order
  std::vector<int> offered;           // items that may be chosen
  std::int64_t least = 0, most = 0;   // of the whole
  std::vector<FillNeed> needs;
  std::vector<std::int64_t> wishedEffort; // hundredths, by whole second; the last one holds on

  std::size_t way(int from, int to) const {
    return static_cast<std::size_t>(from) * static_cast<std::size_t>(places) + static_cast<std::size_t>(to);
  }
};

// Items in a row with where the sections end in it.
struct Filling {
  std::vector<int> items;
  std::vector<char> kept;        // by place in the row
  std::vector<std::size_t> ends; // by section
  friend bool operator==(const Filling&, const Filling&) = default;
};

Filling keptIn(const FillProblem& problem);

// How far a filling is from keeping what must be kept.
struct FillBreach {
  std::int64_t time = 0; // that the whole and sections are too long or too short, summed up
  int lengths = 0;       // how many of them are
  int missing = 0;       // items included or needed that are not there
  int late = 0;          // that are there and come too late
  int closed = 0;        // ways that are not to be gone, but for those between two kept; and kept series torn apart
  bool none() const { return time == 0 && missing == 0 && late == 0 && closed == 0; }
  friend bool operator==(const FillBreach&, const FillBreach&) = default;
};

struct FillWeight {
  std::int64_t length = 0;
  std::array<std::int64_t, kWordCount<ComposePart>> parts{};
  FillBreach breach;
  std::int64_t cost() const;
  friend bool operator==(const FillWeight&, const FillWeight&) = default;
};

ComposeCost costOf(const FillWeight& weight);

// What a search makes small: breaches cost so much that one which keeps all is found, and little enough to pass
// through.
std::int64_t priceOf(const FillWeight& weight);

// Weighs fillings of one problem, which must outlive it, in time proportional to their items.
class FillScale {
public:
  static constexpr std::int64_t kAny = std::numeric_limits<std::int64_t>::max();

  explicit FillScale(const FillProblem& problem);
  const FillWeight& weigh(const Filling& filling) { return *weigh(filling, kAny); } // until the next one
  // The same; null where its price turns out to be above `dearest`.
  const FillWeight* weigh(const Filling& filling, std::int64_t dearest);
  // Of the last one weighed, by need.
  const std::vector<std::int64_t>& given() const { return given_; }

private:
  struct Gift {
    int need = 0;
    std::int32_t time = 0;
  };
  // What is read of an item at every turn, close together.
  struct Brief {
    std::int32_t work = 0, cue = 0, effort = 0, effortWork = 0;
    std::int32_t own = 0; // what it costs anywhere, all together
    std::int32_t firstGift = 0, endGift = 0;
    std::int32_t family = 0;
    std::int16_t start = 0, end = 0;
    std::int8_t region = 0;
    SpineTurn spine{};
    bool endRange = false;
    std::uint32_t props = 0;
  };

  void noteFirsts(const Filling& filling);
  void weighOwn(const Filling& filling);
  void weighNeeds();
  void holdNeeded();
  bool walk(const Filling& filling, std::int64_t dearest);
  void tellOwnApart(const Filling& filling);
  std::int64_t& part(ComposePart part) { return weight_.parts[static_cast<std::size_t>(part)]; }

  const FillProblem* problem_;
  std::vector<Brief> briefs_;
  std::vector<Gift> gifts_;
  FillWeight weight_;
  std::vector<int> first_;  // by family: place in the row, kAbsent where it is not in it
  std::vector<char> fresh_; // by family: whether its first item is chosen
  std::vector<int> touched_;
  std::vector<std::int64_t> given_;
};

} // namespace matwright
