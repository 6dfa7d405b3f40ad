// fittings: what is marked, cut, held up and carried: tape on the glass, pieces to cut, supports of
// a raised floor, fixed furnishings, the water area and the move.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/date.h"
#include "base/units.h"

namespace loamsheet {

struct Build;
struct LayersPlan;
struct WaterPlan;

// Where to put tape on the outside of the glass: heights above the lower edge of the base, which
// lies its thickness below the inside floor.
struct TapeMark {
  std::string layer;  // drainage, waterline, substrate, terrace, litter, water
  Millimetres front, back;
  std::optional<Millimetres> from{};  // of a terrace: from so far behind the front on
};
std::vector<TapeMark> plan_marks(const Build&, const LayersPlan&, const WaterPlan&);

// What stands under a raised floor: its supports share the wet load above it evenly.
struct SupportsPlan {
  Millimetres spacing;
  int count = 0;
  Kilograms load;  // on one of them
};
std::optional<SupportsPlan> plan_supports(const Build&, const LayersPlan&);

// What a fixing has to bear: the thing, its pocket filled and wet, and the heaviest animal landing
// on it, which bears down with twice its weight (a load applied suddenly: strength of materials).
struct FixedLoad {
  std::string id, fixed_by;
  std::optional<Kilograms> own;
  Kilograms pocket, landing;
  Kilograms sum() const { return own.value_or(Kilograms{}) + pocket + landing; }
};
std::vector<FixedLoad> plan_fixed(const Build&);

// The dam stands the freeboard above the water or as high as the land beside it, whichever is more.
// Water presses on a pane with rho g depth^2 / 2 on each metre (hydrostatics).
struct WaterAreaPlan {
  Litres volume;
  Millimetres dam_length, dam_height;
  Kilograms dam;
  double pane_load_n = 0;           // on the longest pane it stands against
  double floor_pressure_kpa = 0;    // at the floor
  std::optional<Kilograms> uplift;  // on a background lighter than water, below the surface
};
std::optional<WaterAreaPlan> plan_water_area(const Build&, const LayersPlan&);

// Pieces of one size to cut from sheet goods.
struct Cut {
  std::string use, material;
  int count = 1;
  Millimetres width, depth;
  std::optional<Millimetres> overlap;  // of neighbouring strips
};
std::vector<Cut> plan_cuts(const Build&, const LayersPlan&, const std::optional<WaterAreaPlan>&);

// The area of all pieces of one use.
SquareMetres cut_area(const std::vector<Cut>&, const std::string& use);

// As it is moved: drained, loose stone out, layers at field capacity.
struct TransportPlan {
  std::optional<Date> date;
  Range<Kilograms> mass;
  Kilograms taken_out;              // stones that stand loose
  std::vector<std::string> stones;  // their ids
};

}  // namespace loamsheet
