// spread: pool adjacent violators (Barlow, Bartholomew, Bremner and Brunk, 1972) on the tops of
// runs of pieces.
#include <algorithm>

#include "figure/labels.h"

namespace loamsheet {
namespace {

// Pieces that touch and move as one. A run's best top is the mean of what its pieces want.
struct Run {
  double top_sum;
  int count;
  double height;
  double top(const LabelLimits& l) const {
    return std::min(std::max(top_sum / count, l.bottom + height), l.top);
  }
};

Run joined(const Run& upper, const Run& lower, double gap) {
  const double down = upper.height + gap;
  return {upper.top_sum + lower.top_sum + lower.count * down, upper.count + lower.count,
          down + lower.height};
}

bool too_near(const Run& upper, const Run& lower, double gap, const LabelLimits& limits) {
  return upper.top(limits) - upper.height - gap < lower.top(limits);
}

std::vector<Run> pooled(const std::vector<LabelPiece>& pieces, double gap,
                        const LabelLimits& limits) {
  std::vector<Run> runs;
  for (const LabelPiece& p : pieces) {
    Run last{p.wanted + p.height / 2, 1, p.height};
    while (!runs.empty() && too_near(runs.back(), last, gap, limits)) {
      last = joined(runs.back(), last, gap);
      runs.pop_back();
    }
    runs.push_back(last);
  }
  return runs;
}

}  // namespace

std::vector<double> spread(const std::vector<LabelPiece>& pieces, double gap,
                           const LabelLimits& limits) {
  std::vector<double> centres;
  for (const Run& run : pooled(pieces, gap, limits)) {
    double top = run.top(limits);
    for (int i = 0; i < run.count; ++i) {
      const double height = pieces[centres.size()].height;
      centres.push_back(top - height / 2);
      top -= height + gap;
    }
  }
  return centres;
}

}  // namespace loamsheet
