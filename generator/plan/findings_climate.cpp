#include <algorithm>

#include "plan/climate_constants.h"
#include "plan/findings_air.h"

namespace loamsheet {
namespace {

bool is_uv(const Lamp& lamp) {
  return lamp.kind == Lamp::Kind::uv_bar || lamp.kind == Lamp::Kind::uv_spot;
}

Found lamps(const Build& build) {
  Found all;
  for (const Lamp& lamp : build.lamps) {
    if (is_uv(lamp) && lamp.uv_index.empty()) {
      all.push_back({Weight::caution, "lamp-without-table", lamp.where, {{"lamp", lamp.id}}});
    } else if (!is_uv(lamp) && lamp.flux <= 0) {
      all.push_back({Weight::caution, "lamp-without-flux", lamp.where, {{"lamp", lamp.id}}});
    }
  }
  return all;
}

// The strongest UV index that an animal's back meets right under a lamp: on the floor, or, for one
// that climbs, at two thirds of the height.
double strongest_uv(const Build& build, const Plan& plan, const Animal& animal) {
  const Profile& ground = plan.layers.profile;
  const bool climbs = animal.lifestyle && animal.lifestyle->value == "arboreal";
  double strongest = 0;
  for (const Lamp& lamp : build.lamps) {
    const double back_share = lamp.at.y / build.enclosure.depth.v;
    const double floor =
        ground.litter_front.v + back_share * (ground.litter_back.v - ground.litter_front.v);
    const double rest = climbs ? build.enclosure.height.v * 2 / 3 : floor;
    const Position back{lamp.at.x, lamp.at.y, rest + constants::back_height.v};
    strongest = std::max(strongest, uv_index_at(build, back).value_or(0));
  }
  return strongest;
}

Found uv(const Build& build, const Plan& plan, const KeptAnimal& animal) {
  if (!animal.facts.uv_zone) return {};
  const int zone = static_cast<int>(animal.facts.uv_zone->value.low);
  if (zone < 1 || zone > 4) return {};
  const bool lit = std::any_of(build.lamps.begin(), build.lamps.end(),
                               [](const Lamp& l) { return is_uv(l) || !l.uv_index.empty(); });
  const std::pair<std::string, FindingArg> name{"animal", animal.facts.name}, in{"zone", zone};
  if (!lit && zone < 2) return {};
  if (!lit) return {{Weight::caution, "uv-missing", animal.where, {name, in}}};
  Found all;
  const double index = strongest_uv(build, plan, animal.facts);
  const double most = constants::zone_highest[zone - 1];
  if (index > most) {
    all.push_back({index >= constants::extreme_uv ? Weight::stop : Weight::caution,
                   "uv-too-strong",
                   animal.where,
                   {name, in, {"index", index}, {"most", most}}});
  }
  if (zone >= 3) all.push_back({Weight::note, "uv-meter-reading", animal.where, {name, in}});
  return all;
}

}  // namespace

Found climate_findings(const Build& build, const Plan& plan) {
  Found all = lamps(build);
  for (const KeptAnimal& animal : build.kept) {
    append(all, uv(build, plan, animal));
    if (!plan.air) continue;
    append(all, air_findings(build, *plan.air, animal));
  }
  if (plan.air) append(all, planted_air_findings(build, *plan.air));
  if (plan.air && plan.heat) append(all, heat_findings(build, *plan.heat, *plan.air));
  return all;
}

}  // namespace loamsheet
