#include "layout/paginate.h"

namespace loamsheet {
namespace {

constexpr double hair = 1e-6;  // points

double head_height(const Flow& flow, int head) {
  return head < 0 ? 0 : flow.heads[static_cast<size_t>(head)].height;
}

// How far down the page each band ends, for as many as fit on a page that starts with `from`.
std::vector<double> fitting_ends(const Flow& flow, size_t from, double height) {
  std::vector<double> ends;
  double used = head_height(flow, flow.bands[from].head);
  for (size_t i = from; i < flow.bands.size(); ++i) {
    used += flow.bands[i].height + (i > from ? flow.bands[i].space : 0);
    if (used > height + hair) break;
    ends.push_back(used);
  }
  return ends;
}

// What it is worth to keep a band with the one before it, as a share of a page left blank.
double worth(Keep keep) {
  switch (keep) {
    case Keep::free:
      return 0;
    case Keep::wish:
      return 0.25;
    case Keep::strong:
      return 0.6;
    case Keep::must:
      break;
  }
  return 2;
}

// The best place for a page break: the band that starts the next page. ends: of fitting_ends.
size_t best_break(const Flow& flow, size_t from, const std::vector<double>& ends, double height) {
  size_t best = from + ends.size();
  double least = worth(flow.bands[best].keep);
  for (size_t count = ends.size() - 1; count > 0; --count) {
    const double blank = (ends.back() - ends[count - 1]) / height;
    const double cost = worth(flow.bands[from + count].keep) + blank;
    if (cost < least) {
      least = cost;
      best = from + count;
    }
  }
  return best;
}

}  // namespace

std::vector<Slice> paginate(const Flow& flow, double height, Sink& sink) {
  std::vector<Slice> pages;
  for (size_t from = 0; from < flow.bands.size();) {
    const auto ends = fitting_ends(flow, from, height);
    size_t to = from + ends.size();
    if (ends.empty()) {
      Diagnostic too_high;
      too_high.message = "a block is higher than a page";
      too_high.fault = Fault::internal;
      sink.add(std::move(too_high));
      ++to;
    } else if (to < flow.bands.size()) {
      to = best_break(flow, from, ends, height);
    }
    pages.push_back({from, to, flow.bands[from].head});
    from = to;
  }
  return pages;
}

}  // namespace loamsheet
