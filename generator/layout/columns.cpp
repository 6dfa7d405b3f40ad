#include "layout/columns.h"

#include <algorithm>
#include <numeric>

namespace loamsheet {
namespace {

using Widths = std::vector<double>;

double sum(const Widths& w) {
  return std::accumulate(w.begin(), w.end(), 0.0);
}

// base + spare, shared by the shares (which may all be zero: then nothing is added).
Widths shared(Widths base, double spare, const Widths& shares) {
  const double all = sum(shares);
  if (all <= 0) return base;
  for (size_t i = 0; i < base.size(); ++i) base[i] += spare * shares[i] / all;
  return base;
}

// The widest columns cut to one common width, so that all together are `width`.
Widths levelled(const Widths& least, double width) {
  Widths sorted = least;
  std::sort(sorted.begin(), sorted.end());
  double left = width;
  size_t count = sorted.size();
  for (double w : sorted) {
    if (w * static_cast<double>(count) >= left) break;
    left -= w;
    --count;
  }
  const double level = count > 0 ? left / static_cast<double>(count) : 0;
  Widths out;
  for (double w : least) out.push_back(std::min(w, level));
  return out;
}

}  // namespace

std::optional<Widths> column_widths(const std::vector<ColumnNeed>& columns, double width,
                                    double floor) {
  Widths least, most, extra, weights;
  for (const ColumnNeed& c : columns) {
    least.push_back(std::max(c.need.least, floor));
    most.push_back(std::max(c.need.most, floor));
    extra.push_back(most.back() - least.back());
    weights.push_back(c.weight);
  }
  if (sum(most) <= width) return shared(most, width - sum(most), weights);
  if (sum(least) <= width) return shared(least, width - sum(least), extra);
  if (floor * static_cast<double>(columns.size()) > width) return std::nullopt;
  return levelled(least, width);
}

Widths regiven_widths(const std::vector<ColumnNeed>& columns, double width) {
  Widths widths;
  for (const ColumnNeed& c : columns) widths.push_back(c.need.least);
  std::vector<size_t> order(columns.size());
  std::iota(order.begin(), order.end(), 0);
  auto want = [&](size_t i) { return columns[i].need.most - columns[i].need.least; };
  std::stable_sort(order.begin(), order.end(),
                   [&](size_t a, size_t b) { return want(a) < want(b); });
  double spare = std::max(0.0, width - sum(widths));
  for (size_t i : order) {
    const double given = std::min(spare, want(i));
    widths[i] += given;
    spare -= given;
  }
  return widths;
}

}  // namespace loamsheet
