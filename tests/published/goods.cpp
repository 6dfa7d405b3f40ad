#include "goods.h"

#include <algorithm>

#include "base/geometry.h"
#include "base/text.h"
#include "catalogue/catalogue.h"
#include "plan/plan.h"
#include "read/unit.h"
#include "world/world.h"

namespace loamsheet::tests {
namespace {

double number(const Inputs& in, const std::string& name) {
  return std::stod(in.at(name));
}

std::string shown(double v) {
  return significant(v, 15);
}

// How much of what is kept one of the named unit is; "_" stands for a blank.
std::string one_of(const Inputs& in) {
  static const std::map<std::string, Kind> kinds{
      {"length", Kind::length}, {"area", Kind::area},       {"volume", Kind::volume},
      {"mass", Kind::mass},     {"density", Kind::density}, {"temperature", Kind::temperature}};
  std::string name = in.at("unit");
  std::replace(name.begin(), name.end(), '_', ' ');
  const double typed = in.count("v") ? number(in, "v") : 1;
  return shown(kept(*find_unit(kinds.at(in.at("kind")), name), typed));
}

Material material(const Inputs& in) {
  static const Catalogue catalogue = *read_catalogue(*real_world()).value;
  return *read_material(catalogue, in.at("id")).value;
}

// The middle of what the catalogue states, which masses are worked with.
std::string dry_density(const Inputs& in) {
  const auto stated = material(in).dry_density->value;
  return shown((stated.low + stated.high).v / 2);
}

std::string share(const std::optional<Fact<Fraction>>& fact) {
  return shown(fact->value.v * 100);
}

// A feed of so many grams to a litre, with so much nitrogen in it.
std::string nitrogen(const Inputs& in) {
  Build build;
  build.enclosure.footprint = rectangle(1000_mm, 1000_mm);
  build.amendments = {{"feed", number(in, "grams") / number(in, "litres")}};
  build.amendments[0].nitrogen = Fraction{number(in, "percent") / 100};
  LayersPlan layers;
  layers.substrate.volume = 1_L;
  return shown(*plan_doses(build, layers)[0].nitrogen_mg_l);
}

std::string square_millimetres(const Region& r) {
  return shown(area(r).v * 1e6);
}

}  // namespace

const std::map<std::string, Quantity>& goods_quantities() {
  static const std::map<std::string, Quantity> all = {
      {"unit", one_of},
      {"dry_density", dry_density},
      {"porosity", [](const Inputs& in) { return share(material(in).porosity); }},
      {"voids", [](const Inputs& in) { return share(material(in).voids); }},
      {"held", [](const Inputs& in) { return share(material(in).field_capacity); }},
      {"nitrogen", nitrogen},
      {"hexagon_area",
       [](const Inputs& in) { return square_millimetres(hexagon({number(in, "flats")})); }},
      {"cut_corner_area",
       [](const Inputs& in) {
         return square_millimetres(cut_corner({number(in, "side")}, {number(in, "cut")}));
       }},
      {"triangle_area",
       [](const Inputs& in) {
         return square_millimetres(
             polygon({{0, 0}, {number(in, "base"), 0}, {number(in, "at"), number(in, "height")}}));
       }},
  };
  return all;
}

}  // namespace loamsheet::tests
