// build: the spec joined to the catalogue - typed, resolved, defaults filled. The value that
// `check` gives and `plan` takes.
#pragma once
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "base/date.h"
#include "base/geometry.h"
#include "base/span.h"
#include "base/units.h"
#include "catalogue/catalogue.h"
#include "catalogue/choosing.h"
#include "catalogue/rules.h"
#include "catalogue/soft_weights.h"
#include "check/climate.h"
#include "check/enclosure.h"
#include "check/furnishing.h"
#include "check/identity.h"
#include "check/known.h"
#include "check/layers.h"
#include "check/life.h"
#include "check/quote.h"
#include "check/standing.h"
#include "check/stock.h"

namespace loamsheet {

class FieldSink;

enum class BuildKind { humid, temperate, arid, burrowing, semi_aquatic };

// A build that stands dry: no drainage, no misting, no damp-loving crew.
constexpr bool is_dry(BuildKind kind) {
  return kind == BuildKind::arid || kind == BuildKind::burrowing;
}

// Where the constants of a material that the spec states are from.
struct OwnMaterial {
  std::string id, from;
};
void fields(const OwnMaterial&, FieldSink&);

// A material of the build that may harm an animal, once for each hazard.
struct HazardousMaterial {
  std::string material, use;  // use: separator, drainage, substrate, litter, background, amendment
  Hazard hazard;
  Span where;
};
void fields(const HazardousMaterial&, FieldSink&);

struct Build {
  Build();
  Build(const Build&);
  Build(Build&&) noexcept;
  Build& operator=(const Build&);
  Build& operator=(Build&&) noexcept;
  ~Build();

  std::string spec_file;
  Identity identity;
  Shop shop;
  Print print;
  BuildKind kind = BuildKind::humid;
  Enclosure enclosure;
  Layers layers;
  std::vector<Material> materials;  // what layers and walls are made of
  std::optional<WaterArea> water_area;
  std::vector<Standing> standing;
  std::vector<Furnishing> furnishings;  // all of them, also what stands
  std::vector<KeptAnimal> kept;         // the animals, with their facts
  std::vector<PlantUse> plants;
  std::vector<ToChoose> to_choose;    // plants that are not yet among those above
  std::vector<PlantKind> offered;     // the catalogue's plants, when some of them are wanted
  std::vector<Replacement> replaced;  // in order of their dates
  std::vector<Acceptance> accepted;
  std::vector<CrewUse> crew;
  std::vector<Amendment> amendments;
  std::vector<OwnMaterial> own_materials;
  Room room;
  std::vector<Lamp> lamps;
  std::vector<Heater> heaters;
  std::optional<Misting> misting;
  std::string water_source;  // as typed; "?" when not known; may be empty
  Span water_source_at;
  std::optional<Range<Litres>> measured_loss;  // of water, a day; a reading beats the model
  SoftWeights soft;                            // of the soft rules of placement
  ChoosingRules choosing;                      // of what the plan picks
  std::vector<HazardousMaterial> hazardous;
  HazardRules hazards;                    // how much each hazard weighs
  std::map<std::string, Source> sources;  // that facts of animals, plants and hazards name
  TaskRules rules;                        // of work, care and readiness
  std::optional<int> calendar_days;       // as asked for
  Span calendar_days_at;
  std::optional<std::vector<StockedPack>> stock;  // nothing without a stock list
  Span stock_at;
  std::optional<QuoteTerms> quote;
  std::vector<UnknownInput> unknowns;
  std::vector<Assumed> assumed;
};
void fields(const Build&, FieldSink&);

// The plants that died, and what took their places.
void fields_of_replaced(const Build&, FieldSink&);

}  // namespace loamsheet
