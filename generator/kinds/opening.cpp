#include "kinds/opening.h"

namespace loamsheet {
namespace {

constexpr OpeningKind rows[] = {
    {.id = "vent", .keys = "area|mesh", .open = "open", .meshed = "mesh"},
    {.id = "door", .keys = "length|gap", .open = "door", .meshed = "door", .swings = true},
};

}  // namespace

std::span<const OpeningKind> OpeningKind::all() {
  return rows;
}

}  // namespace loamsheet
