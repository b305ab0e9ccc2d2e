#include "ui/timeline/TimeScale.h"

#include <array>
#include <cmath>

namespace matwright {

TimeScale::TimeScale(double pixelsPerSecond, std::vector<Pad> pads)
    : pixelsPerSecond_(pixelsPerSecond), pads_(std::move(pads)) {}

qreal TimeScale::xOf(Seconds at) const {
  qreal x = at.value() * pixelsPerSecond_;
  for (const Pad& pad : pads_)
    if (pad.at <= at)
      x += pad.width;
  return x;
}

qreal TimeScale::xBefore(Seconds at) const {
  qreal x = at.value() * pixelsPerSecond_;
  for (const Pad& pad : pads_)
    if (pad.at < at)
      x += pad.width;
  return x;
}

qreal TimeScale::xOfPad(std::size_t pad) const {
  qreal x = pads_[pad].at.value() * pixelsPerSecond_;
  for (std::size_t i = 0; i < pad; ++i)
    x += pads_[i].width;
  return x;
}

Seconds TimeScale::timeOf(qreal x) const {
  qreal before = 0;
  for (const Pad& pad : pads_) {
    const qreal left = pad.at.value() * pixelsPerSecond_ + before;
    if (x < left)
      break;
    if (x < left + pad.width)
      return pad.at;
    before += pad.width;
  }
  return Seconds((x - before) / pixelsPerSecond_);
}

bool TimeScale::isInPad(qreal x) const {
  for (std::size_t i = 0; i < pads_.size(); ++i) {
    const qreal left = xOfPad(i);
    if (x >= left && x < left + pads_[i].width)
      return true;
  }
  return false;
}

std::vector<Tick> ticksOf(const TimeScale& scale, Seconds until, qreal spacing) {
  struct Division {
    int major, minor; // seconds
  };
  constexpr std::array<Division, 12> divisions{{{5, 1},
                                                {10, 5},
                                                {15, 5},
                                                {30, 10},
                                                {60, 15},
                                                {120, 30},
                                                {300, 60},
                                                {600, 120},
                                                {900, 300},
                                                {1800, 600},
                                                {3600, 900},
                                                {7200, 1800}}};
  Division division = divisions.back();
  for (const Division& candidate : divisions)
    if (candidate.major * scale.pixelsPerSecond() >= spacing) {
      division = candidate;
      break;
    }
  std::vector<Tick> ticks;
  const int last = static_cast<int>(std::floor(until.value()));
  for (int at = 0; at <= last; at += division.minor) {
    const Seconds moment(at);
    ticks.push_back({moment, scale.xOf(moment), at % division.major == 0});
  }
  return ticks;
}

} // namespace matwright
