#include "base/text.h"
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

std::string argument(const std::string& text) {
  return text;
}
std::string argument(int count) {
  return std::to_string(count);
}

template <class T>
std::string argument(const T& amount) {
  return number(amount);
}

std::string finding(const Finding& f) {
  constexpr std::string_view names[] = {"stop", "caution", "note"};
  std::string out = std::string(names[static_cast<int>(f.weight)]) + ' ' + f.rule + ' ' +
                    std::to_string(f.where.line) + ':' + std::to_string(f.where.column);
  for (const auto& [slot, value] : f.args)
    out += ' ' + slot + '=' + std::visit([](const auto& v) { return argument(v); }, value);
  return out + '\n';
}

}  // namespace

std::string dump(const Plan& plan) {
  std::string out = head(plan) + layers(plan.layers) + mass_and_water(plan.mass, plan.water);
  for (const PullItem& item : plan.pull_list) {
    out += "pull " + item.item + ' ' + number(item.need) + ' ' + item.unit + '\n';
  }
  out += ready(plan.ready);
  for (const Finding& f : plan.findings) out += finding(f);
  return out;
}

}  // namespace loamsheet
