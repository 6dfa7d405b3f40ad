// groups: the bodies of kinds of animal (specs/catalogue/groups.yaml).
#pragma once
#include <string>

#include "base/diagnostic.h"
#include "base/units.h"
#include "catalogue/fact.h"
#include "catalogue/shelf.h"

namespace loamsheet {

struct Body {
  Known<bool> skin_takes_up;  // what it touches goes through its skin
  Known<bool> moults_bare;    // lies soft and helpless after a moult
  Known<Fraction> thickness;  // of what holds it back in a gap, by its length
};

// Where bodies stand and what their facts may name.
struct BodyShelves {
  const Shelf &groups, &sources;
};

// The body of the group that an animal's entry names, "dart frog"; empty when nobody knows it.
Body read_body(const BodyShelves&, std::string group, Sink&);

}  // namespace loamsheet
