// offer: plants out of the catalogue, one or all, as the plan takes them.
#pragma once
#include <set>
#include <string>

#include "base/diagnostic.h"
#include "catalogue/catalogue.h"
#include "check/build.h"

namespace loamsheet {

// A species by its id, with what its light class wants.
Outcome<PlantKind> read_plant_kind(const Catalogue&, const std::string& id);

// Adds the sources of a plant's facts to those of the build.
void name_sources(const Catalogue&, Build&, const Plant&, Sink&);

// Fills Build::offered with the plants of the catalogue, by id; where habits are named, with those
// of these habits alone. Reading them all costs more than most plans do, so it is done only where
// some are to be picked, or to stand in for others.
Outcome<Build> with_offer(Build, const Catalogue&, const std::set<std::string>& habits = {});

}  // namespace loamsheet
