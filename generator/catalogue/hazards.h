// hazards: how much what may harm an animal in a plant or a material weighs, by what the animal
// eats and by its body (templates/hazards.yaml).
#pragma once
#include <map>
#include <string>

#include "base/diagnostic.h"
#include "base/world.h"
#include "catalogue/fact.h"
#include "catalogue/shelf.h"

namespace loamsheet {

enum class Gravity { none, note, caution, stop };

struct HazardRule {
  Origin origin;
  std::string explains;                  // the kind of hazard that it weighs in place of
  std::map<std::string, Gravity> eaten;  // by whether the animal browses: no, incidentally, yes
  Gravity touch = Gravity::none;         // of an animal of some weight
  Gravity light = Gravity::none;         // of one that leaves bear
  Gravity skin = Gravity::none;          // of an amphibian
  Gravity sap = Gravity::none;           // in the eyes and on the skin of any other
  bool by_touch = false;                 // of a material: harms none that it lies covered from
};

using HazardRules = std::map<std::string, HazardRule>;  // by kind of hazard

HazardRules read_hazards(World&, const Shelf& sources, Sink&);

}  // namespace loamsheet
