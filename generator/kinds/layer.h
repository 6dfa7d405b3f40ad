// layer: what may lie under the substrate to keep it out of water, and how water is taken out of
// there again; a row each.
#pragma once
#include <span>
#include <string_view>

namespace loamsheet {

struct DrainageKind {
  std::string_view id;
  std::string_view keys = "";
  std::string_view item = "";    // on the pull list, of one that is not poured
  std::string_view row = "";     // sentences: its row in the table of layers,
  std::string_view how;          // how it goes in,
  std::string_view label = "";   // and its label in drawings
  bool keeps_water_off = false;  // there is such a layer, and water stands in it
  bool poured = false;           // of a material with voids of its own
  bool on_supports = false;      // all void, on supports that carry what lies above
  enum class Sign { none, pebbles, posts } sign = Sign::none;  // how it is hatched

  static std::span<const DrainageKind> all();
};

struct OutletKind {
  std::string_view id;
  std::string_view item;      // on the pull list
  bool draws = false;         // water can be taken out by it
  bool through_base = false;  // takes a hole in the base

  static std::span<const OutletKind> all();
};

}  // namespace loamsheet
