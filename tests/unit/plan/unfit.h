// unfit: builds that between them break every rule of animals, their furniture, what they get out
// by, materials and crew.
#pragma once
#include <vector>

#include "living.h"

namespace loamsheet::tests {

inline Known<Range<Millimetres>> millimetres(double low, double high) {
  return known(Range<Millimetres>{{low}, {high}});
}

// A gecko that fits the box: 600 x 450 x 450 mm are its least.
inline KeptAnimal gecko() {
  KeptAnimal kept = animal("gecko", "insectivore");
  Animal& facts = kept.facts;
  facts.name = "gecko";
  facts.length = millimetres(180, 220);
  facts.mass = known(Range<Kilograms>{{0.04}, {0.06}});
  facts.lifestyle = known<std::string>("terrestrial");
  facts.floor_length = millimetres(600, 600);
  facts.floor_width = millimetres(450, 450);
  facts.headroom = millimetres(450, 450);
  facts.society = known<std::string>("group");
  facts.water = known<std::string>("dish");
  facts.body.thickness = known(Fraction{0.05}, "from memory");
  facts.body.skin_takes_up = known(false);
  return kept;
}

inline Furnishing thing(const std::string& kind, Point at) {
  Furnishing thing;
  thing.id = kind, thing.kind = kind;
  thing.at = {at.x, at.y, 0};
  thing.width = thing.depth = thing.diameter = 100_mm;
  thing.where = place(40, 5);
  return thing;
}

inline Lamp heat_lamp(double x) {
  Lamp lamp;
  lamp.kind = "spot";
  lamp.id = "warm";
  lamp.at = {x, 225, 650};
  return lamp;
}

// The box with one gecko, a hide and a measured door: nothing is wrong with it.
inline CrewUse springtails() {
  CrewUse use;
  use.facts.name = "springtails";
  use.where = place(69, 5);
  return use;
}

inline Build gecko_box() {
  Build build = weighed_box();
  build.kept = {gecko()};
  build.enclosure.openings[0].kind = "door";
  build.enclosure.openings[0].gap = 2_mm;
  build.furnishings = {thing("hide", {150, 200})};
  build.crew = {springtails()};
  return build;
}

inline Build with_gecko(void (*change)(KeptAnimal&)) {
  Build build = gecko_box();
  change(build.kept[0]);
  return build;
}

inline HazardousMaterial hazardous_material(const std::string& kind) {
  return {"some-mesh", "separator", {kind, {"common practice"}}, place(31, 5)};
}

inline CrewUse wood_lice() {
  CrewUse use;
  use.facts.name = "wood lice";
  use.facts.harasses = known(true);
  use.where = place(70, 5);
  return use;
}

// Too small a tank in every way in which it can be.
inline std::vector<Build> cramped_builds() {
  std::vector<Build> all(4, gecko_box());
  all[0].kept[0].facts.floor_length = millimetres(1000, 1000);
  all[0].kept[0].facts.floor_width = millimetres(500, 500);
  all[0].kept[0].facts.headroom = millimetres(700, 700);
  all[1].kept[0].facts.floor_length = millimetres(2000, 2000);
  all[1].kept[0].facts.floor_length->origin = {"at-486-2004"};
  all[2].kept[0].count = 7;
  all[3].kept[0].count = 5;
  all[3].layers.substrate.front = all[3].layers.substrate.back = 400_mm;
  return all;
}

inline std::vector<Build> company_builds() {
  std::vector<Build> all(3, gecko_box());
  all[0].kept[0].count = all[1].kept[0].count = 3;
  all[0].kept[0].facts.society = known<std::string>("alone");
  all[1].kept[0].facts.society = known<std::string>("pair");
  all[2].kept.push_back(animal("skink", "insectivore"));
  return all;
}

// No hide; none on the warm, none on the cool side; no heat; nothing under the lamp.
inline std::vector<Build> unfurnished_builds() {
  std::vector<Build> all(4, gecko_box());
  for (Build& build : all) {
    build.kept[0].facts.basking = known(Range<Celsius>{{32}, {34}});
    build.kept[0].facts.lays = known<std::string>("soil");
  }
  all[0].furnishings = {bowl({450, 225, 0})};
  all[0].furnishings[0].depth = 150_mm;
  all[0].water_area = WaterArea{WaterArea::Side::left, {0.3}, 100_mm};
  all[1].furnishings.push_back(thing("stone", {400, 200}));
  all[1].standing.push_back(block({700, 200}, {0.01}, 100_mm));
  all[1].standing.back().id = "stone";
  all[1].standing.back().mass = 0.5_kg;
  all[1].standing.back().on_base = false;
  all[1].kept[0].facts.digs = known(true);
  all[1].heaters.push_back({"mat", 20, true, place(51, 5)});
  all[1].lamps = {heat_lamp(800)};
  all[2].lamps = {heat_lamp(150)};
  return all;
}

inline std::vector<Build> leaky_builds() {
  std::vector<Build> all(3, gecko_box());
  all[0].enclosure.openings[0].gap = 20_mm;
  all[0].kept[0].facts.feeder = millimetres(10, 20);
  all[1].enclosure.openings[0].kind = "vent";
  all[2].enclosure.openings[0].kind = "vent";
  all[2].enclosure.openings[0].mesh = true;
  all[2].enclosure.openings[0].gap.reset();
  return all;
}

inline std::vector<Build> ill_supplied_builds() {
  std::vector<Build> all(3, gecko_box());
  all[0].kept[0].facts.body.skin_takes_up = known(true);
  for (const char* kind : {"copper", "galvanised", "stainless", "brass", "resinous-wood",
                           "rough-stone", "fertiliser-salts"}) {
    all[0].hazardous.push_back(hazardous_material(kind));
  }
  all[0].crew.clear();
  all[1].crew = all[2].crew = {wood_lice()};
  all[1].kept[0].facts.length = millimetres(30, 40);
  all[2].kept[0].facts.lays = known<std::string>("soil");
  all[2].kept[0].facts.mass = known(Range<Kilograms>{{2}, {3}});
  return all;
}

inline std::vector<Build> unfit_builds() {
  std::vector<Build> all;
  for (const auto& builds : {cramped_builds(), company_builds(), unfurnished_builds(),
                             leaky_builds(), ill_supplied_builds()}) {
    all.insert(all.end(), builds.begin(), builds.end());
  }
  return all;
}

}  // namespace loamsheet::tests
