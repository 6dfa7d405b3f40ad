// begin: a commented starter spec for an animal and a size, fit to be checked as it is printed.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/units.h"
#include "base/world.h"
#include "catalogue/catalogue.h"
#include "catalogue/living.h"
#include "catalogue/wording.h"

namespace loamsheet {

struct StarterAsk {
  std::string animal;  // id or former id; may be empty
  std::string size;    // "90x45x60cm" or "36x18x24in", inside; empty: from the animal
};

struct TankSize {
  Millimetres width, depth, height;
  bool inches = false;  // typed so: the starter is then written in US units
};

// The size that was typed; an error shows how it is written.
Outcome<TankSize> tank_size(const std::string& typed);

// The starter as YAML. Units are those of the size.
Outcome<std::string> starter_spec(World&, const StarterAsk&);

// What a starter is written from.
struct Starter {
  const Catalogue& catalogue;
  const Wording& words;
  std::optional<Animal> animal;
  std::string kind;  // of build: humid, temperate, arid, burrowing, semi-aquatic
  TankSize size;
};

// Up to four sturdy plants of different habits that stand the climate and harm nobody.
std::vector<std::string> starter_plants(const Starter&);

std::string written(const Starter&);

}  // namespace loamsheet
