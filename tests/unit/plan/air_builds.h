// air_builds: builds whose air, water and heat miss what lives in them.
#pragma once
#include <string>
#include <vector>

#include "climate_builds.h"

namespace loamsheet::tests {

// A warm room, a strong heater on a thermostat, an animal that dies above so many degrees.
inline Build stuck(double warmest, const std::string& origin) {
  Build build = room_of(26, 0.5);
  build.heaters.push_back({"panel", 150, true, place(51, 5)});
  build.kept.front().facts.warmest = Fact<Celsius>{{warmest}, {origin}};
  return build;
}

// A room of unsure humidity, and an animal that wants so much.
inline Build with_band(double low, double high) {
  Build build = room_of(25, 0.5);
  build.room.humidity.range = {{0.3}, {0.7}};
  build.kept.front().facts.humidity = Fact<Range<Fraction>>{{{low}, {high}}, {"common practice"}};
  return build;
}

inline Misting nozzles() {
  Misting mister;
  mister.nozzles = 2;
  mister.flow.range = {{0.09}, {0.09}};
  return mister;
}

inline Build fogged() {
  Build build = box_build();
  build.misting = nozzles();
  build.misting->fogger = true;
  return build;
}

// Hard water that nothing lets out again.
inline Build gathering() {
  Build build = room_of(25, 0.4);
  build.misting = nozzles();
  build.water_source = "tap";
  build.layers.drainage.outlet = "none";
  return build;
}

// A deep substrate that goes in dry: much runs through it as it is watered in.
inline Build sodden() {
  Build build = gathering();
  build.layers.substrate.front = build.layers.substrate.back = 900_mm;
  for (SubstratePart& part : build.layers.substrate.parts) {
    part.bulk.moisture_as_placed.range = {{0.01}, {0.01}};
  }
  return build;
}

// A plant that wants cool and damp air, in a hot and dry room.
inline Build wilting() {
  Build build = hot_attic();
  PlantUse plant;
  plant.number = 1, plant.facts.id = plant.facts.name = "fern";
  plant.facts.warmest = Fact<Celsius>{{20}, {"common practice"}};
  plant.facts.humidity = Fact<Fraction>{{0.9}, {"common practice"}};
  build.plants = {plant};
  return build;
}

inline std::vector<Build> air_broken() {
  return {stuck(28, "common practice"),
          with_band(0.58, 0.60),
          fogged(),
          gathering(),
          sodden(),
          wilting()};
}

}  // namespace loamsheet::tests
