#pragma once

#include "core/units/Units.h"

#include <QtGlobal>
#include <vector>

namespace matwright {

// Where the moments of a class stand along the view. Linear, except that an empty section, which takes no time, is
// given a width of its own at its moment so that something can be dropped into it: a pad.
class TimeScale {
public:
  struct Pad {
    Seconds at;
    qreal width = 0;
    friend bool operator==(const Pad&, const Pad&) = default;
  };

  TimeScale() = default;
  // Pads in order of time; pixelsPerSecond above 0.
  explicit TimeScale(double pixelsPerSecond, std::vector<Pad> pads = {});

  double pixelsPerSecond() const { return pixelsPerSecond_; }
  const std::vector<Pad>& pads() const { return pads_; }

  qreal xOf(Seconds at) const;         // behind the pads of that moment
  qreal xBefore(Seconds at) const;     // in front of them
  qreal xOfPad(std::size_t pad) const; // its left edge
  // The moment at `x`; anywhere within a pad, the pad's moment. Negative left of the beginning.
  Seconds timeOf(qreal x) const;
  bool isInPad(qreal x) const;

private:
  double pixelsPerSecond_ = 1;
  std::vector<Pad> pads_;
};

// Moments marked on the ruler.
struct Tick {
  Seconds at;
  qreal x = 0;
  bool major = false; // carries its time
  friend bool operator==(const Tick&, const Tick&) = default;
};

// From 0 to `until`, both within; major ticks are at least `spacing` apart and fall on round times.
std::vector<Tick> ticksOf(const TimeScale& scale, Seconds until, qreal spacing);

} // namespace matwright
