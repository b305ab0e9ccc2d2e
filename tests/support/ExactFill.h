// What the cheapest filling of a small problem costs, by a dynamic programme over all of them: what is done (which
// families, in which choice, and how many of the kept items), and of that whatever matters to what comes later. Of
// fillings that do not differ in it, the cheapest goes on. Nothing is shared with the search but the problem.
#pragma once

#include "core/compose/FillProblem.h"

#include <algorithm>
#include <bit>
#include <optional>
#include <tuple>

namespace matwright::test {

class ExactFill {
public:
  explicit ExactFill(const FillProblem& problem) : problem_(problem) {
    for (std::size_t section = 0; section < problem.kept.size(); ++section) {
      for (int item : problem.kept[section])
        kept_.push_back(item);
      keptEnd_.push_back(kept_.size());
    }
    std::uint64_t weight = kept_.size() + 1;
    for (int family = 0; family < problem.families; ++family) {
      Choosable each{family, weight, {}};
      std::copy_if(problem.offered.begin(), problem.offered.end(), std::back_inserter(each.items),
                   [&](int item) { return problem.items[item].family == family; });
      if (!each.items.empty()) {
        weight *= each.items.size() + 1;
        choosable_.push_back(each);
      }
    }
  }

  // Of those that keep all they must and cost less than `below`; none where there is none.
  std::optional<std::int64_t> cheapest(std::int64_t below = std::numeric_limits<std::int64_t>::max() / 4) {
    best_ = below;
    // Whether a flexion is there that something counters is seen at the end only: each way it may be is tried.
    std::vector<int> named;
    for (const Choosable& each : choosable_)
      if (isNamed(each.family))
        named.push_back(each.family);
    for (std::uint32_t guess = 0; guess < 1U << named.size(); ++guess) {
      allowed_.assign(static_cast<std::size_t>(problem_.families), 1);
      required_.assign(static_cast<std::size_t>(problem_.families), 0);
      for (std::size_t i = 0; i < named.size(); ++i)
        ((guess >> i & 1U) != 0 ? required_[named[i]] = 1 : allowed_[named[i]] = 0);
      for (int family : problem_.included)
        required_[family] = 1;
      go();
    }
    return best_ < below ? std::optional(best_) : std::nullopt;
  }

  std::int64_t labels() const { return labels_; } // gone on from

private:
  struct Choosable {
    int family = 0;
    std::uint64_t weight = 0; // of its digit in a code: 0, or which of the items and one
    std::vector<int> items;
  };

  struct Label {
    std::uint64_t code = 0;
    std::int64_t begin = 0, now = 0; // of the section, of the next item
    int lastKept = -1;               // the item before, where that is kept
    int region = -1;                 // of the item before
    int place = -1, flexion = 0;
    std::size_t section = 0;
    bool warm = false, any = false; // `any`: there is an item before
    std::int64_t cost = 0;          // but for needs
    auto key() const { return std::tuple(code, section, place, region, flexion, warm, lastKept, any, begin, now); }
    friend bool operator<(const Label& a, const Label& b) {
      return a.key() != b.key() ? a.key() < b.key() : a.cost < b.cost;
    }
  };

  struct Gain {
    std::int64_t gain = 0, time = 0;
  };

  // What a code says.
  struct Done {
    std::size_t kept = 0;
    std::vector<char> isThere; // by family
    std::uint32_t props = 0;
    std::int64_t cost = 0, shortBy = 0; // `cost` of needs; twice that but for rounding down
    std::vector<char> mayCome;          // by place in choosable_
    bool keptMayCome = false;
    std::vector<Gain> gains; // of what is still to come, the quickest first
  };

  bool isNamed(int family) const {
    return std::any_of(problem_.items.begin(), problem_.items.end(), [&](const FillItem& item) {
      const auto& flexions = problem_.counterOf[item.family];
      return item.spine == SpineTurn::other && std::find(flexions.begin(), flexions.end(), family) != flexions.end();
    });
  }

