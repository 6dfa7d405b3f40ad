// climate_builds: builds that between them break every rule of heat, humidity, UV and lamps.
#pragma once
#include <vector>

#include "builds.h"

namespace loamsheet::tests {

inline Lamp uv_lamp(double index) {
  Lamp lamp;
  lamp.kind = "uv-spot";
  lamp.id = "uv";
  lamp.at = {450, 225, 550};
  lamp.power = 70, lamp.hours = 10;
  if (index > 0) lamp.uv_index = {{300_mm, index}};
  return lamp;
}

inline KeptAnimal dragon() {
  KeptAnimal animal;
  animal.facts.name = "bearded dragon";
  animal.facts.day = Fact<Range<Celsius>>{{{24}, {27}}, {"common practice"}};
  animal.facts.night = Fact<Range<Celsius>>{{{21}, {24}}, {"common practice"}};
  animal.facts.humidity = Fact<Range<Fraction>>{{{0.45}, {0.50}}, {"common practice"}};
  animal.facts.uv_zone = Fact<Range<double>>{{3, 3}, {"from memory"}};
  animal.where = place(60, 5);
  return animal;
}

inline Build room_of(double celsius, double humidity) {
  Build build = box_build();
  build.kept.push_back(dragon());
  build.room.temperature.range = {{celsius}, {celsius}};
  build.room.humidity.range = {{humidity}, {humidity}};
  build.room.stated = true;
  Opening lid = opening("lid", Opening::Where::top, 0_mm);
  lid.lower_edge.reset();
  lid.gross = lid.free = {0.4};
  build.enclosure.openings.push_back(lid);
  return build;
}

// Cold and damp: a weak heater without a thermostat, a UV lamp without a table, one without flux.
inline Build cold_cellar() {
  Build build = room_of(10, 0.95);
  build.heaters.push_back({"panel", 5, false, place(51, 5)});
  build.lamps = {uv_lamp(0), uv_lamp(0)};
  build.lamps[1].kind = "bar";
  return build;
}

// Hot and dry: a UV lamp that is too strong.
inline Build hot_attic() {
  Build build = room_of(38, 0.05);
  build.kind = BuildKind::arid;
  build.lamps = {uv_lamp(30)};
  return build;
}

// Under a UV lamp so strong.
inline Build under_uv(double index) {
  Build build = room_of(25, 0.5);
  build.lamps = {uv_lamp(index)};
  return build;
}

// A plant under a lamp, and the light that it wants.
inline Build lit_plant(Range<double> ppfd) {
  Build build = room_of(25, 0.5);
  Lamp lamp = uv_lamp(0);
  lamp.kind = "bar", lamp.id = "day", lamp.length = 400_mm;
  lamp.flux = 3000, lamp.photons_per_lux = 0.015;
  build.lamps = {lamp};
  PlantUse plant;
  plant.number = 1, plant.facts.id = plant.facts.name = "fern";
  plant.ppfd = ppfd, plant.pinned = Point{450, 225};
  build.plants = {plant};
  return build;
}

inline std::vector<Build> climate_broken() {
  return {cold_cellar(),          hot_attic(),      room_of(25, 0.5), under_uv(0.05), under_uv(200),
          lit_plant({900, 2000}), lit_plant({1, 5})};
}

}  // namespace loamsheet::tests
