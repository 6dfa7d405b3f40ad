#include "layout/paginate.h"

namespace loamsheet {
namespace {

constexpr double hair = 1e-6;  // points

double head_height(const Flow& flow, int head) {
  return head < 0 ? 0 : flow.heads[static_cast<size_t>(head)].height;
}

// The band after the last that fits on a page that starts with band `from`.
size_t fitting_end(const Flow& flow, size_t from, double height) {
  double used = head_height(flow, flow.bands[from].head);
  size_t to = from;
  for (; to < flow.bands.size(); ++to) {
    used += flow.bands[to].height + (to > from ? flow.bands[to].space : 0);
    if (used > height + hair) break;
  }
  return to;
}

// The best place for a page break in (from, end]: `end` must start a band.
size_t best_break(const std::vector<Band>& bands, size_t from, size_t end) {
  size_t best = end;
  for (size_t i = end; i > from; --i) {
    if (bands[i].keep < bands[best].keep) best = i;
  }
  return best;
}

}  // namespace

std::vector<Slice> paginate(const Flow& flow, double height, Sink& sink) {
  std::vector<Slice> pages;
  for (size_t from = 0; from < flow.bands.size();) {
    size_t to = fitting_end(flow, from, height);
    if (to == from) {
      Diagnostic too_high;
      too_high.message = "a block is higher than a page";
      too_high.fault = Fault::internal;
      sink.add(std::move(too_high));
      ++to;
    }
    if (to < flow.bands.size()) to = best_break(flow.bands, from, to);
    pages.push_back({from, to, flow.bands[from].head});
    from = to;
  }
  return pages;
}

}  // namespace loamsheet
