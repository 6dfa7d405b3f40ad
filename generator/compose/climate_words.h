// climate_words: heat and water of the enclosure as facts, for the pages that tell of them.
#pragma once
#include <vector>

#include "compose/compose.h"

namespace loamsheet {

// Watts needed and fitted, energy and its cost in a month, the tank with all power off and with
// everything stuck on.
void add_heat_facts(const ComposeInput&, std::vector<Facts::Fact>&);

// How often the mist tank wants filling, and the substrate flushing.
void add_water_facts(const ComposeInput&, std::vector<Facts::Fact>&);

}  // namespace loamsheet
