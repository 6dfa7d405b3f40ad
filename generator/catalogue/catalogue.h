// catalogue: what the program knows of materials, mixes and living things, each fact with its
// origin. In: specs/catalogue/*.yaml through read. Out: Catalogue. Never: a decision.
#pragma once
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/span.h"
#include "base/units.h"
#include "base/world.h"

namespace loamsheet {

// Where a fact comes from: a source of specs/catalogue/sources.yaml, "common practice" or
// "from memory".
struct Origin {
  std::string name;    // the id of a source, or "common practice", or "from memory"
  bool published() const { return name != "common practice" && name != "from memory"; }
};

template <class T>
struct Fact {
  T value{};
  Origin origin;
};

struct Source {
  std::string id, title, link;
};

// Physical constants of a material. Shares are of the bulk volume.
struct Material {
  std::string id;
  std::string role;                                  // drainage, separator, substrate, litter, ...
  std::optional<Fact<Range<KilogramsPerCubicMetre>>> dry_density;   // bulk, oven-dry
  std::optional<Fact<Fraction>> porosity;            // total pore space
  std::optional<Fact<Fraction>> voids;               // free space that water can stand in (drained)
  std::optional<Fact<Fraction>> field_capacity;      // water held after draining
  std::optional<Fact<Range<Fraction>>> moisture_dry; // water held as bought dry
  std::optional<Fact<Range<Fraction>>> moisture_damp;// water held as placed damp
  std::optional<Fact<Fraction>> settling;            // volume lost as it settles
  std::optional<Fact<double>> areal_kg_m2;           // sheets and meshes
  Span where;
};

struct MixPart {
  std::string material;
  double parts = 0;
};

struct Mix {
  std::string id;
  std::vector<MixPart> parts;
  std::optional<Fact<Fraction>> settling;            // absent: from the parts
  Origin origin;
};

struct Animal {
  std::string id, common_name, build_kind;           // humid, temperate, arid, burrowing, semi-aquatic
};

struct Catalogue {
  std::map<std::string, Material> materials;
  std::map<std::string, Mix> mixes;
  std::map<std::string, Animal> animals;
  std::map<std::string, std::string> plants;         // id -> common name
  std::map<std::string, std::string> crew;           // id -> common name
  std::map<std::string, Source> sources;
};

// Reads specs/catalogue/ whole. Errors carry file, line and column like those of a spec.
Outcome<Catalogue> read_catalogue(World&);

}  // namespace loamsheet
