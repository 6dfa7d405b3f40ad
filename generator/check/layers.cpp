#include <algorithm>

#include "base/text.h"
#include "check/bulk.h"
#include "check/checking.h"
#include "check/defaults.h"
#include "check/names.h"
#include "read/unit.h"

namespace loamsheet {
namespace {

Millimetres measure(const Node& n, std::string_view path) {
  return {n.number(path).value_or(0)};
}

// The material that a layer names, if there is one and it is for that layer.
const Material* material_for(Checking& c, const Node& layer, const std::string& role) {
  const Node* leaf = layer.find("material");
  const auto id = layer.text("material");
  if (!leaf || !id) return nullptr;
  const Material* found = c.materials.find(*id);
  if (!found) {
    unknown_name(c, word_of(*leaf), role + " material", c.materials.with_role(role));
    return nullptr;
  }
  if (found->role == role) return found;
  c.error(leaf->where, "'" + *id + "' is not a " + role + " material but one for " + found->role,
          "one of " + join(c.materials.with_role(role), ", "));
  return nullptr;
}

void check_drainage(Checking& c) {
  DrainageLayer& layer = c.build.layers.drainage;
  layer.depth_at = place_of(c.root, "layers.drainage.depth");
  const Node* n = c.root.find("layers.drainage");
  if (!n) return;
  layer.kind = n->text("kind").value_or("");
  if (!layer.kind->keeps_water_off) return;
  layer.depth = measure(*n, "depth");
  layer.outlet = n->text("outlet").value_or("none");
  if (!layer.kind->poured) return;
  if (const Material* m = material_for(c, *n, "drainage")) {
    layer.bulk = drainage_bulk(c, *m, place_of(*n, "material"));
  }
}

void check_separator(Checking& c) {
  const Node* n = c.root.find("layers.separator");
  if (!n) return;
  SeparatorLayer layer;
  layer.turn_up = measure(*n, "turn_up");
  if (const Material* m = material_for(c, *n, "separator")) {
    layer.material = m->id;
    if (m->roll_width) layer.roll_width = m->roll_width->value;
    if (m->areal_kg_m2)
      layer.areal_kg_m2 = m->areal_kg_m2->value;
    else
      c.error(place_of(*n, "material"),
              "'" + m->id +
                  "' has no areal_mass, which the plan needs "
                  "here",
              "", "add areal_mass to materials." + m->id);
  }
  c.build.layers.separator = std::move(layer);
}

void check_litter(Checking& c) {
  const Node* n = c.root.find("layers.litter");
  if (!n) return;
  LitterLayer layer;
  layer.depth = measure(*n, "depth");
  if (const Material* m = material_for(c, *n, "litter")) {
    layer.bulk = litter_bulk(c, *m, place_of(*n, "material"));
  }
  c.build.layers.litter = std::move(layer);
}

// Dried moss is bought as litter is.
void check_moss(Checking& c) {
  const Node* n = c.root.find("layers.moss");
  if (!n) return;
  MossLayer layer;
  layer.depth = measure(*n, "depth");
  layer.where = n->where;
  if (const auto share = n->number("floor")) layer.floor = Fraction{*share};
  if (const auto stated = n->number("area")) layer.area = SquareMetres{*stated};
  if (layer.floor.has_value() == layer.area.has_value()) {
    c.error(n->where, "the moss takes either a share of the floor or an area",
            "one of floor and area");
  }
  const SquareMetres floor = area(c.build.enclosure.footprint);
  if (layer.area && *layer.area > floor) {
    c.error(place_of(*n, "area"), "the moss covers more than the whole floor",
            "at most " + quantity_text(Kind::area, floor.v));
  }
  if (const Material* m = material_for(c, *n, "litter")) {
    layer.bulk = litter_bulk(c, *m, place_of(*n, "material"));
  }
  c.build.layers.moss = std::move(layer);
}

Placed placed_of(const Checking& c) {
  const std::string key = "layers.substrate.placed";
  const Node* n = c.root.find(key);
  if (!n || !std::holds_alternative<Unknown>(n->leaf)) {
    return {c.root.text(key) == "dry" ? Placed::How::dry : Placed::How::damp, -1};
  }
  const auto& unknowns = c.build.unknowns;
  const auto at = std::find_if(unknowns.begin(), unknowns.end(),
                               [&](const UnknownInput& u) { return u.key == key; });
  return {Placed::How::unknown, static_cast<int>(at - unknowns.begin())};
}

void take_parts(Checking& c, const Mix& mix, const Span& where, SubstrateLayer& layer) {
  const Placed placed = placed_of(c);
  layer.placed = placed.unknown < 0 ? c.root.text("layers.substrate.placed").value_or("") : "?";
  double sum = 0;
  for (const MixPart& part : mix.parts) sum += part.parts;
  for (const MixPart& part : mix.parts) {
    const Material* found = c.materials.find(part.material);
    if (!found) continue;  // reported where the mix is stated
    layer.parts.push_back({substrate_bulk(c, *found, placed, where), {part.parts / sum}});
  }
}

// The mean of the parts' own settling, by volume.
std::optional<Fraction> settling_of_parts(Checking& c, const Mix& mix, const Span& where) {
  double sum = 0, settled = 0;
  for (const MixPart& part : mix.parts) {
    const Material* found = c.materials.find(part.material);
    if (!found) return std::nullopt;
    if (!found->settling) {
      c.error(where, "how much '" + found->id + "' settles is not known", "",
              "add settling to layers.substrate, or to materials." + found->id);
      return std::nullopt;
    }
    sum += part.parts;
    settled += part.parts * found->settling->value.v;
  }
  return Fraction{settled / sum};
}

void check_settling(Checking& c, const Node& n, const Mix& mix, SubstrateLayer& layer) {
  if (const auto stated = n.number("settling")) {
    layer.settling = {*stated};
    return;
  }
  const auto settling = mix.settling ? std::optional(mix.settling->value)
                                     : settling_of_parts(c, mix, place_of(n, "mix"));
  layer.settling = settling.value_or(Fraction{});
  c.build.assumed.push_back(
      {"layers.substrate.settling", quantity_text(Kind::share, layer.settling.v), "catalogue"});
}

// A mix of the spec or of the catalogue; an unknown one is an error.
std::optional<Mix> named_mix(Checking& c, const Node& leaf) {
  const auto [name, where] = word_of(leaf);
  if (const auto own = c.own_mixes.find(name); own != c.own_mixes.end()) return own->second;
  if (c.catalogue.mixes.has(name)) return taken(read_mix(c.catalogue, name), c.sink);
  auto known = c.catalogue.mixes.ids();
  for (const auto& [id, mix] : c.own_mixes) known.push_back(id);
  unknown_name(c, {name, where}, "mix", known);
  return std::nullopt;
}

void check_substrate(Checking& c) {
  const Node* n = c.root.find("layers.substrate");
  if (!n) return;
  SubstrateLayer& layer = c.build.layers.substrate;
  layer.mix = n->text("mix").value_or("");
  layer.front = measure(*n, "front");
  layer.back = measure(*n, "back");
  layer.front_at = place_of(*n, "front");
  layer.back_at = place_of(*n, "back");
  layer.hold_back = {n->number("hold_back").value_or(0)};
  const Node* leaf = n->find("mix");
  const auto mix = leaf ? named_mix(c, *leaf) : std::nullopt;
  if (!mix) return;
  take_terraces(c, *n, layer);
  take_parts(c, *mix, place_of(*n, "mix"), layer);
  check_settling(c, *n, *mix, layer);
  if (layer.front.v > 0 || layer.back.v > 0) return;
  c.error(layer.front_at, "the substrate has no depth at the front nor at the back",
          "a depth at one of them, such as 5 cm");
}

KilogramsPerCubicMetre density_of(Checking& c, const Node& dam, const Dam& panel) {
  const Material* found = c.materials.find(panel.material);
  if (found && found->dry_density) {
    const auto& stated = found->dry_density->value;
    return (stated.low + stated.high) / 2;
  }
  const Node* leaf = dam.find("material");
  if (leaf && !found) {
    unknown_name(c, word_of(*leaf), "material", c.materials.ids());
  } else {
    c.error(place_of(dam, "material"),
            "'" + panel.material + "' has no dry_density, which the plan needs here", "",
            "add dry_density to materials." + panel.material);
  }
  return {};
}

// Of the walls' own sheet, unless the spec names another.
Dam dam_of(Checking& c, const Node& water) {
  const Walls& walls = c.build.enclosure.walls;
  const Node* n = water.find("dam");
  if (!n) {
    const std::string material(walls.material->id);
    c.build.assumed.push_back({"water_area.dam.material", material, from_default});
    c.build.assumed.push_back(
        {"water_area.dam.thickness", length_text(walls.thickness), from_default});
    return {material, walls.thickness, walls.density};
  }
  Dam dam{n->text("material").value_or(""), measure(*n, "thickness"), {}};
  dam.density = density_of(c, *n, dam);
  return dam;
}

void check_water_area(Checking& c) {
  const Node* n = c.root.find("water_area");
  if (!n) return;
  WaterArea area;
  area.side = n->text("side") == "right" ? WaterArea::Side::right : WaterArea::Side::left;
  area.floor = {n->number("floor").value_or(0)};
  area.depth = measure(*n, "depth");
  area.filter = n->yes("filter").value_or(false);
  area.where = n->where;
  area.dam = dam_of(c, *n);
  const Millimetres height = c.build.enclosure.height;
  if (area.depth >= height) {
    c.error(place_of(*n, "depth"),
            "the water (" + length_text(area.depth) + ") is as deep as the tank is high (" +
                length_text(height) + ")",
            "less than " + length_text(height));
  }
  c.build.water_area = area;
}

void check_total_depth(Checking& c) {
  const Layers& l = c.build.layers;
  Millimetres deepest = std::max(l.substrate.front, l.substrate.back);
  for (const Terrace& terrace : l.substrate.terraces) deepest = std::max(deepest, terrace.height);
  const Millimetres litter = l.litter ? l.litter->depth : Millimetres{};
  const Millimetres moss = l.moss ? l.moss->depth : Millimetres{};
  const Millimetres total = l.drainage.depth + deepest + std::max(litter, moss);
  const Millimetres height = c.build.enclosure.height;
  if (total < height) return;
  const bool at_front = l.substrate.front > l.substrate.back;
  c.error(at_front ? l.substrate.front_at : l.substrate.back_at,
          "the layers (" + length_text(total) + ") are as deep as the tank is high (" +
              length_text(height) + ")",
          "drainage, substrate and litter together lower than " + length_text(height));
}

}  // namespace

void check_layers(Checking& c) {
  check_drainage(c);
  check_separator(c);
  check_substrate(c);
  check_litter(c);
  check_moss(c);
  check_water_area(c);
  check_total_depth(c);
}

}  // namespace loamsheet
