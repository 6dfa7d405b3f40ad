#include "kinds/fixing.h"

namespace loamsheet {
namespace {

// Common practice all: a bead of sealant is as thick as a finger's width of a cartridge's tip, 0.05
// litres on a metre; beads lie 0.15 m apart behind a background, and a furnishing takes 0.4 m of
// bead. A square metre of background takes a can of foam, a furnishing a quarter. A furnishing
// takes one magnet or two screws, and a background one of either at each corner. A magnet holds a
// kilogram safely on a pane.
constexpr FixingKind rows[] = {
    {.id = "silicone",
     .word = "loads.by-silicone",
     .item = "silicone",
     .unit = "L",
     .of_furnishing = 0.4,
     .spacing = 0.15,
     .each = 0.05,
     .cures = true,
     .seals = true,
     .stays_under_water = true},
    {.id = "foam",
     .word = "loads.by-foam",
     .item = "mounting-foam",
     .unit = "piece",
     .of_furnishing = 0.25,
     .spacing = 1,
     .whole = true,
     .cures = true,
     .stays_under_water = true},
    {.id = "magnet",
     .word = "loads.by-magnet",
     .item = "magnet",
     .unit = "piece",
     .of_furnishing = 1,
     .of_background = 4,
     .holds = Kilograms{1}},
    {.id = "wedged", .word = "loads.by-wedged"},
    {.id = "screws",
     .word = "loads.by-screws",
     .item = "screw",
     .unit = "piece",
     .of_furnishing = 2,
     .of_background = 4,
     .stays_under_water = true},
};

}  // namespace

std::span<const FixingKind> FixingKind::all() {
  return rows;
}

}  // namespace loamsheet
