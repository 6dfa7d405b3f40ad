// lookup_print: entries of the catalogue as text, JSON and CSV.
#pragma once
#include <string>
#include <utility>
#include <vector>

#include "data/lookup.h"
#include "data/stated.h"

namespace loamsheet {

struct Printed {
  const Catalogue& catalogue;
  const Wording& words;
  const LookupAsk& ask;
};

std::string print_table(const Printed&, const std::vector<Looked>&);

// Every fact with the source behind it.
std::string print_entry(const Printed&, const Looked&);

// How many of the facts are published, common practice and from memory; shelf by shelf.
using ShelfLooked = std::pair<std::string, std::vector<Looked>>;
std::string print_origins(const Printed&, const std::vector<Looked>&);
std::string print_origins(const Printed&, const std::vector<ShelfLooked>&);

std::string print_json(const Printed&, const std::vector<Looked>&);

// id,name and the columns of the table; of one entry fact,value,from.
std::string print_csv(const Printed&, const std::vector<Looked>&);

}  // namespace loamsheet
