#include "core/compose/FillBeam.h"

#include <algorithm>
#include <bit>
#include <optional>
#include <random>
#include <unordered_map>
#include <unordered_set>

namespace matwright {
namespace {

constexpr std::int64_t kBucket = 10'000;   // milliseconds that count as one time
constexpr std::int64_t kOpenMust = 60'000; // what it counts that something must still come
constexpr std::int64_t kWhim = 3'000;      // what a seed may prefer one item to another by
constexpr std::size_t kMostEnds = 4;
constexpr std::size_t kPerPlace = 4; // one of so many that go on may be at the same place; two at the least

// A filling up to somewhere.
struct Head {
  int before = -1; // the head it goes on from
  int item = -1;   // none: nothing is done yet
  std::int64_t time = 0, sectionBegin = 0, cost = 0, rank = 0;
  std::uint64_t mark = 0; // of what has been done
  int place = -1;
  int section = 0, kept = 0;  // the section, and how many kept items of it are done
  int flexion = 0, musts = 0; // how many are still to come
  std::uint32_t props = 0;
  bool warm = false, isKept = false;

  void enterNext() {
    ++section;
    kept = 0;
    sectionBegin = time;
    warm = false;
  }
};

bool ranksBefore(const Head& a, const Head& b) { return std::pair(a.rank, a.mark) < std::pair(b.rank, b.mark); }

class Beam {
public:
  Beam(const FillProblem& problem, const BeamLimits& limits)
      : problem_(problem), limits_(limits), words_((static_cast<std::size_t>(problem.families) + 63) / 64) {
    std::mt19937_64 random(limits.seed);
    for (std::size_t i = 0; i < problem.items.size(); ++i)
      whims_.push_back(static_cast<std::int64_t>(random() % kWhim));
    for (int family = 0; family < problem.families; ++family)
      marks_.push_back(random());
    const auto families = static_cast<std::size_t>(problem.families);
    byFamily_.resize(families);
    neededFor_.resize(families);
    isMust_.assign(families, 0);
    for (int item : problem.offered)
      byFamily_[problem.items[item].family].push_back(item);
    for (int family = 0; family < problem.families; ++family)
      for (int needed : problem.needed[family])
        neededFor_[needed].push_back(family);
    for (int family : problem.included)
      want(family);
    findKept();
  }

  std::vector<Filling> build() {
    const std::size_t buckets = problem_.most < 0 ? 0 : static_cast<std::size_t>(problem_.most / kBucket) + 1;
    buckets_.resize(buckets);
    goOn(root());
    for (std::size_t at = 0; at < buckets && !(limits_.stop && *limits_.stop && (*limits_.stop)()); ++at)
      goOnAt(at);
    return fillings();
  }

private:
  // Must be there, with all that it needs.
  void want(int family) {
    if (isMust_[family] || problem_.known[family])
      return;
    isMust_[family] = 1;
    for (int needed : problem_.needed[family])
      want(needed);
  }

  void findKept() {
    keptAfter_.resize(problem_.kept.size());
    std::int64_t after = 0;
    for (std::size_t section = problem_.kept.size(); section-- > 0;) {
      keptAfter_[section] = after;
      for (int each : problem_.kept[section]) {
        const FillItem& item = problem_.items[each];
        after += item.cue / 2 + problem_.settle + item.work;
      }
    }
  }

  // --- heads

  int root() {
    Head head;
    head.musts = static_cast<int>(std::count(isMust_.begin(), isMust_.end(), 1));
    return take(head);
  }

  std::uint64_t* doneBy(int head) { return done_.data() + static_cast<std::size_t>(head) * words_; }
  std::int32_t* givenBy(int head) { return given_.data() + static_cast<std::size_t>(head) * problem_.needs.size(); }
  static bool has(const std::uint64_t* done, int family) { return (done[family / 64] >> (family % 64) & 1) != 0; }

  int take(const Head& head) {
    const int id = static_cast<int>(heads_.size());
    heads_.push_back(head);
    const std::size_t needs = problem_.needs.size();
    done_.resize(heads_.size() * words_);
    given_.resize(heads_.size() * needs);
    if (head.item < 0)
      return id;
    std::copy_n(doneBy(head.before), words_, doneBy(id));
    std::copy_n(givenBy(head.before), needs, givenBy(id));
    const FillItem& item = problem_.items[head.item];
    doneBy(id)[item.family / 64] |= std::uint64_t{1} << (item.family % 64);
    for (const FillItem::Gift& gift : item.gives)
      givenBy(id)[gift.need] += static_cast<std::int32_t>(gift.time);
    return id;
  }

