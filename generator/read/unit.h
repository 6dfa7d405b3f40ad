// unit: the units that may be typed, with their exact factors.
#pragma once
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "read/key.h"

namespace loamsheet {

// kept = (typed - shift) * top / bottom
struct Unit {
  std::string_view name;
  Kind kind;
  double top = 1, bottom = 1, shift = 0;
};

double kept(const Unit&, double typed);

// The unit of that name, of that kind if there is one, else of any other kind; null if unknown.
const Unit* find_unit(Kind, std::string_view name);

// A name that could mean several units ("qt"), and what to write instead.
struct Vague {
  std::string_view name, instead;  // instead: "dry qt|liq qt"
};
const Vague* vague_unit(std::string_view name);

// The names of a kind's units, the usual ones first.
std::vector<std::string> unit_names(Kind);

// "a length", "an area": a kind in words.
std::string_view kind_words(Kind);

// An amount as it may be typed, in a metric unit of handy size: 304.8 mm -> "30.48 cm". Fifteen
// digits are kept, so that it reads back to the same value.
std::string quantity_text(Kind, double kept);

}  // namespace loamsheet
