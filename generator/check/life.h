// life: the animals, plants and clean-up crew of a build, each with the catalogue's facts.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/date.h"
#include "base/geometry.h"
#include "base/span.h"
#include "base/units.h"
#include "catalogue/living.h"

namespace loamsheet {

struct KeptAnimal {
  Animal facts;
  int count = 1;
  bool juvenile = false;
  std::optional<Kilograms> mass;  // as stated, of one animal now
  std::optional<Date> acquired;
  Span where;
};

// One plant of the build; "count: 3" gives three of them.
struct PlantUse {
  int number = 0;  // from 1, in spec order
  Plant facts;
  Range<double> ppfd;                        // what its light class wants, umol m-2 s-1
  std::optional<Point> pinned;               // checked, not moved
  std::optional<Millimetres> pinned_height;  // above the floor, when that was stated, too
  std::string on;                            // id of a furnishing, or "background"; may be empty
  Span where;
};

struct CrewUse {
  CrewSpecies facts;
  double cultures = 1;
  Span where;
};

}  // namespace loamsheet
