// groups: the bodies of kinds of animal (specs/catalogue/groups.yaml).
#pragma once
#include <map>
#include <string>

#include "base/diagnostic.h"
#include "base/units.h"
#include "base/world.h"
#include "catalogue/fact.h"
#include "catalogue/shelf.h"

namespace loamsheet {

struct Body {
  Known<bool> skin_takes_up;  // what it touches goes through its skin
  Known<bool> moults_bare;    // lies soft and helpless after a moult
  Known<Fraction> thickness;  // of what holds it back in a gap, by its length
};

// Each group by its name with hyphens: "dart-frog".
std::map<std::string, Body> read_groups(World&, const Shelf& sources, Sink&);

// The body of the group that an animal's entry names, "dart frog"; empty when nobody knows it.
Body body_of(const std::map<std::string, Body>&, std::string group);

}  // namespace loamsheet
