// fixing: what holds a furnishing or a background that does not stand, a row each.
#pragma once
#include <optional>
#include <span>
#include <string_view>

#include "base/units.h"

namespace loamsheet {

struct FixingKind {
  std::string_view id;
  std::string_view word;                  // the sentence that says by what a thing is held
  std::string_view item = "", unit = "";  // on the pull list; none where nothing is needed

  // How much of it is needed: of a furnishing, of a background, and one more for so many square
  // metres of it; `each` turns that into the unit.
  double of_furnishing = 0, of_background = 0, spacing = 0, each = 1;
  bool whole = false;                   // bought in whole pieces
  bool cures = false;                   // must cure before it holds
  bool seals = false;                   // joins the panel that holds water back
  bool stays_under_water = false;       // holds a background down that would float
  std::optional<Kilograms> holds = {};  // no more than that

  static std::span<const FixingKind> all();
};

}  // namespace loamsheet
