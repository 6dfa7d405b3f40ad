#include <algorithm>

#include "plan/air/balance.h"
#include "plan/air/constants.h"

namespace loamsheet {
namespace {

double resistance(const Walls& walls) {
  return 2 * constants::still_air_resistance + walls.thickness.v / 1000 / walls.material->conducts;
}

// Walls and what of the top is closed. The floor stands on the stand and is left out.
double panes(const Enclosure& tank) {
  double top = area(tank.footprint).v;
  for (const Opening& o : tank.openings) {
    if (o.at == Opening::Where::top && !o.kind->swings) top -= o.gross.v;
  }
  return perimeter(tank.footprint).v * tank.height.v / 1e6 + std::max(0.0, top);
}

double wet_share(BuildKind kind) {
  if (kind == BuildKind::temperate) return constants::wet_temperate;
  return is_dry(kind) ? constants::wet_arid : constants::wet_humid;
}

double wet_area(const Build& build) {
  const double floor = area(build.enclosure.footprint).v;
  const double water = build.water_area ? build.water_area->floor.v : 0;
  const bool dry_litter = build.layers.litter && !build.misting;
  const double through = dry_litter ? constants::dry_litter_lets_through : 1;
  return floor * (water + (1 - water) * wet_share(build.kind) * through);
}

using Band = Known<Range<Celsius>>;

// What all animals share; nothing when one of them is not known or they share none.
std::optional<Range<Celsius>> shared_band(const Build& build, Band Animal::*which) {
  std::optional<Range<Celsius>> shared;
  for (const KeptAnimal& animal : build.kept) {
    const Band& band = animal.facts.*which;
    if (!band) return std::nullopt;
    const Range<Celsius> more = band->value;
    shared =
        shared ? Range{std::max(shared->low, more.low), std::min(shared->high, more.high)} : more;
  }
  return shared && shared->low <= shared->high ? shared : std::nullopt;
}

// A lamp over the tank warms the room, too.
HeatSource heat_of(const Lamp& lamp, const Enclosure& tank) {
  const bool above = lamp.at.z >= tank.height.v;
  return {lamp.power * (above ? constants::lamp_heat_from_above : 1)};
}

}  // namespace

void set_enclosure(Shell& shell, const Enclosure& tank) {
  shell.openings = vents(tank);
  shell.panes = panes(tank);
  shell.resistance = resistance(tank.walls);
}

Shell tank_of(const Build& build) {
  Shell tank;
  set_enclosure(tank, build.enclosure);
  tank.wet = wet_area(build);
  tank.plants = static_cast<int>(build.plants.size());
  for (const Lamp& lamp : build.lamps) tank.lamps.push_back(heat_of(lamp, build.enclosure));
  for (const Heater& heater : build.heaters) {
    if (heater.thermostat) {
      tank.held += heater.power;
    } else {
      tank.always.push_back({heater.power, heater.cut_out});
    }
  }
  tank.day = shared_band(build, &Animal::day);
  tank.night = shared_band(build, &Animal::night);
  return tank;
}

}  // namespace loamsheet
