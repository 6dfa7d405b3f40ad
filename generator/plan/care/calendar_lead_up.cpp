#include <algorithm>
#include <limits>

#include "plan/care/calendar.h"
#include "plan/care/care.h"

namespace loamsheet {
namespace {

constexpr int no_limit = std::numeric_limits<int>::max() / 2;

bool closed(const Build& build, int day) {
  const auto date = plus_days(build.identity.plant_on, day);
  return build.shop.closed[static_cast<size_t>(weekday(date))];
}

bool leads_up(const CareRule& rule) {
  return rule.from == CareRule::From::planting && rule.on < 0;
}

bool waits_for(const CareRule& rule, const CareRule& other) {
  return std::find(rule.after.begin(), rule.after.end(), other.id) != rule.after.end();
}

// The latest day that leaves those that wait for this task their time.
int latest(const Build& build, size_t at, const std::vector<std::optional<int>>& days) {
  const auto& rules = build.rules.care;
  int day = rules[at].on;
  for (size_t i = 0; i < rules.size(); ++i) {
    if (days[i] && waits_for(rules[i], rules[at])) day = std::min(day, *days[i] - rules[i].gap);
  }
  return day;
}

// Positions of the lead-up's rules, those that wait before those waited for.
class Backwards {
 public:
  explicit Backwards(const std::vector<CareRule>& rules) : rules_(rules), seen_(rules.size()) {}

  std::vector<size_t> order() {
    for (size_t i = 0; i < rules_.size(); ++i) visit(i);
    return std::move(order_);
  }

 private:
  void visit(size_t at) {
    if (seen_[at] || !leads_up(rules_[at])) return;
    seen_[at] = true;
    for (size_t i = 0; i < rules_.size(); ++i) {
      if (waits_for(rules_[i], rules_[at])) visit(i);
    }
    order_.push_back(at);
  }

  const std::vector<CareRule>& rules_;
  std::vector<bool> seen_;
  std::vector<size_t> order_;
};

}  // namespace

int open_day(const Build& build, int day, const Window& window, bool earlier_first) {
  for (const bool earlier : {earlier_first, !earlier_first}) {
    for (int away = 0; away < 7; ++away) {
      const int tried = earlier ? day - away : day + away;
      if (tried >= window.low && tried <= window.high && !closed(build, tried)) return tried;
    }
  }
  return day;
}

std::vector<std::optional<int>> lead_up_days(const Build& build) {
  const auto& rules = build.rules.care;
  std::vector<std::optional<int>> days(rules.size());
  for (size_t at : Backwards(rules).order()) {
    if (!applies(rules[at].when, build)) continue;
    const int day = latest(build, at, days);
    days[at] = rules[at].moves ? open_day(build, day, {-no_limit, day}, true) : day;
  }
  return days;
}

int longest_cure(const Build& build) {
  int days = 0;
  for (const CareRule& rule : build.rules.care) {
    const auto& wanted = rule.when.all;
    const bool curing = std::find(wanted.begin(), wanted.end(), "cures") != wanted.end();
    if (curing && leads_up(rule) && applies(rule.when, build)) days = std::max(days, rule.gap);
  }
  return days;
}

}  // namespace loamsheet
