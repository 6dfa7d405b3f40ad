// catalogue: what the program knows of materials, mixes and living things, each fact with its
// origin. In: specs/catalogue/*.yaml through read. Out: Catalogue. Never: a decision.
#pragma once
#include <future>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/span.h"
#include "base/units.h"
#include "base/world.h"
#include "catalogue/choosing.h"
#include "catalogue/fact.h"
#include "catalogue/hazards.h"
#include "catalogue/rules.h"
#include "catalogue/shelf.h"
#include "catalogue/soft_weights.h"

namespace loamsheet {

struct Source {
  std::string id, title, link;  // link may be empty
  std::string jurisdiction;     // of a law: where it holds
};

// Physical constants of a material. Shares are of the bulk volume.
struct Material {
  std::string id, name;
  std::string role;     // drainage, separator, substrate, litter, ...
  bool coarse = false;  // pieces rather than soil
  std::optional<bool> rusts;
  std::string decay;  // none, very-slow, ... done; may be empty
  std::optional<Fact<Range<KilogramsPerCubicMetre>>> dry_density;  // bulk, oven-dry
  std::optional<Fact<Fraction>> porosity;                          // total pore space
  std::optional<Fact<Fraction>> voids;           // free space that water can stand in (drained)
  std::optional<Fact<Fraction>> field_capacity;  // water held after draining
  std::optional<Fact<Range<Fraction>>> moisture_dry;   // water held as bought dry
  std::optional<Fact<Range<Fraction>>> moisture_damp;  // water held as placed damp
  std::optional<Fact<Fraction>> settling;              // volume lost as it settles
  std::optional<Fact<double>> areal_kg_m2;             // sheets and meshes
  std::vector<Hazard> hazards;                         // rough, metal, resin, ...
  std::optional<Fact<std::string>> caution;
  std::optional<Fact<Millimetres>> roll_width;  // sheets and meshes, as sold
  std::optional<Fact<Fraction>> nitrogen;       // of amendments, by mass
  Span where;
};

// What a material's constants say against each other: porosity is voids and field capacity within
// 1 % of the bulk volume, damp is wetter than dry, neither is wetter than field capacity.
std::vector<Diagnostic> contradictions(const Material&);

struct MixPart {
  std::string material;
  double parts = 0;
};

struct Mix {
  std::string id, name;
  std::string build_kind;  // what it is made for
  std::vector<MixPart> parts;
  std::optional<Fact<Fraction>> settling;  // absent: from the parts
  Origin origin;
  Span where;
};

// Photon flux density that a light class stands for, in umol m-2 s-1.
struct LightClass {
  Fact<Range<double>> ppfd;
};

// What stands on a shelf is read when it is wanted: living things by living.h, the rest below.
struct Catalogue {
  std::map<std::string, LightClass> light;      // low, medium, high
  std::map<std::string, Fact<double>> spectra;  // umol m-2 s-1 for one lux, by kind of light
  std::map<std::string, int> currencies;        // ISO 4217 code: decimals of its coins
  Shelf sources, materials, mixes, animals, plants, crew, groups;
  HazardRules hazards;
  std::shared_future<Outcome<TaskRules>> rules;  // being read while a spec is checked
  SoftWeights soft;                              // of placement
  YamlFilePtr choosing;                          // of what the plan picks, read when it does
};

// Reads specs/catalogue/. Errors carry file, line and column like those of a spec.
Outcome<Catalogue> read_catalogue(World&);

// Adds the entries of a shop's own file; one of an id that is there takes its place. The file may
// hold any of the sections sources, materials, mixes, animals, plants and crew. Every entry is
// read, so that each mistake is reported at its line.
std::vector<Diagnostic> add_entries(Catalogue&, const std::string& name, const std::string& text);

// Every source by its id.
std::map<std::string, Source> read_sources(const Catalogue&);

// An entry by its id; an error when there is none, when its lines cannot be read, or when its
// constants contradict one another. A mix's parts are materials of the catalogue.
Outcome<Material> read_material(const Catalogue&, const std::string& id);
Outcome<Mix> read_mix(const Catalogue&, const std::string& id);
Outcome<Source> read_source(const Catalogue&, const std::string& id);

}  // namespace loamsheet
