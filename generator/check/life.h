// life: the animals, plants and clean-up crew of a build, each with the catalogue's facts.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/date.h"
#include "base/geometry.h"
#include "base/money.h"
#include "base/span.h"
#include "base/units.h"
#include "catalogue/living.h"

namespace loamsheet {

class FieldSink;

struct KeptAnimal {
  Animal facts;
  int count = 1;
  bool juvenile = false;
  std::optional<Kilograms> mass;  // as stated, of one animal now
  std::optional<Date> acquired;
  Span where;
};
void fields(const KeptAnimal&, FieldSink&);

// A species with what its light class wants, umol m-2 s-1; {0, 0} when not known.
struct PlantKind {
  Plant facts;
  Range<double> ppfd;
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
  bool chosen = false;                   // picked by the plan
  std::optional<PlantKind> before = {};  // what stood in this place first, and died
  std::optional<Date> replaced_on = {};
};

// Plants that the plan is to pick. They are numbered after the plants before them in the list.
struct ToChoose {
  int count = 1;
  std::optional<Money> budget;  // for all of them, net
  size_t after = 0;             // so many of Build::plants come before
  Span where;
};

// A plant that died and what took its place; its number is that of the plan before.
struct Replacement {
  int plant = 0;
  PlantKind by;
  Date on;
  Span where;
};

// A caution that somebody takes on knowingly.
struct Acceptance {
  std::string rule, by, reason;
  Span where;
};

struct CrewUse {
  CrewSpecies facts;
  double cultures = 1;
  Span where;
};

// What feeds the soil, by the rate on its label: grams to a litre of substrate or, by area, to a
// square metre of its floor.
struct Amendment {
  std::string material;
  double rate = 0;
  bool by_area = false;
  Fraction strength{1};                             // share of the label's rate
  std::optional<KilogramsPerCubicMetre> density{};  // in a spoon
  std::optional<Fraction> nitrogen{};               // by mass
  Span where{};
};

}  // namespace loamsheet