  void go() {
    std::vector<Label> labels{Label{}}, next;
    while (!labels.empty()) {
      std::sort(labels.begin(), labels.end());
      next.clear();
      std::optional<Done> done;
      for (std::size_t i = 0; i < labels.size(); ++i) {
        if (i > 0 && labels[i].key() == labels[i - 1].key())
          continue;
        if (i == 0 || labels[i].code != labels[i - 1].code)
          done = doneBy(labels[i].code);
        extend(labels[i], *done, next);
      }
      std::swap(labels, next);
    }
  }

  void extend(Label label, const Done& done, std::vector<Label>& next) {
    ++labels_;
    if (2 * label.cost + leastOfNeeds(label, done) >= 2 * best_)
      return;
    for (;;) {
      for (std::size_t i = 0; i < choosable_.size(); ++i)
        for (std::size_t choice = 0; done.mayCome[i] && choice < choosable_[i].items.size(); ++choice)
          put(label, done, choosable_[i].items[choice], choosable_[i].weight * (choice + 1), next);
      if (done.keptMayCome && done.kept < keptEnd_[label.section])
        put(label, done, kept_[done.kept], 1, next);
      const FillSection& bounds = problem_.sections[label.section];
      const std::int64_t length = label.now - label.begin;
      if (length < bounds.least || length > bounds.most || done.kept < keptEnd_[label.section])
        return;
      if (label.section + 1 == problem_.sections.size())
        break;
      ++label.section;
      label.begin = label.now;
      label.warm = false;
    }
    for (int family = 0; family < problem_.families; ++family)
      if (required_[family] && !done.isThere[family])
        return;
    if (label.now >= problem_.least && label.now <= problem_.most)
      best_ = std::min(best_, label.cost + done.cost);
  }

