// living: animals, plants and clean-up crew with their facts, read from their shelf when wanted.
// What nobody knows well enough is absent.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/units.h"
#include "catalogue/catalogue.h"
#include "catalogue/fact.h"
#include "catalogue/groups.h"

namespace loamsheet {

// Sizes are those of adults; floor and headroom the least enclosure for one or two animals.
struct Animal {
  Animal();  // compiled once, out of line
  Animal(const Animal&);
  Animal(Animal&&) noexcept;
  Animal& operator=(const Animal&);
  Animal& operator=(Animal&&) noexcept;
  ~Animal();

  std::string id, name;
  Known<std::string> group;       // "skink"
  Known<std::string> build_kind;  // humid, temperate, arid, burrowing, semi-aquatic
  Known<Range<Millimetres>> length;
  Known<Range<Kilograms>> mass;
  Known<std::string> lifestyle, diet;            // arboreal, ...; herbivore, ...
  Known<std::string> browses;                    // eats plants: no, incidentally, yes
  Known<std::string> activity;                   // diurnal, nocturnal, crepuscular, any
  Known<std::string> society;                    // of its kind: alone, pair, group
  Known<std::vector<std::string>> lives_with;    // ids of other species
  Known<std::vector<std::string>> planted_with;  // ids of plants that its keepers grow with it
  Known<bool> digs, climbs, jumps;
  Known<bool> claws;                        // climbs with claws
  Known<std::string> lays;                  // soil, surface, water; live or no
  Known<std::string> water;                 // drops, dish, soak, swim
  Known<Range<Millimetres>> young, feeder;  // length as it hatches; of the prey of an adult
  Known<int> wear;                          // 1 to 5: what planting must stand
  Known<Range<Millimetres>> floor_length, floor_width, headroom;
  Known<Range<Celsius>> day, basking, night;
  Known<Celsius> warmest;  // that it may meet, the basking place apart
  Known<Range<Fraction>> humidity;
  Known<Range<double>> uv_zone;  // Ferguson zone
  Known<std::string> permit;
  Body body;  // of its group
};

// Sizes are mature; a climber's height is the length of its stem.
struct Plant {
  Plant();  // compiled once, out of line
  Plant(const Plant&);
  Plant(Plant&&) noexcept;
  Plant& operator=(const Plant&);
  Plant& operator=(Plant&&) noexcept;
  ~Plant();

  std::string id, name;
  std::string botanical;                     // "Ficus pumila 'Minima'"
  Known<std::string> family, habit, growth;  // climber, ground-cover, ...; slow, medium, fast
  Known<std::string> leaf;                   // fine, small, broad, strap, divided, fleshy
  Known<std::string> role;  // that builders give it, where its habit does not say: focal, ...
  Known<Range<Millimetres>> height, spread, root_depth;
  Known<std::string> light;     // a class of Catalogue::light
  Known<double> ppfd_from;      // umol m-2 s-1, where it differs from the class
  Known<Fraction> humidity;     // least
  Known<Fraction> dampest;      // air in which it lives for long
  Known<std::string> moisture;  // dry, moderate, moist, wet
  Known<Celsius> coldest, warmest;
  Known<bool> mountable;
  Known<int> robustness;  // 1 to 5
  std::vector<Hazard> hazards;
  Known<bool> edible;  // fed to animals that eat plants
  Known<std::string> invasive, first_month;
};

struct CrewSpecies {
  std::string id, name;
  bool reference = false;  // a row for comparison, not a culture to buy
  Known<std::string> group, needs, diet, protein, caution;
  Known<Celsius> coldest, warmest;
  Known<Range<double>> density;  // animals to start with on a square metre
  Known<bool> harasses;          // bites animals that moult, are weak or small; eats eggs
};

// An entry by its id; an error when there is none, or when its lines cannot be read.
Outcome<Animal> read_animal(const Catalogue&, const std::string& id);
Outcome<Plant> read_plant(const Catalogue&, const std::string& id);
Outcome<CrewSpecies> read_crew(const Catalogue&, const std::string& id);

}  // namespace loamsheet
