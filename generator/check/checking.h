// checking: what every check of a spec shares, and the checks themselves, one file each.
#pragma once
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "catalogue/catalogue.h"
#include "catalogue/stock.h"
#include "check/build.h"
#include "check/material_list.h"
#include "read/node.h"

namespace loamsheet {

// The spec with its defaults filled in, what it may name, and the build that it becomes.
struct Checking {
  const Node& root;
  const Catalogue& catalogue;
  MaterialList materials;
  std::map<std::string, Mix> own_mixes;  // of the spec
  Build& build;
  Sink& sink;

  void error(const Span& where, std::string message, std::string expected = "",
             std::string hint = "");
  void error(Diagnostic d) { sink.add(std::move(d)); }
};

// A length in the spec's own words: "30.48 cm".
std::string length_text(Millimetres);

// The place of a value, or of what it would stand in when it is absent.
Span place_of(const Node& node, std::string_view path);

// The terraces of layers.substrate, in the build's own terms; what holds them is checked later.
void take_terraces(Checking&, const Node& substrate, SubstrateLayer&);

void check_identity(Checking&);
void check_enclosure(Checking&);      // shape, height, walls, background, stand
void check_openings(Checking&);       // after the enclosure
void check_own_materials(Checking&);  // the spec's materials and mixes
void check_layers(Checking&);         // after the enclosure and the spec's materials
void check_furnishings(Checking&);    // after the enclosure
void check_terraces(Checking&);       // after the layers and the furnishings
void check_measured(Checking&);       // readings
void check_stock(Checking&, const Stock&);
void check_quote(Checking&);
void check_climate(Checking&);    // room, lamps, heaters, misting, water
void check_hazardous(Checking&);  // after the layers: materials that may harm
void check_sources(Checking&);    // after life and record: what the facts rest on
void check_life(Checking&);       // after the enclosure: animals, plants, crew, amendments
void check_record(Checking&);     // after life: what was replaced, taken on, and slipped

}  // namespace loamsheet
