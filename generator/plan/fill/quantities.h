// quantities: layers by volume, bought amount and mass; what the tank weighs; the first watering.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/units.h"

namespace loamsheet {

class FieldSink;

// A raised floor is all voids and is bought by area: it has no bought volume and no dry mass.
struct DrainagePlan {
  Litres volume, voids;
  std::optional<Litres> buy;
  std::optional<Range<Kilograms>> dry;
};
void fields(const DrainagePlan&, FieldSink&);

struct SeparatorPlan {
  SquareMetres area;
  Millimetres cut_width, cut_depth;
};
void fields(const SeparatorPlan&, FieldSink&);

struct PartPlan {
  std::string material;
  Litres volume, buy;
  Range<Kilograms> dry;
};
void fields(const PartPlan&, FieldSink&);

struct SubstratePlan {
  Litres volume, buy;
  Litres pockets;  // more of the mix, in the pockets of ledges
  Litres blend;    // all that is bought and mixed: of the layer and of the pockets
  Range<Kilograms> dry;
  std::vector<PartPlan> parts;
};
void fields(const SubstratePlan&, FieldSink&);

struct LitterPlan {
  Litres volume, buy;
  Range<Kilograms> dry;
};
void fields(const LitterPlan&, FieldSink&);

// Dried moss on the substrate; where it lies, no litter does.
struct MossPlan {
  SquareMetres area;
  Litres volume;
  Range<Kilograms> dry;
};
void fields(const MossPlan&, FieldSink&);

// Heights above the inside floor where each layer's top lies.
struct Profile {
  Millimetres drainage_top;
  Millimetres substrate_front, substrate_back;  // top of the substrate
  Millimetres litter_front, litter_back;        // top of the litter
  Millimetres highest;                          // of all tops, wherever it is
};
void fields(const Profile&, FieldSink&);

struct LayersPlan {
  std::optional<DrainagePlan> drainage;
  std::optional<SeparatorPlan> separator;
  SubstratePlan substrate;
  std::optional<LitterPlan> litter;
  std::optional<MossPlan> moss;
  Profile profile;
};

struct MassPlan {
  Kilograms empty;
  Range<Kilograms> dry, wet;
  std::optional<Range<Kilograms>> stand_margin;
  Range<double> stand_load;  // wet, kg on a square metre of the outside of the base
};
void fields(const MassPlan&, FieldSink&);

// Nothing where it does not apply: an arid build is not watered through; without a drainage
// layer no water stands.
struct WaterPlan {
  std::optional<Range<Litres>> first_watering;
  std::optional<Range<Millimetres>> standing;
  std::optional<Millimetres> highest_standing;  // level that keeps the air gap under the mesh
};
void fields(const WaterPlan&, FieldSink&);

}  // namespace loamsheet
