#include "base/text.h"
#include "plan/air/dump_climate.h"
#include "plan/dump_goods.h"
#include "plan/place/dump_places.h"
#include "plan/plan.h"

namespace loamsheet {
namespace {

std::string number(double v) {
  return fixed(v, 3);
}

template <class Unit>
std::string number(Amount<Unit> amount) {
  return number(amount.v);
}

template <class T>
std::string number(const Range<T>& range) {
  return range.exact() ? number(range.low.v) : number(range.low.v) + ".." + number(range.high.v);
}

template <class T>
std::string number(const std::optional<T>& value) {
  return value ? number(*value) : "-";
}

std::string uv_line(const UvPlan& uv) {
  const auto ends = [](const Range<double>& r) { return number(r.low) + ".." + number(r.high); };
  return "uv animal " + std::to_string(uv.animal) + " zone " + std::to_string(uv.zone.low) + ".." +
         std::to_string(uv.zone.high) + " basking " + number(uv.basking) + " of " +
         number(uv.most) + " gradient " + ends(uv.gradient) + " mean " + ends(uv.mean) + '\n';
}

template <class T>
std::string line(std::string_view name, const T& value, std::string_view unit) {
  return "  " + std::string(name) + ' ' + number(value) + ' ' + std::string(unit) + '\n';
}

std::string head(const Plan& plan) {
  constexpr std::string_view names[] = {"cleared", "provisional", "not-cleared"};
  return "plan v1\nstatus " + std::string(names[static_cast<int>(plan.status)]) + "\nfootprint\n" +
         line("area", plan.footprint_area, "m2") +
         line("perimeter", plan.footprint_perimeter, "mm");
}

std::string drainage(const DrainagePlan& layer) {
  return "drainage\n" + line("volume", layer.volume, "L") + line("buy", layer.buy, "L") +
         line("dry", layer.dry, "kg") + line("voids", layer.voids, "L");
}

std::string separator(const SeparatorPlan& layer) {
  return "separator\n" + line("area", layer.area, "m2") + line("width", layer.cut_width, "mm") +
         line("depth", layer.cut_depth, "mm");
}

// Substrate, one of its parts, or litter: they hold the same numbers.
template <class Layer>
std::string bulk(const std::string& name, const Layer& layer) {
  return name + '\n' + line("volume", layer.volume, "L") + line("buy", layer.buy, "L") +
         line("dry", layer.dry, "kg");
}

std::string profile(const Profile& p) {
  return "profile\n" + line("drainage", p.drainage_top, "mm") +
         line("substrate-front", p.substrate_front, "mm") +
         line("substrate-back", p.substrate_back, "mm") +
         line("litter-front", p.litter_front, "mm") + line("litter-back", p.litter_back, "mm");
}

std::string layers(const LayersPlan& plan) {
  std::string out;
  if (plan.drainage) out += drainage(*plan.drainage);
  if (plan.separator) out += separator(*plan.separator);
  out += bulk("substrate", plan.substrate);
  for (const PartPlan& part : plan.substrate.parts) out += bulk("part " + part.material, part);
  if (plan.litter) out += bulk("litter", *plan.litter);
  if (plan.moss) {
    out += line("moss-area", plan.moss->area, "m2") + line("moss-volume", plan.moss->volume, "L");
  }
  return out + profile(plan.profile);
}

std::string mass_and_water(const MassPlan& mass, const WaterPlan& water) {
  return "mass\n" + line("empty", mass.empty, "kg") + line("dry", mass.dry, "kg") +
         line("wet", mass.wet, "kg") + line("stand-margin", mass.stand_margin, "kg") + "water\n" +
         line("first-watering", water.first_watering, "L") +
         line("standing", water.standing, "mm") +
         line("highest-standing", water.highest_standing, "mm");
}

std::string ready(const Ready& ready) {
  return "ready " + iso(ready.earliest) + " day " + std::to_string(ready.days) + ' ' +
         join(ready.because, " ") + '\n';
}

std::string packs(const PullItem& item) {
  std::string out;
  for (const Pack& pack : item.packs) {
    out += ", " + std::to_string(pack.count) + " x " + number(pack.size);
  }
  if (item.missing > 0) out += ", short of " + number(item.missing);
  if (item.left_over > 0) out += ", left " + number(item.left_over);
  return out + (item.price ? ", price " + whole_decimal(*item.price, 2) : "");
}

std::string lift(const LiftPlan& plan) {
  return "lift\n" + line("limit", plan.limit, "kg") +
         line("index", plan.empty_index, "of the limit") + "  people " +
         std::to_string(plan.people) + (plan.by_hand ? "\n" : " and gear\n");
}

std::string water_day(const WaterDay& d) {
  return "  day " + std::to_string(d.day) + " watered " + number(d.watered) + " mist " +
         number(d.mist) + " = " + std::to_string(d.mistings) + " x " + number(d.each) + " lost " +
         number(d.lost) + " drained " + number(d.drained) + " stored " + number(d.stored) +
         " standing " + number(d.standing) + '\n';
}

std::string upkeep(const UpkeepPlan& plan) {
  std::string out = "upkeep\n" + line("placed", plan.placed, "L") +
                    line("fill-every", plan.fill_every, "days") +
                    line("stuck-on-overflow", plan.stuck_on_overflow, "L");
  for (const WaterDay& day : plan.days) out += water_day(day);
  return out;
}

std::string argument(const std::string& text) {
  return text;
}
std::string argument(int count) {
  return std::to_string(count);
}

std::string argument(Date date) {
  return iso(date);
}

template <class T>
std::string argument(const T& amount) {
  return number(amount);
}

std::string arguments(const Args& args) {
  std::string out;
  for (const auto& [slot, value] : args) {
    out += ' ' + slot + '=' + std::visit([](const auto& v) { return argument(v); }, value);
  }
  return out;
}

std::string order(const std::vector<Step>& steps) {
  std::string out;
  for (const Step& step : steps) {
    out += "step " + std::to_string(step.number) + ' ' + step.task + ' ' + step.group + ' ' +
           std::to_string(step.minutes) + " min after";
    for (int before : step.after) out += ' ' + std::to_string(before);
    out += arguments(step.args) + '\n';
  }
  return out;
}

std::string calendar(const std::vector<CalendarDay>& days) {
  std::string out;
  for (const CalendarDay& day : days) {
    for (const CalendarTask& task : day.tasks) {
      out += "day " + std::to_string(day.day) + ' ' + iso(day.date) + ' ' + task.task;
      if (!task.amount.empty()) out += ' ' + task.amount;
      out += arguments(task.args) + '\n';
    }
  }
  return out;
}

std::string finding(const Finding& f) {
  constexpr std::string_view names[] = {"stop", "caution", "note"};
  std::string out = std::string(names[static_cast<int>(f.weight)]) + ' ' + f.rule + ' ' +
                    std::to_string(f.where.line) + ':' + std::to_string(f.where.column);
  return out + arguments(f.args) + '\n';
}

}  // namespace

std::string dump(const Plan& plan) {
  std::string out = head(plan) + layers(plan.layers) + mass_and_water(plan.mass, plan.water);
  for (const PullItem& item : plan.pull_list) {
    out += "pull " + item.item + ' ' + number(item.need) + ' ' + item.unit + packs(item) + '\n';
  }
  if (!plan.tools.empty()) out += "tools " + join(plan.tools, " ") + '\n';
  out += dump_goods(plan);
  if (plan.air) out += dump(*plan.air);
  if (plan.heat) out += dump(*plan.heat);
  for (const UvPlan& uv : plan.uv) out += uv_line(uv);
  if (plan.lift) out += lift(*plan.lift);
  if (plan.upkeep) out += upkeep(*plan.upkeep);
  if (plan.planting) out += dump(*plan.planting);
  out += ready(plan.ready) + order(plan.order) + calendar(plan.calendar);
  for (const Finding& f : plan.findings) out += finding(f);
  return out;
}

}  // namespace loamsheet
