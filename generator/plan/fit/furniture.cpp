#include <algorithm>
#include <cmath>

#include "plan/fit/body.h"
#include "plan/fit/constants.h"
#include "plan/fit/fit.h"
#include "plan/fit/grounds.h"
#include "plan/light/vectors.h"

namespace loamsheet {
namespace {

using namespace constants;

Finding about(const KeptAnimal& animal, Weight weight, const char* rule) {
  return {weight, rule, animal.where, {{"animal", animal.facts.name}}};
}

bool on_ground(const KeptAnimal& animal) {
  const auto& lifestyle = animal.facts.lifestyle;
  return lifestyle && (lifestyle->value == "terrestrial" || lifestyle->value == "fossorial");
}

bool is_hide(const Furnishing& thing) {
  return thing.kind->shelters;
}

const Lamp* heat_lamp(const Build& build) {
  const auto found = std::find_if(build.lamps.begin(), build.lamps.end(),
                                  [](const Lamp& lamp) { return lamp.kind->warms_a_place; });
  return found == build.lamps.end() ? nullptr : &*found;
}

bool warms_from_above(const Heater& heater) {
  return !heater.kind->from_below;
}

bool hide_in_half(const Build& build, bool right) {
  const double middle = build.enclosure.width.v / 2;
  return std::any_of(build.furnishings.begin(), build.furnishings.end(), [&](const Furnishing& f) {
    return is_hide(f) && (right ? f.at.x >= middle : f.at.x < middle);
  });
}

// Ground animals hide; those that bask choose between a warm and a cool hide.
Found hides(const Build& build, const KeptAnimal& animal) {
  if (!on_ground(animal)) return {};
  if (std::none_of(build.furnishings.begin(), build.furnishings.end(), is_hide)) {
    return {about(animal, Weight::caution, "hide-missing")};
  }
  const Lamp* lamp = heat_lamp(build);
  if (!animal.facts.basking || !lamp) return {};
  const bool right = lamp->at.x >= build.enclosure.width.v / 2;
  if (!hide_in_half(build, right)) return {about(animal, Weight::caution, "warm-hide-missing")};
  if (!hide_in_half(build, !right)) return {about(animal, Weight::caution, "cool-hide-missing")};
  return {};
}

// From a place on the floor to the nearest of a thing, seen from above.
double distance(const Furnishing& thing, Point p) {
  if (!thing.kind->spans()) {
    const double half = std::max({thing.width.v, thing.depth.v, thing.diameter.v}) / 2;
    return std::max(0.0, std::hypot(thing.at.x - p.x, thing.at.y - p.y) - half);
  }
  return distance(flat(p), flat(thing.from), flat(thing.to));
}

Found basking(const Build& build, const KeptAnimal& animal) {
  if (!animal.facts.basking) return {};
  const Lamp* lamp = heat_lamp(build);
  if (!lamp && std::any_of(build.heaters.begin(), build.heaters.end(), warms_from_above)) return {};
  const auto lies_under = [&](const Furnishing& thing) {
    return thing.kind->lain_on && distance(thing, {lamp->at.x, lamp->at.y}) <= under_lamp.v;
  };
  const bool place =
      lamp && std::any_of(build.furnishings.begin(), build.furnishings.end(), lies_under);
  if (place) return {};
  Finding found =
      about(animal, Weight::caution, lamp ? "basking-place-missing" : "basking-heat-missing");
  found.args.emplace_back("basking", animal.facts.basking->value);
  found.args.emplace_back("source", sources_of(build, {animal.facts.basking->origin}));
  return {std::move(found)};
}

// Something to climb out by stands in the water.
bool has_way_out(const Build& build, const Furnishing& bowl) {
  return std::any_of(build.furnishings.begin(), build.furnishings.end(), [&](const Furnishing& f) {
    const bool hangs = f.kind->form == FurnishingKind::Form::board;
    return f.kind->leads_out && !hangs &&
           distance(f, {bowl.at.x, bowl.at.y}) <= bowl.diameter.v / 2;
  });
}

bool swims(const KeptAnimal& animal) {
  return animal.facts.water && animal.facts.water->value == "swim";
}

Found drowns(const Build& build, const Furnishing& bowl, const KeptAnimal& animal) {
  const auto length = smallest_length(animal);
  if (!length || swims(animal)) return {};
  const bool soaks = animal.facts.water && animal.facts.water->value == "soak";
  const Millimetres deepest = *length * (soaks ? soaks_in_water.v : stands_in_water.v);
  if (bowl.depth <= deepest || has_way_out(build, bowl)) return {};
  return {{Weight::caution,
           "bowl-too-deep",
           bowl.where,
           {{"animal", animal.facts.name}, {"depth", bowl.depth}, {"length", *length}}}};
}

Found bowls(const Build& build) {
  Found all;
  for (const Furnishing& bowl : build.furnishings) {
    if (!bowl.kind->holds_water) continue;
    for (const KeptAnimal& animal : build.kept) append(all, drowns(build, bowl, animal));
    const bool insects = std::any_of(build.kept.begin(), build.kept.end(), eats_insects);
    if (!insects || bowl.depth <= drowns_insects || has_way_out(build, bowl)) continue;
    all.push_back({Weight::note, "feeders-drown", bowl.where, {{"depth", bowl.depth}}});
  }
  return all;
}

// A bank alone is steep: something must lead out of the water area.
bool leads_out(const Build& build, const Furnishing& thing) {
  const double wide = build.enclosure.width.v * build.water_area->floor.v;
  const bool left = build.water_area->side == WaterArea::Side::left;
  const auto wet = [&](double x) { return left ? x <= wide : x >= build.enclosure.width.v - wide; };
  if (!thing.kind->leads_out) return false;
  return thing.kind->spans() ? wet(thing.from.x) || wet(thing.to.x) : wet(thing.at.x);
}

Found way_out(const Build& build, const KeptAnimal& animal) {
  if (!build.water_area) return {};
  if (std::any_of(build.furnishings.begin(), build.furnishings.end(),
                  [&](const Furnishing& thing) { return leads_out(build, thing); })) {
    return {};
  }
  Finding found = about(animal, swims(animal) ? Weight::note : Weight::caution, "way-out-missing");
  found.args.emplace_back("depth", build.water_area->depth);
  return {std::move(found)};
}

Found laying(const Build& build, const KeptAnimal& animal) {
  const auto& lays = animal.facts.lays;
  if (!lays || lays->value != "soil") return {};
  const auto& things = build.furnishings;
  const bool box = std::any_of(things.begin(), things.end(),
                               [](const Furnishing& f) { return f.kind->laid_in; });
  const Millimetres soil = std::max(build.layers.substrate.front, build.layers.substrate.back);
  if (box || (!is_dry(build.kind) && soil >= laying_depth)) return {};
  Finding found =
      about(animal, animal.count > 1 ? Weight::caution : Weight::note, "laying-box-missing");
  found.args.emplace_back("depth", laying_depth);
  found.args.emplace_back("source", sources_of(build, {lays->origin}));
  return {std::move(found)};
}

// What digs away from heat digs towards this one.
Found over_heat(const Build& build, const KeptAnimal& animal) {
  Found all;
  if (!holds(animal.facts.digs)) return all;
  for (const Heater& heater : build.heaters) {
    if (warms_from_above(heater)) continue;
    all.push_back(
        {Weight::caution,
         "heat-under-digger",
         heater.where,
         {{"animal", animal.facts.name}, {"power", static_cast<int>(std::lround(heater.power))}}});
  }
  return all;
}

// A stone so heavy stops the build; the rules of heavy goods speak of it.
bool heavy(const Standing& stone) {
  return stone.mass && *stone.mass >= heavy_stone_digging;
}

// What digs under a stone brings it down on itself.
Found undermined(const Build& build, const KeptAnimal& animal) {
  Found all;
  if (!holds(animal.facts.digs)) return all;
  for (const Furnishing& stone : build.furnishings) {
    const auto& standing = build.standing;
    const bool loose = std::any_of(standing.begin(), standing.end(), [&](const Standing& s) {
      return s.id == stone.id && !s.on_base && !heavy(s);
    });
    if (!stone.kind->loose_weight || !loose) continue;
    all.push_back({Weight::caution,
                   "stone-undermined",
                   stone.where,
                   {{"animal", animal.facts.name}, {"thing", stone.id}}});
  }
  return all;
}

}  // namespace

Found furniture_fit(const Build& build) {
  Found all;
  for (const KeptAnimal& animal : build.kept) {
    for (const auto rule : {hides, basking, way_out, laying, over_heat, undermined})
      append(all, rule(build, animal));
  }
  append(all, bowls(build));
  return all;
}

}  // namespace loamsheet
