// lookup: what the catalogue knows, as a table, one entry in full, JSON or CSV.
// In: Catalogue, Wording, what is asked. Out: text for the terminal. Never: an opinion.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/units.h"
#include "catalogue/catalogue.h"
#include "catalogue/stock.h"
#include "catalogue/wording.h"

namespace loamsheet {

// Which entries are wanted; what is empty does not filter. An entry whose value is not known does
// not pass a filter on it.
struct LookupFilter {
  std::string light, habit, damp;  // of plants
  std::string kind;                // animals: of build; materials: role; crew: group
  std::string name;                // part of an id or name, capitals or not
  std::string safe_for;            // an animal's id: plants that suit it, with or without a caution
  std::optional<Stock> stock;      // plants, crew and materials of which there is some on hand
  bool mountable = false;
  std::optional<Millimetres> max_height;  // of plants when grown
};

struct LookupAsk {
  std::string shelf;  // plants, animals, crew, materials; may be empty with `origins`
  std::string id;     // one entry in full; may be empty
  LookupFilter filter;
  std::string format = "text";  // text, json, csv
  bool origins = false;         // count where the facts are from instead
};

const std::vector<std::string>& shelf_names();

// The answer; an empty table is one. An unknown id or filter value is an error with the nearest
// known one; a former name is taken with a warning.
Outcome<std::string> look_up(const Catalogue&, const Wording&, const LookupAsk&);

}  // namespace loamsheet
