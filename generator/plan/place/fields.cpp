#include "base/fields.h"
#include "plan/place/planting.h"

namespace loamsheet {

const char* name_of(SiteKind kind) {
  switch (kind) {
    case SiteKind::floor:
      return "floor";
    case SiteKind::pocket:
      return "pocket";
    case SiteKind::mount:
      break;
  }
  return "mount";
}

namespace {

// A plant without a place has no position, light or air.
void place_of(const PlacedPlant& plant, FieldSink& to) {
  const bool placed = plant.placed;
  const auto known = [&](double v) { return placed ? std::optional(v) : std::nullopt; };
  to.add("x", unit::place_mm, known(plant.at.x));
  to.add("y", unit::place_mm, known(plant.at.y));
  to.add("z", unit::place_mm, known(plant.at.z));
  to.add_known("site", placed ? name_of(plant.site) : "");
  to.add_known("on", plant.on);
  to.add("ppfd", unit::ppfd, known(plant.light.ppfd));
  to.add("dli", unit::dli, known(plant.light.dli));
  if (placed) {
    to.ends("humidity", unit::pct, plant.humidity);
  } else {
    to.nothing({"humidity", unit::pct.name});
  }
}

}  // namespace

void fields(const PlacedPlant& plant, FieldSink& to) {
  to.add("number", plant.number);
  to.add("species", plant.species);
  place_of(plant, to);
  to.add("spread", unit::mm, plant.spread);
  to.add("height", unit::mm, plant.height);
  to.add("fit", plant.fit);
  if (to.inner()) {
    to.add("broken", plant.broken);
    to.add_all("roots", unit::mm, {plant.root_wanted, plant.root_there});
  }
  to.open_list({"why"});
  for (const Reason& why : plant.why) to.sentence({}, "planting.why." + why.name, why.args);
  to.close();
}

void fields(const PlantingPlan& planting, FieldSink& to) {
  to.add("score", planting.score);
  to.add("bound", planting.bound);
}

}  // namespace loamsheet