  // --- going on

  // The best of those that are there at a time become heads and go on.
  void goOnAt(std::size_t at) {
    std::vector<Head> bucket = std::move(buckets_[at]);
    std::sort(bucket.begin(), bucket.end(), ranksBefore);
    std::unordered_set<std::uint64_t> seen;
    std::unordered_map<int, std::size_t> atPlace;
    std::size_t taken = 0;
    for (const Head& head : bucket) {
      if (taken == limits_.width)
        break;
      const std::uint64_t key = head.mark ^ (static_cast<std::uint64_t>(head.place + 1) << 8) ^
                                (static_cast<std::uint64_t>(head.section) << 20);
      if (atPlace[head.place] >= std::max<std::size_t>(2, limits_.width / kPerPlace) || !seen.insert(key).second)
        continue;
      ++atPlace[head.place];
      ++taken;
      const int id = take(head);
      noteEnd(id);
      goOn(id);
    }
  }

  void goOn(int id) {
    Head head = heads_[id];
    stay(id, head);
    while (canLeave(head)) {
      head.enterNext();
      stay(id, head);
    }
  }

  bool canLeave(const Head& head) const {
    const auto section = static_cast<std::size_t>(head.section);
    return section + 1 < problem_.sections.size() && isThrough(head) &&
           head.time - head.sectionBegin >= problem_.sections[section].least;
  }

  // Whether all that is kept in its section is done.
  bool isThrough(const Head& head) const {
    return head.kept == static_cast<int>(problem_.kept[static_cast<std::size_t>(head.section)].size());
  }

  // With anything more in the section.
  void stay(int id, const Head& head) {
    const std::vector<int>& kept = problem_.kept[static_cast<std::size_t>(head.section)];
    if (!isThrough(head)) {
      append(id, head, kept[head.kept], true);
      const bool inSeries = head.kept > 0 && head.item == kept[head.kept - 1] &&
                            problem_.items[kept[head.kept]].family == problem_.items[head.item].family;
      if (inSeries)
        return;
    }
    for (int family = 0; family < problem_.families; ++family)
      if (!byFamily_[family].empty() && !has(doneBy(id), family) && mayCome(doneBy(id), family))
        for (int item : byFamily_[family])
          append(id, head, item, false);
  }

  // What it needs is done, and nothing that would have needed it before.
  bool mayCome(const std::uint64_t* done, int family) const {
    const auto isDone = [&](int other) { return has(done, other); };
    const std::vector<int>& needed = problem_.needed[family];
    return std::all_of(needed.begin(), needed.end(),
                       [&](int other) { return isDone(other) || problem_.known[other]; }) &&
           std::none_of(neededFor_[family].begin(), neededFor_[family].end(), isDone);
  }

  void append(int id, const Head& head, int at, bool isKept) {
    const auto next = after(id, head, at, isKept);
    if (!next)
      return;
    std::vector<Head>& bucket = buckets_[static_cast<std::size_t>(next->time / kBucket)];
    bucket.push_back(*next);
    if (bucket.size() <= 16 * limits_.width)
      return;
    const auto middle = bucket.begin() + static_cast<std::ptrdiff_t>(8 * limits_.width);
    std::nth_element(bucket.begin(), middle, bucket.end(), ranksBefore);
    bucket.erase(middle, bucket.end());
  }

  // What comes of one more item after the head that was taken as `id`, perhaps in a later section; nothing where it
  // does not fit.
  std::optional<Head> after(int id, const Head& head, int at, bool isKept) {
    const FillItem& item = problem_.items[at];
    const FillItem* before = head.item < 0 ? nullptr : &problem_.items[head.item];
    const auto section = static_cast<std::size_t>(head.section);
    Head next = head;
    std::int64_t moving = 0;
    if (head.place >= 0 && item.start >= 0 && head.place != item.start) {
      const std::size_t way = problem_.way(head.place, item.start);
      if (problem_.closed[way] && !(isKept && head.isKept))
        return std::nullopt;
      moving = problem_.moving[way];
      next.cost += moving + problem_.rises[way] + problem_.screenings[way];
    }
    const std::int64_t cue = before && before->family == item.family ? item.cue / 2 : item.cue;
    next.time += std::max(moving, cue) + problem_.settle + item.work;
    if (next.time + keptAfter_[section] > problem_.most ||
        next.time - next.sectionBegin > problem_.sections[section].most)
      return std::nullopt;
    const bool isNew = !has(doneBy(id), item.family);
    next.before = id;
    next.item = at;
    next.isKept = isKept;
    next.kept += isKept ? 1 : 0;
    next.place = item.end >= 0 ? item.end : next.place;
    next.musts -= isNew && isMust_[item.family] ? 1 : 0;
    next.mark ^= isNew ? marks_[item.family] : 0;
    pay(id, head, item, before, next);
    next.cost += isKept ? 0 : whims_[at];
    next.rank = next.cost + kOpenMust * next.musts + missingTime(id, item);
    return next;
  }

