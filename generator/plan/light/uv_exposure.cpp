#include "plan/light/uv_exposure.h"
#include "plan/light/constants.h"

#include <algorithm>

namespace loamsheet {
namespace {

constexpr int places = 24;               // along the gradient
constexpr double up_in_trees = 2.0 / 3;  // of the height; common practice

bool in_trees(const Animal& animal) {
  return animal.lifestyle && animal.lifestyle->value == "arboreal";
}

Position back_at(const Build& build, const UvField& field, const Animal& animal, Point p) {
  double rest = resting_height(build, field.solids(), p).v;
  if (in_trees(animal)) rest = std::max(rest, build.enclosure.height.v * up_in_trees);
  return {p.x, p.y, rest + constants::back_height.v};
}

const Furnishing* basking_spot(const Build& build) {
  const auto& all = build.furnishings;
  const auto found =
      std::find_if(all.begin(), all.end(), [](const Furnishing& f) { return f.kind->basked_on; });
  return found == all.end() ? nullptr : &*found;
}

// From one side of the tank to the other through the basking place.
Range<double> along(const Build& build, const UvField& field, const UvPlan& plan) {
  const Box box = extent(build.enclosure.footprint);
  Range<double> gradient{plan.basking, plan.basking};
  for (int i = 0; i < places; ++i) {
    const Point p{box.left + box.width() * (i + 0.5) / places, plan.back.y};
    if (!contains(build.enclosure.footprint, p)) continue;
    const double index = field.at(back_at(build, field, build.kept[plan.animal].facts, p));
    gradient.low = std::min(gradient.low, index), gradient.high = std::max(gradient.high, index);
  }
  return gradient;
}

}  // namespace

bool is_uv(const Lamp& lamp) {
  return lamp.kind->uv || !lamp.uv_index.empty();
}

bool has_uv_zone(const Animal& animal) {
  return animal.uv_zone && animal.uv_zone->value.low >= 1 && animal.uv_zone->value.high <= 4;
}

Position basking_back(const Build& build, const UvField& field, const Animal& animal) {
  if (const Furnishing* spot = basking_spot(build)) {
    Position back = back_at(build, field, animal, {spot->at.x, spot->at.y});
    if (spot->at.z > 0) back.z = spot->at.z + constants::back_height.v;
    return back;
  }
  Position best;
  double most = -1;
  for (const Lamp& lamp : field.lamps()) {
    if (!is_uv(lamp)) continue;
    const Position back = back_at(build, field, animal, {lamp.at.x, lamp.at.y});
    if (const double index = field.at(back); index > most) best = back, most = index;
  }
  return best;
}

UvPlan uv_exposure(const Build& build, const UvField& field, size_t animal) {
  const Animal& facts = build.kept[animal].facts;
  UvPlan plan;
  plan.animal = animal;
  plan.zone = {static_cast<int>(facts.uv_zone->value.low),
               static_cast<int>(facts.uv_zone->value.high)};
  plan.mean = {constants::zone_mean[plan.zone.low - 1].low,
               constants::zone_mean[plan.zone.high - 1].high};
  plan.most = constants::zone_highest[plan.zone.low - 1];
  plan.back = basking_back(build, field, facts);
  plan.basking = field.at(plan.back);
  plan.gradient = along(build, field, plan);
  return plan;
}

std::vector<UvPlan> uv_plans(const Build& build) {
  std::vector<UvPlan> all;
  if (std::none_of(build.lamps.begin(), build.lamps.end(), is_uv)) return all;
  const UvField field(build);
  for (size_t i = 0; i < build.kept.size(); ++i) {
    if (has_uv_zone(build.kept[i].facts)) all.push_back(uv_exposure(build, field, i));
  }
  return all;
}

}  // namespace loamsheet
