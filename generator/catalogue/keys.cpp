#include "catalogue/keys.h"

namespace loamsheet {
namespace {

using enum Kind;
using flag::range_ok;
using flag::required;

constexpr Key sources[] = {
    {.path = "sources", .kind = table, .flags = required},
    {.path = "sources.*", .kind = group},
    {.path = "sources.*.title", .kind = text, .flags = required},
    {.path = "sources.*.link", .kind = text},
    {.path = "sources.*.jurisdiction", .kind = text},
};

constexpr Key light[] = {
    {.path = "light", .kind = table, .flags = required},
    {.path = "light.*", .kind = group},
    {.path = "light.*.from", .kind = text, .flags = required},
    {.path = "light.*.ppfd", .kind = number, .limits = {0, 3000}, .flags = required | range_ok},
    {.path = "spectra", .kind = table, .flags = required},
    {.path = "spectra.*", .kind = group},
    {.path = "spectra.*.from", .kind = text, .flags = required},
    {.path = "spectra.*.per_lux", .kind = number, .limits = {0, 1}, .flags = required},
};

constexpr Key currencies[] = {
    {.path = "currencies", .kind = table, .flags = required},
    {.path = "currencies.*", .kind = group},
    {.path = "currencies.*.from", .kind = text, .flags = required},
    {.path = "currencies.*.decimals", .kind = integer, .limits = {0, 4}, .flags = required},
    {.path = "currencies.*.codes", .kind = text, .limits = {3, 2000}, .flags = required},
};

constexpr Key materials[] = {
    {.path = "materials", .kind = table, .flags = required},
    {.path = "materials.*", .kind = group},
    {.path = "materials.*.name", .kind = text, .flags = required},
    {.path = "materials.*.role",
     .kind = choice,
     .flags = required,
     .choices = "drainage|separator|substrate|litter|hardscape|amendment|wall|adhesive"},
    {.path = "materials.*.coarse", .kind = yes_no},
    {.path = "materials.*.rusts", .kind = yes_no},
    {.path = "materials.*.decay",
     .kind = choice,
     .choices = "none|very-slow|slow|medium|fast|done"},
    {.path = "materials.*.facts", .kind = list, .flags = required},
    {.path = "materials.*.facts[]", .kind = group},
    {.path = "materials.*.facts[].from", .kind = text, .flags = required},
    {.path = "materials.*.facts[].dry_density",
     .kind = density,
     .limits = {5, 8000},
     .flags = range_ok},
    {.path = "materials.*.facts[].porosity", .kind = share, .limits = {0, 1}},
    {.path = "materials.*.facts[].voids", .kind = share, .limits = {0, 1}},
    {.path = "materials.*.facts[].field_capacity", .kind = share, .limits = {0, 1}},
    {.path = "materials.*.facts[].moisture_dry",
     .kind = share,
     .limits = {0, 1},
     .flags = range_ok},
    {.path = "materials.*.facts[].moisture_damp",
     .kind = share,
     .limits = {0, 1},
     .flags = range_ok},
    {.path = "materials.*.facts[].settling", .kind = share, .limits = {0, 0.6}},
    {.path = "materials.*.facts[].areal_mass", .kind = areal, .limits = {0.01, 10}},
    {.path = "materials.*.facts[].hazards", .kind = list},
    {.path = "materials.*.facts[].hazards[]",
     .kind = choice,
     .choices = "copper|brass|galvanised|stainless|rough-stone|resinous-wood|fertiliser-salts"},
    {.path = "materials.*.facts[].caution", .kind = text},
    {.path = "materials.*.facts[].roll_width", .kind = length, .limits = {100, 5000}},
    {.path = "materials.*.facts[].nitrogen", .kind = share, .limits = {0, 1}},
};

constexpr std::string_view kinds = "humid|temperate|arid|burrowing|semi-aquatic";

constexpr Key mixes[] = {
    {.path = "mixes", .kind = table, .flags = required},
    {.path = "mixes.*", .kind = group},
    {.path = "mixes.*.name", .kind = text, .flags = required},
    {.path = "mixes.*.for", .kind = choice, .flags = required, .choices = kinds},
    {.path = "mixes.*.from", .kind = text, .flags = required},
    {.path = "mixes.*.parts", .kind = table, .flags = required},
    {.path = "mixes.*.parts.*", .kind = number, .limits = {0.01, 1000}},
    {.path = "mixes.*.settling", .kind = group},
    {.path = "mixes.*.settling.value", .kind = share, .limits = {0, 0.6}, .flags = required},
    {.path = "mixes.*.settling.from", .kind = text, .flags = required},
};

constexpr Limits air{-40, 60};

constexpr Key animals[] = {
    {.path = "animals", .kind = table, .flags = required},
    {.path = "animals.*", .kind = group},
    {.path = "animals.*.name", .kind = text, .flags = required},
    {.path = "animals.*.synonyms", .kind = list},
    {.path = "animals.*.synonyms[]", .kind = id},
    {.path = "animals.*.facts", .kind = list, .flags = required},
    {.path = "animals.*.facts[]", .kind = group},
    {.path = "animals.*.facts[].from", .kind = text, .flags = required},
    {.path = "animals.*.facts[].group", .kind = text},
    {.path = "animals.*.facts[].build_kind", .kind = choice, .choices = kinds},
    {.path = "animals.*.facts[].length", .kind = length, .limits = {5, 5000}, .flags = range_ok},
    {.path = "animals.*.facts[].mass", .kind = mass, .limits = {1e-4, 50}, .flags = range_ok},
    {.path = "animals.*.facts[].lifestyle",
     .kind = choice,
     .choices = "arboreal|terrestrial|fossorial|semi-aquatic"},
    {.path = "animals.*.facts[].diet",
     .kind = choice,
     .choices = "insectivore|carnivore|omnivore|herbivore"},
    {.path = "animals.*.facts[].browses", .kind = choice, .choices = "no|incidentally|yes"},
    {.path = "animals.*.facts[].activity",
     .kind = choice,
     .choices = "diurnal|nocturnal|crepuscular|any"},
    {.path = "animals.*.facts[].society", .kind = choice, .choices = "alone|pair|group"},
    {.path = "animals.*.facts[].lives_with", .kind = list},
    {.path = "animals.*.facts[].lives_with[]", .kind = id},
    {.path = "animals.*.facts[].planted_with", .kind = list},
    {.path = "animals.*.facts[].planted_with[]", .kind = id},
    {.path = "animals.*.facts[].digs", .kind = yes_no},
    {.path = "animals.*.facts[].claws", .kind = yes_no},
    {.path = "animals.*.facts[].climbs", .kind = yes_no},
    {.path = "animals.*.facts[].jumps", .kind = yes_no},
    {.path = "animals.*.facts[].lays", .kind = choice, .choices = "soil|surface|water|live|no"},
    {.path = "animals.*.facts[].water", .kind = choice, .choices = "drops|dish|soak|swim"},
    {.path = "animals.*.facts[].young", .kind = length, .limits = {2, 1000}, .flags = range_ok},
    {.path = "animals.*.facts[].feeder", .kind = length, .limits = {0.2, 300}, .flags = range_ok},
    {.path = "animals.*.facts[].wear", .kind = integer, .limits = {1, 5}},
    {.path = "animals.*.facts[].floor", .kind = list},
    {.path = "animals.*.facts[].floor[]", .kind = length, .limits = {50, 10000}},
    {.path = "animals.*.facts[].headroom", .kind = length, .limits = {50, 5000}},
    {.path = "animals.*.facts[].day", .kind = temperature, .limits = air, .flags = range_ok},
    {.path = "animals.*.facts[].basking", .kind = temperature, .limits = air, .flags = range_ok},
    {.path = "animals.*.facts[].night", .kind = temperature, .limits = air, .flags = range_ok},
    {.path = "animals.*.facts[].warmest", .kind = temperature, .limits = air},
    {.path = "animals.*.facts[].humidity", .kind = share, .limits = {0, 1}, .flags = range_ok},
    {.path = "animals.*.facts[].uv_zone", .kind = number, .limits = {1, 4}, .flags = range_ok},
    {.path = "animals.*.facts[].permit", .kind = text},
};

constexpr Key plants[] = {
    {.path = "plants", .kind = table, .flags = required},
    {.path = "plants.*", .kind = group},
    {.path = "plants.*.name", .kind = text, .flags = required},
    {.path = "plants.*.botanical", .kind = text},
    {.path = "plants.*.synonyms", .kind = list},
    {.path = "plants.*.synonyms[]", .kind = id},
    {.path = "plants.*.facts", .kind = list, .flags = required},
    {.path = "plants.*.facts[]", .kind = group},
    {.path = "plants.*.facts[].from", .kind = text, .flags = required},
    {.path = "plants.*.facts[].family", .kind = text},
    {.path = "plants.*.facts[].habit",
     .kind = choice,
     .choices = "climber|upright|ground-cover|rosette|trailer|fern|bromeliad|epiphyte|orchid|moss|"
                "shrub|grass|succulent"},
    {.path = "plants.*.facts[].height", .kind = length, .limits = {1, 60000}, .flags = range_ok},
    {.path = "plants.*.facts[].spread", .kind = length, .limits = {1, 60000}, .flags = range_ok},
    {.path = "plants.*.facts[].growth", .kind = choice, .choices = "slow|medium|fast"},
    {.path = "plants.*.facts[].leaf",
     .kind = choice,
     .choices = "fine|small|broad|strap|divided|fleshy"},
    {.path = "plants.*.facts[].role",
     .kind = choice,
     .choices = "backdrop|focal|middle|ground|trailer|mounted|moss"},
    {.path = "plants.*.facts[].light", .kind = choice, .choices = "low|medium|high"},
    {.path = "plants.*.facts[].ppfd_from", .kind = number, .limits = {0, 3000}},
    {.path = "plants.*.facts[].humidity", .kind = share, .limits = {0, 1}},
    {.path = "plants.*.facts[].dampest", .kind = share, .limits = {0, 1}},
    {.path = "plants.*.facts[].moisture", .kind = choice, .choices = "dry|moderate|moist|wet"},
    {.path = "plants.*.facts[].coldest", .kind = temperature, .limits = air},
    {.path = "plants.*.facts[].warmest", .kind = temperature, .limits = air},
    {.path = "plants.*.facts[].root_depth", .kind = length, .limits = {0, 2000}, .flags = range_ok},
    {.path = "plants.*.facts[].mountable", .kind = yes_no},
    {.path = "plants.*.facts[].robustness", .kind = integer, .limits = {1, 5}},
    {.path = "plants.*.facts[].hazards", .kind = list},
    {.path = "plants.*.facts[].hazards[]",
     .kind = choice,
     .choices = "latex-sap|caustic-latex|calcium-oxalate|toxic-if-eaten|saponin|spines|sharp-edge|"
                "toothed-edge|stiff-tip|none-known"},
    {.path = "plants.*.facts[].edible", .kind = yes_no},
    {.path = "plants.*.facts[].invasive", .kind = text},
    {.path = "plants.*.facts[].first_month", .kind = text},
};

constexpr Key crew[] = {
    {.path = "crew", .kind = table, .flags = required},
    {.path = "crew.*", .kind = group},
    {.path = "crew.*.name", .kind = text, .flags = required},
    {.path = "crew.*.reference", .kind = yes_no},
    {.path = "crew.*.synonyms", .kind = list},
    {.path = "crew.*.synonyms[]", .kind = id},
    {.path = "crew.*.facts", .kind = list, .flags = required},
    {.path = "crew.*.facts[]", .kind = group},
    {.path = "crew.*.facts[].from", .kind = text, .flags = required},
    {.path = "crew.*.facts[].group",
     .kind = choice,
     .choices = "springtail|dwarf-isopod|isopod|earthworm|potworm"},
    {.path = "crew.*.facts[].needs", .kind = text},
    {.path = "crew.*.facts[].coldest", .kind = temperature, .limits = air},
    {.path = "crew.*.facts[].warmest", .kind = temperature, .limits = air},
    {.path = "crew.*.facts[].diet", .kind = text},
    {.path = "crew.*.facts[].protein", .kind = text},
    {.path = "crew.*.facts[].density", .kind = number, .limits = {1, 1e6}, .flags = range_ok},
    {.path = "crew.*.facts[].caution", .kind = text},
    {.path = "crew.*.facts[].harasses", .kind = yes_no},
};

constexpr Key groups[] = {
    {.path = "groups", .kind = table, .flags = required},
    {.path = "groups.*", .kind = list, .limits = {1, 10}},
    {.path = "groups.*[]", .kind = group},
    {.path = "groups.*[].from", .kind = text, .flags = required},
    {.path = "groups.*[].skin_takes_up", .kind = yes_no},
    {.path = "groups.*[].moults_bare", .kind = yes_no},
    {.path = "groups.*[].thickness", .kind = share, .limits = {0.005, 1}},
};

constexpr std::string_view weights = "note|caution|stop";

constexpr Key hazards[] = {
    {.path = "hazards", .kind = table, .flags = required},
    {.path = "hazards.*", .kind = group},
    {.path = "hazards.*.from", .kind = text, .flags = required},
    {.path = "hazards.*.no", .kind = choice, .choices = weights},
    {.path = "hazards.*.incidentally", .kind = choice, .choices = weights},
    {.path = "hazards.*.yes", .kind = choice, .choices = weights},
    {.path = "hazards.*.touch", .kind = choice, .choices = weights},
    {.path = "hazards.*.light", .kind = choice, .choices = weights},
    {.path = "hazards.*.skin", .kind = choice, .choices = weights},
    {.path = "hazards.*.sap", .kind = choice, .choices = weights},
    {.path = "hazards.*.explains", .kind = id},
    {.path = "hazards.*.by_touch", .kind = yes_no},
};

}  // namespace

std::span<const Key> source_keys() {
  return sources;
}
std::span<const Key> light_keys() {
  return light;
}
std::span<const Key> currency_keys() {
  return currencies;
}
std::span<const Key> material_keys() {
  return materials;
}
std::span<const Key> mix_keys() {
  return mixes;
}
std::span<const Key> animal_keys() {
  return animals;
}
std::span<const Key> group_keys() {
  return groups;
}
std::span<const Key> hazard_keys() {
  return hazards;
}
std::span<const Key> plant_keys() {
  return plants;
}
std::span<const Key> crew_keys() {
  return crew;
}

}  // namespace loamsheet