  void pay(int id, const Head& head, const FillItem& item, const FillItem* before, Head& next) {
    next.cost += item.turning + item.rises + item.variety + item.screening + item.asWritten;
    next.cost += kFetchingCost * std::popcount(item.props & ~head.props);
    next.props |= item.props;
    if (before && item.region >= 0 && item.region == before->region)
      next.cost += kSameRegionCost;
    if (item.effortWork > 0) {
      const auto second =
          std::min(static_cast<std::size_t>((head.time + next.time) / 2000), problem_.wishedEffort.size() - 1);
      next.cost += offArcCost(item.effort, problem_.wishedEffort[second], item.effortWork);
    }
    if (head.section == 0 && problem_.sections.size() > 1) {
      next.cost += head.warm && !item.endRange ? kColdAfterWarmCost : 0;
      next.warm = item.endRange;
    }
    SpineTurn turn = item.spine;
    const std::vector<int>& countered = problem_.counterOf[item.family];
    if (turn == SpineTurn::other &&
        std::any_of(countered.begin(), countered.end(), [&](int family) { return has(doneBy(id), family); }))
      turn = SpineTurn::counter;
    const auto [state, unanswered] = afterFlexion(next.flexion, turn);
    next.flexion = state;
    next.cost += unanswered ? kNoCounterCost : 0;
  }

  // What still costs that too little time is given to what should get it.
  std::int64_t missingTime(int id, const FillItem& item) {
    const std::int32_t* given = givenBy(id);
    const auto missing = [&](std::size_t need) {
      return std::max<std::int64_t>(0, problem_.needs[need].wished - given[need]);
    };
    std::int64_t sum = 0;
    for (std::size_t need = 0; need < problem_.needs.size(); ++need)
      sum += missing(need);
    for (const FillItem::Gift& gift : item.gives)
      sum -= std::min(missing(static_cast<std::size_t>(gift.need)), gift.time);
    return sum / 2;
  }

  // --- ends

  void noteEnd(int id) {
    Head head = heads_[id];
    while (canLeave(head))
      head.enterNext();
    const bool isLast = static_cast<std::size_t>(head.section) + 1 == problem_.sections.size();
    if (isLast && isThrough(head) && head.musts == 0 && head.time >= problem_.least &&
        head.time - head.sectionBegin >= problem_.sections.back().least)
      ends_.push_back(id);
  }

  std::vector<Filling> fillings() {
    std::sort(ends_.begin(), ends_.end(),
              [&](int a, int b) { return std::pair(heads_[a].rank, a) < std::pair(heads_[b].rank, b); });
    ends_.resize(std::min(ends_.size(), kMostEnds));
    std::vector<Filling> fillings;
    for (int end : ends_)
      fillings.push_back(fillingTo(end));
    return fillings;
  }

  Filling fillingTo(int end) const {
    std::vector<int> line;
    for (int id = end; heads_[id].item >= 0; id = heads_[id].before)
      line.push_back(id);
    std::reverse(line.begin(), line.end());
    Filling filling;
    for (int id : line) {
      while (static_cast<int>(filling.ends.size()) < heads_[id].section)
        filling.ends.push_back(filling.items.size());
      filling.items.push_back(heads_[id].item);
      filling.kept.push_back(heads_[id].isKept);
    }
    filling.ends.resize(problem_.sections.size(), filling.items.size());
    return filling;
  }

  const FillProblem& problem_;
  const BeamLimits& limits_;
  std::size_t words_;
  std::vector<std::int64_t> whims_;                    // by item
  std::vector<std::uint64_t> marks_;                   // by family
  std::vector<std::vector<int>> byFamily_, neededFor_; // by family: offered items, families that need it
  std::vector<char> isMust_;                           // by family
  std::vector<std::int64_t> keptAfter_;                // by section: what is kept in later ones takes at the least
  std::vector<std::vector<Head>> buckets_;
  std::vector<Head> heads_;
  std::vector<std::uint64_t> done_; // heads x words
  std::vector<std::int32_t> given_; // heads x needs
  std::vector<int> ends_;           // heads
};

} // namespace

std::vector<Filling> builtFillings(const FillProblem& problem, const BeamLimits& limits) {
  return Beam(problem, limits).build();
}

} // namespace matwright
