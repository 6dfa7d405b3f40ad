// lamp_mend: the cheapest change of one lamp under which something that was missed is kept.
#pragma once
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "base/finding.h"
#include "check/build.h"

namespace loamsheet {

using Lamps = std::vector<Lamp>;

struct LampMend {
  enum class Kind {
    run_longer,
    run_shorter,
    hang_lower,
    hang_higher,
    move_left,
    move_right,
    move_forward,
    move_back,
    stronger,
    weaker
  } kind;
  size_t lamp = 0;
  double by = 0;  // hours, millimetres, or how many times as strong
};

// What may be changed, cheapest first, and whether a lamp counts.
struct MendWish {
  std::vector<LampMend::Kind> kinds;
  std::function<bool(const Lamp&)> counts;
  std::function<bool(const Lamps&)> holds;
};

// The first kind of change that works for a lamp, by no more than it takes; of several lamps the
// one that needs least. Found by steps, then by halving the last step.
std::optional<LampMend> least_mend(const Build&, const MendWish&);

Lamps mended(Lamps, const LampMend&);

// The change as numbers for a sentence: its name, the lamp, by how much, and what is reached.
Args mend_args(const LampMend&, const Lamps&);

}  // namespace loamsheet