  void put(const Label& label, const Done& done, int at, std::uint64_t code, std::vector<Label>& next) const {
    const FillItem& item = problem_.items[at];
    const bool kept = code == 1;
    Label after = label;
    after.code += code;
    std::int64_t moving = 0;
    if (label.place >= 0 && item.start >= 0 && label.place != item.start) {
      const std::size_t way = problem_.way(label.place, item.start);
      if (problem_.closed[way] && !(kept && label.lastKept >= 0))
        return;
      moving = problem_.moving[way];
      after.cost += moving + problem_.rises[way] + problem_.screenings[way];
    }
    if (kept && isSeries(done.kept) && label.lastKept != kept_[done.kept - 1])
      return;
    const bool again = label.lastKept >= 0 && problem_.items[label.lastKept].family == item.family;
    after.now += std::max(moving, again ? item.cue / 2 : item.cue) + problem_.settle + item.work;
    if (after.now > problem_.most || after.now - after.begin > problem_.sections[label.section].most)
      return;
    after.cost += item.turning + item.rises + item.variety + item.screening + item.asWritten;
    after.cost += 20'000 * std::popcount(item.props & ~done.props);
    if (label.any && item.region >= 0 && item.region == label.region)
      after.cost += 5'000;
    const auto middle = static_cast<std::size_t>((label.now + after.now) / 2'000);
    after.cost += std::abs(item.effort - problem_.wishedEffort[std::min(middle, problem_.wishedEffort.size() - 1)]) *
                  item.effortWork / 2'000;
    if (label.section == 0 && problem_.sections.size() > 1) {
      after.cost += label.warm && !item.endRange ? 30'000 : 0;
      after.warm = item.endRange;
    }
    const auto [flexion, unanswered] = afterFlexion(label.flexion, turnOf(item));
    after.flexion = flexion;
    after.cost += unanswered ? 30'000 : 0;
    after.lastKept = kept ? at : -1;
    after.region = item.region;
    after.place = item.end >= 0 ? item.end : label.place;
    after.any = true;
    next.push_back(after);
  }

  // Whether the kept item belongs next to the one before it.
  bool isSeries(std::size_t kept) const {
    return kept > 0 && std::find(keptEnd_.begin(), keptEnd_.end(), kept) == keptEnd_.end() &&
           problem_.items[kept_[kept]].family == problem_.items[kept_[kept - 1]].family;
  }

  SpineTurn turnOf(const FillItem& item) const {
    const auto willBeThere = [&](int family) {
      return required_[family] ||
             std::any_of(kept_.begin(), kept_.end(), [&](int kept) { return problem_.items[kept].family == family; });
    };
    const auto& flexions = problem_.counterOf[item.family];
    return item.spine == SpineTurn::other && std::any_of(flexions.begin(), flexions.end(), willBeThere)
               ? SpineTurn::counter
               : item.spine;
  }

  Done doneBy(std::uint64_t code) const {
    Done done;
    done.kept = code % (kept_.size() + 1);
    done.isThere.resize(static_cast<std::size_t>(problem_.families));
    std::vector<std::int64_t> given(problem_.needs.size());
    const auto take = [&](const FillItem& item) {
      done.isThere[item.family] = 1;
      done.props |= item.props;
      for (const FillItem::Gift& gift : item.gives)
        given[gift.need] += gift.time;
    };
    for (std::size_t i = 0; i < done.kept; ++i)
      take(problem_.items[kept_[i]]);
    for (const Choosable& each : choosable_)
      if (const std::uint64_t digit = code / each.weight % (each.items.size() + 1))
        take(problem_.items[each.items[digit - 1]]);
    std::vector<std::int64_t> lacking;
    for (std::size_t need = 0; need < given.size(); ++need) {
      lacking.push_back(std::max<std::int64_t>(0, problem_.needs[need].wished - given[need]));
      done.cost += lacking.back() / 2;
      done.shortBy += lacking.back();
    }
    done.keptMayCome = done.kept < kept_.size() && mayCome(done, problem_.items[kept_[done.kept]].family, true);
    for (const Choosable& each : choosable_) {
      const bool open = allowed_[each.family] && !done.isThere[each.family];
      done.mayCome.push_back(open && mayCome(done, each.family, false));
      if (open)
        done.gains.push_back(gainOf(each, lacking));
    }
    std::sort(done.gains.begin(), done.gains.end(),
              [](const Gain& a, const Gain& b) { return a.gain * b.time > b.gain * a.time; });
    return done;
  }

  // By what needs it and is there, and what it needs and is not there.
  bool mayCome(const Done& done, int family, bool kept) const {
    if (done.isThere[family])
      return true;
    for (int other = 0; other < problem_.families; ++other) {
      const auto& needed = problem_.needed[other];
      if (done.isThere[other] && std::find(needed.begin(), needed.end(), family) != needed.end() &&
          !(kept && isKept(other)))
        return false;
    }
    const auto& needed = problem_.needed[family];
    return kept || std::all_of(needed.begin(), needed.end(),
                               [&](int other) { return done.isThere[other] || problem_.known[other]; });
  }
  bool isKept(int family) const {
    return std::any_of(kept_.begin(), kept_.end(), [&](int item) { return problem_.items[item].family == family; });
  }

  // The most that it can take off twice the cost, in the least time.
  Gain gainOf(const Choosable& each, const std::vector<std::int64_t>& lacking) const {
    Gain most{0, std::numeric_limits<std::int32_t>::max()};
    for (int choice : each.items) {
      const FillItem& item = problem_.items[choice];
      std::int64_t gain = -2 * (item.turning + item.rises + item.variety + item.screening + item.asWritten);
      for (const FillItem::Gift& gift : item.gives)
        gain += std::min(gift.time, lacking[gift.need]);
      most.gain = std::max(most.gain, gain);
      most.time = std::min(most.time, item.cue / 2 + problem_.settle + item.work);
    }
    return most;
  }

  // Twice what needs and what is still to come cost at the least.
  std::int64_t leastOfNeeds(const Label& label, const Done& done) const {
    std::int64_t least = done.shortBy - static_cast<std::int64_t>(problem_.needs.size());
    std::int64_t left = problem_.most - label.now;
    for (const Gain& each : done.gains) {
      if (each.gain <= 0 || left <= 0)
        break;
      least -= each.time <= left ? each.gain : each.gain * left / each.time + 1;
      left -= each.time;
    }
    return least;
  }

  const FillProblem& problem_;
  std::vector<int> kept_;            // in a row
  std::vector<std::size_t> keptEnd_; // by section
  std::vector<Choosable> choosable_;
  std::vector<char> allowed_, required_; // by family
  std::int64_t best_ = 0, labels_ = 0;
};

} // namespace matwright::test
