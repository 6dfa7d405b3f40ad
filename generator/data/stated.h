// stated: what the catalogue says of one entry, fact by fact, each with its origin.
#pragma once
#include <string>
#include <vector>

#include "catalogue/living.h"
#include "catalogue/wording.h"
#include "data/json.h"

namespace loamsheet {

struct Stated {
  std::string key;                // "height_mm"
  Json value;                     // in the unit that the key names
  std::string shown;              // "24–46 cm"
  std::vector<std::string> from;  // its origins; empty for what is no fact but a decision
};

struct Looked {
  std::string id, name;
  std::vector<Stated> facts;  // in the order in which they are shown
  bool reference = false;     // for comparison only: not listed

  // The fact of that key, or null when nobody knows it.
  const Stated* find(std::string_view key) const;
};

Looked stated(const Plant&, const Wording&);
Looked stated(const Animal&, const Wording&);
Looked stated(const CrewSpecies&, const Wording&);
Looked stated(const Material&, const Wording&);

}  // namespace loamsheet
