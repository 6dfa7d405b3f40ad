// planting: where every plant goes, and why.
#pragma once
#include <string>
#include <vector>

#include "base/finding.h"
#include "base/units.h"
#include "check/build.h"
#include "plan/air/air.h"
#include "plan/fill/quantities.h"
#include "plan/light/crown.h"

namespace loamsheet {

class FieldSink;

enum class SiteKind { floor, pocket, mount };
const char* name_of(SiteKind);

// A reason is a sentence's name ("light-in-band") and its numbers; words come from
// templates/en/planting.yaml, under "planting.why.NAME".
struct Reason {
  std::string name;
  Args args;
};

struct PlacedPlant {
  int number = 0;  // of the PlantUse
  std::string species, common_name, botanical;
  bool placed = false;  // false: no site obeys every hard rule
  Position at;          // of its foot
  SiteKind site = SiteKind::floor;
  std::string on;  // furnishing or "background", for pockets and mounts
  LightAt light;
  Range<Fraction> humidity;
  Millimetres spread, height;  // mature, capped by the enclosure
  Crown crown;                 // when grown
  double fit = 0;              // 0 to 1
  std::vector<Reason> why;
  std::vector<std::string> broken;  // hard rules broken by a pin: keep-out, roots, room, distance
  // The depth of substrate that its roots want, and what there is: where it stands, or where it is
  // deepest when it found no place. Nothing at a mount.
  Millimetres root_wanted, root_there;
};
void fields(const PlacedPlant&, FieldSink&);

struct PlantingPlan {
  std::vector<PlacedPlant> plants;  // by number
  double score = 0, bound = 0;      // sums of fits; bound: no placement scores more
};
void fields(const PlantingPlan&, FieldSink&);  // how good it is, without its plants

PlantingPlan plan_planting(const Build&, const LayersPlan&, const AirPlan&);

}  // namespace loamsheet
