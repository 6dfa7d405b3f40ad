#include "check/checking.h"
#include "check/footprint.h"
#include "check/names.h"

namespace loamsheet {
namespace {

void check_floor(Checking& c, Enclosure& e) {
  const Node* footprint = c.root.find("enclosure.footprint");
  if (!footprint) return;
  Floor floor = floor_of(c, *footprint);
  e.shape = floor.shape;
  e.footprint = std::move(floor.region);
  if (e.footprint.corners.empty()) return;
  const Box box = extent(e.footprint);
  e.width = {box.width()};
  e.depth = {box.height()};
}

KilogramsPerCubicMetre middle(const Range<KilogramsPerCubicMetre>& r) {
  return (r.low + r.high) / 2;
}

void check_walls(Checking& c, Enclosure& e) {
  const auto id = c.root.text("enclosure.walls.material").value_or("");
  e.walls.material = id;
  e.walls.thickness = {c.root.number("enclosure.walls.thickness").value_or(0)};
  e.walls.toughened_base = c.root.text("enclosure.walls.base") == "toughened";
  const Material* material = c.materials.find(id);
  if (material && material->dry_density) {
    e.walls.density = middle(material->dry_density->value);
    return;
  }
  c.error(place_of(c.root, "enclosure.walls.material"),
          "the catalogue has no density for walls of '" + id + "'");
}

void check_background(Checking& c, Enclosure& e) {
  const Node* background = c.root.find("enclosure.background");
  if (!background) return;
  const Node* material = background->find("material");
  const Millimetres thickness{background->number("thickness").value_or(0)};
  if (material && !c.materials.has(background->text("material").value_or(""))) {
    unknown_name(c, word_of(*material), "material", c.materials.ids());
  }
  if (e.depth.v > 0 && thickness >= e.depth) {
    c.error(place_of(*background, "thickness"),
            "the background (" + length_text({thickness.v}) +
                ") is as thick as the tank is deep (" + length_text({e.depth.v}) + ")",
            "less than " + length_text({e.depth.v}));
  }
  e.background = Background{background->text("material").value_or(""), thickness};
  e.background->fixed_by = background->text("fixed_by").value_or("");
  e.background->where = background->where;
  const Material* found = c.materials.find(e.background->material);
  if (found && found->dry_density) e.background->density = middle(found->dry_density->value);
}

}  // namespace

void check_enclosure(Checking& c) {
  Enclosure& e = c.build.enclosure;
  e.height = {c.root.number("enclosure.height").value_or(0)};
  e.height_at = place_of(c.root, "enclosure.height");
  check_floor(c, e);
  check_walls(c, e);
  check_background(c, e);
  if (const auto kg = c.root.number("enclosure.empty_mass")) e.stated_empty_mass = Kilograms{*kg};
  if (const auto kg = c.root.number("enclosure.stand.rated_load")) e.stand_rating = Kilograms{*kg};
  if (const auto mm = c.root.number("enclosure.stand.height")) e.stand_height = Millimetres{*mm};
  e.stand_at = place_of(c.root, "enclosure.stand.rated_load");
}

}  // namespace loamsheet
